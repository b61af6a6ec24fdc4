import { cite, type NumberParam } from "../../../kernel";
import { EMITTER_FLOW_PARAM } from "../runTime/emitters";

export const PRESSURE_PARAM = {
  quantity: "pressure",
  above: 0,
  usual: {
    us: [5, 70],
    metric: [35, 500],
    low: "looks like bar, or like metres of head: either will do where both pressures are in it",
    high: "looks like the other unit, or like the pump's pressure",
    source: cite("PRACTICE", "drip tape to sprinklers"),
  },
} as const satisfies Partial<NumberParam>;

export const OUTLET_FLOW_PARAM = {
  quantity: "emitter flow",
  above: 0,
  usual: EMITTER_FLOW_PARAM.usual,
} as const satisfies Partial<NumberParam>;

/** Physics ends at 0 and 1; readings scatter beyond. */
export const EXPONENT_LIMITS = { atLeast: -0.5, atMost: 1.5 } as const;

export const EXPONENT_USUAL = {
  us: [0, 1],
  metric: [0, 1],
  low: "flow that falls as pressure rises: an overcompensating emitter, or readings mixed up",
  high: "steeper than laminar flow: flow and pressure swapped, or pressures too close",
  source: cite("FAO_MODULE9", "0 compensating, 0.5 turbulent, 1 laminar"),
} as const;
