/** The judge of the hostile calls: each kind of fault, put before it, is found; what is in order is not. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { disagreement, areComparable } from "../../tools/hostile/agreement";
import { runCalls, type Roads } from "../../tools/hostile/batch";
import { runCrew } from "../../tools/hostile/crew";
import type { HostileCall, HostileInput, Outcome } from "../../tools/hostile/call";
import type { RoadName } from "../../tools/hostile/engineSentences";
import { judge, type Judged } from "../../tools/hostile/judge";
import type { Kind } from "../../tools/hostile/kinds";

/** Two processes are started, which takes seconds on a quiet machine. */
const SLOW_MACHINE = 300_000;

const SENTENCE = "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)";
const RUNTIME: RoadName = "official runtime";
const SHEET: RoadName = "browser sheet";

function call(name: string, args: readonly HostileInput[], kinds: readonly Kind[] = []): HostileCall {
  return { index: 0, name, args, kinds };
}

const runMinutes = call("RUN_MINUTES", [1, 6]);
const balance = call("PULSE_SCHEDULE", [30, 2, 60, 0.5]);
const answer = (value: unknown): Outcome => ({ kind: "answer", value });
const error = (message: string, code = "#VALUE!"): Outcome => ({ kind: "error", code, message });

function faultsOf(of: HostileCall, outcome: Outcome, milliseconds: number | null = null): readonly string[] {
  return judge(RUNTIME, of, outcome, milliseconds).faults;
}

