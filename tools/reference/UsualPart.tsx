import { Breakable } from "./Breakable";
import { StackedTable } from "./StackedTable";
import type { UsualFacts } from "./usualFacts";
import { Words } from "./Words";

const HEADINGS = ["What", "Usual, us", "Usual, metric", "Below it", "Above it", "Source"];

export function UsualPart({ name, usual }: { name: string; usual: readonly UsualFacts[] }) {
  if (usual.length === 0) return null;
  return (
    <section>
      <h2 id="usual">Usual ranges</h2>
      <p>A number outside of these is worked out like any other; look at it twice.</p>
      <StackedTable
        label="usual"
        headings={HEADINGS}
        rows={usual.map(({ what, us, metric, below, above, source }) => [
          what === "answer" ? (
            what
          ) : (
            <code>
              <Breakable text={what} />
            </code>
          ),
          us,
          metric,
          below === "" ? "" : <Words text={below} on={name} />,
          above === "" ? "" : <Words text={above} on={name} />,
          <Words text={source} on={name} />,
        ])}
      />
    </section>
  );
}
