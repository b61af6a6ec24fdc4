import * as library from "../../src/functions";
import { explainSelected, type ExplainedCall } from "../../src/taskpane/explain";
import { HostFailure } from "../../src/taskpane/sheetHost";
import { hostWith, type Cells, type MemoryHost } from "../rig/memoryHost";

async function callsOf(host: MemoryHost): Promise<readonly ExplainedCall[]> {
  const explanation = await explainSelected(library, host);
  if (explanation.kind !== "calls") throw new Error(`the cell is explained as ${explanation.kind}`);
  return explanation.calls;
}

/** The only call of a formula on the sheet Plan. */
async function explained(formula: string, cells: Cells = {}): Promise<ExplainedCall> {
  const calls = await callsOf(hostWith(formula, cells));
  if (calls.length !== 1) throw new Error(`${calls.length} calls were found`);
  return calls[0] as ExplainedCall;
}

function shownArguments({ args }: ExplainedCall): string[] {
  return args.map(({ name, text, shown, unit }) => `${name}: ${text} is ${shown} ${unit}`.trim());
}

describe("a call is explained with the numbers that stand in the sheet", () => {
  test("arguments, answer, working", async () => {
    const call = await explained("=CANYARD.RUN_MINUTES(A1, $A$2)", { A1: 0.275, A2: 6 });
    expect(shownArguments(call)).toEqual([
      "volume_per_plant: A1 is 0.275 gal or L",
      "emitter_flow: $A$2 is 6 gal/h or L/h",
    ]);
    // 60 x 0.275 / 6
    expect(call.answer).toBeCloseTo(2.75, 12);
    expect(call.steps[call.steps.length - 1]?.value).toBeCloseTo(2.75, 12);
    expect(call.error).toBeNull();
  });

  test("from another sheet, with an apostrophe in its name", async () => {
    const cells = { A1: 0.275, B1: 6 };
    const host = hostWith(
      "=CANYARD.RUN_MINUTES('O''Brien''s bench'!A1, 'O''Brien''s bench'!B1)",
      {},
      {
        "O'Brien's bench": { cells },
      },
    );
    expect((await callsOf(host))[0]?.answer).toBeCloseTo(2.75, 12);
  });

  test("percentages, sums on cells, and arguments left out", async () => {
    const call = await explained("=CANYARD.GROSS_WATER(A1*2, 15%, 90%, )", { A1: 0.17 });
    expect(call.args.map(({ text, shown }) => `${text} is ${shown}`)).toEqual([
      "A1*2 is 0.34",
      "15% is 0.15",
      "90% is 0.9",
      " is left out",
    ]);
    // The wider allowance decides, leaching: 0.34 / (1 - 0.15)
    expect(call.answer).toBeCloseTo(0.4, 12);
  });

  test("negative numbers and brackets around an argument", async () => {
    const call = await explained("=CANYARD.RUN_MINUTES(-A1, (6))", { A1: 0.275 });
    expect(call.error).toMatchObject({ argument: "volume_per_plant" });
    expect(call.error?.message).toContain("volume_per_plant is -0.275; it must be more than 0");
  });

  test("lists in braces", async () => {
    const call = await explained("=CANYARD.DU_LOW_QUARTER({80,100;100,120})");
    expect(call.args[0]?.shown).toBe("4 cells: 80, 100, 100, 120");
    // the lowest of four is 80, the average 100
    expect(call.answer).toBeCloseTo(0.8, 12);
  });

  test("dates and times as the pane itself writes them", async () => {
    const day = await explained('=CANYARD.DAYLIGHT_HOURS(0, DATE(2024, 3, 20), "metric")');
    expect(day.args.find(({ text }) => text.startsWith("DATE"))?.shown).toBe("2024-03-20 (45371)");
    const pulses = await explained("=CANYARD.PULSE_SCHEDULE(30, 2, 60, TIME(6, 0, 0))");
    expect(pulses.args[3]?.shown).toBe("06:00 (0.25)");
    expect(Array.isArray(pulses.answer)).toBe(true);
  });

  test("a long range is told by its first cells", async () => {
    const cells = Object.fromEntries(Array.from({ length: 40 }, (_each, index) => [`A${index + 1}`, 100 + index]));
    const call = await explained("=CANYARD.DU_LOW_QUARTER(A1:A40)", cells);
    expect(call.args[0]?.shown).toBe("40 cells: 100, 101, 102, 103, 104, 105, ...");
  });

  test("an empty range says so, and what the function makes of it", async () => {
    const call = await explained("=CANYARD.DU_LOW_QUARTER(A1:A4)");
    expect(call.args[0]?.shown).toBe("4 cells: empty, empty, empty, empty");
    expect(call.answer).toBeNull();
    expect(call.error?.argument).toBe("readings");
  });

  test("the word for the units decides in which units it is told", async () => {
    const cells = { A1: 0.2, A2: 1.1, A3: 1 };
    const call = await explained('=CANYARD.PLANT_WATER_DEMAND(A1, A2, A3, "us")', cells);
    expect(call.system).toBe("us");
    expect(call.args[0]?.unit).toBe("in");
  });

  test("text that would be markup stays text", async () => {
    const hostile = '<img src=x onerror="alert(1)">';
    const call = await explained("=CANYARD.RUN_MINUTES(A1, 6)", { A1: hostile });
    expect(call.args[0]?.shown).toBe(hostile);
    expect(call.error?.message).toContain(hostile);
  });
});

