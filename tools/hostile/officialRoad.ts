/** The road of Excel: the built functions in the official custom-functions runtime. */
import { errorArgument, openOfficialHost, wireNumber, type HostAnswer } from "../../test/rig/officialRuntime";
import { isRepeating } from "../../src/kernel";
import { find } from "../../src/functions";
import { isCellError, isRows, type HostileCall, type HostileInput, type Outcome } from "./call";

function wireCell(cell: HostileInput): unknown {
  if (typeof cell === "number") return wireNumber(cell);
  if (isCellError(cell)) return errorArgument(cell.code);
  return cell ?? null;
}

/** Every argument is declared as a block; a host that sends the value itself is understood too. */
function wireArgument(input: HostileInput, asBlock: boolean): unknown {
  if (isRows(input)) return input.map((row) => row.map(wireCell));
  const cell = wireCell(input);
  return asBlock ? [[cell]] : cell;
}

/** Arguments as the host sends them: those that a function takes any number of come together as one. */
function wireArguments({ name, args, index }: HostileCall): unknown[] {
  const params = Object.values(find(name)?.params ?? {});
  const sent = args.map((input, at) => wireArgument(input, (index + at) % 2 === 0));
  const fixed = params.findIndex(isRepeating);
  return fixed < 0 || args.length <= fixed ? sent : [...sent.slice(0, fixed), sent.slice(fixed)];
}

function cellOf(cell: unknown): unknown {
  if (typeof cell !== "object" || cell === null || !("error" in cell)) return cell;
  const { error, message } = cell as { error: string; message?: string };
  return { code: error, message: message ?? "" };
}

function outcomeOf({ ok, value, error, message }: HostAnswer): Outcome {
  // The runtime's own words for an exception that no function of ours caught.
  if (!ok && (error === "exception" || error === "rejection")) return { kind: "thrown", text: message ?? error };
  if (!ok) return { kind: "error", code: error ?? "", message: message ?? "" };
  if (!Array.isArray(value)) return { kind: "answer", value };
  return { kind: "answer", value: value.map((row) => (Array.isArray(row) ? row.map(cellOf) : cellOf(row))) };
}

/**
 * The runtime times how long its host takes to receive answers, and spares a slow one for seconds. So it must hear that
 * they were received before other work keeps this thread busy.
 */
const SETTLING = 3;
const settled = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, SETTLING));

export interface OfficialRoad {
  /** The calls together, in one message to the runtime. */
  run(calls: readonly HostileCall[]): Promise<Outcome[]>;
  close(): void;
}

export function openOfficialRoad(functionsFile: string): OfficialRoad {
  const host = openOfficialHost(functionsFile);
  return {
    async run(calls) {
      const sent = calls.map((call): [string, unknown[]] => [call.name, wireArguments(call)]);
      const answers = await host.callMany(sent, { errorsAllowed: true });
      await settled();
      return answers.map(outcomeOf);
    },
    close: () => host.close(),
  };
}
