/** A table as rows for the sheet, one for every day, and what became of everything that was in it. */
import type { BlockRow } from "../bringIn";
import type { DateOrder } from "./dates";
import { hasTime, monthOf, readDate, serialOf, serialOfDayInYear } from "./dates";
import type { ColumnUse, Field } from "./fields";
import { FIELDS, isDatePart } from "./fields";
import { readNumber } from "./readings";
import type { TextRow, TextTable } from "./readTable";
import { NoTable } from "./readTable";
import type { ConvertUnit, UnitKind, WeatherUnit } from "./units";
import { converted, unitNamed } from "./units";

export interface Choice {
  /** For each column of the table. */
  readonly uses: readonly (ColumnUse | null)[];
  readonly units: readonly (string | null)[];
  readonly order: DateOrder;
}

export interface WantedField {
  readonly field: Field;
  readonly unit: string;
  readonly missing?: number;
}

export interface Arranged {
  readonly rows: readonly BlockRow[];
  readonly report: Report;
}

export interface Report {
  readonly days: number;
  readonly first: number;
  readonly last: number;
  /** Days that lack a reading of what the table brings. */
  readonly incomplete: readonly { readonly day: number; readonly lacks: readonly Field[] }[];
  /** Days without a row in the table. */
  readonly added: readonly number[];
  readonly repeated: readonly { readonly day: number; readonly line: number; readonly differs: boolean }[];
  readonly withoutDate: readonly { readonly line: number; readonly text: string }[];
  readonly unreadable: readonly Oddity[];
  readonly impossible: readonly Oddity[];
  readonly flagged: number;
  readonly traces: number;
  /** Days whose lowest temperature lies above the highest. */
  readonly turned: readonly number[];
  /** What the sheet takes and the table does not bring. */
  readonly notBrought: readonly Field[];
}

export interface Oddity {
  readonly line: number;
  readonly heading: string;
  readonly text: string;
}

/** Longer stretches without a row are more likely a slip in a date than days that nobody recorded. */
const LONGEST_GAP = 366;
/** Hours of a day, or several stations in one table. */
const MOST_REPEATED = 0.5;

export function arrange(
  table: TextTable,
  choice: Choice,
  wanted: readonly WantedField[],
  convert: ConvertUnit,
): Arranged {
  return new Arrangement(table, choice, wanted, convert).arranged();
}

class Arrangement {
  private readonly days = new Map<number, TextRow>();
  private readonly withoutDate: { line: number; text: string }[] = [];
  private readonly repeated: { day: number; line: number; differs: boolean }[] = [];
  private readonly unreadable: Oddity[] = [];
  private readonly impossible: Oddity[] = [];
  private flagged = 0;
  private traces = 0;

  constructor(
    private readonly table: TextTable,
    private readonly choice: Choice,
    private readonly wanted: readonly WantedField[],
    private readonly convert: ConvertUnit,
  ) {}

  arranged(): Arranged {
    for (const row of this.table.rows) this.place(row);
    this.refuseSeveralADay();
    const found = [...this.days.keys()].sort((a, b) => a - b);
    if (found.length === 0) throw new NoTable("No row of it has a date that can be read.");
    const { all, added } = withoutGaps(found);
    const readings = all.map((day) => this.readingsOf(day));
    const brought = this.wanted.map(({ field }) => field).filter((field) => this.columnOf(field) >= 0);
    return {
      rows: readings.map((values, at) => this.wanted.map((each) => valueOf(each, all[at]!, values))),
      report: {
        days: all.length,
        first: all[0]!,
        last: all.at(-1)!,
        incomplete: all.flatMap((day, at) => {
          const lacks = brought.filter((field) => field !== "irrigation" && readings[at]![field] === undefined);
          return lacks.length > 0 ? [{ day, lacks }] : [];
        }),
        added,
        repeated: this.repeated,
        withoutDate: this.withoutDate,
        unreadable: this.unreadable,
        impossible: this.impossible,
        flagged: this.flagged,
        traces: this.traces,
        turned: all.filter((_, at) => (readings[at]!.tmin ?? -Infinity) > (readings[at]!.tmax ?? Infinity)),
        notBrought: this.wanted
          .map(({ field }) => field)
          .filter((field) => field !== "date" && !brought.includes(field)),
      },
    };
  }

  private place(row: TextRow): void {
    const day = this.dayOf(row);
    if (day === undefined) {
      this.withoutDate.push({ line: row.line, text: row.cells.join(" ").trim().slice(0, 40) });
      return;
    }
    const before = this.days.get(day);
    if (before) this.repeated.push({ day, line: row.line, differs: before.cells.join() !== row.cells.join() });
    else this.days.set(day, row);
  }

