import { joinParts, partOf } from "../../../src/sheet/xlsx/spills";

const CALL = 'CANYARD.PULSE_SCHEDULE(A1, 3, IF(A2="a, b", 60, 50), 0.25)';
const part = (row: number, column: number) => `=${partOf(CALL, row, column)}`;
const bare = (row: number, column: number) => `=INDEX(${CALL}, ${row}, ${column})`;

it("writes the corner such that it shows an error, and the rest such that they do not", () => {
  expect(part(1, 1)).toBe(bare(1, 1));
  expect(part(1, 2)).toBe(`=IFERROR(INDEX(${CALL}, 1, 2), "")`);
});

it("puts the parts of one call together, whichever way they are written", () => {
  const cells = { C5: part(1, 1), D5: bare(1, 2), C6: part(2, 1), D6: bare(2, 2), C7: bare(3, 1), D7: part(3, 2) };
  expect(joinParts({ ...cells, A1: "4" })).toEqual({ C5: `=${CALL}`, A1: "4" });
});

it("leaves cells apart that are not parts of the same block", () => {
  const cells = {
    C5: part(1, 1),
    D5: part(1, 3),
    C6: part(2, 2),
    F1: "=INDEX(A1:B9, 1, 1)",
    F2: "=INDEX(A1:B9, 2, 1)",
  };
  expect(joinParts(cells)).toEqual(cells);
});

it("leaves a row that is not whole", () => {
  const cells = { C5: part(1, 1), D5: part(1, 2), C6: part(2, 1), D6: part(2, 2), C7: part(3, 1), D7: "note" };
  expect(joinParts(cells)).toEqual({ C5: `=${CALL}`, C7: part(3, 1), D7: "note" });
});

it("keeps two blocks of the same call apart", () => {
  const cells = { A1: part(1, 1), B1: part(1, 2), A5: part(1, 1), B5: part(1, 2) };
  expect(joinParts(cells)).toEqual({ A1: `=${CALL}`, A5: `=${CALL}` });
});
