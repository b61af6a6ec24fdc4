/** Answers as they are read: numbers with their units, dates and times as on the calendar, tables as rows of texts. */
import { isTable, type Answer, type CellAnswer, type Entry } from "../../src/kernel";
import { isOnCalendar } from "../../src/taskpane/dates";
import { shownAnswer } from "../../src/taskpane/shown";

export function numberFact(value: CellAnswer, unit: string): string {
  const shown = shownAnswer(value, unit);
  return typeof value !== "number" || unit === "" || isOnCalendar(unit) ? shown : `${shown} ${unit}`;
}

export function rowsFact({ result }: Entry, rows: Answer): readonly (readonly string[])[] {
  const quantities: readonly string[] = isTable(result) ? result.table.map(({ quantity }) => quantity) : [];
  return (rows as readonly (readonly CellAnswer[])[]).map((row) =>
    row.map((cell, across) => shownAnswer(cell, quantities[across] ?? "")),
  );
}
