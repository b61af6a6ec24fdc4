/**
 * The two systems of units, and everything that depends on them.
 *
 * Formulas are written once. The numbers of a call stay in the user's own units; what differs between the systems is a
 * constant ("1 mm on 1 m2 is 1 L; 1 in on 1 ft2 is 0.6234 gal"), computed here from exact definitions, so that US and
 * metric answers of the same physical case agree to the last digits and the working shows the constant that was used.
 */
import { decimal, dividedBy, times, toNumber, type Rational } from "./rational";

export type UnitSystem = "us" | "metric";
export const UNIT_WORDS = ["us", "metric"] as const;

const one = decimal("1");
const inch = decimal("0.0254");
const foot = decimal("0.3048");
const mile = decimal("1609.344");
const pound = decimal("0.45359237");
const litre = decimal("0.001");
const minute = decimal("60");
const hour = decimal("3600");
const day = decimal("86400");
/** Standard gravity, 9.80665 m/s2. */
const gravity = decimal("9.80665");
/** US gallon: 231 cubic inches. */
const gallon = times(decimal("231"), times(inch, times(inch, inch)));
const squareFoot = times(foot, foot);
const poundForce = times(pound, gravity);
const watt = one;
/** What 1 m3 of water weighs in newtons: 1 kg/L. */
const waterWeight = times(decimal("1000"), gravity);

/** What one unit is in metres, kilograms, seconds: exact. Temperature alone has an offset and is handled apart. */
export const unitScales = {
  in: inch,
  cm: decimal("0.01"),
  mm: decimal("0.001"),
  ft: foot,
  m: one,
  ft2: squareFoot,
  m2: one,
  gal: gallon,
  L: litre,
  mL: decimal("0.000001"),
  "gal/h": dividedBy(gallon, hour),
  "L/h": dividedBy(litre, hour),
  "gal/min": dividedBy(gallon, minute),
  "L/min": dividedBy(litre, minute),
  "in/h": dividedBy(inch, hour),
  "mm/h": dividedBy(decimal("0.001"), hour),
  "in/day": dividedBy(inch, day),
  "mm/day": dividedBy(decimal("0.001"), day),
  "ft/s": foot,
  "m/s": one,
  mph: dividedBy(mile, hour),
  "ft/min": dividedBy(foot, minute),
  "m/min": dividedBy(one, minute),
  psi: dividedBy(poundForce, times(inch, inch)),
  kPa: decimal("1000"),
  hp: times(decimal("550"), times(foot, poundForce)),
  kW: times(decimal("1000"), watt),
  kWh: decimal("3600000"),
  lb: pound,
  kg: one,
  "currency/lb": dividedBy(one, pound),
  "currency/kg": one,
  "lb/gal": dividedBy(pound, gallon),
  "kg/L": dividedBy(one, litre),
  F: dividedBy(decimal("5"), decimal("9")),
  C: one,
} as const satisfies Record<string, Rational>;

type ScaledUnit = keyof typeof unitScales;

interface Quantity {
  readonly us: string;
  readonly metric: string;
}

function everywhere(unit: string): Quantity {
  return { us: unit, metric: unit };
}

