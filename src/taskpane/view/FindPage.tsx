import { useMemo, useRef, useState } from "preact/hooks";
import type { FunctionHelp } from "../library";
import { usePane } from "./context";

function groupsOf(catalogue: readonly FunctionHelp[]): readonly (readonly [string, readonly FunctionHelp[]])[] {
  const names = [...new Set(catalogue.map(({ group }) => group))];
  return names.map((name) => [name, catalogue.filter(({ group }) => group === name)]);
}

function Entry({ entry }: { entry: FunctionHelp }) {
  return (
    <li>
      <a class="entry" href={`#${entry.name}`}>
        <strong>{entry.name}</strong> <span>{entry.summary}</span>
      </a>
    </li>
  );
}

/** Arrow keys walk from the field through the results; Escape comes back to the field and empties it. */
function useArrowKeys(clear: () => void) {
  const field = useRef<HTMLInputElement>(null);
  const results = useRef<HTMLDivElement>(null);
  const links = (): HTMLElement[] => [...(results.current?.querySelectorAll<HTMLElement>("a.entry") ?? [])];
  const onKeyDown = (event: KeyboardEvent): void => {
    const all = links();
    const here = all.indexOf(document.activeElement as HTMLElement);
    if (event.key === "ArrowDown") all[Math.min(here + 1, all.length - 1)]?.focus();
    else if (event.key === "ArrowUp") (here > 0 ? all[here - 1] : field.current)?.focus();
    else if (event.key === "Enter" && document.activeElement === field.current) all[0]?.click();
    else if (event.key === "Escape") {
      clear();
      field.current?.focus();
    } else return;
    event.preventDefault();
  };
  return { field, results, onKeyDown };
}

export function FindPage({ wanted, onWanted }: { wanted: string; onWanted: (wanted: string) => void }) {
  const { library, finder } = usePane();
  const [asked, setAsked] = useState(wanted);
  const want = (text: string): void => {
    setAsked(text);
    onWanted(text);
  };
  const { field, results, onKeyDown } = useArrowKeys(() => want(""));
  const found = useMemo(() => (asked.trim() === "" ? null : finder.find(asked)), [asked, finder]);
  const groups = useMemo(() => groupsOf(library.catalogue), [library]);
  const count = found?.length ?? library.catalogue.length;
  return (
    <div onKeyDown={onKeyDown}>
      <h1>Find a function</h1>
      <label for="search">What do you want to know?</label>
      <input
        id="search"
        ref={field}
        type="search"
        autocomplete="off"
        spellcheck={false}
        value={asked}
        placeholder="how long do I run"
        aria-describedby="found"
        onInput={(event) => want(event.currentTarget.value)}
      />
      <p id="found" class="quiet" role="status">
        {count === 1 ? "1 function" : `${count} functions`}
        {found === null ? ", in the order of the job" : ", the likeliest first"}
      </p>
      <div ref={results}>
        {found !== null ? (
          <ul class="entries">
            {found.map((entry) => (
              <Entry key={entry.name} entry={entry} />
            ))}
          </ul>
        ) : (
          groups.map(([group, entries]) => (
            <section key={group}>
              <h2>{group}</h2>
              <ul class="entries">
                {entries.map((entry) => (
                  <Entry key={entry.name} entry={entry} />
                ))}
              </ul>
            </section>
          ))
        )}
      </div>
      {found?.length === 0 && <p>Nothing found. Try a plainer word, such as pot, minutes, salt, pump or cost.</p>}
    </div>
  );
}
