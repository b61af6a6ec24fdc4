import { cite, defineFunction } from "../../../kernel";
import { EXPONENT_LIMITS, EXPONENT_USUAL, OUTLET_FLOW_PARAM, PRESSURE_PARAM } from "./emitterPressure";

export const emitterExponent = defineFunction({
  name: "EMITTER_EXPONENT",
  group: "Pipe, emitter, pump",
  summary: "Response of an emitter to pressure, from its flow at two pressures",
  formula: "x = ln(q1 / q2) / ln(P1 / P2)",
  source: cite("FAO_MODULE9", "Equation 14, from q = k H^x"),
  assumptions: [
    "The same emitter, or the mean of the same ten or more, at two pressures measured at the emitter, both in one unit and both above the air's (gauge); heads do as well.",
    "Take pressures far apart, one twice the other: at 10 and 11 psi a reading that is 1 % off moves the answer by 0.1.",
    "About 0: compensating. About 0.5: turbulent, as most drippers, stakes and nozzles. Near 1: laminar. The answer holds between the two pressures, not below the opening pressure of a compensating emitter.",
  ],
  params: {
    flow_1: { ...OUTLET_FLOW_PARAM, symbol: "q1", about: "Flow at the first pressure, in any unit of flow" },
    pressure_1: { ...PRESSURE_PARAM, symbol: "P1", about: "The first pressure" },
    flow_2: { ...OUTLET_FLOW_PARAM, symbol: "q2", about: "Flow at the second pressure, in the same unit" },
    pressure_2: { ...PRESSURE_PARAM, symbol: "P2", about: "The second pressure, in the same unit" },
  },
  result: { quantity: "factor", symbol: "x", about: "Exponent of the emitter", usual: EXPONENT_USUAL },
  examples: [
    {
      given: { flow_1: 4.32, pressure_1: 12, flow_2: 4, pressure_2: 10 },
      gives: 0.42,
      within: 0.0084,
      from: cite("FAO_MODULE9", "Example 8 read the other way: 4 L/h at 10 m, 4.32 L/h at 12 m, exponent 0.42"),
    },
    {
      given: { flow_1: 8, pressure_1: 40, flow_2: 4, pressure_2: 10 },
      gives: 0.5,
      from: cite("ARITHMETIC", "twice the flow at four times the pressure: ln 2 / ln 4"),
    },
    {
      given: { flow_1: 2, pressure_1: 250, flow_2: 2, pressure_2: 100 },
      gives: 0,
      from: cite("DEFINITION", "a compensating emitter gives the same at both pressures"),
    },
  ],
  mistakes: [
    {
      slip: "Flow and pressure were swapped",
      answer: (_given, _constants, right) => 1 / right,
    },
    {
      slip: "Ratios were divided, not their logarithms",
      answer: ({ flow_1, flow_2, pressure_1, pressure_2 }) => flow_1 / flow_2 / (pressure_1 / pressure_2),
    },
    {
      slip: "The change of flow was divided by the change of pressure",
      answer: ({ flow_1, flow_2, pressure_1, pressure_2 }) => (flow_1 - flow_2) / (pressure_1 - pressure_2),
    },
  ],
  seeAlso: ["EMITTER_FLOW_AT_PRESSURE", "EMITTER_FLOW"],
  compute({ flow_1, pressure_1, flow_2, pressure_2 }, show, { refuse }) {
    const flows = show("a = LN(q1 / q2)", Math.log(flow_1 / flow_2), "factor", "Logarithm of the ratio of flows");
    const pressures = show(
      "b = LN(P1 / P2)",
      Math.log(pressure_1 / pressure_2),
      "factor",
      "Logarithm of the ratio of pressures",
    );
    if (pressures === 0) throw refuse("pressure_2", pressure_2, "it must differ from pressure_1");
    const exponent = show("x = a / b", flows / pressures, "factor", "Exponent");
    const { atLeast, atMost } = EXPONENT_LIMITS;
    if (!(exponent >= atLeast && exponent <= atMost)) {
      const itMust = `it must fit the other readings: an emitter's exponent lies between 0 and 1, and these give less than ${atLeast} or more than ${atMost}; were flow and pressure swapped?`;
      throw refuse("flow_2", flow_2, itMust);
    }
    return exponent;
  },
});