/** The unit table: what an argument, a step or an answer is counted in. */
export const quantities = {
  "pot size": { us: "in", metric: "cm" },
  "pot area": { us: "in2", metric: "cm2" },
  "water depth": { us: "in", metric: "mm" },
  "water depth per day": { us: "in/day", metric: "mm/day" },
  "pipe bore": { us: "in", metric: "mm" },
  "bore area": { us: "in2", metric: "mm2" },
  area: { us: "ft2", metric: "m2" },
  length: { us: "ft", metric: "m" },
  volume: { us: "gal", metric: "L" },
  "emitter flow": { us: "gal/h", metric: "L/h" },
  flow: { us: "gal/min", metric: "L/min" },
  "application rate": { us: "in/h", metric: "mm/h" },
  "water velocity": { us: "ft/s", metric: "m/s" },
  pressure: { us: "psi", metric: "kPa" },
  power: { us: "hp", metric: "kW" },
  weight: { us: "lb", metric: "kg" },
  "stock strength": { us: "lb/gal", metric: "kg/L" },
  temperature: { us: "F", metric: "C" },
  "temperature difference": { us: "F", metric: "C" },
  wind: { us: "mph", metric: "m/s" },
  "boom speed": { us: "ft/min", metric: "m/min" },

  seconds: everywhere("s"),
  minutes: everywhere("min"),
  hours: everywhere("h"),
  days: everywhere("days"),
  years: everywhere("years"),
  date: everywhere("date"),
  "time of day": everywhere("time"),
  catch: everywhere("mL"),
  EC: everywhere("mS/cm"),
  ppm: everywhere("ppm"),
  alkalinity: everywhere("ppm CaCO3"),
  equivalents: everywhere("meq/L"),
  normality: everywhere("eq/L"),
  "molar mass": everywhere("g/mol"),
  "TDS factor": everywhere("ppm per mS/cm"),
  "acid volume": everywhere("mL"),
  "sample weight": everywhere("g"),
  "bulk density": everywhere("g/cm3"),
  radiation: everywhere("MJ/m2/day"),
  "vapor pressure": everywhere("kPa"),
  energy: everywhere("kWh"),
  latitude: everywhere("degrees"),
  currency: everywhere("currency"),
  "price per weight": { us: "currency/lb", metric: "currency/kg" },
  fraction: everywhere("fraction"),
  percent: everywhere("%"),
  factor: everywhere("factor"),
  count: everywhere("count"),
  "day of year": everywhere("day"),
  angle: everywhere("radians"),
  "any one unit": everywhere("same unit"),
  "as named": everywhere("as named"),

  "evaporation in mm": everywhere("mm/day"),
  "wind in m/s": everywhere("m/s"),
  "height in m": everywhere("m"),
  "bore in m": everywhere("m"),
  "velocity in m/s": everywhere("m/s"),
  "flow in m3/s": everywhere("m3/s"),
  "volume in L": everywhere("L"),
  "air temperature in C": everywhere("C"),
  "absolute temperature": everywhere("K"),
  "air pressure": everywhere("kPa"),
  "slope of vapor pressure": everywhere("kPa/C"),
} as const satisfies Record<string, Quantity>;

export type QuantityName = keyof typeof quantities;

/** The unit of a quantity as text; without a system, both ("gal or L"). */
export function unitOf(name: QuantityName, system: UnitSystem | null): string {
  const { us, metric } = quantities[name];
  if (system !== null) return quantities[name][system];
  return us === metric ? us : `${us} or ${metric}`;
}

function hasScale(unit: string): unit is ScaledUnit {
  return Object.prototype.hasOwnProperty.call(unitScales, unit);
}

function scaleOf(name: QuantityName, system: UnitSystem): Rational {
  const unit = quantities[name][system];
  if (unit === "in2") return times(inch, inch);
  if (unit === "cm2") return decimal("0.0001");
  if (unit === "mm2") return decimal("0.000001");
  return hasScale(unit) ? unitScales[unit] : one;
}

const FREEZING_POINT_F = 32;

/** How many metric units one US unit is; 1 for a quantity that is the same in both. */
function metricPerUs(name: QuantityName): number {
  return toNumber(dividedBy(scaleOf(name, "us"), scaleOf(name, "metric")));
}

const metricPerUsTable = new Map<QuantityName, number>(
  (Object.keys(quantities) as QuantityName[]).map((name) => [name, metricPerUs(name)]),
);

/** The factor by which a US number of this quantity is multiplied to be metric (temperature: of a difference). */
export function metricFactor(name: QuantityName): number {
  return metricPerUsTable.get(name) ?? 1;
}

export function toMetric(name: QuantityName, value: number, system: UnitSystem): number {
  if (system === "metric") return value;
  if (name === "temperature") return (value - FREEZING_POINT_F) / 1.8;
  return value * metricFactor(name);
}

export function fromMetric(name: QuantityName, value: number, system: UnitSystem): number {
  if (system === "metric") return value;
  if (name === "temperature") return value * 1.8 + FREEZING_POINT_F;
  return value / metricFactor(name);
}

interface UnitConstant {
  readonly about: string;
  /** What the formula's metric constant is in metres, kilograms and seconds. */
  readonly constant: Rational;
  readonly over: readonly QuantityName[];
  readonly under: readonly QuantityName[];
}

