/**
 * The words that the tests use of jest, over a plain list of tests: what is loaded stays loaded from one mutant to the
 * next. Expectations and tables of cases are jest's own packages.
 */
const { expect } = require("expect");
const { bind } = require("jest-each");

/** Tests whose names match are not collected. */
function collector(leftOut) {
  const tests = [];
  const known = new Map();
  let suite = { title: "", parent: null, before: [], after: [] };

  function uniqueName(title) {
    const name = suite.title === "" ? title : `${suite.title} ${title}`;
    const times = (known.get(name) ?? 0) + 1;
    known.set(name, times);
    return times === 1 ? name : `${name} (${times})`;
  }

  function describe(title, body) {
    const outer = suite;
    suite = { title: outer.title === "" ? title : `${outer.title} ${title}`, parent: outer, before: [], after: [] };
    body();
    suite = outer;
  }

  function test(title, body) {
    const name = uniqueName(title);
    if (!leftOut.test(name)) tests.push({ name, suite, body: () => body() });
  }

  const words = {
    expect,
    describe: Object.assign(describe, { each: bind(describe, false) }),
    test: Object.assign(test, { each: bind(test, false) }),
    it: test,
    beforeAll: (body) => suite.before.push(body),
    afterAll: (body) => suite.after.push(body),
  };
  return { tests, words };
}

/** A suite and those around it, the outermost first. */
function suitesOf({ suite }) {
  const found = [];
  for (let at = suite; at !== null; at = at.parent) found.unshift(at);
  return found;
}

/**
 * Runs tests in their order; `each` hears of every one, with its milliseconds and those of all that its suites did before
 * their first test, and ends the run by answering false.
 */
async function runTests(tests, { before, each }) {
  const opened = new Set();
  let start = 0;
  const failureOf = async (test) => {
    try {
      for (const suite of suitesOf(test)) {
        if (opened.has(suite)) continue;
        opened.add(suite);
        const start = performance.now();
        for (const body of suite.before) await body();
        suite.spent = performance.now() - start;
      }
      start = performance.now();
      before(test);
      await test.body();
      return null;
    } catch (error) {
      return error instanceof Error ? error.message : String(error);
    }
  };
  for (const test of tests) {
    start = performance.now();
    const failure = await failureOf(test);
    const before = suitesOf(test).reduce((sum, { spent = 0 }) => sum + spent, 0);
    if (each(test, failure, performance.now() - start, before) === false) break;
  }
  for (const suite of [...opened].reverse()) for (const body of suite.after) await body();
}

module.exports = { collector, runTests };
