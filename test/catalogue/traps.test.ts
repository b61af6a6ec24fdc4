/** What implementers and growers usually get wrong, each trap by its name. */
import { evaluate, inOrder } from "../../src/kernel";
import type { CellInput, Table } from "../../src/kernel";
import { answerOf, entryOf, refusalOf, stepsOf } from "../rig/calls";
import { expectClose } from "../rig/closeness";
import { serialNumber, serialOfDay } from "../rig/serialNumber";
import { saturation, STATION_DAY } from "../rig/stationDay";

type Inputs = Readonly<Record<string, unknown>>;

const penman = (day: Inputs = {}): number => answerOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, ...day });
const penmanSteps = (day: Inputs = {}): ((symbol: string) => number) =>
  stepsOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, ...day });

/** FAO-56 Example 20: Lyon, 15 July. */
const LYON = { tmax: 26.6, tmin: 14.8, latitude: 45.72, date: serialNumber(2015, 7, 15), units: "metric" };

describe("Penman-Monteith", () => {
  test("takes saturation pressure as the mean of both temperatures, not of the mean (2.39 against 2.30 kPa)", () => {
    const step = penmanSteps({ tmax: 24.5, tmin: 15 });
    expectClose(step("es"), (saturation(24.5) + saturation(15)) / 2, 1e-12);
    expect(step("es") - saturation(19.75)).toBeGreaterThan(0.08);
  });

  test("takes the slope the other way: at the mean temperature", () => {
    const step = penmanSteps({ tmax: 30, tmin: 10 });
    expectClose(step("D"), (4098 * saturation(20)) / (20 + 237.3) ** 2, 1e-12);
  });

  test("counts kelvin from 273.16 in the longwave term and from 273 in 900 / (T + 273)", () => {
    const step = penmanSteps({ tmax: 20, tmin: 20 });
    const share = 1.35 * step("f") - 0.35;
    expectClose(step("Rnl"), 4.903e-9 * 293.16 ** 4 * (0.34 - 0.14 * Math.sqrt(step("ea"))) * share, 1e-12);
    const wind = ((step("gamma") * 900) / 293) * step("u2") * (step("es") - step("ea"));
    const under = step("D") + step("gamma") * (1 + 0.34 * step("u2"));
    expectClose(step("ETm"), (0.408 * step("D") * step("Rn") + wind) / under, 1e-12);
  });

  test("divides both halves of the vapour pressure by two, as Eq. 17 does and the line printed in Example 5 does not", () => {
    const step = penmanSteps({ tmax: 25, tmin: 18, rh_max: 82, rh_min: 54 });
    expectClose(step("ea"), (saturation(18) * 0.82 + saturation(25) * 0.54) / 2, 1e-12);
  });

  test("puts the highest humidity with the lowest temperature", () => {
    const step = penmanSteps({ tmax: 30, tmin: 10, rh_max: 100, rh_min: 20 });
    expectClose(step("ea"), (saturation(10) + 0.2 * saturation(30)) / 2, 1e-12);
  });

  test("takes no more sun than a clear sky gives: Rs / Rso stops at 1", () => {
    expect(penmanSteps({ solar_radiation: 49 })("f")).toBe(1);
    expect(penmanSteps({ solar_radiation: 10 })("f")).toBeLessThan(1);
    expect(penmanSteps({ latitude: 80, date: serialOfDay(355), solar_radiation: 1 })("f")).toBe(1);
  });

  test("takes clear-sky radiation by Eq. 37, with the elevation, not by Eq. 36", () => {
    const step = penmanSteps({ elevation: 1000 });
    expectClose(step("Rso") / step("Ra"), 0.75 + 0.02, 1e-12);
  });

  test("brings the wind of a 10 m mast to 2 m only when told the height", () => {
    expectClose(penmanSteps({ wind_speed: 3, wind_height: 10 })("u2"), (3 * 4.87) / Math.log(678 - 5.42), 1e-12);
    expect(penmanSteps({ wind_speed: 3 })("u2")).toBe(3);
  });

  test("needs two steps for km/h at 10 m: the unit, then the height (10 km/h is 2.078 m/s at 2 m)", () => {
    expectClose(penmanSteps({ wind_speed: 10 / 3.6, wind_height: 10 })("u2"), 2.078, 0, 0.0015);
  });

  test("puts no floor under the wind: calm air is calm", () => {
    const calm = penmanSteps({ wind_speed: 0 });
    expect(calm("u2")).toBe(0);
    expectClose(calm("ETm"), (0.408 * calm("D") * calm("Rn")) / (calm("D") + calm("gamma")), 1e-12);
    expect(penman({ wind_speed: 0 })).toBeLessThan(penman({ wind_speed: 0.5 }));
  });

  test("refuses a humidity of 0.62 that means 62 %", () => {
    const { argument, message } = refusalOf("ET0_PENMAN_MONTEITH", { ...STATION_DAY, rh_min: 0.62 });
    expect(argument).toBe("rh_min");
    expect(message).toContain("percent, so 62 and not 0.62");
  });

  test("gives dew as 0, not as evapotranspiration below 0", () => {
    const night = { latitude: 70, date: serialOfDay(355), solar_radiation: 0.001, tmax: -5, tmin: -15, wind_speed: 0 };
    expect(penmanSteps(night)("Rn")).toBeLessThan(0);
    expect(penman(night)).toBe(0);
  });
});

