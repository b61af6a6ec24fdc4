import { NPER, PV } from "@formulajs/formulajs";
import { npv, nper } from "financial";
import fc from "fast-check";
import type { CellAnswer } from "../../../src/kernel";
import { answerOf, refusalOf, stepsOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Given = Readonly<Record<string, unknown>>;

function rowOf(given: Given, name: string): readonly CellAnswer[] {
  const row = tableOf("PAYBACK_SENSITIVITY", given).find(([label]) => label === name);
  if (row === undefined) throw new Error(`no row ${name}`);
  return row;
}

function namesOf(given: Given): CellAnswer[] {
  return tableOf("PAYBACK_SENSITIVITY", given)
    .slice(2)
    .map(([name]) => name as CellAnswer);
}

const LINES = [["water"], ["labour"], ["feed"], ["losses"], ["energy"], ["upkeep"]];
const AMOUNTS = [[2100], [1500], [1455.88], [2700], [250], [-900]];
const PLAN = { investment: 25200, saving_names: LINES, saving_values: AMOUNTS, life_years: 10, discount_rate: 0.08 };

describe(byAnotherRoute("PAYBACK_TABLE"), () => {
  test("10,000 at 3,000 a year and 8 %: the discounted sum is still below 0 after four years and above after five", () => {
    const rows = tableOf("PAYBACK_TABLE", { investment: 10000, annual_saving: 3000, years: 6, discount_rate: 0.08 });
    // 3000 / 1.08 = 2777.78; / 1.1664 = 2572.02; / 1.259712 = 2381.50; / 1.36048896 = 2205.09; / 1.4693280768 = 2041.75
    expectClose(rows[5]?.[3], 2777.78 + 2572.02 + 2381.5 + 2205.09 - 10000, 0, 0.01);
    expectClose(rows[6]?.[3], 2777.78 + 2572.02 + 2381.5 + 2205.09 + 2041.75 - 10000, 0, 0.01);
    expect(rows[5]?.[2]).toBe(2000);
  });

  test("the first row is year 0: no saving, and minus the investment in both sums", () => {
    const rows = tableOf("PAYBACK_TABLE", { investment: 700, annual_saving: 100, years: 2, discount_rate: 0.05 });
    expect(rows.slice(0, 2)).toEqual([
      ["year", "saving", "cumulative", "discounted cumulative"],
      [0, "", -700, -700],
    ]);
    expect(rows).toHaveLength(4);
  });
});

describe(against("PAYBACK_TABLE", "financial 0.2.4"), () => {
  test.each([0.001, 0.05, 0.08, 0.2, 1])("its npv of the investment and all savings so far, at %d", (rate) => {
    const rows = tableOf("PAYBACK_TABLE", { investment: 8000, annual_saving: 1300, years: 25, discount_rate: rate });
    for (let year = 0; year <= 25; year += 1) {
      const flows = [-8000, ...Array.from({ length: year }, () => 1300)];
      expectClose(rows[year + 1]?.[3], npv(rate, flows), 1e-11, 1e-9);
    }
  });
});

describe("PAYBACK_TABLE: what a bookkeeper meets", () => {
  test("at a rate of 0 both sums are the same", () => {
    for (const row of tableOf("PAYBACK_TABLE", { investment: 500, annual_saving: 90, years: 8 }).slice(1)) {
      expect(row[2]).toBe(row[3]);
    }
  });

  test("a saving of 0 and one below 0 are shown, never refused", () => {
    const worse = tableOf("PAYBACK_TABLE", { investment: 500, annual_saving: -20, years: 2, discount_rate: 0.1 });
    expect(worse[3]?.[2]).toBe(-540);
    expect(tableOf("PAYBACK_TABLE", { investment: 500, annual_saving: 0, years: 1 })[2]).toEqual([1, 0, -500, -500]);
  });

  test("its sums cross 0 in the year in which PAYBACK_YEARS of a range ends", () => {
    const given = { investment: 10000, annual_saving: 3000, years: 6, discount_rate: 0.08 };
    const rows = tableOf("PAYBACK_TABLE", given);
    const savings = Array.from({ length: 6 }, () => [3000]);
    const years = answerOf("PAYBACK_YEARS", { investment: 10000, annual_savings: savings, discount_rate: 0.08 });
    const crossing = rows.findIndex((row) => typeof row[3] === "number" && row[3] >= 0) - 1;
    expect(Math.ceil(years)).toBe(crossing);
  });

  test("refuses half a year", () => {
    expect(refusalOf("PAYBACK_TABLE", { investment: 1, annual_saving: 1, years: 2.5 }).argument).toBe("years");
  });
});

describe(published("PAYBACK_SENSITIVITY"), () => {
  test("today's worth of 1 a year for 100 years at 10 % is 9.999 (course notes: 10,000 a year is 99,990)", () => {
    const step = stepsOf("PAYBACK_SENSITIVITY", {
      investment: 1,
      saving_names: [["a"]],
      saving_values: [[10000]],
      life_years: 100,
      discount_rate: 0.1,
    });
    expectClose(step("a"), 9.999, 0, 0.001);
  });
});

describe(byAnotherRoute("PAYBACK_SENSITIVITY"), () => {
  test("the lines add up to the saving of a year: 2,100 + 1,500 + 1,455.88 + 2,700 + 250 - 900 = 7,105.88", () => {
    expectClose(stepsOf("PAYBACK_SENSITIVITY", PLAN)("S"), 7105.88, 1e-12);
  });

  test("life not whole: 2.5 years at 10 % is worth (1 - 1.1^-2.5) / 0.1", () => {
    const given = {
      investment: 1000,
      saving_names: [["all"]],
      saving_values: [[600]],
      life_years: 2.5,
      discount_rate: 0.1,
    };
    // 1.1^2.5 = 1.21 x 1.0488088 = 1.2690587; 1 / 1.2690587 = 0.7879856; 0.2120144 / 0.1 = 2.120144
    expectClose(rowOf(given, "as planned")[1], 600 * 2.120144 - 1000, 0, 0.001);
  });
});

describe(against("PAYBACK_SENSITIVITY", "@formulajs/formulajs 4.6.1 and financial 0.2.4"), () => {
  const total = 7105.88;
  test("value of every row, by PV", () => {
    const worth = (saving: number, life: number): number => -(PV(0.08, life, saving) as number);
    expectClose(rowOf(PLAN, "as planned")[1], worth(total, 10) - 25200, 1e-10);
    for (const [name, low, high] of [
      ["water", total - 525, total + 525],
      ["losses", total - 675, total + 675],
      ["upkeep", total + 225, total - 225],
    ] as const) {
      expectClose(rowOf(PLAN, name)[1], worth(low, 10) - 25200, 1e-10);
      expectClose(rowOf(PLAN, name)[2], worth(high, 10) - 25200, 1e-10);
    }
    expectClose(rowOf(PLAN, "investment")[1], worth(total, 10) - 18900, 1e-10);
    expectClose(rowOf(PLAN, "life")[1], worth(total, 7.5) - 25200, 1e-10);
    expectClose(rowOf(PLAN, "life")[2], worth(total, 12.5) - 25200, 1e-10);
  });

  test("payback of every row, by NPER", () => {
    expectClose(rowOf(PLAN, "as planned")[3], NPER(0.08, total, -25200) as number, 1e-10);
    expectClose(rowOf(PLAN, "water")[3], NPER(0.08, total - 525, -25200) as number, 1e-10);
    expectClose(rowOf(PLAN, "investment")[4], nper(0.08, total, -31500), 1e-10);
  });
});

describe("PAYBACK_SENSITIVITY: rows of the tornado", () => {
  test("the plan first, both sides equal; then every line, the investment and the life, each once", () => {
    const rows = tableOf("PAYBACK_SENSITIVITY", PLAN);
    expect(rows[0]).toEqual(["name", "value low", "value high", "payback low", "payback high"]);
    const [name, low, high, early, late] = rows[1] ?? [];
    expect([name, low, early]).toEqual(["as planned", high, late]);
    const names = [...LINES.flat(), "investment", "life"];
    expect(namesOf(PLAN).map(String).sort()).toEqual(names.sort());
  });

  test("sorted by the width of the value, falling", () => {
    const widths = tableOf("PAYBACK_SENSITIVITY", PLAN)
      .slice(2)
      .map(([, low, high]) => Math.abs(Number(high) - Number(low)));
    expect(widths).toEqual([...widths].sort((a, b) => b - a));
  });

  test("ties stay as given: equal lines, and a cost as large as a saving", () => {
    const given = {
      investment: 9000,
      saving_names: [["third"], ["first"], ["second"], ["cost"]],
      saving_values: [[0.1], [700.1], [700.1], [-700.1]],
      life_years: 7,
      swing: 0.3,
      discount_rate: 0.07,
    };
    const lines = namesOf(given).filter((name) => name !== "investment" && name !== "life");
    expect(lines).toEqual(["first", "second", "cost", "third"]);
  });

  test("a saving that is the only one ties with the life at a rate of 0, and stays before it", () => {
    const given = { investment: 100, saving_names: [["all"]], saving_values: [[90.7]], life_years: 3.3 };
    expect(namesOf(given)).toEqual(["all", "life", "investment"]);
  });

  test('a payback that never comes is "never", on the side on which it does not', () => {
    const thin = {
      investment: 1000,
      saving_names: [["all"]],
      saving_values: [[90]],
      life_years: 10,
      discount_rate: 0.08,
    };
    expect(rowOf(thin, "all").slice(3)).toEqual(["never", expect.any(Number)]);
    const loss = { ...thin, saving_values: [[-5]], discount_rate: 0 };
    expect(rowOf(loss, "as planned").slice(3)).toEqual(["never", "never"]);
  });

  test("a swing of 1 takes the number away: no investment is paid back at once, no life is worth nothing", () => {
    const given = { ...PLAN, swing: 1 };
    expect(rowOf(given, "investment")[3]).toBe(0);
    expect(rowOf(given, "life")[1]).toBe(-25200);
    expectClose(rowOf(given, "water")[1], -25200 + (7105.88 - 2100) * stepsOf("PAYBACK_SENSITIVITY", PLAN)("a"), 1e-12);
  });

  test("the payback does not look at the life: it is the same on both sides of that row", () => {
    expect(rowOf(PLAN, "life")[3]).toBe(rowOf(PLAN, "as planned")[3]);
    expect(rowOf(PLAN, "life")[4]).toBe(rowOf(PLAN, "as planned")[3]);
  });

  test("a row without a name and a number is no row; a line without its number is an error that names the row", () => {
    const longer = { ...PLAN, saving_names: [...LINES, [null], [""]], saving_values: [...AMOUNTS, [null], [0]] };
    expect(tableOf("PAYBACK_SENSITIVITY", longer)).toEqual(tableOf("PAYBACK_SENSITIVITY", PLAN));
    const missing = { ...PLAN, saving_values: [[2100], [null], [1455.88], [2700], [250], [-900]] };
    expect(refusalOf("PAYBACK_SENSITIVITY", missing).message).toMatch(
      /^PAYBACK_SENSITIVITY: saving_values is blank in row 2/,
    );
    const uneven = { ...PLAN, saving_values: [[1]] };
    expect(refusalOf("PAYBACK_SENSITIVITY", uneven).message).toContain("has 1 cells; it must have 6");
  });

  test("at the plan's worth of 0 the payback is the life", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 400 }), (tenths, rate) => {
        const given = {
          saving_names: [["all"]],
          saving_values: [[1000]],
          life_years: tenths / 10,
          discount_rate: rate / 1000,
        };
        const worth = stepsOf("PAYBACK_SENSITIVITY", { ...given, investment: 1 })("a") * 1000;
        expectClose(rowOf({ ...given, investment: worth }, "as planned")[3], tenths / 10, 1e-7);
      }),
      { seed: SEED },
    );
  });
});

