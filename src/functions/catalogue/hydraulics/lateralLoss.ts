import { cite, defineFunction, UNITS_PARAM, type Show } from "../../../kernel";
import { EMITTER_FLOW_PARAM } from "../runTime/emitters";
import { outletFactor } from "./outletFactor";
import {
  boreInMetres,
  INSIDE_DIAMETER_PARAM,
  laminarGradient,
  laminarWords,
  reynoldsNumber,
  smoothTubeGradient,
  TURBULENT_FROM,
} from "./pipe";

/** In m3/s, on symbols N and q. */
function inletFlow(emitters: number, emitterFlow: number, show: Show): number {
  const litres = show.toMetric("qm = q", emitterFlow, "emitter flow", "Flow of one emitter, in L/h");
  return show("Qs = N * qm / 3600000", (emitters * litres) / 3_600_000, "flow in m3/s", "Flow at the inlet, in m3/s");
}

/** In laminar flow the loss follows the flow itself, and the factor is the mean of the shares 1/N, 2/N ... 1. */
function laminarFactor(emitters: number): number {
  return (emitters + 1) / (2 * emitters);
}

const LAMINAR_IN = "the formula of turbulent flow";

export const lateralLoss = defineFunction({
  name: "LATERAL_LOSS",
  group: "Pipe, emitter, pump",
  summary: "Head lost along a level drip line, from its inlet to its last emitter",
  formula: "h = F f L / D V^2 / (2 g), f = 0.32 Re^-0.25, F at 1.75",
  source: [
    cite("WATTERS_KELLER", "f = 0.32 Re^-0.25 in small smooth tube"),
    cite("CHRISTIANSEN1942", "multiple-outlet factor at 1.75"),
  ],
  assumptions: [
    "Darcy-Weisbach for smooth tube and water at 20 C (68 F), with the whole flow at the inlet and the first emitter a full spacing from it; length = emitters x spacing.",
    "Turbulent at the inlet. Below a Reynolds number of 2,000 the whole line is laminar, the formula gives ever less of the true loss (under half of it at 500), and the answer is #N/A; its text holds the laminar loss.",
    "Against a network solver on the same line it reads 3 to 4 % high with a Reynolds number of 8,000 or more at the inlet, 9 % with 5,000, and up to 32 % between 2,000 and 4,000, where the far part is no longer turbulent. Above 100,000 it reads low: take FRICTION_LOSS and CHRISTIANSEN_FACTOR.",
    "Every emitter gives the same. Where the loss comes to a fifth of the pressure, emitters that do not compensate give clearly less at the far end and the true loss is lower by about a sixth; on longer lines by more.",
    "Barbs and built-in emitters narrow the bore and add to the loss: use the maker's figure. Slope comes on top: each foot uphill is a foot of head.",
    "A 16 mm tube is 13 to 14 mm inside.",
  ],
  params: {
    emitters: {
      quantity: "count",
      symbol: "N",
      atLeast: 1,
      whole: true,
      about: "Emitters on the line",
      usual: { us: [5, 500], metric: [5, 500], source: cite("PRACTICE", "drip and stake lines") },
    },
    emitter_flow: { ...EMITTER_FLOW_PARAM, about: "Flow of one emitter" },
    emitter_spacing: {
      quantity: "pot size",
      symbol: "s",
      above: 0,
      about: "From one emitter to the next, and from the inlet to the first",
      usual: {
        us: [4, 120],
        metric: [10, 300],
        low: "looks like feet or metres",
        high: "looks like the length of the line",
        source: cite("PRACTICE", "drip lines over pots to stakes in rows"),
      },
    },
    inside_diameter: {
      ...INSIDE_DIAMETER_PARAM,
      usual: {
        us: [0.35, 1.6],
        metric: [9, 40],
        low: "looks like the bore of a spaghetti tube, or like cm",
        high: "wide for a drip line; check the units",
        source: cite("PRACTICE", "drip tube of 12 to 50 mm outside"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "length of a spacing" },
  result: {
    quantity: "length",
    symbol: "h",
    about: "Head lost from the inlet to the last emitter, on level ground",
    usual: {
      us: [0, 6.6],
      metric: [0, 2],
      high: "more than a fifth of the pressure of most drip lines: shorten the line or take a wider tube",
      source: cite("WU_GITLIN", "20 % of the pressure is 10 % of the flow"),
    },
  },
  examples: [
    {
      given: { emitters: 100, emitter_flow: 2, emitter_spacing: 50, inside_diameter: 13.6, units: "metric" },
      gives: 0.3812,
      within: 0.0004,
      from: cite("ARITHMETIC", "V 0.3824 m/s, Re 5181, f 0.03772, J 0.02068, F 0.3687: 0.02068 x 0.3687 x 50 m"),
    },
    {
      given: { emitters: 1, emitter_flow: 360, emitter_spacing: 10000, inside_diameter: 16, units: "metric" },
      gives: 2.676,
      within: 0.016,
      from: cite("WATTERS_KELLER", "J = 7.89e7 x 0.1^1.75 / 16^4.75 m in 100 m, for one outlet at the end"),
    },
    {
      given: { emitters: 60, emitter_flow: 1, emitter_spacing: 12, inside_diameter: 0.62, units: "us" },
      gives: 0.2875,
      within: 0.0029,
      from: cite("KELLER_BLIESNER", "J = 0.133 x 1^1.75 / 0.62^4.75 = 1.288 ft in 100 ft; x 0.372 x 60 ft"),
    },
  ],
  mistakes: [
    {
      slip: "The factor for outlets was left out: all the flow was sent to the end",
      answer: ({ emitters }, _constants, right) =>
        right / (emitters === 1 ? 1 : 1 / 2.75 + 1 / (2 * emitters) + Math.sqrt(0.75) / (6 * emitters ** 2)),
    },
    {
      slip: "The flow of one emitter was taken for the flow of the line",
      answer: ({ emitters }, _constants, right) => right / emitters ** 1.75,
    },
    {
      slip: "The flow per hour was taken as flow per minute",
      answer: (_given, _constants, right) => right * 60 ** 1.75,
    },
    {
      slip: "The outside diameter was used (16 for 13.6 mm)",
      answer: ({ inside_diameter, units }, _constants, right) => {
        const walls = units === "us" ? 2.4 / 25.4 : 2.4;
        return right * (inside_diameter / (inside_diameter + walls)) ** 4.75;
      },
    },
    {
      slip: "The spacing was typed in the unit of the length",
      answer: (_given, { k }, right) => right * k,
    },
  ],
  seeAlso: ["CHRISTIANSEN_FACTOR", "FRICTION_LOSS", "EMITTER_FLOW_AT_PRESSURE", "FLUSH_FLOW"],
  caution:
    "The far end dries first: measure the flow of the last emitter before trusting the line, above all on hot days.",
  compute({ emitters, emitter_flow, emitter_spacing, inside_diameter }, show, around) {
    const flow = inletFlow(emitters, emitter_flow, show);
    const bore = boreInMetres(inside_diameter, show);
    const { k } = around.constants;
    const length = show("L = k * N * s", k * emitters * emitter_spacing, "length", "Length of the line");
    const reynolds = reynoldsNumber(flow, bore, show);
    if (reynolds < TURBULENT_FROM) {
      const loss = laminarGradient(flow, bore) * laminarFactor(emitters) * length;
      throw around.noAnswer(laminarWords(LAMINAR_IN, reynolds, loss, around.system), "emitter_flow");
    }
    const gradient = smoothTubeGradient(flow, bore, reynolds, show);
    const factor = outletFactor(emitters, 1.75, "1.75", show);
    return show("h = J * F * L", gradient * factor * length, "length", "Loss from the inlet to the last emitter");
  },
});
