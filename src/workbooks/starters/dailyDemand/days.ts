import { BlockRef, columnLetters, columnNumber, rowNumber, type SheetBuilder, type StarterBuilder } from "../../kit";
import { etColumns, waterColumns } from "./dayColumns";
import { DAYS } from "./figures";
import type { DemandInputs } from "./inputs";
import type { Readings } from "./weather";
import type { Pot } from "./work";

type Columns = Readonly<Record<string, BlockRef>>;

export interface Days {
  readonly column: Columns;
  /** The columns of the balance, without their headings. */
  readonly balance: Readonly<Record<"deficit" | "drainage" | "unmet" | "note", BlockRef>>;
  /** A formula on the balance; where the call has no answer, the reason that it gives instead of the 0 of empty cells. */
  readonly ofBalance: (formula: string) => string;
}

/** One row for each row of Weather; every formula of a row can be copied down from the first. */
export function fillDays(
  kit: StarterBuilder,
  daily: SheetBuilder,
  given: DemandInputs,
  read: Readings,
  pot: Pot,
): Days {
  const weather = (key: string, row: number): string => `Weather!${read[key]!.cell(row).at}`;
  const temperatures = new BlockRef("Weather", read["date"]!.first, read["tmin"]!.last);
  daily.note(
    "Balance: what the pot lacked + used - rain - irrigation, never below 0 nor above its available water. One call fills the five columns on the right: leave them free.",
  );
  const { column, body } = daily.table({
    rows: DAYS,
    notes: "above",
    columns: [...etColumns(kit, given, String(temperatures), weather), ...waterColumns(kit, given, pot, weather)],
  });
  declareGrowth(kit, read, body);
  return { column, ...fillBalance(kit, daily, given, pot, column) };
}

const BALANCE_HEADINGS = ["day", "the pot lacks", "drained", "not met", "irrigate"];

/** The call's own headings stand on the last of the three heading rows, so that each day has its row. */
function fillBalance(
  kit: StarterBuilder,
  daily: SheetBuilder,
  given: DemandInputs,
  pot: Pot,
  column: Columns,
): Pick<Days, "balance" | "ofBalance"> {
  const { use, rain, kept, refill } = column as Record<"use" | "rain" | "kept" | "refill", BlockRef>;
  const [volume, format] = [kit.pick("gal", "L"), kit.pick("decimals3", "decimals2")] as const;
  const first = columnNumber(refill.first) + 1;
  const heading = rowNumber(refill.first) - 3;
  const block = daily
    .repeat(heading, heading + 2)
    .goTo(heading + 1)
    .spill(
      {
        label: "number",
        table: `=CANYARD.WATER_BALANCE(${use.here}, ${rain.here}, ${kept.here}, ${pot.available}, ${given.trigger}, ${given.start})`,
        rows: DAYS + 1,
        formats: ["decimals0", format, format, format, undefined],
        header: true,
        plain: balancePlain(given, pot, column, columnLetters(first)),
      },
      columnLetters(first),
    );
  BALANCE_HEADINGS.forEach((text, at) => {
    const letters = columnLetters(first + at);
    daily.put(`${letters}${heading}`, { value: text, style: "heading", wraps: true });
    if (at > 0) daily.put(`${letters}${heading + 1}`, { value: text === "irrigate" ? "" : volume, style: "heading" });
  });
  const note = block.column(4, 1);
  for (let day = 0; day < DAYS; day += 1) daily.put(note.cell(day).at, { style: "mark" });
  const deficit = block.column(1, 1);
  return {
    balance: { deficit, drainage: block.column(2, 1), unmet: block.column(3, 1), note },
    ofBalance: (formula) => `=IF(COUNT(${deficit}) = 0, ${block.cell(0)}, ${formula})`,
  };
}

function balancePlain(given: DemandInputs, pot: Pot, column: Columns, beside: string): readonly (readonly string[])[] {
  const deficitColumn = columnLetters(columnNumber(beside) + 1);
  const rows = Array.from({ length: DAYS }, (_day, at) => {
    const [use, rain, kept] = ["use", "rain", "kept"].map((key) => column[key]!.cell(at).at);
    const row = rowNumber(use!);
    const before = at === 0 ? String(given.start) : `${deficitColumn}${row - 1}`;
    const reached = `(${before} + ${use} - ${rain} - ${kept})`;
    return [
      `=${at + 1}`,
      `=MAX(0, MIN(${reached}, ${pot.available}))`,
      `=MAX(0, -1 * ${reached})`,
      `=MAX(0, ${reached} - ${pot.available})`,
      // A deficit that misses the line by float dust alone has reached it.
      `=IF(${deficitColumn}${row} >= (${given.trigger} - 0.000000001) * ${pot.available}, "irrigate", "")`,
    ];
  });
  return [['="day"', '="deficit"', '="drainage"', '="unmet"', '="note"'], ...rows];
}

function declareGrowth(kit: StarterBuilder, read: Readings, body: BlockRef): void {
  const columnOf = (key: string): string => read[key]!.first.replace(/\d+/, "");
  const [degrees, depth] = [kit.pick("F", "C"), kit.pick("in", "mm")];
  kit.grows({
    inputs: String(new BlockRef("Weather", read["date"]!.first, read["station"]!.last)),
    following: [String(body)],
    fields: [
      { field: "date", column: columnOf("date"), unit: "date" },
      { field: "tmax", column: columnOf("tmax"), unit: degrees },
      { field: "tmin", column: columnOf("tmin"), unit: degrees },
      { field: "rain", column: columnOf("rain"), unit: depth },
      { field: "irrigation", column: columnOf("irrigation"), unit: kit.pick("gal", "L") },
      { field: "et", column: columnOf("station"), unit: kit.pick("in/day", "mm/day") },
    ],
  });
}
