import { cite, defineFunction } from "../../../kernel";

/** Daily amounts that cancel but for float dust leave nothing to draw from the store. */
const DUST = 1e-9;

export const daysOfStorage = defineFunction({
  name: "DAYS_OF_STORAGE",
  group: "Flood benches, tanks, supply",
  summary: "Days that a pond or tank lasts",
  formula: "t = V / (use + loss - inflow)",
  source: cite("DEFINITION", "volume over what leaves it each day, less what comes in"),
  assumptions: [
    "All four in one volume unit, the last three per day: gallons, litres, cubic metres, acre-inches.",
    "Usable is what lies above the pump's intake, not the whole pond.",
    "Inflow is what surely comes, such as a well or water that returns. Loss falls and inflow ends as a pond goes down in a drought: work it again with the figures of the day.",
    "Where the inflow covers use and loss the store does not go down, and the answer is #N/A.",
  ],
  params: {
    usable_volume: { quantity: "volume", symbol: "V", above: 0, about: "Water that can be pumped from the store" },
    daily_use: { quantity: "volume", symbol: "use", above: 0, about: "Use of a day, in the same unit" },
    daily_loss: {
      quantity: "volume",
      symbol: "loss",
      atLeast: 0,
      default: 0,
      about: "Evaporation and seepage of a day; 0 is none",
    },
    daily_inflow: {
      quantity: "volume",
      symbol: "inflow",
      atLeast: 0,
      default: 0,
      about: "What comes in on a day; 0 is none",
    },
  },
  result: {
    quantity: "days",
    symbol: "t",
    about: "Days until the usable volume is gone",
    usual: {
      us: [1, 180],
      metric: [1, 180],
      low: "less than a day: no time to mend a pump",
      high: "longer than a season: check whether all are in one unit",
      source: cite("PRACTICE", "a day or two of recycled water, up to a dry season"),
    },
  },
  examples: [
    {
      given: { usable_volume: 4000, daily_use: 180, daily_loss: 12.25, daily_inflow: 30 },
      gives: 24.65,
      within: 0.01,
      from: cite("ARITHMETIC", "4,000 / (180 + 12.25 - 30) = 4,000 / 162.25"),
    },
    {
      given: { usable_volume: 90000, daily_use: 15000 },
      gives: 6,
      from: cite("ARITHMETIC", "90,000 / 15,000"),
    },
  ],
  mistakes: [
    { slip: "Evaporation and seepage were left out", instead: () => ({ daily_loss: 0 }) },
    { slip: "What comes in was left out", instead: () => ({ daily_inflow: 0 }) },
    {
      slip: "What comes in was added to the use, not taken off",
      answer: ({ usable_volume, daily_use, daily_loss, daily_inflow }) =>
        usable_volume / (daily_use + daily_loss + daily_inflow),
    },
  ],
  seeAlso: ["TANK_VOLUME", "RAIN_HARVEST", "PEAK_SUPPLY_FLOW", "PLANT_WATER_DEMAND"],
  caution:
    "The last days of a store are its worst water: salt and silt gather. Pumping may need a permit, and drought rules come first.",
  compute({ usable_volume, daily_use, daily_loss, daily_inflow }, show, { noAnswer }) {
    const leaving = show("out = use + loss", daily_use + daily_loss, "volume", "What leaves on a day");
    const net = show("net = out - inflow", leaving - daily_inflow, "volume", "What the store gives on a day");
    if (net <= DUST * leaving) {
      throw noAnswer("daily_inflow covers use and loss; the store does not go down", "daily_inflow");
    }
    return show("t = V / net", usable_volume / net, "days", "Days until it is gone");
  },
});
