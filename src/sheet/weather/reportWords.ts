/** What became of a table, in sentences. */
import type { Oddity, Report } from "./arrange";
import { isoDate } from "./dates";
import type { Field } from "./fields";
import { FIELDS } from "./fields";

const MOST_NAMED = 8;

export function summary({ days, first, last }: Report): string {
  return `${counted(days, "day")}, ${isoDate(first)} to ${isoDate(last)}`;
}

export function details(report: Report): string[] {
  const { incomplete, added, repeated, withoutDate, unreadable, impossible, flagged, traces, turned, notBrought } =
    report;
  const lines: string[] = [];
  const say = (isSo: boolean, sentence: () => string) => isSo && lines.push(sentence());
  say(true, () =>
    incomplete.length === 0
      ? "No day is incomplete."
      : `${counted(incomplete.length, "incomplete day")}: ${named(incomplete.map(({ day, lacks }) => `${isoDate(day)} (no ${lacks.map(titleOf).join(", no ")})`))}.`,
  );
  say(
    added.length > 0,
    () =>
      `${counted(added.length, "day")} without a row, put in with a date and no readings: ${named(added.map(isoDate))}.`,
  );
  say(
    repeated.length > 0,
    () =>
      `${counted(repeated.length, "row")} for a day that has one already, not taken: ${named(repeated.map(repetition))}.`,
  );
  say(
    withoutDate.length > 0,
    () =>
      `${counted(withoutDate.length, "row")} without a date that can be read, not taken: ${named(withoutDate.map(({ line, text }) => `line ${line} “${text}”`))}.`,
  );
  say(
    unreadable.length > 0,
    () => `${counted(unreadable.length, "cell")} that cannot be read, left empty: ${named(unreadable.map(oddity))}.`,
  );
  say(
    impossible.length > 0,
    () =>
      `${counted(impossible.length, "reading")} that no weather can have in the unit chosen, left empty: ${named(impossible.map(oddity))}.`,
  );
  say(
    turned.length > 0,
    () =>
      `${counted(turned.length, "day")} with the lowest temperature above the highest, taken as they stand: ${named(turned.map(isoDate))}.`,
  );
  say(flagged > 0, () => `${counted(flagged, "reading")} with a mark behind the number, taken without it.`);
  say(traces > 0, () => `${counted(traces, "day")} with a trace of rain, taken as 0.`);
  say(notBrought.length > 0, () => `Not in the table, so left empty: ${notBrought.map(titleOf).join(", ")}.`);
  return lines;
}

const titleOf = (field: Field): string => FIELDS[field].title;

function oddity({ line, heading, text }: Oddity): string {
  return `line ${line}, ${heading} “${text}”`;
}

function repetition({ day, line, differs }: Report["repeated"][number]): string {
  return `${isoDate(day)} in line ${line}${differs ? ", with other readings" : ""}`;
}

function named(words: readonly string[]): string {
  const rest = words.length - MOST_NAMED;
  return words.slice(0, MOST_NAMED).join("; ") + (rest > 0 ? `; and ${rest} more` : "");
}

function counted(number: number, one: string): string {
  return `${number.toLocaleString("en-US")} ${one}${number === 1 ? "" : "s"}`;
}
