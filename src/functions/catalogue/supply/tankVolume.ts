import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const tankVolume = defineFunction({
  name: "TANK_VOLUME",
  group: "Flood benches, tanks, supply",
  summary: "Water in an upright round tank",
  formula: "V = k pi D2 h / 4",
  source: cite("GEOMETRY", "volume of a cylinder"),
  assumptions: [
    "Upright and round, with a flat floor. Inside diameter; of a tank with a taper, that at half the depth of the water.",
    "Depth of the water, up to the overflow at most, and not the height of the wall: what is printed on a tank may be a good deal less than its wall would hold.",
    "Water below the outlet is in it, although no pump reaches it.",
  ],
  params: {
    diameter: {
      quantity: "length",
      symbol: "D",
      above: 0,
      about: "Inside diameter",
      usual: {
        us: [1.5, 60],
        metric: [0.5, 18],
        high: "looks like inches or cm",
        source: cite("PRACTICE", "drums to bolted steel tanks"),
      },
    },
    depth: {
      quantity: "length",
      symbol: "h",
      above: 0,
      about: "Depth of the water",
      usual: {
        us: [0.5, 30],
        metric: [0.15, 9],
        high: "looks like inches or cm",
        source: cite("PRACTICE", "drums to bolted steel tanks"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of an area and a length" },
  result: { quantity: "volume", symbol: "V", about: "Volume of the water" },
  examples: [
    {
      given: { diameter: 8, depth: 7.5, units: "us" },
      gives: 2820,
      within: 2,
      from: cite(
        "ARITHMETIC",
        "50.265 ft2 x 7.5 ft = 376.99 ft3 x 1,728 / 231; such a tank is sold as one of 2,300 gal",
      ),
    },
    {
      given: { diameter: 2, depth: 1.5, units: "metric" },
      gives: 1500 * Math.PI,
      from: cite("ARITHMETIC", "pi m2 x 1.5 m = 4.712 m3"),
    },
  ],
  mistakes: [
    { slip: "The diameter was used as a radius", instead: ({ diameter }) => ({ diameter: 2 * diameter }) },
    {
      slip: "A square of the diameter was taken for the round floor",
      answer: (_given, _constants, right) => (right * 4) / Math.PI,
    },
    {
      slip: "Cubic feet were taken for gallons, or cubic metres for litres",
      answer: (_given, { k }, right) => right / k,
    },
  ],
  seeAlso: ["RECIRCULATION_TANK", "DAYS_OF_STORAGE", "RAIN_HARVEST", "TANK_DOSE"],
  caution:
    "A full tank is heavy, 8.345 lb a gallon, 1 kg a litre: tall tanks and those on a roof or stand need a professional. Nobody enters a tank alone.",
  compute({ diameter, depth }, show, { constants: { k } }) {
    const floor = show("A = PI() * D^2 / 4", (Math.PI * diameter ** 2) / 4, "area", "Floor of the tank");
    return show("V = k * A * h", k * floor * depth, "volume", "Volume of the water");
  },
});
