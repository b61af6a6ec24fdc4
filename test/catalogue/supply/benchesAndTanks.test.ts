/** Flood volume and fill, tanks, rain, storage, supply: published values, other routes, traps, what must hold. */
import fc from "fast-check";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { combined, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const EXACT = 1e-12;
const MATHJS = "mathjs 15.2.0, units";
const GALLON_IN3 = 231;
const ACRE_FT2 = 43_560;

type Inputs = Readonly<Record<string, unknown>>;

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const property = <T>(inputs: fc.Arbitrary<T>, holds: (input: T) => void): void =>
  fc.assert(fc.property(inputs, holds), { seed: SEED, numRuns: 300 });

const flood = (bench: Inputs): number => answerOf("FLOOD_VOLUME", bench);

describe(published("FLOOD_VOLUME"), () => {
  test("Clemson Extension: an inch on an acre is 27,154 gal", () => {
    expectClose(flood({ bench_area: ACRE_FT2, flood_depth: 1, units: "us" }), 27_154, 0, 0.5);
  });
});

describe(byAnotherRoute("FLOOD_VOLUME"), () => {
  test("a bench of 4 by 8 ft under 1 in: 48 x 96 in3 over 231 are 19.95 gal", () => {
    expectClose(flood({ bench_area: 32, flood_depth: 1, units: "us" }), (48 * 96) / GALLON_IN3, EXACT);
    expectClose((48 * 96) / GALLON_IN3, 19.95, 0, 0.01);
  });

  test("12 m2 under 25 mm hold 300 L; 180 pots on 79 cm2 each displace 35.55 L of it: 264.45 L", () => {
    const base = 2 * Math.sqrt(79 / Math.PI);
    const bench = { bench_area: 12, flood_depth: 25, units: "metric", pots: 180, pot_base_diameter: base };
    expectClose(flood(bench), 12 * 25 - 180 * 0.0079 * 25, EXACT);
    expectClose(flood(bench), 264.45, 0, 0.01);
  });

  test("a bench of 6 by 40 ft with 480 pots on 4.25 in: the free area times the depth is 120.1 gal, not 149.6", () => {
    const freeInches = 72 * 480 - 480 * Math.PI * (4.25 / 2) ** 2;
    const bench = { bench_area: 240, flood_depth: 1, units: "us" };
    expectClose(flood({ ...bench, pots: 480, pot_base_diameter: 4.25 }), freeInches / GALLON_IN3, EXACT);
    expectClose(freeInches / GALLON_IN3, 120.1, 0, 0.05);
    expectClose(flood(bench), 149.6, 0, 0.05);
  });
});

describe(against("FLOOD_VOLUME", MATHJS), () => {
  test.each([
    ["us", "sqft", "inch", "gallon", "inch", 240, 0.75, 480, 4.25],
    ["metric", "m2", "mm", "litre", "cm", 22.3, 19, 480, 10.8],
  ])("free area x depth in %s", (units, area, depth, volume, pot, bench, deep, pots, base) => {
    const foot = combined([quantity((Math.PI / 4) * base, pot), quantity(base, pot)], [], area);
    const byUnits = combined([quantity(bench - pots * foot, area), quantity(deep, depth)], [], volume);
    const inputs = { bench_area: bench, flood_depth: deep, units, pots, pot_base_diameter: base };
    expectClose(flood(inputs), byUnits, EXACT);
  });
});

describe("water on a bench", () => {
  const bench = { bench_area: 240, flood_depth: 1, units: "us" };

  test("is less by what the pots displace, and grows with area and depth alone", () => {
    const benches = fc.tuple(size(1, 500), size(1, 60), fc.integer({ min: 1, max: 50 }), size(1, 10));
    property(benches, ([area, deep, pots, base]) => {
      const inputs = { bench_area: area, flood_depth: deep, units: "metric", pots, pot_base_diameter: base };
      const covered = (pots * Math.PI * base ** 2) / 4 / 10_000 / area;
      fc.pre(covered < 0.59);
      const volume = flood(inputs);
      expectClose(volume, (1 - covered) * area * deep, 1e-9);
      expect(volume).toBeLessThan(flood({ ...inputs, pots: 0 }));
      expectClose(flood({ ...inputs, flood_depth: 2 * deep }), 2 * volume, EXACT);
      expectClose(flood({ ...inputs, bench_area: 2 * area, pots: 2 * pots }), 2 * volume, 1e-9);
    });
  });

  test.each([undefined, null, "", 0])("with pots and %p for their base is an error that names the base", (base) => {
    const refused = refusalOf("FLOOD_VOLUME", { ...bench, pots: 480, pot_base_diameter: base });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "pot_base_diameter" });
    expect(refused.message).toBe(
      "FLOOD_VOLUME: pot_base_diameter is 0; with pots on the bench it must be more than 0, and a blank counts as 0",
    );
  });

  test("without pots does not ask for their base, and does not mind one", () => {
    expect(flood({ ...bench, pot_base_diameter: 4.25 })).toBe(flood(bench));
    expect(flood({ ...bench, pots: 0, pot_base_diameter: 4.25 })).toBe(flood(bench));
  });

  test("with ten pots of 1 in on 4 ft2 under 1 in holds 576 - 2.5 pi in3; with one pot of no base it is refused", () => {
    const small = { bench_area: 4, flood_depth: 1, units: "us" };
    const held = answerOf("FLOOD_VOLUME", { ...small, pots: 10, pot_base_diameter: 1 });
    expectClose(held, (576 - 2.5 * Math.PI) / GALLON_IN3, EXACT);
    expect(refusalOf("FLOOD_VOLUME", { ...small, pots: 1 }).argument).toBe("pot_base_diameter");
  });

  test("with pots that cover 60 % or more is refused by name; a little less is worked", () => {
    // Bases of 10 cm2 on 1 m2: 600 of them cover 60 %.
    const base = 2 * Math.sqrt(10 / Math.PI);
    const crowded = { bench_area: 1, flood_depth: 20, units: "metric", pot_base_diameter: base };
    const refused = refusalOf("FLOOD_VOLUME", { ...crowded, pots: 601 });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "pots" });
    expect(refused.message).toContain("60 %");
    expectClose(flood({ ...crowded, pots: 599 }), 20 * (1 - 0.599), 1e-9);
  });

  test("with the base in mm is refused, and the message sends the reader to the base and its unit", () => {
    const metric = { bench_area: 22.3, flood_depth: 25, units: "metric", pots: 480, pot_base_diameter: 108 };
    expect(refusalOf("FLOOD_VOLUME", metric).message).toContain("look at pot_base_diameter and its unit");
  });

  test("is a load that the help states, 8.345 lb a gallon, with the caution to ask the bench maker: 120 gal are 1,001 lb", () => {
    const poundsAGallon = 3.785411784 / 0.45359237;
    expectClose(poundsAGallon, 8.345, 0, 0.0005);
    expectClose(120 * poundsAGallon, 1001.4, 0, 0.05);
    const { assumptions, caution } = entryOf("FLOOD_VOLUME");
    expect(assumptions.join(" ")).toContain("8.345 lb a US gallon, 1 kg a litre");
    expect(caution).toMatch(/[Oo]verloaded benches and floors.*ask its maker/);
  });
});

