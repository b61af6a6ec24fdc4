/** Dates and times as people type them, and as the numbers that a sheet keeps. */

const DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const TIME = /^(\d{1,2}):(\d{2})$/;

const MILLISECONDS_PER_DAY = 86_400_000;
const SERIAL_1970 = 25_569;
const MINUTES_PER_DAY = 1440;
const SECONDS_PER_DAY = 86_400;
/** Before March 1900 spreadsheets count one day too many. */
const FIRST_SERIAL = 61;
const LAST_SERIAL = 2_958_465;

function twoDigits(number: number): string {
  return String(number).padStart(2, "0");
}

export type DateParts = readonly [year: number, month: number, day: number];
export type TimeParts = readonly [hours: number, minutes: number];

export function serialOf(year: number, month: number, day: number): number {
  return Date.UTC(year, month - 1, day) / MILLISECONDS_PER_DAY + SERIAL_1970;
}

export function dayFraction(hours: number, minutes: number): number {
  return (hours * 60 + minutes) / MINUTES_PER_DAY;
}

/** A day as `2024-07-15`; null for a number that is no whole day of the calendar. */
export function dateText(serial: number): string | null {
  if (!Number.isInteger(serial) || serial < FIRST_SERIAL || serial > LAST_SERIAL) return null;
  return new Date((serial - SERIAL_1970) * MILLISECONDS_PER_DAY).toISOString().slice(0, 10);
}

/** Year, month and day of a day that is on the calendar; null for anything else. */
export function datePartsOf(text: string): DateParts | null {
  const [year = 0, month = 0, day = 0] = (DATE.exec(text) ?? []).slice(1).map(Number);
  const padded = `${year}-${twoDigits(month)}-${twoDigits(day)}`;
  return dateText(serialOf(year, month, day)) === padded ? [year, month, day] : null;
}

export function timePartsOf(text: string): TimeParts | null {
  const parts = TIME.exec(text);
  if (parts === null) return null;
  const [hours, minutes] = [Number(parts[1]), Number(parts[2])];
  return hours < 24 && minutes < 60 ? [hours, minutes] : null;
}

/** A moment on the clock, to the second where it is no whole minute; what lies past midnight is told so. */
function clockText(value: number): string | null {
  if (value < 0 || value >= FIRST_SERIAL) return null;
  const all = Math.round(value * SECONDS_PER_DAY);
  const [days, left] = [Math.floor(all / SECONDS_PER_DAY), all % SECONDS_PER_DAY];
  const [hours, minutes, seconds] = [Math.floor(left / 3600), Math.floor(left / 60) % 60, left % 60];
  const time = [hours, minutes, ...(seconds === 0 ? [] : [seconds])].map(twoDigits).join(":");
  if (days === 0) return time;
  return days === 1 ? `${time} next day` : `${time} after ${days} days`;
}

export function isOnCalendar(unit: string): boolean {
  return ["date", "time", "time of day"].includes(unit);
}

/** A number whose unit or quantity is a date or a time, as a person writes it; null for any other. */
export function calendarText(value: number, unit: string): string | null {
  if (!isOnCalendar(unit)) return null;
  return unit === "date" ? dateText(value) : clockText(value);
}
