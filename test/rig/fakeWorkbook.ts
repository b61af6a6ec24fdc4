/** The workbook behind the fake of Excel: sheets of cells, names, a selection, and what was written into it. */
import { FakeHostError } from "./hostObject";

export type Value = string | number | boolean;

export interface FakeCell {
  /** The formula, or what was typed. */
  readonly content: Value;
  readonly value: Value;
  /** As the grid shows it. */
  readonly text: string;
  /** Typed as text, behind an apostrophe or in a cell formatted so. */
  readonly isText: boolean;
}

export interface Area {
  readonly sheet: FakeSheet;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface Write {
  readonly sheet: string;
  readonly address: string;
  readonly content: Value;
}

/** Anything but the contents of cells: a format, a limit, a sheet, a name; `at` is "" for the sheet itself. */
export interface Setting {
  readonly sheet: string;
  readonly at: string;
  readonly what: string;
  readonly value: unknown;
}

export type Change = Write | Setting;

export type Contents = readonly (readonly Value[])[];

export interface FakeSeries {
  name: string;
  values: string;
  labels: string;
  readonly set: Record<string, unknown>;
}

export interface FakeChart {
  readonly type: string;
  readonly series: FakeSeries[];
  /** What was set, by its path: `title.text`. */
  readonly set: Record<string, unknown>;
  readonly hiddenEntries: number[];
}

const EMPTY: FakeCell = { content: "", value: "", text: "", isText: false };
const ADDRESS = /^(?:[A-Z]{1,3}[1-9]\d*(?::[A-Z]{1,3}[1-9]\d*)?|[A-Z]{1,3}:[A-Z]{1,3}|\d+:\d+)$/i;
const LAST = { row: 1_048_575, column: 16_383 };
const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ";

interface Corner {
  readonly row: number;
  readonly column: number;
}

/** A corner by its address; what a whole row or column leaves open is given. */
function corner(text: string, open: Corner): Corner {
  const [, letters = "", digits = ""] = /^([A-Z]*)(\d*)$/.exec(text.toUpperCase()) ?? [];
  const column = [...letters].reduce((sum, letter) => sum * LETTERS.length + LETTERS.indexOf(letter) + 1, 0);
  return {
    row: digits === "" ? open.row : Number(digits) - 1,
    column: letters === "" ? open.column : column - 1,
  };
}

function lettersOf(column: number): string {
  const before = Math.floor(column / LETTERS.length);
  return (before === 0 ? "" : lettersOf(before - 1)) + LETTERS[column % LETTERS.length];
}

function cellAddress({ row, column }: Corner): string {
  return `${lettersOf(column)}${row + 1}`;
}

/** What a name stands for: cells, or a value of its own. */
export type NamedThing = { readonly cells: string; readonly on: string } | { readonly value: Value | Contents };

export class FakeSheet {
  readonly names = new Map<string, NamedThing>();
  readonly openCells = new Set<string>();
  readonly settings: Setting[] = [];
  readonly charts: FakeChart[] = [];
  isProtected = false;
  private readonly filled = new Map<string, Corner & { readonly cell: FakeCell }>();

  constructor(
    readonly name: string,
    readonly id = `{${name}}`,
  ) {}

  /** What a cell, or with "" the sheet itself, was last given; a whole column holds its cells. */
  setting(address: string, what: string): unknown {
    const holds = (at: string): boolean =>
      at === address || (at !== "" && address !== "" && this.isWithin(address, at));
    return this.settings.filter((each) => each.what === what && holds(each.at)).pop()?.value;
  }

  private isWithin(address: string, block: string): boolean {
    const [inner, outer] = [this.area(address), this.area(block)];
    return (
      inner.row >= outer.row &&
      inner.column >= outer.column &&
      inner.row + inner.rows <= outer.row + outer.rows &&
      inner.column + inner.columns <= outer.column + outer.columns
    );
  }

  /** All that stands in the sheet, for a comparison before and after. */
  get state(): unknown {
    return structuredClone({ filled: [...this.filled], settings: this.settings, charts: this.charts });
  }

  /** A block of this sheet by its address, without `$`, as the host takes it. */
  area(address: string): Area {
    if (!ADDRESS.test(address)) throw new FakeHostError("InvalidArgument");
    const [first = "", last = first] = address.split(":");
    const from = corner(first, { row: 0, column: 0 });
    const to = corner(last, LAST);
    return { sheet: this, ...from, rows: to.row - from.row + 1, columns: to.column - from.column + 1 };
  }

  /** Puts a number, text, or a formula with its value and the text that the grid shows. */
  put(address: string, content: Value, value: Value = content, text = String(value)): this {
    return this.fill(address, { content, value, text, isText: false });
  }

  /** Puts text as it stands, whatever it looks like. */
  putText(address: string, text: string): this {
    return this.fill(address, { content: text, value: text, text, isText: true });
  }

  private fill(address: string, cell: FakeCell): this {
    const { row, column } = corner(address, LAST);
    if (cell.content === "" && cell.value === "") this.filled.delete(`${row},${column}`);
    else this.filled.set(`${row},${column}`, { row, column, cell });
    return this;
  }

  cell(row: number, column: number): FakeCell {
    return this.filled.get(`${row},${column}`)?.cell ?? EMPTY;
  }

