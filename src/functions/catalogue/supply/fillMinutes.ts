import { cite, defineFunction, type NumberParam } from "../../../kernel";

/** Flow that reaches one bench: the pump's flow over the benches that are open at once. */
export const BENCH_FLOW_USUAL = {
  us: [2, 100],
  metric: [7.5, 380],
  low: "a bench fills slowly from so little: check the units",
  high: "looks like a flow per hour",
  source: cite("PRACTICE", "pumps of flood benches and floors"),
} as const satisfies NonNullable<NumberParam["usual"]>;

export const fillMinutes = defineFunction({
  name: "FILL_MINUTES",
  group: "Flood benches, tanks, supply",
  summary: "Minutes that the pump takes to flood a bench",
  formula: "t = (V + U) / q",
  source: cite("DEFINITION", "volume = flow x time; what the pots take up while it fills must be pumped too"),
  assumptions: [
    "All of the uptake is counted while the bench fills. What is taken up during the soak only lowers the water a little.",
    "The flow that reaches this bench: a pump that feeds two at once gives each half. Measure it: the seconds to fill a bucket at the inlet.",
  ],
  params: {
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Standing water on the full bench" },
    fill_flow: {
      quantity: "flow",
      symbol: "q",
      above: 0,
      about: "Flow that reaches the bench, in the same volume unit per minute",
      usual: BENCH_FLOW_USUAL,
    },
    uptake: {
      quantity: "volume",
      symbol: "U",
      atLeast: 0,
      default: 0,
      about: "What all pots of the bench take up, in the same unit; 0 is none",
    },
  },
  result: {
    quantity: "minutes",
    symbol: "t",
    about: "Minutes from the start of the pump to the full bench",
    usual: {
      us: [1, 10],
      metric: [1, 10],
      low: "hardly ever this fast: look for a flow per hour",
      high: "slow: pots at the inlet stand in water much longer than those at the far end",
      source: cite("PRACTICE", "flooded within 10 minutes"),
    },
  },
  examples: [
    {
      given: { volume: 19.95, fill_flow: 3.99 },
      gives: 5,
      from: cite("ARITHMETIC", "19.95 gal at 3.99 gal/min"),
    },
    {
      given: { volume: 120, fill_flow: 15, uptake: 6 },
      gives: 8.4,
      from: cite("ARITHMETIC", "(120 + 6) / 15"),
    },
  ],
  mistakes: [
    { slip: "What the pots take up was left out", instead: () => ({ uptake: 0 }) },
    {
      slip: "The uptake was taken off, not added",
      answer: ({ volume, fill_flow, uptake }) => (volume - uptake) / fill_flow,
    },
    { slip: "The flow per minute was taken as flow per hour", answer: (_given, _constants, right) => right * 60 },
    { slip: "The ratio was inverted: flow over volume", answer: (_given, _constants, right) => 1 / right },
  ],
  seeAlso: ["FLOOD_VOLUME", "FLOOD_SCHEDULE", "BUCKET_FLOW"],
  caution:
    "Long floods drown roots and spread disease. Where a bench fills slowly, mend the flow before lengthening the flood.",
  compute({ volume, fill_flow, uptake }, show) {
    const pumped = show("W = V + U", volume + uptake, "volume", "What the pump must bring");
    return show("t = W / q", pumped / fill_flow, "minutes", "Minutes to fill");
  },
});
