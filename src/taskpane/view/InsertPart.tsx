import { useState } from "preact/hooks";
import { HostFailure } from "../sheetHost";
import { usePane } from "./context";
import { CopyButton } from "./CopyButton";

type State =
  | { readonly kind: "ready" }
  | { readonly kind: "waiting" }
  | { readonly kind: "done"; readonly address: string }
  | { readonly kind: "asking"; readonly address: string; readonly occupiedBy: string }
  | { readonly kind: "failed"; readonly sentence: string };

/** After so many milliseconds it is told what the sheet waits for: as a rule, a cell that is being edited. */
const PATIENCE = 700;

/** Writes the formula into the selected cell; a cell that holds something is replaced only after a yes, asked here. */
export function InsertPart({ formula }: { formula: string }) {
  const { host } = usePane();
  const [state, setState] = useState<State>({ kind: "ready" });
  const insert = async (replace: boolean): Promise<void> => {
    const waiting = setTimeout(() => setState({ kind: "waiting" }), PATIENCE);
    try {
      const outcome = await host.writeFormula(formula, replace);
      if ("written" in outcome) setState({ kind: "done", address: outcome.written });
      else setState({ kind: "asking", ...outcome });
    } catch (error) {
      const sentence = error instanceof HostFailure ? error.message : "The formula could not be inserted.";
      setState({ kind: "failed", sentence });
    } finally {
      clearTimeout(waiting);
    }
  };
  return (
    <div class="insert">
      <pre>
        <code id="formula">{formula}</code>
      </pre>
      {host.kind !== "page" && (
        <button type="button" class="primary" onClick={() => void insert(false)}>
          Insert into the selected cell
        </button>
      )}{" "}
      <CopyButton text={formula} label="Copy formula" />
      <div role="status">
        {state.kind === "waiting" && <p>Waiting for the sheet: finish the cell that is being edited with Enter.</p>}
        {state.kind === "done" && <p>Written into {state.address}. The sheet's undo takes it back.</p>}
        {state.kind === "failed" && <p class="look">{state.sentence}</p>}
        {state.kind === "asking" && (
          <div class="question">
            <p>
              {state.address} holds <code>{state.occupiedBy}</code>. Replace it?
            </p>
            <button type="button" onClick={() => void insert(true)}>
              Replace
            </button>{" "}
            <button type="button" onClick={() => setState({ kind: "ready" })}>
              Keep what is there
            </button>
          </div>
        )}
      </div>
    </div>
  );
}
