/** The six steps of the exercise: by our functions, and in built-in functions. */
import type { Edition } from "../../kit";

export type StepKey = "net" | "gross" | "minutes" | "zoneFlow" | "valves" | "corrected";

/** Where the numbers of one student stand: a cell, a name or an expression. */
export type Numbers = Readonly<
  Record<
    | "et"
    | "kc"
    | "area"
    | "leaching"
    | "uniformity"
    | "flow"
    | "plants"
    | "measured"
    | "emitters"
    | "supply"
    | "minutesNow"
    | "depth"
    | "net"
    | "gross"
    | "zoneFlow",
    string
  >
>;
export type NumberKey = keyof Numbers;

export interface Step {
  readonly key: StepKey;
  readonly label: string;
  readonly short: string;
  readonly unit: (edition: Edition) => string;
  readonly format: Readonly<Record<Edition, "decimals0" | "decimals1" | "decimals2" | "decimals3">>;
  /** Part of the right answer by which an answer may be off. */
  readonly tolerance: number;
  /** The function that gives it, and its arguments; none for the valves, which are rounded up by a built-in function. */
  readonly ours: readonly [name: string, ...args: (NumberKey | "units")[]] | null;
  readonly plain: (numbers: Numbers) => string;
  /** The earlier step that it goes on with. */
  readonly goesOnWith?: "net" | "gross" | "zoneFlow";
}

const volume = (edition: Edition): string => (edition === "us" ? "gal" : "L");
const ofStep = (us: Step["format"]["us"], metric: Step["format"]["us"] = us): Step["format"] => ({ us, metric });

export const STEPS: readonly Step[] = [
  {
    key: "net",
    label: "1 Water that a plant uses in a day",
    short: "1 net water",
    unit: volume,
    format: ofStep("decimals3", "decimals2"),
    tolerance: 0.02,
    ours: ["PLANT_WATER_DEMAND", "et", "kc", "area", "units"],
    plain: ({ et, kc, area, depth }) => `${et} * ${kc} * ${area} * ${depth}`,
  },
  {
    key: "gross",
    label: "2 Water to give it",
    short: "2 gross water",
    unit: volume,
    format: ofStep("decimals3", "decimals2"),
    tolerance: 0.005,
    ours: ["GROSS_WATER", "net", "leaching", "uniformity"],
    plain: ({ net, leaching, uniformity }) => `${net} / MIN(1 - ${leaching}, ${uniformity})`,
    goesOnWith: "net",
  },
  {
    key: "minutes",
    label: "3 Minutes a day",
    short: "3 minutes",
    unit: () => "min",
    format: ofStep("decimals1"),
    tolerance: 0.02,
    ours: ["RUN_MINUTES", "gross", "flow", "emitters"],
    plain: ({ gross, flow, emitters }) => `60 * ${gross} / (${flow} * ${emitters})`,
    goesOnWith: "gross",
  },
  {
    key: "zoneFlow",
    label: "4 Flow of the zone",
    short: "4 zone flow",
    unit: (edition) => `${volume(edition)}/min`,
    format: ofStep("decimals1"),
    tolerance: 0.02,
    ours: ["ZONE_FLOW", "plants", "emitters", "flow"],
    plain: ({ plants, emitters, flow }) => `${plants} * ${emitters} * ${flow} / 60`,
  },
  {
    key: "valves",
    label: "5 Valves, run one after another",
    short: "5 valves",
    unit: () => "count",
    format: ofStep("decimals0"),
    tolerance: 0.02,
    ours: null,
    plain: ({ zoneFlow, supply }) => `ROUNDUP(ROUND(${zoneFlow} / ${supply}, 9), 0)`,
    goesOnWith: "zoneFlow",
  },
  {
    key: "corrected",
    label: "6 New minutes of Zone 2",
    short: "6 new minutes",
    unit: () => "min",
    format: ofStep("decimals1"),
    tolerance: 0.01,
    ours: ["RUN_MINUTES_FROM_LEACHING", "minutesNow", "measured", "leaching"],
    plain: ({ minutesNow, measured, leaching }) => `${minutesNow} * (1 - ${measured}) / (1 - ${leaching})`,
  },
];

export function stepOf(key: StepKey): Step {
  return STEPS.find((step) => step.key === key)!;
}

function listed(args: readonly string[], numbers: Numbers): string {
  return args.map((name) => (name === "units" ? "units" : numbers[name as NumberKey])).join(", ");
}

/** The right answer on these numbers: a call, or the built-in formula where there is no function. */
export function rightAnswer(step: Step, numbers: Numbers): string {
  if (step.ours === null) return step.plain(numbers);
  const [name, ...args] = step.ours;
  return `CANYARD.${name}(${listed(args, numbers)})`;
}

export function working(step: Step, numbers: Numbers): string {
  if (step.ours === null) return '"flow of the zone / flow to plan with, rounded up to whole valves"';
  const [name, ...args] = step.ours;
  return `CANYARD.SHOW_WORKING("${name}", ${listed(args, numbers)})`;
}

/** What lies behind an answer that is not right. */
export function diagnosis(step: Step, answer: string, tolerance: string, level: string, numbers: Numbers): string {
  if (step.ours === null) return valvesDiagnosis(answer, level, numbers);
  const [name, ...args] = step.ours;
  return `CANYARD.DIAGNOSE_ANSWER(${answer}, "${name}", ${tolerance}, ${level}, ${listed(args, numbers)})`;
}

/** The one step without a function has its words written out, at the same levels. */
function valvesDiagnosis(answer: string, level: string, numbers: Numbers): string {
  const quotient = `${numbers.zoneFlow} / ${numbers.supply}`;
  const right = stepOf("valves").plain(numbers);
  const step = `flow of the zone / flow to plan with, rounded up`;
  const short = `OR(${answer} = ROUND(${quotient}, 0), ABS(${answer} - ${quotient}) < 0.1)`;
  const named = `IF(${short}, "wrong: " & ${answer} & " is what comes out when the valves were not rounded up", "wrong: no known mistake gives this; start at ${step}")`;
  const told = `IF(${level} = 1, "wrong: look again at ${step}", ${named} & IF(${level} = 3, " (right is " & ${right} & ")", ""))`;
  return `IF(${answer} = ${right}, "right", IF(${level} = 0, "wrong: not yet the right number", ${told}))`;
}
