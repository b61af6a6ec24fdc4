/** Dates and times as people type them, and as the numbers that a sheet keeps. */

const DATE = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const TIME = /^(\d{1,2}):(\d{2})$/;

const MILLISECONDS_PER_DAY = 86_400_000;
const SERIAL_1970 = 25_569;
const MINUTES_PER_DAY = 1440;
/** Before March 1900 spreadsheets count one day too many. */
const FIRST_SERIAL = 61;
const LAST_SERIAL = 2_958_465;

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

/** A time as `06:30`; null for a number that is no whole minute of a day. */
export function timeText(fraction: number): string | null {
  const minutes = Math.round(fraction * MINUTES_PER_DAY);
  if (fraction < 0 || fraction >= 1 || Math.abs(fraction * MINUTES_PER_DAY - minutes) > 1e-6) return null;
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

/** Year, month and day of a day that is on the calendar; null for anything else. */
export function datePartsOf(text: string): DateParts | null {
  const [year = 0, month = 0, day = 0] = (DATE.exec(text) ?? []).slice(1).map(Number);
  const padded = `${year}-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`;
  return dateText(serialOf(year, month, day)) === padded ? [year, month, day] : null;
}

export function timePartsOf(text: string): TimeParts | null {
  const parts = TIME.exec(text);
  if (parts === null) return null;
  const [hours, minutes] = [Number(parts[1]), Number(parts[2])];
  return hours < 24 && minutes < 60 ? [hours, minutes] : null;
}

/** A date or a time of day in words; null for a number of another kind. */
export function calendarText(value: number, quantity: string | undefined): string | null {
  if (quantity === "date") return dateText(value);
  return quantity === "time of day" ? timeText(value) : null;
}
