import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { INSIDE_DIAMETER_PARAM, NOMINAL_SIZE } from "../hydraulics/pipe";

export const lineFillMinutes = defineFunction({
  name: "LINE_FILL_MINUTES",
  group: "Run time, zones, booms, mats",
  summary: "Minutes until an empty line is full and its far end gets water",
  formula: "t = k pi D2 / 4 L / Q",
  source: cite("GEOMETRY", "volume of a pipe; time = volume / flow"),
  assumptions: [
    "The pipe was empty and all the flow goes into it. Emitters that drip while it fills make it longer.",
    NOMINAL_SIZE,
    "One size at a time: add the minutes of main, submain and laterals, each with the flow that reaches it.",
    "A line that stays full between runs (check valves, level ground) does not fill anew.",
  ],
  params: {
    pipe_length: { quantity: "length", symbol: "L", above: 0, about: "Length of pipe of this size" },
    inside_diameter: {
      ...INSIDE_DIAMETER_PARAM,
      usual: {
        us: [0.2, 12],
        metric: [5, 300],
        low: "looks like feet or metres",
        high: "looks like the other unit",
        source: cite("PRACTICE", "spaghetti tube to mains"),
      },
    },
    fill_flow: { quantity: "flow", symbol: "Q", above: 0, about: "Flow into the line while it fills" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a pipe" },
  result: {
    quantity: "minutes",
    symbol: "t",
    about: "Minutes to fill the line",
    usual: {
      us: [0.05, 15],
      metric: [0.05, 15],
      high: "long: check the bore, and look for a flow per hour",
      source: cite("PRACTICE", "zones of a nursery"),
    },
  },
  examples: [
    {
      given: { pipe_length: 500, inside_diameter: 2.067, fill_flow: 40, units: "us" },
      gives: 2.179,
      within: 0.0005,
      from: cite("ARITHMETIC", "pi / 4 x 2.067^2 x 6,000 in = 20,134 in3 = 87.16 gal; / 40"),
    },
    {
      given: { pipe_length: 100, inside_diameter: 50, fill_flow: 60, units: "metric" },
      gives: 3.2724923474893677,
      from: cite("ARITHMETIC", "pi / 4 x 0.0025 x 100 = 0.19635 m3; 196.35 L / 60"),
    },
  ],
  mistakes: [
    {
      slip: "The diameter was used as a radius",
      instead: ({ inside_diameter }) => ({ inside_diameter: 2 * inside_diameter }),
    },
    {
      slip: "The flow was taken per hour",
      answer: (_given, _constants, right) => right * 60,
    },
    {
      slip: "The unit constant was left out: bore squared x length is not yet a volume",
      answer: (_given, { k }, right) => right / k,
    },
  ],
  seeAlso: ["PULSE_SCHEDULE", "ZONE_SEQUENCE", "RUN_MINUTES"],
  caution:
    "A run shorter than about one and a half times the fill leaves the far end short: give fewer and longer pulses, or keep the line full.",
  compute({ pipe_length: length, inside_diameter: bore, fill_flow: flow }, show, { constants: { k } }) {
    const volume = show(
      "V = k * PI() * D^2 / 4 * L",
      ((k * Math.PI * bore ** 2) / 4) * length,
      "volume",
      "Water that fills the line",
    );
    return show("t = V / Q", volume / flow, "minutes", "Minutes to fill it");
  },
});
