/** Loads test files in this process, again and again; what comes from node_modules is loaded once. */
const { readdirSync, readFileSync } = require("node:fs");
const Module = require("node:module");
const { dirname, join, resolve, sep } = require("node:path");
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

/** They start other processes, time themselves, or work millions of cells: too slow to judge thousands of mutants. */
const LEFT_OUT_FILES = [
  "test/kernel/types.test.ts",
  "test/catalogue/uniformity/manyReadings.test.ts",
  "test/catalogue/accuracy.test.ts",
];
const LEFT_OUT_TESTS = /IronCalc|^times and sizes|^a class of 200|in another engine|100,000/;

/** Quick to load, and they look at every entry: nearly all mutants of what is worked out on loading fall here. */
const EVERY_ENTRY = ["test/catalogue/examples.test.ts", "test/catalogue/editor.test.ts"];
const FIRST = [
  ...EVERY_ENTRY,
  "test/kernel/units.test.ts",
  "test/kernel/coerce.test.ts",
  "test/kernel/errors.test.ts",
  "test/kernel/format.test.ts",
  "test/kernel/limits.test.ts",
  "test/kernel/rational.test.ts",
];

/** Not as quick, and they look at every entry too. */
const BROAD = ["test/catalogue/publishedValues.test.ts", "test/catalogue/teaching/lookUps.test.ts"];

/** Whole classes, and sheets in other engines, laid out while the file is loaded: not anew for each mutant. */
const SLOW_TO_LOAD = /InSheets\.test\.ts$|\/(class|diagnosis|workingFormulas)\.test\.ts$/;

function testsIn(folder) {
  return readdirSync(join(ROOT, folder), { recursive: true })
    .filter((file) => file.endsWith(".test.ts"))
    .map((file) => `${folder}/${file.split(sep).join("/")}`)
    .sort();
}

/** Random calls by the hundred for every function, and by the hundred more to find the simplest that fails: asked last. */
const LAST = ["test/catalogue/limits.test.ts", "test/catalogue/unitSystems.test.ts"];

const all = [...testsIn("test/kernel"), ...BROAD, ...testsIn("test/catalogue"), ...LAST];
const REST = [...new Set(all)].filter((file) => ![...FIRST, ...LEFT_OUT_FILES].includes(file));
for (const file of LAST) REST.push(...REST.splice(REST.indexOf(file), 1));

const ENDINGS = ["", ".ts", ".tsx", `${sep}index.ts`];

/** The project's own files that a file imports. */
function importsOf(file) {
  if (!/\.tsx?$/.test(file)) return [];
  return ts
    .preProcessFile(readFileSync(file, "utf8"), true, true)
    .importedFiles.filter(({ fileName }) => fileName.startsWith("."))
    .flatMap(({ fileName }) => {
      const path = resolve(dirname(file), fileName);
      return ENDINGS.map((ending) => path + ending).filter((each) => ts.sys.fileExists(each));
    });
}

const importersOf = new Map();
const noted = new Set();

/** Notes once who imports a file that is loaded. */
function noteImports(file) {
  if (noted.has(file)) return;
  noted.add(file);
  for (const imported of importsOf(file)) {
    if (!importersOf.has(imported)) importersOf.set(imported, []);
    importersOf.get(imported).push(file);
  }
}

function ownLoaded() {
  return Object.keys(require.cache).filter(
    (file) => file.startsWith(ROOT) && !file.includes(LIBRARIES) && !file.startsWith(__dirname),
  );
}

/** A file and all that came to be with it: those that import it, and those that import them. */
function withImporters(file) {
  ownLoaded().forEach(noteImports);
  const found = new Set([file]);
  for (const each of found) for (const importer of importersOf.get(each) ?? []) found.add(importer);
  return found;
}

let lastChanged = null;

/** Forgets what a change of a file reaches, what the change before it reached, and all files of tests. */
function forget(changed) {
  const reached = new Set();
  for (const file of [changed, lastChanged])
    if (file !== null) for (const each of withImporters(file)) reached.add(each);
  for (const file of ownLoaded()) if (reached.has(file) || file.endsWith(".test.ts")) delete require.cache[file];
  lastChanged = changed;
}

/** The tests of these files, loaded anew with all that a changed file reaches. */
function load(files, changed = null) {
  forget(changed);
  const { tests, words } = collector(LEFT_OUT_TESTS);
  Object.assign(globalThis, words);
  for (const file of files) {
    const before = tests.length;
    require(join(ROOT, file));
    for (const test of tests.slice(before)) test.isLast = LAST.includes(file);
  }
  return tests;
}

/**
 * Who is asked about a mutant that acts on loading, one list after the other: those that look at every entry, then the
 * tests of the source file's own group, or of the kernel.
 */
function askedOnLoading(sourceFile) {
  const inCatalogue = /catalogue[\\/](\w+[\\/])?/.exec(sourceFile);
  if (inCatalogue === null)
    return [FIRST, REST.filter((file) => file.startsWith("test/kernel/") || BROAD.includes(file))];
  const [, group = ""] = inCatalogue;
  const folder = `test/catalogue/${group.replace("\\", "/")}`;
  const own = REST.filter((file) => file.startsWith(folder) || BROAD.includes(file));
  return [EVERY_ENTRY, own.filter((file) => !LAST.includes(file) && !SLOW_TO_LOAD.test(file))];
}

module.exports = { FIRST, REST, load, askedOnLoading };
