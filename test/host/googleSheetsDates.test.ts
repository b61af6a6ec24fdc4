/** A date or a time of a cell comes to the script of Google Sheets as a moment, and must mean what the cell shows. */
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { call } from "../../src/functions";
import { openGoogleSheet, SCRIPT_FILE } from "../rig/googleSheets";
import { serialNumber } from "../rig/serialNumber";

const sheet = openGoogleSheet();

type Day = readonly [year: number, month: number, day: number];

/** First and last days, a leap day, and the days on which clocks are changed in one place or another. */
const DAYS: readonly Day[] = [
  [1901, 1, 1],
  [1970, 1, 1],
  [2015, 3, 8],
  [2015, 3, 29],
  [2015, 7, 1],
  [2015, 10, 18],
  [2015, 10, 25],
  [2016, 2, 29],
  [2026, 12, 31],
];
const TIMES = [
  [0, 0],
  [0, 1],
  [6, 20],
  [12, 0],
  [23, 59],
] as const;
const radiationOf = (day: Day): unknown => call("EXTRATERRESTRIAL_RADIATION", [45, serialNumber(...day)]);
const partOfDay = (hour: number, minutes: number): number => (hour * 60 + minutes) / 1440;

describe("dates and times of day mean what the clock on the wall shows", () => {
  test.each([
    "UTC",
    "America/New_York",
    "America/Sao_Paulo",
    "Europe/Amsterdam",
    "Asia/Kolkata",
    "Pacific/Auckland",
    "Pacific/Apia",
  ])("in %s", (TZ) => {
    const output = execFileSync(process.execPath, [join(__dirname, "../rig/googleSheetsClock.mjs"), SCRIPT_FILE], {
      input: JSON.stringify({ days: DAYS, times: TIMES }),
      env: { ...process.env, TZ },
      encoding: "utf8",
    });
    expect(JSON.parse(output)).toEqual({
      radiation: DAYS.map(radiationOf),
      starts: TIMES.map(([hour, minute]) => partOfDay(hour, minute)),
    });
  });

  const FIELDS = ["year", "month", "day", "hour", "minute", "second"] as const;

  /** What the clock on the wall shows in a zone, from the tables of the language. */
  function wallClock(moment: number, timeZone: string): number[] {
    const options = Object.fromEntries(FIELDS.map((field) => [field, "numeric"]));
    const parts = new Intl.DateTimeFormat("en-US", { ...options, hourCycle: "h23", timeZone }).formatToParts(moment);
    return FIELDS.map((field) => Number(parts.find(({ type }) => type === field)?.value));
  }

  /** The moment at which the clock of a zone shows this: tried, and mended by what it showed instead. */
  function momentOf(timeZone: string, [year, month, day]: Day, hour = 0, minute = 0): number {
    const wanted = Date.UTC(year, month - 1, day, hour, minute);
    return [0, 0].reduce((moment) => {
      const [y = 0, m = 0, ...rest] = wallClock(moment, timeZone);
      return moment + wanted - Date.UTC(y, m - 1, ...rest);
    }, wanted);
  }

  /** The host's two services, for a spreadsheet in that zone. */
  function servicesIn(timeZone: string): Record<string, unknown> {
    const formats: string[] = [];
    return {
      formats,
      SpreadsheetApp: { getActiveSpreadsheet: () => ({ getSpreadsheetTimeZone: () => timeZone }) },
      Utilities: {
        formatDate(date: Date, zone: string, format: string): string {
          formats.push(format);
          const [year, ...rest] = wallClock(date.getTime(), zone);
          return [year, ...rest.map((part) => String(part).padStart(2, "0")), "000"].join("-");
        },
      },
    };
  }

  test.each(["America/Los_Angeles", "Europe/Amsterdam", "Asia/Tokyo", "Pacific/Auckland"])(
    "in a spreadsheet of %s, whatever zone the script is set to, by the host's own service",
    (timeZone) => {
      const services = servicesIn(timeZone);
      const there = openGoogleSheet(services);
      const radiations = DAYS.map((day) =>
        there.cell("CANYARD_EXTRATERRESTRIAL_RADIATION", [45, there.moment(momentOf(timeZone, day))]),
      );
      expect(radiations).toEqual(DAYS.map((day) => ({ value: radiationOf(day) })));
      for (const [hour, minute] of TIMES) {
        const start = there.moment(momentOf(timeZone, [1899, 12, 30], hour, minute));
        const found = there.cell("CANYARD_PULSE_SCHEDULE", [30, 1, 0, start]);
        expect(found).toEqual({ value: [expect.any(Array), [1, partOfDay(hour, minute), expect.any(Number), 30]] });
      }
      expect(new Set(services["formats"] as string[])).toEqual(new Set(["yyyy-MM-dd-HH-mm-ss-SSS"]));
    },
  );

  const withoutSpreadsheet: Readonly<Record<string, () => unknown>> = {
    refuses() {
      throw new Error("not allowed");
    },
    "knows no spreadsheet": () => null,
  };

  test.each(Object.entries(withoutSpreadsheet))(
    "where that service %s, by the script's own clock",
    (_what, getActiveSpreadsheet) => {
      const there = openGoogleSheet({ ...servicesIn("Asia/Tokyo"), SpreadsheetApp: { getActiveSpreadsheet } });
      expect(there.cell("CANYARD_EXTRATERRESTRIAL_RADIATION", [45, there.date(2015, 7, 1)])).toEqual({
        value: radiationOf([2015, 7, 1]),
      });
    },
  );

  test("a weather table takes Dates in its first column", () => {
    const weather = <T>(dayInJuly: (day: number) => T): (number | T)[][] => [
      [dayInJuly(16), 26.6, 14.8],
      [dayInJuly(17), 27, 15],
    ];
    const dates = weather((day) => sheet.date(2015, 7, day));
    const serials = weather((day) => serialNumber(2015, 7, day));
    expect(sheet.valueOf("CANYARD_ET0_TABLE", dates, 45.72, 200, "metric")).toEqual(
      call("ET0_TABLE", [serials, 45.72, 200, "metric"]),
    );
  });
});
