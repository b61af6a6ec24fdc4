/**
 * What the starter workbooks are built with: sheets filled from the top down, so that no address is typed by hand.
 * Layout of a line: A what, B unit, C the mark of an input, D the value, E how it is worked.
 */
import type { Cell, Chart, FormatName, Growing, Print, Sheet, StyleName, Validation, Workbook } from "./model";

export type Edition = "us" | "metric";

export const CAUTION = "Planning estimate. Check with a bucket, a scale and a meter before relying on it.";
const NOT_FOR_CONTROL = "Planning figures for people. Not for automatic control.";

const FIRST_FREE_ROW = 5;
/** A longer explanation runs over the edge of a printed page. */
export const LONGEST_NOTE = 150;

export type SheetName = "About" | "Inputs" | "Work" | "Result" | "Checks" | "Lists" | (string & {});

/** A cell by its sheet and absolute address, ready for a formula: `Inputs!$D$7`. */
export class CellRef {
  constructor(
    readonly sheet: string,
    /** `D7` */
    readonly at: string,
  ) {}

  /** Absolute, without the sheet. */
  get here(): string {
    return absolute(this.at);
  }

  toString(): string {
    return `${quoted(this.sheet)}!${this.here}`;
  }
}

/** A block: `Inputs!$B$8:$B$13`. */
export class BlockRef {
  constructor(
    readonly sheet: string,
    readonly first: string,
    readonly last: string,
  ) {}

  /** The same block without its sheet, absolute. */
  get here(): string {
    return `${absolute(this.first)}:${absolute(this.last)}`;
  }

  /** `B8:B13` */
  get at(): string {
    return `${this.first}:${this.last}`;
  }

  toString(): string {
    return `${quoted(this.sheet)}!${this.here}`;
  }

  /** The cell so many rows and columns from the first. */
  cell(row: number, column = 0): CellRef {
    return new CellRef(this.sheet, shifted(this.first, row, column));
  }

  /** Some of its rows, counted from 0. */
  rows(from: number, to: number): BlockRef {
    const width = columnNumber(this.last) - columnNumber(this.first);
    return new BlockRef(this.sheet, shifted(this.first, from, 0), shifted(this.first, to, width));
  }

  /** One of its columns, counted from 0, without the first `below` rows. */
  column(column: number, below = 0): BlockRef {
    const height = rowNumber(this.last) - rowNumber(this.first);
    return new BlockRef(this.sheet, shifted(this.first, below, column), shifted(this.first, height, column));
  }
}

interface Look {
  readonly format?: FormatName;
  readonly style?: StyleName;
}

/** What an input may be; the sentence is made of the limits unless it is given. */
export type Limits =
  | { readonly least: number; readonly most: number; readonly whole?: true; readonly message?: string }
  | { readonly words: readonly string[]; readonly message?: string }
  | { readonly list: BlockRef; readonly message?: string };

interface LineStart {
  readonly label: string;
  readonly unit?: string;
  /** In plain words; the plain formula follows by itself. */
  readonly how?: string;
  readonly format?: FormatName;
}

export interface InputLine extends LineStart {
  readonly input: number | string | boolean;
  readonly limits?: Limits;
}

export interface FormulaLine extends LineStart {
  readonly formula: string;
  readonly plain?: string;
  readonly style?: StyleName;
}

/** What a formula of a table's row refers to: a cell of the same row by the key of its column. */
export type RowCells = (key: string) => string;

export interface TableColumn {
  readonly key: string;
  readonly heading: string;
  readonly unit?: string;
  readonly format?: FormatName;
  /** One value a row; null leaves the cell empty, boxed as an input. */
  readonly inputs?: readonly (number | string | boolean | null)[];
  readonly limits?: Limits;
  /** The same formula in every row. */
  readonly formula?: (cell: RowCells, row: number) => string;
  readonly plain?: (cell: RowCells, row: number) => string;
  /** One call in the first row whose answer fills the column; `plain` is then that of each row. */
  readonly fills?: string;
  readonly how?: string;
  readonly style?: StyleName;
  /** For texts longer than the column is wide. */
  readonly wraps?: true;
}

export interface Table {
  readonly rows: number;
  readonly columns: readonly TableColumn[];
  /** Notes stand below a table; above it where more rows may come. */
  readonly notes?: "above";
}

/** The block of each column, by its key, and of the whole body. */
export interface TableRefs {
  readonly column: Readonly<Record<string, BlockRef>>;
  readonly body: BlockRef;
}

