/** Known mistakes of run time, zones, booms and mats: what each slip gives, worked out from its words. */
import type { MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const GALLON_IN3 = 231;
const GALLON_L = 3.785411784;
const POUND_KG = 0.45359237;
const FOOT2_IN2 = 144;

const RADIUS = "The diameter was used as a radius";
const INVERTED = "The ratio was inverted";
const HOUR_FOR_MINUTE = "The flow per hour was taken as flow per minute";
const NO_UNIFORMITY = "The uniformity was left out";
const NO_LEACHING = "The leaching fraction was left out";
const BOTH = "Leaching and uniformity were both divided out";
const NO_EMITTERS = "The emitters per plant were left out";

/** Leaching asks for more, 1 / 0.8; then unevenness, 1 / 0.7. */
const LEACHING_COUNTS = { net: 2.4, leaching_fraction: 0.2, uniformity: 0.9 };
const UNIFORMITY_COUNTS = { net: 2.4, leaching_fraction: 0.1, uniformity: 0.7 };
const ON_LEACHING = { ...LEACHING_COUNTS, basis: "leaching" };
const ON_UNIFORMITY = { ...LEACHING_COUNTS, basis: "uniformity" };
const ON_BOTH = { ...LEACHING_COUNTS, basis: "both" };

const ADDED = "The leaching fraction was added, not divided out";
const SWAPPED = "Leaching and uniformity were taken for one another";
const MULTIPLIED = "The net water was multiplied, not divided";
const NOTHING = "Nothing was added for leaching or unevenness";

const grossWater: MistakeRow[] = [
  [ADDED, LEACHING_COUNTS, 2.4 * (1 + 0.2)],
  [ADDED, ON_LEACHING, 2.4 * (1 + 0.2)],
  [ADDED, ON_BOTH, (2.4 * (1 + 0.2)) / 0.9],
  [ADDED, ON_UNIFORMITY, NaN],
  [NO_UNIFORMITY, UNIFORMITY_COUNTS, 2.4 / 0.9],
  [NO_UNIFORMITY, ON_BOTH, 2.4 / 0.8],
  [NO_UNIFORMITY, ON_UNIFORMITY, 2.4],
  [NO_LEACHING, LEACHING_COUNTS, 2.4 / 0.9],
  [NO_LEACHING, ON_BOTH, 2.4 / 0.9],
  [NO_LEACHING, ON_LEACHING, 2.4],
  [SWAPPED, ON_LEACHING, 2.4 / 0.9],
  [SWAPPED, ON_UNIFORMITY, 2.4 / 0.8],
  [SWAPPED, { ...ON_UNIFORMITY, leaching_fraction: 0 }, NaN],
  [SWAPPED, LEACHING_COUNTS, NaN],
  [SWAPPED, ON_BOTH, NaN],
  [BOTH, LEACHING_COUNTS, 2.4 / 0.8 / 0.9],
  [BOTH, UNIFORMITY_COUNTS, 2.4 / 0.9 / 0.7],
  [BOTH, ON_LEACHING, 2.4 / 0.8 / 0.9],
  [BOTH, ON_UNIFORMITY, 2.4 / 0.8 / 0.9],
  [MULTIPLIED, LEACHING_COUNTS, 2.4 * 0.8],
  [MULTIPLIED, UNIFORMITY_COUNTS, 2.4 * 0.7],
  [MULTIPLIED, ON_UNIFORMITY, 2.4 * 0.9],
  [MULTIPLIED, ON_BOTH, 2.4 * 0.8 * 0.9],
  [NOTHING, LEACHING_COUNTS, 2.4],
  [NOTHING, ON_BOTH, 2.4],
];

/** Two emitters of 1.3 an hour for 0.7. */
const STAKES = { volume_per_plant: 0.7, emitter_flow: 1.3, emitters_per_plant: 2 };

const runMinutes: MistakeRow[] = [
  [HOUR_FOR_MINUTE, STAKES, 0.7 / (2 * 1.3)],
  [NO_EMITTERS, STAKES, (0.7 / 1.3) * 60],
  ["The emitters per plant were multiplied in, not divided out", STAKES, (0.7 / 1.3) * 2 * 60],
  [INVERTED, STAKES, ((2 * 1.3) / 0.7) * 60],
];

const US_DAY = {
  reference_et: 0.25,
  crop_coefficient: 1.1,
  area_per_plant: 3.5,
  leaching_fraction: 0.15,
  uniformity: 0.88,
  emitter_flow: 1.3,
  emitters_per_plant: 2,
  units: "us",
  cover_factor: 0.75,
};
const UNEVEN_DAY = { ...US_DAY, uniformity: 0.7 };
const METRIC_DAY = { ...US_DAY, reference_et: 5, area_per_plant: 0.16, emitter_flow: 4, units: "metric" };
/** Minutes for the net water: gal over gal/h, and L over L/h. */
const US_NET = ((0.25 * 1.1 * 0.75 * 3.5 * FOOT2_IN2) / GALLON_IN3 / (2 * 1.3)) * 60;
const METRIC_NET = ((5 * 1.1 * 0.75 * 0.16) / (2 * 4)) * 60;

const NO_CROP = "The crop coefficient was left out";
const NO_COVER = "The cover factor was left out";
const NET_RUN = "The net water was run: nothing was added for leaching or unevenness";
const NO_CONSTANT = "The unit constant was left out: depth x area is not yet a volume";

const runMinutesFromEt: MistakeRow[] = [
  [NO_CROP, US_DAY, US_NET / 1.1 / 0.85],
  [NO_COVER, US_DAY, US_NET / 0.75 / 0.85],
  [NO_COVER, METRIC_DAY, METRIC_NET / 0.75 / 0.85],
  [NET_RUN, US_DAY, US_NET],
  [NET_RUN, UNEVEN_DAY, US_NET],
  // The evenness of 0.88 did not count beside the leaching.
  [NO_UNIFORMITY, US_DAY, US_NET / 0.85],
  [NO_UNIFORMITY, UNEVEN_DAY, US_NET / 0.85],
  [NO_LEACHING, US_DAY, US_NET / 0.88],
  [NO_LEACHING, UNEVEN_DAY, US_NET / 0.7],
  [BOTH, US_DAY, US_NET / 0.85 / 0.88],
  [BOTH, UNEVEN_DAY, US_NET / 0.85 / 0.7],
  [BOTH, METRIC_DAY, METRIC_NET / 0.85 / 0.88],
  [NO_CONSTANT, US_DAY, ((0.25 * 1.1 * 0.75 * 3.5) / 0.85 / (2 * 1.3)) * 60],
  // Millimetres times square metres are litres.
  [NO_CONSTANT, METRIC_DAY, METRIC_NET / 0.85],
  [NO_EMITTERS, US_DAY, (US_NET * 2) / 0.85],
  [HOUR_FOR_MINUTE, US_DAY, US_NET / 0.85 / 60],
  [HOUR_FOR_MINUTE, METRIC_DAY, (5 * 1.1 * 0.75 * 0.16) / 0.85 / (2 * 4)],
];

/** Tops of 25 pi in2 on 1.5 ft2, and of 156.25 pi cm2 on 1,100 cm2. */
const US_POT = { top_diameter: 10, area_per_plant: 1.5, units: "us" };
const METRIC_POT = { top_diameter: 25, area_per_plant: 0.11, units: "metric" };
const SQUARE_TOP = "A square of the diameter was taken for the round top";
const MISSING_PART = "The part that misses the pots was taken";

const interceptionFraction: MistakeRow[] = [
  [SQUARE_TOP, US_POT, 100 / (1.5 * FOOT2_IN2)],
  [SQUARE_TOP, METRIC_POT, 625 / 1100],
  [RADIUS, US_POT, (Math.PI * 100) / (1.5 * FOOT2_IN2)],
  [RADIUS, METRIC_POT, (Math.PI * 625) / 1100],
  [MISSING_PART, US_POT, 1 - (Math.PI * 25) / (1.5 * FOOT2_IN2)],
  [MISSING_PART, METRIC_POT, 1 - (Math.PI * 156.25) / 1100],
  [INVERTED, US_POT, (1.5 * FOOT2_IN2) / (Math.PI * 25)],
  [INVERTED, METRIC_POT, 1100 / (Math.PI * 156.25)],
];

const PAIR = { water_with_plant: 1158, water_empty_pot: 643 };

const captureFactor: MistakeRow[] = [
  [INVERTED, PAIR, 643 / 1158],
  ["The difference was divided by the empty pot's catch: the gain, not the factor", PAIR, (1158 - 643) / 643],
];

/** 0.17 gal on 25 pi in2 and 0.5 L on 100 pi cm2, each times the capture factor. */
const US_BED = {
  net_per_plant: 0.17,
  top_diameter: 10,
  capture_factor: 1.25,
  leaching_fraction: 0.15,
  uniformity: 0.8,
  units: "us",
};
const LEACHED_BED = { ...US_BED, leaching_fraction: 0.3 };
const METRIC_BED = { ...US_BED, net_per_plant: 0.5, top_diameter: 20, units: "metric" };
const US_NET_DEPTH = (0.17 * GALLON_IN3) / (Math.PI * 5 ** 2) / 1.25;
const METRIC_NET_DEPTH = ((500 / (Math.PI * 10 ** 2)) * 10) / 1.25;

const LOSSES_TWICE = "The answer of GROSS_WATER was taken for the net: the losses counted twice";
const NO_CAPTURE = "The capture factor was left out";
const CAPTURE_MULTIPLIED = "It was multiplied by the capture factor, not divided";

const overheadDepth: MistakeRow[] = [
  [LOSSES_TWICE, US_BED, US_NET_DEPTH / 0.8 / 0.8],
  [LOSSES_TWICE, LEACHED_BED, US_NET_DEPTH / 0.7 / 0.7],
  [LOSSES_TWICE, METRIC_BED, METRIC_NET_DEPTH / 0.8 / 0.8],
  [BOTH, US_BED, US_NET_DEPTH / 0.8 / 0.85],
  [BOTH, LEACHED_BED, US_NET_DEPTH / 0.8 / 0.7],
  [NOTHING, US_BED, US_NET_DEPTH],
  [NOTHING, LEACHED_BED, US_NET_DEPTH],
  [NOTHING, METRIC_BED, METRIC_NET_DEPTH],
  [NO_CAPTURE, US_BED, (US_NET_DEPTH * 1.25) / 0.8],
  [CAPTURE_MULTIPLIED, US_BED, ((0.17 * GALLON_IN3) / (Math.PI * 5 ** 2) / 0.8) * 1.25],
  [RADIUS, US_BED, (0.17 * GALLON_IN3) / (Math.PI * 10 ** 2) / 1.25 / 0.8],
  [RADIUS, METRIC_BED, ((500 / (Math.PI * 20 ** 2)) * 10) / 1.25 / 0.8],
];

const SPRINKLERS = { depth: 0.5, application_rate: 0.4 };

const overheadRunMinutes: MistakeRow[] = [
  ["Hours were taken for minutes", SPRINKLERS, 0.5 / 0.4],
  [INVERTED, SPRINKLERS, (0.4 / 0.5) * 60],
  ["Depth and rate were multiplied", SPRINKLERS, 0.5 * 0.4 * 60],
];

/** 17 / 6: two or three emitters over a pot, 2.83 on average. */
const LINE = { volume_per_plant: 0.3, emitter_flow: 0.7, emitter_spacing: 6, top_diameter: 17 };
const LINE_ON_AVERAGE = { ...LINE, basis: "average" };
/** 23.1 / 3.3 is 7, and a little more in a computer. */
const SEVEN = { ...LINE, emitter_spacing: 3.3, top_diameter: 23.1 };
/** Two were put over each pot, whatever the line's own spacing. */
const PUT_THERE = { ...LINE, aligned_emitters: 2 };
const WITHOUT_SPACING = { ...PUT_THERE, emitter_spacing: null };
const ON_AVERAGE = "The average of the emitters was taken: pots with fewest stay dry";
const UP = "The emitters over a pot were rounded up";
const ONE_EMITTER = "One emitter to a pot was taken";

const dripLineRunMinutes: MistakeRow[] = [
  [ON_AVERAGE, LINE, (0.3 / (0.7 * (17 / 6))) * 60],
  [UP, LINE, (0.3 / (0.7 * 3)) * 60],
  [UP, LINE_ON_AVERAGE, (0.3 / (0.7 * 3)) * 60],
  [UP, SEVEN, (0.3 / (0.7 * 7)) * 60],
  [UP, PUT_THERE, NaN],
  [UP, { ...LINE, aligned_emitters: 1 }, NaN],
  [UP, WITHOUT_SPACING, NaN],
  [ONE_EMITTER, LINE, (0.3 / 0.7) * 60],
  [ONE_EMITTER, WITHOUT_SPACING, (0.3 / 0.7) * 60],
  [HOUR_FOR_MINUTE, LINE, 0.3 / (0.7 * 2)],
  [HOUR_FOR_MINUTE, LINE_ON_AVERAGE, 0.3 / (0.7 * (17 / 6))],
  [HOUR_FOR_MINUTE, WITHOUT_SPACING, 0.3 / (0.7 * 2)],
];

const ZONE = { plants: 450, emitters_per_plant: 2, emitter_flow: 12 };

const zoneFlow: MistakeRow[] = [
  ["The flow was left per hour", ZONE, 450 * 2 * 12],
  [NO_EMITTERS, ZONE, (450 * 12) / 60],
  ["It was divided by 60 twice", ZONE, (450 * 2 * 12) / 3600],
];

/** 250 / 60 is 4.17, 1,000 / 2.3 is 434.78, and in an hour 2.3 are 138: 7.25. */
const PUMP = { supply_flow: 250, zone_flow: 60 };
const SMALL_ZONES = { supply_flow: 1000, zone_flow: 2.3 };
/** 43.7 / 2.3 is 19, and a little more in a computer; 29.4 / (60 x 0.07) is 7, and a little less. */
const NINETEEN = { supply_flow: 43.7, zone_flow: 2.3 };
const SEVEN_IN_AN_HOUR = { supply_flow: 29.4, zone_flow: 0.07 };
const UP_ZONES = "It was rounded up: the last zone takes the pressure from all";
const UNROUNDED = "It was not rounded to whole zones";
const ZONE_PER_HOUR = "The flow of the zone was left per hour";

const zonesAtOnce: MistakeRow[] = [
  [UP_ZONES, PUMP, 5],
  [UP_ZONES, SMALL_ZONES, 435],
  [UP_ZONES, NINETEEN, 19],
  [UNROUNDED, PUMP, 250 / 60],
  [ZONE_PER_HOUR, PUMP, 0],
  [ZONE_PER_HOUR, SMALL_ZONES, 7],
  [ZONE_PER_HOUR, SEVEN_IN_AN_HOUR, 7],
];

/** 500 ft of 2.067 in at 40 gal/min, and 120 m of 50 mm at 70 L/min: a square mm is a thousandth of a litre a metre. */
const US_PIPE = { pipe_length: 500, inside_diameter: 2.067, fill_flow: 40, units: "us" };
const METRIC_PIPE = { pipe_length: 120, inside_diameter: 50, fill_flow: 70, units: "metric" };
const US_BORE = Math.PI * (2.067 / 2) ** 2;
const METRIC_BORE = Math.PI * 25 ** 2;
const FLOW_PER_HOUR = "The flow was taken per hour";
const NO_VOLUME = "The unit constant was left out: bore squared x length is not yet a volume";

const lineFillMinutes: MistakeRow[] = [
  [RADIUS, US_PIPE, (Math.PI * 2.067 ** 2 * 500 * 12) / GALLON_IN3 / 40],
  [RADIUS, METRIC_PIPE, (Math.PI * 50 ** 2 * 120) / 1000 / 70],
  [FLOW_PER_HOUR, US_PIPE, (US_BORE * 500 * 12) / GALLON_IN3 / (40 / 60)],
  [FLOW_PER_HOUR, METRIC_PIPE, (METRIC_BORE * 120) / 1000 / (70 / 60)],
  [NO_VOLUME, US_PIPE, (US_BORE * 500) / 40],
  [NO_VOLUME, METRIC_PIPE, (METRIC_BORE * 120) / 70],
];

const US_BOOM = { boom_flow: 19.2, travel_speed: 25, swath_width: 30, units: "us" };
const METRIC_BOOM = { boom_flow: 42, travel_speed: 11, swath_width: 8, units: "metric" };
const THERE_AND_BACK = "The way there and back was taken for one pass";
const NO_DEPTH = "The unit constant was left out: volume over area is not yet a depth";
const BOOM_PER_HOUR = "The flow was taken per hour, or the speed per second";

const boomDepth: MistakeRow[] = [
  [THERE_AND_BACK, US_BOOM, (2 * 19.2 * GALLON_IN3) / (25 * 30 * FOOT2_IN2)],
  [THERE_AND_BACK, METRIC_BOOM, (2 * 42) / (11 * 8)],
  [NO_DEPTH, US_BOOM, 19.2 / (25 * 30)],
  // Litres over square metres are millimetres.
  [NO_DEPTH, METRIC_BOOM, 42 / (11 * 8)],
  [BOOM_PER_HOUR, US_BOOM, ((19.2 / 60) * GALLON_IN3) / (25 * 30 * FOOT2_IN2)],
  [BOOM_PER_HOUR, METRIC_BOOM, 42 / (11 * 60 * 8)],
];

const US_MAT = {
  mat_area: 240,
  wet_weight: 2.4,
  dry_weight: 0.5,
  sample_area: 4,
  depleted_fraction: 0.3,
  units: "us",
};
const METRIC_MAT = {
  mat_area: 30,
  wet_weight: 4.5,
  dry_weight: 0.6,
  sample_area: 1.6,
  depleted_fraction: 0.4,
  units: "metric",
};
/** 1 L weighs 1 kg. */
const GALLON_LB = GALLON_L / POUND_KG;

const MAT_WEIGHED = "The mat's own weight was left in";
const MAT_DRY = "The mat was taken as dry";
const STILL_HELD = "The part still held was taken for the part gone";
const NO_SQUARE = "The square's area was left out";
const POUNDS = "Pounds of water were taken for gallons";

const matRecharge: MistakeRow[] = [
  [MAT_WEIGHED, US_MAT, (2.4 / GALLON_LB / 4) * 240 * 0.3],
  [MAT_WEIGHED, METRIC_MAT, (4.5 / 1.6) * 30 * 0.4],
  [MAT_DRY, US_MAT, (1.9 / GALLON_LB / 4) * 240],
  [MAT_DRY, METRIC_MAT, (3.9 / 1.6) * 30],
  [STILL_HELD, US_MAT, (1.9 / GALLON_LB / 4) * 240 * 0.7],
  [STILL_HELD, METRIC_MAT, (3.9 / 1.6) * 30 * 0.6],
  [NO_SQUARE, US_MAT, (1.9 / GALLON_LB) * 240 * 0.3],
  [NO_SQUARE, METRIC_MAT, 3.9 * 30 * 0.4],
  [POUNDS, US_MAT, (1.9 / 4) * 240 * 0.3],
  // Kilograms of water are litres.
  [POUNDS, METRIC_MAT, (3.9 / 1.6) * 30 * 0.4],
];

expectMistakesOfGroup("Run time, zones, booms, mats", {
  GROSS_WATER: grossWater,
  RUN_MINUTES: runMinutes,
  RUN_MINUTES_FROM_ET: runMinutesFromEt,
  INTERCEPTION_FRACTION: interceptionFraction,
  CAPTURE_FACTOR: captureFactor,
  OVERHEAD_DEPTH: overheadDepth,
  OVERHEAD_RUN_MINUTES: overheadRunMinutes,
  DRIP_LINE_RUN_MINUTES: dripLineRunMinutes,
  ZONE_FLOW: zoneFlow,
  ZONES_AT_ONCE: zonesAtOnce,
  LINE_FILL_MINUTES: lineFillMinutes,
  BOOM_DEPTH: boomDepth,
  MAT_RECHARGE: matRecharge,
});
