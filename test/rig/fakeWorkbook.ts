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

export type Contents = readonly (readonly Value[])[];

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
  isProtected = false;
  private readonly filled = new Map<string, Corner & { readonly cell: FakeCell }>();

  constructor(readonly name: string) {}

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
    this.filled.set(`${row},${column}`, { row, column, cell });
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

/** As the host writes the address of a range: always with its sheet. */
export function fullAddress({ sheet, row, column, rows, columns }: Area): string {
  const isPlain = /^[A-Za-z_][A-Za-z_0-9.]*$/.test(sheet.name);
  const first = cellAddress({ row, column });
  const last = cellAddress({ row: row + rows - 1, column: column + columns - 1 });
  const name = isPlain ? sheet.name : `'${sheet.name.replace(/'/g, "''")}'`;
  return `${name}!${first === last ? first : `${first}:${last}`}`;
}

export class FakeWorkbook {
  readonly names = new Map<string, NamedThing>();
  /** What Excel makes of a formula that was entered. */
  calculate: (formula: string) => Value = () => 0;
  private readonly sheets: FakeSheet[] = [];
  private selection: { readonly sheet: FakeSheet; readonly address: string } | null = null;

  addSheet(name: string): FakeSheet {
    const sheet = new FakeSheet(name);
    this.sheets.push(sheet);
    return sheet;
  }

  sheet(name: string): FakeSheet {
    const found = this.sheets.find((each) => each.name.toLowerCase() === name.toLowerCase());
    if (found === undefined) throw new FakeHostError("ItemNotFound");
    return found;
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
        const address = cellAddress({ row: row + down, column: column + across });
        if (sheet.isProtected && !sheet.openCells.has(address)) throw new FakeHostError("AccessDenied");
        const isFormula = typeof content === "string" && content.startsWith("=");
        sheet.put(address, content, isFormula ? this.calculate(content) : content);
        return { sheet: sheet.name, address, content };
      }),
    );
  }
}
