/** Mistakes that people really make, and the number that each gives in the first example. */
import { call, type FunctionHelp } from "../../src/functions";
import { mistakeAnswer, readArguments, type Entry } from "../../src/kernel";
import { unitFor } from "../../src/taskpane/library";
import { systemOf } from "./exampleFormula";
import { numberFact } from "./numberFacts";

export interface MistakeFacts {
  readonly slip: string;
  /** What it gives in the first example; "" where that is no other number. */
  readonly answer: string;
}

export function mistakeFacts(entry: Entry, help: FunctionHelp): readonly MistakeFacts[] {
  const args = help.examples[0]?.args ?? [];
  const right = call(entry.name, args);
  const unit = unitFor(help.result, systemOf(help, args));
  return entry.mistakes.map((mistake) => {
    const wrong = typeof right === "number" ? mistakeAnswer(entry, readArguments(entry, args), mistake, right) : null;
    const answer = wrong === null ? "" : numberFact(wrong, unit);
    return { slip: mistake.slip, answer: answer === numberFact(right as number, unit) ? "" : answer };
  });
}
