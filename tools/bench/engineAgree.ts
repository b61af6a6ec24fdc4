/** No time is reported for sheets that do not say the same. */
import type { SheetModel } from "../../src/sheet/sheetModel";
import { numberAt } from "./engineSheets";

const CLOSE = 1e-9;

/** Throws at the first row of which the answers differ by more than 1e-9 of themselves. */
export function mustAgree(
  what: string,
  ours: SheetModel,
  against: SheetModel,
  places: readonly (readonly [ours: string, against: string])[],
): void {
  for (const [oursAt, againstAt] of places) {
    const [mine, other] = [numberAt(ours, oursAt), numberAt(against, againstAt)];
    if (Math.abs(mine - other) > CLOSE * Math.max(Math.abs(mine), Math.abs(other))) {
      throw new Error(
        `${what}: ${oursAt} is ${mine} with our function, ${againstAt} is ${other} without; nothing was timed`,
      );
    }
  }
}
