import { isOnCalendar } from "../dates";
import { tableOf, unitFor, type Answer, type AnswerTable, type FunctionHelp, type UnitSystem } from "../library";
import { shownAnswer } from "../shown";
import { usePane } from "./context";

type Cell = Exclude<Answer, readonly unknown[]>;
type Rows = Exclude<Answer, Cell>;

const MOST_ROWS = 40;

function isRows(answer: Answer): answer is Rows {
  return Array.isArray(answer);
}

/** What the cells of a sheet need to show the answer as it stands here. */
function CalendarHint({ units }: { units: readonly string[] }) {
  if (!units.some(isOnCalendar)) return null;
  return <p class="quiet">In the sheet, give the cells of dates and times such a format; else they show as numbers.</p>;
}

function TableView({ rows, table }: { rows: Rows; table: AnswerTable | null }) {
  const hasHeader = table?.header === true && rows.length > 1;
  const body = rows.slice(hasHeader ? 1 : 0, MOST_ROWS);
  const columns = table?.columns ?? [];
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label="Answer, a table">
      <table>
        {hasHeader && (
          <thead>
            <tr>
              {rows[0]?.map((cell, across) => (
                <th key={across} scope="col">
                  {shownAnswer(cell, "")}
                </th>
              ))}
            </tr>
          </thead>
        )}
        <tbody>
          {body.map((row, at) => (
            <tr key={at}>
              {row.map((cell, across) => (
                <td key={across} class={typeof cell === "number" ? "number" : ""}>
                  {shownAnswer(cell, columns[across] ?? "")}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > MOST_ROWS && <p class="quiet">and {rows.length - MOST_ROWS} more rows</p>}
    </div>
  );
}

interface AnswerProps {
  readonly entry: FunctionHelp;
  readonly answer: Answer;
  /** Null where the formula does not say in which units it is. */
  readonly system: UnitSystem | null;
}

export function AnswerView({ entry, answer, system }: AnswerProps) {
  const { library } = usePane();
  const unit = unitFor(entry.result, system);
  if (isRows(answer)) {
    const table = tableOf(library, entry.name);
    return (
      <>
        <TableView rows={answer} table={table} />
        <CalendarHint units={table?.columns ?? []} />
      </>
    );
  }
  return (
    <>
      <p class="answer">
        <strong>{shownAnswer(answer, unit)}</strong> {isOnCalendar(unit) ? "" : unit}
      </p>
      <CalendarHint units={[unit]} />
    </>
  );
}

/** The verdict of the usual range: a word and a sentence, so that it does not rest on colour. */
export function Verdict({ verdict }: { verdict: string }) {
  if (verdict === "") return null;
  if (verdict === "ok") return <p class="verdict">Within what is usual.</p>;
  return <p class="verdict look">Look: {verdict}.</p>;
}
