import { unitIn, type Step, type UnitSystem } from "../library";
import { shownNumber } from "../shown";

/** The working as the calculation recorded it. */
export function Steps({ steps, system }: { steps: readonly Step[]; system: UnitSystem | null }) {
  if (steps.length === 0) return null;
  return (
    <ol class="steps">
      {steps.map(({ words, symbols, numbers, value, unit }, at) => (
        <li key={at}>
          <span>{words}</span>
          <code>{symbols}</code>
          <code>
            {numbers === "" ? "" : `${numbers} `}= <strong>{shownNumber(value)}</strong> {unitIn(unit, system)}
          </code>
        </li>
      ))}
    </ol>
  );
}
