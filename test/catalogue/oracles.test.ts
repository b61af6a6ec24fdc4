/** Independent libraries as judges: psychrometrics, astronomy, finance. */
import { NPER, NPV } from "@formulajs/formulajs";
import { nper, npv } from "financial";
import psychrolib from "psychrolib";
import { answerOf, refusalOf, stepsOf } from "../rig/calls";
import { expectClose } from "../rig/closeness";
import { against } from "../rig/evidence";
import { serialNumber } from "../rig/serialNumber";
import { calendarDays, DECLINATION_APART, trueDeclination, trueInverseSquare } from "../rig/sky";
import { STATION_DAY } from "../rig/stationDay";

// Saturation vapour pressure; psychrolib has ASHRAE's formula.
describe(against("ET0_PENMAN_MONTEITH", "psychrolib 1.1.1"), () => {
  psychrolib.SetUnitSystem(psychrolib.SI);

  // FAO-56 Eq. 11 is a shorter formula: the two differ by 0.1 % or less to 35 C and by 0.112 % at the most, near 45 C.
  // Below freezing psychrolib gives the pressure over ice and FAO-56 that over water, so the comparison ends there.
  test.each([
    [0.01, 0.001],
    [1, 0.001],
    [5, 0.001],
    [10, 0.001],
    [15, 0.001],
    [20, 0.001],
    [25, 0.001],
    [30, 0.001],
    [35, 0.001],
    [40, 0.0012],
    [45, 0.0012],
    [50, 0.0012],
  ])("at %d C, apart by %d of it at the most", (celsius, apart) => {
    const step = stepsOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, tmax: celsius, tmin: celsius });
    const judged = psychrolib.GetSatVapPres(celsius) / 1000;
    expectClose(step("ex"), judged, apart);
    expectClose(step("en"), judged, apart);
  });

  test("over water it lies above the pressure over ice, by about a tenth at -10 C", () => {
    const step = stepsOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, tmin: -10 });
    // Latent heat of melting: exp(333.5e3 / 461.5 x (1 / 263.15 - 1 / 273.16)) = 1.106, heat taken as constant.
    expectClose(step("en") / (psychrolib.GetSatVapPres(-10) / 1000), 1.106, 0.01);
  });
});

type SunSteps = (symbol: string) => number;

function sunSteps(latitude: number, date: number): SunSteps {
  return stepsOf("ET0_HARGREAVES", { tmax: 25, tmin: 15, latitude, date, units: "metric" });
}

// The length of the day and the radiation above the air are judged in weather/sun.test.ts.
describe(against("ET0_HARGREAVES", "astronomy-engine 2.1.19"), () => {
  test("declination on every day of 2000, 2015 and 2016", () => {
    for (const day of calendarDays(1)) {
      expectClose(sunSteps(45, day.serial)("decl"), trueDeclination(day), 0, DECLINATION_APART);
    }
  });

  test("declination is nowhere further off than 0.01 rad on the yearly mean of its size", () => {
    const days = calendarDays(1);
    const sum = days.reduce((all, day) => all + Math.abs(sunSteps(45, day.serial)("decl") - trueDeclination(day)), 0);
    expect(sum / days.length).toBeLessThan(0.01);
  });

  // Eq. 23 puts the nearest day on 31 December, and not on 3 or 4 January: 0.033 x sin(0.06) = 0.002, and 0.001 beside.
  test("distance of the sun on every day of 2000, 2015 and 2016, its inverse square to 0.003", () => {
    for (const day of calendarDays(1)) {
      expectClose(sunSteps(45, day.serial)("dr"), trueInverseSquare(day), 0, 0.003);
    }
  });

  test.each([-85, -75, -70, 70, 75, 85])("polar day and polar night at latitude %d", (latitude) => {
    const fromPole = Math.PI / 2 - (Math.abs(latitude) * Math.PI) / 180;
    let days = 0;
    let nights = 0;
    for (const day of calendarDays(3)) {
      const towards = Math.sign(latitude) * trueDeclination(day);
      const step = sunSteps(latitude, day.serial);
      if (towards > fromPole + DECLINATION_APART) {
        days += 1;
        expect(step("ws")).toBe(Math.PI);
      }
      if (-towards > fromPole + DECLINATION_APART) {
        nights += 1;
        expect([step("ws"), step("Ra")]).toEqual([0, 0]);
      }
    }
    expect(Math.min(days, nights)).toBeGreaterThan(30);
  });
});