const fill = (volume: number, flow: number, uptake?: number | null): number =>
  answerOf("FILL_MINUTES", { volume, fill_flow: flow, uptake });

describe(byAnotherRoute("FILL_MINUTES"), () => {
  test("3.99 gal/min for 5 minutes are the 19.95 gal of the bench", () => {
    expectClose(fill(19.95, 3.99), 5, 0, 0.001);
    expectClose(5 * 3.99, 19.95, EXACT);
  });

  test("a buffer of 24 m3 at 4 m3/h fills in 6 hours", () => {
    expectClose(fill(24, 4 / 60), 6 * 60, EXACT);
  });

  test("180 pots of 1.2 L that rise by 0.18 of water take up 38.88 L: minute by minute at 20 L/min, 264.45 + 38.88 take 15.17 min", () => {
    const uptake = 180 * 1.2 * 0.18;
    expectClose(uptake, 38.88, EXACT);
    let missing = 264.45 + uptake;
    let minutes = 0;
    for (; missing > 20; minutes += 1) missing -= 20;
    expectClose(fill(264.45, 20, uptake), minutes + missing / 20, EXACT);
    expectClose(fill(264.45, 20, uptake), 15.17, 0, 0.005);
  });
});

describe(against("FILL_MINUTES", MATHJS), () => {
  test.each(["gallon", "litre"])("volume and uptake over the flow, in %s", (volume) => {
    const byUnits = combined([quantity(126, volume)], [quantity(15, `${volume}/minute`)], "minute");
    expectClose(fill(120, 15, 6), byUnits, EXACT);
  });
});

