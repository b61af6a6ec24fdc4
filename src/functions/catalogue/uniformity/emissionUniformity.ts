import { cite, defineFunction } from "../../../kernel";

/** Lowest quarter of a normal spread: this many standard deviations below its mean. */
const LOW_QUARTER = 1.27;

export const emissionUniformity = defineFunction({
  name: "EMISSION_UNIFORMITY",
  group: "Flow and uniformity",
  summary: "How even a drip design can be, from emitter make and pressure",
  formula: "EU = (1 - 1.27 Cv / sqrt(n)) qmin / qmean",
  source: [
    cite("KELLER_KARMELI", "design emission uniformity"),
    cite("EP405", "used with it for the design of drip systems"),
  ],
  assumptions: [
    "A figure of the design. In the field measure the flows and take DU_LOW_QUARTER.",
    "The lowest flow is that of the lowest pressure in the zone, of an emitter as good as the rest. A measured low-quarter flow holds the variation of make already, and would count it twice.",
    "n are the emitters of one plant, which make up for one another; not the emitters that were tested. An emitter shared by two plants counts as 1.",
  ],
  params: {
    variation: {
      quantity: "fraction",
      symbol: "Cv",
      atLeast: 0,
      atMost: 0.5,
      guard: "no emitter is sold that varies by more",
      about: "Maker's coefficient of variation of new emitters; 0 is a value, so leave no blank",
      usual: {
        us: [0.01, 0.11],
        metric: [0.01, 0.11],
        low: "hardly any make is this even",
        high: "poor for point-source emitters",
        source: cite("EP405", "Table 1, point source: below 0.05 excellent, above 0.11 poor"),
      },
    },
    emitters_per_plant: {
      quantity: "count",
      symbol: "n",
      atLeast: 1,
      guard: "an emitter shared by two plants counts as 1",
      about: "Emitters that serve one plant",
      usual: {
        us: [1, 8],
        metric: [1, 8],
        high: "looks like the number of emitters tested",
        source: cite("PRACTICE", "pots and tubs"),
      },
    },
    flow_min: {
      quantity: "emitter flow",
      symbol: "qmin",
      above: 0,
      about: "Flow of an emitter at the lowest pressure of the zone",
    },
    flow_mean: {
      quantity: "emitter flow",
      symbol: "qmean",
      above: 0,
      about: "Mean flow of the zone, in the same unit",
    },
  },
  result: {
    quantity: "fraction",
    symbol: "EU",
    about: "Design emission uniformity",
    usual: {
      us: [0.8, 0.97],
      metric: [0.8, 0.97],
      low: "check the pressure over the zone, then the make of the emitter",
      high: "check the variation and the lowest pressure",
      source: cite("EP405", "0.80 to 0.95 by slope and spacing"),
    },
  },
  examples: [
    {
      given: { variation: 0.05, emitters_per_plant: 2, flow_min: 3.6, flow_mean: 3.8 },
      gives: 0.9048,
      within: 0.0001,
      from: cite("ARITHMETIC", "1 - 1.27 x 0.05 / 1.41421 = 0.95510; x 3.6 / 3.8"),
    },
    {
      given: { variation: 0.07, emitters_per_plant: 1, flow_min: 2, flow_mean: 2 },
      gives: 0.9111,
      from: cite("ARITHMETIC", "no difference of pressure: 1 - 1.27 x 0.07"),
    },
  ],
  mistakes: [
    {
      slip: "The variation of make was left out",
      answer: ({ flow_min, flow_mean }) => flow_min / flow_mean,
    },
    {
      slip: "The differences of pressure were left out",
      answer: ({ flow_min, flow_mean }, _constants, right) => (right * flow_mean) / flow_min,
    },
    {
      slip: "The variation was divided by n, not by its square root",
      answer: ({ variation, emitters_per_plant, flow_min, flow_mean }) =>
        ((1 - (LOW_QUARTER * variation) / emitters_per_plant) * flow_min) / flow_mean,
    },
    {
      slip: "The emitters per plant were left out",
      instead: () => ({ emitters_per_plant: 1 }),
    },
    {
      slip: "The flows were divided the wrong way round",
      answer: ({ flow_min, flow_mean }, _constants, right) => right * (flow_mean / flow_min) ** 2,
    },
  ],
  seeAlso: ["DU_LOW_QUARTER", "STATISTICAL_UNIFORMITY", "EMITTER_FLOW_AT_PRESSURE", "GROSS_WATER"],
  caution: "A design figure falls with every plugged emitter: audit the zone before a schedule rests on it.",
  compute({ variation, emitters_per_plant, flow_min, flow_mean }, show, { refuse }) {
    if (flow_min > flow_mean) {
      throw refuse("flow_min", flow_min, `it must be flow_mean (${flow_mean}) or less; were the two swapped?`);
    }
    const made = show(
      "M = 1 - 1.27 * Cv / SQRT(n)",
      1 - (LOW_QUARTER * variation) / Math.sqrt(emitters_per_plant),
      "fraction",
      "What the variation of make leaves",
    );
    const pressed = show(
      "P = qmin / qmean",
      flow_min / flow_mean,
      "fraction",
      "What the differences of pressure leave",
    );
    return show("EU = M * P", made * pressed, "fraction", "Design emission uniformity");
  },
});