describe("several calls in one formula", () => {
  test("are explained one by one; the outer one works with the answers of the inner ones", async () => {
    const host = hostWith("=ROUND(CANYARD.RUN_MINUTES(CANYARD.GROSS_WATER(A1, 0.15, 0.9), 6*2), 1)", { A1: 0.34 });
    const calls = await callsOf(host);
    expect(calls.map(({ entry, answer }) => `${entry.name} ${(answer as number).toPrecision(3)}`)).toEqual([
      "GROSS_WATER 0.400",
      // 60 x 0.4 / 12
      "RUN_MINUTES 2.00",
    ]);
    expect(calls[1]?.args[0]).toMatchObject({ text: "CANYARD.GROSS_WATER(A1, 0.15, 0.9)", shown: "0.4" });
    expect(host.asked).not.toContain("CANYARD.GROSS_WATER(A1, 0.15, 0.9)");
  });

  test("an inner call may stand in a sum", async () => {
    const calls = await callsOf(hostWith("=CANYARD.RUN_MINUTES(CANYARD.GROSS_WATER(0.34, 0.15, 0.9)*2, 12)"));
    expect(calls[1]?.answer).toBeCloseTo(4, 12);
  });

  test("an error of the inner one is told as its own, and as the reason of the outer one", async () => {
    const calls = await callsOf(hostWith("=CANYARD.RUN_MINUTES(CANYARD.GROSS_WATER(0.34, 15, 0.9), 6)"));
    expect(calls[0]?.error).toMatchObject({ argument: "leaching_fraction" });
    expect(calls[1]?.error?.message).toBe("volume_per_plant comes with the error #VALUE!. Mend that first.");
  });

  test("functions that this version does not have are named, the others explained", async () => {
    const host = hostWith("=CANYARD.NO_SUCH_THING(1)+CANYARD.RUN_MINUTES(0.275, 6)");
    const explanation = await explainSelected(library, host);
    expect(explanation).toMatchObject({ kind: "calls", unknown: ["NO_SUCH_THING"] });
    expect(explanation.kind === "calls" && explanation.calls.map(({ entry }) => entry.name)).toEqual(["RUN_MINUTES"]);
  });
});