describe("a fill", () => {
  test("is that of its row in a schedule", () => {
    property(fc.tuple(size(10, 500), size(2, 100), size(0, 40)), ([volume, flow, uptake]) => {
      const step = stepsOf("FLOOD_SCHEDULE", {
        bench_names: [["one"]],
        flood_volumes: [[volume]],
        uptakes: [[uptake]],
        bench_flow: flow,
        benches_at_once: 1,
        soak_minutes: 10,
        drain_minutes: 8,
        start_time: 0.25,
        start_tank: 1000,
      });
      expect(step("tf")).toBe(fill(volume, flow, uptake));
    });
  });

  test("takes longer by what the pots take up, and half as long at twice the flow", () => {
    property(fc.tuple(size(10, 500), size(2, 100), size(0.1, 40)), ([volume, flow, uptake]) => {
      expectClose(fill(volume, flow, uptake) - fill(volume, flow), uptake / flow, 0, 1e-9);
      expectClose(fill(volume, 2 * flow, uptake), fill(volume, flow, uptake) / 2, EXACT);
    });
  });

  test("of pots that take nothing is the same as one with the uptake left out", () => {
    for (const uptake of [undefined, null, 0]) expect(fill(120, 15, uptake)).toBe(8);
  });
});

const tankFor = (tank: Inputs): number =>
  answerOf("RECIRCULATION_TANK", {
    flood_volume: 120,
    benches_holding_water: 4,
    uptake_until_topup: 24,
    dead_storage: 40,
    ...tank,
  });

describe(byAnotherRoute("RECIRCULATION_TANK"), () => {
  test("water put where it goes: four benches of 120 gal, 24 gal in pots, 40 gal below the intake, a tenth free above", () => {
    let held = 40;
    for (let bench = 1; bench <= 4; bench += 1) held += 120;
    held += 24;
    expect(held).toBe(544);
    expectClose(tankFor({}), held + held / 10, EXACT);
  });

  test("a round that the tank feeds falls no lower than its dead storage, and one of a gallon less falls below", () => {
    // Four benches fill one after the other and soak until the last is full, so all hold water at once.
    const round = (tank: number): number => {
      const step = stepsOf("FLOOD_SCHEDULE", {
        bench_names: [["a"], ["b"], ["c"], ["d"]],
        flood_volumes: [[120], [120], [120], [120]],
        uptakes: [[6], [6], [6], [6]],
        bench_flow: 20,
        benches_at_once: 4,
        soak_minutes: 10,
        drain_minutes: 8,
        start_time: 0,
        start_tank: tank,
      });
      return tank - step("drawn");
    };
    const usable = tankFor({ freeboard: 0 }) - 40;
    expectClose(round(usable), 0, 0, 1e-9);
    expectClose(round(usable - 1), -1, 0, 1e-9);
  });
});

describe("a tank for recirculated water", () => {
  test("sized for one bench where four hold water is short of three floods and their freeboard", () => {
    expectClose(tankFor({}) - tankFor({ benches_holding_water: 1 }), 3 * 120 * 1.1, 1e-9);
  });

  test("comes out within the trade's 1/2 to 1 gal a square foot for four benches of 240 ft2", () => {
    const perFoot = tankFor({}) / (4 * 240);
    expect(perFoot).toBeGreaterThan(0.5);
    expect(perFoot).toBeLessThan(1);
  });

  test("has a tenth of freeboard unless told otherwise, and none at 0", () => {
    expect(tankFor({ freeboard: null })).toBe(tankFor({ freeboard: 0.1 }));
    expect(tankFor({ freeboard: 0 })).toBe(544);
  });

  test("takes a freeboard of 10 for the slip it is", () => {
    expect(
      refusalOf("RECIRCULATION_TANK", {
        flood_volume: 120,
        benches_holding_water: 4,
        uptake_until_topup: 24,
        dead_storage: 40,
        freeboard: 10,
      }).message,
    ).toContain("write 0.1 or 10%");
  });

  test("carries the caution that recirculated water spreads disease", () => {
    expect(entryOf("RECIRCULATION_TANK").caution).toMatch(/Recirculated water carries disease/);
  });

  test("grows with each of its parts", () => {
    const parts = fc.tuple(size(1, 500), fc.integer({ min: 1, max: 40 }), size(0, 500), size(0, 300), size(0, 0.9));
    property(parts, ([volume, benches, uptake, dead, freeboard]) => {
      const inputs = {
        flood_volume: volume,
        benches_holding_water: benches,
        uptake_until_topup: uptake,
        dead_storage: dead,
        freeboard,
      };
      const now = tankFor(inputs);
      expect(tankFor({ ...inputs, benches_holding_water: benches + 1 })).toBeGreaterThan(now);
      expect(tankFor({ ...inputs, uptake_until_topup: uptake + 1 })).toBeGreaterThan(now);
      expect(tankFor({ ...inputs, dead_storage: dead + 1 })).toBeGreaterThan(now);
      expect(tankFor({ ...inputs, freeboard: freeboard + 0.05 })).toBeGreaterThan(now);
    });
  });
});

