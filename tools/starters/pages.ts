/**
 * How a sheet falls onto pages one page wide: on one page where it nearly fits, else broken so that no chart is cut.
 * Sizes in points.
 */
import type { Edition } from "../../src/workbooks/kit";
import { columnLetters } from "../../src/workbooks/kit";
import type { Chart } from "../../src/workbooks/model";
import { cellsOf, placeOf } from "../../src/workbooks/addresses";
import type { LaidSheet } from "./layOut";
import { DEFAULT_HEIGHT, rowHeights, textWidth, WIDTH_OF_A_COLUMN } from "./rowHeights";

export interface Pages {
  /** All on one page. */
  readonly isOne: boolean;
  /** Rows that a page begins with. */
  readonly breaksBefore: readonly number[];
}

/** In inches; Letter where inches are at home, A4 elsewhere. */
const PAPER_SIZES: Readonly<Record<Edition, readonly [short: number, long: number]>> = {
  us: [8.5, 11],
  metric: [8.27, 11.69],
};
export const MARGINS = { left: 0.5, right: 0.5, top: 0.6, bottom: 0.7, header: 0.3, footer: 0.3 };

const POINTS_PER_INCH = 72;
const POINTS_PER_PIXEL = 0.75;
/** Smaller than this a whole sheet on one page is hard to read; so is anything shrunk by more than a third for it. */
const SMALLEST_SCALE = 0.5;
const MOST_SHRUNK = 0.66;

export function pagesOf(laid: LaidSheet, edition: Edition): Pages {
  const { sheet } = laid;
  const charts = sheet.print?.area ? [] : (sheet.charts ?? []);
  const sizes = new Sizes(laid);
  const [short, long] = PAPER_SIZES[edition];
  const [across, down] = sheet.print?.landscape ? [long, short] : [short, long];
  const width = (across - MARGINS.left - MARGINS.right) * POINTS_PER_INCH;
  const height = (down - MARGINS.top - MARGINS.bottom) * POINTS_PER_INCH;
  const scale = Math.min(1, width / sizes.width(charts));
  const whole = sizes.height(charts) * scale;
  const shrunk = height / whole;
  if (shrunk >= 1) return { isOne: true, breaksBefore: [] };
  if (shrunk >= MOST_SHRUNK && shrunk * scale >= SMALLEST_SCALE) return { isOne: true, breaksBefore: [] };
  return { isOne: false, breaksBefore: breaksBeforeCharts(charts, sizes, height / scale) };
}

/** A chart that would be cut by the end of a page begins the next one. */
function breaksBeforeCharts(charts: readonly Chart[], sizes: Sizes, page: number): readonly number[] {
  const breaks: number[] = [];
  let start = 0;
  const inOrder = [...charts].sort((a, b) => sizes.top(rowOf(a)) - sizes.top(rowOf(b)));
  for (const chart of inOrder) {
    const top = sizes.top(rowOf(chart));
    while (top - start >= page) start += page;
    if (top + heightOf(chart) - start <= page || top === start) continue;
    const row = sizes.isEmpty(rowOf(chart) - 1) ? rowOf(chart) - 1 : rowOf(chart);
    breaks.push(row);
    start = sizes.top(row);
  }
  return [...new Set(breaks)];
}

const rowOf = ({ position }: Chart): number => placeOf(position.cell).row;
const heightOf = ({ position }: Chart): number => position.height * POINTS_PER_PIXEL;

class Sizes {
  private readonly heights: ReadonlyMap<number, number>;

  constructor(private readonly laid: LaidSheet) {
    this.heights = rowHeights(laid);
  }

  private addresses(): readonly string[] {
    const area = this.laid.sheet.print?.area;
    return area ? cellsOf(area).addresses : [...this.laid.cells.keys()];
  }

  isEmpty(row: number): boolean {
    return ![...this.laid.cells].some(([address, { value }]) => value !== undefined && placeOf(address).row === row);
  }

  /** The upper edge of a row. */
  top(row: number): number {
    return sum(row - 1, (at) => this.heights.get(at) ?? DEFAULT_HEIGHT);
  }

  private left(column: number): number {
    return sum(column - 1, (at) => columnWidth(this.laid.sheet.columnWidths?.[columnLetters(at)]));
  }

  height(charts: readonly Chart[]): number {
    const rows = this.addresses().map((address) => this.top(placeOf(address).row + 1));
    return Math.max(...rows, ...charts.map((chart) => this.top(rowOf(chart)) + heightOf(chart)));
  }

  /** Words that run over the edge of their cell count as well. */
  width(charts: readonly Chart[]): number {
    const ends = this.addresses().map((address) => {
      const { column } = placeOf(address);
      const words = this.laid.cells.get(address);
      return Math.max(this.left(column + 1), words ? this.left(column) + textWidth(words) : 0);
    });
    const ofCharts = charts.map(
      ({ position }) => this.left(placeOf(position.cell).column) + position.width * POINTS_PER_PIXEL,
    );
    return Math.max(...ends, ...ofCharts);
  }
}

function columnWidth(characters: number = WIDTH_OF_A_COLUMN): number {
  return (characters * 7 + 5) * POINTS_PER_PIXEL;
}

function sum(count: number, of: (at: number) => number): number {
  return Array.from({ length: count }, (_, at) => of(at + 1)).reduce((total, each) => total + each, 0);
}