/** The constants that units bring into a formula, each by its meaning; the number follows from the quantities named. */
export const unitConstants = {
  "volume of a depth on an area": {
    about: "gal on 1 ft2 per in; L on 1 m2 per mm",
    constant: one,
    over: ["water depth", "area"],
    under: ["volume"],
  },
  "volume of a depth on a pot": {
    about: "gal on 1 in2 per in; L on 1 cm2 per mm",
    constant: one,
    over: ["water depth", "pot area"],
    under: ["volume"],
  },
  "emitter flow of a catch": {
    about: "gal/h of 1 mL in 1 s; L/h of 1 mL in 1 s",
    constant: one,
    over: ["catch"],
    under: ["emitter flow", "seconds"],
  },
  "depth of a catch": {
    about: "in of 1 mL on 1 in2; mm of 1 mL on 1 cm2",
    constant: one,
    over: ["catch"],
    under: ["water depth", "pot area"],
  },
  "rate of a flow on an area": {
    about: "in/h of 1 gal/min on 1 ft2; mm/h of 1 L/min on 1 m2",
    constant: one,
    over: ["flow"],
    under: ["application rate", "area"],
  },
  "volume of a pipe": {
    about: "gal in 1 ft of 1 in2; L in 1 m of 1 mm2",
    constant: one,
    over: ["pipe bore", "pipe bore", "length"],
    under: ["volume"],
  },
  "weight of a volume of water": {
    about: "lb of 1 gal; kg of 1 L, at 1 kg/L",
    constant: decimal("1000"),
    over: ["volume"],
    under: ["weight"],
  },
  "volume of an area and a length": {
    about: "gal in 1 ft3; L in 1 m3",
    constant: one,
    over: ["area", "length"],
    under: ["volume"],
  },
  "volume of a cube": {
    about: "gal in 1 in3; L in 1 cm3",
    constant: one,
    over: ["pot size", "pot size", "pot size"],
    under: ["volume"],
  },
  "area of a square": {
    about: "ft2 in 1 in2; m2 in 1 cm2",
    constant: one,
    over: ["pot area"],
    under: ["area"],
  },
  "weight of 1 ppm": {
    about: "lb in 1 gal, kg in 1 L, where 1 ppm is 1 mg/L",
    constant: decimal("0.001"),
    over: ["volume"],
    under: ["weight"],
  },
  "litres of a volume": {
    about: "L in 1 gal; L in 1 L",
    constant: one,
    over: ["volume"],
    under: ["volume in L"],
  },
  "velocity of a flow": {
    about: "ft/s of 1 gal/min through 1 in2; m/s of 1 L/min through 1 mm2",
    constant: one,
    over: ["flow"],
    under: ["bore area", "water velocity"],
  },
  "length of a spacing": {
    about: "ft in 1 in; m in 1 cm",
    constant: one,
    over: ["pot size"],
    under: ["length"],
  },
  "head of a pressure": {
    about: "ft of water for 1 psi; m of water for 1 kPa",
    constant: dividedBy(one, waterWeight),
    over: ["pressure"],
    under: ["length"],
  },
  "power of a lifted flow": {
    about: "hp to lift 1 gal/min by 1 ft; kW to lift 1 L/min by 1 m",
    constant: waterWeight,
    over: ["flow", "length"],
    under: ["power"],
  },
  "energy of a lifted volume": {
    about: "kWh to lift 1 gal by 1 ft; kWh to lift 1 L by 1 m",
    constant: waterWeight,
    over: ["volume", "length"],
    under: ["energy"],
  },
} as const satisfies Record<string, UnitConstant>;

export type UnitConstantName = keyof typeof unitConstants;

function product(names: readonly QuantityName[], system: UnitSystem): Rational {
  return names.reduce((all, name) => times(all, scaleOf(name, system)), one);
}

function constantValue(name: UnitConstantName, system: UnitSystem): number {
  const { constant, over, under }: UnitConstant = unitConstants[name];
  return toNumber(times(constant, dividedBy(product(over, system), product(under, system))));
}

const unitConstantTable = new Map<UnitConstantName, Record<UnitSystem, number>>(
  (Object.keys(unitConstants) as UnitConstantName[]).map((name) => [
    name,
    { us: constantValue(name, "us"), metric: constantValue(name, "metric") },
  ]),
);

export function unitConstant(name: UnitConstantName, system: UnitSystem): number {
  const row = unitConstantTable.get(name);
  if (row === undefined) throw new Error(`no unit constant ${name}`);
  return row[system];
}