export interface Spill extends LineStart {
  /** One call; its answer starts in the first cell. */
  readonly table: string;
  readonly rows: number;
  /** One a column. Never "text": a formula in a cell of that format turns into its own text when it is edited. */
  readonly formats: readonly (Exclude<FormatName, "text"> | undefined)[];
  readonly plain?: readonly (readonly string[])[];
  /** The answer's first row names its columns. */
  readonly header: boolean;
}

export interface SheetOptions {
  readonly title: string;
  /** Characters of the columns, from A on. */
  readonly widths?: readonly number[];
  readonly print?: Print;
  readonly frozenRows?: number;
  /** It may be handed out without the sheet Checks: its overall check is empty then. */
  readonly standsAlone?: true;
}

const LINE_WIDTHS = [36, 10, 7, 13, 64];
/** Characters of a column in which a note is better read line below line. */
const WIDE_NOTE = 40;

export class SheetBuilder {
  private readonly cells: Record<string, Cell> = {};
  private readonly validations: Validation[] = [];
  private readonly charts: Chart[] = [];
  private row = FIRST_FREE_ROW;
  private repeated: Print["repeatedRows"];

  constructor(
    readonly name: string,
    private readonly options: SheetOptions,
  ) {
    this.cells["A1"] = { value: options.title, style: "title" };
    this.cells["A3"] = { value: CAUTION, style: "caution" };
  }

  get standsAlone(): boolean {
    return this.options.standsAlone === true;
  }

  /** In a narrow column a note runs on over the empty cells beside it. */
  private get notesWrap(): boolean {
    return (this.options.widths ?? LINE_WIDTHS)[4]! >= WIDE_NOTE;
  }

  /** The row that is filled next. */
  get next(): number {
    return this.row;
  }

  /** The overall check, on row 2 of every sheet. */
  overallCheck(formula: string): void {
    this.cells["A2"] = { formula, style: "check" };
  }

  /** The rows that head every printed page, where they are known only once the sheet is filled. */
  repeat(first: number, last: number): this {
    this.repeated = [first, last];
    return this;
  }

  skip(rows = 1): this {
    this.row += rows;
    return this;
  }

  /** Goes on in a given row, for what stands beside something else. */
  goTo(row: number): this {
    this.row = row;
    return this;
  }

  put(at: string, cell: Cell): CellRef {
    this.cells[at] = cell;
    return new CellRef(this.name, at);
  }

  note(text: string, style: StyleName = "note"): this {
    this.cells[`A${this.row}`] = { value: text, style };
    this.row += 1;
    return this;
  }

  /** A heading over lines. */
  block(title: string, how = "how it is worked"): this {
    if (this.row > FIRST_FREE_ROW) this.row += 1;
    ["", "unit", "", "value", how].forEach((text, column) => {
      this.cells[`${columnLetters(column + 1)}${this.row}`] = { value: column === 0 ? title : text, style: "heading" };
    });
    this.row += 1;
    return this;
  }

  input({ input, limits, ...line }: InputLine): CellRef {
    const format = typedFormat(line.format);
    const at = this.line(line, { value: input, style: "input", ...(format && { format }) }, "in");
    if (limits) this.allow(at, limits, line.label, line.unit);
    return new CellRef(this.name, at);
  }

  /** A value that the edition fixes: the cell takes nothing else. */
  locked({ input, ...line }: InputLine & { readonly message: string }): CellRef {
    const at = this.line(line, { value: input, style: "locked" }, "fixed");
    this.validations.push({ range: at, words: [String(input)], message: line.message });
    return new CellRef(this.name, at);
  }

  formula({ formula, plain, style = "result", ...line }: FormulaLine): CellRef {
    const look: Look = { style, ...(line.format && { format: line.format }) };
    return new CellRef(this.name, this.line(line, { formula, ...(plain !== undefined && { plain }), ...look }, ""));
  }

  private line({ label, unit = "", how = "" }: LineStart, cell: Cell, mark: string): string {
    const { row } = this;
    this.cells[`A${row}`] = { value: label };
    if (unit) this.cells[`B${row}`] = { value: unit };
    if (mark) this.cells[`C${row}`] = { value: mark, style: "mark" };
    this.cells[`D${row}`] = cell;
    const isWorked = "formula" in cell && cell.formula !== undefined;
    const look = { style: "note" as const, ...(this.notesWrap && { wraps: true as const }) };
    if (how && isWorked) this.cells[`E${row}`] = { words: how, plainOf: `D${row}`, ...look };
    else if (how) this.cells[`E${row}`] = { value: how, ...look };
    this.row += 1;
    return `D${row}`;
  }

