/** The processes of a run and the watch over them: one that is silent for long hangs, and the call that it hangs in is found. */
import { fork, type ChildProcess } from "node:child_process";
import { join } from "node:path";
import { callsOfBatch } from "./generate";
import { add, countFault, emptyTally, type FoundFault, type Tally } from "./tally";
import type { WorkerOrder, WorkerStart } from "./worker";

export interface CrewResult {
  readonly tally: Tally;
  /** Resident memory of the largest process in bytes: after its first batches, and at most. */
  readonly memory: { readonly early: number; readonly most: number };
}

interface Report {
  readonly ready?: true;
  readonly tally?: Tally;
  readonly memory?: number;
  readonly failure?: string;
  readonly index?: number;
  readonly road?: FoundFault["road"];
}

/** Silence after which a process counts as hanging, far above what a batch takes on a busy machine. */
const SILENCE = 180_000;
/** The same for one call. */
const SILENCE_OF_A_CALL = 60_000;
/** A process is counted as warmed up after so many batches. */
const EARLY = 20;

interface Watched {
  readonly reports: AsyncGenerator<Report, void>;
  send(order: WorkerOrder): void;
  end(): void;
}

function forked(start: WorkerStart): ChildProcess {
  return fork(join(__dirname, "worker.ts"), [JSON.stringify(start)], { execArgv: ["--import", "tsx"] });
}

/** What a process says; the sequence ends where it is silent for too long. */
function watched(start: WorkerStart, silence: number): Watched {
  const child = forked(start);
  const waiting: Report[] = [];
  let wake: () => void = () => {};
  let hasExited = false;
  child.on("message", (report: Report) => {
    waiting.push(report);
    wake();
  });
  child.on("exit", () => {
    hasExited = true;
    wake();
  });
  async function* reports(): AsyncGenerator<Report, void> {
    for (;;) {
      const next = waiting.shift();
      if (next !== undefined) yield next;
      else if (hasExited || !(await heard())) return;
    }
  }
  function heard(): Promise<boolean> {
    return new Promise((resolve) => {
      const timer = setTimeout(() => resolve(false), silence);
      wake = () => {
        clearTimeout(timer);
        resolve(true);
      };
    });
  }
  return {
    reports: reports(),
    send: (order) => child.send(order),
    end: () => child.kill("SIGKILL"),
  };
}

async function next(worker: Watched): Promise<Report | null> {
  const { value, done } = await worker.reports.next();
  if (done === true || value === undefined) return null;
  if (value.failure !== undefined) throw new Error(value.failure);
  return value;
}

async function ready(start: WorkerStart, silence: number): Promise<Watched> {
  const worker = watched(start, silence);
  if ((await next(worker)) === null) throw new Error("a process of the run did not start");
  return worker;
}

/** The batch again in a process of its own, call by call, up to the one that does not come back. */
async function hangingIn(start: WorkerStart, batch: number): Promise<Tally> {
  const worker = await ready(start, SILENCE_OF_A_CALL);
  worker.send({ batch, oneByOne: true });
  let at: Report = {};
  for (let report = await next(worker); report !== null; report = await next(worker)) {
    if (report.tally !== undefined) {
      worker.end();
      return report.tally;
    }
    at = report;
  }
  worker.end();
  const tally = emptyTally();
  const call = callsOfBatch(start.plan, batch).find(({ index }) => index === at.index);
  if (call === undefined) throw new Error(`batch ${batch} hangs before its first call`);
  countFault(tally, at.road ?? "both roads", call, "hangs, and the rest of its batch was not made");
  return tally;
}

export interface CrewPlan extends WorkerStart {
  readonly batches: number;
  readonly workers: number;
  readonly onBatch: (done: number, tally: Tally) => void;
}

export async function runCrew({ batches, workers, onBatch, ...start }: CrewPlan): Promise<CrewResult> {
  const tally = emptyTally();
  const memory = { early: 0, most: 0 };
  let nextBatch = 0;
  let done = 0;
  async function work(): Promise<void> {
    let worker = await ready(start, SILENCE);
    for (let own = 1; nextBatch < batches; own += 1) {
      const batch = nextBatch;
      nextBatch += 1;
      worker.send({ batch, oneByOne: false });
      const report = await next(worker);
      if (report?.tally === undefined) {
        worker.end();
        add(tally, await hangingIn(start, batch));
        worker = await ready(start, SILENCE);
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
