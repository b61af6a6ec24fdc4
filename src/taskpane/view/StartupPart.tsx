import { useEffect, useState } from "preact/hooks";
import type { Startup } from "../sheetHost";

const REFUSED = "This Excel did not take the setting: open Canyard once in each workbook instead.";

/** The host starts an add-in only where it was opened once, or where the workbook asks for it. */
export function StartupPart({ startup }: { startup: Startup }) {
  const [isOn, setIsOn] = useState<boolean | null>(null);
  const [said, setSaid] = useState("");
  useEffect(() => {
    startup.read().then(setIsOn, () => setSaid(REFUSED));
  }, [startup]);
  const change = (on: boolean): void => {
    startup.set(on).then(
      () => setIsOn(on),
      () => setSaid(REFUSED),
    );
  };
  return (
    <>
      <h2>When a workbook opens</h2>
      <p>The functions calculate in a workbook once Canyard was opened in it (Home, Canyard help).</p>
      <label>
        <input
          type="checkbox"
          checked={isOn === true}
          disabled={isOn === null}
          onChange={({ currentTarget }) => change(currentTarget.checked)}
        />{" "}
        Start Canyard with this workbook
      </label>
      <p role="status">{said}</p>
    </>
  );
}
