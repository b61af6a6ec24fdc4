/** Starter workbooks: into the open workbook, into the sheet beside the pane, or as files. */
import { useCallback, useEffect, useState } from "preact/hooks";
import type { Edition } from "../../workbooks/kit";
import { HostFailure, type Addition, type SheetHost } from "../sheetHost";
import { fetchStarter, filesOf, listStarters, type StarterLine } from "../starters";
import { usePane } from "./context";

const IN_WORDS: Readonly<Record<Edition, string>> = { us: "US units", metric: "metric units" };
const OTHER: Readonly<Record<Edition, Edition>> = { us: "metric", metric: "us" };

function sentenceOf(error: unknown, otherwise: string): string {
  return error instanceof HostFailure ? error.message : otherwise;
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words[words.length - 1]}`;
}

function counted(number: number, thing: string): string {
  return `${number} ${thing}${number === 1 ? "" : "s"}`;
}

interface ListRead {
  readonly lines: readonly StarterLine[] | null;
  readonly failure: string;
  readonly again: () => void;
}

function useStarters(): ListRead {
  const [read, setRead] = useState<Omit<ListRead, "again">>({ lines: null, failure: "" });
  const again = useCallback(() => {
    setRead({ lines: null, failure: "" });
    listStarters().then(
      (lines) => setRead({ lines, failure: "" }),
      (error: unknown) => setRead({ lines: null, failure: sentenceOf(error, "The list could not be read.") }),
    );
  }, []);
  useEffect(again, [again]);
  return { ...read, again };
}

/** Where the workbooks go, before anything is done. */
function WhatHappens({ host }: { host: SheetHost }) {
  if (host.addWorkbook) {
    return <p>Each is added to your workbook as new sheets. Your own sheets, cells and names stay as they are.</p>;
  }
  if (host.openStarter) {
    return <p>The one that you choose opens in the sheet, in the place of the workbook there. You are asked first.</p>;
  }
  return (
    <p>
      Each is an Excel file with invented numbers: put your own in their place. The plain one works where this add-in is
      not. In the <a href="./">browser sheet</a> they open as well.
    </p>
  );
}

function EditionChoice() {
  const { system, onSystem } = usePane();
  return (
    <p class="row">
      <span>These are in {IN_WORDS[system]}.</span>
      <button type="button" class="small" onClick={() => onSystem(OTHER[system])}>
        Show them in {IN_WORDS[OTHER[system]]}
      </button>
    </p>
  );
}

type State =
  | { readonly kind: "ready" }
  | { readonly kind: "working"; readonly sentence: string }
  | { readonly kind: "done"; readonly sentences: readonly string[] }
  | { readonly kind: "failed"; readonly sentence: string };

const READY: State = { kind: "ready" };

/** Words on the sheets name the sheets as the starter has them. */
const NAMED_IN_WORDS = "Checks";

function outcome(starter: StarterLine, { sheets, leftOut, isOneUndoStep }: Addition): readonly string[] {
  const named = starter.sheets.indexOf(NAMED_IN_WORDS);
  const isNumbered = named >= 0 && sheets[named] !== NAMED_IN_WORDS;
  return [
    `${counted(sheets.length, "sheet")} added: ${listed(sheets)}.`,
    ...(isNumbered ? [`Where their words name a sheet, such as ${NAMED_IN_WORDS}, take ${sheets[named]}.`] : []),
    ...(leftOut.length > 0 ? [`This Excel could not make ${listed(leftOut)}.`] : []),
    isOneUndoStep
      ? "One undo takes them all away again."
      : "To be rid of them, delete these sheets: undo does not take them back in one step here.",
  ];
}

/** After so many milliseconds it is told what Excel waits for: as a rule, a cell that is being edited. */
const PATIENCE = 4_000;
const WAITING = "Excel is still at it. If a cell is being edited, finish it with Enter.";

interface ActionProps {
  readonly starter: StarterLine;
  readonly edition: Edition;
}

function AddButton({ starter, edition }: ActionProps) {
  const { host } = usePane();
  const [state, setState] = useState<State>(READY);
  const { sheets, title, id } = starter;
  const add = async (): Promise<void> => {
    setState({ kind: "working", sentence: "Adding the sheets." });
    const waiting = setTimeout(() => setState({ kind: "working", sentence: WAITING }), PATIENCE);
    try {
      const addition = await host.addWorkbook!(await fetchStarter(id, edition));
      setState({ kind: "done", sentences: outcome(starter, addition) });
    } catch (error) {
      setState({ kind: "failed", sentence: sentenceOf(error, "The workbook could not be added.") });
    } finally {
      clearTimeout(waiting);
    }
  };
  return (
    <>
      <p class="quiet">
        Adds {counted(sheets.length, "new sheet")}: {listed(sheets)}. A name that is taken gets a number.
      </p>
      <Action label={`Add these sheets: ${title}`} text="Add these sheets" state={state} act={add} />
    </>
  );
}

function OpenButton({ starter, edition }: ActionProps) {
  const { host } = usePane();
  const [state, setState] = useState<State>(READY);
  const open = async (): Promise<void> => {
    setState({ kind: "working", sentence: "The sheet opens it." });
    try {
      const isOpen = await host.openStarter!(starter.id, edition);
      setState(isOpen ? { kind: "done", sentences: ["It is open in the sheet."] } : READY);
    } catch (error) {
      setState({ kind: "failed", sentence: sentenceOf(error, "The sheet could not open it.") });
    }
  };
  return <Action label={`Open in the sheet: ${starter.title}`} text="Open in the sheet" state={state} act={open} />;
}

interface ActionButtonProps {
  readonly label: string;
  readonly text: string;
  readonly state: State;
  readonly act: () => Promise<void>;
}

/** Still there while it works, so that the focus does not get lost; a second press does nothing. */
function Action({ label, text, state, act }: ActionButtonProps) {
  const isWorking = state.kind === "working";
  return (
    <>
      <button
        type="button"
        class="primary"
        aria-label={label}
        aria-disabled={isWorking}
        onClick={() => void (isWorking ? undefined : act())}
      >
        {text}
      </button>
      <div role="status">
        {state.kind === "working" && <p>{state.sentence}</p>}
        {state.kind === "done" && state.sentences.map((sentence) => <p key={sentence}>{sentence}</p>)}
        {state.kind === "failed" && <p class="look">{state.sentence}</p>}
      </div>
    </>
  );
}

function FileLinks({ starter, edition }: ActionProps) {
  if (!starter.files) return <p class="quiet">This site does not have it as an Excel file.</p>;
  const { file, plain } = filesOf(starter.id, edition);
  return (
    <p class="links">
      <a href={file} download>
        {starter.title}, Excel file
      </a>
      <a href={plain} download>
        {starter.title}, plain
      </a>
    </p>
  );
}

function StarterView({ starter }: { starter: StarterLine }) {
  const { host, system } = usePane();
  const edition = starter.editions.includes(system) ? system : OTHER[system];
  const Way = host.addWorkbook ? AddButton : host.openStarter ? OpenButton : FileLinks;
  return (
    <section>
      <h2>{starter.title}</h2>
      <p>{starter.purpose}</p>
      {edition !== system && <p class="quiet">Only in {IN_WORDS[edition]}.</p>}
      <Way key={edition} starter={starter} edition={edition} />
    </section>
  );
}

export function WorkbooksPage() {
  const { host } = usePane();
  const { lines, failure, again } = useStarters();
  return (
    <>
      <WhatHappens host={host} />
      <EditionChoice />
      <div role="status">
        {failure !== "" && (
          <div class="question">
            <p>{failure}</p>
            <button type="button" onClick={again}>
              Try again
            </button>
          </div>
        )}
        {failure === "" && lines === null && <p>Fetching the list.</p>}
      </div>
      {lines?.map((starter) => (
        <StarterView key={starter.id} starter={starter} />
      ))}
    </>
  );
}
