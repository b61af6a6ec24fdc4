import { cite, shortNumber, unitOf, type NumberParam, type Show, type UnitSystem } from "../../../kernel";

export const INSIDE_DIAMETER_PARAM = {
  quantity: "pipe bore",
  symbol: "D",
  above: 0,
  about: "Inside diameter, from the pipe's table or a caliper; never the nominal size",
} as const satisfies NumberParam;

export const NOMINAL_SIZE = "A 2-inch schedule 40 pipe is 2.067 in inside.";

export const PIPE_FLOW_PARAM = {
  quantity: "flow",
  symbol: "Q",
  above: 0,
  about: "Flow through the pipe",
  usual: {
    us: [1, 1000],
    metric: [4, 3800],
    low: "looks like the flow of one emitter, or like m3/h",
    high: "looks like a flow per hour",
    source: cite("PRACTICE", "laterals to mains of a nursery"),
  },
} as const satisfies NumberParam;

export const VELOCITY_USUAL = {
  us: [1, 5],
  metric: [0.3, 1.5],
  low: "slow enough for dirt to settle; flush the line, or look for a flow per minute typed per second",
  high: "water hammer and high friction: take a larger pipe, or look for a flow per hour typed per minute",
  source: cite("PRACTICE", "mains up to 5 ft/s (1.5 m/s)"),
} as const;

/** Kinematic viscosity of water at 20 C, m2/s. */
const VISCOSITY = 1.004e-6;
/** m/s2. */
const GRAVITY = 9.80665;
/** Below this Reynolds number water flows in layers, and the formulas of turbulent flow do not hold. */
export const TURBULENT_FROM = 2000;

/** In m, on symbol D. */
export function boreInMetres(diameter: number, show: Show): number {
  const millimetres = show.toMetric("Dm = D", diameter, "pipe bore", "Inside diameter, in mm");
  return show("Ds = Dm / 1000", millimetres / 1000, "bore in m", "Inside diameter, in m");
}

/** On symbols Qs in m3/s and Ds in m. */
export function reynoldsNumber(flow: number, bore: number, show: Show): number {
  return show(
    "Re = 4 * Qs / (PI() * Ds * 0.000001004)",
    (4 * flow) / (Math.PI * bore * VISCOSITY),
    "factor",
    "Reynolds number of water at 20 C; below 2000 the flow is laminar",
  );
}

/** Loss per length in a small smooth tube, on symbols Qs, Ds and Re: Darcy-Weisbach with f = 0.32 Re^-0.25. */
export function smoothTubeGradient(flow: number, bore: number, reynolds: number, show: Show): number {
  const velocity = show(
    "v = Qs / (PI() * Ds^2 / 4)",
    flow / ((Math.PI * bore ** 2) / 4),
    "velocity in m/s",
    "Velocity at the inlet, in m/s",
  );
  const friction = show("f = 0.32 / Re^0.25", 0.32 / reynolds ** 0.25, "factor", "Darcy's friction factor");
  return show(
    "J = f / Ds * v^2 / (2 * 9.80665)",
    ((friction / bore) * velocity ** 2) / (2 * GRAVITY),
    "factor",
    "Loss per length of pipe if all the water ran to its end",
  );
}

/** Loss per length by the laminar law (Poiseuille), of a flow in m3/s in a bore in m. */
export function laminarGradient(flow: number, bore: number): number {
  return (128 * VISCOSITY * flow) / (Math.PI * GRAVITY * bore ** 4);
}

/** Why there is no answer in laminar flow, and what the laminar law gives instead. */
export function laminarWords(formula: string, reynolds: number, loss: number, system: UnitSystem): string {
  const instead = Number.isFinite(loss)
    ? `; the laminar law gives a loss of ${shortNumber(loss)} ${unitOf("length", system)}`
    : "";
  return `the flow is laminar (Reynolds number ${shortNumber(reynolds)}, below ${TURBULENT_FROM}), where ${formula} does not hold${instead}`;
}