describe("Hargreaves", () => {
  test("takes Ra in mm: left in MJ, Lyon's 5.0 mm would be 12.3", () => {
    const right = answerOf("ET0_HARGREAVES", LYON);
    expectClose(right, 5.0, 0, 0.051);
    expectClose(right / 0.408, 12.3, 0, 0.051);
  });

  test("counts a range of F as F: converting each reading and then subtracting gives the same", () => {
    const fahrenheit = { ...LYON, tmax: 79.88, tmin: 58.64, units: "us" };
    expectClose(stepsOf("ET0_HARGREAVES", fahrenheit)("TR"), 26.6 - 14.8, 1e-12);
    expectClose(answerOf("ET0_HARGREAVES", fahrenheit) * 25.4, answerOf("ET0_HARGREAVES", LYON), 1e-9);
  });

  test("takes south as negative: May is autumn at -22.90 and late spring at 22.90", () => {
    const may = { ...LYON, date: serialNumber(2015, 5, 15) };
    const south = answerOf("ET0_HARGREAVES", { ...may, latitude: -22.9 });
    const north = answerOf("ET0_HARGREAVES", { ...may, latitude: 22.9 });
    expect(north / south).toBeGreaterThan(1.4);
  });

  test("lets the minutes of a southern latitude carry the sign: 22 deg 54 min south is -22.90, not -21.10", () => {
    const rio = stepsOf("ET0_HARGREAVES", { ...LYON, latitude: -(22 + 54 / 60), date: serialNumber(2015, 5, 15) });
    expectClose(rio("Ra"), 25.1, 0, 0.051);
  });

  test("refuses a latitude typed in degrees and minutes beyond 90", () => {
    expect(refusalOf("ET0_HARGREAVES", { ...LYON, latitude: 4543 }).message).toContain("south negative");
  });

  test("counts the whole part of a date with a time", () => {
    expect(answerOf("ET0_HARGREAVES", { ...LYON, date: LYON.date + 0.99 })).toBe(answerOf("ET0_HARGREAVES", LYON));
  });

  test("is 0, not less, below a mean of -17.8 C", () => {
    expect(answerOf("ET0_HARGREAVES", { ...LYON, tmax: -20, tmin: -30 })).toBe(0);
  });

  test("refuses a day that was colder by day than by night, naming tmin", () => {
    expect(refusalOf("ET0_HARGREAVES", { ...LYON, tmin: 30 })).toMatchObject({ code: "#VALUE!", argument: "tmin" });
  });
});

