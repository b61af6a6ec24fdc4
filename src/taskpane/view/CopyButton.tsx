import { useState } from "preact/hooks";

/** Copies a text; where the browser does not let a page do that, the text is there to be selected. */
export function CopyButton({ text, label }: { text: string; label: string }) {
  const [state, setState] = useState("");
  const copy = (): void => {
    const copying = navigator.clipboard?.writeText(text) ?? Promise.reject(new Error("no clipboard"));
    copying.then(
      () => setState("Copied."),
      () => setState("Copying is not allowed here: select the text above and copy it."),
    );
  };
  return (
    <>
      <button type="button" onClick={copy}>
        {label}
      </button>{" "}
      <span role="status" class="quiet">
        {state}
      </span>
    </>
  );
}
