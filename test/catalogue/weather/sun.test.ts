/** EXTRATERRESTRIAL_RADIATION, DAYLIGHT_HOURS, SOLAR_FROM_SUNSHINE. */
import fc from "fast-check";
import { answerOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { serialNumber, serialOfDay } from "../../rig/serialNumber";
import {
  calendarDay,
  calendarDays,
  DECLINATION_APART,
  trueDayLength,
  trueDeclination,
  trueInverseSquare,
  trueRadiation,
} from "../../rig/sky";
import { humidityFor } from "../../rig/stationDay";
import { SEED } from "../../rig/validInputs";

const radiation = (latitude: number, date: number): number =>
  answerOf("EXTRATERRESTRIAL_RADIATION", { latitude, date });
const dayLength = (latitude: number, date: number): number => answerOf("DAYLIGHT_HOURS", { latitude, date });
const fromSunshine = (sunshine_hours: number, latitude: number, date: number): number =>
  answerOf("SOLAR_FROM_SUNSHINE", { sunshine_hours, latitude, date });

const MIDDLES = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12].map((month) => serialNumber(2015, month, 15));

describe(published("EXTRATERRESTRIAL_RADIATION"), () => {
  test.each([
    ["Example 8, 20 degrees south, 3 September", -20, 246, 32.2, 0.051],
    ["Example 11, Rio de Janeiro, May", -22.9, 135, 25.1, 0.051],
    ["Example 18, Uccle, 6 July", 50.8, 187, 41.09, 0.0051],
    ["Example 17, Bangkok, April (recalled)", 13 + 44 / 60, 105, 38.06, 0.0051],
  ])("FAO-56 Eq. 21, %s: at latitude %d on day %d it is %d MJ/m2/day", (_what, latitude, day, printed, within) => {
    expectClose(radiation(latitude, serialOfDay(day)), printed, 0, within);
  });

  test("FAO-56 Eq. 20, Example 8: that radiation is worth 13.1 mm/day", () => {
    expectClose(0.408 * radiation(-20, serialOfDay(246)), 13.1, 0, 0.051);
  });

  test.each([
    ["Eq. 22, Example 7: Bangkok, 13 deg 44 min north, is 0.24 rad", 13 + 44 / 60, 105, "phi", 0.24, 0.00051],
    ["Eq. 22, Example 7: Rio de Janeiro, 22 deg 54 min south, is -0.40 rad", -22.9, 135, "phi", -0.4, 0.00051],
    ["Eq. 23, Example 8: the relative distance is 0.985", -20, 246, "dr", 0.985, 0.00051],
    ["Eq. 24, Example 8: the declination is 0.120 rad", -20, 246, "decl", 0.12, 0.00051],
    ["Eq. 25, Example 8: the sunset angle is 1.527 rad", -20, 246, "ws", 1.527, 0.00061],
  ])("FAO-56 %s", (_what, latitude, day, symbol, printed, within) => {
    const step = stepsOf("EXTRATERRESTRIAL_RADIATION", { latitude, date: serialOfDay(day) });
    expectClose(step(symbol), printed, 0, within);
  });

  // The rows of Annex 2 are recalled, for the middle of each month. At the equator a day changes them by 0.1 at most,
  // at 70 degrees by 0.4, and the day of the month behind the table is not printed: half a day is allowed.
  test.each([
    ["the equator", 0, [36.2, 37.5, 37.9, 36.8, 34.8, 33.4, 33.9, 35.7, 37.2, 37.4, 36.3, 35.6], 0.1],
    ["70 degrees north", 70, [0, 2.6, 10.4, 23, 35.2, 42.5, 39.4, 28, 14.9, 4.9, 0.1, 0], 0.2],
  ])("FAO-56 Annex 2, Table 2.6 (recalled): the twelve months at %s", (_where, latitude, printed, within) => {
    MIDDLES.forEach((date, month) => expectClose(radiation(latitude, date), printed[month] ?? NaN, 0, within));
  });
});

