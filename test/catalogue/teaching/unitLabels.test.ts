/** The labels of UNIT_LABEL read by another library as units: of the dimension that the argument's name says. */
import { createUnit, unit, Unit } from "mathjs";
import { catalogue } from "../../../src/functions/catalogue";
import { evaluate, isScalar, isTable, toMetric, usualOf } from "../../../src/kernel";
import type { Entry, QuantityName } from "../../../src/kernel";
import { entryOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against } from "../../rig/evidence";

/** mathjs has no money; a base unit of that name is all that a price needs. Loaded again, it has it. */
if (!Unit.isValuelessUnit("currency")) createUnit("currency");

const MATHJS = "mathjs 15.2.0, units";

/** Labels that are no units of measurement. */
const WITHOUT_DIMENSION = new Set(["fraction", "%", "factor", "count", "date", "time", "same unit", "as named", ""]);

/** How mathjs spells what the trade writes. */
const SPELT: Readonly<Record<string, string>> = {
  gal: "gallon",
  mL: "cm^3",
  h: "hour",
  min: "minute",
  days: "day",
  years: "year",
  lb: "lbm",
  F: "degF",
  C: "degC",
  mph: "mi / hour",
  kWh: "kW hour",
  degrees: "deg",
  ppm: "mg / L",
  "ppm CaCO3": "mg / L",
  eq: "mol",
};

const spelt = (part: string): string => SPELT[part] ?? part.replace(/2$/, "^2");

function inMathjs(label: string): string {
  const [number, per] = label.split(" per ");
  const written = (text: string): string => (text.includes("/") ? text.split("/").map(spelt).join(" / ") : spelt(text));
  return per === undefined ? written(label) : `(${written(number as string)}) / (${written(per)})`;
}

const LENGTH = "m";
const AREA = "m^2";
const VOLUME = "m^3";
const SPEED = "m / s";
const FLOW = "m^3 / s";
const TIME = "s";

/** What a name is about, by its words: arguments, columns and functions alike. The first that fits counts. */
const DIMENSIONS: readonly (readonly [name: RegExp, ...dimensions: string[]])[] = [
  [/^price_per_weight$/, "currency / kg"],
  [
    /COST|^(tier_prices|fixed_charge|total_cost|investment|salvage|annual_savings?|cumulative|saving_values)$/,
    "currency",
  ],
  [/^(saving|discounted cumulative|value (low|high))$/, "currency"],
  [/tds_factor/, "kg / (m^2 siemens)"],
  [/NORMALITY|_normality$/, "mol / m^3"],
  [/ppm|PPM_|alkalinity|ION_BUILDUP/, "kg / m^3"],
  [/^(ec_|feed_ec|label_ec|water_ec)|(^|_)ecs?$|_EC$/, "siemens / m"],
  [/^(stock_strength|bulk_density)/, "kg / m^3"],
  [/minutes|MINUTES|^seconds$|hours|HOURS|years|YEARS|^payback|INTERVAL|DAYS_OF_STORAGE/, TIME],
  [/WATER_FROM_WEIGHT/, VOLUME],
  [/weight|WEIGHT|NUTRIENT_LEACHED/, "kg"],
  [/^(flows?|flow_(min|mean|ref|1|2)|.*_flow)$|_FLOW|SUPPLY_FLOW|EMITTER_FLOW_AT_PRESSURE/, FLOW],
  [/application_rate|APPLICATION_RATE|CATCH_RATE/, SPEED],
  [/^(wind_speed|travel_speed|velocity)$|VELOCITY|WIND_AT_2M/, SPEED],
  [/^ET0_|^reference ET$/, SPEED],
  [/volume|VOLUME|uptake|storage|^daily_|tank|TANK|^net|^room$|available_water|AVAILABLE_WATER/, VOLUME],
  [
    /WATER_HELD|WATER_DEMAND|EFFECTIVE_RAIN|GROSS_WATER|MAT_RECHARGE|RAIN_HARVEST|catch|stock_used|measured_use/,
    VOLUME,
  ],
  [/area|AREA/, AREA],
  [/pressure_|^pressure$|_pressure$|VAPOR_PRESSURE/, "Pa"],
  [/^(tmax|tmin)$/, "K"],
  [/solar_radiation|RADIATION|SOLAR_FROM/, "W / m^2"],
  [/latitude/, "rad"],
  [/PUMP_POWER/, "W"],
  [/PUMP_ENERGY/, "J"],
  // A depth of water, or of water in a day.
  [/^depth$/, LENGTH, SPEED],
  [/depths|flood_depth|^rain$|reference_et|WATER_DEPTH|OVERHEAD_DEPTH|BOOM_DEPTH/, LENGTH],
  [/diameter|height|row|spacing|width|length|fetch|elevation|lift|head|HEAD|LOSS/, LENGTH],
];

