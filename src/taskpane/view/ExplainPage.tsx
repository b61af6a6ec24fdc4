import { useCallback, useEffect, useRef, useState } from "preact/hooks";
import {
  explainSelected,
  type CallError,
  type ExplainedArgument,
  type ExplainedCall,
  type Explanation,
} from "../explain";
import type { FunctionHelp } from "../library";
import { repairSheet, type Repaired } from "../repair";
import { HostFailure } from "../sheetHost";
import { shownCell } from "../shown";
import { AnswerView, Verdict } from "./AnswerView";
import { usePane } from "./context";
import { Steps } from "./Steps";

function useExplanation(): { explanation: Explanation | null; failure: string; look: () => void } {
  const { library, host } = usePane();
  const [explanation, setExplanation] = useState<Explanation | null>(null);
  const [failure, setFailure] = useState("");
  const latest = useRef(0);
  const look = useCallback(() => {
    // A slow host may answer for a cell that has been left since.
    const turn = (latest.current += 1);
    const settle = (found: Explanation | null, sentence: string): void => {
      if (turn !== latest.current) return;
      setFailure(sentence);
      if (found !== null) setExplanation(found);
    };
    explainSelected(library, host).then(
      (found) => settle(found, ""),
      (error: unknown) => settle(null, error instanceof HostFailure ? error.message : "The cell could not be read."),
    );
  }, [library, host]);
  useEffect(() => {
    look();
    return host.onSelection(look);
  }, [look, host]);
  return { explanation, failure, look };
}

function ArgumentView({ argument }: { argument: ExplainedArgument }) {
  const { name, text, shown, unit, verdict } = argument;
  return (
    <div>
      <dt>{name}</dt>
      <dd>
        {text === "" ? (
          "left out"
        ) : (
          <>
            <code>{text}</code> {text !== shown && `is ${shown} `}
            <span class="unit">{unit}</span>
          </>
        )}
        {verdict !== "" && verdict !== "ok" && <span class="look"> Look: {verdict}.</span>}
      </dd>
    </div>
  );
}

function ErrorView({ entry, error }: { entry: FunctionHelp; error: CallError }) {
  const about = entry.params.find(({ name }) => name === error.argument)?.about;
  return (
    <div class="question">
      <p class="look">
        <strong>{error.code}</strong> {error.message}
      </p>
      {about !== undefined && (
        <p>
          Mend <code>{error.argument}</code>: {about}.
        </p>
      )}
    </div>
  );
}

function Unresolved({ text, reason }: { text: string; reason: string }) {
  return (
    <p class="quiet">
      <code>{text}</code>:{" "}
      {reason === ""
        ? "only the sheet can work this out. Put it into a cell of its own and point to that cell."
        : reason}
    </p>
  );
}

function CallView({ call }: { call: ExplainedCall }) {
  const { entry, args, answer, error, steps, verdict, system, unresolved } = call;
  return (
    <section class="call">
      <h2>
        <a href={`#${entry.name}`}>{entry.name}</a>
      </h2>
      <p>{entry.summary}.</p>
      <dl>
        {args.map((argument, at) => (
          <ArgumentView key={at} argument={argument} />
        ))}
      </dl>
      {answer !== null && <AnswerView entry={entry} answer={answer} system={system} />}
      <Verdict verdict={verdict} />
      {error !== null && <ErrorView entry={entry} error={error} />}
      {unresolved.map(({ text, reason }) => (
        <Unresolved key={text} text={text} reason={reason} />
      ))}
      <Steps steps={steps} system={system} />
    </section>
  );
}

function Found({ explanation }: { explanation: Explanation }) {
  const { selection } = explanation;
  const { formula, found } = selection;
  return (
    <>
      <p>
        {selection.range} on {selection.sheet}: <strong>{shownCell(found)}</strong>
      </p>
      {formula !== null && (
        <pre>
          <code>{formula}</code>
        </pre>
      )}
      {explanation.kind === "not readable" && (
        <p>This formula cannot be read. Look for a missing bracket or quotation mark.</p>
      )}
      {explanation.kind === "nothing of ours" && <p>There is no function of Canyard in this cell.</p>}
      {explanation.kind === "calls" && explanation.calls.map((call, at) => <CallView key={at} call={call} />)}
      {explanation.kind === "calls" &&
        explanation.unknown.map((name) => (
          <p key={name} class="look">
            This version has no function {name}. <a href="#">Find the right one</a>.
          </p>
        ))}
    </>
  );
}

function repairedText({ sheet, entered, stillUnknown }: Repaired): string {
  if (entered.length === 0) return `Nothing to repair on ${sheet}.`;
  const count = entered.length === 1 ? "1 cell was" : `${entered.length} cells were`;
  const text = `${count} entered anew on ${sheet}: ${entered.join(", ")}.`;
  if (stillUnknown.length === 0) return text;
  return `${text} Not known to the sheet yet: ${stillUnknown.join(", ")}. Wait a moment and repair again.`;
}

function Repair() {
  const { host } = usePane();
  const [told, setTold] = useState("");
  const repair = (): void => {
    repairSheet(host).then(
      (repaired) => setTold(repairedText(repaired)),
      (error: unknown) => setTold(error instanceof HostFailure ? error.message : "The sheet could not be repaired."),
    );
  };
  return (
    <section>
      <h2>Repair this sheet</h2>
      <p>
        For cells of Canyard that show #NAME?, or a formula with <code>_xldudf</code> in it. They are entered anew;
        other cells stay as they are.
      </p>
      <button type="button" onClick={repair}>
        Look and repair
      </button>
      <p role="status">{told}</p>
    </section>
  );
}

export function ExplainPage() {
  const { host } = usePane();
  const { explanation, failure, look } = useExplanation();
  return (
    <div>
      <h1 tabIndex={-1}>Explain this cell</h1>
      {host.kind === "page" ? (
        <p>
          There is no sheet beside this page. In Excel or beside the browser sheet, this explains the selected cell.
        </p>
      ) : (
        <>
          <button type="button" onClick={look}>
            Look again
          </button>
          <div aria-live="polite">
            {failure !== "" && <p class="look">{failure}</p>}
            {failure === "" && explanation !== null && <Found explanation={explanation} />}
          </div>
          <Repair />
        </>
      )}
    </div>
  );
}
