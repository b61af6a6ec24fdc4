/** Days as tables write them, as serial numbers of the 1900 system. */

export type DateOrder = "day first" | "month first";

/** Whole days from the start of the 1900 system to 1 January 1970. */
const EPOCH = 25_569;
const DAY_MS = 86_400_000;
/** Serial numbers from 1954 to 2064. */
const EARLIEST_SERIAL = 20_000;
const LATEST_SERIAL = 60_000;
const MONTHS = ["jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec"];
const TIME_BEHIND = /[T\s]+\d{1,2}:\d{2}(:\d{2}(\.\d+)?)?\s*(am|pm)?\s*(Z|UTC|GMT|[A-Z]{2,4}|[+-]\d{2}:?\d{2})?$/i;

/** Undefined for what is no date. Where both orders are possible, `order` decides. */
export function readDate(text: string, order: DateOrder): number | undefined {
  const day = text.trim().replace(TIME_BEHIND, "");
  return fromParts(day, order) ?? fromWords(day) ?? fromSerial(day);
}

export function serialOf(year: number, month: number, day: number): number | undefined {
  const full = year < 100 ? year + (year < 70 ? 2000 : 1900) : year;
  const date = new Date(Date.UTC(full, month - 1, day));
  const isReal = date.getUTCMonth() === month - 1 && date.getUTCDate() === day && full >= 1900 && full < 2200;
  return isReal ? Math.round(date.getTime() / DAY_MS) + EPOCH : undefined;
}

/** The day of the year counts from 1. */
export function serialOfDayInYear(year: number, dayOfYear: number): number | undefined {
  const first = serialOf(year, 1, 1);
  const isLeap = serialOf(year, 2, 29) !== undefined;
  if (first === undefined || !(dayOfYear >= 1 && dayOfYear <= (isLeap ? 366 : 365))) return undefined;
  return first + Math.floor(dayOfYear) - 1;
}

/** `2015-12-31` */
export function isoDate(serial: number): string {
  return new Date((serial - EPOCH) * DAY_MS).toISOString().slice(0, 10);
}

export function hasTime(text: string): boolean {
  return /\d{1,2}:\d{2}/.test(text) && !/[T\s]0{1,2}:00(:00(\.0+)?)?\s*(Z|UTC|GMT|\+00:?00)?$/i.test(text.trim());
}

/** The parts of a date whose order has to be known; undefined where it says so itself. */
export function openParts(text: string): readonly [first: number, second: number, year: number] | undefined {
  const parts = /^(\d{1,2})[/.-](\d{1,2})[/.-](\d{4}|\d{2})$/.exec(text.trim().replace(TIME_BEHIND, ""));
  return parts ? [Number(parts[1]), Number(parts[2]), Number(parts[3])] : undefined;
}

function fromParts(text: string, order: DateOrder): number | undefined {
  const yearFirst = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text) ?? /^((?:19|20)\d{2})(\d{2})(\d{2})$/.exec(text);
  if (yearFirst) return serialOf(Number(yearFirst[1]), Number(yearFirst[2]), Number(yearFirst[3]));
  const parts = openParts(text);
  if (!parts) return undefined;
  const [first, second, year] = parts;
  return order === "month first" ? serialOf(year, first, second) : serialOf(year, second, first);
}

/** `31-Dec-2015`, `Dec 31, 2015`, `Thursday, 31 December 2015` */
function fromWords(text: string): number | undefined {
  const bare = text.replace(/^[a-z]+day,?\s+/i, "");
  const [, day, word, year] =
    /^(\d{1,2})(?:st|nd|rd|th)?[\s.-]+([a-z]{3,9})\.?[\s,.-]+(\d{2}|\d{4})$/i.exec(bare) ?? [];
  if (word !== undefined) return withMonth(Number(year), word, Number(day));
  const [, month, on, of] = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{2}|\d{4})$/i.exec(bare) ?? [];
  return month === undefined ? undefined : withMonth(Number(of), month, Number(on));
}

function withMonth(year: number, word: string, day: number): number | undefined {
  const month = monthOf(word);
  return month === undefined ? undefined : serialOf(year, month, day);
}

/** 1 to 12, of a number or an English name. */
export function monthOf(text: string): number | undefined {
  const number = Number(text);
  if (Number.isInteger(number) && number >= 1 && number <= 12) return number;
  const at = MONTHS.indexOf(text.trim().slice(0, 3).toLowerCase());
  return at < 0 ? undefined : at + 1;
}

function fromSerial(text: string): number | undefined {
  const number = Number(text);
  return /^\d{5}(\.\d+)?$/.test(text) && number >= EARLIEST_SERIAL && number <= LATEST_SERIAL
    ? Math.floor(number)
    : undefined;
}

/** Undefined where the dates leave it open. */
export function orderOf(texts: readonly string[]): DateOrder | undefined {
  const open = texts.flatMap((text) => openParts(text) ?? []).length;
  if (open === 0) return "month first";
  const parts = texts.flatMap((text) => [openParts(text)].filter((each) => each !== undefined));
  const days = parts.some(([first]) => first > 12);
  const months = parts.some(([, second]) => second > 12);
  if (days !== months) return days ? "day first" : "month first";
  if (days) return undefined;
  return byNeighbours(texts);
}

/** A daily table goes on from one day to the next in one of the two orders. */
function byNeighbours(texts: readonly string[]): DateOrder | undefined {
  const steps = (order: DateOrder) => {
    const days = texts.map((text) => readDate(text, order));
    return days.filter((day, at) => day !== undefined && at > 0 && Math.abs(day - (days[at - 1] ?? NaN)) === 1).length;
  };
  const [dayFirst, monthFirst] = [steps("day first"), steps("month first")];
  if (dayFirst === monthFirst) return undefined;
  return dayFirst > monthFirst ? "day first" : "month first";
}
