/** What an argument is, in which units, what it may be, and what stands for it when it is left out. */
import type { Parameter } from "../../src/functions";
import { isOptional, type Entry, type Param } from "../../src/kernel";

export interface ArgumentFacts {
  readonly name: string;
  readonly about: string;
  readonly us: string;
  readonly metric: string;
  readonly allowed: readonly string[];
  /** "needed", or what happens without it. */
  readonly otherwise: string;
}

const KINDS: Readonly<Record<Exclude<Param["kind"], undefined>, string>> = {
  word: "",
  switch: "TRUE or FALSE",
  text: "text",
  numbers: "",
  column: "",
  texts: "cells with names",
  cell: "any cell",
  inputs: "any values or cells",
  cells: "cells of any kind",
};

const BLANKS = {
  refused: "an empty cell is refused",
  zero: "an empty cell counts as 0",
  zeros: "zeros says what an empty cell or a 0 is",
  "by row": "an empty cell is refused, or its row left out where zeros says so",
} as const;

function blanksText(param: Param | undefined): string {
  if (param === undefined || !("blanks" in param)) return "";
  if (param.kind === "column" && param.blanks === "refused") return "an empty cell is an error in its row";
  return BLANKS[param.blanks];
}

function kindText(param: Param | undefined): string {
  return param?.kind === undefined ? "" : KINDS[param.kind];
}

function allowedTexts({ limits, words }: Parameter, param: Param | undefined): readonly string[] {
  const word = param !== undefined && "orWord" in param ? param.orWord : undefined;
  const guard = param !== undefined && "guard" in param ? param.guard : undefined;
  return [
    kindText(param),
    limits,
    words?.map((each) => `"${each}"`).join(", ") ?? "",
    word === undefined ? "" : `or "${word}"`,
    guard === undefined ? "" : `why: ${guard}`,
    blanksText(param),
  ].filter((text) => text !== "");
}

function defaultText(value: number | string | boolean): string {
  if (typeof value === "string") return `"${value}"`;
  return String(value).toUpperCase();
}

function otherwiseText({ optional, repeating, default: start }: Parameter, param: Param | undefined): string {
  if (repeating) return "as many as the function named takes";
  // Before any number of further arguments none can be left out, but its cell may be blank.
  const mayBeBlank = !optional && param !== undefined && isOptional(param);
  if (mayBeBlank) return start === undefined ? "may be blank" : `${defaultText(start)} is taken for a blank`;
  if (!optional) return "needed";
  return start === undefined ? "may be left out" : `${defaultText(start)} is taken`;
}

export function argumentFacts(entry: Entry, parameter: Parameter): ArgumentFacts {
  const { name, about, unitUs, unitMetric } = parameter;
  return {
    name,
    about,
    us: unitUs,
    metric: unitMetric,
    allowed: allowedTexts(parameter, entry.params[name]),
    otherwise: otherwiseText(parameter, entry.params[name]),
  };
}
