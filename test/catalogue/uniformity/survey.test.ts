/** The emitter walk: every cell is a tested emitter, both edges are in band, nothing gets lost in the counts. */
import { COUNTIF } from "@formulajs/formulajs";
import fc from "fast-check";
import { evaluate, inOrder } from "../../../src/kernel";
import type { CellAnswer, CellInput, Table } from "../../../src/kernel";
import { entryOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

interface Band {
  readonly low?: number;
  readonly high?: number;
}

function survey(flows: unknown, rated_flow: number, band: Band = {}): CellAnswer[][] {
  const entry = entryOf("EMITTER_SURVEY");
  return evaluate(entry, inOrder(entry, { flows, rated_flow, ...band })) as CellAnswer[][];
}

/** Tested, no flow, low, in band, high. */
function counts(flows: unknown, rated: number, band?: Band): CellAnswer[] {
  return survey(flows, rated, band)
    .slice(0, 5)
    .map((row) => row[1] as CellAnswer);
}

function shares(table: Table): number[] {
  return table.slice(1, 5).map((row) => row[2] as number);
}

function meanOverRated(flows: unknown, rated: number): CellAnswer {
  return survey(flows, rated)[5]?.[2] as CellAnswer;
}

const someFlows = fc.array(
  fc.oneof(
    { weight: 8, arbitrary: fc.double({ min: 0.05, max: 12, noNaN: true }) },
    { weight: 1, arbitrary: fc.constantFrom<CellInput>(null, "", 0, undefined) },
  ),
  { minLength: 1, maxLength: 60 },
);

describe(byAnotherRoute("EMITTER_SURVEY"), () => {
  test("twelve stakes of 6 gal/h: two without flow, two low, one high, seven in band; their 56.4 gal/h are 0.783", () => {
    const flows = [
      [6.0, 5.9, 6.2, 0],
      [4.7, 5.8, 6.1, null],
      [7.9, 3.3, 5.5, 5.0],
    ];
    // Band 4.8 to 7.2: 4.7 and 3.3 are low, 7.9 high. 56.4 / 12 = 4.7, over 6.
    expect(survey(flows, 6).slice(0, 5)).toEqual([
      ["tested", 12, 1],
      ["no flow", 2, 2 / 12],
      ["low", 2, 2 / 12],
      ["in band", 7, 7 / 12],
      ["high", 1, 1 / 12],
    ]);
    const [label, between] = survey(flows, 6)[5] ?? [];
    expect([label, between]).toEqual(["mean / rated", ""]);
    expectClose(meanOverRated(flows, 6), 56.4 / 72, 1e-14);
  });
});

describe(against("EMITTER_SURVEY", "@formulajs/formulajs 4.6.1"), () => {
  test("COUNTIF with the edges of the band, on random flows of two decimals", () => {
    const twoDecimals = fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 1, maxLength: 60 });
    fc.assert(
      fc.property(twoDecimals, (hundredths) => {
        const flows = hundredths.map((whole) => whole / 100);
        const low = COUNTIF(flows, "<3.2") as number;
        const high = COUNTIF(flows, ">4.8") as number;
        expect(counts([flows], 4)).toEqual([flows.length, 0, low, flows.length - low - high, high]);
      }),
      { seed: SEED },
    );
  });
});

