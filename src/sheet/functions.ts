import type * as Bundle from "../functions";

/** The functions bundle, which a script before this one puts on the page. */
export type Functions = typeof Bundle;

export type FunctionHelp = Functions["catalogue"][number];
export type Parameter = FunctionHelp["params"][number];
export type Given = Parameters<Functions["call"]>[1][number];
export type Answer = ReturnType<Functions["call"]>;

declare global {
  interface Window {
    readonly canyard?: Functions;
  }
}
