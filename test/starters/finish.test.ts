/** A workbook with every feature of the model, finished: expected values are worked by hand in test/rig/potsAndDays.ts. */
import { isValue } from "../../src/workbooks/model";
import { finish } from "../../tools/starters/finish";
import { plainTwin, withOurFunctions, type LaidWorkbook } from "../../tools/starters/layOut";
import { potsAndDays } from "../rig/potsAndDays";
import { formulasInHyperFormula } from "../rig/wholeWorkbook";

const finished = finish(potsAndDays);
const VOLUME = (Math.PI * 10.5 * (14 ** 2 + 14 * 12 + 12 ** 2)) / 12 / 231;

function sheet(name: string) {
  return finished.sheets.find((each) => each.name === name)!;
}

function words(address: string): unknown {
  const cell = finished.workbook.sheets[1]!.cells[address]!;
  return isValue(cell) ? cell.value : null;
}

function laidCell({ sheets }: LaidWorkbook, name: string, address: string) {
  return sheets.find(({ sheet: each }) => each.name === name)!.cells.get(address);
}

describe("what the cells show", () => {
  test("numbers, words and truths of formulas", () => {
    const { values } = sheet("Work");
    expect(values.get("B5")).toBeCloseTo(VOLUME, 12);
    expect(values.get("B6")).toBeCloseTo(VOLUME, 12);
    expect(values.get("B8")).toBe(true);
    expect(values.get("A2")).toBe("All checks OK");
    expect(values.get("B13")).toBe("");
    expect(values.get("B30")).toBe(4);
  });

  test("a table fills its block, and what lies beyond the answer stays empty", () => {
    const { values } = sheet("Work");
    const deficits = [18, 19, 20, 21].map((row) => values.get(`B${row}`) as number);
    [0.5, 0.9, 0.4, 1].forEach((wanted, at) => expect(deficits[at]).toBeCloseTo(wanted, 12));
    expect([18, 19, 20, 21].map((row) => values.get(`E${row}`))).toEqual(["", "irrigate", "", "irrigate"]);
    expect(values.has("A22")).toBe(false);
  });

  test("a cell in error is not taken over in silence", () => {
    const faulty = {
      name: "Faulty",
      sheets: [{ name: "Sheet", cells: { A1: { formula: "=CANYARD.WATER_HELD(-1, 2)" } } }],
    };
    expect(() => finish(faulty)).toThrow("'Sheet'!A1 is in error: WATER_HELD: volume is -1; it must be");
  });
});

describe("the words beside a cell", () => {
  test("are followed by its plain formula", () => {
    expect(words("C6")).toBe("volume x capacity, twice over; plain: =2 * (B5 * (1 - 0.5))");
  });

  test("point to the plain workbook where there is no room for it", () => {
    expect(words("C5")).toBe("a cone without its point (plain formula: cell B5 of the plain workbook)");
  });

  test("stay as they are where no formula gives the same", () => {
    expect(words("C7")).toBe("a judgement in words");
  });
});

describe("what the pages get", () => {
  test("has tables and formulas as they were, and nothing of the plain twin", () => {
    const { cells } = finished.workbook.sheets[1]!;
    expect(cells["A17"]).toMatchObject({ rows: 6, columns: 5 });
    expect(JSON.stringify(finished.workbook)).not.toMatch(/"plain"|"plainOf"|"words":"/);
  });
});

describe("the plain twin", () => {
  const twin = plainTwin(finished);

  test("has no function of ours in any formula", () => {
    const formulas = twin.sheets.flatMap(({ cells }) => [...cells.values()].map(({ formula }) => formula ?? ""));
    expect(formulas.filter((formula) => /CANYARD|_xldudf_/i.test(formula))).toEqual([]);
  });

  test("worked in another engine gives the same", () => {
    const worked = formulasInHyperFormula(twin);
    expect(worked.size).toBeGreaterThan(8);
    for (const [place, found] of worked) {
      const [name, address] = place.split("!") as [string, string];
      const wanted = sheet(name).values.get(address);
      if (typeof wanted === "number") expect(found).toBeCloseTo(wanted, 9);
      else expect(found).toBe(wanted);
    }
  });

  test("a row without a name takes the formula of a row that has one", () => {
    expect(laidCell(twin, "Work", "B13")?.formula).toBe('=IF(A13 = "", "", A13 * 0.5)');
  });

  test("carries values where no built-in formula gives them, and says so on the sheet", () => {
    expect(laidCell(twin, "Work", "B18")).toMatchObject({ formula: "='Inputs & more'!B12 - 'Inputs & more'!C12" });
    expect(laidCell(twin, "Work", "B19")?.formula).toBeUndefined();
    expect(laidCell(twin, "Work", "B19")?.value).toBeCloseTo(0.9, 12);
    expect(laidCell(twin, "Work", "A4")?.value).toBe(
      "Values only, which do not follow the inputs, nor does what rests on them: A18:A21, B7, B19:B21, C18:D21, E19, E21.",
    );
  });
});

describe("with our functions", () => {
  test("each cell of a table is one formula, and only the corner shows an error", () => {
    const laid = withOurFunctions(finished);
    const table = "CANYARD.WATER_BALANCE('Inputs & more'!B12:B15, 'Inputs & more'!C12:C15, 'Inputs & more'!D12:D15, 2)";
    expect(laidCell(laid, "Work", "A17")?.formula).toBe(`=INDEX(${table}, 1, 1)`);
    expect(laidCell(laid, "Work", "B18")).toMatchObject({
      formula: `=IFERROR(INDEX(${table}, 2, 2), "")`,
      look: { format: "decimals2" },
    });
    expect(laidCell(laid, "Work", "A22")).toMatchObject({ value: "" });
  });
});
