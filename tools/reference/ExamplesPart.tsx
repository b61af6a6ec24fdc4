import { Breakable } from "./Breakable";
import type { ExampleFacts } from "./facts";
import { Words } from "./Words";

function Rows({ rows, header, label }: Pick<ExampleFacts, "rows" | "header"> & { label: string }) {
  const [first = [], ...others] = rows;
  const body = header ? others : rows;
  return (
    <div class="scroll" tabIndex={0} role="region" aria-label={label}>
      <table>
        {header && (
          <thead>
            <tr>
              {first.map((name) => (
                <th scope="col">{name}</th>
              ))}
            </tr>
          </thead>
        )}
        <tbody>
          {body.map((row) => (
            <tr>
              {row.map((cell) => (
                <td>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Example({ example, name, at }: { example: ExampleFacts; name: string; at: number }) {
  const { formula, answer, rows, header, exact, source } = example;
  return (
    <li class="example">
      <pre>
        <code>
          <Breakable text={formula} />
        </code>
      </pre>
      {rows.length > 0 ? (
        <Rows rows={rows} header={header} label={`Answer of example ${at + 1}, a table`} />
      ) : (
        <p>
          gives <strong class="answer">{answer}</strong>
          {exact !== "" && ` as printed; the cell shows ${exact}`}
        </p>
      )}
      <p class="quiet">
        <Words text={source} on={name} />
      </p>
    </li>
  );
}

export function ExamplesPart({ name, examples }: { name: string; examples: readonly ExampleFacts[] }) {
  return (
    <section>
      <h2>Examples</h2>
      <ol class="examples">
        {examples.map((example, at) => (
          <Example example={example} name={name} at={at} />
        ))}
      </ol>
    </section>
  );
}
