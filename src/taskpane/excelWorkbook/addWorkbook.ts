/** A starter added to the open workbook: all of it as one step of the undo, or nothing. */
import { sentenceFor } from "../excelSentences";
import { HostFailure, type Addition, type StarterWorkbook } from "../sheetHost";
import { addSheets, takeAway, type Added } from "./addSheets";
import { isWithoutUndo, LEAST_VERSION, UNDO_GROUPS_SINCE, wordsFor, type Supports } from "./parts";

/** What is needed of Excel: a run of work, and whether it knows a version of its library. */
export interface ExcelHost {
  run<T>(options: Excel.RunOptions, work: (context: Excel.RequestContext) => Promise<T>): Promise<T>;
  readonly supports: Supports;
}

const PATIENT: Excel.RunOptions = { delayForCellEdit: true };
const AS_ONE_STEP: Excel.RunOptions = { ...PATIENT, mergeUndoGroup: true };

const TOO_OLD = "This version of Excel is too old for that. Nothing was added.";

export async function addWorkbook(host: ExcelHost, starter: StarterWorkbook): Promise<Addition> {
  if (!host.supports(LEAST_VERSION)) throw new HostFailure(TOO_OLD);
  if (!host.supports(UNDO_GROUPS_SINCE)) return attempt(host, starter, PATIENT);
  try {
    return await attempt(host, starter, AS_ONE_STEP);
  } catch (error) {
    if (isWithoutUndo(error)) return attempt(host, starter, PATIENT);
    throw error;
  }
}

async function attempt(host: ExcelHost, starter: StarterWorkbook, options: Excel.RunOptions): Promise<Addition> {
  const added: Added = { sheets: [], names: [] };
  try {
    const leftOut = await host.run(options, (context) => addSheets(context, starter, host.supports, added));
    return {
      sheets: added.sheets.map(({ name }) => name),
      leftOut: leftOut.map(wordsFor),
      isOneUndoStep: options.mergeUndoGroup === true,
    };
  } catch (error) {
    const outcome = await withdraw(host, added);
    throw isWithoutUndo(error) && outcome !== LEFT_BEHIND ? error : failure(error, outcome, added);
  }
}

const NOTHING_ADDED = "Nothing was added.";
const TAKEN_AWAY = "The sheets that were added have been taken away again; Excel's list of steps to undo begins anew.";
const LEFT_BEHIND = "These sheets were added and could not be taken away again: delete them by hand.";

/** Excel cannot undo the removal of a sheet, so that it is no part of a step that can be undone. */
async function withdraw(host: ExcelHost, added: Added): Promise<string> {
  if (added.sheets.length === 0) return NOTHING_ADDED;
  try {
    await host.run(PATIENT, (context) => takeAway(context, added));
    return TAKEN_AWAY;
  } catch {
    return LEFT_BEHIND;
  }
}

/** Codes of Excel that mean something else here than at a cell. */
const SENTENCES: Readonly<Record<string, string>> = {
  AccessDenied: "This workbook's structure is protected. Unprotect it, then try again.",
  ItemAlreadyExists: "Something in this workbook has one of the names that the new sheets need.",
};

function failure(error: unknown, outcome: string, { sheets }: Added): HostFailure {
  const code = (error as { code?: string } | null)?.code ?? "";
  const reason = SENTENCES[code] ?? sentenceFor(error).message;
  const names = outcome === LEFT_BEHIND ? ` ${sheets.map(({ name }) => name).join(", ")}.` : "";
  return new HostFailure(`${reason} ${outcome}${names}`);
}
