import fc from "fast-check";
import psychrolib from "psychrolib";
import { conversionUnits, type ConversionUnit } from "../../../src/functions/catalogue/teaching/conversionUnits";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { inIronCalc, numberAt } from "../../rig/plainSheet";
import { quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

function converted(value: number, from: string, to: string): number {
  return answerOf("CONVERT_UNIT", { value, from, to });
}

function refused(from: string, to: string): string {
  return refusalOf("CONVERT_UNIT", { value: 1, from, to }).message;
}

describe(published("CONVERT_UNIT"), () => {
  test.each([
    ["W/m2", "MJ/m2/day", 0.0864, 1e-9, "FAO-56 Table 3"],
    ["cal/cm2/day", "MJ/m2/day", 0.041868, 1e-9, "FAO-56 Table 3"],
    ["J/cm2/day", "MJ/m2/day", 0.01, 1e-12, "FAO-56 Table 3"],
    ["m3/ha/day", "mm/day", 0.1, 1e-12, "FAO-56 Table 3 / Annex 1"],
    ["L/s/ha", "mm/day", 8.64, 1e-9, "FAO-56 Table 3 / Annex 1"],
    ["km/day", "m/s", 0.01157, 0.000006, "FAO-56 Annex 1"],
    ["imperial gallon", "L", 4.546, 0.0002 * 4.546, "note on a mailing list on pot sizes"],
  ])("1 %s is %s %d (within %d; %s)", (from, to, expected, within) => {
    expectClose(converted(1, from, to), expected, 0, within);
  });

  test("a trade gallon taken as 3 US quarts is 2.839 L (public reference pages)", () => {
    expectClose(converted(3, "qt", "L"), 2.839, 0.0002);
  });

  test("100 hp is 74.6 kW (trade article on pumping cost)", () => {
    expectClose(converted(100, "hp", "kW"), 74.6, 0, 0.051);
  });
});

/** How mathjs writes a unit: so many of an expression of its own; by kind where a word has two meanings. */
const IN_MATHJS: Readonly<Record<string, readonly [count: number, expression: string]>> = {
  in: [1, "in"],
  cm: [1, "cm"],
  mm: [1, "mm"],
  ft: [1, "ft"],
  m: [1, "m"],
  yd: [1, "yd"],
  mile: [1, "mi"],
  km: [1, "km"],
  "gal/ft2": [1, "gallon / ft^2"],
  "L/m2": [1, "L / m^2"],
  "m3/ha": [1, "m^3 / hectare"],
  ft2: [1, "ft^2"],
  m2: [1, "m^2"],
  acre: [1, "acre"],
  hectare: [1, "hectare"],
  in2: [1, "in^2"],
  cm2: [1, "cm^2"],
  yd2: [1, "yd^2"],
  gal: [1, "gallon"],
  L: [1, "L"],
  mL: [0.001, "L"],
  m3: [1, "m^3"],
  "1000 gal": [1000, "gallon"],
  CCF: [100, "ft^3"],
  "acre-inch": [1, "acre in"],
  "acre-foot": [1, "acre ft"],
  "fl oz": [1, "fluidounce"],
  pt: [1, "pint"],
  qt: [1, "quart"],
  in3: [1, "in^3"],
  ft3: [1, "ft^3"],
  yd3: [1, "yd^3"],
  "gal/h": [1, "gallon / hour"],
  "L/h": [1, "L / hour"],
  "gal/min": [1, "gallon / minute"],
  "L/min": [1, "L / minute"],
  "gal/day": [1, "gallon / day"],
  "L/s": [1, "L / s"],
  "mL/s": [0.001, "L / s"],
  "mL/min": [0.001, "L / minute"],
  "fl oz/min": [1, "fluidounce / minute"],
  "m3/h": [1, "m^3 / hour"],
  "m3/day": [1, "m^3 / day"],
  "ft3/s": [1, "ft^3 / s"],
  "acre-inch/h": [1, "acre in / hour"],
  "in/h": [1, "in / hour"],
  "mm/h": [1, "mm / hour"],
  "cm/h": [1, "cm / hour"],
  "in/day": [1, "in / day"],
  "mm/day": [1, "mm / day"],
  "in/week": [1, "in / week"],
  "mm/week": [1, "mm / week"],
  "gal/min/acre": [1, "gallon / minute / acre"],
  "L/s/ha": [1, "L / s / hectare"],
  "m3/ha/day": [1, "m^3 / hectare / day"],
  psi: [1, "psi"],
  kPa: [1, "kPa"],
  bar: [1, "bar"],
  cbar: [0.01, "bar"],
  hp: [1, "hp"],
  kW: [1, "kW"],
  W: [1, "W"],
  kWh: [1, "kW hour"],
  "hp h": [1, "hp hour"],
  MJ: [1, "MJ"],
  lb: [1, "lbm"],
  kg: [1, "kg"],
  g: [1, "g"],
  mg: [1, "mg"],
  oz: [1, "oz"],
  "short ton": [2000, "lbm"],
  tonne: [1, "tonne"],
  mph: [1, "mi / hour"],
  "m/s": [1, "m / s"],
  "ft/min": [1, "ft / minute"],
  "m/min": [1, "m / minute"],
  "ft/s": [1, "ft / s"],
  "km/h": [1, "km / hour"],
  "km/day": [1, "km / day"],
  F: [1, "degF"],
  C: [1, "degC"],
  ppm: [1, "mg / L"],
  "mg/L": [1, "mg / L"],
  "g/L": [1, "g / L"],
  "lb/gal": [1, "lbm / gallon"],
  "lb/1000 gal": [0.001, "lbm / gallon"],
  "oz/100 gal": [0.01, "oz / gallon"],
  "MJ/m2/day": [1, "MJ / m^2 / day"],
  "W/m2": [1, "W / m^2"],
  "J/cm2/day": [1, "J / cm^2 / day"],
  s: [1, "s"],
  min: [1, "minute"],
  h: [1, "hour"],
  day: [1, "day"],
  week: [1, "week"],
};

/** Units that mathjs does not know: 1 of the first is so many of the second, by the definition beside it. */
const BY_DEFINITION: readonly (readonly [from: string, to: string, factor: number, definition: string])[] = [
  ["imperial gallon", "L", 4.54609, "4.54609 L by law"],
  ["imperial gallon/min", "L/min", 4.54609, "4.54609 L by law"],
  ["knot", "km/h", 1.852, "a nautical mile of 1852 m an hour"],
  ["cal/cm2/day", "J/cm2/day", 4.1868, "the international table calorie"],
  ["meq/L", "ppm CaCO3", (40.078 + 12.011 + 3 * 15.999) / 2, "half of 100.086 g/mol"],
  ["meq/L", "ppm HCO3", 1.008 + 12.011 + 3 * 15.999, "61.016 g/mol"],
  ["ppm CaCO3", "ppm HCO3", 61.016 / 50.043, "61.016 over 50.043 mg/meq"],
];

const isPrice = ({ kind }: ConversionUnit): boolean => kind.startsWith("price");

function inMathjs(unit: ConversionUnit): readonly [count: number, expression: string] | undefined {
  if (!isPrice(unit)) return IN_MATHJS[unit.unit];
  const known = IN_MATHJS[unit.unit.replace(/^per /, "")];
  return known === undefined ? undefined : [1 / known[0], inverted(known[1])];
}

/** "acre in" as "acre^-1 in^-1". */
function inverted(expression: string): string {
  return expression.replace(/[A-Za-z]+(\^\d)?/g, (unit) =>
    unit.includes("^") ? unit.replace("^", "^-") : `${unit}^-1`,
  );
}

const kinds = [...new Set(conversionUnits.map(({ kind }) => kind))];
const VALUE = 7.3;
// Both sides are exact but for what mathjs rounds: its acre is 4046.86 m2, and psi and hp lean on a pound-force of ten
// digits. All else may differ in the last digits only.
const LAST_DIGITS = 1e-12;
const ROUNDED_THERE: readonly (readonly [unit: RegExp, apart: number])[] = [
  [/acre/, 1e-6],
  [/psi|hp/, 1e-10],
];

function allowed(...units: readonly string[]): number {
  const apart = ROUNDED_THERE.filter(([unit]) => units.some((one) => unit.test(one))).map(([, much]) => much);
  return Math.max(LAST_DIGITS, ...apart);
}

describe(against("CONVERT_UNIT", "mathjs 15.2.0, every pair that it knows"), () => {
  test.each(kinds)("%s", (kind) => {
    const known = conversionUnits.flatMap((unit) => {
      const theirs = inMathjs(unit);
      return unit.kind === kind && theirs !== undefined
        ? [{ unit: unit.unit, count: theirs[0], expression: theirs[1] }]
        : [];
    });
    for (const from of known) {
      for (const to of known) {
        const theirs = quantity(VALUE * from.count, from.expression).toNumber(to.expression) / to.count;
        const ours = converted(VALUE, from.unit, to.unit);
        if (!(Math.abs(ours - theirs) <= allowed(from.unit, to.unit) * Math.abs(theirs))) {
          throw new Error(`${VALUE} ${from.unit} is ${ours} ${to.unit}, where mathjs has ${theirs}`);
        }
      }
    }
    expect(known.length > 1 || kind === "alkalinity").toBe(true);
  });

  test("every unit is known there or stands with its definition below", () => {
    const defined = new Set(BY_DEFINITION.flatMap(([from, to]) => [from, to]));
    defined.add("per imperial gallon");
    const left = conversionUnits.filter((unit) => inMathjs(unit) === undefined && !defined.has(unit.unit));
    expect(left.map(({ unit }) => unit)).toEqual([]);
  });
});

/** What mathjs does not know, in its manner, for a spreadsheet that does. */
const ALSO_IN_SHEETS: Readonly<Record<string, readonly [count: number, expression: string]>> = {
  "imperial gallon": [1, "uk_gal"],
  "imperial gallon/min": [1, "uk_gal / minute"],
  "per imperial gallon": [1, "uk_gal^-1"],
  knot: [1, "knot"],
  "cal/cm2/day": [1, "cal / cm^2 / day"],
};

/** How CONVERT of a spreadsheet spells a unit, what it is turned into, and how many of them it is. */
const IN_CONVERT: Readonly<Record<string, readonly [unit: string, into: string, count?: number]>> = {
  in: ["in", "m"],
  cm: ["cm", "m"],
  mm: ["mm", "m"],
  ft: ["ft", "m"],
  m: ["m", "m"],
  yd: ["yd", "m"],
  mi: ["mi", "m"],
  km: ["km", "m"],
  // The acre of 43,560 international square feet goes by this name there; us_acre is that of the survey foot.
  acre: ["uk_acre", "m2"],
  hectare: ["ha", "m2"],
  gallon: ["gal", "m3"],
  uk_gal: ["uk_gal", "m3"],
  L: ["l", "m3"],
  fluidounce: ["oz", "m3"],
  pint: ["pt", "m3"],
  quart: ["qt", "m3"],
  s: ["sec", "sec"],
  minute: ["mn", "sec"],
  hour: ["hr", "sec"],
  day: ["day", "sec"],
  week: ["day", "sec", 7],
  psi: ["psi", "Pa"],
  kPa: ["kPa", "Pa"],
  // It has no bar, which is 100,000 Pa.
  bar: ["Pa", "Pa", 100_000],
  hp: ["HP", "W"],
  kW: ["kW", "W"],
  W: ["W", "W"],
  MJ: ["MJ", "J"],
  J: ["J", "J"],
  cal: ["cal", "J"],
  lbm: ["lbm", "g"],
  kg: ["kg", "g"],
  g: ["g", "g"],
  mg: ["mg", "g"],
  oz: ["ozm", "g"],
  tonne: ["kg", "g", 1000],
  knot: ["kn", "m/s"],
};

/** "acre in / hour" as a formula of CONVERT. */
function convertFormula(count: number, expression: string): string {
  const [over = "", ...under] = expression.split(" / ").map((product) =>
    product
      .split(" ")
      .map((power) => {
        const [atom = "", exponent = "1"] = power.split("^");
        const known = IN_CONVERT[atom];
        if (known === undefined) throw new Error(`no CONVERT of ${atom}`);
        return `(${known[2] ?? 1}*CONVERT(1,"${known[0]}","${known[1]}"))^(${exponent})`;
      })
      .join("*"),
  );
  return `=${count}*${over}${under.map((product) => `/(${product})`).join("")}`;
}

describe(against("CONVERT_UNIT", "IronCalc 0.8.4, its CONVERT, every pair but of temperature and alkalinity"), () => {
  const known = conversionUnits.flatMap((unit) => {
    const theirs = inMathjs(unit) ?? ALSO_IN_SHEETS[unit.unit];
    return theirs === undefined || unit.kind === "temperature" ? [] : [{ ...unit, formula: convertFormula(...theirs) }];
  });
  const values = inIronCalc([...known.map(({ formula }) => [formula])]);

  test.each(kinds.filter((kind) => kind !== "temperature" && kind !== "alkalinity"))("%s", (kind) => {
    const all = known.flatMap((unit, row) =>
      unit.kind === kind ? [{ unit: unit.unit, size: numberAt(values, row, 0) }] : [],
    );
    expect(all).toHaveLength(conversionUnits.filter((unit) => unit.kind === kind).length);
    for (const from of all) {
      for (const to of all)
        expectClose(converted(VALUE, from.unit, to.unit), (VALUE * from.size) / to.size, LAST_DIGITS);
    }
  });
});

describe(against("CONVERT_UNIT", "psychrolib 1.1.1, temperature"), () => {
  test.each([VALUE, -40, 0, 98.6, 212])("%d: a degree of Rankine is 5/9 of a kelvin", (value) => {
    const celsius = psychrolib.GetTCelsiusFromTKelvin(psychrolib.GetTRankineFromTFahrenheit(value) / 1.8);
    expectClose(converted(value, "F", "C"), celsius, LAST_DIGITS, 1e-12);
    const fahrenheit = psychrolib.GetTFahrenheitFromTRankine(psychrolib.GetTKelvinFromTCelsius(value) * 1.8);
    expectClose(converted(value, "C", "F"), fahrenheit, LAST_DIGITS, 1e-12);
  });
});

describe(byAnotherRoute("CONVERT_UNIT"), () => {
  test.each(BY_DEFINITION)("1 %s is %s %d: %s", (from, to, factor) => {
    expectClose(converted(1, from, to), factor, 1e-14);
    expectClose(converted(factor, to, from), 1, 1e-14);
  });

  // 1 ft = 0.3048 m and 1 in = 2.54 cm, written out.
  test.each([
    ["acre-inch", "m3", 43560 * 0.3048 ** 2 * 0.0254, "43,560 ft2 x 1 in"],
    ["acre-inch", "gal", (43560 * 144) / 231, "43,560 x 144 in3 / 231"],
    ["acre-foot", "m3", 1233.48, "EC-WC-04: 43,560 ft3, printed to 2 places"],
    ["acre-foot", "gal", 325_851, "not the 325,651 that a handbook misprints"],
    ["CCF", "m3", 2.83168, "EC-WC-03: 100 ft3"],
    ["CCF", "gal", 748.05, "172,800 in3 / 231"],
    ["fl oz", "mL", 29.5735295625, "231 / 128 in3 x 16.387064"],
    ["gal", "L", 3.785412, "CS-U-01: 231 in3 x 16.387064 cm3"],
    ["in3", "mL", 16.387064, "CS-U-02: 2.54^3"],
    ["yd3", "L", 764.5549, "CS-U-03: 0.9144^3"],
    ["ft3", "gal", 7.480519, "CS-U-04: 1728 / 231"],
    ["gph", "mL/min", 63.0902, "AP-U-01: 3785.411784 / 60"],
    ["gpm", "L/min", 3.785412, "AP-U-02"],
    ["gpm", "m3/h", 0.2271247, "AP-U-03: 0.003785411784 x 60"],
    ["ft3/s", "gpm", 448.83, "ST-PK-06: 7.480519 x 60"],
    ["psi", "kPa", 6.894757, "HY-UN-03: 0.45359237 x 9.80665 / 0.0254^2 / 1000"],
    ["gal/ft2", "in", 231 / 144, "a gallon of 231 in3 on 144 in2"],
    ["oz/100 gal", "ppm", 74.8915, "28,349.523 mg / 378.54118 L: the trade's 75"],
    ["$/1000 gal", "$/m3", 1 / 3.785411784, "1000 gal is 3.785411784 m3"],
    ["$/CCF", "$/1000 gal", 1 / 0.748051948, "CCF is 0.748052 of 1000 gal"],
  ])("1 %s in %s is %d (%s)", (from, to, expected) => {
    expectClose(converted(1, from, to), expected, 2e-5);
  });

  test("EC-WC-01: 4 for 1000 gal is 1.05669 for a m3", () => {
    expectClose(converted(4, "$/1000 gal", "$/m3"), 1.05669, 0, 0.00005);
  });

  test("the bounds of a class #1 pot of ANSI Z60.1: 152 in3 is 2.491 L and 251 in3 is 4.113 L", () => {
    expectClose(converted(152, "in3", "L"), 2.491, 0.0002);
    expectClose(converted(251, "in3", "L"), 4.113, 0.0002);
  });

  test("F and C are readings: -40 is both, freezing and boiling are where they belong", () => {
    expect(converted(-40, "F", "C")).toBe(-40);
    expect(converted(0, "C", "F")).toBe(32);
    expect(converted(212, "F", "C")).toBe(100);
  });

  test("what is whole stays whole: 25.4 mm is 1 in, 12 in is 1 ft, 43,560 ft2 is 1 acre, 128 fl oz is 1 gal", () => {
    expect(converted(25.4, "mm", "in")).toBe(1);
    expect(converted(12, "in", "ft")).toBe(1);
    expect(converted(43560, "ft2", "acre")).toBe(1);
    expect(converted(128, "fl oz", "gal")).toBe(1);
  });

  test("the working has a number that people know by heart", () => {
    const entry = entryOf("CONVERT_UNIT");
    expect(entry.name).toBe("CONVERT_UNIT");
    expect(stepsOf("CONVERT_UNIT", { value: 50.8, from: "mm", to: "in" })("y")).toBe(2);
  });
});

describe("CONVERT_UNIT: there and back, and by a third unit, is the same", () => {
  test.each(kinds)("%s", (kind) => {
    const units = conversionUnits.filter((unit) => unit.kind === kind).map(({ unit }) => unit);
    const unit = fc.constantFrom(...units);
    fc.assert(
      fc.property(unit, unit, unit, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (from, to, by, value) => {
        expectClose(converted(converted(value, from, to), to, from), value, 1e-12, 1e-10);
        expectClose(converted(converted(value, from, by), by, to), converted(value, from, to), 1e-12, 1e-10);
      }),
      { seed: SEED },
    );
  });
});

describe("CONVERT_UNIT: every spelling", () => {
  const spelt = conversionUnits.flatMap((unit) =>
    [unit.unit, ...unit.spellings].map((spelling) => ({ spelling, unit })),
  );

  test("of the help leads to its own unit, in capitals, in small letters, with blanks around it", () => {
    for (const { spelling, unit } of spelt) {
      for (const way of [spelling, ` ${spelling}  `, spelling.toLowerCase(), spelling.toUpperCase()]) {
        if (["ML", "MG"].includes(way)) continue;
        const other = unit.unit === "F" ? 1 : converted(1, way, unit.unit);
        if (other !== 1) throw new Error(`${way} is ${other} ${unit.unit}`);
      }
    }
  });

  test("stands for one unit alone", () => {
    const units = new Map<string, string>();
    for (const { spelling, unit } of spelt) {
      const known = units.get(spelling) ?? unit.unit;
      if (known !== unit.unit) throw new Error(`${spelling} is ${known} and ${unit.unit}`);
      units.set(spelling, known);
    }
  });

  test("stands in the help, prices by their rule", () => {
    const help = entryOf("CONVERT_UNIT").assumptions.join("\n");
    for (const { spelling, unit } of spelt) if (!isPrice(unit)) expect(help).toContain(spelling);
  });

  test.each([
    ["sq. ft", "ft2"],
    ["ft²", "ft2"],
    ["m^3", "m3"],
    ["m³", "m3"],
    ["gallons per minute", "gal/min"],
    ["Litres", "L"],
    ["acre inch", "acre-inch"],
    ["1,000 gal", "1000 gal"],
    ["°F", "F"],
    ["fl. oz.", "fl oz"],
    ["parts per million", "ppm"],
    ["€/m3", "per m3"],
  ])("%s is %s", (spelling, unit) => {
    expect(converted(3, spelling, unit)).toBe(3);
  });

  test.each(
    "in cm mm ft m ft2 m2 acre hectare gal L mL m3 gal/h L/h gal/min L/min in/h mm/h psi kPa bar hp kW lb kg g oz mph m/s ft/min m/min ft/s F C meq/L gal/ft2 s min h".split(
      " ",
    ),
  )("the contract's %s is known", (unit) => {
    expect(converted(2.5, unit, unit)).toBe(2.5);
  });

  test.each(["1000 gal", "CCF", "acre-inch", "imperial gallon", "fl oz", "ppm CaCO3"])(
    "the contract's %s is known",
    (unit) => {
      expect(converted(2.5, unit, unit)).toBe(2.5);
    },
  );
});

describe("CONVERT_UNIT refuses, and says what to do", () => {
  test("different kinds, with both named", () => {
    expect(refused("gal", "lb")).toBe(
      'CONVERT_UNIT: to is the text "lb"; it must be a unit of volume, as gal is, and not of weight; WATER_FROM_WEIGHT leads from one to the other',
    );
    expect(refused("mph", "in/h")).toContain("it must be a unit of speed, as mph is, and not of application rate");
    expect(refused("oz", "fl oz")).toContain("it must be a unit of weight, as oz is, and not of volume");
  });

  test.each([
    ["psi", "ft"],
    ["kPa", "m"],
    ["ft", "psi"],
    ["psi", "ft of head"],
    ["bar", "m of water"],
  ])("pressure to head, with a pointer: %s to %s", (from, to) => {
    expect(refused(from, to)).toContain("TOTAL_DYNAMIC_HEAD");
  });

  test.each([
    ["mS/cm", "uS/cm", "CONVERT_EC"],
    ["P2O5", "P", "ELEMENT_FROM_OXIDE"],
    ["ppm", "meq/L", "ACID_VOLUME"],
    ["gal", "in", "WATER_DEPTH"],
  ])("%s to %s, with a pointer to %s", (from, to, name) => {
    expect(refused(from, to)).toContain(name);
  });

  test("an unknown unit, with the nearest five", () => {
    expect(refused("galon", "L")).toMatch(
      /^CONVERT_UNIT: from is the text "galon"; it must be a unit that is known; the nearest are gal, ([^,]+, ){2}[^,]+ or [^,]+$/,
    );
    expect(refused("L", "kilopascel")).toMatch(/nearest are kPa, /);
  });

  test.each(["ML", "MG", "ton", "Tons", "TON"])("%s, which may be two things", (unit) => {
    expect(refused(unit, "L")).toContain("it may be ");
  });

  test("a small ml is a milliliter, as it can be nothing else", () => {
    expect(converted(5, "ml", "mL")).toBe(5);
  });
});
