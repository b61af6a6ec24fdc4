import { cite, defineFunction, type CellAnswer } from "../../../kernel";
import { MINUTES_PER_DAY, PAST_MIDNIGHT } from "../clock";

const MOST_PULSES = 1000;

export const pulseSchedule = defineFunction({
  name: "PULSE_SCHEDULE",
  group: "Run time, zones, booms, mats",
  summary: "Start and stop of each pulse when the day's water is given in parts",
  formula: "minutes = total / pulses + fill; n - 1 rests",
  source: cite("DEFINITION", "n pulses have n - 1 rests between them; the last rest is not waited for"),
  assumptions: [
    "Every pulse gets the same share, and the fill minutes on top, since the line drains at each rest.",
    PAST_MIDNIGHT,
  ],
  params: {
    total_minutes: {
      quantity: "minutes",
      symbol: "T",
      above: 0,
      about: "Run time of the day, without filling the line",
    },
    pulses: {
      quantity: "count",
      symbol: "n",
      atLeast: 1,
      atMost: MOST_PULSES,
      whole: true,
      guard: "more pulses than any controller is set to",
      about: "Number of pulses",
      usual: { us: [1, 12], metric: [1, 12], source: cite("PRACTICE", "cyclic irrigation") },
    },
    rest_minutes: {
      quantity: "minutes",
      symbol: "r",
      atLeast: 0,
      about: "Rest from the stop of one pulse to the start of the next; 0 is a value, so leave no blank",
      usual: { us: [10, 180], metric: [10, 180], source: cite("PRACTICE", "cyclic irrigation") },
    },
    start_time: {
      quantity: "time of day",
      symbol: "s",
      atLeast: 0,
      about: "Start of the first pulse, a time of the sheet; 0 is midnight",
    },
    fill_minutes: {
      quantity: "minutes",
      symbol: "f",
      atLeast: 0,
      default: 0,
      about: "Minutes for filling the line, added to every pulse",
    },
  },
  result: {
    header: true,
    table: [
      { name: "pulse", quantity: "count" },
      { name: "start", quantity: "time of day" },
      { name: "stop", quantity: "time of day" },
      { name: "minutes", quantity: "minutes" },
    ],
    about: "One row a pulse",
  },
  examples: [
    {
      given: { total_minutes: 45, pulses: 3, rest_minutes: 60, start_time: 0.25 },
      gives: [
        ["pulse", "start", "stop", "minutes"],
        [1, 0.25, 0.25 + 15 / 1440, 15],
        [2, 0.25 + 75 / 1440, 0.25 + 90 / 1440, 15],
        [3, 0.25 + 150 / 1440, 0.25 + 165 / 1440, 15],
      ],
      from: cite("ARITHMETIC", "45 minutes in 3 parts, two rests of an hour: 6:00 to 8:45"),
    },
    {
      given: { total_minutes: 20, pulses: 2, rest_minutes: 30, start_time: 0, fill_minutes: 2 },
      gives: [
        ["pulse", "start", "stop", "minutes"],
        [1, 0, 12 / 1440, 12],
        [2, 42 / 1440, 54 / 1440, 12],
      ],
      from: cite("ARITHMETIC", "10 + 2 minutes twice, half an hour between"),
    },
  ],
  mistakes: [],
  seeAlso: ["RUN_MINUTES", "LINE_FILL_MINUTES", "ZONE_SEQUENCE"],
  caution: "Short pulses on a long line water only its head: compare with the minutes that the line takes to fill.",
  compute({ total_minutes, pulses, rest_minutes, start_time, fill_minutes }, show) {
    const minutes = show("m = T / n + f", total_minutes / pulses + fill_minutes, "minutes", "Minutes of each pulse");
    const rows: CellAnswer[][] = [["pulse", "start", "stop", "minutes"]];
    for (let pulse = 1; pulse <= pulses; pulse += 1) {
      const start = start_time + ((pulse - 1) * (minutes + rest_minutes)) / MINUTES_PER_DAY;
      rows.push([pulse, start, start + minutes / MINUTES_PER_DAY, minutes]);
    }
    show("stop = s + m / 1440", start_time + minutes / MINUTES_PER_DAY, "time of day", "Stop of the first pulse");
    return rows;
  },
});
