import type { FunctionHelp } from "../../src/functions";
import { pageText } from "./Frame";
import { groupPlace } from "./places";

const TITLE = "Functions for irrigation in container nurseries and greenhouses";

function Groups({ groups }: { groups: readonly string[] }) {
  return (
    <nav aria-label="Groups, in the order of the job">
      <ol class="groups">
        {groups.map((group) => (
          <li>
            <a href={`#${groupPlace(group)}`}>{group}</a>
          </li>
        ))}
      </ol>
    </nav>
  );
}

function Group({ group, entries }: { group: string; entries: readonly FunctionHelp[] }) {
  return (
    <section>
      <h2 id={groupPlace(group)}>{group}</h2>
      <dl class="functions">
        {entries.map(({ name, summary, questions }) => (
          <div>
            <dt>
              <a href={`${name}.html`}>{name}</a>
            </dt>
            <dd>
              {summary}.{questions.length > 0 && <span class="quiet"> People ask: {questions.join("; ")}.</span>}
            </dd>
          </div>
        ))}
      </dl>
    </section>
  );
}

function ByName({ names }: { names: readonly string[] }) {
  return (
    <section>
      <h2 id="by-name">All by name</h2>
      <ul class="names">
        {[...names].sort().map((name) => (
          <li>
            <a href={`${name}.html`}>{name}</a>
          </li>
        ))}
      </ul>
    </section>
  );
}

export function indexPage(catalogue: readonly FunctionHelp[]): string {
  const groups = [...new Set(catalogue.map(({ group }) => group))];
  return pageText({
    title: "Canyard reference",
    description: `${catalogue.length} cell functions: ${TITLE}.`,
    help: "../help.html",
    children: (
      <>
        <h1>{TITLE}</h1>
        <p class="lead">
          {catalogue.length} functions of a spreadsheet, in the order of the job. In a cell each has the prefix{" "}
          <code>CANYARD.</code>, in Google Sheets <code>CANYARD_</code>.
        </p>
        <Groups groups={groups} />
        <p>
          Or <a href="#by-name">all by name</a>.
        </p>
        {groups.map((group) => (
          <Group group={group} entries={catalogue.filter((entry) => entry.group === group)} />
        ))}
        <ByName names={catalogue.map(({ name }) => name)} />
      </>
    ),
  });
}
