/** The starter workbooks, in the order of the job. */
import type { StarterKind } from "./kinds";
import { stockTank } from "./stockTank";
import { zonePlanner } from "./zonePlanner";

export const starters: readonly StarterKind[] = [zonePlanner, stockTank];