describe("a fault", () => {
  test.each<[string, HostileCall, Outcome, RegExp]>([
    ["no number", runMinutes, answer(NaN), /a cell of the answer is NaN/],
    ["no number, as JSON has it", runMinutes, answer(null), /a cell of the answer is null/],
    ["nothing", runMinutes, answer(undefined), /a cell of the answer is undefined/],
    ["infinity", runMinutes, answer(-Infinity), /a cell of the answer is -Infinity/],
    ["-0", runMinutes, answer(-0), /-0/],
    ["an object", runMinutes, answer({ some: "thing" }), /a cell of the answer is a object/],
    ["no number inside a table", balance, answer([["pulse"], [NaN]]), /a cell of the answer is NaN/],
    ["nothing inside a table", balance, answer([["pulse"], [null]]), /a cell of the answer is null/],
    ["-0 inside a table", balance, answer([["pulse"], [-0]]), /-0/],
    [
      "an error without a text inside a table",
      balance,
      answer([[{ code: "#VALUE!", message: "" }]]),
      /without our text/,
    ],
    ["a table with uneven rows", balance, answer([["a", "b"], [1]]), /uneven rows/],
    ["a table without cells", balance, answer([[]]), /uneven rows, or without cells/],
    ["a table where one number is due", runMinutes, answer([[1]]), /another shape/],
    ["one number where a table is due", balance, answer(1), /another shape/],
    ["an answer of no function", call("RUN_MINUTESS2", [1]), answer(1), /does not exist/],
    ["a text longer than a cell holds", balance, answer([["x".repeat(32_768)]]), /more than a cell holds/],
    ["a text that says NaN", balance, answer([["NaN min each"]]), /says NaN/],
    ["a text that says undefined", balance, answer([["undefined valves"]]), /says undefined/],
    ["a text that says Infinity", balance, answer([["Infinity valves"]]), /says Infinity/],
    ["a text made of an object", balance, answer([["[object Object]"]]), /says \[object/],
    ["an exception that reached the caller", runMinutes, { kind: "thrown", text: "exception" }, /thrown raw/],
    [
      "an exception caught without words",
      runMinutes,
      error("CANYARD.RUN_MINUTES could not be worked out"),
      /exception inside/,
    ],
    ["the same in the engine's words", runMinutes, error("This formula could not be worked out."), /exception inside/],
    ["an error without a text", runMinutes, error(""), /without our text/],
    ["an error in others' words", runMinutes, error("x is not a function"), /does not begin with/],
    [
      "an error of another function",
      runMinutes,
      error("GROSS_WATER: basis is blank; it must be a word"),
      /does not begin/,
    ],
    ["an error that is no sentence", runMinutes, error("RUN_MINUTES: wrong"), /no sentence/],
    ["an error that says NaN", runMinutes, error("RUN_MINUTES: emitter_flow is NaN; it must be a number"), /says NaN/],
    ["an error that nobody gave", runMinutes, error("", "#N/A"), /without our text/],
    ["an error swallowed", call("RUN_MINUTES", [{ code: "#N/A" }, 6]), answer(10), /swallowed/],
    ["an error with another code", call("RUN_MINUTES", [{ code: "#N/A" }, 6]), error("", "#NUM!"), /without our text/],
    ["a sentence of the engine in Excel", call("RUN_MINUTES", [1]), tooFew(1), /does not begin with/],
  ])("is %s", (_what, of, outcome, words) => {
    const { verdict, faults } = judge(RUNTIME, of, outcome, null);
    expect(faults.join("; ")).toMatch(words);
    expect(verdict).toBeNull();
  });

  test("is a slow call, and a call with very long ranges may take longer", () => {
    expect(faultsOf(runMinutes, answer(10), 1_001)).toEqual(["slow: 1001 ms"]);
    expect(faultsOf(runMinutes, answer(10), 999)).toEqual([]);
    const long = call("RUN_MINUTES", [1, 6], ["very long ranges"]);
    expect(faultsOf(long, answer(10), 9_999)).toEqual([]);
    expect(faultsOf(long, answer(10), 10_001)).toEqual(["slow: 10001 ms"]);
  });

  test("is a sentence of the engine about a count that is right, or about a name that exists", () => {
    expect(judge(SHEET, runMinutes, tooFew(2), null).faults).toHaveLength(1);
    const unknown = error('Unknown function: "CANYARD.RUN_MINUTES"', "#NAME?");
    expect(judge(SHEET, runMinutes, unknown, null).faults).toHaveLength(1);
    const other = error(
      "Function RUN_MINUTES expects the parameter '1' to be reference to a cell or range.",
      "#BAD_EXPR",
    );
    expect(judge(SHEET, call("RUN_MINUTES", [1]), other, null).faults).toHaveLength(1);
  });
});

function tooFew(got: number): Outcome {
  const message = `Invalid number of arguments for the CANYARD.RUN_MINUTES function. Expected 2 minimum, but got ${got} instead.`;
  return error(message, "#BAD_EXPR");
}

describe("in order is", () => {
  const verdictOf = (road: RoadName, of: HostileCall, outcome: Outcome): Judged["verdict"] => {
    const { verdict, faults } = judge(road, of, outcome, null);
    expect(faults).toEqual([]);
    return verdict;
  };

  test("a number, a text, a table, a table with an error that has our text", () => {
    expect(verdictOf(RUNTIME, runMinutes, answer(10))).toBe("answer");
    expect(verdictOf(RUNTIME, call("LIBRARY_VERSION", []), answer("0.1.0"))).toBe("answer");
    expect(
      verdictOf(
        RUNTIME,
        balance,
        answer([
          ["pulse", ""],
          [1, true],
        ]),
      ),
    ).toBe("answer");
    const inCell = { code: "#VALUE!", message: "PULSE_SCHEDULE: these numbers lead beyond what a cell can hold" };
    expect(verdictOf(RUNTIME, balance, answer([["pulse"], [inCell]]))).toBe("answer");
  });

  test("our refusal, also in the words of a function that was asked about", () => {
    expect(verdictOf(RUNTIME, runMinutes, error(SENTENCE))).toBe("our refusal");
    const mistakes = call("COMMON_MISTAKES", ["RUN_MINUTES", 1]);
    expect(verdictOf(RUNTIME, mistakes, error(SENTENCE))).toBe("our refusal");
  });

  test("a programmer's word that the input says itself", () => {
    const refused = error(
      'RUN_MINUTES: emitter_flow is the text "Infinity"; it must be more than 0: a number, not text',
    );
    expect(verdictOf(RUNTIME, call("RUN_MINUTES", [1, "Infinity"]), refused)).toBe("our refusal");
  });

  test("an error that comes back, with the code that its road has for it", () => {
    expect(verdictOf(RUNTIME, call("RUN_MINUTES", [{ code: "#N/A" }, 6]), error("", "#N/A"))).toBe("error passed on");
    expect(verdictOf(RUNTIME, call("RUN_MINUTES", [[[{ code: "#REF!" }]], 6]), error("", "#VALUE!"))).toBe(
      "error passed on",
    );
    expect(verdictOf(SHEET, call("RUN_MINUTES", [{ code: "#REF!" }, 6]), error("", "#REF"))).toBe("error passed on");
    expect(verdictOf(SHEET, call("RUN_MINUTES", ["#N/A", 6]), error("", "#N/A"))).toBe("error passed on");
  });

  test("what the sheet's engine says of a wrong count and of an unknown name", () => {
    expect(verdictOf(SHEET, call("RUN_MINUTES", [1]), tooFew(1))).toBe("sentence of the engine");
    const unknown = error('Unknown function: "CANYARD.RUN_MINUTESS2"', "#NAME?");
    expect(verdictOf(SHEET, call("RUN_MINUTESS2", [1]), unknown)).toBe("sentence of the engine");
  });
});

describe("the two roads", () => {
  test("agree where the codes are each host's own, and differ where anything else does", () => {
    expect(disagreement(error(SENTENCE), error(SENTENCE, "#ERROR"))).toBeNull();
    expect(disagreement(answer([[1, "a"]]), answer([[1, "a"]]))).toBeNull();
    expect(disagreement(answer(10), answer(10.000000000000002))).toMatch(/the roads differ/);
    expect(disagreement(error(SENTENCE), error(`${SENTENCE}.`, "#ERROR"))).toMatch(/the roads differ/);
    expect(disagreement(answer([[1, ""]]), answer([[1, 0]]))).toMatch(/the roads differ/);
  });

  test("are not held against each other where one of them changes the input", () => {
    expect(areComparable(runMinutes, answer(10))).toBe(true);
    for (const cell of [NaN, "#N/A", { code: "#REF!" }, { type: "Entity" }]) {
      expect(areComparable(call("RUN_MINUTES", [cell, 6]), answer(10))).toBe(false);
    }
  });
});

describe("a call that never comes back", () => {
  const folder = mkdtempSync(join(tmpdir(), "canyard-hostile-"));
  afterAll(() => rmSync(folder, { recursive: true }));

  test(
    "is found and named, and the run ends",
    async () => {
      const built = readFileSync(join(__dirname, "../../dist/functions.js"), "utf8");
      const functionsFile = join(folder, "hangs.js");
      writeFileSync(
        functionsFile,
        `${built}\nCustomFunctions._association.mappings.TANK_VOLUME = () => { for (;;); };`,
      );
      const plan = { seed: 1, only: "TANK_VOLUME" };
      const silences = { start: 120_000, batch: 2_000, call: 2_000 };
      const { tally } = await runCrew({ plan, functionsFile, batches: 1, workers: 1, silences });
      // Call 0 has very long ranges, and those go last.
      expect(tally.faults).toEqual([
        {
          road: RUNTIME,
          index: 1,
          text: expect.stringMatching(/^TANK_VOLUME/),
          fault: expect.stringMatching(/^hangs/),
        },
      ]);
    },
    SLOW_MACHINE,
  );
});

describe("a batch", () => {
  /** Roads that answer what they are told, as slowly as they are told. */
  function fakeRoads(outcome: Outcome, sheetOutcome = outcome, milliseconds = 0): Roads {
    const wait = (): void => {
      const end = performance.now() + milliseconds;
      while (performance.now() < end);
    };
    return {
      official: {
        run: (calls) => {
          wait();
          return Promise.resolve(calls.map(() => outcome));
        },
        close: () => {},
      },
      sheet: { run: () => sheetOutcome, runInCells: (calls) => calls.map(() => sheetOutcome) },
    };
  }

  test("counts a fault of either road, and that they differ", async () => {
    const { faults, faultCount } = await runCalls(fakeRoads(answer(NaN), answer(1)), { seed: 1 }, 1, [runMinutes]);
    expect(faults.map(({ road }) => road)).toEqual([RUNTIME, "both roads"]);
    expect(faultCount).toBe(2);
    expect(faults[0]).toMatchObject({ index: 0, text: "RUN_MINUTES(1, 6)" });
  });

  test("finds none where there is none", async () => {
    const { faults, verdicts } = await runCalls(fakeRoads(answer(10)), { seed: 1 }, 1, [runMinutes]);
    expect(faults).toEqual([]);
    expect(verdicts).toEqual({ [RUNTIME]: { answer: 1 }, [SHEET]: { answer: 1 } });
  });

  test("that is slow is timed call by call, and a call that is slow each time is a fault", async () => {
    const { faults } = await runCalls(fakeRoads(answer(10), answer(10), 1_010), { seed: 1 }, 1, [runMinutes]);
    expect(faults).toHaveLength(1);
    expect(faults[0]?.fault).toMatch(/^slow: 10\d\d ms$/);
  });
});
