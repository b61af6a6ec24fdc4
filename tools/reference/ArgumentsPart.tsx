import type { ArgumentFacts } from "./argumentFacts";
import { Breakable } from "./Breakable";
import { StackedTable } from "./StackedTable";
import { Words } from "./Words";

const HEADINGS = ["Argument", "Meaning", "Unit, us", "Unit, metric", "Allowed", "Left out"];

function Allowed({ texts, on }: { texts: readonly string[]; on: string }) {
  return (
    <>
      {texts.map((text, at) => (
        <>
          {at > 0 && <br />}
          <Words text={text} on={on} />
        </>
      ))}
    </>
  );
}

export function ArgumentsPart({ name, args }: { name: string; args: readonly ArgumentFacts[] }) {
  return (
    <section>
      <h2 id="arguments">Arguments</h2>
      {args.length === 0 ? (
        <p>None: it is written with empty brackets.</p>
      ) : (
        <StackedTable
          label="arguments"
          headings={HEADINGS}
          rows={args.map((argument) => [
            <code>
              <Breakable text={argument.name} />
            </code>,
            <Words text={argument.about} on={name} />,
            argument.us,
            argument.metric,
            <Allowed texts={argument.allowed} on={name} />,
            argument.otherwise,
          ])}
        />
      )}
    </section>
  );
}
