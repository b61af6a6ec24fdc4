import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const rainHarvest = defineFunction({
  name: "RAIN_HARVEST",
  group: "Flood benches, tanks, supply",
  summary: "Water that a roof or a bed of plastic brings in from a rain",
  formula: "V = k A P C",
  source: cite("ROOF_RAIN", "623 gal from 1,000 ft2 and 1 in; 1 mm on 1 m2 is 1 L"),
  assumptions: [
    "Footprint: the area that the roof covers on the ground with its gutters, not the sloping area, which is larger.",
    "The coefficient is the part that arrives: splash, wetting, gutters that run over and the first flush that is let go take the rest.",
    "What the tank has no room for is not taken off: hold a year's months against its size.",
  ],
  params: {
    area: { quantity: "area", symbol: "A", above: 0, about: "Footprint that the rain is collected from" },
    rain: {
      quantity: "water depth",
      symbol: "P",
      atLeast: 0,
      about: "Rain of a storm, a month or a year; 0 is a value, so leave no blank",
      usual: {
        us: [0, 80],
        metric: [0, 2000],
        high: "more than a wet year: check the units",
        source: cite("PRACTICE", "a storm to a wet year"),
      },
    },
    units: UNITS_PARAM,
    coefficient: {
      quantity: "fraction",
      symbol: "C",
      above: 0,
      atMost: 1,
      default: 0.9,
      about: "Part of the rain that arrives in the tank",
      usual: {
        us: [0.7, 0.95],
        metric: [0.7, 0.95],
        low: "hard roofs bring in more: check the gutters",
        high: "no roof brings in all of it",
        source: cite("PRACTICE", "hard roofs with gutters, 0.8 to 0.9"),
      },
    },
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: { quantity: "volume", symbol: "V", about: "Water brought in" },
  examples: [
    {
      given: { area: 1000, rain: 1, units: "us", coefficient: 1 },
      gives: 623,
      within: 0.5,
      from: cite("ROOF_RAIN", "623 gal per 1,000 ft2 and inch"),
    },
    {
      given: { area: 900, rain: 25, units: "metric", coefficient: 0.85 },
      gives: 19125,
      from: cite("ARITHMETIC", "900 x 25 = 22,500 L, of which 0.85"),
    },
    {
      given: { area: 6000, rain: 1.2, units: "us" },
      gives: 4039.48051948052,
      from: cite("ARITHMETIC", "6,000 x 1.2 = 7,200 x 144 / 231 = 4,488.31 gal, of which 0.9"),
    },
  ],
  mistakes: [
    { slip: "All of the rain was counted as arriving", instead: () => ({ coefficient: 1 }) },
    { slip: "Square feet times inches were taken for gallons", answer: (_given, { k }, right) => right / k },
    {
      slip: "The part that is lost was taken for the part that arrives",
      answer: ({ coefficient }, _constants, right) => (right * (1 - coefficient)) / coefficient,
    },
  ],
  seeAlso: ["TANK_VOLUME", "DAYS_OF_STORAGE", "EFFECTIVE_RAIN"],
  caution:
    "Rain water is not drinking water: label its outlets, and keep it apart from the public supply by an approved air gap or assembly. Follow local code.",
  compute({ area, rain, coefficient }, show, { constants: { k } }) {
    const fallen = show("W = k * A * P", k * area * rain, "volume", "Rain that falls on the footprint");
    return show("V = W * C", fallen * coefficient, "volume", "Water brought in");
  },
});
