/** Leaching tests: one pot, a log of pots, and the run time that follows. */
import { AVERAGE, STDEV, SUM } from "@formulajs/formulajs";
import fc from "fast-check";
import { evaluate, inOrder } from "../../../src/kernel";
import type { CellInput, Table } from "../../../src/kernel";
import { answerOf, entryOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type Column = readonly CellInput[];

const asColumn = (cells: Column): CellInput[][] => cells.map((cell) => [cell]);

function summary(leachates: Column, applieds: Column, zeros?: string): Record<string, unknown> {
  const entry = entryOf("LEACHING_SUMMARY");
  const args = { leachates: asColumn(leachates), applieds: asColumn(applieds), zeros };
  return Object.fromEntries(evaluate(entry, inOrder(entry, args)) as Table) as Record<string, unknown>;
}

function summaryRefused(leachates: Column, applieds: Column, zeros?: string): ReturnType<typeof refusalOf> {
  return refusalOf("LEACHING_SUMMARY", { leachates: asColumn(leachates), applieds: asColumn(applieds), zeros });
}

/** Ten stakes of one block, in mL, one of them weak and one on a pot that repels water. */
const LEACHED = [110, 95, 0, 130, 60, 88, 240, 102, 75, 120];
const APPLIED = [620, 610, 400, 650, 590, 600, 640, 615, 605, 630];

describe(published("LEACHING_FRACTION"), () => {
  test("ASCE Manual 71, lecture notes on chapter 12: 125 units applied where plants use 100 drain 25, a fraction of 0.2", () => {
    expectClose(answerOf("LEACHING_FRACTION", { leachate: 25, applied: 125 }), 0.2, 1e-12);
  });
});

describe(byAnotherRoute("LEACHING_FRACTION"), () => {
  test("150 mL of 1000 mL: 15 mL of every 100", () => {
    expectClose(answerOf("LEACHING_FRACTION", { leachate: 150, applied: 1000 }), 15 / 100, 1e-14);
  });

  test("by weight: a pot from 5.20 to 5.88 kg that dripped 0.12 kg got 0.80 kg", () => {
    const applied =
      answerOf("WATER_FROM_WEIGHT", { heavier_weight: 5.88, lighter_weight: 5.2, units: "metric" }) + 0.12;
    expectClose(answerOf("LEACHING_FRACTION", { leachate: 0.12, applied }), 0.15, 1e-12);
  });
});

describe(byAnotherRoute("RUN_MINUTES_FROM_LEACHING"), () => {
  test("20 min at 0.40 keep 12 min of water; 12 of 14.1 min is 0.85", () => {
    const minutes = answerOf("RUN_MINUTES_FROM_LEACHING", { minutes_now: 20, measured: 0.4, target: 0.15 });
    expectClose(12 / minutes, 0.85, 1e-12);
    expectClose(minutes, 14.1, 0, 0.05);
  });

  test("from 0.40 to 0.15 saves 29.41 % of the water, not 25 %", () => {
    const minutes = answerOf("RUN_MINUTES_FROM_LEACHING", { minutes_now: 100, measured: 0.4, target: 0.15 });
    expectClose(100 - minutes, 29.41, 0, 0.005);
  });

  test("there and back again is the time before", () => {
    const fraction = fc.double({ min: 0.01, max: 0.95, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 300, noNaN: true }), fraction, fraction, (minutes_now, a, b) => {
        const there = answerOf("RUN_MINUTES_FROM_LEACHING", { minutes_now, measured: a, target: b });
        const back = answerOf("RUN_MINUTES_FROM_LEACHING", { minutes_now: there, measured: b, target: a });
        expectClose(back, minutes_now, 1e-12);
      }),
      { seed: SEED },
    );
  });
});

