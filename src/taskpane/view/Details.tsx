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
  const described = [...entry.params.map((param) => [param.name, param] as const), ["answer", entry.result] as const];
  const known = described.flatMap(([name, about]) =>
    about.usual === undefined ? [] : [{ name, about, usual: about.usual }],
  );
  if (known.length === 0) return null;
  return (
    <section>
      <h2>Usual ranges</h2>
      <ul>
        {known.map(({ name, about, usual }) => (
          <li key={name}>
            {name}: {usual[system][0]} to {usual[system][1]} {unitFor(about, system)}
            <br />
            <span class="quiet">{usual.source}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Longer than this a formula is folded away: it is there to be copied, not to be read. */
const READABLE = 200;

function PlainFormula({ entry }: { entry: FunctionHelp }) {
  const { system } = usePane();
  const formulas = entry.spreadsheetAlone;
  const formula = formulas.any ?? formulas[system];
  if (formula === undefined) return null;
  const text = (
    <pre>
      <code>{formula}</code>
    </pre>
  );
  return (
    <section>
      <h2>In built-in functions</h2>
      {formula.length <= READABLE ? (
        text
      ) : (
        <details>
          <summary>Show the formula</summary>
          {text}
        </details>
      )}
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