describe("the day of the year against the calendar", () => {
  test("31 December is day 366 in the years that 4 divides, of full centuries those that 400 divides", () => {
    for (let year = 1901; year <= 2500; year += 1) {
      const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
      expect([year, sunSteps(45, serialNumber(year, 12, 31))("J")]).toEqual([year, leap ? 366 : 365]);
    }
  });

  test("the days of a leap year are numbered through without a gap", () => {
    const first = serialNumber(2024, 1, 1);
    for (let day = 1; day <= 366; day += 1) expect(sunSteps(45, first + day - 1)("J")).toBe(day);
    expect(sunSteps(45, first + 366)("J")).toBe(1);
  });

  test.each([
    [2015, 7, 15, 42200],
    [2000, 1, 1, 36526],
    [1970, 1, 1, 25569],
    [1901, 1, 1, 367],
  ])("the serial number of %d-%d-%d is %d, as spreadsheets print it", (year, month, day, serial) => {
    expect(serialNumber(year, month, day)).toBe(serial);
  });
});

/** Payments at year ends that pay an investment back, and what such payments are worth now, by two finance libraries. */
const FINANCE = [
  {
    library: "financial 0.2.4",
    years: (rate: number, saving: number, investment: number): number => nper(rate, saving, -investment),
    worth: (rate: number, savings: readonly number[]): number => npv(rate, [0, ...savings]),
  },
  {
    library: "@formulajs/formulajs 4.6.1",
    years: (rate: number, saving: number, investment: number): number => NPER(rate, saving, -investment) as number,
    worth: (rate: number, savings: readonly number[]): number => NPV(rate, ...savings) as number,
  },
];

const LEVEL_PLANS = [0.001, 0.01, 0.05, 0.08, 0.12, 0.25].flatMap((rate) =>
  [0.5, 1, 2.5, 3.7].map((years) => ({ rate, investment: 10_000, saving: 10_000 / years })),
);
const SAVINGS = [1200, 0, 3100, -400, 2500, 4000];

for (const { library, years, worth } of FINANCE) {
  describe(against("PAYBACK_YEARS", library), () => {
    test.each(LEVEL_PLANS)(
      "level savings: $investment at $saving a year and a rate of $rate, as NPER",
      ({ rate, investment, saving }) => {
        const answer = answerOf("PAYBACK_YEARS", { investment, annual_savings: saving, discount_rate: rate });
        expectClose(answer, years(rate, saving, investment), 1e-11);
      },
    );

    test("where interest takes the whole saving, NPER has no end and the answer is #N/A", () => {
      expect(years(0.3, 3000, 10_000)).toBe(Infinity);
      const plan = { investment: 10_000, annual_savings: 3000, discount_rate: 0.3 };
      expect(refusalOf("PAYBACK_YEARS", plan).code).toBe("#N/A");
    });

    test.each([1, 3, 5, 6])(
      "savings year by year: an investment of their NPV over %d years is back after these",
      (count) => {
        for (const discount_rate of [0, 0.04, 0.1]) {
          const investment = worth(discount_rate, SAVINGS.slice(0, count));
          const plan = { investment, annual_savings: [SAVINGS], discount_rate };
          expectClose(answerOf("PAYBACK_YEARS", plan), count, 1e-9);
        }
      },
    );

    test("halfway through the saving of a year is half a year", () => {
      const discount_rate = 0.06;
      const value = (count: number): number => worth(discount_rate, SAVINGS.slice(0, count));
      const plan = { investment: (value(4) + value(5)) / 2, annual_savings: [SAVINGS], discount_rate };
      expectClose(answerOf("PAYBACK_YEARS", plan), 4.5, 1e-9);
    });
  });
}

describe("PAYBACK_YEARS, level savings as one number and as a range", () => {
  test("cross in the same year; the range lies above the closed form by less than 0.01 years", () => {
    const plan = { investment: 10_000, discount_rate: 0.08 };
    const closed = answerOf("PAYBACK_YEARS", { ...plan, annual_savings: 3000 });
    const linear = answerOf("PAYBACK_YEARS", { ...plan, annual_savings: [[3000, 3000, 3000, 3000, 3000]] });
    expect(Math.floor(linear)).toBe(Math.floor(closed));
    expect(linear - closed).toBeGreaterThan(0);
    expect(linear - closed).toBeLessThan(0.01);
  });
});
