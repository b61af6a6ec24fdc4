import type { ErrorWithText, Expected } from "./table";

/** What came out of a host, in the table's terms. */
export type Outcome =
  | { readonly value: unknown }
  | { readonly table: readonly (readonly unknown[])[] }
  | { readonly code: string; readonly message: string };

const CLOSE = 1e-12;

function expectCell(found: unknown, wanted: number | string | ErrorWithText, dialect: Dialect): void {
  if (typeof wanted === "object") expectError(found, wanted, dialect);
  else if (typeof wanted === "string") expect(found).toBe(wanted);
  else expect(Math.abs((found as number) - wanted)).toBeLessThanOrEqual(CLOSE * Math.max(1, Math.abs(wanted)));
}

/** How a host writes "#VALUE!", and "#N/A", where it has no such error of its own. */
export interface Dialect {
  readonly valueError: string;
  readonly noAnswer?: string;
}

function expectError(found: unknown, { code, message }: ErrorWithText, dialect: Dialect): void {
  const { valueError, noAnswer = "#N/A" } = dialect;
  expect(found).toEqual({ code: code === "#VALUE!" ? valueError : noAnswer, message });
}

export function expectOutcome(outcome: Outcome, wanted: Expected, dialect: Dialect): void {
  if ("value" in wanted) {
    expect(outcome).toHaveProperty("value");
    expectCell((outcome as { value: unknown }).value, wanted.value, dialect);
  } else if ("table" in wanted) {
    const { table } = outcome as { table: readonly (readonly unknown[])[] };
    expect(table.map((row) => row.length)).toEqual(wanted.table.map((row) => row.length));
    wanted.table.forEach((row, at) => row.forEach((cell, column) => expectCell(table[at]?.[column], cell, dialect)));
  } else if ("passed" in wanted) {
    expect(outcome).toMatchObject({ code: wanted.passed });
  } else {
    expectError(outcome, wanted, dialect);
  }
}
