import { cite, defineFunction, UNITS_PARAM, type Show, type UnitSystem } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { INSIDE_DIAMETER_PARAM } from "./pipe";

/** What moves the dirt, rounded in each system. */
const FLUSHING_VELOCITY = { us: 1, metric: 0.3 } as const;

interface Velocity {
  readonly value: number;
  readonly symbol: "v" | "v0";
}

function velocityOf(given: number | null, system: UnitSystem, show: Show): Velocity {
  if (given !== null) return { value: given, symbol: "v" };
  const usual = FLUSHING_VELOCITY[system];
  return { value: show(`v0 = ${usual}`, usual, "water velocity", "Velocity that carries dirt out"), symbol: "v0" };
}

export const flushFlow = defineFunction({
  name: "FLUSH_FLOW",
  group: "Pipe, emitter, pump",
  summary: "Flow that must leave the open end of a line to carry the dirt out",
  formula: "Q = v pi D2 / 4",
  source: [
    cite("DEFINITION", "flow = velocity x area of the bore"),
    cite("EP405", "0.3 m/s (1 ft/s) at the line's end"),
  ],
  assumptions: [
    "The flow at the open end of one line; what the emitters give while it is open comes on top at the inlet. Open as many ends at once as the supply can feed.",
    "The 1 ft/s and 0.3 m/s of a velocity left out differ by 1.6 %. Poor water and mains want more: 1.6 ft/s (0.5 m/s) and up.",
    "Measure at the open end with bucket and watch (BUCKET_FLOW), until the water runs clear.",
    ONE_CASE,
  ],
  params: {
    inside_diameter: INSIDE_DIAMETER_PARAM,
    units: UNITS_PARAM,
    velocity: {
      quantity: "water velocity",
      symbol: "v",
      above: 0,
      mayBeLeftOut: true,
      about: "Velocity wanted at the line's end; left out, 1 ft/s or 0.3 m/s",
      usual: {
        us: [1, 3],
        metric: [0.3, 1],
        low: "too slow to carry dirt out",
        high: "more than most supplies can give through an open end",
        source: cite("EP405", "0.3 m/s, and 0.5 m/s with poor water"),
      },
    },
  },
  unitConstants: { k: "velocity of a flow" },
  result: { quantity: "flow", symbol: "Q", about: "Flow at the open end of one line" },
  examples: [
    {
      given: { inside_diameter: 12, units: "us" },
      gives: 350,
      within: 3.5,
      from: cite("FLUSHING_GUIDE", "12-inch main at 1 ft/s, printed in round numbers"),
    },
    {
      given: { inside_diameter: 16, units: "metric" },
      gives: 3.6191147369354,
      from: cite("ARITHMETIC", "0.3 m/s x pi / 4 x 0.016^2 m2 = 6.0319e-5 m3/s, 217.1 L/h"),
    },
    {
      given: { inside_diameter: 50, units: "metric", velocity: 0.5 },
      gives: 58.90486225480862,
      from: cite("ARITHMETIC", "0.5 m/s x pi / 4 x 0.0025 m2 = 9.8175e-4 m3/s"),
    },
  ],
  mistakes: [
    {
      slip: "The diameter was used as a radius",
      instead: ({ inside_diameter }) => ({ inside_diameter: 2 * inside_diameter }),
    },
    {
      slip: "The unit constant was left out: velocity x area is not yet a flow",
      answer: (_given, { k }, right) => right * k,
    },
    {
      slip: "The flow was given per hour",
      answer: (_given, _constants, right) => right * 60,
    },
    {
      slip: "The square of the bore was taken for its area",
      answer: (_given, _constants, right) => (right * 4) / Math.PI,
    },
  ],
  seeAlso: ["PIPE_VELOCITY", "BUCKET_FLOW", "LATERAL_LOSS"],
  caution:
    "Flush water carries dirt, and feed where the injector is running: stop the injector, keep the water off crops and out of drains and ditches, and stand clear of the open end.",
  compute({ inside_diameter: bore, velocity }, show, { constants: { k }, system }) {
    const area = show("A = PI() * D^2 / 4", (Math.PI * bore ** 2) / 4, "bore area", "Area of the bore");
    const { value, symbol } = velocityOf(velocity, system, show);
    return show(`Q = ${symbol} * A / k`, (value * area) / k, "flow", "Flow at the open end");
  },
});
