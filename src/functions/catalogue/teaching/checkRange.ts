import {
  cite,
  defineFunction,
  unitOf,
  UNITS_PARAM,
  usualVerdict,
  type Entry,
  type QuantityName,
  type UnitSystem,
  type UsualRange,
} from "../../../kernel";
import { argumentAsked } from "./argumentOf";
import type { LookUp } from "./lookUp";
import { entryNamed } from "./workedCall";

const UNKNOWN = "no usual range is known";

function rangeText({ us, metric }: UsualRange, quantity: QuantityName, system: UnitSystem): string {
  const [low, high] = system === "us" ? us : metric;
  return `${low} to ${high} ${unitOf(quantity, system)}`;
}

/** Without units: what lies in either range is ok; else both are named, unless they are the same or a slip is known. */
function inEitherSystem(usual: UsualRange, value: number, quantity: QuantityName): string {
  const verdicts = (["us", "metric"] as const).map((system) => usualVerdict(usual, value, system));
  const [us = "", metric = ""] = verdicts;
  if (verdicts.includes("ok")) return "ok";
  if (us === metric) return us;
  const side = us.startsWith("low") && metric.startsWith("low") ? "low" : "high";
  return `${side}: usually ${rangeText(usual, quantity, "us")} or ${rangeText(usual, quantity, "metric")}`;
}

export const checkRange = (find: LookUp, names: readonly string[]): Entry =>
  defineFunction({
    name: "CHECK_RANGE",
    group: "Teaching and audit",
    summary: "Verdict on a number: one that the trade usually sees, or the likely slip where it is not",
    formula: "low <= value <= high of the usual range",
    source: cite("DEFINITION", "the usual range of the function's own entry, with the source that stands there"),
    assumptions: [
      'A warning for a person, never an error: a number outside may be right, and one inside may be wrong. The text begins with "ok", "low: " or "high: ".',
      "Without units, a number that lies in the range of either system is ok: give units wherever they are known.",
      'A blank value gives "". It may count as 0, and is judged as 0 then.',
      `Where the trade has no usual range the answer is "${UNKNOWN}".`,
      'The argument "" is the answer of the function; of a function that fills a table, ask for one of its columns.',
    ],
    params: {
      value: {
        quantity: "as named",
        symbol: "x",
        blankIsAnswered: true,
        about: "The number to look at; a blank is answered with a blank",
      },
      function_name: { kind: "text", about: "Name of the function that the number goes into or comes out of" },
      argument: { kind: "text", mayBeBlank: true, about: 'Name of its argument; "" for its answer' },
      units: {
        ...UNITS_PARAM,
        mayBeLeftOut: true,
        about: 'The units of the number: "us" or "metric"; left out, either',
      },
    },
    result: { text: true, about: '"ok", or "low: " or "high: " with the likely slip' },
    examples: [
      {
        given: { value: 6, function_name: "RUN_MINUTES", argument: "emitter_flow", units: "us" },
        gives: "ok",
        from: cite("PRACTICE", "drippers from 0.25 gal/h, spray stakes to 20 gal/h"),
      },
      {
        given: { value: 0.1, function_name: "RUN_MINUTES", argument: "emitter_flow", units: "us" },
        gives: "low: looks like gal/min or L/min",
        from: cite("ARITHMETIC", "0.1 gal/min is 6 gal/h"),
      },
      {
        given: { value: 12, function_name: "CANYARD.RUN_MINUTES", argument: "" },
        gives: "ok",
        from: cite("PRACTICE", "1 to 60 minutes of spray stakes and drippers"),
      },
      {
        given: { value: 1, function_name: "RUN_MINUTES", argument: "emitters_per_plant" },
        gives: UNKNOWN,
        from: cite("DEFINITION", "that argument has none"),
      },
    ],
    mistakes: [],
    seeAlso: ["UNIT_LABEL", "COMMON_MISTAKES", "FUNCTION_SOURCE"],
    native: null,
    compute({ value, function_name, argument, units }) {
      const { usual, quantity } = argumentAsked(
        "CHECK_RANGE",
        entryNamed("CHECK_RANGE", function_name, find, names),
        argument,
      );
      if (value === null) return "";
      if (usual === undefined || quantity === null) return UNKNOWN;
      return units === "" ? inEitherSystem(usual, value, quantity) : usualVerdict(usual, value, units);
    },
  });