describe(against("EXTRATERRESTRIAL_RADIATION", "astronomy-engine 2.1.19"), () => {
  /** What the sun's declination and distance make of a day, its hour angle taken in steps of two minutes. */
  function overMinutes(latitude: number, declination: number, inverseSquare: number): number {
    const phi = (latitude * Math.PI) / 180;
    let sum = 0;
    for (let minute = 1; minute < 1440; minute += 2) {
      const hourAngle = (minute / 1440) * 2 * Math.PI - Math.PI;
      const sine = Math.sin(phi) * Math.sin(declination) + Math.cos(phi) * Math.cos(declination) * Math.cos(hourAngle);
      sum += 2 * 0.082 * inverseSquare * Math.max(0, sine);
    }
    return sum;
  }

  // 0.003 of it for the distance (Eq. 23 is three days early), the rest for the declination (Eq. 24 is a plain wave).
  test.each([-85, -60, -35, -20, 0, 20, 35, 50, 60, 85])(
    "at latitude %d: its declination and distance, summed over the minutes of every twentieth day",
    (latitude) => {
      for (const day of calendarDays(20)) {
        const declination = trueDeclination(day);
        const inverseSquare = trueInverseSquare(day);
        const expected = overMinutes(latitude, declination, inverseSquare);
        const apart = [-DECLINATION_APART, DECLINATION_APART].map((error) =>
          Math.abs(overMinutes(latitude, declination + error, inverseSquare) - expected),
        );
        expectClose(radiation(latitude, day.serial), expected, 0, Math.max(...apart) + 0.0031 * expected + 0.001);
      }
    },
  );

  // A path that astronomy-engine walks alone, in steps of ten minutes. The worst of the declination, 0.0232 rad, is
  // worth 5.6 % in October at 50 degrees north (1.15 / 0.473 a radian), and 3.4 % in April (1.23 / 0.843).
  test.each([
    ["the equator, equinox", 0, 80, 0.005],
    ["the equator, solstice", 0, 172, 0.005],
    ["30 degrees south, midsummer", -30, 355, 0.005],
    ["35 degrees south, midwinter", -35, 172, 0.01],
    ["45 degrees north, midsummer", 45, 172, 0.005],
    ["50 degrees north, 15 April", 50, 105, 0.034],
    ["50 degrees north, 15 October", 50, 288, 0.056],
    ["80 degrees north, midsummer", 80, 172, 0.005],
  ])("%s: the sun's path across the sky, added up", (_where, latitude, dayOfYear, apart) => {
    const day = calendarDay(2015, dayOfYear);
    expectClose(radiation(latitude, day.serial), trueRadiation(latitude, day), apart);
  });

  // The plain wave keeps the sun as long in the south as in the north; the true sun stays 7 days longer in the north.
  test("over a whole year within 2 % from 60 degrees south to 60 north, too much in the south and too little north", () => {
    for (const latitude of [-60, -40, -20, 0, 20, 40, 60]) {
      let [ours, theirs] = [0, 0];
      for (const day of calendarDays(5).filter(({ year }) => year === 2015)) {
        ours += radiation(latitude, day.serial);
        theirs += overMinutes(latitude, trueDeclination(day), trueInverseSquare(day));
      }
      expectClose(ours, theirs, 0.02);
      if (latitude !== 0) expect(Math.sign(theirs - ours)).toBe(Math.sign(latitude));
    }
  });
});

