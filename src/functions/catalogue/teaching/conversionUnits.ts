/**
 * The units that CONVERT_UNIT knows: how each may be spelt, what kind it is, and its exact size in the kind's base
 * (metre, kilogram, second and what follows from them), with where that size comes from.
 */
import { decimal, dividedBy, times, unitScales, type Rational } from "../../../kernel";
import { molarMass } from "../feed/atomicWeights";
import { nearest } from "./lookUp";

export type UnitKind =
  | "length or depth"
  | "area"
  | "volume"
  | "flow"
  | "application rate"
  | "pressure"
  | "power"
  | "energy"
  | "weight"
  | "speed"
  | "temperature"
  | "alkalinity"
  | "weight in a volume"
  | "radiation"
  | "time"
  | "price of water"
  | "price by weight";

export interface ConversionUnit {
  /** As it is written in help and errors. */
  readonly unit: string;
  readonly kind: UnitKind;
  /** Other ways of writing it; letters of either case, blanks, hyphens and full stops make no difference. */
  readonly spellings: readonly string[];
  /** What one unit is in the kind's base: exact. */
  readonly scale: Rational;
  /** Where the scale comes from. */
  readonly from: string;
}

const one = decimal("1");
const inch = unitScales.in;
const foot = unitScales.ft;
const cubicFoot = times(foot, times(foot, foot));
const acre = times(decimal("43560"), unitScales.ft2);
const hectare = decimal("10000");
const gallon = unitScales.gal;
const imperialGallon = decimal("0.00454609");
const milligramInLitre = decimal("0.001");
const minute = decimal("60");
const hour = decimal("3600");
const day = decimal("86400");

function hundred(scale: Rational): Rational {
  return times(decimal("100"), scale);
}

function thousand(scale: Rational): Rational {
  return times(decimal("1000"), scale);
}

function per(over: Rational, under: Rational): Rational {
  return dividedBy(over, under);
}

/** mg/L of a substance that make 1 meq/L: its molar mass over its charges. */
function milligramsInMeq(mass: number, charges: string): Rational {
  return dividedBy(decimal(mass.toFixed(3)), decimal(charges));
}

type Row = readonly [unit: string, scale: Rational, spellings: readonly string[], from: string];

function ofKind(kind: UnitKind, rows: readonly Row[]): ConversionUnit[] {
  return rows.map(([unit, scale, spellings, from]) => ({ unit, kind, spellings, scale, from }));
}

const YARD_POUND = "the international yard and pound of 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg";
const SI = "a decimal multiple of the SI unit";
const GALLON_231 = "1 US gal = 231 in3";
const MADE = "made of units that are exact by definition";

const VOLUMES: readonly Row[] = [
  ["gal", gallon, ["gals", "gallon", "gallons", "US gal", "US gallon", "US gallons"], GALLON_231],
  ["L", unitScales.L, ["liter", "liters", "litre", "litres", "ltr"], SI],
  ["mL", unitScales.mL, ["milliliter", "milliliters", "millilitre", "millilitres", "cm3", "cc"], SI],
  ["m3", one, ["cubic meter", "cubic meters", "cubic metre", "cubic metres"], SI],
  [
    "1000 gal",
    thousand(gallon),
    ["1000 gals", "1000 gallons", "1000 US gal", "kgal", "kgals", "thousand gal", "thousand gallons"],
    GALLON_231,
  ],
  ["CCF", hundred(cubicFoot), ["HCF", "100 ft3", "100 cubic feet", "hundred cubic feet", "100 cu ft"], YARD_POUND],
  ["acre-inch", times(acre, inch), ["acre-inches", "acre-in", "ac-in"], "1 acre = 43,560 ft2"],
  ["acre-foot", times(acre, foot), ["acre-feet", "acre-ft", "ac-ft"], "1 acre = 43,560 ft2"],
  [
    "imperial gallon",
    imperialGallon,
    ["imperial gallons", "imperial gal", "imp gal", "imp gallon", "imp gallons", "UK gal", "UK gallon", "UK gallons"],
    "1 imperial gallon = 4.54609 L",
  ],
  [
    "fl oz",
    dividedBy(gallon, decimal("128")),
    ["US fl oz", "fluid ounce", "fluid ounces", "US fluid ounce", "US fluid ounces"],
    "1 US gal = 128 fl oz",
  ],
  ["pt", dividedBy(gallon, decimal("8")), ["pint", "pints", "US pint", "US pints"], "1 US gal = 8 pt"],
  ["qt", dividedBy(gallon, decimal("4")), ["quart", "quarts", "qts", "US quart", "US quarts"], "1 US gal = 4 qt"],
  ["in3", times(inch, times(inch, inch)), ["cu in", "cubic inch", "cubic inches"], YARD_POUND],
  ["ft3", cubicFoot, ["cu ft", "cubic foot", "cubic feet"], YARD_POUND],
  ["yd3", times(decimal("27"), cubicFoot), ["cu yd", "cubic yard", "cubic yards"], YARD_POUND],
];

