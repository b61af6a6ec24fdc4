import { cite, defineFunction, dividedBy, fullNumber, toNumber, type FunctionError, type Show } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import {
  ambiguity,
  conversionUnits,
  convertedElsewhere,
  nearestUnits,
  unitSpelt,
  type ConversionUnit,
  type UnitKind,
} from "./conversionUnits";
import { either } from "./lookUp";

const NEAREST_OFFERED = 5;

/** Kinds that a formula of its own leads from one to the other. */
const BETWEEN_KINDS: readonly (readonly [one: UnitKind, other: UnitKind, name: string])[] = [
  ["pressure", "length or depth", "TOTAL_DYNAMIC_HEAD"],
  ["volume", "length or depth", "WATER_DEPTH"],
  ["volume", "weight", "WATER_FROM_WEIGHT"],
  ["flow", "application rate", "APPLICATION_RATE"],
  ["weight in a volume", "alkalinity", "ACID_VOLUME"],
];

type Refuse = (argument: "from" | "to", value: unknown, itMust: string) => FunctionError;

function unitNamed(argument: "from" | "to", spelling: string, refuse: Refuse): ConversionUnit {
  const unclear = ambiguity(spelling);
  if (unclear !== undefined) throw refuse(argument, spelling, unclear);
  const unit = unitSpelt(spelling);
  if (unit !== undefined) return unit;
  const elsewhere = convertedElsewhere(spelling);
  if (elsewhere !== undefined) throw refuse(argument, spelling, `it must be a unit of this function; see ${elsewhere}`);
  const offered = either(nearestUnits(spelling, NEAREST_OFFERED));
  throw refuse(argument, spelling, `it must be a unit that is known; the nearest are ${offered}`);
}

function differentKinds(from: ConversionUnit, to: ConversionUnit, spelling: string, refuse: Refuse): FunctionError {
  const kinds = [from.kind, to.kind];
  const way = BETWEEN_KINDS.find(([one, other]) => kinds.includes(one) && kinds.includes(other));
  const seen = way === undefined ? "" : `; ${way[2]} leads from one to the other`;
  return refuse("to", spelling, `it must be a unit of ${from.kind}, as ${from.unit} is, and not of ${to.kind}${seen}`);
}

/** A reading of a thermometer, not a difference of two. */
function temperature(value: number, from: ConversionUnit, show: Show): number {
  return from.unit === "F"
    ? show("y = (x - 32) / 1.8", (value - 32) / 1.8, "as named", "A reading in C")
    : show("y = x * 1.8 + 32", value * 1.8 + 32, "as named", "A reading in F");
}

function one({ unit }: ConversionUnit): string {
  return /^\d/.test(unit) ? unit : `1 ${unit}`;
}

/** By a number of 1 or more, so that what people know by heart (25.4, 43560) stands in the working. */
function scaled(value: number, from: ConversionUnit, to: ConversionUnit, show: Show): number {
  const factor = toNumber(dividedBy(from.scale, to.scale));
  if (factor >= 1) {
    const words = `${one(from)} is ${fullNumber(factor)} ${to.unit}`;
    return show(`y = x * ${fullNumber(factor)}`, value * factor, "as named", words);
  }
  const divisor = toNumber(dividedBy(to.scale, from.scale));
  const words = `${one(to)} is ${fullNumber(divisor)} ${from.unit}`;
  return show(`y = x / ${fullNumber(divisor)}`, value / divisor, "as named", words);
}

/** The units of a kind with their other spellings, for the help. */
function spellings(kind: UnitKind): string {
  const units = conversionUnits.filter((unit) => unit.kind === kind);
  return units.map(({ unit, spellings: others }) => `${unit} (${others.join(", ")})`).join("; ");
}

const LISTED = [...new Set(conversionUnits.map(({ kind }) => kind))].filter((kind) => !kind.startsWith("price"));