  /** Three heading rows (name, unit, input or worked), the body, then a note for each worked column. */
  table({ rows, columns, notes }: Table, firstColumn = "A"): TableRefs {
    const offset = columnNumber(firstColumn);
    const above = notes === "above" ? columns.filter(({ how }) => how).length + 1 : 0;
    const heading = this.row + above;
    const first = heading + 3;
    const lettersOf = new Map(columns.map(({ key }, index) => [key, columnLetters(offset + index)]));
    columns.forEach((column) => {
      const letters = lettersOf.get(column.key)!;
      this.cells[`${letters}${heading}`] = { value: column.heading, style: "heading", wraps: true };
      this.cells[`${letters}${heading + 1}`] = { value: column.unit ?? "", style: "heading" };
      this.cells[`${letters}${heading + 2}`] = { value: markOf(column), style: "mark" };
      for (let row = 0; row < rows; row += 1) {
        this.cells[`${letters}${first + row}`] = this.tableCell(column, row, rows, (key) => {
          const of = lettersOf.get(key);
          if (of === undefined) throw new Error(`there is no column ${key}`);
          return `${of}${first + row}`;
        });
      }
      if (column.limits)
        this.allow(`${letters}${first}:${letters}${first + rows - 1}`, column.limits, column.heading, column.unit);
    });
    if (above === 0) this.row = first + rows;
    this.explain(columns, lettersOf, first, firstColumn);
    this.row = Math.max(this.row, first + rows);
    const last = first + rows - 1;
    return {
      column: Object.fromEntries(
        [...lettersOf].map(([key, letters]) => [
          key,
          new BlockRef(this.name, `${letters}${first}`, `${letters}${last}`),
        ]),
      ),
      body: new BlockRef(this.name, `${firstColumn}${first}`, `${columnLetters(offset + columns.length - 1)}${last}`),
    };
  }

  private tableCell(column: TableColumn, row: number, rows: number, cell: RowCells): Cell {
    const { format, style, inputs, formula, plain } = column;
    const look = { ...(format && { format }), ...(column.wraps && { wraps: true as const }) };
    if (column.fills !== undefined) return filledCell(column, column.fills, row, rows, cell);
    if (inputs) {
      const typed = typedFormat(format);
      const box = { style: style ?? "input", ...look, ...(typed && { format: typed }) };
      const value = inputs[row] ?? null;
      return value === null ? box : { value, ...box };
    }
    if (!formula) throw new Error(`${column.key} has neither inputs nor a formula`);
    return {
      formula: formula(cell, row),
      ...(plain && { plain: plain(cell, row) }),
      ...(style ? { style } : {}),
      ...look,
    };
  }

  private explain(
    columns: readonly TableColumn[],
    lettersOf: ReadonlyMap<string, string>,
    first: number,
    at: string,
  ): void {
    for (const { key, heading, how } of columns) {
      if (!how) continue;
      const words = `${heading}: ${how}`;
      this.cells[`${at}${this.row}`] = { words, plainOf: `${lettersOf.get(key)!}${first}`, style: "note" };
      this.row += 1;
    }
  }

  /** The block that one call fills; formats are kept ready for it. */
  spill({ label, how, table, rows, formats, plain, header }: Spill, firstColumn = "A"): BlockRef {
    this.cells[`${firstColumn}${this.row}`] = { value: label, style: "heading" };
    if (how)
      this.cells[`${firstColumn}${this.row + 1}`] = {
        value: `${how} Fills the cells below: leave them free.`,
        style: "note",
      };
    const first = this.row + (how ? 2 : 1);
    const column = columnNumber(firstColumn);
    for (let row = 0; row < rows; row += 1) {
      formats.forEach((format, index) => {
        const isHeading = header && row === 0;
        const look: Look = isHeading ? { style: "heading" } : format ? { format } : {};
        if (Object.keys(look).length > 0) this.cells[`${columnLetters(column + index)}${first + row}`] = look;
      });
    }
    const corner = `${firstColumn}${first}`;
    this.cells[corner] = {
      ...this.cells[corner],
      table,
      rows,
      columns: formats.length,
      ...(plain && { plain }),
    } as Cell;
    this.row = first + rows + 1;
    return new BlockRef(this.name, corner, `${columnLetters(column + formats.length - 1)}${first + rows - 1}`);
  }

  chart(chart: Chart): this {
    this.charts.push(chart);
    return this;
  }

  allow(range: string, limits: Limits, what: string, unit = ""): void {
    const message = limits.message ?? sentence(limits, what, unit);
    if ("words" in limits) this.validations.push({ range, words: limits.words, message });
    else if ("list" in limits) this.validations.push({ range, list: String(limits.list), message });
    else {
      const { least, most, whole } = limits;
      this.validations.push({ range, least, most, ...(whole && { whole }), message });
    }
  }

