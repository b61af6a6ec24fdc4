/** The same physical call in the other system of units, and the same physical answer back. */
import { fromMetric, isScalar, isTable, toMetric } from "../../src/kernel";
import type {
  Answer,
  ArgumentInput,
  CellAnswer,
  CellInput,
  Entry,
  QuantityName,
  Table,
  UnitSystem,
} from "../../src/kernel";
import { columnsOf } from "./mixedRanges";

type Rows = readonly (readonly CellInput[])[];

export function otherSystem(system: UnitSystem): UnitSystem {
  return system === "us" ? "metric" : "us";
}

export function convert(quantity: QuantityName, value: number, from: UnitSystem): number {
  const metric = toMetric(quantity, value, from);
  return fromMetric(quantity, metric, otherSystem(from));
}

function convertedCell(cell: CellInput, quantity: QuantityName | undefined, from: UnitSystem): CellInput {
  return typeof cell === "number" && quantity !== undefined ? convert(quantity, cell, from) : cell;
}

/** The arguments in the other system; what is not a number stays as it is. */
export function inOtherSystem(entry: Entry, args: readonly ArgumentInput[], from: UnitSystem): ArgumentInput[] {
  return Object.entries(entry.params).map(([name, param], index): ArgumentInput => {
    const input = args[index];
    if (name === "units") return otherSystem(from);
    if (param.kind === "cells") {
      const rows = input as Rows;
      const columns = columnsOf(entry, name, rows[0]?.length ?? 0);
      return rows.map((row) => row.map((cell, column) => convertedCell(cell, columns[column]?.quantity, from)));
    }
    const quantity = "quantity" in param ? param.quantity : undefined;
    if (Array.isArray(input))
      return (input as Rows).map((row) => row.map((cell) => convertedCell(cell, quantity, from)));
    return convertedCell(input as CellInput, quantity, from);
  });
}

function backCell(cell: CellAnswer, quantity: QuantityName | "text" | undefined, system: UnitSystem): CellAnswer {
  return typeof cell === "number" && quantity !== undefined && quantity !== "text"
    ? convert(quantity, cell, system)
    : cell;
}

/** An answer in the other system than the one it was given in, columns by the quantity they declare. */
export function answerInOtherSystem({ result }: Entry, answer: Answer, from: UnitSystem): Answer {
  if (isScalar(result)) return backCell(answer as CellAnswer, result.quantity, from);
  if (!isTable(result)) return answer;
  return (answer as Table).map((row) =>
    row.map((cell, column) => backCell(cell, result.table[column]?.quantity, from)),
  );
}
