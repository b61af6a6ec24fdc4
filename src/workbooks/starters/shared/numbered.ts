import type { TableColumn } from "../../kit";
import { allAbove } from "./rowsAround";

/** 1, 2, 3 ... down a column. */
export const NUMBERED: TableColumn = {
  key: "n",
  heading: "no.",
  unit: "count",
  format: "decimals0",
  formula: (cell, row) => `=MAX(${allAbove(cell("n"), row)}) + 1`,
};
