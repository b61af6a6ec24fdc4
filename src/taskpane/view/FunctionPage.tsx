import { useEffect, useMemo, useState } from "preact/hooks";
import { workOut } from "../explain";
import { argumentsOf, exampleArguments, exampleTexts, fieldsOf, formulaOf, type FieldTexts } from "../fields";
import { takesUnits, type Argument, type FunctionHelp, type UnitSystem } from "../library";
import { HostFailure } from "../sheetHost";
import { AnswerView, Verdict } from "./AnswerView";
import { usePane } from "./context";
import { Details } from "./Details";
import { Field } from "./Field";
import { InsertPart } from "./InsertPart";
import { PlotView } from "./PlotView";
import { Steps } from "./Steps";

const TYPING_PAUSE = 150;
const UNITS = "units";

interface Read {
  readonly given: readonly Argument[];
  readonly failure: string;
}

/** The arguments behind the fields, read anew a moment after the last change; the example's while nothing is typed. */
function useArguments(entry: FunctionHelp, texts: FieldTexts | null): Read {
  const { host, system } = usePane();
  const example = useMemo(() => ({ given: exampleArguments(entry, system), failure: "" }), [entry, system]);
  const [read, setRead] = useState<Read>(example);
  useEffect(() => {
    if (texts === null) return undefined;
    let current = true;
    const settle = (found: Read): void => {
      if (current) setRead(found);
    };
    const timer = setTimeout(() => {
      const sheet = host.kind === "page" ? Promise.resolve("") : host.selection().then((selection) => selection.sheet);
      sheet
        .then((name) => argumentsOf(entry, texts, host, name))
        .then((given) => settle({ given, failure: "" }))
        .catch((error: unknown) => {
          const failure = error instanceof HostFailure ? error.message : "These cells could not be read.";
          settle({ given: [], failure });
        });
    }, TYPING_PAUSE);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [entry, texts, host]);
  return texts === null ? example : read;
}

/** A call's own word for its units is the choice that the whole pane follows. */
function withUnits(entry: FunctionHelp, texts: FieldTexts, system: UnitSystem): FieldTexts {
  return takesUnits(entry) ? { ...texts, [UNITS]: system } : texts;
}

/** What a form makes of its texts: the answer, and what is wrong or missing, field by field. */
function useForm(entry: FunctionHelp, typed: FieldTexts) {
  const { library, system } = usePane();
  const example = useMemo(() => exampleTexts(entry, system), [entry, system]);
  const isExample = Object.values(typed).every((text) => text.trim() === "");
  const texts = useMemo(
    () => (isExample ? example : withUnits(entry, typed, system)),
    [isExample, example, entry, typed, system],
  );
  const { given, failure } = useArguments(entry, isExample ? null : texts);
  const { answer, steps, error } = useMemo(() => workOut(library, entry.name, given), [library, entry, given]);
  const faults = useMemo(
    () => (isExample || failure !== "" ? [] : library.faults(entry.name, given)),
    [isExample, failure, library, entry, given],
  );
  const isFilled = (name: string): boolean => (texts[name] ?? "").trim() !== "";
  const errorAt = (key: string): string => {
    if (isExample || failure !== "" || !isFilled(key)) return "";
    return (faults.find(({ argument }) => argument === key) ?? (error?.argument === key ? error : null))?.message ?? "";
  };
  const isAtField = error !== null && entry.params.some(({ name }) => name === error.argument);
  return {
    example,
    isExample,
    texts,
    given,
    answer: failure === "" ? answer : null,
    steps: failure === "" ? steps : [],
    errorAt,
    missing: faults.flatMap(({ argument }) => (argument !== null && !isFilled(argument) ? [argument] : [])),
    general: failure || (error !== null && !isAtField ? error.message : ""),
  };
}

function Result({ entry, form }: { entry: FunctionHelp; form: ReturnType<typeof useForm> }) {
  const { library, system } = usePane();
  const { answer, general, missing, isExample } = form;
  return (
    <section aria-live="polite" class="result">
      <h2>{isExample ? "Answer for the example" : "Answer"}</h2>
      {answer !== null && <AnswerView entry={entry} answer={answer} system={system} />}
      {typeof answer === "number" && <Verdict verdict={library.verdict(entry.name, "", answer, system)} />}
      {general !== "" && <p class="look">{general}</p>}
      {answer === null && general === "" && (
        <p class="quiet">
          {missing.length > 0 ? `Still to fill in: ${missing.join(", ")}.` : "See the field that is marked."}
        </p>
      )}
    </section>
  );
}

export function FunctionPage({ entry }: { entry: FunctionHelp }) {
  const { library, system, onSystem } = usePane();
  const [typed, setTyped] = useState<FieldTexts>({});
  const form = useForm(entry, typed);
  const isUnits = (key: string): boolean => key === UNITS && takesUnits(entry);
  const change = (key: string, text: string): void => {
    if (isUnits(key)) onSystem(text as UnitSystem);
    else setTyped((before) => ({ ...before, [key]: text }));
  };
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
        {fieldsOf(entry, typed).map(({ key, parameter }) => (
          <Field
            key={key}
            id={key}
            parameter={parameter}
            text={isUnits(key) ? system : (typed[key] ?? "")}
            placeholder={form.example[key] ?? ""}
            error={form.errorAt(key)}
            onText={(text) => change(key, text)}
          />
        ))}
      </form>
      <Result entry={entry} form={form} />
      <InsertPart formula={formulaOf(entry, form.texts, library.NAMESPACE)} />
      {form.steps.length > 0 && (
        <section>
          <h2>Working</h2>
          <Steps steps={form.steps} system={system} />
        </section>
      )}
      <PlotView entry={entry} given={form.given} />
      <Details entry={entry} />
      <a href={`reference/${entry.name}.html`} target="_blank" rel="noopener">
        Reference page (new window)
      </a>
    </article>
  );
}