describe("the weather table", () => {
  const table = (weather: readonly (readonly CellInput[])[]): unknown[] => {
    const entry = entryOf("ET0_TABLE");
    const args = inOrder(entry, { weather, latitude: 45.72, elevation: 200, units: "metric" });
    return (evaluate(entry, args) as Table).map(([cell]) => cell);
  };
  const station = [42191, 21.5, 12.3, 84, 63, 2.078, 22.07];

  test("leaves a row empty where humidity, wind or sun is 0, as a host may send an empty cell", () => {
    const rows = [3, 4, 5, 6].map((column) => station.map((value, index) => (index === column ? 0 : value)));
    expect(table(rows)).toEqual(["", "", "", ""]);
  });

  test("writes the reason into a row whose tmin lies above tmax, and works the others", () => {
    const [wrong, right] = table([
      [42200, 14.8, 26.6],
      [42200, 26.6, 14.8],
    ]);
    expect(wrong).toBe("tmin is 26.6; it must be tmax (14.8) or less");
    expectClose(right, 5.0, 0, 0.051);
  });

  test("is refused as a whole where it has neither 3 nor 7 columns", () => {
    const args = { weather: [[42200, 26.6]], latitude: 45.72, elevation: 200, units: "metric" };
    expect(refusalOf("ET0_TABLE", args)).toMatchObject({ code: "#VALUE!", argument: "weather" });
  });
});

describe("a plant's demand", () => {
  test("belongs to the area that is given: canopy, pot top and bed differ by the ratio of the areas", () => {
    const plant = { reference_et: 5, crop_coefficient: 1, units: "metric" };
    const canopy = answerOf("PLANT_WATER_DEMAND", { ...plant, area_per_plant: 0.126 });
    const potTop = answerOf("PLANT_WATER_DEMAND", { ...plant, area_per_plant: 0.063 });
    expectClose(canopy / potTop, 2, 1e-12);
  });

  test("takes a cover factor of 1 for open ground, and multiplies by it otherwise", () => {
    const plant = { reference_et: 5, crop_coefficient: 0.8, area_per_plant: 0.16, units: "metric" };
    expectClose(answerOf("PLANT_WATER_DEMAND", plant), 0.64, 1e-12);
    expectClose(answerOf("PLANT_WATER_DEMAND", { ...plant, cover_factor: 0.7 }), 0.448, 1e-12);
  });

  test("comes in US gallons of 231 cubic inches, not in imperial ones", () => {
    const plant = { reference_et: 231 / 144, crop_coefficient: 1, area_per_plant: 1, units: "us" };
    expectClose(answerOf("PLANT_WATER_DEMAND", plant), 1, 1e-12);
  });
});

describe("pots", () => {
  const pot = { top_diameter: 27.9, bottom_diameter: 22.9, height: 24, units: "metric" };

  test("are truncated cones: a cylinder of the mean diameter is low, one of the mean area high", () => {
    const cone = answerOf("CONTAINER_VOLUME", pot);
    const meanDiameter = ((Math.PI / 4) * 25.4 ** 2 * 24) / 1000;
    const meanArea = ((Math.PI / 4) * ((27.9 ** 2 + 22.9 ** 2) / 2) * 24) / 1000;
    expect(cone).toBeGreaterThan(meanDiameter);
    expect(cone).toBeLessThan(meanArea);
  });

  test("hold US gallons: 10 in by 10 in is 250 pi / 231 gal", () => {
    const cylinder = { top_diameter: 10, bottom_diameter: 10, height: 10, units: "us" };
    expectClose(answerOf("CONTAINER_VOLUME", cylinder), (250 * Math.PI) / 231, 1e-12);
  });

  test("hold water by volume: a capacity above 1, by weight or in percent, is refused", () => {
    const refused = refusalOf("WATER_HELD", { volume: 9, container_capacity: 55 });
    expect(refused.message).toContain("write 0.55 or 55%");
    expect(refusalOf("WATER_HELD", { volume: 9, container_capacity: 2.5 }).argument).toBe("container_capacity");
  });
});

