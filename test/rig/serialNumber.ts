const MONTH_LENGTHS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/**
 * The serial number of a date in the 1900 system, counted out year by year: 1 January 1900 is 1, and the system counts
 * a 29 February 1900 that never was.
 */
export function serialNumber(year: number, month: number, day: number): number {
  let days = day;
  for (let past = 1900; past < year; past += 1) days += isLeapYear(past) || past === 1900 ? 366 : 365;
  for (let past = 1; past < month; past += 1) {
    const leapDay = past === 2 && (isLeapYear(year) || year === 1900) ? 1 : 0;
    days += (MONTH_LENGTHS[past - 1] as number) + leapDay;
  }
  return days;
}

/** The serial number of the J-th day of a year without a leap day. */
export function serialOfDay(dayOfYear: number): number {
  return serialNumber(2015, 1, 1) + dayOfYear - 1;
}
