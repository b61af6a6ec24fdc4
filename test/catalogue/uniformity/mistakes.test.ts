/** Known mistakes of flow and uniformity: what each slip gives, worked out from its words. */
import type { MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const GALLON_IN3 = 231;
const GALLON_ML = 3785.411784;
const FOOT2_IN2 = 144;
const INCH3_ML = 16.387064;

/** Rows of an equilateral triangle over its side. */
const ROWS = Math.sqrt(0.75);

/** 8 gal/min on 40 ft by 25 ft; 13 L/min on 9 m by 7 m. */
const US_SQUARE = { nozzle_flow: 8, spacing_along: 40, spacing_between: 25, units: "us" };
const METRIC_SQUARE = { nozzle_flow: 13, spacing_along: 9, spacing_between: 7, units: "metric" };
const OFFSET = { ...METRIC_SQUARE, pattern: "offset" };
/** 6 gal/min, triangles of 30 ft: 900 x 0.866 ft2. */
const TRIANGLE = { nozzle_flow: 6, spacing_along: 30, units: "us", pattern: "triangle" };

/** in/h of 1 gal/min on 1 ft2. */
const US_RATE = (60 * GALLON_IN3) / FOOT2_IN2;

const NOT_A_SQUARE = "The triangle was taken for a square of its side";
const ROWS_TWICE = "0.866 was multiplied in although the distance of the rows was given";
const BARE = "The constant was left out: flow over area";
const FOUR_NOZZLES = "The four nozzles at the corners were all counted, though each gives this ground a quarter";
const PER_MINUTE = "The rate was given per minute";

const applicationRate: MistakeRow[] = [
  [NOT_A_SQUARE, TRIANGLE, (US_RATE * 6) / 900],
  [NOT_A_SQUARE, US_SQUARE, NaN],
  [ROWS_TWICE, US_SQUARE, (US_RATE * 8) / (40 * 25 * ROWS)],
  [ROWS_TWICE, OFFSET, (60 * 13) / (9 * 7 * ROWS)],
  [ROWS_TWICE, TRIANGLE, NaN],
  [BARE, US_SQUARE, 8 / (40 * 25)],
  [BARE, METRIC_SQUARE, 13 / (9 * 7)],
  [BARE, TRIANGLE, 6 / (900 * ROWS)],
  [FOUR_NOZZLES, US_SQUARE, (US_RATE * 4 * 8) / (40 * 25)],
  [FOUR_NOZZLES, OFFSET, (60 * 4 * 13) / (9 * 7)],
  [FOUR_NOZZLES, TRIANGLE, NaN],
  [PER_MINUTE, US_SQUARE, (8 * GALLON_IN3) / (40 * 25 * FOOT2_IN2)],
  [PER_MINUTE, METRIC_SQUARE, 13 / (9 * 7)],
];

/** 7 gal in 42 s. */
const BUCKET = { volume: 7, seconds: 42 };

const bucketFlow: MistakeRow[] = [
  ["The flow was left per second", BUCKET, 7 / 42],
  ["The flow was given per hour", BUCKET, (7 / 42) * 3600],
  ["The time was taken as a whole minute", BUCKET, 7],
  ["The ratio was inverted: minutes over volume", BUCKET, 42 / 60 / 7],
];

/** Four cans that hold 404 mL, 101 on average, after 25 minutes; two more fell over. */
const CANS = [
  [110, 0, 90],
  [130, 74, null],
];
const US_CANS = { catches_ml: CANS, can_diameter: 4.25, minutes: 25, units: "us", zeros: "skip" };
const METRIC_CANS = { catches_ml: CANS, can_diameter: 11, minutes: 25, units: "metric", zeros: "skip" };
const US_DEPTH = 101 / INCH3_ML / (Math.PI * 2.125 ** 2);
/** mL are cm3, and cm of depth 10 mm. */
const METRIC_DEPTH = (101 / (Math.PI * 5.5 ** 2)) * 10;

const DEPTH_FOR_RATE = "The depth of the test was taken as the rate of an hour";
const RADIUS = "The diameter was used as a radius";
const SUM_OF_CANS = "The sum of the cans was used, not their mean";

const catchRate: MistakeRow[] = [
  [DEPTH_FOR_RATE, US_CANS, US_DEPTH],
  [DEPTH_FOR_RATE, METRIC_CANS, METRIC_DEPTH],
  [PER_MINUTE, US_CANS, US_DEPTH / 25],
  [PER_MINUTE, METRIC_CANS, METRIC_DEPTH / 25],
  [RADIUS, US_CANS, (101 / INCH3_ML / (Math.PI * 4.25 ** 2) / 25) * 60],
  [RADIUS, METRIC_CANS, ((10 * 101) / (Math.PI * 11 ** 2) / 25) * 60],
  [SUM_OF_CANS, US_CANS, (404 / INCH3_ML / (Math.PI * 2.125 ** 2) / 25) * 60],
  [SUM_OF_CANS, METRIC_CANS, ((10 * 404) / (Math.PI * 5.5 ** 2) / 25) * 60],
];

/** Mean 7; deviations 3, 1, 4, 2, 2, in all 12; their squares 9 + 1 + 16 + 4 + 4 = 34. The lowest quarter: 3 and 5. */
const FIVE = { readings: [[10, 8, 3, 5, 9]] };
/** Mean 8, of which the deviations 7, 6 and 13 are more than half; their squares 49 + 36 + 169 = 254. */
const UNEVEN = { readings: [[2, 21, 1]] };
/** Sum 99, mean 9; deviations 13, 7, 0, 5, 1, 4, 3, 5, 2, 3, 1, in all 44. Quarters of 2.75, halves of 5.5 readings. */
const ELEVEN = { readings: [[22, 2, 9, 4, 10, 5, 12, 14, 7, 6, 8]] };
/** Mean 7, and a quarter of exactly two readings: 2 and 4. */
const EIGHT = { readings: [[12, 5, 2, 7, 11, 4, 9, 6]] };

const LOWEST_QUARTER = "The lowest quarter was used: that is the low-quarter uniformity";
const STANDARD_DEVIATION = "The standard deviation was used: that is the statistical uniformity";
const SUM_OF_DEVIATIONS = "The sum of the deviations was not divided by the number of readings";
const DEVIATING_PART = "The part that deviates was given, not 1 minus it";
const MEAN_DEVIATION = "The mean deviation was used: that is Christiansen's coefficient";

const cuChristiansen: MistakeRow[] = [
  [LOWEST_QUARTER, FIVE, (3 + 5) / 2 / 7],
  [LOWEST_QUARTER, UNEVEN, 1 / 8],
  [LOWEST_QUARTER, ELEVEN, (2 + 4 + 5) / 3 / 9],
  [STANDARD_DEVIATION, FIVE, 1 - Math.sqrt(34 / 4) / 7],
  [STANDARD_DEVIATION, UNEVEN, 1 - Math.sqrt(254 / 2) / 8],
  [SUM_OF_DEVIATIONS, FIVE, 1 - 12 / 7],
  [SUM_OF_DEVIATIONS, UNEVEN, 1 - 26 / 8],
  [DEVIATING_PART, FIVE, 12 / 5 / 7],
  [DEVIATING_PART, UNEVEN, 26 / 3 / 8],
];

const duLowQuarter: MistakeRow[] = [
  ["The lowest reading was used, not the lowest quarter", ELEVEN, 2 / 9],
  ["The lowest half was used, not the lowest quarter", ELEVEN, (2 + 4 + 5 + 6 + 7 + 8) / 6 / 9],
  ["The lowest half was used, not the lowest quarter", FIVE, (3 + 5 + 8) / 3 / 7],
  ["The quarter of the readings was rounded down", ELEVEN, (2 + 4) / 2 / 9],
  ["The quarter of the readings was rounded down", FIVE, 3 / 7],
  ["The quarter of the readings was rounded down", EIGHT, (2 + 4) / 2 / 7],
  ["The quarter was taken from the wet end", ELEVEN, (22 + 14 + 12) / 3 / 9],
  ["The quarter was taken from the wet end", FIVE, (10 + 9) / 2 / 7],
  [MEAN_DEVIATION, ELEVEN, 1 - 44 / 11 / 9],
];

const statisticalUniformity: MistakeRow[] = [
  ["The standard deviation was taken with n, not with n - 1", FIVE, 1 - Math.sqrt(34 / 5) / 7],
  [MEAN_DEVIATION, FIVE, 1 - 12 / 5 / 7],
  ["The coefficient of variation was given, not 1 minus it", FIVE, Math.sqrt(34 / 4) / 7],
];

/** Three emitters a plant, of a make that varies by 6 %. */
const DESIGN = { variation: 0.06, emitters_per_plant: 3, flow_min: 3.4, flow_mean: 3.8 };
const MADE = 1 - (1.27 * 0.06) / Math.sqrt(3);

const emissionUniformity: MistakeRow[] = [
  ["The variation of make was left out", DESIGN, 3.4 / 3.8],
  ["The differences of pressure were left out", DESIGN, MADE],
  ["The variation was divided by n, not by its square root", DESIGN, (1 - (1.27 * 0.06) / 3) * (3.4 / 3.8)],
  ["The emitters per plant were left out", DESIGN, (1 - 1.27 * 0.06) * (3.4 / 3.8)],
  ["The flows were divided the wrong way round", DESIGN, MADE * (3.8 / 3.4)],
];

/** 190 mL in 40 s: two thirds of a minute, a ninetieth of an hour. */
const US_CATCH = { catch_ml: 190, seconds: 40, units: "us" };
const METRIC_CATCH = { ...US_CATCH, units: "metric" };

const LEFT_PER_MINUTE = "Seconds were taken as minutes, or the flow was left per minute";
const WHOLE_MINUTE = "The catch was taken as that of a whole minute";
const LEFT_IN_ML = "The flow was left in mL per hour";
const SECONDS_OVER_CATCH = "The ratio was inverted: seconds over catch";

const emitterFlow: MistakeRow[] = [
  [LEFT_PER_MINUTE, US_CATCH, 190 / GALLON_ML / (40 / 60)],
  [LEFT_PER_MINUTE, METRIC_CATCH, 0.19 / (40 / 60)],
  [WHOLE_MINUTE, US_CATCH, (190 / GALLON_ML) * 60],
  [WHOLE_MINUTE, METRIC_CATCH, 0.19 * 60],
  [LEFT_IN_ML, US_CATCH, 190 * 90],
  [LEFT_IN_ML, METRIC_CATCH, 190 * 90],
  [SECONDS_OVER_CATCH, US_CATCH, (40 / 190) * (3600 / GALLON_ML)],
  [SECONDS_OVER_CATCH, METRIC_CATCH, (40 / 190) * 3.6],
];

/** The lower half of a zone with a DU of 0.7 stands at 0.82. */
const UNEVEN_ZONE = { uniformity: 0.7 };

const runTimeMultiplier: MistakeRow[] = [
  ["The time was divided by the uniformity of the low quarter itself", UNEVEN_ZONE, 1 / 0.7],
  ["The ratio was inverted", UNEVEN_ZONE, 0.82],
  ["0.4 and 0.6 were swapped", UNEVEN_ZONE, 1 / 0.88],
  ["What is missing to 1 was added", UNEVEN_ZONE, 1.3],
];

expectMistakesOfGroup("Flow and uniformity", {
  APPLICATION_RATE: applicationRate,
  BUCKET_FLOW: bucketFlow,
  CATCH_RATE: catchRate,
  CU_CHRISTIANSEN: cuChristiansen,
  DU_LOW_QUARTER: duLowQuarter,
  STATISTICAL_UNIFORMITY: statisticalUniformity,
  EMISSION_UNIFORMITY: emissionUniformity,
  EMITTER_FLOW: emitterFlow,
  RUN_TIME_MULTIPLIER: runTimeMultiplier,
});
