/** A small workbook with one of each thing that a starter may have; invented, for tests of the pages only. */
import type { Edition, Starter } from "../../src/workbooks/kit";
import { StarterBuilder } from "../../src/workbooks/kit";

export const SAMPLE_DAYS = 4;

export function sampleStarter(edition: Edition): Starter {
  const starter = new StarterBuilder(edition, {
    id: "sample",
    title: "Sample of everything",
    purpose: "One of each thing that a workbook may have.",
    steps: ["Change an input."],
    cautions: [],
  });
  const pick = <T>(us: T, metric: T): T => starter.pick(us, metric);
  const inputs = starter.sheet("Inputs", { title: "Inputs" });
  inputs.block("Zone");
  const units = starter.units(inputs);
  const systems = starter.list("Systems", ["drip", "boom", "overhead"]);
  const plants = inputs.input({
    label: "Plants",
    input: 400,
    format: "decimals0",
    limits: { least: 1, most: 100_000, whole: true },
  });
  const system = inputs.input({ label: "System", input: "drip", limits: { list: systems } });
  const flow = inputs.input({
    label: "Flow of one emitter",
    unit: pick("gal/h", "L/h"),
    input: pick(1, 4),
    format: "decimals2",
    limits: { least: 0.1, most: 100 },
  });
  const volume = inputs.input({
    label: "Water for one plant",
    unit: pick("gal", "L"),
    input: pick(0.25, 1),
    format: "decimals3",
    limits: { least: 0.01, most: 50 },
  });

  const weather = starter.sheet("Weather", { title: "Weather", widths: [13, 10, 10, 10, 13, 13] });
  const days = weather.table({
    rows: SAMPLE_DAYS,
    columns: [
      { key: "date", heading: "Date", format: "date", inputs: [46_204, 46_205, 46_206, 46_207] },
      {
        key: "tmax",
        heading: "Highest",
        unit: pick("F", "C"),
        format: "decimals1",
        inputs: pick([88, 91, 93, 92], [31, 33, 34, 33]),
      },
      {
        key: "tmin",
        heading: "Lowest",
        unit: pick("F", "C"),
        format: "decimals1",
        inputs: pick([66, 67, 69, 70], [19, 19, 21, 21]),
      },
      { key: "rain", heading: "Rain", unit: pick("in", "mm"), format: "decimals2", inputs: [0, 0.2, 0, 0] },
      {
        key: "range",
        heading: "Range",
        unit: pick("F", "C"),
        format: "decimals1",
        formula: (cell) => `=IF(COUNT(${cell("tmax")}, ${cell("tmin")})=2, ${cell("tmax")}-${cell("tmin")}, "")`,
        how: "highest less lowest",
      },
      {
        key: "sum",
        heading: "Rain so far",
        unit: pick("in", "mm"),
        format: "decimals2",
        formula: (cell) => `=SUM($D$8:${cell("rain")})`,
        how: "rain of this day and all before",
      },
    ],
  });

  const work = starter.sheet("Work", { title: "Work" });
  work.block("Minutes");
  const minutes = work.formula({
    label: "Minutes",
    unit: "min",
    formula: `=CANYARD.RUN_MINUTES(${volume}, ${flow})`,
    format: "decimals1",
    how: "60 x volume / flow",
  });
  work.skip();
  const pulses = work.spill({
    label: "Pulses",
    how: `One after another, ${units.here ? "in minutes" : ""}.`,
    table: `=CANYARD.PULSE_SCHEDULE(${minutes}, 3, 60, 0.25)`,
    rows: 4,
    formats: ["decimals0", "time", "time", "decimals1"],
    header: true,
  });

  const result = starter.sheet("Result", { title: "Result" });
  result.block("To print");
  result.formula({
    label: "Minutes in all",
    unit: "min",
    formula: `=SUM(${pulses.column(3, 1)})`,
    format: "decimals1",
  });
  result.formula({ label: "System", formula: `=${system}` });
  const row = (at: number) => ({ width: 420, height: 220, cell: `A${10 + at * 11}` });
  const chart = { labels: String(days.column["date"]), axisTitles: { labels: "Day", values: pick("F", "C") } };
  const tmax = { name: "Highest", values: String(days.column["tmax"]) };
  const tmin = { name: "Lowest", values: String(days.column["tmin"]) };
  result
    .chart({
      ...chart,
      type: "columns",
      title: "Columns",
      description: "Temperatures.",
      series: [tmax, tmin],
      position: row(0),
    })
    .chart({
      ...chart,
      type: "columns",
      stacked: true,
      title: "Stacked, with a line",
      description: "Stacked columns and a line.",
      series: [tmin, { name: "Range", values: String(days.column["range"]) }, { ...tmax, as: "line" }],
      position: row(1),
    })
    .chart({
      type: "bars",
      stacked: true,
      topDown: true,
      title: "Strip of the day",
      description: "When each runs.",
      labels: String(days.column["date"]),
      series: [
        { name: "Start", values: String(days.column["tmin"]), unseen: true },
        { name: "Runs", values: String(days.column["range"]) },
      ],
      axisTitles: { labels: "Zone", values: "Minute" },
      position: row(2),
    })
    .chart({
      ...chart,
      type: "lines",
      title: "Lines",
      description: "Two courses.",
      series: [tmax, tmin],
      position: row(3),
    })
    .chart({
      type: "points",
      title: "Points",
      description: "Highest against lowest.",
      labels: String(days.column["tmin"]),
      series: [tmax],
      axisTitles: { labels: "Lowest", values: "Highest" },
      position: row(4),
    });

  starter.check("There are plants", `${plants}>0`, "Type how many plants there are.");
  starter.check(
    "Every day has its rain",
    `COUNT(${days.column["rain"]})=ROWS(${days.column["rain"]})`,
    "Type the rain, 0 where none fell.",
  );
  starter.check("Run is shorter than a day", `${minutes}<1440`, "Look at flow and volume.");
  starter.grows({
    inputs: `Weather!$A$8:$D$11`,
    following: [`Weather!$E$8:$F$11`],
    fields: [
      { field: "date", column: "A", unit: "date" },
      { field: "tmax", column: "B", unit: pick("F", "C") },
      { field: "tmin", column: "C", unit: pick("F", "C") },
      { field: "rain", column: "D", unit: pick("in", "mm") },
    ],
  });
  return starter.build();
}
