import { calendarText } from "../dates";
import { unitIn, type Step, type UnitSystem } from "../library";
import { shownNumber } from "../shown";

/** Dates and times are told as on the calendar, behind the number that the arithmetic gives. */
function unitText({ value, unit }: Step, system: UnitSystem | null): string {
  const onCalendar = calendarText(value, unit);
  return onCalendar === null ? unitIn(unit, system) : `(${onCalendar})`;
}

function StepView({ step, system }: { step: Step; system: UnitSystem | null }) {
  const { words, symbols, numbers, value } = step;
  const result = (
    <>
      = <strong>{shownNumber(value)}</strong> {unitText(step, system)}
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
