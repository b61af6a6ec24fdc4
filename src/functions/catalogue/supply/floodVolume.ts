import { cite, defineFunction, UNITS_PARAM, type FunctionError } from "../../../kernel";

/** Part of a bench that the bases of pots cannot cover: tops that touch cover 0.79 of it, and bases are narrower. */
const MOST_COVERED = 0.6;

type Refuse = (argument: "pots" | "pot_base_diameter", value: unknown, itMust: string) => FunctionError;

/** Pots without a base, or more of them than can stand on the bench. */
function checkPots(pots: number, base: number, standing: number, displaced: number, refuse: Refuse): void {
  if (pots > 0 && base === 0) {
    throw refuse("pot_base_diameter", base, "with pots on the bench it must be more than 0, and a blank counts as 0");
  }
  const covered = displaced / standing;
  if (covered >= MOST_COVERED) {
    const percent = Math.round(100 * covered);
    const itMust = `they cover ${percent} % of the bench, and it must be less than 60 %; look at pot_base_diameter and its unit`;
    throw refuse("pots", pots, itMust);
  }
}

export const floodVolume = defineFunction({
  name: "FLOOD_VOLUME",
  group: "Flood benches, tanks, supply",
  summary: "Water that stands on a bench or floor when it is flooded",
  formula: "V = k A d - kp n a d",
  source: cite("GEOMETRY", "area times depth, less what the pots displace of it"),
  assumptions: [
    "The water is a load: 8.345 lb a US gallon, 1 kg a litre. 120 gal weigh 1,000 lb, and the pots come on top.",
    "Depth is the mean over the bench: one that is out of level is deeper at one end and shallower at the other, and so are its floods.",
    "Pots displace a straight column on the diameter at their base. What the substrate takes up is not in it: see FILL_MINUTES; nor is the water in the pipes.",
    "An empty bench takes the most water.",
  ],
  params: {
    bench_area: { quantity: "area", symbol: "A", above: 0, about: "Area inside the rim that the water covers" },
    flood_depth: {
      quantity: "water depth",
      symbol: "d",
      above: 0,
      about: "Depth of the standing water",
      usual: {
        us: [0.4, 1.5],
        metric: [10, 38],
        low: "looks like ft, or like cm",
        high: "deep for pots: check the units and the load",
        source: cite("SUBIRRIGATION_2011", "1/2 to 1 in deep; floors and large pots take more (common practice)"),
      },
    },
    units: UNITS_PARAM,
    pots: { quantity: "count", symbol: "n", atLeast: 0, default: 0, about: "Pots on the bench; 0 is an empty bench" },
    pot_base_diameter: {
      quantity: "pot size",
      symbol: "Db",
      atLeast: 0,
      default: 0,
      about: "Outside diameter of a pot at its base; needed with pots",
      usual: {
        us: [1, 20],
        metric: [2.5, 51],
        low: "looks like ft or m",
        high: "looks like mm",
        source: cite("PRACTICE", "pots that stand on benches and floors"),
      },
    },
  },
  unitConstants: { k: "volume of a depth on an area", kp: "volume of a depth on a pot" },
  result: { quantity: "volume", symbol: "V", about: "Standing water, without what the pots take up" },
  examples: [
    {
      given: { bench_area: 32, flood_depth: 1, units: "us" },
      gives: 19.95,
      within: 0.01,
      from: cite("ARITHMETIC", "4 by 8 ft under 1 in: 32 x 144 / 231 = 4,608 in3 / 231"),
    },
    {
      given: { bench_area: 240, flood_depth: 1, units: "us", pots: 480, pot_base_diameter: 4.25 },
      gives: 120.13,
      within: 0.01,
      from: cite("ARITHMETIC", "34,560 in3 less 480 x 14.186 in3 = 6,809 in3, over 231; a load of 1,002 lb"),
    },
    {
      given: { bench_area: 12, flood_depth: 25, units: "metric", pots: 180, pot_base_diameter: 10.03 },
      gives: 264.44,
      within: 0.01,
      from: cite("ARITHMETIC", "300 L less 180 x 79.01 cm2 x 2.5 cm = 35.56 L"),
    },
  ],
  mistakes: [
    { slip: "What the pots displace was left out", instead: () => ({ pots: 0 }) },
    {
      slip: "The pots' diameter was used as a radius",
      answer: ({ bench_area, flood_depth }, { k }, right) => {
        const standing = k * bench_area * flood_depth;
        return standing - 4 * (standing - right);
      },
    },
    { slip: "Square feet times inches were taken for gallons", answer: (_given, { k }, right) => right / k },
  ],
  seeAlso: ["FILL_MINUTES", "FLOOD_SCHEDULE", "RECIRCULATION_TANK"],
  caution:
    "Overloaded benches and floors give way. Before flooding deeper, or a bench made for less, ask its maker what it carries.",
  compute({ bench_area, flood_depth, pots, pot_base_diameter: base }, show, { constants: { k, kp }, refuse }) {
    const standing = show("W = k * A * d", k * bench_area * flood_depth, "volume", "Water on the bench without pots");
    const foot = show("a = PI() * Db^2 / 4", (Math.PI * base ** 2) / 4, "pot area", "Base of one pot");
    const displaced = show("P = kp * n * a * d", kp * pots * foot * flood_depth, "volume", "What the pots displace");
    checkPots(pots, base, standing, displaced, refuse);
    return show("V = W - P", standing - displaced, "volume", "Standing water");
  },
});
