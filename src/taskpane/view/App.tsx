import { useCallback, useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Library, UnitSystem } from "../library";
import { finderOf } from "../search";
import type { SheetHost } from "../sheetHost";
import { AboutPage } from "./AboutPage";
import { PaneContext, usePane } from "./context";
import { ExplainPage } from "./ExplainPage";
import { Fetched } from "./Fetched";
import { FindPage } from "./FindPage";
import { FunctionPage } from "./FunctionPage";

const EXPLAIN = "cell";
const ABOUT = "about";
const WORKBOOKS = "workbooks";

const fetchWorkbooksPage = () =>
  import(/* webpackChunkName: "workbooks" */ "./WorkbooksPage").then(({ WorkbooksPage }) => WorkbooksPage);

/** The part of the address behind #: a function's name, or one of the pane's own pages. */
function usePlace(): string {
  const read = (): string => decodeURIComponent(location.hash.slice(1));
  const [place, setPlace] = useState(read);
  useEffect(() => {
    const follow = (): void => setPlace(read());
    window.addEventListener("hashchange", follow);
    return () => window.removeEventListener("hashchange", follow);
  }, []);
  return place;
}

const KEPT_UNITS = "canyard.pane.units";

function keptSystem(): UnitSystem {
  try {
    return localStorage.getItem(KEPT_UNITS) === "metric" ? "metric" : "us";
  } catch {
    return "us";
  }
}

function useSystem(): [UnitSystem, (system: UnitSystem) => void] {
  const [system, setSystem] = useState<UnitSystem>(keptSystem);
  const keep = useCallback((chosen: UnitSystem): void => {
    setSystem(chosen);
    try {
      localStorage.setItem(KEPT_UNITS, chosen);
    } catch {
      // The choice then lasts as long as the pane.
    }
  }, []);
  return [system, keep];
}

function UnitsChoice() {
  const { system, onSystem } = usePane();
  return (
    <fieldset class="units">
      <legend>Units shown here</legend>
      {(["us", "metric"] as const).map((each) => (
        <label key={each}>
          <input
            type="radio"
            name="units-shown"
            value={each}
            checked={system === each}
            onChange={() => onSystem(each)}
          />{" "}
          {each}
        </label>
      ))}
    </fieldset>
  );
}

function Links({ place }: { place: string }) {
  const links = [
    ["", "Find"],
    [EXPLAIN, "This cell"],
    [WORKBOOKS, "Workbooks"],
    [ABOUT, "About"],
  ] as const;
  return (
    <nav aria-label="Help">
      {links.map(([target, text]) => (
        <a key={target} href={`#${target}`} aria-current={place === target ? "page" : undefined}>
          {text}
        </a>
      ))}
    </nav>
  );
}

/** A new page begins at its heading, for eyes and for screen readers; the first page leaves the focus where it is. */
function useFocusOnChange(place: string) {
  const main = useRef<HTMLElement>(null);
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return;
    }
    window.scrollTo(0, 0);
    const heading = main.current?.querySelector<HTMLElement>("h1");
    (place === "" ? main.current?.querySelector<HTMLElement>("#search") : heading)?.focus();
  }, [place]);
  return main;
}

export function App({ library, host }: { library: Library; host: SheetHost }) {
  const place = usePlace();
  const [system, onSystem] = useSystem();
  const [wanted, setWanted] = useState("");
  const finder = useMemo(() => finderOf(library.catalogue), [library]);
  const pane = useMemo(() => ({ library, finder, host, system, onSystem }), [library, finder, host, system, onSystem]);
  const main = useFocusOnChange(place);
  const entry = library.catalogue.find(({ name }) => name === place);
  return (
    <PaneContext.Provider value={pane}>
      <header>
        <p class="brand">Canyard</p>
        <Links place={place} />
        <UnitsChoice />
      </header>
      <main ref={main}>
        {entry !== undefined ? (
          <FunctionPage key={entry.name} entry={entry} />
        ) : place === EXPLAIN ? (
          <ExplainPage />
        ) : place === WORKBOOKS ? (
          <Fetched heading="Start from a workbook" fetch={fetchWorkbooksPage} />
        ) : place === ABOUT ? (
          <AboutPage />
        ) : (
          <FindPage wanted={wanted} onWanted={setWanted} />
        )}
      </main>
    </PaneContext.Provider>
  );
}
