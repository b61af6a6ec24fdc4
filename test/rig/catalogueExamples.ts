import { catalogue } from "../../src/functions/catalogue";
import { inOrder, isScalar, shortNumber } from "../../src/kernel";
import type { Answer, ArgumentInput, CellInput, Entry, Table } from "../../src/kernel";

export interface CatalogueExample {
  /** As it would stand in a sheet: `RUN_MINUTES(0.275, 6) = 2.75`. */
  readonly title: string;
  readonly entry: Entry;
  readonly args: readonly ArgumentInput[];
  readonly gives: number | string | Table;
  readonly within: number | undefined;
}

/** Every worked example of the catalogue. */
export const catalogueExamples: readonly CatalogueExample[] = catalogue.flatMap((entry) =>
  entry.examples.map(({ given, gives, within }) => {
    const args = inOrder(entry, given);
    return { title: `${callText(entry, args)} = ${answerText(gives)}`, entry, args, gives, within };
  }),
);

/** The examples of functions that answer with one number. */
export const scalarExamples = catalogueExamples.filter(({ entry }) => isScalar(entry.result));

/** A call as it would stand in a sheet. */
export function callText(entry: Entry, args: readonly ArgumentInput[]): string {
  const last = args.reduce<number>((found, input, index) => (input === undefined ? found : index), -1);
  return `${entry.name}(${args
    .slice(0, last + 1)
    .map(inputText)
    .join(", ")})`;
}

function inputText(input: ArgumentInput): string {
  if (!Array.isArray(input)) return cellText(input as CellInput);
  return `{${(input as readonly (readonly CellInput[])[]).map((row) => row.map(cellText).join(", ")).join("; ")}}`;
}

function cellText(cell: unknown): string {
  if (typeof cell === "number") return shortNumber(cell);
  if (typeof cell === "string") return `"${cell}"`;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return "";
}

function answerText(answer: Answer): string {
  if (!Array.isArray(answer)) return cellText(answer);
  const rows = answer as Table;
  if (rows.length === 1 && rows[0]?.length === 1) return cellText(rows[0][0]);
  return `${rows.length} x ${rows[0]?.length ?? 0} cells`;
}
