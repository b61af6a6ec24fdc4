import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Library, UnitSystem } from "../library";
import type { Finder } from "../search";
import type { SheetHost } from "../sheetHost";

/** What every part of the pane works with. */
export interface Pane {
  readonly library: Library;
  readonly finder: Finder;
  readonly host: SheetHost;
  /** The units that the pane shows and inserts. */
  readonly system: UnitSystem;
  readonly onSystem: (system: UnitSystem) => void;
}

export const PaneContext = createContext<Pane | null>(null);

export function usePane(): Pane {
  const pane = useContext(PaneContext);
  if (pane === null) throw new Error("this part stands outside of the pane");
  return pane;
}
