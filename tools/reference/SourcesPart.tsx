import { find } from "../../src/functions";
import type { PageFacts } from "./facts";
import { Words } from "./Words";

export function SourcesPart({ name, sources, seeAlso }: Pick<PageFacts, "name" | "sources" | "seeAlso">) {
  return (
    <>
      <section>
        <h2>{sources.length === 1 ? "Source" : "Sources"}</h2>
        <ul>
          {sources.map((source) => (
            <li>
              <Words text={source} on={name} />.
            </li>
          ))}
        </ul>
      </section>
      {seeAlso.length > 0 && (
        <section>
          <h2>See also</h2>
          <ul>
            {seeAlso.map((other) => (
              <li>
                <a href={`${other}.html`}>{other}</a>
                {find(other) !== undefined && <>: {find(other)?.summary}</>}
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
