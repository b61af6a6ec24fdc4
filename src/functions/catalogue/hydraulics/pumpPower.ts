import { cite, defineFunction, fromMetric, toMetric, UNITS_PARAM } from "../../../kernel";
import { PIPE_FLOW_PARAM } from "./pipe";
import { EFFICIENCY_PARAM, ELECTRICITY_CAUTION, HEAD_PARAM } from "./pumping";

export const pumpPower = defineFunction({
  name: "PUMP_POWER",
  group: "Pipe, emitter, pump",
  summary: "Power that the pump takes at its shaft",
  formula: "P = k Q H / e, k = 1 / 3954 (hp) or 1 / 6118 (kW)",
  source: cite("MERKLEY_ALLEN", "Eqs 221 to 224: power of the water over the efficiency of the pump"),
  assumptions: [
    "At the shaft, with the efficiency of the pump alone at this flow and head. For the power drawn from the line multiply the efficiencies of pump and motor, and take that product.",
    "Head is the total dynamic head in feet or metres, not psi or kPa.",
    "Water of 1 kg/L; handbooks print 3960 or 3956 in place of 3954, up to 0.15 % apart. Mechanical horsepower, 0.7457 kW; a metric horsepower is 0.7355 kW.",
    "Choose a motor with a margin, and read the pump's curve over the whole range of flows: the power may be highest elsewhere.",
  ],
  params: {
    flow: { ...PIPE_FLOW_PARAM, about: "Flow through the pump" },
    head: HEAD_PARAM,
    efficiency: {
      ...EFFICIENCY_PARAM,
      about: "Efficiency of the pump at this flow, a fraction",
      usual: {
        us: [0.4, 0.85],
        metric: [0.4, 0.85],
        low: "poor: far from the pump's best point, worn, or pump and motor together",
        high: "better than pumps of this size: check the plate",
        source: cite("PRACTICE", "small to large centrifugal pumps"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "power of a lifted flow", p: "head of a pressure" },
  result: {
    quantity: "power",
    symbol: "P",
    about: "Power at the pump's shaft",
    usual: {
      us: [0.1, 150],
      metric: [0.07, 110],
      low: "look for a flow of one emitter, or a head in bar",
      high: "look for a flow per hour, or an efficiency of a tenth",
      source: cite("PRACTICE", "pumps of nurseries"),
    },
  },
  examples: [
    {
      given: { flow: 100, head: 150, efficiency: 0.65, units: "us" },
      gives: 5.833,
      within: 0.005,
      from: cite("MERKLEY_ALLEN", "Eq. 222: 100 x 150 / 3956 / 0.65"),
    },
    {
      given: { flow: 500 / 3, head: 40, efficiency: 0.6, units: "metric" },
      gives: 1.816,
      within: 0.0005,
      from: cite("ARITHMETIC", "10 m3/h: 1000 x 9.80665 x 40 / 360 = 1.0896 kW in the water; / 0.6"),
    },
  ],
  mistakes: [
    {
      slip: "The power of the water was multiplied by the efficiency, not divided",
      answer: ({ efficiency }, _constants, right) => right * efficiency ** 2,
    },
    {
      slip: "The efficiency was left out",
      instead: () => ({ efficiency: 1 }),
    },
    {
      slip: "A pressure (psi or kPa) was typed where a head belongs",
      answer: (_given, { p }, right) => right / p,
    },
    {
      slip: "The flow per hour was taken as flow per minute",
      instead: ({ flow }) => ({ flow: 60 * flow }),
    },
    {
      slip: "Horsepower and kilowatts were confused",
      answer: ({ units }, _constants, right) =>
        units === "us" ? toMetric("power", right, "us") : fromMetric("power", right, "us"),
    },
  ],
  seeAlso: ["TOTAL_DYNAMIC_HEAD", "PUMP_ENERGY"],
  caution: `${ELECTRICITY_CAUTION} Pipes must bear the pressure of the pump against a closed valve.`,
  compute({ flow, head, efficiency }, show, { constants: { k } }) {
    const water = show("W = k * Q * H", k * flow * head, "power", "Power that the water takes up");
    return show("P = W / e", water / efficiency, "power", "Power at the shaft");
  },
});
