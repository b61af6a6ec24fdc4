/** One of the processes that share a run: takes the number of a batch, answers with its tally. */
import { openRoads, runBatch } from "./batch";
import type { Plan } from "./generate";

export interface WorkerStart {
  readonly plan: Plan;
  readonly functionsFile: string;
}

export interface WorkerOrder {
  readonly batch: number;
  readonly oneByOne: boolean;
}

const { plan, functionsFile } = JSON.parse(process.argv[2] ?? "{}") as WorkerStart;
const roads = openRoads(functionsFile);

function send(message: object): void {
  process.send?.(message);
}

async function obey({ batch, oneByOne }: WorkerOrder): Promise<void> {
  const announce = oneByOne ? (index: number, road: string): void => send({ index, road }) : undefined;
  const tally = await runBatch(roads, plan, batch, { oneByOne, ...(announce && { announce }) });
  send({ tally, memory: process.memoryUsage().rss });
}

process.on("message", (order: WorkerOrder) => {
  obey(order).catch((error: unknown) => {
    send({ failure: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  });
});
process.on("disconnect", () => process.exit());
send({ ready: true });
