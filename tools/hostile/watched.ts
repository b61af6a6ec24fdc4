/** A process of a run, as seen from the one that watches it. */
import { fork } from "node:child_process";
import { join } from "node:path";
import type { FoundFault, Tally } from "./tally";
import type { WorkerOrder, WorkerStart } from "./worker";

export interface WorkerReport {
  readonly ready?: true;
  readonly tally?: Tally;
  readonly memory?: number;
  readonly failure?: string;
  /** The call that comes next, and on which road. */
  readonly index?: number;
  readonly road?: FoundFault["road"];
}

export interface Watched {
  send(order: WorkerOrder): void;
  /** What the process says next; null where it is silent for so many milliseconds, or gone. */
  hear(silence: number): Promise<WorkerReport | null>;
  end(): void;
}

export function startWorker(start: WorkerStart): Watched {
  const child = fork(join(__dirname, "worker.ts"), [JSON.stringify(start)], { execArgv: ["--import", "tsx"] });
  const waiting: WorkerReport[] = [];
  let wake: () => void = () => {};
  let isGone = false;
  child.on("message", (report: WorkerReport) => {
    waiting.push(report);
    wake();
  });
  child.on("exit", () => {
    isGone = true;
    wake();
  });
  function news(silence: number): Promise<void> {
    return new Promise((resolve) => {
      const timer = setTimeout(resolve, silence);
      wake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  }
  return {
    send: (order) => child.send(order),
    async hear(silence) {
      if (waiting.length === 0 && !isGone) await news(silence);
      const report = waiting.shift() ?? null;
      if (report?.failure !== undefined) throw new Error(report.failure);
      return report;
    },
    end: () => child.kill("SIGKILL"),
  };
}
