/** Known mistakes of flood benches, tanks and supply: what each slip gives, worked out from its words. */
import type { MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const GALLON_IN3 = 231;
const FOOT2_IN2 = 144;
const FOOT3_IN3 = 1728;

/** 180 used, 12.25 lost and 30 gained a day. */
const POND = { usable_volume: 4000, daily_use: 180, daily_loss: 12.25, daily_inflow: 30 };
/** The well brings more than is used, and only the loss lowers the pond. */
const NEARLY_STEADY = { usable_volume: 4000, daily_use: 20, daily_loss: 15, daily_inflow: 30 };
const NO_LOSS = "Evaporation and seepage were left out";

const daysOfStorage: MistakeRow[] = [
  [NO_LOSS, POND, 4000 / (180 - 30)],
  [NO_LOSS, NEARLY_STEADY, NaN],
  ["What comes in was left out", POND, 4000 / (180 + 12.25)],
  ["What comes in was added to the use, not taken off", POND, 4000 / (180 + 12.25 + 30)],
];

/** 120 on the bench and 6 in its pots, at 15 a minute. */
const BENCH = { volume: 120, fill_flow: 15, uptake: 6 };

const fillMinutes: MistakeRow[] = [
  ["What the pots take up was left out", BENCH, 120 / 15],
  ["The uptake was taken off, not added", BENCH, (120 - 6) / 15],
  ["The flow per minute was taken as flow per hour", BENCH, (120 + 6) / (15 / 60)],
  ["The ratio was inverted: flow over volume", BENCH, 15 / (120 + 6)],
];

/** 480 pots of 4.25 in on 240 ft2 under 1.2 in of water; 100 pots of 10 cm on 12 m2 under 25 mm. */
const US_FLOOD = { bench_area: 240, flood_depth: 1.2, units: "us", pots: 480, pot_base_diameter: 4.25 };
const METRIC_FLOOD = { bench_area: 12, flood_depth: 25, units: "metric", pots: 100, pot_base_diameter: 10 };
const US_POTS_IN3 = 480 * Math.PI * 2.125 ** 2 * 1.2;
const METRIC_POTS_L = (100 * Math.PI * 5 ** 2 * 2.5) / 1000;

const NO_POTS = "What the pots displace was left out";
const POT_RADIUS = "The pots' diameter was used as a radius";
const FT2_INCHES = "Square feet times inches were taken for gallons";

const floodVolume: MistakeRow[] = [
  [NO_POTS, US_FLOOD, (240 * FOOT2_IN2 * 1.2) / GALLON_IN3],
  [NO_POTS, METRIC_FLOOD, 12 * 25],
  [POT_RADIUS, US_FLOOD, (240 * FOOT2_IN2 * 1.2 - 480 * Math.PI * 4.25 ** 2 * 1.2) / GALLON_IN3],
  [POT_RADIUS, METRIC_FLOOD, 12 * 25 - (100 * Math.PI * 10 ** 2 * 2.5) / 1000],
  [FT2_INCHES, US_FLOOD, 240 * 1.2 - US_POTS_IN3 / FOOT2_IN2],
  // Square metres times millimetres are litres: no slip there, and the right number.
  [FT2_INCHES, METRIC_FLOOD, 12 * 25 - METRIC_POTS_L],
];

const US_HOUSE = { area: 2400, depth: 0.64, hours_per_day: 5, units: "us" };
const METRIC_HOUSE = { area: 2800, depth: 12, hours_per_day: 5, units: "metric" };
const US_DAY = (2400 * FOOT2_IN2 * 0.64) / GALLON_IN3;
const METRIC_DAY = 2800 * 12;

const ALL_DAY = "The water was spread over 24 hours";
const PER_HOUR = "The flow was left per hour";
const GALLONS_A_FOOT = "Gallons a square foot were typed as inches";

const peakSupplyFlow: MistakeRow[] = [
  [ALL_DAY, US_HOUSE, US_DAY / 1440],
  [ALL_DAY, METRIC_HOUSE, METRIC_DAY / 1440],
  [PER_HOUR, US_HOUSE, US_DAY / 5],
  [PER_HOUR, METRIC_HOUSE, METRIC_DAY / 5],
  // 0.64 in are 0.64 x 144 / 231 gal/ft2, and that number stood for the depth in inches.
  [GALLONS_A_FOOT, US_HOUSE, (2400 * FOOT2_IN2 * ((0.64 * FOOT2_IN2) / GALLON_IN3)) / GALLON_IN3 / 300],
  // Litres a square metre are millimetres.
  [GALLONS_A_FOOT, METRIC_HOUSE, METRIC_DAY / 300],
];

const US_ROOF = { area: 6000, rain: 1.2, units: "us", coefficient: 0.8 };
const METRIC_ROOF = { area: 900, rain: 25, units: "metric", coefficient: 0.85 };
const ALL_ARRIVES = "All of the rain was counted as arriving";
const LOST_PART = "The part that is lost was taken for the part that arrives";

const rainHarvest: MistakeRow[] = [
  [ALL_ARRIVES, US_ROOF, (6000 * FOOT2_IN2 * 1.2) / GALLON_IN3],
  [ALL_ARRIVES, METRIC_ROOF, 900 * 25],
  [FT2_INCHES, US_ROOF, 6000 * 1.2 * 0.8],
  [FT2_INCHES, METRIC_ROOF, 900 * 25 * 0.85],
  [LOST_PART, US_ROOF, ((6000 * FOOT2_IN2 * 1.2) / GALLON_IN3) * 0.2],
  [LOST_PART, METRIC_ROOF, 900 * 25 * 0.15],
];

/** Four benches of 120, and 15 % free above. */
const ROUND = {
  flood_volume: 120,
  benches_holding_water: 4,
  uptake_until_topup: 24,
  dead_storage: 40,
  freeboard: 0.15,
};
const USUAL_FREEBOARD = { ...ROUND, freeboard: null };
const ONE_BENCH = "The tank was sized for one bench";

const recirculationTank: MistakeRow[] = [
  [ONE_BENCH, ROUND, (120 + 24 + 40) * 1.15],
  [ONE_BENCH, USUAL_FREEBOARD, (120 + 24 + 40) * 1.1],
  ["What the pots take up was left out", ROUND, (480 + 40) * 1.15],
  ["Water below the pump's intake was counted as usable", ROUND, (480 + 24) * 1.15],
  ["The freeboard was left out", ROUND, 480 + 24 + 40],
  ["The freeboard was left out", USUAL_FREEBOARD, 480 + 24 + 40],
];

const US_TANK = { diameter: 8, depth: 7.5, units: "us" };
const METRIC_TANK = { diameter: 2.4, depth: 1.5, units: "metric" };
const RADIUS = "The diameter was used as a radius";
const SQUARE_FLOOR = "A square of the diameter was taken for the round floor";
const CUBES = "Cubic feet were taken for gallons, or cubic metres for litres";

const tankVolume: MistakeRow[] = [
  [RADIUS, US_TANK, (Math.PI * 8 ** 2 * 7.5 * FOOT3_IN3) / GALLON_IN3],
  [RADIUS, METRIC_TANK, Math.PI * 2.4 ** 2 * 1.5 * 1000],
  [SQUARE_FLOOR, US_TANK, (8 * 8 * 7.5 * FOOT3_IN3) / GALLON_IN3],
  [SQUARE_FLOOR, METRIC_TANK, 2.4 * 2.4 * 1.5 * 1000],
  [CUBES, US_TANK, Math.PI * 4 ** 2 * 7.5],
  [CUBES, METRIC_TANK, Math.PI * 1.2 ** 2 * 1.5],
];

expectMistakesOfGroup("Flood benches, tanks, supply", {
  DAYS_OF_STORAGE: daysOfStorage,
  FILL_MINUTES: fillMinutes,
  FLOOD_VOLUME: floodVolume,
  PEAK_SUPPLY_FLOW: peakSupplyFlow,
  RAIN_HARVEST: rainHarvest,
  RECIRCULATION_TANK: recirculationTank,
  TANK_VOLUME: tankVolume,
});
