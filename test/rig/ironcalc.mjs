/**
 * A second spreadsheet engine, in a process of its own because it is an ES module that loads WebAssembly. Reads a JSON
 * list of { row, column, input } and of cells to read from standard input; writes the values read as a JSON list. With
 * more sheets than one, `sheets` has their names, `names` what stands for a range, and each cell the number of its sheet.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";

const library = createRequire(import.meta.url).resolve("@ironcalc/wasm");
const { initSync, Model } = await import(pathToFileURL(library).href);
initSync({ module: readFileSync(library.replace(/wasm\.js$/, "wasm_bg.wasm")) });

/** The engine shows values through a number format only: 17 digits are all that a double has. */
const EVERY_DIGIT = "0.0000000000000000E+00";

const { inputs, read, sheets = [], names = {} } = JSON.parse(readFileSync(0, "utf8"));
const model = new Model("cells", "en", "UTC", "en");
model.pauseEvaluation();
sheets.forEach((name, sheet) => {
  if (sheet > 0) model.newSheet();
  model.renameSheet(sheet, name);
});
for (const [name, range] of Object.entries(names)) model.newDefinedName(name, null, range);
for (const { sheet = 0, row, column, input } of inputs) model.setUserInput(sheet, row, column, input);
model.resumeEvaluation();
model.evaluate();

const values = read.map(({ sheet = 0, row, column }) => {
  model.updateRangeStyle({ sheet, row, column, width: 1, height: 1 }, "num_fmt", EVERY_DIGIT);
  const shown = model.getFormattedCellValue(sheet, row, column);
  const number = Number(shown);
  return shown === "" || Number.isNaN(number) ? shown : number;
});
process.stdout.write(JSON.stringify(values));