describe("leaching", () => {
  test("is divided by the water that entered, kept and leached together, not by the water kept", () => {
    expectClose(answerOf("LEACHING_FRACTION", { leachate: 150, applied: 850 + 150 }), 0.15, 1e-12);
  });

  test("of 0 is a result, but no ground for a new run time", () => {
    expect(answerOf("LEACHING_FRACTION", { leachate: 0, applied: 1000 })).toBe(0);
    const test = { minutes_now: 20, measured: 0, target: 0.15 };
    expect(refusalOf("RUN_MINUTES_FROM_LEACHING", test).code).toBe("#N/A");
  });

  test("above the water applied asks whether the two were swapped", () => {
    const swapped = refusalOf("LEACHING_FRACTION", { leachate: 1000, applied: 150 });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "leachate" });
    expect(swapped.message).toContain("swapped");
  });

  test("keeps the water kept: minutes x (1 - measured) is the same before and after", () => {
    const minutes = answerOf("RUN_MINUTES_FROM_LEACHING", { minutes_now: 20, measured: 0.4, target: 0.15 });
    expectClose(minutes * (1 - 0.15), 20 * (1 - 0.4), 1e-12);
  });

  test("below the target asks for a longer run", () => {
    const minutes = answerOf("RUN_MINUTES_FROM_LEACHING", { minutes_now: 20, measured: 0.05, target: 0.15 });
    expectClose(minutes, (20 * 0.95) / 0.85, 1e-12);
  });
});

describe("gross water", () => {
  const water = { net: 1, leaching_fraction: 0.15, uniformity: 0.88 };

  test("is net / (1 - LF), not net x (1 + LF): 17.6 % more at 0.15, not 15 %", () => {
    expectClose(answerOf("GROSS_WATER", { ...water, basis: "leaching" }), 1.1765, 0, 0.00005);
  });

  test("counts one loss, the larger, and not leaching on top of unevenness", () => {
    expectClose(answerOf("GROSS_WATER", water), 1 / 0.85, 1e-12);
    expectClose(answerOf("GROSS_WATER", { ...water, uniformity: 0.75 }), 1 / 0.75, 1e-12);
  });

  test("counts both only when asked", () => {
    expectClose(answerOf("GROSS_WATER", { ...water, basis: "both" }), 1 / (0.85 * 0.88), 1e-12);
  });

  test("takes a uniformity of 75 for the slip it is", () => {
    expect(refusalOf("GROSS_WATER", { ...water, uniformity: 75 }).message).toContain("write 0.75 or 75%");
  });
});

describe("pulses", () => {
  const pulses = (day: Inputs): number[][] => {
    const entry = entryOf("PULSE_SCHEDULE");
    return (evaluate(entry, inOrder(entry, day)) as Table).slice(1) as number[][];
  };
  const day = { total_minutes: 45, pulses: 3, rest_minutes: 60, start_time: 0.25 };

  test.each([1, 2, 3, 8])("of %d have one rest less: the last rest is not waited for", (count) => {
    const rows = pulses({ ...day, pulses: count });
    expect(rows).toHaveLength(count);
    expectClose(((rows.at(-1)?.[2] ?? NaN) - 0.25) * 1440, 45 + (count - 1) * 60, 1e-9);
  });

  test("add up to the water of the day, fill minutes apart", () => {
    const rows = pulses({ ...day, pulses: 7, fill_minutes: 3 });
    expectClose(
      rows.reduce((sum, row) => sum + (row[3] ?? NaN), 0),
      45 + 7 * 3,
      1e-12,
    );
  });

  test("fill the line anew each time, since it drains at each rest", () => {
    for (const [, start = NaN, stop = NaN, minutes] of pulses({ ...day, fill_minutes: 2 })) {
      expect(minutes).toBe(17);
      expectClose((stop - start) * 1440, 17, 1e-9);
    }
  });

  test("run on past midnight", () => {
    const rows = pulses({ ...day, start_time: 23 / 24 });
    expectClose((rows.at(-1)?.[2] ?? NaN) * 24, 23 + 165 / 60, 1e-12);
  });
});

