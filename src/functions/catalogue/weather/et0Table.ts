import {
  boundsOf,
  cite,
  defineFunction,
  evaluate,
  FunctionError,
  UNITS_PARAM,
  within,
  type CellAnswer,
  type CellInput,
  type Entry,
  type NumberParam,
  type Show,
  type UnitSystem,
} from "../../../kernel";
import { LATITUDE_PARAM } from "./dayOfYear";
import { et0Hargreaves } from "./et0Hargreaves";
import { ELEVATION_PARAM, et0PenmanMonteith } from "./et0PenmanMonteith";
import { hargreaves } from "./hargreaves";
import { penmanMonteith } from "./penmanMonteith";

interface Place {
  readonly latitude: number;
  readonly elevation: number;
  readonly system: UnitSystem;
}

type NumberRow = readonly number[];

/** How a row of one layout is read: its columns are arguments of the function that works a single day. */
interface Layout {
  readonly daily: Entry;
  readonly columns: readonly string[];
  /** Columns in which 0 is what a host sends for an empty cell. */
  readonly zeroIsBlank: readonly number[];
  work(row: NumberRow, place: Place, show: Show): number;
}

const TMAX = 1;
const TMIN = 2;
const RH_MAX = 3;
const RH_MIN = 4;

const temperatureOnly: Layout = {
  daily: et0Hargreaves,
  columns: ["date", "tmax", "tmin"],
  zeroIsBlank: [0],
  work(row, { latitude }, show) {
    const day = {
      date: Math.floor(row[0] as number),
      tmax: row[TMAX] as number,
      tmin: row[TMIN] as number,
      latitude,
    };
    return hargreaves(day, show);
  },
};

const fullStation: Layout = {
  daily: et0PenmanMonteith,
  columns: ["date", "tmax", "tmin", "rh_max", "rh_min", "wind_speed", "solar_radiation"],
  zeroIsBlank: [0, 3, 4, 5, 6],
  work(row, { latitude, elevation }, show) {
    const day = {
      date: Math.floor(row[0] as number),
      tmax: row[TMAX] as number,
      tmin: row[TMIN] as number,
      rhMax: row[RH_MAX] as number,
      rhMin: row[RH_MIN] as number,
      wind: row[5] as number,
      windHeight: null,
      solar: row[6] as number,
      latitude,
      elevation,
    };
    return penmanMonteith(day, show);
  },
};

const LAYOUTS: Readonly<Record<number, Layout>> = { 3: temperatureOnly, 7: fullStation };

function isComplete(row: readonly CellInput[], { zeroIsBlank }: Layout): row is NumberRow {
  for (const cell of row) if (typeof cell !== "number") return false;
  for (const column of zeroIsBlank) if (row[column] === 0) return false;
  return !(row[TMAX] === 0 && row[TMIN] === 0);
}

/** Limits of the columns, those of the single day's arguments. */
function columnBounds({ daily, columns }: Layout, system: UnitSystem): ReturnType<typeof boundsOf>[] {
  return columns.map((name) => {
    const param = daily.params[name] as NumberParam;
    return boundsOf(param, param.quantity, system);
  });
}

/** Whether the single day's function would take the row. */
function isUsable(row: NumberRow, bounds: ReturnType<typeof columnBounds>): boolean {
  if (row.length !== bounds.length || (row[TMIN] as number) > (row[TMAX] as number)) return false;
  if (row.length > RH_MIN && (row[RH_MIN] as number) > (row[RH_MAX] as number)) return false;
  for (let column = 0; column < row.length; column += 1) {
    if (!within(row[column] as number, bounds[column]!)) return false;
  }
  return true;
}

/** What the single day's function says of a row that it refuses, without its name; null where it has an answer. */
function reasonAgainst(
  row: NumberRow,
  { daily, columns }: Layout,
  { latitude, elevation, system }: Place,
): string | null {
  const known: Record<string, unknown> = { latitude, elevation, units: system };
  columns.forEach((name, column) => {
    known[name] = row[column];
  });
  try {
    evaluate(
      daily,
      Object.keys(daily.params).map((name) => known[name] as CellInput),
    );
    return null;
  } catch (error) {
    if (error instanceof FunctionError) return error.message.replace(`${daily.name}: `, "");
    throw error;
  }
}