const tank = (diameter: number, depth: number, units: string): number =>
  answerOf("TANK_VOLUME", { diameter, depth, units });

describe(byAnotherRoute("TANK_VOLUME"), () => {
  test("8 ft wide and 7.5 ft deep: pi x 48^2 x 90 in3 over 231 are 2,820 gal, whatever its maker rates it at", () => {
    expectClose(tank(8, 7.5, "us"), (Math.PI * 48 ** 2 * 90) / GALLON_IN3, EXACT);
    expectClose(tank(8, 7.5, "us"), 2820, 0, 2);
  });

  test("2 m wide and 1.5 m deep: rings of a millimetre, each 2 pi r wide, make 4.712 m3", () => {
    let floor = 0;
    for (let ring = 0; ring < 1000; ring += 1) floor += 2 * Math.PI * (ring + 0.5) * 0.001 * 0.001;
    expectClose(tank(2, 1.5, "metric"), floor * 1.5 * 1000, 1e-9);
  });
});

describe(against("TANK_VOLUME", MATHJS), () => {
  test.each([
    ["us", "foot", "gallon", 8, 7.5],
    ["metric", "m", "litre", 2.4, 1.8],
  ])("floor x depth in %s", (units, length, volume, diameter, depth) => {
    const across = quantity(diameter, length);
    const byUnits = combined([quantity((Math.PI / 4) * depth, length), across, across], [], volume);
    expectClose(tank(diameter, depth, units), byUnits, EXACT);
  });
});

describe("a round tank", () => {
  test("holds four times as much at twice the diameter, and twice as much at twice the depth", () => {
    property(fc.tuple(size(0.5, 20), size(0.1, 10)), ([diameter, depth]) => {
      const now = tank(diameter, depth, "metric");
      expectClose(tank(2 * diameter, depth, "metric"), 4 * now, EXACT);
      expectClose(tank(diameter, 2 * depth, "metric"), 2 * now, EXACT);
    });
  });
});

const harvest = (area: number, rain: number, units: string, coefficient?: number): number =>
  answerOf("RAIN_HARVEST", { area, rain, units, coefficient });

/** Half a gallon from each square foot and inch, as a part of the 144 / 231 gal that fall there. */
const HALF_GALLON = 0.5 / (144 / GALLON_IN3);

describe(published("RAIN_HARVEST"), () => {
  test("home-power trade page: 1,000 ft2 and 1 in bring 623 gal", () => {
    expectClose(harvest(1000, 1, "us", 1), 623, 0, 0.5);
  });

  test("public page on a shed of 12 by 22 ft: 132 gal an inch at half a gallon from each square foot", () => {
    expectClose(harvest(12 * 22, 1, "us", HALF_GALLON), 132, 0, 0.5);
  });

  test("the same page: 34 in a year bring almost 4,500 gal, 4,488", () => {
    expectClose(harvest(264, 34, "us", HALF_GALLON), 4488, 0, 1);
    expect(harvest(264, 34, "us", HALF_GALLON)).toBeLessThan(4500);
  });

  test("Clemson Extension: an inch on an acre is 27,154 gal, all of it caught", () => {
    expectClose(harvest(ACRE_FT2, 1, "us", 1), 27_154, 0, 0.5);
  });
});

describe(byAnotherRoute("RAIN_HARVEST"), () => {
  test("25 mm on 900 m2 are 0.025 x 900 = 22.5 m3, of which 0.85 is 19.125", () => {
    expectClose(harvest(900, 25, "metric", 0.85), 0.025 * 900 * 0.85 * 1000, EXACT);
    expectClose(harvest(900, 25, "metric", 0.85), 19_125, EXACT);
  });
});