describe("every cell is a tested emitter", () => {
  test.each<[string, CellInput]>([
    ["null", null],
    ["nothing", undefined],
    ["an empty text", ""],
    ["0", 0],
  ])("one that arrives as %s has no flow, and is a 0 in the mean", (_what, cell) => {
    expect(counts([[2, cell, 2, 2]], 2)).toEqual([4, 1, 0, 3, 0]);
    expect(meanOverRated([[2, cell, 2, 2]], 2)).toBe(0.75);
  });

  test("a zone without any flow is an answer: nothing runs", () => {
    expect(
      survey(
        [
          [null, 0],
          ["", 0],
        ],
        2,
      ),
    ).toEqual([
      ["tested", 4, 1],
      ["no flow", 4, 1],
      ["low", 0, 0],
      ["in band", 0, 0],
      ["high", 0, 0],
      ["mean / rated", "", 0],
    ]);
  });

  test("one flow alone is a survey of one", () => {
    expect(counts(5.4, 6)).toEqual([1, 0, 0, 1, 0]);
  });

  test("a text or a flow below 0 is refused by its place", () => {
    expect(refusalOf("EMITTER_SURVEY", { flows: [[6], ["torn"]], rated_flow: 6 }).message).toContain(
      'flows is the text "torn" in row 2 of the range',
    );
    expect(refusalOf("EMITTER_SURVEY", { flows: [[6, -1]], rated_flow: 6 }).message).toContain(
      "flows is -1 in column 2",
    );
  });
});

describe("both edges are in band", () => {
  test("at every rated flow of one decimal, although 0.72 is a little less than 0.8 x 0.9 in a computer", () => {
    expect(0.72).toBeLessThan(0.8 * 0.9);
    for (let tenths = 1; tenths <= 300; tenths += 1) {
      const rated = tenths / 10;
      const edges = [(tenths * 8) / 100, (tenths * 12) / 100];
      expect([rated, ...counts([edges], rated)]).toEqual([rated, 2, 0, 0, 2, 0]);
    }
  });

  test("and a thousandth beyond them is not", () => {
    expect(counts([[0.799, 0.8, 1.2, 1.201]], 1)).toEqual([4, 0, 1, 2, 1]);
  });

  test("of a band that was chosen", () => {
    expect(counts([[0.9, 0.89, 1.1, 1.11]], 1, { low: 0.9, high: 1.1 })).toEqual([4, 0, 1, 2, 1]);
  });
});

describe("the band", () => {
  const walk = { flows: [[1, 1]], rated_flow: 1 };

  test.each([1, 1.2, 80, 0])("has no lower edge of %d", (low) => {
    expect(refusalOf("EMITTER_SURVEY", { ...walk, low })).toMatchObject({ code: "#VALUE!", argument: "low" });
  });

  test.each([1, 0.8, 120, 0])("has no upper edge of %d", (high) => {
    expect(refusalOf("EMITTER_SURVEY", { ...walk, high })).toMatchObject({ code: "#VALUE!", argument: "high" });
  });

  test("in percent is told what to write", () => {
    expect(refusalOf("EMITTER_SURVEY", { ...walk, low: 80 }).message).toContain("0.8 and not 80");
    expect(refusalOf("EMITTER_SURVEY", { ...walk, high: 120 }).message).toContain("1.2 and not 120");
  });
});

describe("any survey", () => {
  test("loses no emitter: the counts add up to those tested, the shares to 1", () => {
    fc.assert(
      fc.property(someFlows, fc.double({ min: 0.2, max: 10, noNaN: true }), (flows, rated) => {
        const table = survey([flows], rated);
        const [tested = NaN, ...parts] = counts([flows], rated) as number[];
        expect(tested).toBe(flows.length);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(tested);
        expectClose(
          shares(table).reduce((sum, share) => sum + share, 0),
          1,
          1e-14,
        );
      }),
      { seed: SEED },
    );
  });

  test("is the same in gallons and in litres", () => {
    fc.assert(
      fc.property(someFlows, fc.double({ min: 0.2, max: 10, noNaN: true }), (flows, rated) => {
        const litres = flows.map((flow) => (typeof flow === "number" ? flow * 3.785411784 : flow));
        expect(counts([litres], rated * 3.785411784)).toEqual(counts([flows], rated));
      }),
      { seed: SEED },
    );
  });

  test("keeps the water: mean / rated times the rated flow times the emitters is what they give together", () => {
    fc.assert(
      fc.property(someFlows, (flows) => {
        const together = flows.reduce<number>((sum, flow) => sum + (typeof flow === "number" ? flow : 0), 0);
        expectClose((meanOverRated([flows], 3) as number) * 3 * flows.length, together, 1e-12);
      }),
      { seed: SEED },
    );
  });
});
