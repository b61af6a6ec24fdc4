/**
 * Judges mutants in one warm process. A mutant of code that runs when a test runs is switched on in what is loaded, and
 * only the tests that reach it are run. One that acts while files are loaded needs what imports its file anew: first the
 * test files that look at every entry, then those of its own group where the first let it live.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { pathToFileURL } from "node:url";
import { commonTokens, declareClassPlugin, PluginKind, tokens } from "@stryker-mutator/api/plugin";
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from "@stryker-mutator/api/test-runner";

const NAMESPACE = "__stryker__";

/** Worked out once for each entry and kept: a mutant of it must be there before the first call. */
const KEPT = /kernel[\\/]reader\.ts$/;

/**
 * Of the tests that reach a mutant the quickest are asked first, and as many as take so long together where no mutant is
 * at work: half the kernel is reached by all ten thousand.
 */
const MOST_MILLISECONDS = 6000;
const TIMES = "test-times.json";

class WarmRunner {
  static inject = tokens(commonTokens.logger);
  #tests = null;
  /** Milliseconds of each test with all that is done before it, from the run without mutants, which one process makes. */
  #times = null;

  constructor(log) {
    this.log = log;
    this.context = globalThis[NAMESPACE] ??= {};
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const require = createRequire(pathToFileURL(`${process.cwd()}/tools/mutation/`));
    const { FIRST, REST, load, askedOnLoading } = require("./load.cjs");
    Object.assign(this, { all: [...FIRST, ...REST], load, askedOnLoading });
    this.runTests = require("./jestWords.cjs").runTests;
  }

  /** All tests with no mutant at work while they are loaded. */
  #loaded() {
    if (this.#tests === null) {
      this.context.activeMutant = undefined;
      this.#tests = this.load(this.all);
    }
    return this.#tests;
  }

  async #run(tests, bail) {
    const results = [];
    await this.runTests(tests, {
      before: ({ name }) => (this.context.currentTestId = name),
      each: ({ name }, failure, timeSpentMs, before) => {
        this.context.currentTestId = undefined;
        const result = { id: name, name, timeSpentMs, before };
        if (failure === null) results.push({ ...result, status: TestStatus.Success });
        else results.push({ ...result, status: TestStatus.Failed, failureMessage: failure });
        return failure === null || !bail;
      },
    });
    return results;
  }

  async dryRun() {
    const tests = await this.#run(this.#loaded(), false);
    const times = Object.fromEntries(tests.map(({ name, timeSpentMs, before }) => [name, timeSpentMs + before]));
    writeFileSync(TIMES, JSON.stringify(times));
    const { mutantCoverage } = this.context;
    // What runs on loading and in tests is judged as what runs in tests: it loses the kills of the first, and no more.
    for (const covered of Object.values(mutantCoverage.perTest)) {
      for (const id of Object.keys(covered)) delete mutantCoverage.static[id];
    }
    return { status: DryRunStatus.Complete, tests, mutantCoverage };
  }

  /** Those of the tests that are asked, the quickest first. */
  #quickest(tests) {
    this.#times ??= JSON.parse(readFileSync(TIMES, "utf8"));
    let left = MOST_MILLISECONDS;
    return [...tests]
      .sort((a, b) => Number(a.isLast) - Number(b.isLast) || this.#times[a.name] - this.#times[b.name])
      .filter(({ name }) => (left -= this.#times[name]) > 0);
  }

  async #judge(tests) {
    const results = await this.#run(tests, true);
    return (
      determineHitLimitReached(this.context.hitCount, this.context.hitLimit) ?? {
        status: DryRunStatus.Complete,
        tests: results,
      }
    );
  }

  async #judgeLoading(mutant, sourceFile) {
    const stages = this.askedOnLoading(sourceFile);
    for (const files of stages) {
      let tests;
      try {
        this.context.activeMutant = mutant;
        tests = this.load(files, sourceFile);
      } catch (error) {
        const failed = { id: files[0], name: files[0], timeSpentMs: 0, status: TestStatus.Failed };
        return { status: DryRunStatus.Complete, tests: [{ ...failed, failureMessage: `On loading: ${error}` }] };
      }
      const result = await this.#judge(tests);
      if (result.status !== DryRunStatus.Complete || result.tests.some(({ status }) => status === TestStatus.Failed)) {
        return result;
      }
      if (files === stages.at(-1)) return result;
    }
  }

  async mutantRun({ activeMutant, sandboxFileName, testFilter, hitLimit, mutantActivation }) {
    this.context.hitLimit = hitLimit;
    this.context.hitCount = hitLimit === undefined ? undefined : 0;
    if (mutantActivation === "static" || KEPT.test(sandboxFileName)) {
      return toMutantRunResult(await this.#judgeLoading(activeMutant.id, sandboxFileName));
    }
    const tests = this.#loaded();
    const wanted = new Set(testFilter);
    this.context.activeMutant = activeMutant.id;
    return toMutantRunResult(await this.#judge(this.#quickest(tests.filter(({ name }) => wanted.has(name)))));
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, "warm", WarmRunner)];
