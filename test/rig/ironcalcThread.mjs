/** The thread in which IronCalc works; ironcalc.ts has what it is asked. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { workerData } from "node:worker_threads";

const library = createRequire(import.meta.url).resolve("@ironcalc/wasm");
const { initSync, Model } = await import(pathToFileURL(library).href);
initSync({ module: readFileSync(library.replace(/wasm\.js$/, "wasm_bg.wasm")) });

/** The engine shows values through a number format only: 17 digits are all that a double has. */
const EVERY_DIGIT = "0.0000000000000000E+00";

function valuesOf({ inputs, read, sheets = [], names = {} }) {
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
  model.free();
  return values;
}

function answerTo(request) {
  try {
    return { values: valuesOf(JSON.parse(request)) };
  } catch (error) {
    return { values: [], failed: String(error) };
  }
}

const { port, answered } = workerData;
port.on("message", (request) => {
  port.postMessage(answerTo(request));
  Atomics.store(answered, 0, 1);
  Atomics.notify(answered, 0);
});
