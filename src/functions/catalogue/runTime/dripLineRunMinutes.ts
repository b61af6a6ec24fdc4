import { cite, defineFunction, FunctionError, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { wholeDown, wholeUp } from "../wholeNumbers";
import { EMITTER_FLOW_PARAM, MEASURED_WITHOUT_FILL, RUN_MINUTES_USUAL } from "./emitters";
import { TOP_DIAMETER_PARAM } from "./potTop";

/** Emitters over one pot; null where the line leaves some pots without any. */
function emittersOverPot(spacing: number, diameter: number, basis: "fewest" | "average", show: Show): number | null {
  const ratio = diameter / spacing;
  if (wholeDown(ratio) < 1) return null;
  if (basis === "average") return show("n = D / e", ratio, "count", "Emitters over a pot, on average");
  return show("n = ROUNDDOWN(D / e + 1E-9, 0)", wholeDown(ratio), "count", "Emitters over the pot that has fewest");
}

export const dripLineRunMinutes = defineFunction({
  name: "DRIP_LINE_RUN_MINUTES",
  group: "Run time, zones, booms, mats",
  summary: "Minutes for a drip line that lies over the pot tops",
  formula: "t = 60 V / (n q), n = D / e rounded down",
  source: cite("GEOMETRY", "a line of emitters at an even spacing over pots where they happen to stand"),
  assumptions: [
    "The line crosses the middle of the pots. A pot has D / e emitters rounded down, or one more, as it happens to stand.",
    '"fewest" (the default) gives the pot with fewest its water and others more. "average" leaves the pots with fewest short: with 1.67 on average one pot in three gets 1 and two get 2.',
    "aligned_emitters above 0 takes the place of all that.",
    MEASURED_WITHOUT_FILL,
    ONE_CASE,
  ],
  params: {
    volume_per_plant: {
      quantity: "volume",
      symbol: "V",
      above: 0,
      about: "Gross water for one plant at this irrigation",
    },
    emitter_flow: EMITTER_FLOW_PARAM,
    emitter_spacing: {
      quantity: "pot size",
      symbol: "e",
      atLeast: 0,
      blankIsAnswered: true,
      about: "From one emitter to the next; not read when aligned_emitters is above 0",
      usual: {
        us: [4, 36],
        metric: [10, 100],
        low: "looks like the other unit, or like a size in feet or metres",
        high: "wider than most pots",
        source: cite("PRACTICE", "drip line for nurseries"),
      },
    },
    top_diameter: { ...TOP_DIAMETER_PARAM, about: "Diameter of the pot's opening, in the unit of the spacing" },
    aligned_emitters: {
      quantity: "count",
      symbol: "na",
      atLeast: 0,
      default: 0,
      about: "Emitters put over each pot on purpose; 0 where the line just runs over the pots",
    },
    basis: {
      kind: "word",
      words: ["fewest", "average"],
      default: "fewest",
      about: '"fewest" so that no pot is short; "average" for the mean of the pots',
    },
  },
  result: { quantity: "minutes", symbol: "t", about: "Run time", usual: RUN_MINUTES_USUAL },
  examples: [
    {
      given: { volume_per_plant: 0.3, emitter_flow: 0.6, emitter_spacing: 6, top_diameter: 10 },
      gives: 30,
      from: cite("ARITHMETIC", "10 / 6 = 1.67, so some pots have 1: 60 x 0.3 / 0.6"),
    },
    {
      given: { volume_per_plant: 0.3, emitter_flow: 0.6, emitter_spacing: 6, top_diameter: 10, basis: "average" },
      gives: 18,
      from: cite("ARITHMETIC", "60 x 0.3 / (0.6 x 10 / 6) = 18 / 1"),
    },
    {
      given: {
        volume_per_plant: 1.2,
        emitter_flow: 1.6,
        emitter_spacing: 30,
        top_diameter: 28,
        aligned_emitters: 2,
      },
      gives: 22.5,
      from: cite("ARITHMETIC", "60 x 1.2 / (2 x 1.6)"),
    },
  ],
  mistakes: [
    {
      slip: "The average of the emitters was taken: pots with fewest stay dry",
      instead: () => ({ basis: "average" }),
    },
    {
      slip: "The emitters over a pot were rounded up",
      answer: ({ volume_per_plant, emitter_flow, emitter_spacing, top_diameter, aligned_emitters }) =>
        aligned_emitters > 0
          ? NaN
          : (60 * volume_per_plant) / (emitter_flow * wholeUp(top_diameter / (emitter_spacing as number))),
    },
    { slip: "One emitter to a pot was taken", instead: () => ({ aligned_emitters: 1 }) },
    {
      slip: "The flow per hour was taken as flow per minute",
      answer: (_given, _constants, right) => right / 60,
    },
  ],
  seeAlso: ["RUN_MINUTES", "GROSS_WATER", "EMITTER_FLOW"],
  caution:
    "Pots under one line get different amounts: lay the line so that emitters sit over the pots, and look for dry ones on the first hot days.",
  compute(given, show, { refuse }) {
    const { emitter_spacing: spacing, top_diameter: diameter, aligned_emitters: aligned } = given;
    const emitters =
      aligned > 0
        ? show("n = na", aligned, "count", "Emitters over a pot, put there")
        : emittersOverPot(neededSpacing(spacing), diameter, given.basis, show);
    if (emitters === null) {
      throw refuse(
        "emitter_spacing",
        spacing,
        `it must be top_diameter (${diameter}) or less: some pots get none; put emitters over the pots and count them in aligned_emitters`,
      );
    }
    const flow = show("Q = q * n", given.emitter_flow * emitters, "emitter flow", "Flow to one plant");
    return show("t = 60 * V / Q", (60 * given.volume_per_plant) / flow, "minutes", "Run time");
  },
});

/** The spacing, which only a line without aligned emitters must have. */
function neededSpacing(spacing: number | null): number {
  if (spacing !== null && spacing > 0) return spacing;
  const itMust = "it must be more than 0 (in or cm), or aligned_emitters must be more than 0";
  throw new FunctionError(
    "input",
    "emitter_spacing",
    `DRIP_LINE_RUN_MINUTES: emitter_spacing is blank or 0; ${itMust}`,
  );
}
