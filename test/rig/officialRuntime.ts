/**
 * The official custom-functions runtime without a spreadsheet around it: it runs
 * in a Node vm, loads our built functions and is driven over the same bridge a
 * desktop host uses, so arguments and answers take the real road both ways.
 */
import { readFileSync } from "node:fs";
import { basename } from "node:path";
import { createContext, runInContext } from "node:vm";

export interface HostAnswer {
  ok: boolean;
  value?: unknown;
  error?: string;
  message?: string;
}

/** What stands in a table of answers where one cell is an error. */
export interface HostCellError {
  error: string;
  message?: string;
}

export interface CallOptions {
  /** Errors among the arguments reach the function instead of stopping the call. */
  errorsAllowed?: boolean;
}

export interface OfficialHost {
  ids(): string[];
  call(id: string, args: unknown[], options?: CallOptions): Promise<HostAnswer>;
  callMany(calls: [string, unknown[]][], options?: CallOptions): Promise<HostAnswer[]>;
  /** How many messages with answers have come back so far. */
  flushes(): number;
  /** Runs one more script in the host's window. */
  load(file: string): void;
  close(): void;
}

/** The error value of a cell, as the host sends it among the arguments. */
export function errorArgument(code: string): { type: string; code: string } {
  return { type: "CustomFunctionError", code };
}

const WIRE_MARK = "\u0001";

/** A number of an argument that JSON's writer would lose, for the wire to carry as its reader takes it. */
export function wireNumber(value: number): number | string {
  if (Object.is(value, -0)) return `${WIRE_MARK}-0`;
  return Math.abs(value) === Infinity ? `${WIRE_MARK}${value > 0 ? "" : "-"}1e999` : value;
}

/** The marked numbers without their quotes and mark. */
function unmarked(text: string): string {
  return text.includes("\\u0001") ? text.replace(/"\\u0001(-0|-?1e999)"/g, "$1") : text;
}

const RUNTIME_FILE = require.resolve("@microsoft/office-js/dist/custom-functions-runtime.js");

const MessageType = { request: 1, response: 2, invocations: 3 } as const;
const INVOCATION = { messageCategory: 1, messageType: 1000 } as const;
const ERRORS_ALLOWED = 4;

/** Numbers the runtime gives to errors that a function throws. */
const THROWN_CODES: Record<number, string> = {
  0: "NaN",
  1: "#N/A",
  2: "exception",
  3: "rejection",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
};

type WireResult = [id: number, ok: boolean, value: unknown, code?: number];

interface WireAction {
  Id: number;
  Name: string;
  ArgumentInfo: { Arguments: unknown[] };
}

interface Bridge {
  onMessageFromHost: ((text: string) => void) | null;
  sendMessageToHost(text: string): void;
}

interface PendingCall {
  id: string;
  resolve(answer: HostAnswer): void;
  reject(reason: Error): void;
}

interface HostWindow {
  CustomFunctions?: { _association: { mappings: Record<string, unknown> } };
  _richApiNativeBridge: Bridge;
}

export function openOfficialHost(functionsJs: string): OfficialHost {
  const timers = new VmTimers();
  const pending = new Map<number, PendingCall>();
  let queue: object[] = [];
  let lastCall = 0;
  let flushCount = 0;
  let closed = false;

  const bridge: Bridge = {
    onMessageFromHost: null,
    sendMessageToHost(text) {
      const message = JSON.parse(text);
      if (message.type !== MessageType.request || closed) return;
      const actions: WireAction[] = message.message.body.Actions ?? [];
      actions.filter(carriesResults).forEach(takeResults);
      queueMicrotask(() => deliver(acknowledgement(message.id, actions)));
    },
  };
  const window = openWindow(bridge, timers);
  try {
    runScript(window, RUNTIME_FILE);
    runScript(window, functionsJs);
  } catch (error) {
    timers.stop();
    throw error;
  }

  function deliver(message: object): void {
    if (!closed) bridge.onMessageFromHost?.(unmarked(JSON.stringify(message)));
  }

  function takeResults(action: WireAction): void {
    flushCount += 1;
    for (const result of action.ArgumentInfo.Arguments[0] as WireResult[]) {
      pending.get(result[0])?.resolve(readResult(result));
      pending.delete(result[0]);
    }
  }

  function sendQueue(): void {
    const entries = queue;
    queue = [];
    deliver({ type: MessageType.invocations, message: { entries } });
  }

  function call(id: string, args: unknown[], options: CallOptions = {}): Promise<HostAnswer> {
    if (closed) return Promise.reject(new Error(`${id} was called on a closed host`));
    const number = (lastCall += 1);
    const flags = options.errorsAllowed ? ERRORS_ALLOWED : 0;
    if (queue.length === 0) queueMicrotask(sendQueue);
    queue.push({ ...INVOCATION, targetId: "", id: number, message: [number, id, args, null, flags] });
    return new Promise((resolve, reject) => pending.set(number, { id, resolve, reject }));
  }

  return {
    ids: () => Object.keys(window.CustomFunctions?._association.mappings ?? {}),
    call,
    callMany: (calls, options) => Promise.all(calls.map(([id, args]) => call(id, args, options))),
    flushes: () => flushCount,
    load: (file) => runScript(window, file),
    close() {
      closed = true;
      timers.stop();
      for (const waiting of pending.values()) {
        waiting.reject(new Error(`The host was closed before ${waiting.id} answered`));
      }
      pending.clear();
    },
  };
}