describe("PAYBACK_YEARS over a range", () => {
  const over = (savings: readonly number[], rate = 0): number =>
    answerOf("PAYBACK_YEARS", {
      investment: 1000,
      annual_savings: savings.map((saving) => [saving]),
      discount_rate: rate,
    });

  test("a bad year below 0 puts the crossing off: 600, -300, 400, 600 pay 1,000 in 3.5 years", () => {
    expectClose(over([600, -300, 400, 600]), 3.5, 1e-12);
  });

  test("the first crossing counts, though a later year takes it back", () => {
    expectClose(over([700, 600, -900, 500]), 1.5, 1e-12);
  });

  test("a range that ends too early never pays back", () => {
    const error = refusalOf("PAYBACK_YEARS", { investment: 1000, annual_savings: [[300], [300], [300]] });
    expect(error.code).toBe("#N/A");
  });

  test("at the internal rate of return a series just pays back in its last year: 28.095 % (Gitman's example)", () => {
    const at = (rate: number): Given => ({
      investment: 100,
      annual_savings: [[39], [59], [55], [20]],
      discount_rate: rate,
    });
    expectClose(answerOf("PAYBACK_YEARS", at(0.28094)), 4, 1e-3);
    expect(refusalOf("PAYBACK_YEARS", at(0.28096)).code).toBe("#N/A");
  });
});
