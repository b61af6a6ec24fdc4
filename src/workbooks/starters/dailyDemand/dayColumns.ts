import type { StarterBuilder, TableColumn } from "../../kit";
import { around, firstOf } from "../shared/rowsAround";
import { dayPlain } from "./dayPlain";
import type { DemandInputs } from "./inputs";
import type { Pot } from "./work";

/** Rows on either side from which a missing day is filled; the three heading rows above the first day hold no number. */
const NEIGHBOURS = 3;

/** The cell of a day on Weather, by the key of its column. */
export type OnWeather = (key: string, row: number) => string;

export function etColumns(
  kit: StarterBuilder,
  given: DemandInputs,
  temperatures: string,
  weather: OnWeather,
): readonly TableColumn[] {
  const depth = { unit: kit.pick("in/day", "mm/day"), format: kit.pick("decimals3", "decimals2") } as const;
  return [
    {
      key: "date",
      heading: "date",
      format: "date",
      formula: (_cell, row) => `=IF(${weather("date", row)} = "", "", ${weather("date", row)})`,
    },
    {
      key: "worked",
      heading: "ET by the temperatures",
      ...depth,
      fills: `=CANYARD.ET0_TABLE(${temperatures}, ${given.latitude}, ${given.elevation}, units)`,
      plain: (_cell, row) =>
        dayPlain(kit.edition, {
          date: weather("date", row),
          tmax: weather("tmax", row),
          tmin: weather("tmin", row),
          latitude: String(given.latitude),
        }),
      how: "0.0023 x (mean in C + 17.8) x root of the range in C x sun of the day, as water. One call fills the column",
    },
    {
      key: "known",
      heading: "ET as read",
      ...depth,
      formula: (cell, row) => {
        const typed = weather("station", row);
        const isComplete = `AND(COUNT(${weather("tmax", row)}, ${weather("tmin", row)}) = 2, ISNUMBER(${cell("worked")}))`;
        const station = `IF(COUNT(${typed}) = 1, ${typed}, "")`;
        return `=IF(${cell("date")} = "", "", IF(${given.source} = "station", ${station}, IF(${isComplete}, ${cell("worked")}, "")))`;
      },
      how: "from the source chosen on Inputs, where the day has it",
    },
    {
      key: "readOn",
      heading: "day with a reading",
      format: "date",
      formula: (cell) => `=IF(COUNT(${cell("known")}) = 1, ${cell("date")}, "")`,
      how: "the latest of them is the last day that is worked",
    },
    {
      key: "reading",
      heading: "reading",
      style: "mark",
      formula: (cell, row) => {
        const [date, known] = [cell("date"), cell("known")];
        const first = firstOf(date, row);
        const follows = `${date} - SUM(${first}) = ROW(${date}) - ROW(${first})`;
        const missing = `IF(COUNT(${around(known, NEIGHBOURS)}) = 0, "guessed", "filled")`;
        const present = `IF(${follows}, "read", "date?")`;
        return `=IF(${date} = "", "", IF(${date} > last_day, "to come", IF(COUNT(${known}) = 0, ${missing}, ${present})))`;
      },
      how: "filled: from the days around; guessed: none of them was read; to come: after the last reading; date?: a day is left out or out of order",
    },
    {
      key: "et",
      heading: "ET worked with",
      ...depth,
      formula: (cell) => {
        const filled = `IFERROR(AVERAGE(${around(cell("known"), NEIGHBOURS)}), mean_et)`;
        const used = `IF(COUNT(${cell("known")}) = 1, ${cell("known")}, ${filled})`;
        return `=IF(OR(${cell("reading")} = "", ${cell("reading")} = "to come"), 0, ${used})`;
      },
      how: "as read; for a missing day the mean of what was read on the three days before it and the three after",
    },
  ];
}

export function waterColumns(
  kit: StarterBuilder,
  given: DemandInputs,
  pot: Pot,
  weather: OnWeather,
): readonly TableColumn[] {
  const volume = { unit: kit.pick("gal", "L"), format: kit.pick("decimals3", "decimals2") } as const;
  const isIdle = (reading: string): string => `OR(${reading} = "", ${reading} = "to come")`;
  return [
    {
      key: "kc",
      heading: "crop coefficient",
      unit: "factor",
      format: "decimals2",
      formula: (cell) => {
        const half = `(MONTH(${cell("date")}) - 1) * 2 + IF(DAY(${cell("date")}) > 15, 2, 1)`;
        return `=IF(${cell("date")} = "", "", INDEX(${given.coefficients}, ${half}))`;
      },
      how: "the half-month of the date, from Inputs",
    },
    {
      key: "use",
      heading: "plant used",
      ...volume,
      style: "result",
      formula: (cell) =>
        `=IF(${cell("et")} > 0, CANYARD.PLANT_WATER_DEMAND(${cell("et")}, ${cell("kc")}, ${pot.area}, units), 0)`,
      how: "ET x crop coefficient x ground of a plant",
    },
    {
      key: "rain",
      heading: "rain into the pot",
      ...volume,
      formula: (cell, row) => {
        const caught = `CANYARD.EFFECTIVE_RAIN(SUM(${weather("rain", row)}), ${given.top}, units, ${given.capture})`;
        return `=IF(${isIdle(cell("reading"))}, 0, ${caught})`;
      },
      how: "rain x the pot's opening x capture factor; what it cannot hold drains in the balance",
    },
    {
      key: "kept",
      heading: "irrigation kept",
      ...volume,
      formula: (cell, row) =>
        `=IF(${isIdle(cell("reading"))}, 0, SUM(${weather("irrigation", row)}) * (1 - ${given.leaching}))`,
      how: "water given x (1 - part that runs out below)",
    },
    {
      key: "refill",
      heading: "refill line",
      ...volume,
      formula: () => "=refill_line",
      how: "the deficit at which to irrigate, from Work",
    },
  ];
}