// 110 + 95 + 0 + 130 + 60 + 88 + 240 + 102 + 75 + 120 = 1020 mL; 620 + 610 + 400 + 650 + 590 + 600 + 640 + 615 + 605 + 630
// = 5960 mL.
describe(byAnotherRoute("LEACHING_SUMMARY"), () => {
  test("ten pots: 1,020 of 5,960 mL is 0.1711 pooled", () => {
    expect(summary(LEACHED, APPLIED)["pots"]).toBe(10);
    expectClose(summary(LEACHED, APPLIED)["pooled fraction"], 1020 / 5960, 1e-12);
  });

  test("is LEACHING_FRACTION pot by pot, and of the sums", () => {
    const fractions = LEACHED.map((leachate, pot) =>
      answerOf("LEACHING_FRACTION", { leachate, applied: APPLIED[pot] as number }),
    );
    const found = summary(LEACHED, APPLIED);
    expect(found["min"]).toBe(Math.min(...fractions));
    expect(found["max"]).toBe(Math.max(...fractions));
    expectClose(found["pooled fraction"], answerOf("LEACHING_FRACTION", { leachate: 1020, applied: 5960 }), 1e-14);
  });

  test("pots that got little weigh too much in the mean of the fractions: 0.24 pooled, 0.32 as the mean", () => {
    // 90 of 150 mL and 20 of 500 mL are 0.60 and 0.04; 110 of 650 mL are 0.1692.
    const found = summary([90, 20], [150, 500]);
    expectClose(found["pooled fraction"], 110 / 650, 1e-12);
    expectClose(found["mean of fractions"], 0.32, 1e-12);
  });

  test("of two pots the deviation is their difference over the root of 2", () => {
    const found = summary([100, 300], [1000, 1000]);
    expectClose(found["Cv"], 0.2 / Math.sqrt(2) / 0.2, 1e-12);
  });

  test("100,000 pots in one call: fractions of 0, 0.1 and 0.2 in turn have a mean of 0.1 and a Cv of root 2/3", () => {
    const count = 99_999;
    const leached = Array.from({ length: count }, (_, pot) => (pot % 3) * 50);
    const found = summary(
      leached,
      leached.map(() => 500),
    );
    expect(found["pots"]).toBe(count);
    expectClose(found["mean of fractions"], 0.1, 1e-9);
    expectClose(found["Cv"], Math.sqrt((2 / 3) * (count / (count - 1))), 1e-9);
  });
});

describe(against("LEACHING_SUMMARY", "@formulajs/formulajs 4.6.1"), () => {
  const fractions = LEACHED.map((leachate, pot) => leachate / (APPLIED[pot] as number));

  test("pooled fraction by SUM", () => {
    expectClose(
      summary(LEACHED, APPLIED)["pooled fraction"],
      (SUM(LEACHED) as number) / (SUM(APPLIED) as number),
      1e-14,
    );
  });

  test("mean and Cv by AVERAGE and STDEV.S", () => {
    const mean = AVERAGE(fractions) as number;
    expectClose(summary(LEACHED, APPLIED)["mean of fractions"], mean, 1e-14);
    expectClose(summary(LEACHED, APPLIED)["Cv"], (STDEV.S(fractions) as number) / mean, 1e-13);
  });
});

