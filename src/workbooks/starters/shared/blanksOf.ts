import type { BlockRef } from "../../kit";

/** How many cells of a block are empty or hold an empty text: COUNTIF(block, "") differs between spreadsheets. */
export function blanksOf(block: BlockRef): string {
  return `SUMPRODUCT(1 * (${block} = ""))`;
}
