/**
 * A Date of Google Sheets as the serial number of its cell. The cell holds days since 30 December 1899 without a time
 * zone; the Date is that moment in the spreadsheet's zone. So what counts is what the clock on the wall shows there,
 * and the host's own service is asked for it: the script may be set to another zone, and in 1899, the day of a bare
 * time, many places kept local time to the second, of which clocks of computers know more or less.
 *
 * The only file that names that host's services.
 */
interface Spreadsheet {
  getSpreadsheetTimeZone(): string;
}
declare const SpreadsheetApp: { getActiveSpreadsheet(): Spreadsheet | null } | undefined;
declare const Utilities: { formatDate(date: Date, timeZone: string, format: string): string } | undefined;

const MILLISECONDS_PER_DAY = 86_400_000;
const DAY_ZERO = Date.UTC(1899, 11, 30);
const YEAR_TO_MILLISECOND = "yyyy-MM-dd-HH-mm-ss-SSS";

type WallClock = readonly [
  year: number,
  month: number,
  day: number,
  hour: number,
  minute: number,
  second: number,
  ms: number,
];

/** Null where the host's services are not there, or not to be had from a cell. */
function spreadsheetTimeZone(): string | null {
  if (typeof SpreadsheetApp === "undefined" || typeof Utilities === "undefined") return null;
  try {
    return SpreadsheetApp.getActiveSpreadsheet()?.getSpreadsheetTimeZone() ?? null;
  } catch {
    return null;
  }
}

/** Asked for once: the script starts anew with each call of a cell. */
let zone: string | null | undefined;

function wallClock(date: Date): WallClock {
  if (zone === undefined) zone = spreadsheetTimeZone();
  if (zone !== null && typeof Utilities !== "undefined") {
    return Utilities.formatDate(date, zone, YEAR_TO_MILLISECOND).split("-").map(Number) as unknown as WallClock;
  }
  return [
    date.getFullYear(),
    date.getMonth() + 1,
    date.getDate(),
    date.getHours(),
    date.getMinutes(),
    date.getSeconds(),
    date.getMilliseconds(),
  ];
}

export function serialOf(date: Date): number {
  const [year, month, ...rest] = wallClock(date);
  return (Date.UTC(year, month - 1, ...rest) - DAY_ZERO) / MILLISECONDS_PER_DAY;
}
