import { Breakable } from "./Breakable";
import type { PageFacts } from "./facts";

const TITLES = { any: "", us: "In us units", metric: "In metric units" };

/** Longer than this a formula is folded away: it is there to be copied, not to be read. */
const READABLE = 400;

function Formula({ formula }: { formula: string }) {
  const text = (
    <pre>
      <code>
        <Breakable text={formula} />
      </code>
    </pre>
  );
  if (formula.length <= READABLE) return text;
  return (
    <details>
      <summary>Show the formula, {formula.length} characters</summary>
      {text}
    </details>
  );
}

/** The same in built-in functions: for a sheet that goes where this one's functions are not. */
export function PlainPart({ plain }: Pick<PageFacts, "plain">) {
  return (
    <section>
      <h2>In built-in functions</h2>
      {plain.length === 0 ? (
        <p>One cell of a plain spreadsheet cannot hold it.</p>
      ) : (
        <p>The same without Canyard; put your cells in place of the names.</p>
      )}
      {plain.map(({ system, formula }) => (
        <>
          {TITLES[system] !== "" && <h3>{TITLES[system]}</h3>}
          <Formula formula={formula} />
        </>
      ))}
    </section>
  );
}
