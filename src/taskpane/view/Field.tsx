import { useState } from "preact/hooks";
import { unitFor, type Parameter } from "../library";
import { onSheet } from "../reference";
import { HostFailure } from "../sheetHost";
import { usePane } from "./context";

interface FieldProps {
  readonly id: string;
  readonly parameter: Parameter;
  readonly text: string;
  readonly placeholder: string;
  readonly error: string;
  readonly onText: (text: string) => void;
}

/** Text typed, or the reference of the selected cells; why these could not be read is told until the next change. */
function useText(onText: (text: string) => void) {
  const { host } = usePane();
  const [failure, setFailure] = useState("");
  const change = (text: string): void => {
    setFailure("");
    onText(text);
  };
  const take = (): void => {
    host.selection().then(
      ({ sheet, range }) => change(onSheet(sheet, range)),
      (error: unknown) => setFailure(error instanceof HostFailure ? error.message : "The selection could not be read."),
    );
  };
  return { change, take, failure };
}

export function Field({ id, parameter, text, placeholder, error, onText }: FieldProps) {
  const { host, system } = usePane();
  const { about, optional, words, shape } = parameter;
  const { change, take, failure } = useText(onText);
  const unit = unitFor(parameter, system);
  const useSelected = `Use selected ${shape === "range" ? "cells" : "cell"}`;
  const problem = error || failure;
  const described = `${id}-about${problem === "" ? "" : ` ${id}-error`}`;
  const common = { id, "aria-describedby": described, "aria-invalid": error !== "" };
  return (
    <div class="field">
      <label for={id}>
        {id}
        {optional && <span class="quiet"> may be left out</span>}
      </label>
      <div class="row">
        {words === undefined ? (
          <input
            {...common}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={text}
            placeholder={placeholder}
            onInput={(event) => change(event.currentTarget.value)}
          />
        ) : (
          <select {...common} value={text} onChange={(event) => change(event.currentTarget.value)}>
            {(optional || text === "") && <option value="">{optional ? "left out" : "choose"}</option>}
            {words.map((word) => (
              <option key={word}>{word}</option>
            ))}
          </select>
        )}
        {unit !== "" && <span class="unit">{unit}</span>}
        {host.kind !== "page" && words === undefined && (
          <button type="button" class="small" onClick={take} aria-label={`${useSelected} for ${id}`}>
            {useSelected}
          </button>
        )}
      </div>
      <p id={`${id}-about`} class="quiet about">
        {about}
      </p>
      {problem !== "" && (
        <p id={`${id}-error`} class="look">
          {problem}
        </p>
      )}
    </div>
  );
}