describe("what is wrong with a cell is told", () => {
  test("a number beyond its limits, by the argument that has it", async () => {
    const call = await explained("=CANYARD.RUN_MINUTES(A1, A2)", { A1: 0.275, A2: 0 });
    expect(call.answer).toBeNull();
    expect(call.steps).toEqual([]);
    expect(call.error).toEqual({
      code: "#VALUE!",
      argument: "emitter_flow",
      message: "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)",
    });
  });

  test("an error that stands in a cell, with the argument that points at it", async () => {
    const cells = { A1: { code: "#DIV/0!", message: "" }, A2: 6 };
    const call = await explained("=CANYARD.RUN_MINUTES(A1, A2)", cells);
    expect(call.args[0]?.shown).toBe("#DIV/0!");
    expect(call.error).toMatchObject({
      code: "#DIV/0!",
      message: "volume_per_plant comes with the error #DIV/0!. Mend that first.",
    });
  });

  test("a reference that was lost with its cells", async () => {
    const call = await explained("=CANYARD.RUN_MINUTES(#REF!, 6)");
    expect(call.error?.message).toBe("volume_per_plant comes with the error #REF!. Mend that first.");
  });

  test("too many arguments do no harm", async () => {
    const call = await explained("=CANYARD.RUN_MINUTES(0.275, 6, 1, 99)");
    expect(call.args[3]).toMatchObject({ name: "argument 4", text: "99", unit: "" });
  });

  test("a verdict of the usual range for a number that is possible and unlikely", async () => {
    const call = await explained("=CANYARD.GROSS_WATER(1, 0.9, 0.95)");
    expect(call.args[1]?.verdict).not.toBe("ok");
    expect(call.answer).toBeCloseTo(10, 9);
  });

  test("a formula that cannot be read, a cell without one of ours, and an empty cell", async () => {
    expect((await explainSelected(library, hostWith("=CANYARD.RUN_MINUTES(0.275, 6"))).kind).toBe("not readable");
    expect((await explainSelected(library, hostWith("=SUM(A1:A3)"))).kind).toBe("nothing of ours");
    const empty = hostWith("=1");
    empty.selection = async () => ({ sheet: "Plan", range: "A1", cells: 1, formula: null, found: null });
    expect((await explainSelected(library, empty)).kind).toBe("nothing of ours");
  });
});

describe("what only the sheet can work out is said to be so", () => {
  test.each(["SUM(A1:A2)", "net_water", "A1&A2", "OFFSET(A1,1,0)", "Table1[Water]", "A1/B9"])(
    "%s",
    async (expression) => {
      const call = await explained(`=CANYARD.RUN_MINUTES(${expression}, 6)`, { A1: 1, A2: 2 });
      expect(call.unresolved).toEqual([{ text: expression, reason: "" }]);
      expect(call).toMatchObject({ answer: null, error: null, steps: [] });
      expect(call.args[1]?.shown).toBe("6");
    },
  );

  test("a call around it is not guessed either", async () => {
    const calls = await callsOf(hostWith("=CANYARD.RUN_MINUTES(CANYARD.GROSS_WATER(SUM(A1:A2), 0.15, 0.9), 6)"));
    expect(calls.map(({ unresolved }) => unresolved.map(({ text }) => text))).toEqual([
      ["SUM(A1:A2)"],
      ["CANYARD.GROSS_WATER(SUM(A1:A2), 0.15, 0.9)"],
    ]);
  });

  test("a range that the host does not hand over is told in its words, and the other calls are explained", async () => {
    const host = hostWith("=CANYARD.DU_LOW_QUARTER(A:A)+CANYARD.RUN_MINUTES(0.275, 6)");
    const reading = host.evaluate;
    host.evaluate = async (expression, sheet) => {
      if (expression === "A:A") throw new HostFailure("That range is too large.");
      return reading(expression, sheet);
    };
    const calls = await callsOf(host);
    expect(calls[0]?.unresolved).toEqual([{ text: "A:A", reason: "That range is too large." }]);
    expect(calls[1]?.answer).toBeCloseTo(2.75, 12);
  });

  test("where the selection itself cannot be read, that is what is told", async () => {
    const host = hostWith("=1");
    host.selection = () => Promise.reject(new HostFailure("Click one cell of this workbook first."));
    await expect(explainSelected(library, host)).rejects.toThrow("Click one cell of this workbook first.");
  });
});
