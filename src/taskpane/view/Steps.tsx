import { calendarText } from "../dates";
import { unitIn, type Step, type UnitSystem } from "../library";
import { shownNumber } from "../shown";

/** A time as on the clock, behind the number that the arithmetic gives. */
function onClock({ value, unit }: Step): string {
  const text = calendarText(value, unit);
  return text === null ? "" : `, ${text}`;
}

function StepView({ step, system }: { step: Step; system: UnitSystem | null }) {
  const { words, symbols, numbers, value, unit } = step;
  const result = (
    <>
      = <strong>{shownNumber(value)}</strong> {unitIn(unit, system)}
      {onClock(step)}
    </>
  );
  return (
    <li>
      <span>{words}</span>
      {numbers === "" ? (
        <code>
          {symbols} {result}
        </code>
      ) : (
        <>
          <code>{symbols}</code>
          <code>
            {numbers} {result}
          </code>
        </>
      )}
    </li>
  );
}

/** The working as the calculation recorded it. */
export function Steps({ steps, system }: { steps: readonly Step[]; system: UnitSystem | null }) {
  if (steps.length === 0) return null;
  return (
    <ol class="steps">
      {steps.map((step, at) => (
        <StepView key={at} step={step} system={system} />
      ))}
    </ol>
  );
}
