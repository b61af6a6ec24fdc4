import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const peakSupplyFlow = defineFunction({
  name: "PEAK_SUPPLY_FLOW",
  group: "Flood benches, tanks, supply",
  summary: "Flow that the well or the main must bring on the hottest day",
  formula: "Q = k A d / (60 h)",
  source: [
    cite("UMASS_WATER", "peak use of a greenhouse: 0.3 to 0.4 gal/ft2/day, which is 12 to 16 mm"),
    cite("DEFINITION", "volume = flow x time"),
  ],
  assumptions: [
    "Depth is the gross water of the hottest day over the whole area, losses in it: a design figure, above any reference ET. 0.3 to 0.4 gal/ft2 are 0.48 to 0.64 in.",
    "A supply too small for those hours needs a tank that fills while nothing runs.",
    "Every zone must be watered in those hours: a zone that needs more flow than this at once still needs it.",
  ],
  params: {
    area: { quantity: "area", symbol: "A", above: 0, about: "Area that is irrigated" },
    depth: {
      quantity: "water depth per day",
      symbol: "d",
      above: 0,
      about: "Gross water of the hottest day, as a depth over the area",
      usual: {
        us: [0.1, 2],
        metric: [2.5, 51],
        low: "looks like a mean day, or like ft",
        high: "looks like the other unit, or like a week's water",
        source: cite("CLEMSON", "1/2 to 1 in a day over the bed; pots on stakes need less, open sprinklers more"),
      },
    },
    hours_per_day: {
      quantity: "hours",
      symbol: "h",
      above: 0,
      atMost: 24,
      about: "Hours of the day in which water runs",
      usual: {
        us: [2, 16],
        metric: [2, 16],
        high: "no hours left for a repair or a second round",
        source: cite("PRACTICE", "daylight of a working day"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: { quantity: "flow", symbol: "Q", about: "Flow of the supply while water runs" },
  examples: [
    {
      given: { area: 43560, depth: 1, hours_per_day: 8, units: "us" },
      gives: 56.57,
      within: 0.01,
      from: cite("ARITHMETIC", "an acre-inch, 27,154 gal, in 480 minutes"),
    },
    {
      given: { area: 2400, depth: 0.64, hours_per_day: 4, units: "us" },
      gives: 3.98961038961039,
      from: cite("ARITHMETIC", "0.64 in is 0.4 gal/ft2: 957.5 gal in 240 minutes"),
    },
    {
      given: { area: 10000, depth: 8, hours_per_day: 8, units: "metric" },
      gives: 500 / 3,
      from: cite("ARITHMETIC", "a hectare at 8 mm, 80 m3 in 8 h: 10 m3/h = 166.67 L/min"),
    },
  ],
  mistakes: [
    { slip: "The water was spread over 24 hours", instead: () => ({ hours_per_day: 24 }) },
    { slip: "The flow was left per hour", answer: (_given, _constants, right) => right * 60 },
    {
      slip: "Gallons a square foot were typed as inches",
      answer: (_given, { k }, right) => right * k,
    },
  ],
  seeAlso: ["DAYS_OF_STORAGE", "ZONE_FLOW", "ZONES_AT_ONCE", "RUN_MINUTES_FROM_ET"],
  caution:
    "A supply sized on a mean day leaves plants dry on the hottest. Water use may need a permit; drought rules come first.",
  compute({ area, depth, hours_per_day }, show, { constants: { k } }) {
    const volume = show("V = k * A * d", k * area * depth, "volume", "Water of the day");
    return show("Q = V / (60 * h)", volume / (60 * hours_per_day), "flow", "Flow while water runs");
  },
});
