/**
 * docs/check-values.md, made of the tests that passed: function by function, how many published values, which
 * independent libraries, and where there is arithmetic only. A whole run fails when the page is stale;
 * `npm run check-values` writes it.
 */
const { existsSync, readFileSync, writeFileSync } = require("node:fs");
const { join } = require("node:path");

const PAGE = join(__dirname, "../../docs/check-values.md");
const METADATA = join(__dirname, "../../dist/functions.json");
const WRITE = process.env.CANYARD_CHECK_VALUES === "write";
const TITLE =
  /^([A-Z][A-Z0-9_]+): (published values|arithmetic by another route|no arithmetic, held against .+|against (.+))$/;

function nothing() {
  return { published: 0, arithmetic: 0, libraries: new Map(), hasNone: false };
}

/** Function to what its passed tests prove. */
function evidenceOf(results) {
  const evidence = new Map();
  const passed = results.testResults.flatMap((file) => file.testResults).filter(({ status }) => status === "passed");
  for (const { ancestorTitles } of passed) {
    for (const title of ancestorTitles) {
      const [, name, kind, library] = TITLE.exec(title) ?? [];
      if (name === undefined) continue;
      const known = evidence.get(name) ?? nothing();
      if (kind === "published values") known.published += 1;
      else if (kind.startsWith("no arithmetic")) known.hasNone = true;
      else if (library === undefined) known.arithmetic += 1;
      else known.libraries.set(library, (known.libraries.get(library) ?? 0) + 1);
      evidence.set(name, known);
    }
  }
  return evidence;
}

function row(name, { published, arithmetic, libraries, hasNone } = nothing()) {
  const named = [...libraries].map(([library, tests]) => `${library} (${tests})`).join(", ");
  const only = hasNone ? "no arithmetic" : published === 0 && libraries.size === 0 ? "yes" : "";
  return `| ${name} | ${published || ""} | ${named} | ${arithmetic || ""} | ${only} |`;
}

function pageOf(evidence, names) {
  return [
    "<!-- Made of the tests that passed, by `npm run check-values`; do not edit. -->",
    "",
    "# What stands behind each number",
    "",
    "Besides these, every example of every function, every recorded step and every plain-spreadsheet equivalent is evaluated in independent spreadsheet engines. Numbers in brackets count tests. Where the last column says yes, no published value and no independent library was found, and the function rests on arithmetic worked by another route; where it says no arithmetic, the function gives words that are held against the files they come from.",
    "",
    "| function | published values | independent libraries | by another route | arithmetic only |",
    "| --- | --- | --- | --- | --- |",
    ...names.map((name) => row(name, evidence.get(name))),
    "",
  ].join("\n");
}

function catalogueNames() {
  const { functions } = JSON.parse(readFileSync(METADATA, "utf8"));
  return functions.map(({ id }) => id);
}

module.exports = class CheckValues {
  constructor({ nonFlagArgs }) {
    this.isWholeRun = nonFlagArgs.length === 0;
  }

  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    if (!this.isWholeRun || failed > 0) return;
    const page = pageOf(evidenceOf(results), catalogueNames());
    if (WRITE) writeFileSync(PAGE, page);
    else if (!existsSync(PAGE) || readFileSync(PAGE, "utf8") !== page) {
      this.stale = new Error("docs/check-values.md is stale: run `npm run check-values`");
      console.error(this.stale.message);
    }
  }

  getLastError() {
    return this.stale;
  }
};