describe("low-quarter uniformity", () => {
  const uniformity = (readings: unknown, zeros?: string): number => answerOf("DU_LOW_QUARTER", { readings, zeros });

  test("of exactly four readings is the lowest over the mean", () => {
    expectClose(uniformity([[120, 80, 100, 100]]), 0.8, 1e-12);
  });

  test.each([
    [5, 2],
    [6, 2],
    [7, 2],
    [8, 2],
    [9, 3],
  ])("of %d readings takes %d for the lowest quarter: n / 4 is rounded up", (count, quarter) => {
    // 1, 2 ... n: the lowest k have the mean (k + 1) / 2, all have (n + 1) / 2.
    const readings = [Array.from({ length: count }, (_, index) => index + 1)];
    expectClose(uniformity(readings), (quarter + 1) / (count + 1), 1e-12);
  });

  test("takes ties at the edge of the quarter once each", () => {
    // Eight readings, the lowest two of 2, 3, 3, 3, 4, 4, 4, 5: (2 + 3) / 2 over 28 / 8.
    expectClose(uniformity([[3, 4, 3, 2, 4, 5, 3, 4]]), 2.5 / 3.5, 1e-12);
  });

  test("of equal readings is 1, exactly", () => {
    expect(uniformity([[0.1, 0.1, 0.1, 0.1, 0.1]])).toBe(1);
  });

  test("does not ask for an order or a shape, and leaves the readings as they are", () => {
    const scattered = Object.freeze([Object.freeze([28, 12, 20]), Object.freeze([16, 14, 24])]);
    expectClose(uniformity(scattered), 13 / 19, 1e-12);
    expect(uniformity([[12], [14], [16], [20], [24], [28]])).toBe(uniformity(scattered));
    expect(scattered).toEqual([
      [28, 12, 20],
      [16, 14, 24],
    ]);
  });

  describe.each<[string, CellInput]>([
    ["null", null],
    ["an empty text", ""],
    ["nothing", undefined],
    ["0", 0],
  ])("with a dry or empty cell that arrives as %s", (_name, blank) => {
    const readings = [[10, 20, blank, 30, 40]];

    test("names the cell unless told what it means", () => {
      for (const zeros of [undefined, "error"]) {
        const error = refusalOf("DU_LOW_QUARTER", { readings, zeros });
        expect(error).toMatchObject({ code: "#VALUE!", argument: "readings" });
        expect(error.message).toContain("readings is blank or 0 in column 3 of the range");
      }
    });

    test("counts it as a reading of 0 under count: (0 + 10) / 2 over 100 / 5", () => {
      expectClose(uniformity(readings, "count"), 5 / 20, 1e-12);
    });

    test("leaves it out under skip: 10 over 100 / 4", () => {
      expectClose(uniformity(readings, "skip"), 10 / 25, 1e-12);
    });
  });

  test("has no answer where every can stayed dry, and says so", () => {
    const dry = refusalOf("DU_LOW_QUARTER", { readings: [[0, 0, null, 0]], zeros: "count" });
    expect(dry).toMatchObject({ code: "#N/A", argument: "readings" });
    expect(dry.message).toContain("readings are all 0");
  });

  test("wants four readings, counted after the empty ones are left out", () => {
    const { message } = refusalOf("DU_LOW_QUARTER", { readings: [[10, 20, 30, 0]], zeros: "skip" });
    expect(message).toMatch(/^DU_LOW_QUARTER: readings has 3 .*numbers; it must have 4 or more$/);
  });
});

