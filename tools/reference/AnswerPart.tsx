import type { PageFacts } from "./facts";
import { StackedTable } from "./StackedTable";
import { Words } from "./Words";

function unitText(us: string, metric: string): string {
  if (us === metric) return us;
  return `${us} in us, ${metric} in metric`;
}

/** What the function gives; of a table each column. */
export function AnswerPart({ name, result, columns }: Pick<PageFacts, "name" | "result" | "columns">) {
  const unit = unitText(result.us, result.metric);
  return (
    <section>
      <h2 id="answer">Answer</h2>
      <p>
        <Words text={result.about} on={name} />
        {unit === "" ? "." : `: ${unit}.`}
      </p>
      {columns.length > 0 && (
        <>
          <p>A table; its columns, from the left:</p>
          <StackedTable
            label="answer"
            headings={["Column", "Unit, us", "Unit, metric"]}
            rows={columns.map((column) => [column.name, column.us || "text", column.metric || "text"])}
          />
        </>
      )}
    </section>
  );
}
