import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const totalDynamicHead = defineFunction({
  name: "TOTAL_DYNAMIC_HEAD",
  group: "Pipe, emitter, pump",
  summary: "Head that the pump must make: lift, pressure at the outlet and friction together",
  formula: "H = z + k P + hf, k = 2.31 ft per psi or 0.102 m per kPa",
  source: cite("MERKLEY_ALLEN", "Eq. 226, total dynamic head, without the velocity head"),
  assumptions: [
    "Lift is counted from the water level while pumping, drawdown included. 0 is a value for all three, so leave no blank.",
    "The pressure (gauge) is that of the emitter, nozzle or regulator, not of the pump. A bar is 100 kPa.",
    "Friction of the whole way, suction pipe, filter, fittings and valves included.",
    "Water of 1 kg/L: 2.3067 ft per psi, where handbooks print 2.31. Velocity head is left out; at 5 ft/s (1.5 m/s) it is 0.4 ft (0.12 m).",
    "Where lift, pressure and friction come to 0 or less the source feeds the outlet by itself, and the answer is #N/A: no pump is needed.",
  ],
  params: {
    lift: {
      quantity: "length",
      symbol: "z",
      about: "Height of the outlet above the water level while pumping; below 0 where the source lies higher",
      usual: { us: [-50, 300], metric: [-15, 90], source: cite("PRACTICE", "ponds and wells of nurseries") },
    },
    outlet_pressure: {
      quantity: "pressure",
      symbol: "P",
      atLeast: 0,
      about: "Pressure wanted at the outlet; 0 for an open end",
      usual: {
        us: [0, 100],
        metric: [0, 700],
        high: "looks like feet of head, or like kPa or metres in the wrong column",
        source: cite("PRACTICE", "open tanks to large sprinklers"),
      },
    },
    friction_head: {
      quantity: "length",
      symbol: "hf",
      atLeast: 0,
      about: "Head lost by friction from the water's intake to the outlet",
      usual: { us: [0, 100], metric: [0, 30], source: cite("PRACTICE", "pipes and filters of nurseries") },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "head of a pressure" },
  result: {
    quantity: "length",
    symbol: "H",
    about: "Total dynamic head of the pump",
    usual: {
      us: [10, 500],
      metric: [3, 150],
      low: "hardly a pump's work: look for a pressure in bar",
      high: "look for feet or metres typed as psi or kPa",
      source: cite("PRACTICE", "pumps of nurseries"),
    },
  },
  examples: [
    {
      given: { lift: 40, outlet_pressure: 45, friction_head: 12, units: "us" },
      gives: 155.8,
      within: 0.05,
      from: cite("ARITHMETIC", "40 + 45 x 2.3067 + 12 = 40 + 103.80 + 12"),
    },
    {
      given: { lift: 0, outlet_pressure: 9.807, friction_head: 0, units: "metric" },
      gives: 1,
      within: 0.0001,
      from: cite("FAO56", "Annex 1: 1 cm of water is 0.09807 kPa"),
    },
    {
      given: { lift: -3, outlet_pressure: 196.133, friction_head: 2.5, units: "metric" },
      gives: 19.5,
      from: cite("ARITHMETIC", "196.133 / 9.80665 = 20 m; -3 + 20 + 2.5"),
    },
  ],
  mistakes: [
    {
      slip: "The pressure was added as it stood, without turning it into head",
      answer: ({ lift, outlet_pressure, friction_head }) => lift + outlet_pressure + friction_head,
    },
    {
      slip: "The pressure was divided by the constant, not multiplied",
      answer: ({ lift, outlet_pressure, friction_head }, { k }) => lift + outlet_pressure / k + friction_head,
    },
    {
      slip: "Friction was left out",
      instead: () => ({ friction_head: 0 }),
    },
    {
      slip: "The pressure at the outlet was left out",
      instead: () => ({ outlet_pressure: 0 }),
    },
    {
      slip: "The lift was left out",
      instead: () => ({ lift: 0 }),
    },
    {
      slip: "The lift was given the wrong sign",
      instead: ({ lift }) => ({ lift: -lift }),
    },
  ],
  seeAlso: ["FRICTION_LOSS", "LATERAL_LOSS", "PUMP_POWER", "PUMP_ENERGY"],
  caution:
    "A pump against closed valves makes more than this head: pipes, filters and tanks must bear that pressure and the surge on top. Fit pressure relief and air release, and close valves slowly.",
  compute({ lift, outlet_pressure, friction_head }, show, { constants: { k }, noAnswer }) {
    const pressureHead = show("Hp = k * P", k * outlet_pressure, "length", "The pressure as head");
    const head = show("H = z + Hp + hf", lift + pressureHead + friction_head, "length", "Total dynamic head");
    if (head <= 0) {
      throw noAnswer(
        "lift, pressure and friction come to 0 or less; the source feeds the outlet without a pump",
        "lift",
      );
    }
    return head;
  },
});
