/** The processes that share a run: one that falls silent hangs, and the call that it hangs in is found. */
import { callsOfBatch } from "./generate";
import { add, countFault, emptyTally, type Tally } from "./tally";
import { startWorker, type Watched, type WorkerReport } from "./watched";
import type { WorkerStart } from "./worker";

export interface CrewResult {
  readonly tally: Tally;
  /** Resident memory of the largest process in bytes: after its first batches, and at most. */
  readonly memory: { early: number; most: number };
}

/** Milliseconds of silence after which a process counts as hanging, far above what is needed on a busy machine. */
export interface Silences {
  readonly start: number;
  readonly batch: number;
  readonly call: number;
}

const SILENCES: Silences = { start: 120_000, batch: 180_000, call: 60_000 };

/** A process is warmed up after so many batches. */
const EARLY = 20;

export interface CrewPlan extends WorkerStart {
  readonly batches: number;
  readonly workers: number;
  readonly silences?: Silences;
  readonly onBatch?: (done: number, tally: Tally) => void;
}

async function ready(start: WorkerStart, { start: silence }: Silences): Promise<Watched> {
  const worker = startWorker(start);
  if ((await worker.hear(silence)) === null) throw new Error("a process of the run did not start");
  return worker;
}

/** The batch again in a process of its own, call by call, up to the one that does not come back. */
async function hangingIn(start: WorkerStart, silences: Silences, batch: number): Promise<Tally> {
  const worker = await ready(start, silences);
  worker.send({ batch, oneByOne: true });
  let at: WorkerReport = {};
  for (let report = await worker.hear(silences.call); report !== null; report = await worker.hear(silences.call)) {
    at = report;
    if (report.tally !== undefined) break;
  }
  worker.end();
  if (at.tally !== undefined) return at.tally;
  const tally = emptyTally();
  const call = callsOfBatch(start.plan, batch).find(({ index }) => index === at.index);
  if (call === undefined) throw new Error(`batch ${batch} hangs before its first call`);
  countFault(tally, at.road ?? "both roads", call, "hangs, and no call of its batch is counted");
  return tally;
}

export async function runCrew(plan: CrewPlan): Promise<CrewResult> {
  const { batches, workers, silences = SILENCES, onBatch = () => {} } = plan;
  const start: WorkerStart = { plan: plan.plan, functionsFile: plan.functionsFile };
  const tally = emptyTally();
  const memory = { early: 0, most: 0 };
  let nextBatch = 0;
  let done = 0;
  async function work(): Promise<void> {
    let worker = await ready(start, silences);
    for (let own = 1; nextBatch < batches; own += 1) {
      const batch = nextBatch;
      nextBatch += 1;
      worker.send({ batch, oneByOne: false });
      const report = await worker.hear(silences.batch);
      if (report?.tally === undefined) {
        worker.end();
        add(tally, await hangingIn(start, silences, batch));
        if (nextBatch < batches) worker = await ready(start, silences);
      } else {
        add(tally, report.tally);
        memory.most = Math.max(memory.most, report.memory ?? 0);
        if (own === EARLY) memory.early = Math.max(memory.early, report.memory ?? 0);
      }
      done += 1;
      onBatch(done, tally);
    }
    worker.end();
  }
  await Promise.all(Array.from({ length: workers }, work));
  return { tally, memory };
}
