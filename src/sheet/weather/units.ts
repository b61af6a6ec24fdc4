/** The units in which weather tables come. Factors beyond those of CONVERT_UNIT are exact by definition. */

export type UnitKind = "temperature" | "depth" | "speed" | "humidity" | "radiation" | "volume";
type System = "us" | "metric";

export interface WeatherUnit {
  /** As the dialog shows it. */
  readonly name: string;
  readonly kind: UnitKind;
  /** The unit as CONVERT_UNIT knows it, and what a reading is first made into it with. */
  readonly known: string;
  readonly first?: (reading: number) => number;
  readonly system?: System;
  readonly spellings: readonly string[];
}

const times = (factor: number) => (reading: number) => reading * factor;
const over = (divisor: number) => (reading: number) => reading / divisor;

export const UNITS: readonly WeatherUnit[] = [
  unit("temperature", "F", "F", ["f", "degf", "deg f", "fahrenheit", "degrees f", "degrees fahrenheit"], "us"),
  unit(
    "temperature",
    "C",
    "C",
    ["c", "degc", "deg c", "celsius", "degrees c", "degrees celsius", "centigrade"],
    "metric",
  ),
  {
    ...unit("temperature", "tenths of a degree C", "C", ["0.1 c", "tenths of c", "tenths c", "0.1 degc"]),
    first: over(10),
  },
  { ...unit("temperature", "K", "C", ["k", "kelvin"]), first: (reading) => reading - 273.15 },

  unit("depth", "in", "in", ["in", "inch", "inches", "in/day", "in/d", "inches/day", "in day-1"], "us"),
  unit(
    "depth",
    "mm",
    "mm",
    ["mm", "mm/day", "mm/d", "mm day-1", "mm d-1", "millimeters", "millimetres", "l/m2", "kg/m2"],
    "metric",
  ),
  unit("depth", "cm", "cm", ["cm", "cm/day"]),
  { ...unit("depth", "tenths of a mm", "mm", ["0.1 mm", "tenths of mm", "tenths mm"]), first: over(10) },
  {
    ...unit("depth", "hundredths of an inch", "in", ["0.01 in", "hundredths of in", "hundredths of inches"]),
    first: over(100),
  },

  unit("speed", "mph", "mph", ["mph", "mi/h", "mi/hr", "miles/hour", "miles per hour"], "us"),
  unit("speed", "m/s", "m/s", ["m/s", "mps", "m s-1", "ms-1", "m/sec", "meters/second", "metres/second"], "metric"),
  unit("speed", "km/h", "km/h", ["km/h", "kmh", "kph", "km/hr", "km h-1"]),
  unit("speed", "knots", "knots", ["knots", "knot", "kn", "kt", "kts"]),
  { ...unit("speed", "tenths of a m/s", "m/s", ["0.1 m/s", "tenths of m/s"]), first: over(10) },

  unit("humidity", "%", "%", ["%", "percent", "pct"]),
  { ...unit("humidity", "part of 1", "%", ["fraction", "0-1"]), first: times(100) },

  unit(
    "radiation",
    "MJ/m2 a day",
    "MJ/m2/day",
    ["mj/m2", "mj/m2/day", "mj m-2", "mj m-2 d-1", "mj m-2 day-1", "mj/m2/d", "mj/sqm"],
    "metric",
  ),
  unit("radiation", "W/m2, mean of the day", "W/m2", ["w/m2", "w m-2", "wm2", "wm-2", "w/sqm", "watts/m2"], "metric"),
  // A langley is one thermochemical calorie, 4.184 J, on a square centimetre.
  {
    ...unit(
      "radiation",
      "Ly a day",
      "MJ/m2/day",
      ["ly", "ly/day", "langley", "langleys", "langley/day", "cal/cm2", "cal/cm2/day"],
      "us",
    ),
    first: times(0.04184),
  },
  {
    ...unit("radiation", "kWh/m2 a day", "MJ/m2/day", ["kwh/m2", "kwh/m2/day", "kw-hr/m2/day", "kwh m-2"]),
    first: times(3.6),
  },
  { ...unit("radiation", "Wh/m2 a day", "MJ/m2/day", ["wh/m2", "wh/m2/day", "wh m-2"]), first: over(1000 / 3.6) },
  { ...unit("radiation", "J/cm2 a day", "MJ/m2/day", ["j/cm2", "j/cm2/day", "j cm-2"]), first: over(100) },
  { ...unit("radiation", "kJ/m2 a day", "MJ/m2/day", ["kj/m2", "kj/m2/day", "kj m-2"]), first: over(1000) },

  unit("volume", "gal", "gal", ["gal", "gallon", "gallons"], "us"),
  unit("volume", "L", "L", ["l", "liter", "liters", "litre", "litres"], "metric"),
  unit("volume", "mL", "mL", ["ml", "milliliters", "millilitres"]),
];

function unit(kind: UnitKind, name: string, known: string, spellings: readonly string[], system?: System): WeatherUnit {
  return { kind, name, known, spellings, ...(system && { system }) };
}

export function unitsOf(kind: UnitKind): readonly WeatherUnit[] {
  return UNITS.filter((each) => each.kind === kind);
}

export function unitNamed(name: string): WeatherUnit {
  const found = UNITS.find((each) => each.name === name);
  if (!found) throw new Error(`there is no unit ${name}`);
  return found;
}

/** The unit that a text spells, of any kind: what stands in brackets or under a heading. */
export function unitSpelt(text: string): readonly WeatherUnit[] {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[°º˚]/g, "")
    .replace(/²/g, "2")
    .replace(/[⁻−]/g, "-")
    .replace(/¹/g, "1")
    .replace(/\^|\*\*/g, "")
    .replace(/\s*(per|\/)\s*/g, "/")
    .replace(/[.·]+$/, "")
    .replace(/\s+/g, " ");
  return UNITS.filter(({ spellings }) => spellings.includes(plain));
}

/** CONVERT_UNIT of the library. */
export type ConvertUnit = (value: number, from: string, to: string) => number;

/** A reading in the unit of the sheet's column. */
export function converted(reading: number, from: WeatherUnit, to: string, convert: ConvertUnit): number {
  const known = from.first ? from.first(reading) : reading;
  // ET of a day is a depth.
  const wanted = from.kind === "depth" ? to.replace(/\/d(ay)?$/, "") : to;
  return from.known === wanted ? known : convert(known, from.known, wanted);
}
