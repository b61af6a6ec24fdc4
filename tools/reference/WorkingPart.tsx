import { Breakable } from "./Breakable";
import type { StepFacts } from "./workingFacts";

function Step({ step }: { step: StepFacts }) {
  const { words, symbols, numbers, value, unit } = step;
  const result = (
    <>
      {" = "}
      <strong>{value}</strong> {unit}
    </>
  );
  return (
    <li>
      {words}
      <code class="line">
        {symbols}
        {numbers === "" && result}
      </code>
      {numbers !== "" && (
        <code class="line">
          {numbers}
          {result}
        </code>
      )}
    </li>
  );
}

/** The first example step by step, in words, in symbols, in numbers. */
export function WorkingPart({ formula, steps }: { formula: string; steps: readonly StepFacts[] }) {
  if (steps.length === 0) return null;
  return (
    <section>
      <h2>Working of the first example</h2>
      <pre>
        <code>
          <Breakable text={formula} />
        </code>
      </pre>
      <ol class="steps">
        {steps.map((step) => (
          <Step step={step} />
        ))}
      </ol>
    </section>
  );
}