function showRow(row: NumberRow, show: Show): void {
  const names = ["date", "Tmax", "Tmin", "RHx", "RHn", "uz", "Rs"];
  const quantities = ["date", "temperature", "temperature", "percent", "percent", "wind", "radiation"] as const;
  const words = [
    "Day",
    "Highest temperature",
    "Lowest temperature",
    "Highest humidity",
    "Lowest humidity",
    "Wind at 2 m",
    "Solar radiation",
  ];
  row.forEach((value, column) => {
    show(names[column] as string, value, quantities[column] ?? "factor", `${words[column]}, from the row`);
  });
}

export const et0Table = defineFunction({
  name: "ET0_TABLE",
  group: "Weather and demand",
  summary: "Reference evapotranspiration of every day of a weather table in one call",
  formula: "each row by Hargreaves (3 columns) or Penman-Monteith (7 columns)",
  source: cite("FAO56", "Eq. 52 for 3 columns, Eq. 6 for 7 columns"),
  assumptions: [
    "3 columns: date, tmax, tmin. 7 columns: date, tmax, tmin, rh_max, rh_min, wind at 2 m, solar radiation in MJ/m2/day.",
    'An incomplete row gives "": any blank or text, or 0 where only a blank can be meant (date, humidity, wind, solar; tmax and tmin both 0). A single temperature of 0 is a reading.',
    "A row that cannot be right gives its reason as text. Count the numbers of the answer against the days.",
  ],
  params: {
    weather: { kind: "cells", about: "One row a day, 3 or 7 columns, in date order or not" },
    latitude: LATITUDE_PARAM,
    elevation: ELEVATION_PARAM,
    units: UNITS_PARAM,
  },
  result: {
    header: false,
    table: [{ name: "reference ET", quantity: "water depth per day" }],
    about: "One number a row, in the order of the rows",
  },
  examples: [
    {
      given: {
        weather: [
          [42200, 26.6, 14.8],
          [42201, null, 14],
        ],
        latitude: 45.72,
        elevation: 200,
        units: "metric",
      },
      gives: [[5.0], [""]],
      within: 0.051,
      from: cite("FAO56", "Example 20, Lyon, closing line; the second day lacks a reading"),
    },
    {
      given: {
        weather: [[42191, 21.5, 12.3, 84, 63, 2.078, 22.07]],
        latitude: 50.8,
        elevation: 100,
        units: "metric",
      },
      gives: [[3.88]],
      within: 0.02,
      from: cite("FAO56", "Example 18, Uccle, 6 July, wind brought to 2 m"),
    },
  ],
  mistakes: [],
  seeAlso: ["ET0_HARGREAVES", "ET0_PENMAN_MONTEITH", "WATER_BALANCE"],
  caution: 'A day without data must be counted, not summed as 0: "" is not a day without demand.',
  compute({ weather, latitude, elevation }, show, { system }) {
    const width = weather[0]?.length ?? 0;
    const layout = LAYOUTS[width];
    if (layout === undefined) {
      const itMust = "it must have 3 columns (date, tmax, tmin) or 7 (date, tmax, tmin, rh_max, rh_min, wind, solar)";
      const wide = `${width} ${width === 1 ? "column" : "columns"} wide`;
      throw new FunctionError("input", "weather", `ET0_TABLE: weather is ${wide}; ${itMust}`);
    }
    const place = { latitude, elevation, system };
    const bounds = columnBounds(layout, system);
    let heard: Show = show;
    return weather.map((row): CellAnswer[] => {
      if (!isComplete(row, layout)) return [""];
      const reason = isUsable(row, bounds) ? null : reasonAgainst(row, layout, place);
      if (reason !== null) return [reason];
      if (heard !== show.silent) showRow(row, heard);
      const et = layout.work(row, place, heard);
      heard = show.silent;
      return [et];
    });
  },
});
