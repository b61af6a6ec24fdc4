/** WATER_BALANCE: water is neither made nor lost. */
import fc from "fast-check";
import { evaluate, inOrder } from "../../../src/kernel";
import type { CellInput, Table } from "../../../src/kernel";
import { answerOf, entryOf, refusalOf, stepsOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { byAnotherRoute, published } from "../../rig/evidence";
import { readSeattle, SEATTLE } from "../../rig/seattle";
import { SEED } from "../../rig/validInputs";

interface Days {
  readonly et: readonly CellInput[];
  readonly rain?: readonly CellInput[];
  readonly irrigation?: readonly CellInput[];
  readonly capacity: number;
  readonly trigger_fraction?: number;
  readonly start_deficit?: number;
}

function inputs({ et, rain, irrigation, ...rest }: Days): Record<string, unknown> {
  const column = (cells: readonly CellInput[] | undefined): CellInput[][] => et.map((_, day) => [cells?.[day] ?? null]);
  return { et: et.map((cell) => [cell]), rain: column(rain), irrigation: column(irrigation), ...rest };
}

interface BalanceDay {
  readonly day: number;
  readonly deficit: number;
  readonly drainage: number;
  readonly unmet: number;
  readonly note: string;
}

function balance(days: Days): BalanceDay[] {
  const entry = entryOf("WATER_BALANCE");
  const [header, ...rows] = evaluate(entry, inOrder(entry, inputs(days))) as Table;
  expect(header).toEqual(["day", "deficit", "drainage", "unmet", "note"]);
  return rows.map(([day, deficit, drainage, unmet, note]) => ({
    day: day as number,
    deficit: deficit as number,
    drainage: drainage as number,
    unmet: unmet as number,
    note: note as string,
  }));
}

/** FAO-56 Eq. 84: what a drying root zone lets through. */
function stress(deficit: number, capacity: number, fraction: number): number {
  return Math.min(1, (capacity - deficit) / ((1 - fraction) * capacity));
}

describe(published("WATER_BALANCE"), () => {
  /** FAO-56 Example 37: 160 mm of available water, depletion fraction 0.4, 55 mm used up, 5 mm x 1.2 a day, no rain. */
  const et: number[] = [];
  for (let deficit = 55; et.length < 10; deficit += et.at(-1) ?? 0) et.push(6 * stress(deficit, 160, 0.4));
  const example37 = { et, capacity: 160, trigger_fraction: 0.4, start_deficit: 55 };

  test("FAO-56 Eqs 84 and 85, Example 37: after ten dry days 104.5 mm are missing", () => {
    expectClose(balance(example37).at(-1)?.deficit, 104.5, 0, 0.15);
  });

  test("FAO-56 Example 37: the fifth day starts with 78.3 mm missing, and has a stress coefficient of 0.85", () => {
    const { deficit = NaN } = balance(example37)[3] ?? {};
    expectClose(deficit, 78.3, 0, 0.051);
    expectClose(stress(deficit, 160, 0.4), 0.85, 0, 0.0051);
  });

  test.each([
    ["Eq. 83, Example 37: 0.4 of 160 mm is 64 mm", 160, 0.4, 64, 0.5],
    ["Example 36, loamy sand, roots of 0.4 m: 0.3 of 36 mm is 11 mm", 1000 * 0.09 * 0.4, 0.3, 11, 0.51],
    ["Example 36, roots of 0.8 m: 0.4 of 72 mm is 29 mm", 1000 * 0.09 * 0.8, 0.4, 29, 0.51],
    ["Example 36, roots of 1.2 m: 0.55 of 108 mm is 59 mm", 1000 * 0.09 * 1.2, 0.55, 59, 0.51],
  ])(
    "FAO-56 %s, the water that may be used before it is time to irrigate",
    (_what, capacity, fraction, printed, within) => {
      const step = stepsOf("WATER_BALANCE", inputs({ et: [1], capacity, trigger_fraction: fraction }));
      expectClose(step("T"), printed, 0, within);
    },
  );
});

describe(byAnotherRoute("WATER_BALANCE"), () => {
  const days = fc
    .record({
      rows: fc.array(
        fc.tuple(
          fc.double({ min: 0, max: 12, noNaN: true }),
          fc.oneof(
            fc.constant<CellInput>(null),
            fc.constant<CellInput>(""),
            fc.double({ min: 0, max: 60, noNaN: true }),
          ),
          fc.oneof(
            fc.constant<CellInput>(null),
            fc.constant<CellInput>(0),
            fc.double({ min: 0, max: 30, noNaN: true }),
          ),
        ),
        { minLength: 1, maxLength: 80 },
      ),
      capacity: fc.double({ min: 0.5, max: 60, noNaN: true }),
      trigger_fraction: fc.double({ min: 0.01, max: 1, noNaN: true }),
      start: fc.double({ min: 0, max: 1, noNaN: true }),
    })
    .map(({ rows, capacity, trigger_fraction, start }) => ({
      et: rows.map(([et]) => et),
      rain: rows.map(([, rain]) => rain),
      irrigation: rows.map(([, , irrigation]) => irrigation),
      capacity,
      trigger_fraction,
      start_deficit: start * capacity,
    }));

  const amount = (cell: CellInput | undefined): number => (typeof cell === "number" ? cell : 0);

  test("ET = change of deficit + rain + irrigation - drainage + unmet, on every day of random tables", () => {
    fc.assert(
      fc.property(days, (given) => {
        let before = given.start_deficit;
        balance(given).forEach(({ deficit, drainage, unmet }, day) => {
          const came = amount(given.rain[day]) + amount(given.irrigation[day]);
          expectClose(deficit - before + came - drainage + unmet, given.et[day] ?? NaN, 0, 1e-11);
          before = deficit;
        });
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  test("the deficit stays between 0 and the capacity; a day drains only when full, and lacks only when empty", () => {
    fc.assert(
      fc.property(days, (given) => {
        balance(given).forEach(({ day, deficit, drainage, unmet }, index) => {
          expect(day).toBe(index + 1);
          expect(deficit).toBeGreaterThanOrEqual(0);
          expect(deficit).toBeLessThanOrEqual(given.capacity);
          if (drainage > 0) expect([deficit, unmet]).toEqual([0, 0]);
          if (unmet > 0) expect([deficit, drainage]).toEqual([given.capacity, 0]);
        });
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("a bucket that is filled and emptied holds what the deficit leaves", () => {
    fc.assert(
      fc.property(days, (given) => {
        let held = given.capacity - given.start_deficit;
        for (const [index, { deficit, drainage, unmet, note }] of balance(given).entries()) {
          const after = held + amount(given.rain[index]) + amount(given.irrigation[index]) - (given.et[index] ?? NaN);
          held = Math.max(0, Math.min(given.capacity, after));
          expectClose(given.capacity - deficit, held, 0, 1e-10);
          expectClose(drainage - unmet, after - held, 0, 1e-10);
          const missing = (given.capacity - held) / given.capacity;
          if (Math.abs(missing - given.trigger_fraction) < 1e-6) continue;
          expect(note).toBe(missing > given.trigger_fraction ? "irrigate" : "");
        }
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  test("in another unit all columns scale together, and the notes stay", () => {
    fc.assert(
      fc.property(days, (given) => {
        const [scale, times] = [8, (cells: readonly CellInput[]) => cells.map((cell) => amount(cell) * 8)];
        const scaled = {
          ...given,
          et: given.et.map((et) => et * scale),
          rain: times(given.rain),
          irrigation: times(given.irrigation),
          capacity: given.capacity * scale,
          start_deficit: given.start_deficit * scale,
        };
        const [plain, other] = [balance(given), balance(scaled)];
        expect(other.map(({ note }) => note)).toEqual(plain.map(({ note }) => note));
        // A factor of 8 changes no digit of a double.
        expect(other.map(({ deficit }) => deficit)).toEqual(plain.map(({ deficit }) => deficit * scale));
      }),
      { seed: SEED },
    );
  });

  test("two halves of a season, the second started with the deficit of the first, are the whole", () => {
    fc.assert(
      fc.property(days, (given) => {
        const cut = Math.floor(given.et.length / 2);
        if (cut === 0) return;
        const part = (from: number, to: number | undefined, start_deficit: number): BalanceDay[] =>
          balance({
            ...given,
            et: given.et.slice(from, to),
            rain: given.rain.slice(from, to),
            irrigation: given.irrigation.slice(from, to),
            start_deficit,
          });
        const first = part(0, cut, given.start_deficit);
        const second = part(cut, undefined, first.at(-1)?.deficit ?? NaN);
        const whole = balance(given).map(({ day: _day, ...rest }) => rest);
        expect([...first, ...second].map(({ day: _day, ...rest }) => rest)).toEqual(whole);
      }),
      { seed: SEED },
    );
  });
});

describe("WATER_BALANCE, the trade's traps", () => {
  test("the trigger itself is reached, though 0.4 x 1.5 is 0.6000000000000001 to a computer", () => {
    expect(balance({ et: [0.6], capacity: 1.5 })[0]?.note).toBe("irrigate");
    expect(balance({ et: [0.599], capacity: 1.5 })[0]?.note).toBe("");
  });

  test("64 mm of 160 is time to irrigate at a fraction of 0.4, and 63.999 mm is not", () => {
    expect(balance({ et: [9], capacity: 160, start_deficit: 55 })[0]?.note).toBe("irrigate");
    expect(balance({ et: [8.999], capacity: 160, start_deficit: 55 })[0]?.note).toBe("");
  });

  test("takes a trigger of 0.4 and a full pot where they are left out", () => {
    const given = { et: [3, 2, 1], capacity: 10 };
    expect(balance(given)).toEqual(balance({ ...given, trigger_fraction: 0.4, start_deficit: 0 }));
  });

  test("rain beyond the deficit drains and is not saved for tomorrow", () => {
    const [wet, dry] = balance({ et: [1, 1], rain: [30, null], capacity: 10, start_deficit: 4 });
    expect(wet).toMatchObject({ deficit: 0, drainage: 25 });
    expect(dry).toMatchObject({ deficit: 1, drainage: 0 });
  });

  test("use beyond the water that is left is unmet and is no debt of tomorrow's", () => {
    const [empty, refilled] = balance({ et: [8, 1], irrigation: [null, 10], capacity: 10, start_deficit: 7 });
    expect(empty).toMatchObject({ deficit: 10, unmet: 5, note: "irrigate" });
    expect(refilled).toMatchObject({ deficit: 1, unmet: 0 });
  });

  test("rain of the day comes off the use of the same day", () => {
    expect(balance({ et: [4], rain: [4], capacity: 10 })[0]).toMatchObject({ deficit: 0, drainage: 0, unmet: 0 });
  });

  test.each<[string, CellInput]>([
    ["an empty cell that a host sends as null", null],
    ["an empty text, as ET0_TABLE leaves for a day without data", ""],
    ["nothing", undefined],
  ])("a blank ET is an error that names the row: %s", (_blank, blank) => {
    const refused = refusalOf("WATER_BALANCE", inputs({ et: [3, 4, blank, 5], capacity: 20 }));
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "et" });
    expect(refused.message).toContain("et is blank in row 3");
  });

  test("so is the reason that ET0_TABLE writes for a day that cannot be right", () => {
    const reason = "tmin is 26.6; it must be tmax (14.8) or less";
    const refused = refusalOf("WATER_BALANCE", inputs({ et: [3, reason], capacity: 20 }));
    expect(refused.message).toContain("in row 2");
  });

  test("a blank rain or irrigation is 0", () => {
    const given = { et: [3, 4, 5], capacity: 20 };
    const dry = balance({ ...given, rain: [0, 0, 0], irrigation: [0, 0, 0] });
    expect(balance({ ...given, rain: [null, "", undefined], irrigation: ["", null, 0] })).toEqual(dry);
  });

  test("columns of different lengths are refused with both lengths", () => {
    const refused = refusalOf("WATER_BALANCE", { et: [[1], [2]], rain: [[0]], irrigation: [[0], [0]], capacity: 5 });
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "rain" });
    expect(refused.message).toMatch(/has 1 cells; it must have 2/);
  });

  test("a start beyond empty, a trigger of 40 and water below 0 are refused by name", () => {
    const given = { et: [1], capacity: 5 };
    const refused = (change: object): ReturnType<typeof refusalOf> =>
      refusalOf("WATER_BALANCE", inputs({ ...given, ...change }));
    expect(refused({ start_deficit: 6 }).message).toContain("start_deficit is 6; it must be capacity (5) or less");
    expect(refused({ trigger_fraction: 40 }).message).toContain("write 0.4 or 40%");
    expect(refused({ rain: [-1] })).toMatchObject({ argument: "rain" });
    expect(refused({ irrigation: [-1] })).toMatchObject({ argument: "irrigation" });
    expect(refused({ et: [-1] })).toMatchObject({ argument: "et" });
  });

  test("100,000 days are worked in one call, and still conserve water", () => {
    const rows = 100_000;
    const column = (cell: (day: number) => number): number[] => Array.from({ length: rows }, (_, day) => cell(day));
    const et = column((day) => 3 + (day % 7));
    const rain = column((day) => (day % 11 === 0 ? 25 : 0));
    const irrigation = column((day) => (day % 3 === 0 ? 9 : 0));
    const table = balance({ et, rain, irrigation, capacity: 30 });
    expect(table).toHaveLength(rows);
    const sum = (cells: readonly number[]): number => cells.reduce((total, cell) => total + cell, 0);
    const drained = sum(table.map(({ drainage }) => drainage));
    const unmet = sum(table.map(({ unmet: one }) => one));
    const last = table.at(-1)?.deficit ?? NaN;
    expect([drained > 0, unmet >= 0]).toEqual([true, true]);
    expectClose(sum(et), last + sum(rain) + sum(irrigation) - drained + unmet, 1e-12);
  });
});

describe(byAnotherRoute("WATER_BALANCE"), () => {
  /**
   * Seattle, 2012 to 2015, a block of #3 pots: 25.4 cm across the top, 3 L of available water, 0.09 m2 of bed a plant,
   * crop coefficient 1.2, rain on the pot top alone. Whoever irrigates fills up on the morning after the trigger.
   */
  const weather = readSeattle();
  const capacity = 3;
  const trigger = 0.4;
  const et0 = (
    evaluate(
      entryOf("ET0_TABLE"),
      inOrder(entryOf("ET0_TABLE"), {
        weather: weather.map(({ date, tmax, tmin }) => [date, tmax, tmin]),
        ...SEATTLE,
        units: "metric",
      }),
    ) as Table
  ).map(([cell]) => cell as number);
  const demand = et0.map((reference_et) =>
    answerOf("PLANT_WATER_DEMAND", { reference_et, crop_coefficient: 1.2, area_per_plant: 0.09, units: "metric" }),
  );
  const rain = weather.map((day) =>
    answerOf("EFFECTIVE_RAIN", { rain: day.rain, top_diameter: 25.4, units: "metric" }),
  );

  /** The grower's own book: water in the pot, filled up after each evening on which 40 % or more is gone. */
  function irrigations(): number[] {
    let held = capacity;
    let isDue = false;
    return weather.map((_, day) => {
      const given = isDue ? capacity - held : 0;
      held = Math.max(0, Math.min(capacity, held + given + (rain[day] ?? NaN) - (demand[day] ?? NaN)));
      isDue = capacity - held >= trigger * capacity - 1e-9;
      return given;
    });
  }

  const irrigation = irrigations();
  const table = balance({ et: demand, rain, irrigation, capacity });
  const sum = (cells: readonly number[]): number => cells.reduce((total, cell) => total + cell, 0);
  const inYear = (year: number, cells: readonly number[]): number[] =>
    cells.filter((_, day) => weather[day]?.year === year);

  test("four years of Seattle: every day's water is accounted for", () => {
    expect(table).toHaveLength(1461);
    table.forEach(({ deficit, drainage, unmet }, day) => {
      const before = table[day - 1]?.deficit ?? 0;
      const came = (rain[day] ?? NaN) + (irrigation[day] ?? NaN);
      expectClose(deficit - before + came - drainage + unmet, demand[day] ?? NaN, 0, 1e-12);
    });
  });

  test("four years of Seattle: so is the water of the four years", () => {
    const drained = sum(table.map(({ drainage }) => drainage));
    const kept = sum(rain) + sum(irrigation) - drained;
    expectClose(sum(demand), (table.at(-1)?.deficit ?? NaN) + kept, 1e-12);
  });

  test("four years of Seattle: the notes ask for water on the evenings before the grower gave it, and on no others", () => {
    const asked = table.slice(0, -1).map(({ note }) => note === "irrigate");
    expect(asked).toEqual(irrigation.slice(1).map((given) => given > 0));
  });

  test("four years of Seattle: no plant went short", () => {
    expect(Math.max(...table.map(({ unmet }) => unmet))).toBe(0);
  });

  test.each([2012, 2013, 2014, 2015])("Seattle, %d: water in July, none in December; rain drains in winter", (year) => {
    const inMonth = (month: number, cells: readonly number[]): number =>
      sum(cells.filter((_, day) => weather[day]?.year === year && weather[day]?.month === month));
    expect(inMonth(7, irrigation)).toBeGreaterThan(0);
    expect(inMonth(12, irrigation)).toBe(0);
    expect(
      inMonth(
        12,
        table.map(({ drainage }) => drainage),
      ),
    ).toBeGreaterThan(0);
  });

  // 700 to 1,100 mm of reference a year x 1.2 x 0.09 m2 is 76 to 119 L a plant.
  test.each([2012, 2013, 2014, 2015])(
    "Seattle, %d: a plant uses 76 to 119 L, of which irrigation gives more than half",
    (year) => {
      const used = sum(inYear(year, demand));
      expect(used).toBeGreaterThan(76);
      expect(used).toBeLessThan(119);
      expect(sum(inYear(year, irrigation)) / used).toBeGreaterThan(0.5);
    },
  );
});
