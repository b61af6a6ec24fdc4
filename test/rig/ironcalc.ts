/**
 * A second spreadsheet engine, IronCalc: an ES module that loads WebAssembly, so it has a thread of its own. Answers are
 * waited for where they are asked, since many tests are laid out while their file is read. The thread serves a test file
 * and ends with it; the same sheet asked again has the same answer.
 */
import { join } from "node:path";
import { MessageChannel, receiveMessageOnPort, Worker, type MessagePort } from "node:worker_threads";

interface Cell {
  readonly sheet?: number;
  readonly row: number;
  readonly column: number;
}

/** A workbook of one sheet, or of the `sheets` named; `names` has what stands for a range. */
export interface IronCalcRequest {
  readonly inputs: readonly (Cell & { readonly input: string })[];
  readonly read: readonly Cell[];
  readonly sheets?: readonly string[];
  readonly names?: Readonly<Record<string, string>>;
}

interface Thread {
  readonly worker: Worker;
  readonly port: MessagePort;
  readonly answered: Int32Array;
}

const LONGEST_WAIT = 120_000;

let thread: Thread | null = null;
const known = new Map<string, (number | string)[]>();

function openThread(): Thread {
  const answered = new Int32Array(new SharedArrayBuffer(4));
  const { port1: port, port2 } = new MessageChannel();
  const workerData = { port: port2, answered };
  const worker = new Worker(join(__dirname, "ironcalcThread.mjs"), { workerData, transferList: [port2] });
  worker.unref();
  return { worker, port, answered };
}

afterAll(async () => {
  const open = thread;
  thread = null;
  await open?.worker.terminate();
});

function ask(request: string): (number | string)[] {
  thread ??= openThread();
  const { port, answered } = thread;
  Atomics.store(answered, 0, 0);
  port.postMessage(request);
  if (Atomics.wait(answered, 0, 0, LONGEST_WAIT) === "timed-out") throw new Error("IronCalc does not answer");
  const { values, failed } = receiveMessageOnPort(port)?.message as { values: (number | string)[]; failed?: string };
  if (failed !== undefined) throw new Error(`IronCalc failed: ${failed}`);
  return values;
}

/** The values of the cells to be read, in their order; errors as their text. */
export function valuesInIronCalc(workbook: IronCalcRequest): (number | string)[] {
  const request = JSON.stringify(workbook);
  const values = known.get(request) ?? ask(request);
  known.set(request, values);
  return [...values];
}