describe(byAnotherRoute("EXTRATERRESTRIAL_RADIATION"), () => {
  test.each([-85, -45, 0, 30, 60, 80])("at latitude %d it is the sum over the day's minutes", (latitude) => {
    const phi = (latitude * Math.PI) / 180;
    for (const day of [1, 81, 172, 264, 355]) {
      const step = stepsOf("EXTRATERRESTRIAL_RADIATION", { latitude, date: serialOfDay(day) });
      const [declination, inverseSquare] = [step("decl"), step("dr")];
      let sum = 0;
      for (let minute = 0.5; minute < 1440; minute += 1) {
        const hourAngle = (minute / 1440) * 2 * Math.PI - Math.PI;
        const sine =
          Math.sin(phi) * Math.sin(declination) + Math.cos(phi) * Math.cos(declination) * Math.cos(hourAngle);
        sum += 0.082 * inverseSquare * Math.max(0, sine);
      }
      expectClose(step("Ra"), sum, 1e-4, 1e-4);
    }
  });
});

describe("EXTRATERRESTRIAL_RADIATION, polar days and leap years", () => {
  test("is 0 in the polar night, exactly, at both ends of the Earth", () => {
    for (const latitude of [70, 80, 90]) {
      expect(radiation(latitude, serialOfDay(355))).toBe(0);
      expect(radiation(-latitude, serialOfDay(172))).toBe(0);
    }
  });

  test("in the polar day is the sum of 24 hours: at the pole 24 x 60 x 0.082 dr sin(declination)", () => {
    for (const [latitude, day] of [
      [90, 172],
      [-90, 355],
    ] as const) {
      const step = stepsOf("EXTRATERRESTRIAL_RADIATION", { latitude, date: serialOfDay(day) });
      expect(step("ws")).toBe(Math.PI);
      expectClose(step("Ra"), 1440 * 0.082 * step("dr") * Math.sin(Math.abs(step("decl"))), 1e-12);
    }
  });

  test("counts 31 December of a leap year as day 366 over 365: the sun of 1 January again", () => {
    const step = stepsOf("EXTRATERRESTRIAL_RADIATION", { latitude: 40, date: serialNumber(2016, 12, 31) });
    expect(step("J")).toBe(366);
    expectClose(radiation(40, serialNumber(2016, 12, 31)), radiation(40, serialNumber(2017, 1, 1)), 1e-12);
  });

  test("of a date with a time counts the whole part", () => {
    expect(radiation(40, 42200.99)).toBe(radiation(40, 42200));
  });

  test("south is half a year from north, and stronger, since the Earth is nearest to the sun in January", () => {
    const [north, south] = [radiation(35, serialNumber(2015, 6, 21)), radiation(-35, serialNumber(2015, 12, 21))];
    // (1 + 0.033) / (1 - 0.033) = 1.068.
    expectClose(south / north, 1.068, 0, 0.003);
  });

  test("refuses a southern latitude typed as degrees and minutes beyond 90", () => {
    expect(refusalOf("EXTRATERRESTRIAL_RADIATION", { latitude: -2254, date: 42200 })).toMatchObject({
      code: "#VALUE!",
      argument: "latitude",
    });
  });
});

describe(published("DAYLIGHT_HOURS"), () => {
  test.each([
    ["Eq. 34, Example 9, 20 degrees south, 3 September", -20, 246, 11.7, 0.051],
    ["Example 10, Rio de Janeiro, May (recalled)", -22.9, 135, 10.9, 0.051],
    ["Example 17, Bangkok, April (recalled)", 13 + 44 / 60, 105, 12.31, 0.0051],
    ["Example 18, Uccle, 6 July (recalled)", 50.8, 187, 16.1, 0.051],
  ])("FAO-56 %s: at latitude %d on day %d it is %d h", (_what, latitude, day, printed, within) => {
    expectClose(dayLength(latitude, serialOfDay(day)), printed, 0, within);
  });

  test("FAO-56 Eq. 25, Example 8: the sunset angle on the way is 1.527 rad", () => {
    expectClose(stepsOf("DAYLIGHT_HOURS", { latitude: -20, date: serialOfDay(246) })("ws"), 1.527, 0, 0.00061);
  });
});