  build(): Sheet {
    const widths = this.options.widths ?? LINE_WIDTHS;
    return {
      name: this.name,
      cells: this.cells,
      columnWidths: Object.fromEntries(widths.map((width, index) => [columnLetters(index + 1), width])),
      frozen: { rows: this.options.frozenRows ?? 3 },
      validations: this.validations,
      charts: this.charts,
      print: { ...this.options.print, ...(this.repeated && { repeatedRows: this.repeated }) },
    };
  }
}

/** In a cell that shows percents some editors take a typed 0.15 for 0.15 %: a fraction is typed and shown as one. */
function typedFormat(format: FormatName | undefined): FormatName | undefined {
  if (format === "percent") return "decimals3";
  return format === "percent0" ? "decimals2" : format;
}

function markOf({ inputs, style }: TableColumn): string {
  if (!inputs) return "worked";
  return style === "locked" ? "fixed" : "in";
}

function filledCell(
  { format, style, plain }: TableColumn,
  call: string,
  row: number,
  rows: number,
  cell: RowCells,
): Cell {
  const look = { ...(style && { style }), ...(format && { format }) };
  if (row > 0) return look;
  const ofRows = plain && Array.from({ length: rows }, (_row, at) => [plain(cell, at)]);
  return { table: call, rows, columns: 1, ...(ofRows && { plain: ofRows }), ...look };
}

function sentence(limits: Limits, what: string, unit: string): string {
  if ("words" in limits) return `${what} must be one of: ${limits.words.join(", ")}.`;
  if ("list" in limits) return `${what} must be one of the words on the sheet ${limits.list.sheet}.`;
  const { least, most, whole } = limits;
  return `${what} must be a ${whole ? "whole " : ""}number from ${least} to ${most}${unit ? ` ${unit}` : ""}.`;
}

export interface About {
  /** The file's name: "zone-planner". */
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  /** How to work, step by step. */
  readonly steps: readonly string[];
  readonly cautions: readonly string[];
}

export interface Starter extends About {
  readonly edition: Edition;
  readonly workbook: Workbook;
}

/** Builds one edition: About first, then the sheets in the order they were asked for, Checks and Lists last. */
export class StarterBuilder {
  private readonly sheets: SheetBuilder[] = [];
  private readonly names: Record<string, string> = {};
  private readonly checks: { readonly label: string; readonly test: string; readonly help: string }[] = [];
  private readonly lists: { readonly title: string; readonly words: readonly (string | number)[] }[] = [];
  private growing: Growing | undefined;

  constructor(
    readonly edition: Edition,
    private readonly about: About,
  ) {}

  /** The value, unit or text of this edition. */
  pick<T>(us: T, metric: T): T {
    return this.edition === "us" ? us : metric;
  }

  sheet(name: SheetName, options: SheetOptions): SheetBuilder {
    const sheet = new SheetBuilder(name, options);
    this.sheets.push(sheet);
    return sheet;
  }

  /** The line that says which units the edition has, named `units`. */
  units(sheet: SheetBuilder): CellRef {
    const words = this.pick("US units (inches, feet, gallons, pounds, F)", "metric units (cm, mm, m, L, kg, C)");
    const other = this.pick("metric", "US");
    return this.name(
      "units",
      sheet.locked({
        label: "Units of all numbers in this workbook",
        input: this.edition,
        how: "The word that the functions are told. It converts nothing; the other edition is a workbook of its own.",
        message: `This workbook is in ${words}: the word tells the functions so and converts nothing. Take the ${other} edition instead.`,
      }),
    );
  }

  name(name: string, ref: CellRef | BlockRef): CellRef {
    this.names[name] = String(ref);
    return ref as CellRef;
  }

  /** `test` is true when all is well; `help` says what to look at when it is not. */
  check(label: string, test: string, help: string): void {
    this.checks.push({ label, test, help });
  }

  /** Words for a validation, on the sheet Lists. */
  list(title: string, words: readonly (string | number)[]): BlockRef {
    this.lists.push({ title, words });
    const column = columnLetters(this.lists.length);
    return new BlockRef("Lists", `${column}6`, `${column}${5 + words.length}`);
  }

  grows(growing: Growing): void {
    this.growing = growing;
  }