describe(against("RAIN_HARVEST", MATHJS), () => {
  test.each([
    ["us", "sqft", "inch", "gallon", 6000, 1.2],
    ["metric", "m2", "mm", "litre", 560, 30],
  ])("area x depth x coefficient in %s", (units, area, depth, volume, roof, rain) => {
    const byUnits = combined([quantity(0.8 * roof, area), quantity(rain, depth)], [], volume);
    expectClose(harvest(roof, rain, units, 0.8), byUnits, EXACT);
  });
});

describe("rain from a roof", () => {
  test("counts the footprint: a roof that rises 6 in 12 has 12 % more slope than ground, and no more rain", () => {
    const slope = 1000 * Math.sqrt(1 + 0.5 ** 2);
    expectClose(harvest(slope, 1, "us") / harvest(1000, 1, "us"), 1.118, 0, 0.0005);
    expect(entryOf("RAIN_HARVEST").assumptions.join(" ")).toContain("not the sloping area");
  });

  test("is 0 in a dry month, and not an error", () => {
    expect(harvest(1000, 0, "us")).toBe(0);
  });

  test("arrives to 0.9 unless told otherwise, and a coefficient of 90 is taken for the slip it is", () => {
    expect(harvest(1000, 1, "us")).toBe(harvest(1000, 1, "us", 0.9));
    const slip = refusalOf("RAIN_HARVEST", { area: 1000, rain: 1, units: "us", coefficient: 90 });
    expect(slip.message).toContain("write 0.9 or 90%");
  });

  test("adds up: two roofs and two storms bring the sum of what each brings", () => {
    property(fc.tuple(size(1, 5000), size(1, 5000), size(0, 100), size(0, 100)), ([one, other, first, second]) => {
      const whole = harvest(one + other, first + second, "metric");
      const parts = [
        harvest(one, first, "metric"),
        harvest(one, second, "metric"),
        harvest(other, first, "metric"),
        harvest(other, second, "metric"),
      ];
      expectClose(
        whole,
        parts.reduce((sum, part) => sum + part, 0),
        1e-9,
        1e-9,
      );
    });
  });
});

const days = (usable_volume: number, daily_use: number, daily_loss?: number, daily_inflow?: number): number =>
  answerOf("DAYS_OF_STORAGE", { usable_volume, daily_use, daily_loss, daily_inflow });

describe(byAnotherRoute("DAYS_OF_STORAGE"), () => {
  test("4,000 m3, use 180, evaporation 0.7 x 7 mm on 2,500 m2, inflow 30: emptied day by day, 24.65 days", () => {
    const loss = (0.7 * 7 * 2500) / 1000;
    expectClose(loss, 12.25, EXACT);
    let left = 4000;
    let day = 0;
    for (; left > 180 + loss - 30; day += 1) left += 30 - 180 - loss;
    const lastDay = left / (180 + loss - 30);
    expectClose(days(4000, 180, loss, 30), day + lastDay, 1e-9);
    expectClose(days(4000, 180, loss, 30), 24.65, 0, 0.01);
  });

  test("a week's use lasts a week", () => {
    expect(days(7 * 850, 850)).toBe(7);
  });
});

describe("storage", () => {
  test.each([
    ["as much as is used and lost", 180, 12.25, 192.25],
    ["more than is used and lost", 180, 12.25, 300],
    ["as much but for float dust: 0.1 + 0.2 is a little more than 0.3", 0.1, 0.2, 0.3],
  ])("into which flows %s does not run out: #N/A", (_what, use, loss, inflow) => {
    const answer = refusalOf("DAYS_OF_STORAGE", {
      usable_volume: 4000,
      daily_use: use,
      daily_loss: loss,
      daily_inflow: inflow,
    });
    expect(answer).toMatchObject({ code: "#N/A", argument: "daily_inflow" });
    expect(answer.message).toContain("does not go down");
  });

  test("lasts for what leaves it: days x the net use is the volume", () => {
    property(fc.tuple(size(10, 1e6), size(1, 1e4), size(0, 1e3), size(0, 1)), ([volume, use, loss, part]) => {
      const inflow = 0.99 * part * (use + loss);
      expectClose(days(volume, use, loss, inflow) * (use + loss - inflow), volume, 1e-9);
    });
  });

  test("lasts longer with more inflow and shorter with more loss", () => {
    property(fc.tuple(size(10, 1e6), size(10, 1e4), size(0, 1e3)), ([volume, use, loss]) => {
      expect(days(volume, use, loss, 5)).toBeGreaterThan(days(volume, use, loss));
      expect(days(volume, use, loss + 1)).toBeLessThan(days(volume, use, loss));
    });
  });
});