function carriesResults(action: WireAction): boolean {
  return action.Name === "SetInvocationArrayResults";
}

/** Without this answer the runtime waits 15 seconds before the next flush. */
function acknowledgement(id: number, actions: WireAction[]): object {
  const results = actions.map((action) => ({ ActionId: action.Id, Value: null }));
  return {
    id,
    type: MessageType.response,
    message: { statusCode: 200, headers: {}, body: { Results: results } },
  };
}

function readResult([, ok, value, code]: WireResult): HostAnswer {
  if (!ok) return readThrown(code ?? 0, value);
  if (isWireError(value)) return { ok: false, ...readCellError(value) };
  return { ok: true, value: Array.isArray(value) ? value.map(readRow) : value };
}

function readThrown(code: number, text: unknown): HostAnswer {
  const error = THROWN_CODES[code] ?? `code ${code}`;
  return typeof text === "string" && text !== "" ? { ok: false, error, message: text } : { ok: false, error };
}

function readRow(row: unknown): unknown {
  if (!Array.isArray(row)) return readCell(row);
  return row.map(readCell);
}

function readCell(cell: unknown): unknown {
  return isWireError(cell) ? readCellError(cell) : cell;
}

interface WireError {
  basicType: "Error";
  basicValue: string;
  message?: string;
}

function isWireError(value: unknown): value is WireError {
  return typeof value === "object" && value !== null && (value as WireError).basicType === "Error";
}

function readCellError({ basicValue, message }: WireError): HostCellError {
  return message === undefined ? { error: basicValue } : { error: basicValue, message };
}

/** Waits up to this long only spread traffic over a slow bridge, twice the last flush each; longer ones guard the loading of files. */
const LONGEST_PACING_WAIT = 8000;

/**
 * Timers handed to the vm. The runtime waits 50 ms before a flush and half a
 * second or more between two; a test need not, so those waits shrink to 1 ms. The guards
 * never go off: they would report host files missing that nobody asked to load,
 * by an exception outside every test.
 */
class VmTimers {
  private readonly running = new Set<NodeJS.Timeout>();
  private stopped = false;

  readonly set = (
    action: (...values: unknown[]) => void,
    delay = 0,
    ...values: unknown[]
  ): NodeJS.Timeout | undefined => {
    if (this.stopped || delay > LONGEST_PACING_WAIT) return undefined;
    const timer = setTimeout(() => {
      this.running.delete(timer);
      action(...values);
    }, 1);
    this.running.add(timer);
    return timer;
  };

  readonly clear = (timer: NodeJS.Timeout | undefined): void => {
    if (timer === undefined) return;
    clearTimeout(timer);
    this.running.delete(timer);
  };

  stop(): void {
    this.stopped = true;
    for (const timer of this.running) clearTimeout(timer);
    this.running.clear();
  }
}

const nothing = (): void => undefined;

/**
 * The least of a browser window that the runtime asks for while it loads. It
 * looks for its own script tag to learn where it came from. The language's own
 * objects (Array, JSON, Promise) must stay those of the vm: a foreign JSON would
 * give arrays that the runtime does not know as arrays.
 */
function openWindow(bridge: Bridge, timers: VmTimers): HostWindow {
  const window: Record<string, unknown> = {
    _richApiNativeBridge: bridge,
    console: { log: nothing, info: nothing, warn: nothing, error: console.error },
    setTimeout: timers.set,
    clearTimeout: timers.clear,
    navigator: { userAgent: "node" },
    location: { href: "https://localhost/functions.html", search: "", hash: "" },
    history: {},
    addEventListener: nothing,
    document: openDocument(),
  };
  window.window = window.self = window.top = window.parent = window;
  return createContext(window) as unknown as HostWindow;
}

function openDocument(): object {
  const runtimeScript = { src: "https://localhost/custom-functions-runtime.js", getAttribute: () => null };
  return {
    readyState: "complete",
    addEventListener: nothing,
    createElement: () => ({ setAttribute: nothing }),
    getElementsByTagName: (tag: string) => (tag === "script" ? [runtimeScript] : [{ appendChild: nothing }]),
  };
}

/** The vm's own error text quotes the failing line, and a built file is one long line. */
function runScript(window: HostWindow, file: string): void {
  try {
    runInContext(readFileSync(file, "utf8"), window as object, { filename: file, displayErrors: false });
  } catch (error) {
    throw new Error(`${basename(file)} failed while loading: ${(error as Error).message}`);
  }
}