describe("payback", () => {
  const plan = { investment: 10_000, annual_savings: 3000 };
  const years = (inputs: Inputs): number => answerOf("PAYBACK_YEARS", { ...plan, ...inputs });
  const code = (inputs: Inputs): string => refusalOf("PAYBACK_YEARS", { ...plan, ...inputs }).code;

  test.each([
    ["a saving of 0", { annual_savings: 0 }],
    ["a saving below 0", { annual_savings: -500 }],
    ["a saving below 0 with interest", { annual_savings: -500, discount_rate: 0.05 }],
    ["interest that takes all of it, r C = S", { annual_savings: 800, discount_rate: 0.08 }],
    ["interest that takes more, r C > S", { annual_savings: 500, discount_rate: 0.08 }],
    ["too few years", { annual_savings: [[3000, 3000, 3000]] }],
    ["years that pay back nothing on the whole", { annual_savings: [[3000, -3000, 3000, -3000]] }],
  ])("never comes from %s: #N/A, no number and no infinity", (_name, inputs) => {
    expect(code(inputs)).toBe("#N/A");
  });

  test("at a rate of 0 is C / S, and a small rate comes close to it", () => {
    expectClose(years({ discount_rate: 0 }), 10 / 3, 1e-12);
    expectClose(years({ discount_rate: 1e-9 }), 10 / 3, 1e-8);
  });

  test("takes a range of one cell for the same saving every year", () => {
    expect(years({ annual_savings: [[3000]], discount_rate: 0.08 })).toBe(years({ discount_rate: 0.08 }));
  });

  test("differs in the third digit between closed form and interpolation (4.030 and 4.031)", () => {
    const linear = years({ annual_savings: [[3000, 3000, 3000, 3000, 3000, 3000]], discount_rate: 0.08 });
    expectClose(linear - years({ discount_rate: 0.08 }), 0.001, 0, 0.001);
  });

  test("lets a bad year put it off: 6,000 - 2,000 + 4,000, and 2,000 of the fourth year's 4,000", () => {
    expectClose(years({ annual_savings: [[6000], [-2000], [4000], [4000]] }), 3.5, 1e-12);
  });

  test("counts the first crossing, whatever comes after it", () => {
    expectClose(years({ annual_savings: [[12_000], [-5000], [4000]] }), 10 / 12, 1e-12);
  });

  test("is there at the end of the last year, although ten times 0.1 is a little less than 1 in a computer", () => {
    const tenths = [Array.from({ length: 10 }, () => 0.1)];
    expect(tenths[0]?.reduce((sum, tenth) => sum + tenth, 0)).toBeLessThan(1);
    expect(years({ investment: 1, annual_savings: tenths })).toBe(10);
  });

  test("is there at the end of the last year with interest: savings worth their own sum", () => {
    const savings = [700, 800, 900];
    for (const rate of [0.03, 0.07, 0.11, 0.19]) {
      const worth = savings.reduce((sum, saving, index) => sum + saving / (1 + rate) ** (index + 1), 0);
      expectClose(years({ investment: worth, annual_savings: [savings], discount_rate: rate }), 3, 1e-9);
    }
  });

  test("names a blank year of a range, and takes a year of 0 for a year without a saving", () => {
    const blank = refusalOf("PAYBACK_YEARS", { ...plan, annual_savings: [[6000], [""], [8000]] });
    expect(blank).toMatchObject({ code: "#VALUE!", argument: "annual_savings" });
    expect(blank.message).toContain("in row 2 of the range");
    expectClose(years({ annual_savings: [[6000], [0], [8000]] }), 2.5, 1e-12);
  });

  test("takes a rate of 8 for the slip it is", () => {
    expect(refusalOf("PAYBACK_YEARS", { ...plan, discount_rate: 8 }).message).toContain("write 0.08 or 8%");
  });
});

describe("run time", () => {
  test("is for a flow per hour: 1.5 L at 12 L/h is an eighth of an hour", () => {
    expectClose(answerOf("RUN_MINUTES", { volume_per_plant: 1.5, emitter_flow: 12 }), 60 / 8, 1e-12);
  });

  test("is shared by the emitters of a plant", () => {
    const plant = { volume_per_plant: 1.5, emitter_flow: 4, emitters_per_plant: 3 };
    expectClose(answerOf("RUN_MINUTES", plant), 60 / 8, 1e-12);
  });
});
