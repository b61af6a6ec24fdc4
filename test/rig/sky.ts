/** The sun as astronomy-engine has it, in the terms of FAO-56: angles in radians, days as serial numbers of a sheet. */
import { Body, Equator, GeoVector, Horizon, Observer, SearchAltitude } from "astronomy-engine";
import { serialNumber } from "./serialNumber";

export interface CalendarDay {
  readonly year: number;
  readonly dayOfYear: number;
  readonly serial: number;
  readonly noon: Date;
}

export function calendarDay(year: number, dayOfYear: number): CalendarDay {
  return {
    year,
    dayOfYear,
    serial: serialNumber(year, 1, 1) + dayOfYear - 1,
    noon: new Date(Date.UTC(year, 0, dayOfYear, 12)),
  };
}

/** Days of a common year and of two leap years. */
export function calendarDays(every: number): CalendarDay[] {
  return [2000, 2015, 2016].flatMap((year) => {
    const days: CalendarDay[] = [];
    for (let day = 1; day <= (year === 2015 ? 365 : 366); day += every) days.push(calendarDay(year, day));
    return days;
  });
}

export function trueDeclination({ noon }: CalendarDay): number {
  const { dec } = Equator(Body.Sun, noon, new Observer(0, 0, 0), true, false);
  return (dec * Math.PI) / 180;
}

/** The inverse square of the sun's distance, in astronomical units. */
export function trueInverseSquare({ noon }: CalendarDay): number {
  return GeoVector(Body.Sun, noon, true).Length() ** -2;
}

/**
 * FAO-56 Eq. 24 is a plain sine wave. It takes the equinox a day late (0.009 rad) and the Earth's speed as even
 * (0.409 x 0.0335 = 0.0137 rad): together 0.0232 rad at the most, in the middle of October.
 */
export const DECLINATION_APART = 0.024;

/** Hours from the rise of the sun's centre to its setting, without refraction, as the sunset angle means it. */
export function trueDayLength(latitude: number, { year, dayOfYear }: CalendarDay): number {
  const observer = new Observer(latitude, 0, 0);
  const rise = SearchAltitude(Body.Sun, observer, 1, new Date(Date.UTC(year, 0, dayOfYear)), 1, 0);
  const set = rise === null ? null : SearchAltitude(Body.Sun, observer, -1, rise, 1, 0);
  if (rise === null || set === null) throw new Error(`no sunrise at ${latitude} on day ${dayOfYear} of ${year}`);
  return (set.ut - rise.ut) * 24;
}

const MINUTES_A_STEP = 10;

/** The sun's light on a level square metre above the air, summed over 24 hours of the sun's true path, MJ. */
export function trueRadiation(latitude: number, { year, dayOfYear }: CalendarDay): number {
  const observer = new Observer(latitude, 0, 0);
  let sum = 0;
  for (let minute = MINUTES_A_STEP / 2; minute < 1440; minute += MINUTES_A_STEP) {
    const time = new Date(Date.UTC(year, 0, dayOfYear, 0, minute));
    const { ra, dec, dist } = Equator(Body.Sun, time, observer, true, false);
    const { altitude } = Horizon(time, observer, ra, dec);
    sum += (0.082 * MINUTES_A_STEP * Math.max(0, Math.sin((altitude * Math.PI) / 180))) / dist ** 2;
  }
  return sum;
}