describe("a log of leaching tests", () => {
  test("lists six rows, label and value, without a header", () => {
    expect(Object.keys(summary(LEACHED, APPLIED))).toEqual([
      "pots",
      "pooled fraction",
      "mean of fractions",
      "min",
      "max",
      "Cv",
    ]);
  });

  test("of one pot has no variation, nor has one in which nothing leached", () => {
    expect(summary([150], [1000])).toEqual({
      pots: 1,
      "pooled fraction": 0.15,
      "mean of fractions": 0.15,
      min: 0.15,
      max: 0.15,
      Cv: "",
    });
    expect(summary([0, 0], [500, 500])).toMatchObject({ "pooled fraction": 0, "mean of fractions": 0, Cv: "" });
  });

  describe.each<[string, CellInput]>([
    ["null", null],
    ["an empty text", ""],
    ["nothing", undefined],
    ["0", 0],
  ])("with a dry saucer that arrives as %s", (_name, blank) => {
    const leached = [100, blank, 200];

    test("counts it as 0 unless told otherwise", () => {
      for (const zeros of [undefined, "", "count"]) {
        expectClose(summary(leached, [1000, 500, 1000], zeros)["pooled fraction"], 300 / 2500, 1e-12);
        expect(summary(leached, [1000, 500, 1000], zeros)).toMatchObject({ pots: 3, min: 0 });
      }
    });

    test("names the cell under error", () => {
      const refused = summaryRefused(leached, [1000, 500, 1000], "error");
      expect(refused).toMatchObject({ code: "#VALUE!", argument: "leachates" });
      expect(refused.message).toContain("leachates is blank or 0 in row 2 of the range");
    });

    test("leaves the pot out under skip, its applied water too: 300 of 2,000", () => {
      const found = summary(leached, [1000, 500, 1000], "skip");
      expect(found["pots"]).toBe(2);
      expectClose(found["pooled fraction"], 300 / 2000, 1e-12);
    });
  });

  describe.each<[string, CellInput]>([
    ["null", null],
    ["an empty text", ""],
    ["0", 0],
  ])("with applied water that arrives as %s", (_name, blank) => {
    test.each([undefined, "count", "error"])("is refused by row under %s, also beside a dry saucer", (zeros) => {
      for (const leachate of [90, 0]) {
        if (leachate === 0 && zeros === "error") continue;
        const refused = summaryRefused([100, leachate, 200], [1000, blank, 1000], zeros);
        expect(refused).toMatchObject({ code: "#VALUE!", argument: "applieds" });
        expect(refused.message).toContain("applieds is blank or 0 in row 2 of the range");
      }
    });

    test("leaves the pot out under skip, its leachate too: 300 of 2,000", () => {
      const found = summary([100, 90, 200], [1000, blank, 1000], "skip");
      expect(found["pots"]).toBe(2);
      expectClose(found["pooled fraction"], 300 / 2000, 1e-12);
    });
  });

  test("keeps pots and their water together under skip, whatever is missing where", () => {
    const found = summary([100, null, 50, 200, 0], [1000, 700, "", 1000, 800], "skip");
    expect(found).toMatchObject({ pots: 2, min: 0.1, max: 0.2 });
  });

  test("may lie in any shape, as long as both have it: a 2 x 2 block is read row by row", () => {
    const entry = entryOf("LEACHING_SUMMARY");
    const block = {
      leachates: [
        [100, 0],
        [200, 50],
      ],
      applieds: [
        [1000, 700],
        [1000, 500],
      ],
      zeros: "skip",
    };
    const [pots, pooled] = evaluate(entry, inOrder(entry, block)) as Table;
    expect(pots).toEqual(["pots", 3]);
    expectClose(pooled?.[1], 350 / 2500, 1e-12);
  });

  test("without a pot left is refused", () => {
    expect(summaryRefused([0, null], [500, 500], "skip").message).toContain("leachates has no number");
  });

  test("with columns of different length gives both lengths", () => {
    const refused = summaryRefused([1, 2, 3], [10, 20]);
    expect(refused.message).toBe("LEACHING_SUMMARY: applieds has 2 cells; it must have 3, as leachates has");
  });

  test("with more leached than applied names the pot and asks whether the columns were swapped", () => {
    const refused = summaryRefused([100, 1000], [1000, 150]);
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "leachates" });
    expect(refused.message).toBe(
      "LEACHING_SUMMARY: leachates is 1000; it must be 150 or less, the applieds of the same pot (number 2 of those counted); were the two columns swapped?",
    );
  });

  test.each(["dry", "12", true, -5, NaN])("refuses %s as a leachate, by its row", (cell) => {
    for (const zeros of ["count", "skip", "error"]) {
      const refused = summaryRefused([100, cell, 200], [1000, 1000, 1000], zeros);
      expect(refused).toMatchObject({ code: "#VALUE!", argument: "leachates" });
      expect(refused.message).toContain("in row 2 of the range");
    }
  });

  test("keeps the pooled fraction between the lowest and the highest pot, and does not mind the unit", () => {
    const part = fc.double({ min: 0.001, max: 1, noNaN: true });
    const pot = fc.tuple(fc.double({ min: 1, max: 5000, noNaN: true }), part);
    fc.assert(
      fc.property(fc.array(pot, { minLength: 1, maxLength: 30 }), (pots) => {
        const applied = pots.map(([given]) => given);
        const leached = pots.map(([given, fraction]) => given * fraction);
        const found = summary(leached, applied);
        const ounces = (cells: readonly number[]): number[] => cells.map((cell) => cell / 29.5735);
        const pooled = found["pooled fraction"] as number;
        expect(pooled).toBeGreaterThanOrEqual((found["min"] as number) * (1 - 1e-12));
        expect(pooled).toBeLessThanOrEqual((found["max"] as number) * (1 + 1e-12));
        expectClose(summary(ounces(leached), ounces(applied))["pooled fraction"], pooled, 1e-12);
      }),
      { seed: SEED },
    );
  });
});
