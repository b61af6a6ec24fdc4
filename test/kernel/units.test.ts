import { quantities, unitConstant, unitOf, fromMetric, toMetric, unitConstants } from "../../src/kernel";
import type { QuantityName } from "../../src/kernel";
import { metricFactor } from "../../src/kernel/units";
import { expectClose } from "../rig/closeness";

describe("the unit table", () => {
  test.each<[QuantityName, string, string]>([
    ["pot size", "in", "cm"],
    ["water depth", "in", "mm"],
    ["water depth per day", "in/day", "mm/day"],
    ["pipe bore", "in", "mm"],
    ["area", "ft2", "m2"],
    ["length", "ft", "m"],
    ["volume", "gal", "L"],
    ["emitter flow", "gal/h", "L/h"],
    ["flow", "gal/min", "L/min"],
    ["application rate", "in/h", "mm/h"],
    ["water velocity", "ft/s", "m/s"],
    ["pressure", "psi", "kPa"],
    ["power", "hp", "kW"],
    ["weight", "lb", "kg"],
    ["temperature", "F", "C"],
    ["wind", "mph", "m/s"],
    ["boom speed", "ft/min", "m/min"],
  ])("%s is %s or %s", (quantity, us, metric) => {
    expect([unitOf(quantity, "us"), unitOf(quantity, "metric")]).toEqual([us, metric]);
    expect(unitOf(quantity, null)).toBe(`${us} or ${metric}`);
  });

  test.each<[QuantityName, string]>([
    ["seconds", "s"],
    ["minutes", "min"],
    ["hours", "h"],
    ["days", "days"],
    ["catch", "mL"],
    ["EC", "mS/cm"],
    ["ppm", "ppm"],
    ["radiation", "MJ/m2/day"],
    ["vapor pressure", "kPa"],
    ["energy", "kWh"],
    ["latitude", "degrees"],
    ["currency", "currency"],
  ])("%s is %s everywhere", (quantity, unit) => {
    expect([unitOf(quantity, "us"), unitOf(quantity, "metric"), unitOf(quantity, null)]).toEqual([unit, unit, unit]);
    expect(metricFactor(quantity)).toBe(1);
  });
});

// Exact definitions: 1 in = 2.54 cm, 1 gal = 231 in3, 1 lb = 0.45359237 kg, g = 9.80665 m/s2, 1 hp = 550 ft lbf/s,
// 1 mile = 5280 ft. The products below are written out from these in another order than the code takes.
describe("exact conversions", () => {
  test.each<[QuantityName, string, number]>([
    ["pot size", "2.54 cm to the inch", 2.54],
    ["water depth", "25.4 mm to the inch", 25.4],
    ["pipe bore", "25.4 mm to the inch", 25.4],
    ["length", "0.3048 m to the foot", 0.3048],
    ["area", "0.09290304 m2 to the square foot, 0.3048^2", 0.09290304],
    ["pot area", "6.4516 cm2 to the square inch, 2.54^2", 6.4516],
    ["volume", "3.785411784 L to the gallon, 231 x 2.54^3 / 1000", 3.785411784],
    ["emitter flow", "the same per hour", 3.785411784],
    ["flow", "the same per minute", 3.785411784],
    ["application rate", "25.4 mm/h to the in/h", 25.4],
    ["water velocity", "0.3048 m/s to the ft/s", 0.3048],
    ["wind", "0.44704 m/s to the mph, 5280 x 0.3048 / 3600", 0.44704],
    ["boom speed", "0.3048 m/min to the ft/min", 0.3048],
    ["weight", "0.45359237 kg to the pound", 0.45359237],
    ["pressure", "6.894757293168361 kPa to the psi", 6.894757293168361],
    ["power", "0.7456998715822702 kW to the horsepower", 0.7456998715822702],
    ["temperature difference", "5 / 9 C to the F", 5 / 9],
  ])("%s: %s", (quantity, _words, factor) => {
    expect(metricFactor(quantity)).toBe(factor);
    expect(toMetric(quantity, 1, "us")).toBe(factor);
  });

  test("psi and horsepower follow from pound, foot and gravity", () => {
    expectClose(metricFactor("pressure"), (0.45359237 * 9.80665) / (0.0254 * 0.0254) / 1000, 1e-15);
    expectClose(metricFactor("power"), (550 * 0.3048 * 0.45359237 * 9.80665) / 1000, 1e-15);
  });

  test.each([
    ["1 US gallon is 3.785412 L", "volume", 1, 3.785412, 1e-6],
    ["1 psi is 6.895 kPa; FAO-56 Annex 1 misprints 6.896", "pressure", 1, 6.895, 1e-4],
    ["5 ft/s is 1.524 m/s", "water velocity", 5, 1.524, 1e-12],
    ["0.29 in/h is 7.4 mm/h (Overton 2014: 0.74 cm/h)", "application rate", 0.29, 7.4, 0.01],
  ] as const)("%s", (_words, quantity, us, metric, apart) => {
    expectClose(toMetric(quantity, us, "us"), metric, apart);
  });
});

describe("temperature", () => {
  test.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [50, 10],
    [0, -160 / 9],
  ])("%d F is %d C", (fahrenheit, celsius) => {
    expectClose(toMetric("temperature", fahrenheit, "us"), celsius, 1e-15, 1e-14);
    expectClose(fromMetric("temperature", celsius, "us"), fahrenheit, 1e-15, 1e-13);
  });

  test("has an offset as a reading and none as a difference", () => {
    expect(toMetric("temperature difference", 18, "us")).toBe(10);
    expect(fromMetric("temperature difference", 10, "us")).toBe(18);
  });
});

test("metric numbers pass through the kernel untouched", () => {
  for (const quantity of Object.keys(quantities) as QuantityName[]) {
    expect([toMetric(quantity, 0.1, "metric"), fromMetric(quantity, 0.1, "metric")]).toEqual([0.1, 0.1]);
  }
});

describe("constants that units bring into a formula", () => {
  test("a depth on an area: 144 in3 to the in on 1 ft2, 231 in3 to the gallon; 1 L to the mm on 1 m2", () => {
    expect(unitConstant("volume of a depth on an area", "us")).toBe(144 / 231);
    expect(unitConstant("volume of a depth on an area", "us")).toBe(0.6233766233766234);
    expect(unitConstant("volume of a depth on an area", "metric")).toBe(1);
  });

  test("a cube: 231 in3 to the gallon, 1000 cm3 to the litre", () => {
    expect(unitConstant("volume of a cube", "us")).toBe(1 / 231);
    expect(unitConstant("volume of a cube", "metric")).toBe(1 / 1000);
  });

  test("1 ft3 is 7.480519 gal: 1728 / 231", () => {
    expectClose(unitConstant("volume of a cube", "us") * 1728, 7.480519, 0, 1e-6);
  });

  test.each(Object.keys(unitConstants) as (keyof typeof unitConstants)[])("%s says in words what it is", (name) => {
    expect(unitConstants[name].about).not.toBe("");
    for (const system of ["us", "metric"] as const) expect(unitConstant(name, system)).toBeGreaterThan(0);
  });
});