describe(against("DAYLIGHT_HOURS", "astronomy-engine 2.1.19"), () => {
  function hoursAt(latitude: number, declination: number): number {
    const phi = (latitude * Math.PI) / 180;
    return (24 / Math.PI) * Math.acos(Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(declination))));
  }

  /** What the declination's error makes of the day's length, and 0.01 h for the sun's own motion from rise to set. */
  function apart(latitude: number, declination: number): number {
    const [late, early] = [declination + DECLINATION_APART, declination - DECLINATION_APART];
    return Math.abs(hoursAt(latitude, late) - hoursAt(latitude, early)) / 2 + 0.01;
  }

  test.each([-60, -45, -30, -20, 0, 20, 30, 45, 60])("at latitude %d, every tenth day", (latitude) => {
    for (const day of calendarDays(10)) {
      const within = apart(latitude, trueDeclination(day));
      expectClose(dayLength(latitude, day.serial), trueDayLength(latitude, day), 0, within);
    }
  });

  test.each([
    ["20 degrees south on 3 September", -20, 2015, 246],
    ["45 degrees north on 21 June", 45, 2015, 172],
    ["45 degrees south on 21 December", -45, 2015, 355],
    ["60 degrees north on 30 June of a leap year", 60, 2016, 182],
  ])("within 0.05 h at %s", (_place, latitude, year, dayOfYear) => {
    const day = calendarDay(year, dayOfYear);
    expectClose(dayLength(latitude, day.serial), trueDayLength(latitude, day), 0, 0.05);
  });

  test.each([-85, -75, -70, 70, 75, 85])("polar days of 24 h and polar nights of 0 h at latitude %d", (latitude) => {
    const fromPole = Math.PI / 2 - (Math.abs(latitude) * Math.PI) / 180;
    let [days, nights] = [0, 0];
    for (const day of calendarDays(3)) {
      const towards = Math.sign(latitude) * trueDeclination(day);
      if (Math.abs(towards) <= fromPole + DECLINATION_APART) continue;
      expect(dayLength(latitude, day.serial)).toBe(towards > 0 ? 24 : 0);
      if (towards > 0) days += 1;
      else nights += 1;
    }
    expect(Math.min(days, nights)).toBeGreaterThan(30);
  });
});

describe("DAYLIGHT_HOURS, both hemispheres", () => {
  test("at one latitude north and south make up 24 h, on every day of a leap year", () => {
    for (let date = serialNumber(2016, 1, 1); date <= serialNumber(2016, 12, 31); date += 1) {
      for (const latitude of [0, 10, 35, 50, 66, 90]) {
        expectClose(dayLength(latitude, date) + dayLength(-latitude, date), 24, 1e-12);
      }
    }
  });

  test("at the equator is 12 h on every day", () => {
    for (let day = 1; day <= 366; day += 1) expectClose(dayLength(0, serialOfDay(day)), 12, 1e-12);
  });

  test("grows towards the summer pole and never with the winter pole", () => {
    fc.assert(
      fc.property(fc.double({ min: -90, max: 89.9, noNaN: true }), (latitude) => {
        expect(dayLength(latitude + 0.1, serialOfDay(172))).toBeGreaterThanOrEqual(
          dayLength(latitude, serialOfDay(172)),
        );
        expect(dayLength(latitude + 0.1, serialOfDay(355))).toBeLessThanOrEqual(dayLength(latitude, serialOfDay(355)));
      }),
      { seed: SEED },
    );
  });
});

