import type { Answer } from "../library";
import { shownAnswer } from "../shown";

type Cell = Exclude<Answer, readonly unknown[]>;
type Table = Exclude<Answer, Cell>;

const MOST_ROWS = 40;

function isTable(answer: Answer): answer is Table {
  return Array.isArray(answer);
}

function TableView({ table }: { table: Table }) {
  const shown = table.slice(0, MOST_ROWS);
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label="Answer, a table">
      <table>
        <tbody>
          {shown.map((row, at) => (
            <tr key={at}>
              {row.map((cell, across) => (
                <td key={across} class={typeof cell === "number" ? "number" : ""}>
                  {shownAnswer(cell)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {table.length > MOST_ROWS && <p class="quiet">and {table.length - MOST_ROWS} more rows</p>}
    </div>
  );
}

export function AnswerView({ answer, unit }: { answer: Answer; unit: string }) {
  if (isTable(answer)) return <TableView table={answer} />;
  return (
    <p class="answer">
      <strong>{shownAnswer(answer)}</strong> {unit}
    </p>
  );
}

/** The verdict of the usual range: a word and a sentence, so that it does not rest on colour. */
export function Verdict({ verdict }: { verdict: string }) {
  if (verdict === "") return null;
  if (verdict === "ok") return <p class="verdict">Within what is usual.</p>;
  return <p class="verdict look">Look: {verdict}.</p>;
}