const WEIGHTS: readonly Row[] = [
  ["lb", unitScales.lb, ["lbs", "pound", "pounds"], YARD_POUND],
  ["kg", one, ["kgs", "kilo", "kilos", "kilogram", "kilograms"], SI],
  ["g", decimal("0.001"), ["gram", "grams", "gm"], SI],
  ["mg", decimal("0.000001"), ["milligram", "milligrams"], SI],
  ["oz", dividedBy(unitScales.lb, decimal("16")), ["ounce", "ounces", "oz avdp"], "1 lb = 16 oz"],
  ["short ton", times(decimal("2000"), unitScales.lb), ["short tons", "US ton", "US tons"], "1 short ton = 2000 lb"],
  ["tonne", decimal("1000"), ["tonnes", "metric ton", "metric tons"], SI],
];

/** Prices are the other way round: the larger the amount, the smaller the price of a litre. */
function prices(kind: UnitKind, rows: readonly Row[]): ConversionUnit[] {
  return rows.map(([unit, scale, spellings, from]) => ({
    unit: `per ${unit}`,
    kind,
    spellings: spellings.map((spelling) => `per ${spelling}`),
    scale: dividedBy(one, scale),
    from,
  }));
}

export const conversionUnits: readonly ConversionUnit[] = [
  ...ofKind("length or depth", [
    ["in", inch, ["inch", "inches", '"'], YARD_POUND],
    ["cm", unitScales.cm, ["centimeter", "centimeters", "centimetre", "centimetres"], SI],
    ["mm", unitScales.mm, ["millimeter", "millimeters", "millimetre", "millimetres"], SI],
    ["ft", foot, ["foot", "feet", "'"], YARD_POUND],
    ["m", one, ["meter", "meters", "metre", "metres"], SI],
    ["yd", times(decimal("3"), foot), ["yard", "yards"], YARD_POUND],
    ["mile", times(decimal("5280"), foot), ["miles", "mi"], YARD_POUND],
    ["km", decimal("1000"), ["kilometer", "kilometers", "kilometre", "kilometres"], SI],
    ["gal/ft2", per(gallon, unitScales.ft2), ["gal/sq ft", "gallons/ft2", "gallons/sq ft"], MADE],
    ["L/m2", unitScales.mm, ["liters/m2", "litres/m2", "L/sq m"], MADE],
    ["m3/ha", per(one, hectare), ["m3/hectare"], MADE],
  ]),
  ...ofKind("area", [
    ["ft2", unitScales.ft2, ["sq ft", "square foot", "square feet"], YARD_POUND],
    ["m2", one, ["sq m", "square meter", "square meters", "square metre", "square metres"], SI],
    ["acre", acre, ["acres", "ac"], "1 acre = 43,560 ft2"],
    ["hectare", hectare, ["hectares", "ha"], SI],
    ["in2", times(inch, inch), ["sq in", "square inch", "square inches"], YARD_POUND],
    ["cm2", decimal("0.0001"), ["sq cm", "square centimeter", "square centimetre"], SI],
    ["yd2", times(decimal("9"), unitScales.ft2), ["sq yd", "square yard", "square yards"], YARD_POUND],
  ]),
  ...ofKind("volume", VOLUMES),
  ...ofKind("flow", [
    ["gal/h", unitScales["gal/h"], ["gph", "gal/hr", "gal/hour", "gallons/h", "gallons/hr", "gallons/hour"], MADE],
    ["L/h", unitScales["L/h"], ["lph", "L/hr", "L/hour", "liters/hour", "litres/hour", "liters/h", "litres/h"], MADE],
    ["gal/min", unitScales["gal/min"], ["gpm", "gal/minute", "gallons/min", "gallons/minute"], MADE],
    ["L/min", unitScales["L/min"], ["lpm", "L/minute", "liters/minute", "litres/minute"], MADE],
    ["gal/day", per(gallon, day), ["gpd", "gal/d", "gallons/day"], MADE],
    ["L/s", unitScales.L, ["lps", "L/sec", "L/second", "liters/second", "litres/second"], MADE],
    ["mL/s", unitScales.mL, ["mL/sec", "mL/second"], MADE],
    ["mL/min", per(unitScales.mL, minute), ["mL/minute"], MADE],
    ["fl oz/min", per(dividedBy(gallon, decimal("128")), minute), ["fl oz/minute"], MADE],
    ["imperial gallon/min", per(imperialGallon, minute), ["imp gal/min", "imperial gal/min", "UK gal/min"], MADE],
    ["m3/h", per(one, hour), ["m3/hr", "m3/hour", "cubic meters/hour", "cubic metres/hour"], MADE],
    ["m3/day", per(one, day), ["m3/d"], MADE],
    ["ft3/s", cubicFoot, ["cfs", "ft3/sec", "cusec", "cubic feet/second"], MADE],
    ["acre-inch/h", per(times(acre, inch), hour), ["acre-inch/hr", "acre-in/h", "ac-in/h", "acre-inch/hour"], MADE],
  ]),
  ...ofKind("application rate", [
    ["in/h", unitScales["in/h"], ["in/hr", "in/hour", "inches/h", "inches/hr", "inches/hour", "iph"], MADE],
    ["mm/h", unitScales["mm/h"], ["mm/hr", "mm/hour"], MADE],
    ["cm/h", per(unitScales.cm, hour), ["cm/hr", "cm/hour"], MADE],
    ["in/day", unitScales["in/day"], ["in/d", "inches/day"], MADE],
    ["mm/day", unitScales["mm/day"], ["mm/d"], MADE],
    ["in/week", per(inch, times(decimal("7"), day)), ["inches/week", "in/wk"], MADE],
    ["mm/week", per(unitScales.mm, times(decimal("7"), day)), ["mm/wk"], MADE],
    ["gal/min/acre", per(unitScales["gal/min"], acre), ["gpm/acre", "gpm/ac", "gal/min/ac"], MADE],
    ["L/s/ha", per(unitScales.L, hectare), ["L/s/hectare"], MADE],
    ["m3/ha/day", per(per(one, hectare), day), ["m3/ha/d", "m3/hectare/day"], MADE],
  ]),
  ...ofKind("pressure", [
    ["psi", unitScales.psi, ["lb/in2", "lbf/in2", "pounds/square inch", "psig"], `${YARD_POUND}; g = 9.80665 m/s2`],
    ["kPa", unitScales.kPa, ["kilopascal", "kilopascals"], SI],
    ["bar", decimal("100000"), ["bars"], "1 bar = 100 kPa"],
    ["cbar", decimal("1000"), ["centibar", "centibars", "cb"], "1 bar = 100 kPa"],
  ]),
  ...ofKind("power", [
    ["hp", unitScales.hp, ["horsepower"], `550 ft lbf/s; ${YARD_POUND}; g = 9.80665 m/s2`],
    ["kW", unitScales.kW, ["kilowatt", "kilowatts"], SI],
    ["W", one, ["watt", "watts"], SI],
  ]),
  ...ofKind("energy", [
    ["kWh", unitScales.kWh, ["kW h", "kilowatt hour", "kilowatt hours"], "1 h = 3600 s"],
    ["hp h", times(unitScales.hp, hour), ["hph", "hp hour", "hp hours", "horsepower hour", "horsepower hours"], MADE],
    ["MJ", decimal("1000000"), ["megajoule", "megajoules"], SI],
  ]),
  ...ofKind("weight", WEIGHTS),
  ...ofKind("speed", [
    ["mph", unitScales.mph, ["mile/h", "miles/h", "mi/h", "miles/hour", "mile/hour"], YARD_POUND],
    ["m/s", one, ["m/sec", "m/second", "meters/second", "metres/second"], SI],
    ["ft/min", unitScales["ft/min"], ["fpm", "ft/minute", "feet/min", "feet/minute"], YARD_POUND],
    ["m/min", unitScales["m/min"], ["m/minute", "meters/minute", "metres/minute"], SI],
    ["ft/s", foot, ["fps", "ft/sec", "ft/second", "feet/second", "feet/s"], YARD_POUND],
    ["km/h", per(decimal("1000"), hour), ["kph", "kmh", "km/hr", "km/hour"], SI],
    ["km/day", per(decimal("1000"), day), ["km/d"], SI],
    ["knot", per(decimal("1852"), hour), ["knots", "kn", "kt"], "1 nautical mile = 1852 m"],
  ]),
  ...ofKind("temperature", [
    ["F", unitScales.F, ["deg F", "degree F", "degrees F", "fahrenheit"], "F = 1.8 C + 32"],
    ["C", one, ["deg C", "degree C", "degrees C", "celsius", "centigrade"], "F = 1.8 C + 32"],
  ]),
  ...ofKind("alkalinity", [
    ["meq/L", one, ["me/L", "meq/liter", "meq/litre"], "1 meq/L of alkalinity neutralizes 1 meq/L of acid"],
    [
      "ppm CaCO3",
      dividedBy(one, milligramsInMeq(molarMass({ Ca: 1, C: 1, O: 3 }), "2")),
      ["mg/L CaCO3", "ppm as CaCO3", "mg/L as CaCO3", "CaCO3"],
      "CaCO3 100.086 g/mol (IUPAC conventional weights), two equivalents: 50.043 mg/meq",
    ],
    [
      "ppm HCO3",
      dividedBy(one, milligramsInMeq(molarMass({ H: 1, C: 1, O: 3 }), "1")),
      ["mg/L HCO3", "ppm as HCO3", "mg/L as HCO3", "ppm bicarbonate", "mg/L bicarbonate", "HCO3"],
      "HCO3 61.016 g/mol (IUPAC conventional weights), one equivalent",
    ],
  ]),
  ...ofKind("weight in a volume", [
    ["ppm", milligramInLitre, ["parts/million"], "1 ppm is 1 mg/L in dilute water"],
    ["mg/L", milligramInLitre, ["mg/liter", "mg/litre"], SI],
    ["g/L", one, ["g/liter", "g/litre", "kg/m3"], SI],
    ["lb/gal", per(unitScales.lb, gallon), ["lbs/gal", "pounds/gallon", "lb/gallon"], MADE],
    ["lb/1000 gal", per(unitScales.lb, thousand(gallon)), ["lbs/1000 gal", "lb/kgal", "lb/1000 gallons"], MADE],
    [
      "oz/100 gal",
      per(dividedBy(unitScales.lb, decimal("16")), hundred(gallon)),
      ["oz/100 gallons", "ounces/100 gal", "ounces/100 gallons"],
      MADE,
    ],
  ]),
  ...ofKind("radiation", [
    ["MJ/m2/day", per(decimal("1000000"), day), ["MJ/m2/d", "MJ/m2day"], SI],
    ["W/m2", one, ["watt/m2", "watts/m2"], "the mean of all 24 hours"],
    ["J/cm2/day", per(decimal("10000"), day), ["J/cm2/d"], SI],
    [
      "cal/cm2/day",
      per(decimal("41868"), day),
      ["cal/cm2/d", "langley/day", "langleys/day", "ly/day"],
      "the international table calorie, 4.1868 J, as FAO Irrigation and Drainage Paper 56 has it",
    ],
  ]),
  ...ofKind("time", [
    ["s", one, ["sec", "secs", "second", "seconds"], SI],
    ["min", minute, ["mins", "minute", "minutes"], "60 s"],
    ["h", hour, ["hr", "hrs", "hour", "hours"], "60 min"],
    ["day", day, ["d", "days"], "24 h"],
    ["week", times(decimal("7"), day), ["weeks", "wk"], "7 days"],
  ]),
  ...prices("price of water", VOLUMES),
  ...prices("price by weight", WEIGHTS),
];

