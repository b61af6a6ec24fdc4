import { useCallback, useEffect, useState } from "preact/hooks";
import { explainSelected, shownCell, type ExplainedCall, type Explanation } from "../explain";
import { holdsOurs, withShownNames } from "../formula";
import { unitFor } from "../library";
import { HostFailure } from "../sheetHost";
import { AnswerView, Verdict } from "./AnswerView";
import { usePane } from "./context";
import { Steps } from "./Steps";

function useExplanation(): { explanation: Explanation | null; failure: string; look: () => void } {
  const { library, host } = usePane();
  const [explanation, setExplanation] = useState<Explanation | null>(null);
  const [failure, setFailure] = useState("");
  const look = useCallback(() => {
    explainSelected(library, host).then(
      (found) => {
        setExplanation(found);
        setFailure("");
      },
      (error: unknown) => setFailure(error instanceof HostFailure ? error.message : "The cell could not be read."),
    );
  }, [library, host]);
  useEffect(() => {
    look();
    return host.onSelection(look);
  }, [look, host]);
  return { explanation, failure, look };
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
        {args.map(({ name, text, shown, unit, verdict: about }) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>
              <code>{text === "" ? "left out" : text}</code> {text !== "" && text !== shown && <>is {shown} </>}
              {text !== "" && <span class="unit">{unit}</span>}
              {about !== "" && about !== "ok" && <span class="look"> Look: {about}.</span>}
            </dd>
          </div>
        ))}
      </dl>
      {answer !== null && <AnswerView answer={answer} unit={unitFor(entry.result, system)} />}
      <Verdict verdict={verdict} />
      {error !== null && (
        <div class="question">
          <p class="look">
            <strong>{error.code}</strong> {error.message}
          </p>
          {error.argument !== null && (
            <p>
              Mend <code>{error.argument}</code>:{" "}
              {entry.params.find(({ name }) => name === error.argument)?.about ?? ""}.
            </p>
          )}
        </div>
      )}
      {unresolved.length > 0 && (
        <p class="quiet">
          Only the sheet itself can work out {unresolved.join(" and ")}. Put that into a cell of its own and point to
          it, to see this call explained.
        </p>
      )}
      <Steps steps={steps} system={system} />
    </section>
  );
}

function Found({ explanation }: { explanation: Explanation }) {
  const { selection } = explanation;
  const where = `${selection.range} on ${selection.sheet}`;
  if (explanation.kind === "calls") {
    return (
      <>
        <p class="quiet">{where}</p>
        <pre>
          <code>{selection.formula}</code>
        </pre>
        {explanation.calls.map((call, at) => (
          <CallView key={at} call={call} />
        ))}
        {explanation.unknown.map((name) => (
          <p key={name} class="look">
            There is no function {name} in this version.
          </p>
        ))}
      </>
    );
  }
  return (
    <>
      <p>
        {where}: {selection.formula === null ? shownCell(selection.found) : <code>{selection.formula}</code>}
      </p>
      <p>
        {explanation.kind === "not readable"
          ? "This formula cannot be read: look for a missing bracket or quotation mark."
          : "No function of Canyard stands in this cell. Select one that holds =CANYARD. and a name."}
      </p>
    </>
  );
}

/** Cells of ours whose names the host has not bound, or that carry the form in which a file stores them. */
function Repair() {
  const { host } = usePane();
  const [told, setTold] = useState("");
  const repair = async (): Promise<void> => {
    try {
      const { sheet, cells } = await host.formulas();
      const broken = cells.filter(({ formula, found }) => {
        const code = typeof found === "object" && found !== null ? found.code : "";
        return holdsOurs(formula) && (withShownNames(formula) !== null || code === "#NAME?" || code === "#BAD_EXPR");
      });
      const mended = broken.map(({ address, formula }) => ({ address, formula: withShownNames(formula) ?? formula }));
      if (mended.length > 0) await host.enter(sheet, mended);
      const count = mended.length === 1 ? "1 cell was" : `${mended.length} cells were`;
      setTold(
        mended.length === 0
          ? `Nothing to repair on ${sheet}.`
          : `${count} entered anew on ${sheet}: ${mended.map(({ address }) => address).join(", ")}.`,
      );
    } catch (error) {
      setTold(error instanceof HostFailure ? error.message : "The sheet could not be repaired.");
    }
  };
  return (
    <section>
      <h2>Repair this sheet</h2>
      <p>Formulas typed before the functions were loaded stay #NAME?. This enters them anew.</p>
      <button type="button" onClick={() => void repair()}>
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
          There is no sheet beside this page. Open the help inside Excel or beside the browser sheet to explain a cell.
        </p>
      ) : (
        <>
          <button type="button" onClick={look}>
            Look at the selected cell
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