  build(): Starter {
    const checks = this.checksSheet();
    const sheets = [
      this.aboutSheet(),
      ...this.sheets,
      checks.sheet,
      ...(this.lists.length > 0 ? [this.listsSheet()] : []),
    ];
    for (const sheet of sheets) {
      if (sheet === checks.sheet) continue;
      sheet.overallCheck(sheet.standsAlone ? `=IFERROR(${checks.overall}, "")` : `=${checks.overall}`);
    }
    return {
      ...this.about,
      edition: this.edition,
      workbook: {
        name: `${this.about.title}, ${this.pick("US units", "metric")}`,
        sheets: sheets.map((sheet) => sheet.build()),
        namedRanges: this.names,
        ...(this.growing && { growing: this.growing }),
      },
    };
  }

  private checksSheet(): { readonly sheet: SheetBuilder; readonly overall: string } {
    const sheet = new SheetBuilder("Checks", { title: "Checks", widths: [52, 4, 4, 13, 70] });
    sheet.block("Each says OK, or LOOK with what to look at", "what to do when it says LOOK");
    const first = sheet.next;
    for (const { label, test, help } of this.checks) {
      sheet.formula({ label, formula: `=IF(IFERROR(${test}, FALSE), "OK", "LOOK")`, style: "check" });
      sheet.put(`E${sheet.next - 1}`, { value: help, style: "note", wraps: true });
    }
    const all = `D${first}:D${sheet.next - 1}`;
    sheet.overallCheck(`=IF(COUNTIF(${all}, "OK")=ROWS(${all}), "All checks OK", "See Checks")`);
    return { sheet, overall: "Checks!$A$2" };
  }

  private aboutSheet(): SheetBuilder {
    const { title, purpose, steps, cautions } = this.about;
    const sheet = new SheetBuilder("About", { title: `Tern Hollow: ${title}`, widths: [100, 20] });
    const heading = (text: string) => sheet.put(`A${sheet.next}`, { value: text, style: "heading" }) && sheet.skip();
    const lines = (texts: readonly string[], style?: StyleName) => {
      for (const value of texts) {
        sheet.put(`A${sheet.next}`, { value, wraps: true, ...(style && { style }) });
        sheet.skip();
      }
      sheet.skip();
    };
    heading("What it is for");
    lines([
      purpose,
      "Tern Hollow is an invented nursery and all its figures are invented: put your own in their place.",
    ]);
    heading("How to work with it");
    lines(steps.map((step, index) => `${index + 1}. ${step}`));
    heading("What the marks mean");
    sheet.put(`A${sheet.next}`, { value: 'Boxed on yellow, with the word "in": yours to change', style: "input" });
    sheet.skip();
    sheet.put(`A${sheet.next}`, { value: "Bold: a result", style: "result" });
    sheet.skip();
    sheet.put(`A${sheet.next}`, { value: 'Grey, with the word "fixed": the edition fixes it', style: "locked" });
    sheet.skip();
    sheet.put(`A${sheet.next}`, { value: "OK or LOOK: a check, green or red as well", style: "check" });
    sheet.skip(2);
    heading("Before you rely on it");
    lines([CAUTION, NOT_FOR_CONTROL, ...cautions], "caution");
    heading("Version");
    sheet.put(`A${sheet.next}`, { formula: '="Canyard " & CANYARD.LIBRARY_VERSION()', plain: "", wraps: true });
    sheet.skip();
    lines([
      `Units: ${this.pick("US", "metric")}. Where CANYARD is unknown, the last numbers stay; the plain workbook beside this one works without it.`,
    ]);
    return sheet;
  }

  private listsSheet(): SheetBuilder {
    const sheet = new SheetBuilder("Lists", {
      title: "Lists that the inputs choose from",
      widths: this.lists.map(() => 22),
    });
    this.lists.forEach(({ title, words }, index) => {
      const column = columnLetters(index + 1);
      sheet.put(`${column}5`, { value: title, style: "heading" });
      words.forEach((value, row) => sheet.put(`${column}${6 + row}`, { value }));
    });
    return sheet;
  }
}

export function columnLetters(number: number): string {
  const above = Math.floor((number - 1) / 26);
  return (above > 0 ? columnLetters(above) : "") + String.fromCharCode(65 + ((number - 1) % 26));
}

export function columnNumber(address: string): number {
  const letters = address.replace(/[^A-Za-z]/g, "").toUpperCase();
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
}

export function rowNumber(address: string): number {
  return Number(address.replace(/[^0-9]/g, ""));
}

function shifted(address: string, rows: number, columns: number): string {
  return `${columnLetters(columnNumber(address) + columns)}${rowNumber(address) + rows}`;
}

function absolute(address: string): string {
  return address.replace(/^([A-Z]+)([0-9]+)$/, "$$$1$$$2");
}

function quoted(sheet: string): string {
  return /^[A-Za-z_]\w*$/.test(sheet) ? sheet : `'${sheet.replaceAll("'", "''")}'`;
}
