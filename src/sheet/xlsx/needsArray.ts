import type { FormulaNode } from "../engine";

/** Functions that take a block of cells as it is; every other would have to be worked once for each of its cells. */
const TAKE_BLOCKS = new Set(
  `AND AVEDEV AVERAGE AVERAGEA AVERAGEIF AVERAGEIFS COLUMNS CORREL COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DEVSQ
  FORECAST GEOMEAN HARMEAN HLOOKUP INDEX INTERCEPT IRR LARGE LOOKUP MATCH MAX MAXIFS MEDIAN MIN MINIFS MODE NPV OR
  PERCENTILE PERCENTILE.EXC PERCENTILE.INC PERCENTRANK PRODUCT QUARTILE QUARTILE.EXC QUARTILE.INC RANK RANK.AVG RANK.EQ
  ROWS RSQ SLOPE SMALL STDEV STDEV.P STDEV.S STDEVA STDEVP SUBTOTAL SUM SUMIF SUMIFS SUMSQ TEXTJOIN VAR VAR.P VAR.S
  VARP VLOOKUP XIRR XLOOKUP XMATCH XNPV`.split(/\s+/),
);
/** Works everything inside it once for each cell. */
const WORKS_CELL_BY_CELL = "SUMPRODUCT";

/**
 * Whether a formula gives something else in Excel when it is stored as an ordinary one: Excel would take one cell of a
 * block in place of all.
 */
export function needsArray(node: FormulaNode, isBlock: (reference: string) => boolean): boolean {
  const isBlockItself = ({ type, value }: FormulaNode) =>
    (type === "REFERENCE" || type === "SYMBOL") && isBlock(String(value));
  const inside = (part: FormulaNode): boolean => {
    if (isBlockItself(part) || part.type === "ARRAY") return true;
    const parts = [part.left, part.right, part.operand].filter((each) => each !== undefined);
    return parts.some(inside) || inCall(part);
  };
  const inCall = ({ type, value, args = [] }: FormulaNode): boolean => {
    if (type !== "FUNCALL") return false;
    const name = String(value).toUpperCase();
    if (name === WORKS_CELL_BY_CELL) return false;
    const takesBlocks = TAKE_BLOCKS.has(name) || name.startsWith("CANYARD.");
    return args.some((arg) => !(takesBlocks && isBlockItself(arg)) && inside(arg));
  };
  return inside(node);
}