  private dayOf({ cells }: TextRow): number | undefined {
    const text = (use: ColumnUse) => (cells[this.choice.uses.indexOf(use)] ?? "").trim();
    const has = (use: ColumnUse) => this.choice.uses.includes(use);
    if (has("date")) return readDate(text("date"), this.choice.order);
    const year = Number(text("year"));
    if (!has("year") || text("year") === "") return undefined;
    if (has("day of the year")) return serialOfDayInYear(year, Number(text("day of the year")));
    const month = monthOf(text("month"));
    return month === undefined ? undefined : serialOf(year, month, Number(text("day")));
  }

  private refuseSeveralADay(): void {
    const share = this.repeated.length / this.table.rows.length;
    if (share < MOST_REPEATED || this.days.size === 0) return;
    const at = this.choice.uses.indexOf("date");
    const isHourly = this.table.rows.slice(0, 48).some(({ cells }) => at >= 0 && hasTime(cells[at] ?? ""));
    throw new NoTable(
      `It has ${Math.round(this.table.rows.length / this.days.size)} rows for each day${isHourly ? ", with the time of day" : ""}. Take the daily table, of one station.`,
    );
  }

  private columnOf(field: Field): number {
    if (field !== "date") return this.choice.uses.indexOf(field);
    return this.choice.uses.findIndex((use) => use !== null && (use === "date" || isDatePart(use)));
  }

  private readingsOf(day: number): Partial<Record<Field, number>> {
    const row = this.days.get(day);
    const readings: Partial<Record<Field, number>> = { date: day };
    for (const wanted of row ? this.wanted : []) {
      const at = this.choice.uses.indexOf(wanted.field);
      const unit = this.choice.units[at];
      if (wanted.field === "date" || at < 0 || !unit) continue;
      const value = this.readingAt(row!, at, wanted, unitNamed(unit));
      if (value !== undefined) readings[wanted.field] = value;
    }
    return readings;
  }

  private readingAt({ line, cells }: TextRow, at: number, wanted: WantedField, unit: WeatherUnit): number | undefined {
    const text = (cells[at] ?? "").trim();
    const oddity = { line, heading: this.table.headings[at]!, text };
    const reading = readNumber(text, this.table.hasDecimalComma);
    if (reading.kind === "missing") return undefined;
    if (reading.kind === "trace" && wanted.field === "rain") {
      this.traces += 1;
      return 0;
    }
    if (reading.kind !== "number") {
      this.unreadable.push(oddity);
      return undefined;
    }
    if (!isPossible(reading.value, unit, this.convert)) {
      this.impossible.push(oddity);
      return undefined;
    }
    if (reading.isFlagged) this.flagged += 1;
    return converted(reading.value, unit, wanted.unit, this.convert);
  }
}

/** Beyond the records of the Earth, in the unit named. */
const POSSIBLE: Readonly<Record<UnitKind, readonly [unit: string, least: number, most: number]>> = {
  temperature: ["C", -90, 60],
  depth: ["mm", 0, 1900],
  speed: ["m/s", 0, 110],
  humidity: ["%", 0, 105],
  radiation: ["MJ/m2/day", 0, 50],
  volume: ["L", 0, 1e6],
};

function isPossible(reading: number, unit: WeatherUnit, convert: ConvertUnit): boolean {
  const [common, least, most] = POSSIBLE[unit.kind];
  const value = converted(reading, unit, common, convert);
  return value >= least && value <= most;
}

function valueOf({ field, missing }: WantedField, day: number, readings: Partial<Record<Field, number>>) {
  return field === "date" ? day : (readings[field] ?? missing ?? null);
}

function withoutGaps(found: readonly number[]): { all: number[]; added: number[] } {
  const all: number[] = [];
  const added: number[] = [];
  for (const day of found) {
    const before = all.at(-1);
    const gap = before === undefined ? 0 : day - before - 1;
    if (gap > LONGEST_GAP)
      throw new NoTable(`It has no row for ${gap} days in one stretch. Bring in one of the parts on either side.`);
    for (let missing = day - gap; missing < day; missing += 1) {
      all.push(missing);
      added.push(missing);
    }
    all.push(day);
  }
  return { all, added };
}

/** What is measured by a field that the table brings, and has no unit chosen. */
export function withoutUnit({ uses, units }: Choice): readonly number[] {
  return uses.flatMap((use, at) => (use !== null && !isDatePart(use) && FIELDS[use].kind && !units[at] ? [at] : []));
}