describe(published("SOLAR_FROM_SUNSHINE"), () => {
  test.each([
    [
      "Example 10, Rio de Janeiro, May: 220 h in 31 days (recalled; Example 12 reads 14.5)",
      220 / 31,
      -22.9,
      135,
      14.5,
      0.051,
    ],
    ["Example 18, Uccle, 6 July: 9.25 h", 9.25, 50.8, 187, 22.07, 0.0051],
    ["Example 17, Bangkok, April: 8.5 h (recalled)", 8.5, 13 + 44 / 60, 105, 22.65, 0.0051],
  ])("FAO-56 Eq. 35, %s", (_what, sunshine, latitude, day, printed, within) => {
    expectClose(fromSunshine(sunshine, latitude, serialOfDay(day)), printed, 0, within);
  });

  test("FAO-56 Example 18 from its sunshine to its end, Uccle: 3.88 mm/day", () => {
    const date = serialOfDay(187);
    const day = {
      tmax: 21.5,
      tmin: 12.3,
      rh_max: 84,
      rh_min: 63,
      wind_speed: answerOf("WIND_AT_2M", { wind_speed: 10 / 3.6, height: 10, units: "metric" }),
      solar_radiation: fromSunshine(9.25, 50.8, date),
      latitude: 50.8,
      elevation: 100,
      date,
      units: "metric",
    };
    expectClose(answerOf("ET0_PENMAN_MONTEITH", day), 3.88, 0, 0.02);
  });

  test("FAO-56 Example 17, Bangkok, April, from 8.5 h: 5.72 mm/day and what its soil heat of 0.14 MJ takes", () => {
    const [latitude, date] = [13 + 44 / 60, serialOfDay(105)];
    const day = {
      tmax: 34.8,
      tmin: 25.6,
      ...humidityFor(2.85, 34.8, 25.6),
      wind_speed: 2,
      solar_radiation: fromSunshine(8.5, latitude, date),
      latitude,
      elevation: 2,
      date,
      units: "metric",
    };
    const step = stepsOf("ET0_PENMAN_MONTEITH", day);
    const soil = (0.408 * step("D") * 0.14) / (step("D") + step("gamma") * (1 + 0.34 * 2));
    expectClose(step("ET0") - soil, 5.72, 0, 0.03);
  });
});

describe(byAnotherRoute("SOLAR_FROM_SUNSHINE"), () => {
  test("lies on the straight line between a quarter of Ra under cloud and three quarters under a clear sky", () => {
    const place = fc.record({
      latitude: fc.double({ min: -65, max: 65, noNaN: true }),
      date: fc.integer({ min: 367, max: 73050 }),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(place, ({ latitude, date, share }) => {
        const [top, length] = [radiation(latitude, date), dayLength(latitude, date)];
        const cloud = fromSunshine(0, latitude, date);
        const clear = fromSunshine(length, latitude, date);
        expectClose(cloud, top / 4, 1e-12);
        expectClose(clear, (3 * top) / 4, 1e-12);
        expectClose(fromSunshine(share * length, latitude, date), cloud + share * (clear - cloud), 1e-9);
      }),
      { seed: SEED },
    );
  });

  test("is 0 in the polar night, where no sunshine can be divided by the day's length", () => {
    expect(fromSunshine(0, 80, serialOfDay(355))).toBe(0);
    expect(fromSunshine(0, -90, serialOfDay(172))).toBe(0);
  });

  test("in the polar day takes 24 h of sunshine for a clear sky", () => {
    expectClose(fromSunshine(24, 80, serialOfDay(172)), 0.75 * radiation(80, serialOfDay(172)), 1e-12);
  });
});

describe("SOLAR_FROM_SUNSHINE", () => {
  test("refuses more sunshine than the day has, and names the day's length", () => {
    const refused = refusalOf("SOLAR_FROM_SUNSHINE", { sunshine_hours: 12, latitude: -20, date: serialOfDay(246) });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "sunshine_hours" });
    expect(refused.message).toContain("the day's length (11.67 h) or less");
    const night = refusalOf("SOLAR_FROM_SUNSHINE", { sunshine_hours: 1, latitude: 80, date: serialOfDay(355) });
    expect(night.message).toContain("(0 h) or less");
  });

  test("refuses minutes of sunshine typed as hours", () => {
    const refused = refusalOf("SOLAR_FROM_SUNSHINE", { sunshine_hours: 555, latitude: 50.8, date: serialOfDay(187) });
    expect(refused.message).toContain("hours and decimals, not minutes");
  });
});
