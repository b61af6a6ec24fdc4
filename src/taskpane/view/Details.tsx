import { unitFor, type FunctionHelp } from "../library";
import { usePane } from "./context";
import { CopyButton } from "./CopyButton";

function List({ title, lines }: { title: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <section>
      <h2>{title}</h2>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

function UsualRanges({ entry }: { entry: FunctionHelp }) {
  const { system } = usePane();
  const described = [
    ...entry.params.map((param) => [param.name, param] as const),
    ["the answer", entry.result] as const,
  ];
  const lines = described.flatMap(([name, about]) => {
    const range = about.usual?.[system];
    return range === undefined
      ? []
      : [`${name}: ${range[0]} to ${range[1]} ${unitFor(about, system)} (${about.usual?.source})`];
  });
  return <List title="Usual ranges" lines={lines} />;
}

function PlainFormula({ entry }: { entry: FunctionHelp }) {
  const { system } = usePane();
  const formulas = entry.spreadsheetAlone;
  const formula = formulas.any ?? formulas[system];
  if (formula === undefined) return null;
  return (
    <section>
      <h2>In built-in functions</h2>
      <pre>
        <code>{formula}</code>
      </pre>
      <CopyButton text={formula} label="Copy" />
    </section>
  );
}

export function Details({ entry }: { entry: FunctionHelp }) {
  const { library } = usePane();
  const known = new Set(library.catalogue.map(({ name }) => name));
  return (
    <>
      <section>
        <h2>Formula</h2>
        <p>
          <code>{entry.formula}</code>
        </p>
        <p>Gives: {entry.result.about}.</p>
      </section>
      <List title="What it takes for granted" lines={entry.assumptions} />
      <UsualRanges entry={entry} />
      <List title="Likely mistakes" lines={entry.mistakes} />
      <PlainFormula entry={entry} />
      <section>
        <h2>Source</h2>
        <p>{entry.source}.</p>
      </section>
      {entry.seeAlso.length > 0 && (
        <section>
          <h2>See also</h2>
          <p class="links">
            {entry.seeAlso
              .filter((name) => known.has(name))
              .map((name) => (
                <a key={name} href={`#${name}`}>
                  {name}
                </a>
              ))}
          </p>
        </section>
      )}
    </>
  );
}
