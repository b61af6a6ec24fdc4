import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { nominalSize } from "./nominalSize";
import {
  boreInMetres,
  INSIDE_DIAMETER_PARAM,
  laminarGradient,
  laminarWords,
  PIPE_FLOW_PARAM,
  reynoldsNumber,
  TURBULENT_FROM,
} from "./pipe";

export const frictionLoss = defineFunction({
  name: "FRICTION_LOSS",
  group: "Pipe, emitter, pump",
  summary: "Head that water loses by friction in a pipe that carries one flow to its end",
  formula: "h = 10.67 L Q^1.852 / (C^1.852 D^4.87), in m and m3/s",
  source: cite("HAZEN_WILLIAMS", "h = 10.67 L Q^1.852 / (C^1.852 D^4.87)"),
  assumptions: [
    "Full pipe, turbulent water near 20 C (68 F). Where the Reynolds number is below 2,000 the flow is laminar, Hazen-Williams gives ever less of the true loss (under half of it at 600), and the answer is #N/A; its text holds the laminar loss.",
    "In bores below 1 in (25 mm) it reads low, by 10 to 25 % in half-inch tube at 1 to 3 ft/s (0.3 to 1 m/s). For drip lines use LATERAL_LOSS.",
    "One flow from end to end. A line with outlets loses less: multiply by CHRISTIANSEN_FACTOR.",
    "A 2-inch schedule 40 pipe is 2.067 in inside, a class 200 one 2.149 in: 4 % more bore, 17 % less loss.",
    "Smoothness C: PVC 150, polyethylene 140 to 150, new steel 140, galvanized 120, cast iron 100; steel and iron lose some with age.",
    "Straight pipe: fittings, valves, filters and meters come on top. The answer is head: a psi is 2.31 ft, a kPa 0.102 m.",
  ],
  params: {
    flow: PIPE_FLOW_PARAM,
    inside_diameter: {
      ...INSIDE_DIAMETER_PARAM,
      usual: {
        us: [1, 12],
        metric: [25, 300],
        low: "small tube, where Hazen-Williams reads low; drip lines belong to LATERAL_LOSS",
        high: "looks like the other unit",
        source: cite("PRACTICE", "submains and mains"),
      },
    },
    length: {
      quantity: "length",
      symbol: "L",
      above: 0,
      about: "Length of pipe of this bore that carries this flow",
      usual: { us: [5, 5000], metric: [2, 1500], source: cite("PRACTICE", "pipes of a nursery") },
    },
    units: UNITS_PARAM,
    c: {
      quantity: "factor",
      symbol: "C",
      atLeast: 40,
      atMost: 160,
      guard: "from badly rusted iron to the smoothest plastic",
      default: 150,
      about: "Hazen-Williams coefficient: the smoother the pipe, the higher",
      usual: { us: [100, 150], metric: [100, 150], source: cite("PRACTICE", "cast iron 100 to PVC 150") },
    },
  },
  unitConstants: { k: "head of a pressure" },
  result: { quantity: "length", symbol: "h", about: "Head lost by friction" },
  examples: [
    {
      given: { flow: 200, inside_diameter: 3.048, length: 30, units: "us", c: 140 },
      gives: 2.7,
      within: 0.05,
      from: cite("HW_EXAMPLE", "200 gal/min in a polyethylene pipe of 3.048 in, 30 ft"),
    },
    {
      given: { flow: 40, inside_diameter: 2.067, length: 100, units: "us" },
      gives: 2.62,
      within: 0.01,
      from: cite("ILLINOIS_906", "40 gal/min in 2-inch schedule 40 pipe, ft in 100 ft"),
    },
    {
      given: { flow: 300, inside_diameter: 77.4, length: 100, units: "metric" },
      gives: 1.4072,
      within: 0.0005,
      from: cite("ARITHMETIC", "1067 x 0.005^1.852 / (150^1.852 x 0.0774^4.87)"),
    },
  ],
  mistakes: [
    {
      slip: "The nominal size was used, not the inside diameter",
      answer: ({ inside_diameter, units }, _constants, right) =>
        right * (inside_diameter / nominalSize(inside_diameter, units)) ** 4.87,
    },
    {
      slip: "The loss of 100 ft or 100 m was taken for the loss of the whole length",
      instead: () => ({ length: 100 }),
    },
    {
      slip: "The loss was given as a pressure, not as head",
      answer: (_given, { k }, right) => right / k,
    },
    {
      slip: "The flow per hour was taken as flow per minute",
      instead: ({ flow }) => ({ flow: 60 * flow }),
    },
    {
      slip: "The smoothness of PVC was taken for a rougher pipe",
      instead: () => ({ c: 150 }),
    },
    {
      slip: "The diameter was used as a radius",
      instead: ({ inside_diameter }) => ({ inside_diameter: 2 * inside_diameter }),
    },
  ],
  seeAlso: ["CHRISTIANSEN_FACTOR", "LATERAL_LOSS", "PIPE_VELOCITY", "TOTAL_DYNAMIC_HEAD"],
  caution:
    "The pipe's pressure class must bear the working pressure and the surge of a closing valve: close valves slowly and stay below 5 ft/s (1.5 m/s) in mains. A planning figure, no engineering design.",
  compute({ flow, inside_diameter, length, c }, show, { noAnswer, system }) {
    const litres = show.toMetric("Qm = Q", flow, "flow", "Flow, in L/min");
    const cubicMetres = show("Qs = Qm / 60000", litres / 60000, "flow in m3/s", "Flow, in m3/s");
    const bore = boreInMetres(inside_diameter, show);
    const reynolds = reynoldsNumber(cubicMetres, bore, show);
    if (reynolds < TURBULENT_FROM) {
      const loss = laminarGradient(cubicMetres, bore) * length;
      throw noAnswer(laminarWords("Hazen-Williams", reynolds, loss, system), "flow");
    }
    const gradient = show(
      "J = 10.67 * Qs^1.852 / (C^1.852 * Ds^4.87)",
      (10.67 * cubicMetres ** 1.852) / (c ** 1.852 * bore ** 4.87),
      "factor",
      "Loss per length of pipe",
    );
    return show("h = J * L", gradient * length, "length", "Loss over the whole length");
  },
});
