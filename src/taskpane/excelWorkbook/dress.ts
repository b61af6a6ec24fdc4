/** How the cells of a new sheet look: direct formats only, because Excel cannot undo a change of a workbook's styles. */
import { BOX_COLOUR, CHECK_COLOURS, LOOKS, type Look } from "../../workbooks/looks";
import { STYLE_NAMES, type Cell, type Sheet } from "../../workbooks/model";
import { addressOf, covering, type Block } from "./blocks";

const EDGES = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const;

export function dress(target: Excel.Worksheet, { cells, columnWidths = {} }: Sheet): void {
  for (const style of STYLE_NAMES) {
    for (const block of blocksWhere(cells, (cell) => cell.style === style)) {
      applyLook(target.getRange(addressOf(block)), LOOKS[style], block);
    }
  }
  for (const block of blocksWhere(cells, ({ wraps }) => wraps === true)) {
    target.getRange(addressOf(block)).format.wrapText = true;
  }
  for (const [column, characters] of Object.entries(columnWidths)) {
    target.getRange(`${column}:${column}`).format.columnWidth = pointsOf(pixelsOf(characters));
  }
}

function blocksWhere(cells: Sheet["cells"], isWanted: (cell: Cell) => boolean): readonly Block[] {
  return covering(Object.keys(cells).filter((address) => isWanted(cells[address]!)));
}

function applyLook({ format }: Excel.Range, look: Look, { rows, columns }: Block): void {
  const { font } = format;
  font.color = hex(look.text);
  if (look.bold) font.bold = true;
  if (look.italic) font.italic = true;
  if (look.size !== undefined) font.size = look.size;
  if (look.fill !== undefined) format.fill.color = hex(look.fill);
  if (look.centred) format.horizontalAlignment = "Center";
  if (look.middle) format.verticalAlignment = "Center";
  if (look.wraps) format.wrapText = true;
  if (!look.boxed) return;
  const inner = [
    ...(rows > 1 ? ["InsideHorizontal" as const] : []),
    ...(columns > 1 ? ["InsideVertical" as const] : []),
  ];
  for (const side of [...EDGES, ...inner]) {
    const line = format.borders.getItem(side);
    line.style = "Continuous";
    line.weight = "Thin";
    line.color = hex(BOX_COLOUR);
  }
}

/** A check says OK or LOOK; Excel colours it as well. */
export function colourChecks(target: Excel.Worksheet, { cells }: Sheet): void {
  for (const block of blocksWhere(cells, ({ style }) => style === "check")) {
    const address = addressOf(block);
    const first = addressOf({ ...block, rows: 1, columns: 1 });
    for (const { words, text, fill } of CHECK_COLOURS) {
      const { custom } = target.getRange(address).conditionalFormats.add("Custom");
      custom.rule.formula = `=OR(${words.map((word) => `${first}="${word}"`).join(", ")})`;
      custom.format.font.color = hex(text);
      custom.format.fill.color = hex(fill);
    }
  }
}

export function freeze({ freezePanes }: Excel.Worksheet, { frozen }: Sheet): void {
  const { rows = 0, columns = 0 } = frozen ?? {};
  if (rows > 0 && columns > 0) freezePanes.freezeAt(addressOf({ row: 0, column: 0, rows, columns }));
  else if (rows > 0) freezePanes.freezeRows(rows);
  else if (columns > 0) freezePanes.freezeColumns(columns);
}

/** Excel counts a column's width in characters of 7 pixels, with 5 pixels to spare. */
function pixelsOf(characters: number): number {
  return Math.round(characters * 7 + 5);
}

const POINTS_A_PIXEL = 0.75;

/** Through its library Excel takes widths in points. */
export function pointsOf(pixels: number): number {
  return pixels * POINTS_A_PIXEL;
}

function hex(colour: string): string {
  return `#${colour}`;
}
