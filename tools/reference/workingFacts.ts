/** The working of the first example, as the calculation recorded it. */
import { working, type FunctionHelp } from "../../src/functions";
import { calendarText, isOnCalendar } from "../../src/taskpane/dates";
import { unitIn } from "../../src/taskpane/library";
import { shownNumber } from "../../src/taskpane/shown";
import { systemOf } from "./exampleFormula";

export interface StepFacts {
  readonly words: string;
  readonly symbols: string;
  /** The same with the numbers filled in; "" for a number that was read. */
  readonly numbers: string;
  readonly value: string;
  /** The unit; of a date or a time how the calendar tells it, in brackets. */
  readonly unit: string;
}

export function workingFacts(help: FunctionHelp): readonly StepFacts[] {
  const args = help.examples[0]?.args ?? [];
  const system = systemOf(help, args);
  return working(help.name, args).map(({ words, symbols, numbers, value, unit }) => {
    const onCalendar = isOnCalendar(unit) ? calendarText(value, unit) : null;
    const told = onCalendar === null ? unitIn(unit, system) : `(${onCalendar})`;
    return { words, symbols, numbers, value: shownNumber(value), unit: told };
  });
}
