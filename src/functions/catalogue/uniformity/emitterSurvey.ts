import { cite, defineFunction } from "../../../kernel";
import { EMITTER_FLOW_PARAM } from "../runTime/emitters";
import { mean } from "./spread";

/** A flow that misses an edge of the band by float dust alone is on it: 0.72 is a little less than 0.8 x 0.9. */
const DUST = 1e-9;

interface Tally {
  readonly none: number;
  readonly low: number;
  readonly high: number;
}

function tally(flows: readonly number[], lowEdge: number, highEdge: number): Tally {
  const tooLow = lowEdge * (1 - DUST);
  const tooHigh = highEdge * (1 + DUST);
  let none = 0;
  let low = 0;
  let high = 0;
  for (const flow of flows) {
    if (flow === 0) none += 1;
    else if (flow < tooLow) low += 1;
    else if (flow > tooHigh) high += 1;
  }
  return { none, low, high };
}

export const emitterSurvey = defineFunction({
  name: "EMITTER_SURVEY",
  group: "Flow and uniformity",
  summary: "How many emitters of a zone give nothing, too little, what they should, or too much",
  formula: "in band: low <= flow / rated <= high",
  source: cite("PRACTICE", "emitter walk: 20 % around the rated flow"),
  assumptions: [
    "Every cell of the range is a tested emitter: a blank cell and 0 both count as no flow, and as 0 in the mean. Point at the tested emitters alone.",
    "No flow: plugged, or out of the pot. Low: partly plugged, kinked, or low pressure. High: torn, lost its tip, or of another size.",
    "Both edges of the band are in band.",
    "Mean / rated far from 1 with few out of band: check the pressure, or the rated flow.",
  ],
  params: {
    flows: {
      kind: "numbers",
      quantity: "emitter flow",
      symbol: "x",
      atLeast: 0,
      blanks: "zero",
      about: "Measured flows, one cell an emitter; blank or 0 is no flow; a range of any shape",
    },
    rated_flow: {
      ...EMITTER_FLOW_PARAM,
      symbol: "qr",
      about: "Flow that the emitter should give at this pressure, in the same unit",
    },
    low: {
      quantity: "factor",
      symbol: "lo",
      above: 0,
      below: 1,
      default: 0.8,
      hint: "a ratio to the rated flow, so 0.8 and not 80",
      about: "Lower edge of the band, as a ratio to the rated flow",
    },
    high: {
      quantity: "factor",
      symbol: "hi",
      above: 1,
      atMost: 10,
      guard: "a larger one is a percentage",
      default: 1.2,
      hint: "a ratio to the rated flow, so 1.2 and not 120",
      about: "Upper edge of the band, as a ratio to the rated flow",
    },
  },
  result: {
    header: false,
    table: [
      { name: "emitters", quantity: "text" },
      { name: "count", quantity: "count" },
      { name: "share", quantity: "fraction" },
    ],
    about: "Six rows: tested, no flow, low, in band, high with count and share, then mean / rated",
  },
  examples: [
    {
      given: {
        flows: [
          [6, 5.8, 6.1, 0, 6.3],
          [4.2, 5.9, null, 7.5, 6.2],
        ],
        rated_flow: 6,
      },
      gives: [
        ["tested", 10, 1],
        ["no flow", 2, 0.2],
        ["low", 1, 0.1],
        ["in band", 6, 0.6],
        ["high", 1, 0.1],
        ["mean / rated", "", 0.8],
      ],
      from: cite("ARITHMETIC", "4.2 / 6 = 0.7 is low, 7.5 / 6 = 1.25 high; mean 48 / 10 = 4.8 over 6"),
    },
    {
      given: { flows: [[1.6], [2.4], [2], [2]], rated_flow: 2 },
      gives: [
        ["tested", 4, 1],
        ["no flow", 0, 0],
        ["low", 0, 0],
        ["in band", 4, 1],
        ["high", 0, 0],
        ["mean / rated", "", 1],
      ],
      from: cite("ARITHMETIC", "1.6 / 2 = 0.8 and 2.4 / 2 = 1.2 are the edges, and in band"),
    },
  ],
  mistakes: [],
  seeAlso: ["EMITTER_FLOW", "DU_LOW_QUARTER", "STATISTICAL_UNIFORMITY", "UNIFORMITY_AUDIT"],
  caution:
    "One emitter to a pot has no neighbour: a plant without flow dries within hours on a hot day. Mend those first, then look at evenness.",
  compute({ flows, rated_flow: rated, low: lowest, high: highest }, show) {
    const n = show("n = COUNT(x)", flows.length, "count", "Emitters tested");
    const lowEdge = show("ql = lo * qr", lowest * rated, "emitter flow", "Lower edge of the band");
    const highEdge = show("qh = hi * qr", highest * rated, "emitter flow", "Upper edge of the band");
    const { none, low, high } = tally(flows, lowEdge, highEdge);
    show("n0 = COUNTIF(x, 0)", none, "count", "No flow");
    show('nl = COUNTIF(x, "<" & ql * (1 - 1E-9)) - n0', low, "count", "Low: below the lower edge, but not 0");
    show('nh = COUNTIF(x, ">" & qh * (1 + 1E-9))', high, "count", "High: above the upper edge");
    const inBand = show("nb = n - n0 - nl - nh", n - none - low - high, "count", "In band, both edges included");
    const m = show("m = AVERAGE(x)", mean(flows), "emitter flow", "Mean flow, no flow counted as 0");
    return [
      ["tested", n, 1],
      ["no flow", none, none / n],
      ["low", low, low / n],
      ["in band", inBand, inBand / n],
      ["high", high, high / n],
      ["mean / rated", "", show("a = m / qr", m / rated, "factor", "Mean against the rated flow")],
    ];
  },
});