interface Asked {
  readonly entry: Entry;
  readonly argument: string;
  readonly quantity: QuantityName;
}

const asked: readonly Asked[] = catalogue.flatMap((entry) => {
  const { result, params } = entry;
  const known: Asked[] = [];
  for (const [argument, param] of Object.entries(params)) {
    if ("quantity" in param) known.push({ entry, argument, quantity: param.quantity });
  }
  if (isScalar(result)) known.push({ entry, argument: "", quantity: result.quantity });
  if (isTable(result)) {
    for (const { name, quantity } of result.table)
      if (quantity !== "text") known.push({ entry, argument: name, quantity });
  }
  return known;
});

function labelOf({ entry, argument }: Asked, units: "us" | "metric"): string {
  return evaluate(entryOf("UNIT_LABEL"), [entry.name, argument, units]) as string;
}

const measured = asked.filter((each) => !WITHOUT_DIMENSION.has(labelOf(each, "us")));

describe(against("UNIT_LABEL", MATHJS), () => {
  test("every label is a unit of the dimension that the name of the argument, column or function says", () => {
    const wrong = measured.flatMap((each) => {
      const name = each.argument === "" ? each.entry.name : each.argument;
      const [, ...dimensions] = DIMENSIONS.find(([words]) => words.test(name)) ?? [/$/];
      return (["us", "metric"] as const).flatMap((system) => {
        const label = labelOf(each, system);
        const read = unit(1, inMathjs(label));
        return dimensions.some((dimension) => read.equalBase(unit(1, dimension)))
          ? []
          : [`${each.entry.name} ${each.argument}: ${label}, expected ${dimensions.join(" or ") || "nothing known"}`];
      });
    });
    expect(wrong).toEqual([]);
    expect(measured.length).toBeGreaterThan(250);
  });

  test("both labels of a number are as far apart as the number is converted", () => {
    for (const each of measured) {
      const [us, metric] = [labelOf(each, "us"), labelOf(each, "metric")].map(inMathjs) as [string, string];
      // mathjs leans on a pound-force of ten digits for psi and hp.
      expectClose(toMetric(each.quantity, 50, "us"), unit(50, us).toNumber(metric), 1e-9);
    }
  });

  test("what has no dimension in one system has none in the other", () => {
    for (const each of asked) {
      expect(WITHOUT_DIMENSION.has(labelOf(each, "metric"))).toBe(WITHOUT_DIMENSION.has(labelOf(each, "us")));
    }
  });
});

describe(against("CHECK_RANGE", MATHJS), () => {
  /** Ranges are round in both systems, so their ends may lie a third apart and no more. */
  const ROUND = 1.34;

  test("the US and the metric end of every usual range are the same physical size, rounded", () => {
    const apart = measured.flatMap((each) => {
      const usual = usualOf(each.entry, each.argument);
      if (usual === undefined || isTable(each.entry.result)) return [];
      const [us, metric] = [labelOf(each, "us"), labelOf(each, "metric")].map(inMathjs) as [string, string];
      return [0, 1].flatMap((end) => {
        const [there, here] = [usual.us[end] as number, usual.metric[end] as number];
        const ratio = there === 0 && here === 0 ? 1 : unit(there, us).toNumber(metric) / here;
        return ratio > 1 / ROUND && ratio < ROUND
          ? []
          : [`${each.entry.name} ${each.argument}: ${there} ${us}, ${here} ${metric}`];
      });
    });
    expect(apart).toEqual([]);
  });
});
