/** What the inputs of a new sheet take; what is wrong is told in our own sentence, before and after it is typed. */
import type { Validation } from "../../workbooks/model";

/** Excel refuses longer words in its messages. */
const LONGEST_MESSAGE = 225;

export type RangeOf = (reference: string) => Excel.Range;

export function limit({ dataValidation }: Excel.Range, validation: Validation, rangeOf: RangeOf): void {
  const message = atMost(LONGEST_MESSAGE, validation.message);
  dataValidation.rule = ruleOf(validation, rangeOf);
  dataValidation.errorAlert = { showAlert: true, style: "Stop", title: "Not taken", message };
  dataValidation.prompt = { showPrompt: true, title: "What goes here", message };
}

function ruleOf(validation: Validation, rangeOf: RangeOf): Excel.DataValidationRule {
  if ("words" in validation) return { list: { inCellDropDown: true, source: validation.words.join(",") } };
  if ("list" in validation) return { list: { inCellDropDown: true, source: rangeOf(validation.list) } };
  const { least, most, whole } = validation;
  const between = { operator: "Between", formula1: least, formula2: most } as const;
  return whole === true ? { wholeNumber: between } : { decimal: between };
}

function atMost(length: number, words: string): string {
  return words.length <= length ? words : `${words.slice(0, length - 1)}…`;
}
