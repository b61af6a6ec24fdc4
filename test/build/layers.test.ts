import { execFileSync } from "node:child_process";
import { join } from "node:path";

const LAYER = "import-x/no-restricted-paths";
const HOST_NAME = "no-restricted-globals";

/** A line that stands in a file of the project, and the rule that it must break there; null where it may stand. */
const LINES: readonly (readonly [path: string, code: string, rule: string | null])[] = [
  ["src/kernel/format.ts", 'export { catalogue } from "../functions/catalogue";', LAYER],
  ["src/functions/catalogue/container/waterHeld.ts", 'export { answer } from "../../host";', LAYER],
  ["src/functions/index.ts", 'export { ternHollow } from "../workbooks/ternHollow";', LAYER],
  ["src/workbooks/blank.ts", 'export { call } from "../functions";', LAYER],
  ["src/sheet/functions.ts", 'export { evaluate } from "../kernel";', LAYER],
  ["src/taskpane/taskpane.ts", 'export { render } from "../sheet/render";', LAYER],
  ["src/taskpane/taskpane.ts", 'export { answer } from "../functions/host";', LAYER],
  ["src/functions/catalogue/container/waterHeld.ts", 'export { cite } from "../../../kernel";', null],
  ["src/sheet/functions.ts", 'export { call } from "../functions";', null],
  ["src/kernel/format.ts", "export const there = typeof CustomFunctions;", HOST_NAME],
  ["src/taskpane/taskpane.ts", "export const there = typeof Office;", HOST_NAME],
  ["src/taskpane/taskpane.ts", "export const there = typeof Excel;", HOST_NAME],
  ["src/sheet/grid.ts", "export const there = typeof o_spreadsheet;", HOST_NAME],
  ["src/functions/host.ts", "export const there = typeof CustomFunctions;", null],
  ["src/functions/host.ts", "export const there = typeof SpreadsheetApp;", HOST_NAME],
  ["src/functions/googleSheets/dates.ts", "export const there = typeof SpreadsheetApp;", null],
  ["src/kernel/format.ts", "export const chance = Math.random();", "no-restricted-properties"],
  ["src/kernel/format.ts", "export const now = Date.now();", "no-restricted-properties"],
  ["src/kernel/format.ts", "export const now = new Date();", "no-restricted-syntax"],
  ["src/kernel/format.ts", "export const page = document;", HOST_NAME],
  ["src/kernel/format.ts", "export const asked = fetch;", HOST_NAME],
];

describe("the layers cannot be crossed, and the library stays pure", () => {
  let broken: readonly (readonly string[])[] = [];
  beforeAll(() => {
    const input = JSON.stringify(LINES.map(([path, code]) => [path, `${code}\n`]));
    const output = execFileSync(process.execPath, [join(__dirname, "../rig/lintTexts.mjs")], {
      input,
      encoding: "utf8",
    });
    broken = JSON.parse(output) as string[][];
  });

  test.each(
    LINES.map(([path, code, rule], index) => [path, rule === null ? "accepts" : "refuses", code, rule, index] as const),
  )("%s %s %s", (_path, _verb, _code, rule, index) => {
    expect(broken[index]).toEqual(rule === null ? [] : [rule]);
  });
});
