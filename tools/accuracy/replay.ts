/** The recorded steps of a call worked once more, each resting on the big numbers before it and on no double. */
import { fullNumber, type Entry, type Step, type Working } from "../../src/kernel";
import { exactly } from "./bigNumbers";
import type { Decisions } from "./decisions";
import { exactConstants, exactNumber } from "./exactUnits";
import { worked } from "./formula";
import { constant, input, type Traced } from "./traced";

type Known = Map<string, Traced | readonly Traced[]>;

export interface Replayed {
  readonly step: Step;
  readonly big: Traced;
}

/** Counts and days are whole and exact: nobody means 12.0000001 pots. They are no inputs that move. */
function isExact(entry: Entry, symbol: string): boolean {
  return Object.values(entry.params).some(
    (param) =>
      "symbol" in param &&
      param.symbol === symbol &&
      (("whole" in param && param.whole === true) || param.quantity === "date"),
  );
}

/** Arguments whose cells stand as numbers in the formulas, since a formula cannot count through a range. */
const WRITTEN_ARGUMENTS: Readonly<Record<string, readonly string[]>> = {
  WATER_COST: ["tier_limits", "tier_prices"],
  WATER_AFTER_SAVINGS: ["savings"],
};

/** The inputs of a call by their symbols, and those that formulas hold as numbers, by their text. */
class Inputs {
  readonly known: Known = new Map();
  readonly written = new Map<string, Traced>();
  private count = 0;

  constructor(entry: Entry, { values, system, given }: Working) {
    const constants = exactConstants(entry, system ?? "metric");
    for (const [symbol, value] of values) {
      const unit = constants.get(symbol);
      const numbers = [value].flat();
      if (unit !== undefined) this.known.set(symbol, constant(unit));
      else if (!numbers.every(Number.isFinite)) continue;
      else if (isExact(entry, symbol))
        this.known.set(
          symbol,
          numbers.map((number) => constant(exactly(number))),
        );
      else
        this.known.set(
          symbol,
          numbers.map((number) => this.moving(number)),
        );
    }
    for (const name of WRITTEN_ARGUMENTS[entry.name] ?? []) {
      for (const cell of given[name] as unknown as readonly unknown[]) {
        if (typeof cell === "number") this.written.set(fullNumber(cell), this.moving(cell));
      }
    }
  }

  moving(number: number): Traced {
    return input(exactly(number), this.count++);
  }
}

/**
 * Steps without a formula are taken as the call recorded them, as inputs of their own; those that recorded no number but
 * what is wrong with a row stay unknown, and so do ranges with such a cell.
 */
export function replay(entry: Entry, working: Working, decisions: Decisions): Replayed[] {
  const inputs = new Inputs(entry, working);
  const { known, written } = inputs;
  const meanings = {
    symbol: (symbol: string) => known.get(symbol) ?? fail(`${entry.name}: a formula uses ${symbol}, which is unknown`),
    number: (text: string) => written.get(text) ?? constant(exactNumber(entry, text)),
  };
  return working.steps.flatMap((step) => {
    known.delete(step.symbol);
    if (!Number.isFinite(step.value)) return [];
    const big = step.formula === "" ? inputs.moving(step.value) : worked(step.formula, meanings, decisions);
    known.set(step.symbol, big);
    return [{ step, big }];
  });
}

function fail(message: string): never {
  throw new Error(message);
}