export const convertUnit = defineFunction({
  name: "CONVERT_UNIT",
  group: "Teaching and audit",
  summary: "Number in another unit of the same kind: gallons in litres, psi in kPa, CCF in m3",
  formula: "y = x (size of the unit given) / (size of the unit wanted); C = (F - 32) / 1.8",
  source: [
    cite(
      "DEFINITION",
      "1 in = 25.4 mm, 1 US gal = 231 in3, 1 lb = 0.45359237 kg, g = 9.80665 m/s2, 1 acre = 43,560 ft2",
    ),
    cite("SP811", "factors for units, of which the exact ones are taken"),
    cite("IUPAC", "CaCO3 and HCO3 for alkalinity"),
  ],
  assumptions: [
    "Letters of either case, blanks, hyphens and full stops make no difference, and per is the same as /. ML, MG and ton stand for two things each and are refused.",
    "Gallons, quarts and fluid ounces are US ones unless imperial is written. A trade gallon is no unit: it is about 3 qt, and differs from maker to maker.",
    "oz is weight, fl oz is volume. F and C are readings of a thermometer: a difference of 10 C is 18 F, which this does not give.",
    "Pressure to head of water is no conversion of a unit: TOTAL_DYNAMIC_HEAD does it. EC is converted by CONVERT_EC.",
    "gal/ft2, L/m2 and m3/ha are depths of water. ppm is mg/L of whatever is weighed; of alkalinity it needs CaCO3 or HCO3 behind it.",
    "A price is written with per or a currency sign and / before any volume or weight: per 1000 gal, $/CCF, per lb.",
    ONE_CASE,
    ...LISTED.map((kind) => `Units of ${kind}, with other spellings: ${spellings(kind)}.`),
  ],
  params: {
    value: { quantity: "as named", symbol: "x", about: "The number to convert; 0 is a value, so leave no blank" },
    from: { kind: "text", about: "Unit that the number is in, such as gal, CCF, psi, mm, gal/h" },
    to: { kind: "text", about: "Unit wanted, of the same kind" },
  },
  result: { quantity: "as named", symbol: "y", about: "The number in the unit wanted" },
  examples: [
    {
      given: { value: 1, from: "gal", to: "L" },
      gives: 3.785411784,
      from: cite("DEFINITION", "231 in3 of 2.54^3 = 16.387064 mL"),
    },
    { given: { value: 68, from: "F", to: "C" }, gives: 20, from: cite("DEFINITION", "36 / 1.8") },
    {
      given: { value: 2, from: "CCF", to: "1000 gal" },
      gives: 1.4961038961038962,
      from: cite("ARITHMETIC", "200 ft3 x 1728 / 231 = 1,496.10 gal"),
    },
    {
      given: { value: 100, from: "hp", to: "kW" },
      gives: 74.6,
      within: 0.051,
      from: cite("PUMPING_COST_ARTICLE", "74.6 kW for 100 hp"),
    },
    {
      given: { value: 1, from: "imperial gallon", to: "L" },
      gives: 4.546,
      within: 0.0005,
      from: cite("NURSERY_LIST", "4.546 L"),
    },
  ],
  mistakes: [
    { slip: "It was multiplied, not divided, or the other way round", answer: inverted },
    { slip: "The number was kept and only the unit was changed", answer: ({ value }) => value },
    {
      slip: "The imperial gallon was taken for the US one",
      answer: ({ from, to }, _constants, right) => {
        if (isUsGallon(from) === isUsGallon(to)) return NaN;
        return isUsGallon(from) ? right * IMPERIAL : right / IMPERIAL;
      },
    },
    {
      slip: "32 was added or taken off, and the rest left out",
      answer: ({ value, from }) => (unitSpelt(from)?.kind === "temperature" ? shifted(value, from) : NaN),
    },
  ],
  seeAlso: ["CONVERT_EC", "ELEMENT_FROM_OXIDE", "TOTAL_DYNAMIC_HEAD", "UNIT_LABEL"],
  compute({ value, from, to }, show, { refuse }) {
    const given = unitNamed("from", from, refuse);
    const wanted = unitNamed("to", to, refuse);
    if (given.kind !== wanted.kind) throw differentKinds(given, wanted, to, refuse);
    if (given.unit === wanted.unit) return show("y = x", value, "as named", "The same unit");
    if (given.kind === "temperature") return temperature(value, given, show);
    return scaled(value, given, wanted, show);
  },
});

/** An imperial gallon, 4.54609 L, in US gallons of 3.785411784 L. */
const IMPERIAL = 4.54609 / 3.785411784;

function isUsGallon(spelling: string): boolean {
  return unitSpelt(spelling)?.unit === "gal";
}

function inverted({ value, from }: { value: number; from: string }, _constants: unknown, right: number): number {
  return unitSpelt(from)?.kind === "temperature" ? NaN : (value * value) / right;
}

function shifted(value: number, from: string): number {
  return unitSpelt(from)?.unit === "F" ? value - 32 : value + 32;
}