const SUPERSCRIPTS: Readonly<Record<string, string>> = { "²": "2", "³": "3" };

/**
 * A spelling with all that makes no difference taken away: case, blanks, hyphens, full stops and commas, the sign of a
 * power, degree and currency signs; "per" is "/".
 */
export function unitKey(spelling: string): string {
  return spelling
    .replace(/[²³]/g, (sign) => SUPERSCRIPTS[sign] as string)
    .toLowerCase()
    .replace(/\bper\b/g, "/")
    .replace(/[\s\-.,^°*$€£]/g, "");
}

const bySpelling = new Map<string, ConversionUnit>(
  conversionUnits.flatMap((unit) =>
    [unit.unit, ...unit.spellings].map((spelling) => [unitKey(spelling), unit] as const),
  ),
);

/** Spellings that stand for two things in the trade, the first two in capitals alone: refused rather than guessed. */
const AMBIGUOUS: ReadonlyMap<string, string> = new Map([
  ["ML", "it may be a milliliter or a megaliter: write mL or m3"],
  ["MG", "it may be a milligram or a million gallons: write mg or 1000 gal"],
  ["ton", "it may be short or metric: write short ton or tonne"],
  ["tons", "it may be short or metric: write short ton or tonne"],
]);

/** What a word stands for that another function converts, and that function. */
const ELSEWHERE: ReadonlyMap<string, string> = new Map([
  ...["mS/cm", "dS/m", "uS/cm", "mmho/cm", "umho/cm", "EC", "TDS", "tds_ppm"].map(
    (word) => [unitKey(word), "CONVERT_EC"] as const,
  ),
  ...[
    "ft head",
    "feet of head",
    "ft of head",
    "ft of water",
    "feet of water",
    "ft H2O",
    "m head",
    "m of head",
    "m of water",
    "m H2O",
    "head",
  ].map((word) => [unitKey(word), "TOTAL_DYNAMIC_HEAD"] as const),
  ...["P2O5", "K2O"].map((word) => [unitKey(word), "ELEMENT_FROM_OXIDE"] as const),
]);

export function unitSpelt(spelling: string): ConversionUnit | undefined {
  return bySpelling.get(unitKey(spelling));
}

/** Why a spelling is not guessed at; undefined where it is not known to stand for two things. */
export function ambiguity(spelling: string): string | undefined {
  return AMBIGUOUS.get(spelling) ?? AMBIGUOUS.get(spelling.toLowerCase());
}

/** The units whose spellings come nearest, each once, nearest first. */
export function nearestUnits(spelling: string, count: number): string[] {
  const near = nearest(unitKey(spelling), [...bySpelling.keys()], bySpelling.size);
  return [...new Set(near.map((key) => (bySpelling.get(key) as ConversionUnit).unit))].slice(0, count);
}

/** The function that converts a unit of this spelling, where it is not CONVERT_UNIT. */
export function convertedElsewhere(spelling: string): string | undefined {
  return ELSEWHERE.get(unitKey(spelling));
}