const peak = (area: number, depth: number, hours_per_day: number, units: string): number =>
  answerOf("PEAK_SUPPLY_FLOW", { area, depth, hours_per_day, units });

const volumeOfDay = (area: number, depth: number): number =>
  stepsOf("PEAK_SUPPLY_FLOW", { area, depth, hours_per_day: 8, units: "us" })("V");

describe(published("PEAK_SUPPLY_FLOW"), () => {
  // 1 gal on 1 ft2 is 231 / 144 in.
  test.each([
    [0.3, 720],
    [0.4, 960],
  ])("UMass Extension: at %d gal/ft2/day a house of 2,400 ft2 needs %d gal a day", (gallonsAFoot, gallons) => {
    expectClose(volumeOfDay(2400, (gallonsAFoot * GALLON_IN3) / 144), gallons, 0, 1e-6);
  });

  test("Clemson Extension: an acre at 1 in needs 27,154 gal", () => {
    expectClose(volumeOfDay(ACRE_FT2, 1), 27_154, 0, 0.5);
  });
});

describe(byAnotherRoute("PEAK_SUPPLY_FLOW"), () => {
  test("an acre-inch in 8 hours: 6,272,640 in3 over 231 over 480 min are 56.57 gal/min", () => {
    expectClose(peak(ACRE_FT2, 1, 8, "us"), (ACRE_FT2 * 144) / GALLON_IN3 / 480, EXACT);
    expectClose(peak(ACRE_FT2, 1, 8, "us"), 56.57, 0, 0.01);
  });

  test("a hectare at 8 mm in 8 hours: 10 m3 an hour for each millimetre an hour", () => {
    expectClose((peak(10_000, 8, 8, "metric") * 60) / 1000, 10, EXACT);
  });
});

describe(against("PEAK_SUPPLY_FLOW", MATHJS), () => {
  test.each([
    ["us", "sqft", "inch", "gallon", 30_000, 0.5],
    ["metric", "m2", "mm", "litre", 2800, 12],
  ])("area x depth over the hours in %s", (units, area, depth, volume, house, deep) => {
    const byUnits = combined([quantity(house, area), quantity(deep, depth)], [quantity(6, "hour")], `${volume}/minute`);
    expectClose(peak(house, deep, 6, units), byUnits, EXACT);
  });
});

describe("a supply for the hottest day", () => {
  test("of an acre-inch in an hour is 452.6 gal/min", () => {
    expectClose(peak(ACRE_FT2, 1, 1, "us"), 452.6, 0, 0.05);
  });

  test("takes 0.3 to 0.4 gal/ft2 as the 12 to 16 mm that they are, a design figure above any reference ET", () => {
    // 1 ft2 is 0.09290304 m2, 1 gal 3.785411784 L: 0.4 gal/ft2 are 16.3 L/m2.
    expectClose((0.4 * 3.785411784) / 0.09290304, 16.3, 0, 0.01);
    const us = peak(1000, (0.4 * GALLON_IN3) / 144, 8, "us");
    expectClose(peak(92.90304, 16.3, 8, "metric") / 3.785411784, us, 0.0006);
  });

  test("grows as the hours shrink: half the hours ask for twice the flow", () => {
    property(fc.tuple(size(10, 1e5), size(1, 50), size(1, 24)), ([area, depth, hours]) => {
      expectClose(peak(area, depth, hours / 2, "metric"), 2 * peak(area, depth, hours, "metric"), EXACT);
      expectClose(peak(area, depth, hours, "metric") * hours * 60, area * depth, 1e-9);
    });
  });

  test("has no more than 24 hours, so minutes for hours are refused", () => {
    const slip = refusalOf("PEAK_SUPPLY_FLOW", { area: 1000, depth: 0.5, hours_per_day: 480, units: "us" });
    expect(slip).toMatchObject({ code: "#VALUE!", argument: "hours_per_day" });
  });
});
