/** What each slip of a converted unit gives, by the definitions of the units with the slip put in by hand. */
import { expectNoMistake, type MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const GALLON = 3.785411784;
const IMPERIAL_GALLON = 4.54609;

const TABLES: Readonly<Record<string, readonly MistakeRow[]>> = {
  CONVERT_UNIT: [
    ["It was multiplied, not divided, or the other way round", { value: 7, from: "in", to: "mm" }, 7 / 25.4],
    ["It was multiplied, not divided, or the other way round", { value: 70, from: "mm", to: "in" }, 70 * 25.4],
    ["The number was kept and only the unit was changed", { value: 7, from: "in", to: "mm" }, 7],
    ["The number was kept and only the unit was changed", { value: 68, from: "F", to: "C" }, 68],
    ["The imperial gallon was taken for the US one", { value: 13, from: "gal", to: "L" }, 13 * IMPERIAL_GALLON],
    ["The imperial gallon was taken for the US one", { value: 90, from: "L", to: "gallons" }, 90 / IMPERIAL_GALLON],
    [
      "The imperial gallon was taken for the US one",
      { value: 3, from: "CCF", to: "gal" },
      (300 * 12 ** 3 * 16.387064) / 1000 / IMPERIAL_GALLON,
    ],
    ["32 was added or taken off, and the rest left out", { value: 68, from: "F", to: "C" }, 36],
    ["32 was added or taken off, and the rest left out", { value: 21, from: "C", to: "F" }, 53],
  ],
};

expectMistakesOfGroup("Teaching and audit", TABLES);

test("the two gallons of the table are a fifth apart: 277.42 and 231 cubic inches", () => {
  expect(IMPERIAL_GALLON / GALLON).toBeCloseTo(277.42 / 231, 4);
});

expectNoMistake("CONVERT_UNIT", [
  ["It was multiplied, not divided, or the other way round", { value: 68, from: "F", to: "C" }],
  ["It was multiplied, not divided, or the other way round", { value: 0, from: "in", to: "mm" }],
  ["The imperial gallon was taken for the US one", { value: 7, from: "in", to: "mm" }],
  ["The imperial gallon was taken for the US one", { value: 7, from: "imperial gallon", to: "L" }],
  ["The imperial gallon was taken for the US one", { value: 7, from: "gal", to: "gallons" }],
  ["32 was added or taken off, and the rest left out", { value: 7, from: "in", to: "mm" }],
]);
