import { useEffect, useMemo, useState } from "preact/hooks";
import { workOut } from "../explain";
import { argumentsOf, exampleArguments, exampleTexts, formulaOf, type FieldTexts } from "../fields";
import { takesUnits, unitFor, type Argument, type FunctionHelp, type Parameter } from "../library";
import { HostFailure } from "../sheetHost";
import { AnswerView, Verdict } from "./AnswerView";
import { usePane } from "./context";
import { CopyButton } from "./CopyButton";
import { InsertPart } from "./InsertPart";
import { PlotView } from "./PlotView";
import { Steps } from "./Steps";

const TYPING_PAUSE = 150;

/** The arguments behind the fields: read anew a moment after the last change. */
function useArguments(entry: FunctionHelp, texts: FieldTexts): { given: readonly Argument[]; failure: string } {
  const { host } = usePane();
  const [state, setState] = useState<{ given: readonly Argument[]; failure: string }>({ given: [], failure: "" });
  useEffect(() => {
    let current = true;
    const timer = setTimeout(() => {
      const sheet = host.kind === "page" ? Promise.resolve("") : host.selection().then((selection) => selection.sheet);
      sheet
        .then((name) => argumentsOf(entry, texts, host, name))
        .then((given) => current && setState({ given, failure: "" }))
        .catch((error: unknown) => {
          const failure = error instanceof HostFailure ? error.message : "These cells could not be read.";
          if (current) setState({ given: [], failure });
        });
    }, TYPING_PAUSE);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [entry, texts, host]);
  return state;
}

interface FieldProps {
  readonly parameter: Parameter;
  readonly text: string;
  readonly placeholder: string;
  readonly error: string;
  readonly onText: (text: string) => void;
}

function useSelectedCells(onText: (text: string) => void): { take: () => void; failure: string } {
  const { host } = usePane();
  const [failure, setFailure] = useState("");
  const take = (): void => {
    host.selection().then(
      ({ sheet, range }) => {
        setFailure("");
        onText(/^[A-Za-z_]\w*$/.test(sheet) ? `${sheet}!${range}` : `'${sheet.replace(/'/g, "''")}'!${range}`);
      },
      (error: Error) => setFailure(error.message),
    );
  };
  return { take, failure };
}

function Field({ parameter, text, placeholder, error, onText }: FieldProps) {
  const { host, system } = usePane();
  const { name, about, optional, words, shape } = parameter;
  const { take, failure } = useSelectedCells(onText);
  const unit = unitFor(parameter, system);
  const described = `${name}-about${error === "" && failure === "" ? "" : ` ${name}-error`}`;
  const common = { id: name, "aria-describedby": described, "aria-invalid": error !== "" };
  return (
    <div class="field">
      <label for={name}>
        {name}
        {optional && <span class="quiet"> may be left out</span>}
      </label>
      <div class="row">
        {words === undefined ? (
          <input
            {...common}
            type="text"
            autocomplete="off"
            spellcheck={false}
            value={text}
            placeholder={placeholder}
            onInput={(event) => onText(event.currentTarget.value)}
          />
        ) : (
          <select {...common} value={text} onChange={(event) => onText(event.currentTarget.value)}>
            <option value="">{optional ? "left out" : "choose"}</option>
            {words.map((word) => (
              <option key={word}>{word}</option>
            ))}
          </select>
        )}
        {unit !== "" && <span class="unit">{unit}</span>}
        {host.kind !== "page" && words === undefined && (
          <button
            type="button"
            class="small"
            onClick={take}
            aria-label={`Use the selected ${shape === "range" ? "cells" : "cell"} for ${name}`}
          >
            Use selected {shape === "range" ? "cells" : "cell"}
          </button>
        )}
      </div>
      <p id={`${name}-about`} class="quiet about">
        {about}
      </p>
      {(error !== "" || failure !== "") && (
        <p id={`${name}-error`} class="look">
          {error || failure}
        </p>
      )}
    </div>
  );
}

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

function Details({ entry }: { entry: FunctionHelp }) {
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

function withUnits(entry: FunctionHelp, texts: FieldTexts, system: string): FieldTexts {
  return takesUnits(entry) ? { ...texts, units: texts["units"] || system } : texts;
}

export function FunctionPage({ entry }: { entry: FunctionHelp }) {
  const { library, system } = usePane();
  const [typed, setTyped] = useState<FieldTexts>({});
  useEffect(() => setTyped({}), [entry]);
  const isExample = Object.entries(typed).every(([name, text]) => text.trim() === "" || name === "units");
  const placeholders = useMemo(() => exampleTexts(entry, system), [entry, system]);
  const texts = useMemo(
    () => (isExample ? placeholders : withUnits(entry, typed, system)),
    [isExample, placeholders, entry, typed, system],
  );
  const read = useArguments(entry, texts);
  const given = useMemo(
    () => (isExample ? exampleArguments(entry, system) : read.given),
    [isExample, entry, system, read.given],
  );
  const outcome = useMemo(() => workOut(library, entry.name, given), [library, entry, given]);
  const isFilled = (name: string): boolean => (texts[name] ?? "").trim() !== "";
  const faults = useMemo(
    () => (isExample ? [] : library.faults(entry.name, given)),
    [isExample, library, entry, given],
  );
  const { error } = outcome;
  const errorFor = (name: string): string => {
    const fault = faults.find(({ argument }) => argument === name) ?? (error?.argument === name ? error : undefined);
    return isExample || fault === undefined || !isFilled(name) ? "" : fault.message;
  };
  const missing = faults.flatMap(({ argument }) => (argument !== null && !isFilled(argument) ? [argument] : []));
  const atField = error !== null && entry.params.some(({ name }) => name === error.argument);
  const general = read.failure || (error !== null && !atField ? error.message : "");
  const answer = outcome.answer;
  return (
    <article>
      <h1 tabIndex={-1}>{entry.name}</h1>
      <p class="lead">{entry.summary}.</p>
      {entry.caution !== "" && (
        <p class="caution">
          <strong>Caution:</strong> {entry.caution}
        </p>
      )}
      <form onSubmit={(event) => event.preventDefault()}>
        {entry.params.map((parameter) => (
          <Field
            key={`${entry.name} ${parameter.name}`}
            parameter={parameter}
            text={typed[parameter.name] ?? ""}
            placeholder={placeholders[parameter.name] ?? ""}
            error={errorFor(parameter.name)}
            onText={(text) => setTyped((before) => ({ ...before, [parameter.name]: text }))}
          />
        ))}
      </form>
      <section aria-live="polite" class="result">
        <h2>{isExample ? "Answer with the example's numbers" : "Answer"}</h2>
        {answer !== null && <AnswerView answer={answer} unit={unitFor(entry.result, system)} />}
        {typeof answer === "number" && <Verdict verdict={library.verdict(entry.name, "", answer, system)} />}
        {general !== "" && <p class="look">{general}</p>}
        {answer === null && general === "" && (
          <p class="quiet">
            {missing.length > 0 ? `Still to fill in: ${missing.join(", ")}.` : "See the field that is marked."}
          </p>
        )}
      </section>
      <InsertPart key={`${entry.name} insert`} formula={formulaOf(entry, texts, library.NAMESPACE)} />
      {outcome.steps.length > 0 && (
        <section>
          <h2>Working</h2>
          <Steps steps={outcome.steps} system={system} />
        </section>
      )}
      <PlotView key={`${entry.name} plot`} entry={entry} given={given} />
      <Details entry={entry} />
    </article>
  );
}
