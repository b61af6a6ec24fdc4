/** Corrects the cells of a sheet that the engine wrote: every formula stays a formula, with what it shows now. */
import type { Engine, EngineModel, Position, Zone } from "../engine";
import { fromFile, holdsOurs, toFile } from "./functionNames";
import { needsArray } from "./needsArray";
import { partOf } from "./spills";
import { add, all, attribute, child } from "./xml";

/** The engine's own error words, and those that a file may hold. */
const ERRORS: Readonly<Record<string, string>> = { "#REF": "#REF!", "#BAD_EXPR": "#NAME?" };
const FILE_ERRORS = ["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"];

/** By name, the range that it stands for. */
export type Names = Readonly<Record<string, string>>;

export function writeCells(
  document: Document,
  engine: Engine,
  model: EngineModel,
  sheetId: string,
  names: Names,
): void {
  new SheetCells(document, engine, model, sheetId, names).write();
}

class SheetCells {
  private readonly cells: Map<string, Element>;

  constructor(
    private readonly document: Document,
    private readonly engine: Engine,
    private readonly model: EngineModel,
    private readonly sheetId: string,
    private readonly names: Names,
  ) {
    this.cells = new Map(all(document, "c").map((cell) => [attribute(cell, "r")!, cell]));
  }

  write(): void {
    const { getters } = this.model;
    for (const { id, isFormula } of getters.getCells(this.sheetId)) {
      const position = getters.getCellPosition(id);
      if (isFormula) this.writeFormula(position);
      else this.writeConstant(position);
    }
  }

  private writeFormula(position: Position): void {
    const { getters } = this.model;
    const cell = this.cellAt(position);
    const formula = chosen(
      child(cell, "f")?.textContent ?? "",
      getters.getCellText(position, { showFormula: true }).slice(1),
    );
    const zone = getters.getSpreadZone(position);
    if (zone && (zone.left < zone.right || zone.top < zone.bottom)) this.writeTable(formula, zone, position);
    else this.setFormula(cell, toFile(formula), position, this.needsArray(formula) ? attribute(cell, "r") : undefined);
  }

  private writeTable(formula: string, zone: Zone, corner: Position): void {
    const { toXC } = this.engine.helpers;
    const isOurs = holdsOurs(formula);
    for (let row = zone.top; row <= zone.bottom; row += 1) {
      for (let col = zone.left; col <= zone.right; col += 1) {
        const at = { sheetId: this.sheetId, col, row };
        const part = partOf(toFile(formula), row - zone.top + 1, col - zone.left + 1);
        if (isOurs) this.setFormula(this.cellAt(at), part, at);
        else this.setValue(cleared(this.cellAt(at)), at);
      }
    }
    if (isOurs) return;
    const ref = `${toXC(zone.left, zone.top)}:${toXC(zone.right, zone.bottom)}`;
    this.setFormula(this.cellAt(corner), formula, corner, ref);
  }

  private setFormula(cell: Element, formula: string, position: Position, arrayOver?: string): void {
    cleared(cell);
    const element = add(cell, "f");
    element.textContent = formula;
    if (arrayOver !== undefined) {
      // What Excel of today marks a formula with that may fill more than one cell.
      cell.setAttribute("cm", "1");
      element.setAttribute("t", "array");
      element.setAttribute("ref", arrayOver);
    }
    this.setValue(cell, position);
  }

  private setValue(cell: Element, position: Position): void {
    const { type, value } = this.model.getters.getEvaluatedCell(position);
    const text = String(value ?? "");
    if (type === "error") {
      const known = ERRORS[text] ?? text;
      setType(cell, "e", FILE_ERRORS.includes(known) ? known : "#VALUE!");
    } else if (typeof value === "boolean") setType(cell, "b", value ? "1" : "0");
    else if (typeof value === "number") setType(cell, "n", text);
    else setType(cell, "str", text);
  }

  /** Numbers as such, however they were typed; texts without the apostrophe that keeps them texts. */
  private writeConstant(position: Position): void {
    const { value } = this.model.getters.getEvaluatedCell(position);
    const content = this.model.getters.getCell(position)?.content;
    // A cell without a content of its own may show part of a table.
    if (!content) return;
    if (typeof value === "number") {
      setType(cleared(this.cellAt(position)), "n", String(value));
    } else if (typeof value === "string" && content.startsWith("'")) {
      const cell = cleared(this.cellAt(position));
      cell.setAttribute("t", "inlineStr");
      const text = add(add(cell, "is"), "t", { "xml:space": "preserve" });
      text.textContent = value;
    }
  }

  private needsArray(formula: string): boolean {
    try {
      return needsArray(this.engine.parse(fromFile(formula)), (reference) => this.isBlock(reference));
    } catch {
      // Then it is none that the engine works out, either.
      return false;
    }
  }

  private isBlock(reference: string): boolean {
    const isNamed = (name: string) => name.toLowerCase() === reference.toLowerCase();
    const range = Object.entries(this.names).find(([name]) => isNamed(name))?.[1] ?? reference;
    return range.includes(":");
  }

  private cellAt({ col, row }: Position): Element {
    const at = this.engine.helpers.toXC(col, row);
    const known = this.cells.get(at);
    if (known) return known;
    const made = insert(this.rowAt(row + 1), "c", { r: at }, ({ r }) => this.engine.helpers.toCartesian(r!).col > col);
    this.cells.set(at, made);
    return made;
  }

  private rowAt(number: number): Element {
    const data = all(this.document, "sheetData")[0]!;
    const known = all(data, "row").find((row) => Number(attribute(row, "r")) === number);
    return known ?? insert(data, "row", { r: String(number) }, ({ r }) => Number(r) > number);
  }
}

function cleared(cell: Element): Element {
  for (const part of Array.from(cell.childNodes)) part.remove();
  for (const name of ["t", "cm"]) cell.removeAttribute(name);
  return cell;
}

function setType(cell: Element, type: string, text: string): void {
  cell.setAttribute("t", type);
  add(cell, "v").textContent = text;
}

/** A new element before the first that comes after it. */
function insert(
  parent: Element,
  name: string,
  attributes: Readonly<Record<string, string>>,
  comesAfter: (attributes: { r?: string }) => boolean,
): Element {
  const made = add(parent, name, attributes);
  const next = Array.from(parent.children).find((each) => each !== made && comesAfter({ r: attribute(each, "r")! }));
  if (next) parent.insertBefore(made, next);
  return made;
}

/**
 * The engine writes a formula as Excel wants it (prefixes, arguments that Excel insists on), and drops brackets on the
 * way that change the last digits: where nothing else differs, the formula is written as it stands.
 */
function chosen(theirs: string, own: string): string {
  const bare = (formula: string) => formula.replace(/[\s()]/g, "").toUpperCase();
  return theirs !== "" && bare(theirs) !== bare(own) ? theirs : own;
}
