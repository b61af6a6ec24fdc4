/** Loads test files in this process, again and again; what comes from node_modules is loaded once. */
const processes = require("node:child_process");
const { readdirSync, readFileSync } = require("node:fs");
const Module = require("node:module");
const { join, sep } = require("node:path");
const ts = require("typescript");
const { collector } = require("./jestWords.cjs");

const ROOT = process.cwd();
const LIBRARIES = `${sep}node_modules${sep}`;

const compilerOptions = {
  target: ts.ScriptTarget.ES2022,
  module: ts.ModuleKind.CommonJS,
  esModuleInterop: true,
  isolatedModules: true,
  jsx: ts.JsxEmit.ReactJSX,
  jsxImportSource: "preact",
};

const compiled = new Map();

function compile(module, fileName) {
  if (!compiled.has(fileName)) {
    const { outputText } = ts.transpileModule(readFileSync(fileName, "utf8"), { compilerOptions, fileName });
    compiled.set(fileName, outputText);
  }
  module._compile(compiled.get(fileName), fileName);
}

Module._extensions[".ts"] = compile;
Module._extensions[".tsx"] = compile;

/** An engine in a process of its own gives the same answer to the same sheet: it is asked once. */
const { spawnSync } = processes;
const answered = new Map();
processes.spawnSync = (...call) => {
  const key = JSON.stringify(call);
  if (!answered.has(key)) answered.set(key, spawnSync(...call));
  return answered.get(key);
};

/** They start other processes, time themselves, or work millions of cells: too slow to judge thousands of mutants. */
const LEFT_OUT_FILES = [
  "test/kernel/types.test.ts",
  "test/catalogue/uniformity/manyReadings.test.ts",
  "test/catalogue/accuracy.test.ts",
];
const LEFT_OUT_TESTS = /IronCalc|^times and sizes|^a class of 200|in another engine|100,000/;

/** Quick to load, and they look at every entry: nearly all mutants of what is worked out on loading fall here. */
const FIRST = [
  "test/catalogue/examples.test.ts",
  "test/catalogue/editor.test.ts",
  "test/kernel/units.test.ts",
  "test/kernel/coerce.test.ts",
  "test/kernel/errors.test.ts",
  "test/kernel/format.test.ts",
  "test/kernel/limits.test.ts",
  "test/kernel/rational.test.ts",
];

/** Not as quick, and they look at every entry too. */
const BROAD = ["test/catalogue/publishedValues.test.ts", "test/catalogue/teaching/lookUps.test.ts"];

function testsIn(folder) {
  return readdirSync(join(ROOT, folder), { recursive: true })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => `${folder}/${file.split(sep).join("/")}`)
    .sort();
}

/** Random calls by the hundred for every function: the last to be asked. */
const LAST = ["test/catalogue/limits.test.ts", "test/catalogue/unitSystems.test.ts"];

const all = [...testsIn("test/kernel"), ...BROAD, ...testsIn("test/catalogue"), ...LAST];
const REST = [...new Set(all)].filter((file) => ![...FIRST, ...LEFT_OUT_FILES].includes(file));
for (const file of LAST) REST.push(...REST.splice(REST.indexOf(file), 1));

function forget() {
  for (const file of Object.keys(require.cache)) {
    if (file.startsWith(ROOT) && !file.includes(LIBRARIES) && !file.startsWith(__dirname)) delete require.cache[file];
  }
}

/** The tests of these files, everything of the project loaded anew. */
function load(files) {
  forget();
  const { tests, words } = collector(LEFT_OUT_TESTS);
  Object.assign(globalThis, words);
  for (const file of files) require(join(ROOT, file));
  return tests;
}

/** Beside those that look at every entry, the tests of a source file's own group or of the kernel. */
function ownTests(sourceFile) {
  const group = /catalogue[\\/](\w+)[\\/]/.exec(sourceFile)?.[1];
  const folder = group === undefined ? "test/kernel/" : `test/catalogue/${group}/`;
  return REST.filter((file) => file.startsWith(folder) || BROAD.includes(file));
}

module.exports = { FIRST, REST, load, ownTests };
