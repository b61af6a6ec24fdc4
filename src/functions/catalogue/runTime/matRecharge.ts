import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const matRecharge = defineFunction({
  name: "MAT_RECHARGE",
  group: "Run time, zones, booms, mats",
  summary: "Water that fills a capillary mat again",
  formula: "V = (wet - dry) / w / As A f",
  source: cite("DEFINITION", "water held by a weighed square of the mat, carried over to the whole mat"),
  assumptions: [
    "Weigh a square cut from this mat: soaked and no longer dripping, then dry. Old mats with algae or salts hold less than new ones.",
    "Only what the mat itself lost. What the pots take up comes on top: the plants' use of the day (PLANT_WATER_DEMAND).",
    "The bench is level: a mat that slopes holds less at its upper end, and water runs off the lower one.",
    "Water weighs 1 kg a litre (8.345 lb a gallon).",
  ],
  params: {
    mat_area: { quantity: "area", symbol: "A", above: 0, about: "Area of the whole mat" },
    wet_weight: { quantity: "weight", symbol: "wet", above: 0, about: "Weight of the square, soaked and drained" },
    dry_weight: { quantity: "weight", symbol: "dry", above: 0, about: "Weight of the same square, dry" },
    sample_area: { quantity: "area", symbol: "As", above: 0, about: "Area of the square that was weighed" },
    depleted_fraction: {
      quantity: "fraction",
      symbol: "f",
      above: 0,
      atMost: 1,
      about: "Part of the water of the full mat that is gone; 1 is a dry mat",
      usual: {
        us: [0.1, 1],
        metric: [0.1, 1],
        low: "a mat this full needs no recharge yet",
        source: cite("PRACTICE", "capillary mats, filled again at a half or less"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { w: "weight of a volume of water" },
  result: { quantity: "volume", symbol: "V", about: "Water that the mat takes up" },
  examples: [
    {
      given: {
        mat_area: 30,
        wet_weight: 4.5,
        dry_weight: 0.5,
        sample_area: 1,
        depleted_fraction: 1,
        units: "metric",
      },
      gives: 120,
      from: cite("ARITHMETIC", "4 kg on 1 m2 is 4 L/m2; x 30 m2"),
    },
    {
      given: {
        mat_area: 240,
        wet_weight: 2.4,
        dry_weight: 0.4,
        sample_area: 4,
        depleted_fraction: 0.5,
        units: "us",
      },
      gives: 7.19,
      within: 0.001,
      from: cite("ARITHMETIC", "2 lb / 8.345 / 4 ft2 = 0.0599 gal/ft2; x 240 x 0.5"),
    },
  ],
  mistakes: [
    {
      slip: "The mat's own weight was left in",
      answer: ({ wet_weight, dry_weight }, _constants, right) => (right * wet_weight) / (wet_weight - dry_weight),
    },
    { slip: "The mat was taken as dry", instead: () => ({ depleted_fraction: 1 }) },
    {
      slip: "The part still held was taken for the part gone",
      answer: ({ depleted_fraction }, _constants, right) => (right * (1 - depleted_fraction)) / depleted_fraction,
    },
    { slip: "The square's area was left out", instead: () => ({ sample_area: 1 }) },
    {
      slip: "Pounds of water were taken for gallons",
      answer: (_given, { w }, right) => right * w,
    },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "WATER_FROM_WEIGHT"],
  caution:
    "A mat that dries out while pots still hold water breaks the contact: wet the pots from above once before relying on it. Salts gather on top of pots watered from below.",
  compute(given, show, { constants: { w }, refuse }) {
    const { mat_area, wet_weight: wet, dry_weight: dry, sample_area, depleted_fraction } = given;
    if (wet <= dry) throw refuse("wet_weight", wet, `it must be more than dry_weight (${dry}); were the two swapped?`);
    const held = show("H = (wet - dry) / w", (wet - dry) / w, "volume", "Water that the square holds");
    const full = show("Vf = H / As * A", (held / sample_area) * mat_area, "volume", "Water of the full mat");
    return show("V = Vf * f", full * depleted_fraction, "volume", "Water that is gone");
  },
});