  /** The smallest block that holds every cell with something in it. */
  used(): Area | null {
    const places = [...this.filled.values()];
    if (places.length === 0) return null;
    const rows = places.map(({ row }) => row);
    const columns = places.map(({ column }) => column);
    const [row, column] = [Math.min(...rows), Math.min(...columns)];
    return {
      sheet: this,
      row,
      column,
      rows: Math.max(...rows) - row + 1,
      columns: Math.max(...columns) - column + 1,
    };
  }
}

/** The address of a block without its sheet. */
export function localAddress({ row, column, rows, columns }: Area): string {
  const first = cellAddress({ row, column });
  const last = cellAddress({ row: row + rows - 1, column: column + columns - 1 });
  return first === last ? first : `${first}:${last}`;
}

/** As the host writes the address of a range: always with its sheet. */
export function fullAddress(area: Area): string {
  const { name } = area.sheet;
  const isPlain = /^[A-Za-z_][A-Za-z_0-9.]*$/.test(name);
  return `${isPlain ? name : `'${name.replace(/'/g, "''")}'`}!${localAddress(area)}`;
}

/** A text that Excel would take for a number, a date, a time, TRUE or FALSE when it is typed. */
const TAKEN_FOR_A_VALUE = /^(?:[-+(.@$%]*\d.*|\d.*|true|false|[-+@].*|\p{L}{3,9}[ -./]\d{1,4})$/iu;

export class FakeWorkbook {
  readonly names = new Map<string, NamedThing>();
  readonly tables: string[] = [];
  /** What Excel makes of a formula that was entered; a block of values spills. */
  calculate: (formula: string) => Value | Contents = () => 0;
  /** Texts that were taken for something else because they stood there bare. */
  readonly misread: string[] = [];
  isProtected = false;
  /** How many series the host makes of a new chart's source; as a rule one for each of its columns or rows. */
  seriesOfNewChart: number | null = null;
  chartsAreShapes = true;
  readonly sheets: FakeSheet[] = [];
  private addedSheets = 0;
  private selection: { readonly sheet: FakeSheet; readonly address: string } | null = null;

  addSheet(name: string): FakeSheet {
    const sheet = new FakeSheet(name);
    this.sheets.push(sheet);
    return sheet;
  }

  /** As a page or a person adds one: the host gives it an id. */
  newSheet(name: string): FakeSheet {
    if (this.isProtected) throw new FakeHostError("AccessDenied");
    if (this.find(name) !== null) throw new FakeHostError("ItemAlreadyExists");
    if (name.length > 31 || /[[\]:*?/\\]/.test(name)) throw new FakeHostError("InvalidArgument");
    this.addedSheets += 1;
    const sheet = new FakeSheet(name, `{new ${this.addedSheets}}`);
    this.sheets.push(sheet);
    return sheet;
  }

  remove(sheet: FakeSheet): void {
    this.sheets.splice(this.sheets.indexOf(sheet), 1);
  }

  /** By its name or its id. */
  find(key: string): FakeSheet | null {
    const wanted = key.toLowerCase();
    return this.sheets.find(({ name, id }) => name.toLowerCase() === wanted || id === key) ?? null;
  }

  sheet(key: string): FakeSheet {
    const found = this.find(key);
    if (found === null) throw new FakeHostError("ItemNotFound");
    return found;
  }

  /** A name of the workbook; the host refuses one that it has already, also as the name of a table. */
  addName(name: string, { sheet, ...area }: Area): void {
    const taken = [...this.names.keys(), ...this.tables].some((each) => each.toLowerCase() === name.toLowerCase());
    if (taken) throw new FakeHostError("ItemAlreadyExists");
    this.names.set(name, { cells: localAddress({ sheet, ...area }), on: sheet.name });
  }

  select(sheet: string, address: string): void {
    this.selection = { sheet: this.sheet(sheet), address };
  }

  /** Several blocks, a drawing or another workbook are selected. */
  selectOtherThings(): void {
    this.selection = null;
  }

  selected(): Area {
    if (this.selection === null) throw new FakeHostError("InvalidSelection");
    return this.selection.sheet.area(this.selection.address);
  }

  activeSheet(): FakeSheet {
    return this.selected().sheet;
  }

  /** Writes a block of contents; every cell of it must be open. */
  write({ sheet, row, column, rows, columns }: Area, contents: Contents): readonly Write[] {
    const fits = contents.length === rows && contents.every((cells) => cells.length === columns);
    if (!fits) throw new FakeHostError("InvalidArgument");
    return contents.flatMap((cells, down) =>
      cells.map((content, across) => {
        const place = { row: row + down, column: column + across };
        const address = cellAddress(place);
        if (sheet.isProtected && !sheet.openCells.has(address)) throw new FakeHostError("AccessDenied");
        this.enter(sheet, place, content);
        return { sheet: sheet.name, address, content };
      }),
    );
  }

  private enter(sheet: FakeSheet, place: Corner, content: Value): void {
    const address = cellAddress(place);
    if (typeof content !== "string") sheet.put(address, content);
    else if (content.startsWith("'")) sheet.putText(address, content.slice(1));
    else if (!content.startsWith("=")) {
      if (TAKEN_FOR_A_VALUE.test(content)) this.misread.push(`${sheet.name}!${address}: ${content}`);
      sheet.put(address, content);
    } else {
      const result = this.calculate(content);
      if (Array.isArray(result)) this.spill(sheet, place, content, result as Contents);
      else sheet.put(address, content, result as Value);
    }
  }

  /** The answer fills the cells around, if they are free. */
  private spill(sheet: FakeSheet, { row, column }: Corner, formula: string, answer: Contents): void {
    const cells = answer.flatMap((values, down) =>
      values.map((value, across) => ({ row: row + down, column: column + across, value })),
    );
    const isFree = cells.every((each, index) => index === 0 || sheet.cell(each.row, each.column) === EMPTY);
    cells.forEach((each, index) => {
      if (index === 0) sheet.put(cellAddress(each), formula, isFree ? each.value : "#SPILL!");
      else if (isFree) sheet.put(cellAddress(each), "", each.value);
    });
  }
}
