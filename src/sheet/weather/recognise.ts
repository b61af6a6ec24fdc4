/** What the columns of a table are, in which units and in which order its dates stand: a proposal, and what is open. */
import type { DateOrder } from "./dates";
import { openParts, orderOf, readDate } from "./dates";
import type { ColumnUse, Field } from "./fields";
import { FIELDS, isDatePart } from "./fields";
import { readHeading } from "./headers";
import { readNumber } from "./readings";
import type { TextTable } from "./readTable";
import type { UnitKind, WeatherUnit } from "./units";
import { unitNamed, unitsOf, unitSpelt } from "./units";

export interface RecognisedColumn {
  readonly heading: string;
  readonly samples: readonly string[];
  readonly use: ColumnUse | null;
  /** The name of a unit; null where it is open. */
  readonly unit: string | null;
  /** Not stated, but likely by the numbers or by the other columns. */
  readonly isGuessed: boolean;
}

export interface Recognised {
  readonly columns: readonly RecognisedColumn[];
  /** Undefined where the dates can be read either way. */
  readonly order: DateOrder | undefined;
  /** Fields that more than one column could be. */
  readonly rivals: readonly Field[];
}

const MOST_SAMPLES = 3;

export function recognise(table: TextTable, wanted: readonly Field[]): Recognised {
  const texts = table.headings.map((_, at) => table.rows.map(({ cells }) => (cells[at] ?? "").trim()));
  const read = table.headings.map((heading) => readHeading(heading));
  const uses = usesOf(
    read.map(({ use }) => use ?? null),
    texts,
    wanted,
  );
  const units = unitsFor(
    table,
    read.map(({ units: stated }) => stated),
    uses.chosen,
    texts,
  );
  const dates = texts[uses.chosen.indexOf("date")] ?? [];
  return {
    columns: table.headings.map((heading, at) => ({
      heading,
      samples: texts[at]!.filter((text) => text !== "").slice(0, MOST_SAMPLES),
      use: uses.chosen[at]!,
      ...units[at]!,
    })),
    order: orderOf(dates),
    rivals: uses.rivals,
  };
}

function usesOf(found: readonly (ColumnUse | null)[], texts: readonly (readonly string[])[], wanted: readonly Field[]) {
  const isDates = (at: number) =>
    (texts[at] ?? []).some((text) => readDate(text, "day first") !== undefined || openParts(text));
  const whole = found.map((use, at) => (use === "day" && isDates(at) ? "date" : use));
  const hasDate = whole.some((use, at) => use === "date" && isDates(at));
  const rivals = new Set<Field>();
  const chosen: (ColumnUse | null)[] = [];
  whole.forEach((use, at) => {
    const isWanted = use !== null && (isDatePart(use) ? !hasDate : use === "date" ? isDates(at) : wanted.includes(use));
    const isTaken = use !== null && chosen.includes(use);
    if (isWanted && isTaken && use !== "date" && !isDatePart(use)) rivals.add(use);
    chosen.push(isWanted && !isTaken ? use : null);
  });
  return { chosen, rivals: [...rivals] };
}

interface UnitFound {
  readonly unit: string | null;
  readonly isGuessed: boolean;
}

const NONE: UnitFound = { unit: null, isGuessed: false };

function unitsFor(
  table: TextTable,
  stated: readonly (readonly WeatherUnit[])[],
  uses: readonly (ColumnUse | null)[],
  texts: readonly (readonly string[])[],
): UnitFound[] {
  const kinds = uses.map((use) => (use === null || isDatePart(use) ? null : FIELDS[use].kind));
  const known = kinds.map((kind, at) => {
    if (!kind) return null;
    const below = unitSpelt((table.unitLine[at] ?? "").replace(/^[([]|[)\]]$/g, ""));
    return [...stated[at]!, ...below].find((unit) => unit.kind === kind) ?? null;
  });
  const numbers = texts.map((column) => numbersIn(column, table.hasDecimalComma));
  const temperatures = numbers.filter((_, at) => kinds[at] === "temperature").flat();
  const system = known.find((unit) => unit?.system)?.system ?? systemBy(temperatures);
  return kinds.map((kind, at) => {
    if (!kind) return NONE;
    if (known[at]) return { unit: known[at]!.name, isGuessed: false };
    const likely = byNumbers(kind, kind === "temperature" ? temperatures : numbers[at]!) ?? bySystem(kind, system);
    return likely === undefined ? NONE : { unit: likely, isGuessed: true };
  });
}

function numbersIn(texts: readonly string[], hasDecimalComma: boolean): number[] {
  return texts.flatMap((text) => {
    const reading = readNumber(text, hasDecimalComma);
    return reading.kind === "number" ? [reading.value] : [];
  });
}

function systemBy(temperatures: readonly number[]): WeatherUnit["system"] {
  const unit = byNumbers("temperature", temperatures);
  return unit === undefined ? undefined : unitNamed(unit).system;
}

/** Days of which a year's course can be told. */
const MANY_DAYS = 200;
/** No place on Earth has had more, in C; and summers everywhere have had more in F. */
const HOTTEST_C = 57;
/** More rain than a day has, in inches. */
const WETTEST_IN = 25;

type Likely = (most: number, numbers: readonly number[]) => string | undefined;

const LIKELY: Partial<Readonly<Record<UnitKind, Likely>>> = {
  temperature(most, numbers) {
    if (most > 150) return numbers.every(Number.isInteger) ? "tenths of a degree C" : "K";
    if (most > HOTTEST_C) return "F";
    return numbers.length >= MANY_DAYS && most <= 48 ? "C" : undefined;
  },
  depth(most, numbers) {
    if (most <= WETTEST_IN) return undefined;
    return most > 400 && numbers.every(Number.isInteger) ? "tenths of a mm" : "mm";
  },
  humidity: (most) => (most > 1.5 ? "%" : "part of 1"),
  // A bright day has 30 MJ/m2, or about 350 W/m2 as a mean; 700 Ly are its like.
  radiation: (most) => (most > 12 && most <= 45 ? "MJ/m2 a day" : undefined),
};

function byNumbers(kind: UnitKind, numbers: readonly number[]): string | undefined {
  return numbers.length > 0 ? LIKELY[kind]?.(Math.max(...numbers), numbers) : undefined;
}

function bySystem(kind: UnitKind, system: WeatherUnit["system"]): string | undefined {
  if (!system || kind === "radiation" || kind === "volume") return undefined;
  return unitsOf(kind).find((unit) => unit.system === system)?.name;
}
