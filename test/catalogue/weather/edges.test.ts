/** Numbers just at the limits that two arguments of the weather group set each other, and defaults that are left out. */
import { answerOf, refusalOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { serialOfDay } from "../../rig/serialNumber";
import { saturation, STATION_DAY } from "../../rig/stationDay";

const JULY = serialOfDay(196);

describe("a day at its limits", () => {
  test("as warm by night as by day has no reference evapotranspiration by Hargreaves: the root of 0 is 0", () => {
    const day = { tmax: 22, tmin: 22, latitude: 45, date: JULY, units: "metric" };
    expect(answerOf("ET0_HARGREAVES", day)).toBe(0);
  });

  test("as warm and as moist by night as by day lacks what one moment lacks: 0.24 of saturation at 76 %", () => {
    const air = { tmax: 22, tmin: 22, rh_max: 76, rh_min: 76, units: "metric" };
    expectClose(answerOf("VAPOR_PRESSURE_DEFICIT", air), 0.24 * saturation(22), 1e-12);
    expect(answerOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, ...air })).toBeGreaterThan(0);
  });

  test("is refused by Penman-Monteith when it was drier at its moistest than at its driest, or colder by day", () => {
    expect(refusalOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, rh_max: 40 })).toMatchObject({ argument: "rh_min" });
    expect(refusalOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, tmin: 26 })).toMatchObject({ argument: "tmin" });
  });

  test("may have sunshine from rise to set: 12 h at the equator, three quarters of what comes from above", () => {
    // At the equator the sunset angle is pi / 2 on every day; day 80.
    const declination = 0.409 * Math.sin((160 * Math.PI) / 365 - 1.39);
    const above = ((1440 * 0.082) / Math.PI) * (1 + 0.033 * Math.cos((160 * Math.PI) / 365)) * Math.cos(declination);
    const day = { sunshine_hours: 12, latitude: 0, date: serialOfDay(80) };
    expectClose(answerOf("SOLAR_FROM_SUNSHINE", day), 0.75 * above, 1e-12);
  });
});

describe("a weather table at its limits", () => {
  const place = { latitude: 45, elevation: 0, units: "metric" };
  const table = (...weather: readonly (readonly (number | null)[])[]): readonly unknown[] =>
    tableOf("ET0_TABLE", { ...place, weather }).map(([cell]) => cell);

  test("works a row with a single temperature of 0, an even night and day, and an even humidity", () => {
    const [frost, even] = table([JULY, 0, -8], [JULY, 22, 22]);
    expectClose(frost, answerOf("ET0_HARGREAVES", { tmax: 0, tmin: -8, date: JULY, ...place }), 1e-14);
    expect(frost).toBeGreaterThan(0);
    expect(even).toBe(0);
    const [moist] = table([JULY, 25, 15, 70, 70, 2, 20]);
    const day = { tmax: 25, tmin: 15, rh_max: 70, rh_min: 70, wind_speed: 2, solar_radiation: 20, date: JULY };
    expectClose(moist, answerOf("ET0_PENMAN_MONTEITH", { ...day, ...place }), 1e-14);
  });

  test("leaves out a row with both temperatures 0, and one with a 0 in any column where 0 must be a blank", () => {
    expect(table([JULY, 0, 0], [0, 25, 15])).toEqual(["", ""]);
    const full = [JULY, 25, 15, 80, 50, 2, 20];
    for (const column of [0, 3, 4, 5, 6]) {
      expect(table(full.map((cell, at) => (at === column ? 0 : cell)))).toEqual([""]);
    }
    expect(table(full)[0]).toBeGreaterThan(0);
  });

  test("says why a row cannot be right, humidities the wrong way round among it", () => {
    const [swapped, wet, colder] = table(
      [JULY, 25, 15, 50, 80, 2, 20],
      [JULY, 25, 15, 120, 50, 2, 20],
      [JULY, 15, 25, 80, 50, 2, 20],
    );
    expect(swapped).toContain("rh_min is 80; it must be rh_max (50) or less");
    expect(wet).toContain("rh_max is 120");
    expect(colder).toContain("tmin is 25; it must be tmax (15) or less");
  });
});

describe("demand with its defaults", () => {
  test("a cover factor left out is 1, and 0.6 is six tenths: 4.5 mm x 0.8 x 0.2 m2", () => {
    const plant = { reference_et: 4.5, crop_coefficient: 0.8, area_per_plant: 0.2, units: "metric" };
    expectClose(answerOf("PLANT_WATER_DEMAND", plant), 0.72, 1e-12);
    expectClose(answerOf("PLANT_WATER_DEMAND", { ...plant, cover_factor: 0.6 }), 0.432, 1e-12);
  });

  test("a balance may start with an empty pot: 3 used of nothing are 3 unmet", () => {
    const days = { et: [[3]], rain: [[0]], irrigation: [[0]], capacity: 10, start_deficit: 10 };
    expect(tableOf("WATER_BALANCE", days)[1]).toEqual([1, 10, 0, 3, "irrigate"]);
  });
});
