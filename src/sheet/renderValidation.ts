import type { Validation } from "../workbooks/model";
import { plain } from "./addresses";

/** A rule of the engine, and what it does not know: our sentence, and that only whole numbers will do. */
export interface Rule {
  readonly id: string;
  readonly ranges: readonly string[];
  readonly isBlocking: boolean;
  readonly criterion: Criterion;
  readonly message?: string;
  readonly whole?: true;
}

export interface Criterion {
  readonly type: string;
  readonly values: readonly string[];
  readonly displayStyle?: "arrow" | "plainText";
}

export function renderValidation(validation: Validation, id: string): Rule {
  const { range, message } = validation;
  // The engine works out a formula as criterion from what stands in the cell before the edit, so whole numbers are seen to in guard.ts.
  const whole = "least" in validation && validation.whole ? ({ whole: true } as const) : {};
  return { id, ranges: [plain(range)], isBlocking: true, criterion: criterionOf(validation), message, ...whole };
}

function criterionOf(validation: Validation): Criterion {
  if ("words" in validation) {
    const { words } = validation;
    return { type: "isValueInList", values: words, displayStyle: words.length > 1 ? "arrow" : "plainText" };
  }
  if ("list" in validation) {
    return { type: "isValueInRange", values: [plain(validation.list)], displayStyle: "arrow" };
  }
  return { type: "isBetween", values: [String(validation.least), String(validation.most)] };
}
