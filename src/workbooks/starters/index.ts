/** The starter workbooks, in the order of the job. */
import { classExercise } from "./classExercise";
import { dailyDemand } from "./dailyDemand";
import { floodBench } from "./floodBench";
import type { StarterKind } from "./kinds";
import { leachingLog } from "./leachingLog";
import { stockTank } from "./stockTank";
import { systemComparison } from "./systemComparison";
import { uniformityAudit } from "./uniformityAudit";
import { zonePlanner } from "./zonePlanner";

export const starters: readonly StarterKind[] = [
  zonePlanner,
  dailyDemand,
  leachingLog,
  uniformityAudit,
  floodBench,
  stockTank,
  systemComparison,
  classExercise,
];
