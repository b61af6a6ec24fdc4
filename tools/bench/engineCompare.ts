import { setImmediate } from "node:timers/promises";
import { compareTimed, milliseconds, type Comparison, type Work } from "./measure";

const WARM_UP = 2;

/** Round after round. Between two the engine gets to its own tidying up, without which it keeps every sheet it opened. */
export function compareInTurns(ours: Work, against: Work, rounds: number): Promise<Comparison> {
  const timed = (work: Work) => async (): Promise<number> => {
    await setImmediate();
    return milliseconds(work);
  };
  return compareTimed(timed(ours), timed(against), rounds, WARM_UP);
}
