/**
 * What units bring into a formula, as exact ratios in big numbers: made of the same definitions (an inch is 25.4 mm, a
 * gallon 231 cubic inches) as the catalogue's, but never rounded to a double.
 */
import { conversionUnits } from "../../src/functions/catalogue/teaching/conversionUnits";
import {
  dividedBy,
  fullNumber,
  quantities,
  toNumber,
  unitConstants,
  unitScales,
  type Entry,
  type QuantityName,
  type Rational,
  type UnitSystem,
} from "../../src/kernel";
import { metricFactor } from "../../src/kernel/units";
import { exactRatio, ONE, written, type BigNumber } from "./bigNumbers";

const SQUARES: Readonly<Record<string, keyof typeof unitScales>> = { in2: "in", cm2: "cm", mm2: "mm" };

/** One unit of a quantity in metres, kilograms and seconds; 1 where both systems count alike. */
function scale(quantity: QuantityName, system: UnitSystem): BigNumber {
  const unit = quantities[quantity][system];
  const side = SQUARES[unit];
  if (side !== undefined) return exactRatio(unitScales[side]).pow(2);
  const known = (unitScales as Readonly<Record<string, Rational>>)[unit];
  return known === undefined ? ONE : exactRatio(known);
}

function product(names: readonly QuantityName[], system: UnitSystem): BigNumber {
  return names.reduce((all, name) => all.times(scale(name, system)), ONE);
}

/** The unit constants of a function by their symbols. */
export function exactConstants(entry: Entry, system: UnitSystem): Map<string, BigNumber> {
  return new Map(
    Object.entries(entry.unitConstants ?? {}).map(([symbol, name]) => {
      const { constant, over, under } = unitConstants[name];
      return [symbol, exactRatio(constant).times(product(over, system)).dividedBy(product(under, system))];
    }),
  );
}

type Factors = ReadonlyMap<string, BigNumber>;

/** The factors by which steps convert to metric and back, by their text in a recorded formula. */
const conversionFactors: Factors = new Map(
  (Object.keys(quantities) as QuantityName[]).map((name) => [
    fullNumber(metricFactor(name)),
    scale(name, "us").dividedBy(scale(name, "metric")),
  ]),
);

/** The factors of CONVERT_UNIT, by their text: every pair of units of one kind. */
function namedFactors(): Factors {
  const found = new Map<string, BigNumber>();
  for (const from of conversionUnits) {
    for (const to of conversionUnits) {
      if (from.kind !== to.kind) continue;
      const factor = dividedBy(from.scale, to.scale);
      found.set(fullNumber(toNumber(factor)), exactRatio(factor));
    }
  }
  return found;
}

let named: Factors | undefined;

/** The exact number that a decimal of a formula stands for: of a conversion its ratio, else the decimal itself. */
export function exactNumber(entry: Entry, text: string): BigNumber {
  if (entry.name === "CONVERT_UNIT") {
    named ??= namedFactors();
    return named.get(text) ?? written(text);
  }
  return conversionFactors.get(text) ?? written(text);
}
