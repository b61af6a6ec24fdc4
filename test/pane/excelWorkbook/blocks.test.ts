import fc from "fast-check";
import { addressOf, blockOf, covering, usedBlock } from "../../../src/taskpane/excelWorkbook/blocks";
import { columnLetters } from "../../../src/workbooks/kit";

describe("blocks of cells", () => {
  test.each([
    ["B2", { row: 1, column: 1, rows: 1, columns: 1 }, "B2"],
    ["$B$2:$D$9", { row: 1, column: 1, rows: 8, columns: 3 }, "B2:D9"],
    ["Z1:AB1", { row: 0, column: 25, rows: 1, columns: 3 }, "Z1:AB1"],
  ])("%s is read and written", (address, block, written) => {
    expect(blockOf(address)).toEqual(block);
    expect(addressOf(block)).toBe(written);
  });

  test("the used block begins at the first cell of the sheet and holds every cell", () => {
    expect(addressOf(usedBlock(["C3", "B7", "E2"]))).toBe("A1:E7");
    expect(addressOf(usedBlock([]))).toBe("A1");
  });

  test.each<[readonly string[], readonly string[]]>([
    [["A1", "A2", "A3"], ["A1:A3"]],
    [["A1", "B1", "A2", "B2"], ["A1:B2"]],
    [
      ["A1", "A2", "B2"],
      ["A1:A2", "B2"],
    ],
    [
      ["A1", "C1"],
      ["A1", "C1"],
    ],
    [["AA10", "Z10", "Z9", "AA9"], ["Z9:AA10"]],
  ])("%j are covered by %j", (cells, blocks) => {
    expect(covering(cells).map(addressOf)).toEqual(blocks);
  });

  test("any cells are covered exactly: none is left out, none twice, none beside", () => {
    const cell = fc.tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 6 }));
    fc.assert(
      fc.property(fc.uniqueArray(cell, { selector: String, maxLength: 30 }), (places) => {
        const cells = places.map(([column, row]) => `${columnLetters(column)}${row}`);
        const covered = covering(cells).flatMap(({ row, column, rows, columns }) =>
          Array.from({ length: rows * columns }, (_, at) =>
            addressOf({
              row: row + Math.floor(at / columns),
              column: column + (at % columns),
              rows: 1,
              columns: 1,
            }),
          ),
        );
        expect([...covered].sort()).toEqual([...cells].sort());
      }),
      { seed: 9 },
    );
  });
});
