/** What the arguments of a call stand for: read from the formula itself, from calls worked before, or from the sheet. */
import { constantRows, simpleValue, type CallArgument } from "./formula";
import type { Answer } from "./library";
import { HostFailure, type CellFound, type Rows, type SheetHost } from "./sheetHost";

type Scalar = number | string | boolean;

export type Resolved =
  | { readonly kind: "cells"; readonly rows: Rows }
  | { readonly kind: "left out" }
  /** Why, in a sentence of the host; "" where only the sheet can work it out. */
  | { readonly kind: "unresolved"; readonly reason: string };

/** In a sum an empty cell counts as 0. */
function scalarIn(rows: Rows | null): Scalar | undefined {
  const cells = rows?.flat() ?? [];
  if (cells.length !== 1) return undefined;
  const [cell] = cells;
  if (cell === null) return 0;
  return typeof cell === "object" ? undefined : cell;
}

export class Resolver {
  private readonly answers = new Map<string, Rows>();

  constructor(
    private readonly host: SheetHost,
    private readonly sheet: string,
  ) {}

  /** What a call gave, for the call around it. */
  remember(text: string, answer: Answer | { readonly code: string; readonly message: string }): void {
    this.answers.set(text, Array.isArray(answer) ? (answer as Rows) : [[answer as CellFound]]);
  }

  async resolve(argument: CallArgument): Promise<Resolved> {
    if (argument.node === null || argument.text === "") return { kind: "left out" };
    try {
      const rows = constantRows(argument) ?? (await this.rowsOf(argument.text));
      if (rows !== null) return { kind: "cells", rows };
      const value = await this.sum(argument);
      return value === undefined ? { kind: "unresolved", reason: "" } : { kind: "cells", rows: [[value]] };
    } catch (error) {
      if (error instanceof HostFailure) return { kind: "unresolved", reason: error.message };
      throw error;
    }
  }

  private async rowsOf(text: string): Promise<Rows | null> {
    return this.answers.get(text) ?? this.host.evaluate(text, this.sheet);
  }

  /** Operators on cells, where the host cannot work out an expression by itself. */
  private async sum(argument: CallArgument): Promise<Scalar | undefined> {
    const wanted = new Set<string>();
    simpleValue(argument, (text) => (wanted.add(text), 1));
    const cells = new Map<string, Scalar | undefined>();
    for (const text of wanted) {
      if (text !== argument.text) cells.set(text, scalarIn(await this.rowsOf(text)));
    }
    return simpleValue(argument, (text) => cells.get(text));
  }
}
