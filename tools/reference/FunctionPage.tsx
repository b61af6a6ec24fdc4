import { AnswerPart } from "./AnswerPart";
import { ArgumentsPart } from "./ArgumentsPart";
import { Breakable } from "./Breakable";
import { ExamplesPart } from "./ExamplesPart";
import type { PageFacts } from "./facts";
import { pageText } from "./Frame";
import { MistakesPart } from "./MistakesPart";
import { PlainPart } from "./PlainPart";
import { groupPlace } from "./places";
import { SourcesPart } from "./SourcesPart";
import { UsualPart } from "./UsualPart";
import { Words } from "./Words";
import { WorkingPart } from "./WorkingPart";

/** The pages before and after, in the order of the job. */
export interface Place {
  readonly previous: string | undefined;
  readonly next: string | undefined;
}

function Head({ facts }: { facts: PageFacts }) {
  const { name, group, summary, questions, caution, call, formula, takesUnits } = facts;
  return (
    <>
      <nav class="path" aria-label="You are here">
        <a href="index.html">All functions</a> / <a href={`index.html#${groupPlace(group)}`}>{group}</a>
      </nav>
      <h1>
        <Breakable text={name} />
      </h1>
      <p class="lead">
        <Words text={summary} on={name} />.
      </p>
      {questions.length > 0 && <p class="quiet">People ask: {questions.join("; ")}.</p>}
      {caution !== "" && (
        <p class="caution">
          <strong>Caution:</strong> <Words text={caution} on={name} />
        </p>
      )}
      <pre class="call">
        <code>
          <Breakable text={call} />
        </code>
      </pre>
      <p>
        Formula: <code>{formula}</code>
      </p>
      {takesUnits && (
        <p class="quiet">
          The word for the units converts nothing in the sheet: it says in which units the numbers of this call are.
        </p>
      )}
    </>
  );
}

function Turn({ previous, next }: Place) {
  return (
    <nav class="turn" aria-label="In the order of the job">
      {previous !== undefined && (
        <a rel="prev" href={`${previous}.html`}>
          Before: {previous}
        </a>
      )}
      {next !== undefined && (
        <a rel="next" class="next" href={`${next}.html`}>
          Next: {next}
        </a>
      )}
    </nav>
  );
}

export function functionPage(facts: PageFacts, { previous, next }: Place): string {
  const { name, summary, args, examples, working, assumptions, mistakes, usual, plain } = facts;
  return pageText({
    title: `${name} - Canyard reference`,
    description: `${summary}.`,
    help: `../help.html#${name}`,
    children: (
      <>
        <article>
          <Head facts={facts} />
          <ArgumentsPart name={name} args={args} />
          <AnswerPart {...facts} />
          <ExamplesPart name={name} examples={examples} />
          <WorkingPart formula={examples[0]?.formula ?? ""} steps={working} />
          {assumptions.length > 0 && (
            <section>
              <h2>What it takes for granted</h2>
              <ul>
                {assumptions.map((text) => (
                  <li>
                    <Words text={text} on={name} />
                  </li>
                ))}
              </ul>
            </section>
          )}
          <MistakesPart name={name} mistakes={mistakes} />
          <UsualPart name={name} usual={usual} />
          <PlainPart plain={plain} />
          <SourcesPart {...facts} />
        </article>
        <Turn previous={previous} next={next} />
      </>
    ),
  });
}
