import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { INSIDE_DIAMETER_PARAM, NOMINAL_SIZE, PIPE_FLOW_PARAM, VELOCITY_USUAL } from "./pipe";

export const pipeVelocity = defineFunction({
  name: "PIPE_VELOCITY",
  group: "Pipe, emitter, pump",
  summary: "Speed of the water in a pipe",
  formula: "V = Q / A = 4 Q / (pi D2)",
  source: cite("DEFINITION", "mean velocity = flow / area of the bore"),
  assumptions: [
    "The pipe runs full. Mean over the bore; the middle runs faster.",
    NOMINAL_SIZE,
    "To carry dirt out of a line takes 1 ft/s (0.3 m/s) at its end.",
  ],
  params: { flow: PIPE_FLOW_PARAM, inside_diameter: INSIDE_DIAMETER_PARAM, units: UNITS_PARAM },
  unitConstants: { k: "velocity of a flow" },
  result: { quantity: "water velocity", symbol: "V", about: "Mean velocity of the water", usual: VELOCITY_USUAL },
  examples: [
    {
      given: { flow: 100, inside_diameter: 3.23, units: "us" },
      gives: 3.91,
      within: 0.01,
      from: cite("PVC160_TABLE", "100 gal/min in 3.230 in"),
    },
    {
      given: { flow: 300, inside_diameter: 77.4, units: "metric" },
      gives: 1.0627,
      within: 0.0005,
      from: cite("ARITHMETIC", "0.005 m3/s over pi / 4 x 0.0774^2 = 0.0047051 m2"),
    },
  ],
  mistakes: [
    {
      slip: "The diameter was used as a radius",
      instead: ({ inside_diameter }) => ({ inside_diameter: 2 * inside_diameter }),
    },
    {
      slip: "The flow per hour was taken as flow per minute",
      instead: ({ flow }) => ({ flow: 60 * flow }),
    },
    {
      slip: "The unit constant was left out: flow / area is not yet a velocity",
      answer: (_given, { k }, right) => right / k,
    },
    {
      slip: "The square of the bore was taken for its area",
      answer: (_given, _constants, right) => (right * Math.PI) / 4,
    },
  ],
  seeAlso: ["FRICTION_LOSS", "FLUSH_FLOW", "LINE_FILL_MINUTES"],
  caution:
    "A valve that shuts fast on fast water strikes the pipe with a blow that can burst it. Close valves slowly, and stay below 5 ft/s (1.5 m/s) in mains.",
  compute({ flow, inside_diameter: bore }, show, { constants: { k } }) {
    const area = show("A = PI() * D^2 / 4", (Math.PI * bore ** 2) / 4, "bore area", "Area of the bore");
    return show("V = k * Q / A", (k * flow) / area, "water velocity", "Velocity");
  },
});
