import { cite, defineFunction } from "../../../kernel";
import { EXPONENT_LIMITS, EXPONENT_USUAL, OUTLET_FLOW_PARAM, PRESSURE_PARAM } from "./emitterPressure";

export const emitterFlowAtPressure = defineFunction({
  name: "EMITTER_FLOW_AT_PRESSURE",
  group: "Pipe, emitter, pump",
  summary: "Flow of an emitter at another pressure than the one it was measured at",
  formula: "q = q0 (P / P0)^x",
  source: cite("FAO_MODULE9", "Equations 13 and 15: q = k H^x"),
  assumptions: [
    "Pressures at the emitter, both in one unit and both above the air's (gauge); heads in feet or metres do as well. The answer is in the unit of the flow.",
    "Exponent: 0.5 for most drippers, spray stakes, nozzles and sprinklers; about 0 for compensating ones; up to 1 for long thin tubes. Measure it with EMITTER_EXPONENT.",
    "A compensating emitter (0) holds its flow only within the maker's range of pressure: below it, it gives less, and just below its opening pressure nothing.",
    "Half the pressure is not half the flow: at 0.5 it is 0.71 of it.",
  ],
  params: {
    flow_ref: { ...OUTLET_FLOW_PARAM, symbol: "q0", about: "Flow known at the first pressure, in any unit of flow" },
    pressure_ref: { ...PRESSURE_PARAM, symbol: "P0", about: "Pressure at which that flow holds" },
    pressure: { ...PRESSURE_PARAM, symbol: "P", about: "Pressure asked for, in the same unit" },
    exponent: {
      quantity: "factor",
      symbol: "x",
      ...EXPONENT_LIMITS,
      guard: "physics ends at 0 and 1, and measured values scatter a little beyond",
      default: 0.5,
      about: "Exponent of the emitter: 0 compensating, 0.5 turbulent, 1 laminar",
      usual: EXPONENT_USUAL,
    },
  },
  result: {
    quantity: "emitter flow",
    symbol: "q",
    about: "Flow at that pressure, in the unit of the flow",
    usual: OUTLET_FLOW_PARAM.usual,
  },
  examples: [
    {
      given: { flow_ref: 4, pressure_ref: 10, pressure: 12, exponent: 0.42 },
      gives: 4.32,
      within: 0.008,
      from: cite("FAO_MODULE9", "Example 8: 4 L/h at 10 m; 4.32 L/h asks for 12 m (12.0 printed without decimals)"),
    },
    {
      given: { flow_ref: 6, pressure_ref: 20, pressure: 10 },
      gives: 4.242640687119285,
      from: cite("ARITHMETIC", "6 x sqrt(1/2) = 3 sqrt(2)"),
    },
    {
      given: { flow_ref: 2, pressure_ref: 150, pressure: 250, exponent: 0 },
      gives: 2,
      from: cite("DEFINITION", "a compensating emitter gives the same at any pressure of its range"),
    },
  ],
  mistakes: [
    {
      slip: "Flow was taken to follow the pressure itself",
      instead: () => ({ exponent: 1 }),
    },
    {
      slip: "The pressures were swapped",
      instead: ({ pressure_ref, pressure }) => ({ pressure_ref: pressure, pressure: pressure_ref }),
    },
    {
      slip: "The exponent of a plain emitter was used for this one",
      instead: () => ({ exponent: 0.5 }),
    },
    {
      slip: "The flow was left as it was",
      answer: ({ flow_ref }) => flow_ref,
    },
  ],
  seeAlso: ["EMITTER_EXPONENT", "EMITTER_FLOW", "LATERAL_LOSS", "RUN_MINUTES"],
  caution:
    "A pressure that falls waters every plant less in the same minutes. Measure the flow again after a pump, filter or zone was changed.",
  compute({ flow_ref, pressure_ref, pressure, exponent }, show) {
    const ratio = show("r = P / P0", pressure / pressure_ref, "factor", "The new pressure over the first");
    return show("q = q0 * r^x", flow_ref * ratio ** exponent, "emitter flow", "Flow at the new pressure");
  },
});
