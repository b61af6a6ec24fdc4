/**
 * Excel's edge: what the host sends and what it can show. The only file that names CustomFunctions.
 *
 * Every argument is declared as a block of cells, so that a range where one value belongs reaches us and is refused in
 * words instead of being spread over the sheet by the host.
 */
import { call, FunctionError, NAMESPACE, PassedError } from ".";
import type { Answer, ArgumentInput, CellAnswer, CellInput } from "../kernel";

type HostFunction = (...args: unknown[]) => unknown;
type Associate = (id: string, implementation: HostFunction) => void;

interface HostError {
  readonly code: string;
  readonly message?: string;
}

interface HostLibrary {
  associate?: Associate;
  Error?: new (code: string, message?: string) => HostError;
}

declare const globalThis: { CustomFunctions?: HostLibrary };

const given = new Map<string, HostFunction>();

function remember(id: string, implementation: HostFunction): void {
  given.set(id, implementation);
}

/**
 * Lets the generated functions be associated before the host's library is there. That library keeps the object it
 * finds and assigns its own `associate`; at that moment everything remembered is passed on.
 */
function awaitHost(): void {
  const library = (globalThis.CustomFunctions ??= {});
  if (typeof library.associate === "function") return;
  Object.defineProperty(library, "associate", {
    configurable: true,
    enumerable: true,
    get: () => remember,
    set(associate: Associate) {
      Object.defineProperty(library, "associate", {
        value: associate,
        writable: true,
        configurable: true,
        enumerable: true,
      });
      for (const [id, implementation] of given) associate(id, implementation);
    },
  });
}

awaitHost();

/** Looked up when needed: the host's library brings its Error later than its table of functions. */
function hostError(code: string, message: string): unknown {
  const Constructor = globalThis.CustomFunctions?.Error;
  if (Constructor !== undefined) return new Constructor(code, message);
  return Object.assign(new Error(message), { code });
}

interface SentError {
  readonly code: string;
}

function isError(value: unknown): value is SentError {
  return typeof value === "object" && value !== null && typeof (value as SentError).code === "string";
}

function cellInput(value: unknown): CellInput {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean") return value;
  if (isError(value)) return value;
  if (value === null || value === undefined) return null;
  const basic = (value as { basicValue?: unknown }).basicValue;
  return typeof basic === "number" || typeof basic === "string" || typeof basic === "boolean" ? basic : null;
}

/** A block of one cell is that cell: nearly every argument is one, and a single value is what is read the quickest. */
function argumentInput(value: unknown): ArgumentInput {
  if (!Array.isArray(value)) return cellInput(value);
  const rows = value as readonly unknown[];
  const [first] = rows;
  if (rows.length === 1 && Array.isArray(first) && first.length === 1) return cellInput(first[0]);
  return rows.map((row) => (Array.isArray(row) ? row.map(cellInput) : [cellInput(row)]));
}

function cellOutput(cell: CellAnswer): unknown {
  return cell instanceof FunctionError ? hostError(cell.code, cell.message) : cell;
}

function hostOutput(answer: Answer): unknown {
  if (!Array.isArray(answer)) return cellOutput(answer as CellAnswer);
  return (answer as readonly (readonly CellAnswer[])[]).map((row) => row.map(cellOutput));
}

function hostFailure(error: unknown, name: string): unknown {
  if (error instanceof FunctionError) return hostError(error.code, error.message);
  if (error instanceof PassedError) return hostError(error.code, error.message);
  return hostError("#VALUE!", `${NAMESPACE}.${name} could not be worked out`);
}

/**
 * The arguments that a function takes any number of, which the host sends as one list. Where a call has none, what the
 * host puts behind the arguments may stand in their place.
 */
export function furtherInputs(given: unknown): readonly unknown[] {
  if (Array.isArray(given)) return given as readonly unknown[];
  return typeof given === "object" || given === undefined ? [] : [given];
}

/** One call of a cell; `args` are the declared arguments in order, without what the host adds behind them. */
export function answer(name: string, args: readonly unknown[]): unknown {
  try {
    return hostOutput(call(name, args.map(argumentInput)));
  } catch (error) {
    throw hostFailure(error, name);
  }
}
