/** What the teaching functions say: whole rows and sentences, in the words of the functions' own help. */
import { evaluate, type ArgumentInput, type Table } from "../../../src/kernel";
import { entryOf, refusal } from "../../rig/calls";

function ask(name: string, ...args: readonly ArgumentInput[]): unknown {
  return evaluate(entryOf(name), args);
}

function refusedBy(name: string, ...args: readonly ArgumentInput[]): string {
  return refusal(entryOf(name), args).message;
}

describe("SHOW_WORKING", () => {
  const rowOf = (label: string, ...args: readonly ArgumentInput[]): unknown =>
    (ask("SHOW_WORKING", ...args) as Table).find(([first]) => first === label)?.[1];

  test("puts a word into the plain formula as a text", () => {
    expect(rowOf("spreadsheet alone", "SODIUM_ADSORPTION", 10, 20, 5, "ppm")).toBe(
      '=IF("ppm" = "ppm", (10 / 22.99) / SQRT((20 / 20.039 + 5 / 12.1525) / 2), 10 / SQRT((20 + 5) / 2))',
    );
  });

  test("names all sources and all limits", () => {
    const { source, assumptions } = entryOf("LATERAL_LOSS");
    expect(Array.isArray(source)).toBe(true);
    expect(String(rowOf("source", "LATERAL_LOSS", 100, 2, 30, 16, "metric")).split("; ").length).toBeGreaterThan(1);
    expect(rowOf("limits", "LATERAL_LOSS", 100, 2, 30, 16, "metric")).toBe(assumptions.join(" "));
    expect(String(rowOf("source", "RUN_MINUTES", 0.275, 6))).not.toBe("");
  });

  test("a step that was looked up or drawn has its symbol and no formula", () => {
    const rows = ask("SHOW_WORKING", "EXERCISE_NUMBER", "spring", "7", "kc", 0.5, 1, 0.1) as Table;
    // From 0.5 to 1.0 by 0.1 there are six values.
    expect(rows[1]?.[4]).toBe(6);
    expect(rows[2]?.slice(0, 4)).toEqual([2, "Drawn by seed, student and item", "k", ""]);
  });

  test("what records no step ends with what its answer is", () => {
    const rows = ask("SHOW_WORKING", "CHECK_RANGE", 6, "RUN_MINUTES", "emitter_flow", "us") as Table;
    expect(rows[1]).toEqual([1, '"ok", or "low: " or "high: " with the likely slip', "", "", "ok", ""]);
  });

  test("a table shows its first row worked and says that the others go the same way", () => {
    const rows = ask("SHOW_WORKING", "PAYBACK_TABLE", 12_000, 5000, 3) as Table;
    expect(rows.slice(1, 4).map((row) => row.slice(0, 5))).toEqual([
      [1, "Investment and the first saving", "sum = -1 * C + S", "-1 * 12000 + 5000", -7000],
      [2, "First saving, discounted by one year", "dS = S / (1 + r)", "5000 / (1 + 0)", 5000],
      [3, "Investment and the discounted saving", "dsum = -1 * C + dS", "-1 * 12000 + 5000", -7000],
    ]);
    expect(rows[4]).toEqual(["", "other rows the same way", "", "", "", ""]);
    expect(rows[5]).toEqual(["source", expect.any(String), "", "", "", ""]);
  });
});

describe("digits of an answer as it was typed", () => {
  const told = (answer: number, volume: number, use: number): unknown =>
    ask("DIAGNOSE_ANSWER", answer, "DAYS_OF_STORAGE", 0.0001, 2, volume, use);

  // 5.421 / 100 = 0.05421; 1.52e-5 / 100 = 1.52e-7; 1.9e-5 / 100 = 1.9e-7.
  test("0.05 has one digit, 0.054 two: noughts in front do not count", () => {
    expect(told(0.05, 5.421, 100)).toMatch(/^wrong: one digit tells too little/);
    expect(told(0.054, 5.421, 100)).toBe("right, rounded");
    expect(told(0.053, 5.421, 100)).toMatch(/^wrong/);
  });

  test("1.5e-7 is 0.00000015, to eight decimals", () => {
    expect(told(1.5e-7, 1.52e-5, 100)).toBe("right, rounded");
    expect(told(1.5e-7, 1.9e-5, 100)).toMatch(/^wrong/);
  });
});

describe("EXERCISE_NUMBER", () => {
  test("refuses a range that is turned round", () => {
    expect(refusedBy("EXERCISE_NUMBER", "spring", "7", "kc", 5, 3, 1)).toBe(
      "EXERCISE_NUMBER: high is 3; it must be low (5) or more",
    );
  });

  test("refuses more values than it can draw from: 4,000,000,001 are more than 2^31", () => {
    expect(refusedBy("EXERCISE_NUMBER", "spring", "7", "kc", -1e6, 1e6, 0.0005)).toBe(
      "EXERCISE_NUMBER: step is 0.0005; it must be larger: 2147483648 values are the most",
    );
  });

  test("a student typed with blanks or as 7.0 is the same student", () => {
    const drawn = ask("EXERCISE_NUMBER", "spring", "7", "kc", 0, 1000, 1);
    expect(ask("EXERCISE_NUMBER", " spring ", " 7.0 ", "KC", 0, 1000, 1)).toBe(drawn);
  });
});

describe("a function by its name", () => {
  test.each<[string, readonly ArgumentInput[]]>([
    ["SHOW_WORKING", ["RUN_MINUTE", 0.275, 6]],
    ["DIAGNOSE_ANSWER", [2.75, "RUN_MINUTE", 0.02, 2, 0.275, 6]],
    ["COMMON_MISTAKES", ["RUN_MINUTE", 0.275, 6]],
    ["CHECK_RANGE", [6, "RUN_MINUTE", "emitter_flow", "us"]],
  ])("one that is unknown is refused by %s in its own name", (name, args) => {
    expect(refusedBy(name, ...args)).toContain(
      `${name}: function_name is the text "RUN_MINUTE"; there is no function RUN_MINUTE: did you mean RUN_MINUTES`,
    );
  });

  test.each<[string, readonly ArgumentInput[]]>([
    ["DIAGNOSE_ANSWER", [2.75, "PAYBACK_TABLE", 0.02, 2, 12_000, 5000, 3]],
    ["COMMON_MISTAKES", ["PAYBACK_TABLE", 12_000, 5000, 3]],
  ])("a table is refused by %s, which needs one number", (name, args) => {
    const { argument, message } = refusal(entryOf(name), args);
    expect(message).toBe(
      `${name}: function_name is PAYBACK_TABLE, which has no single number as its answer; choose one that has`,
    );
    expect(argument).toBe("function_name");
  });
});

describe("an argument by its name", () => {
  test("may be typed in any case, with blanks around it", () => {
    expect(ask("CHECK_RANGE", 6, "RUN_MINUTES", " Emitter_Flow ", "us")).toBe(
      ask("CHECK_RANGE", 6, "RUN_MINUTES", "emitter_flow", "us"),
    );
  });

  test("one that is unknown is told with those that there are", () => {
    expect(refusedBy("CHECK_RANGE", 6, "BLEND_SHARE", "flow", "us")).toBe(
      'CHECK_RANGE: argument is the text "flow"; it must be one of BLEND_SHARE: value_a, value_b or target, or blank for its answer',
    );
  });

  test("names are listed with commas and an or; a table's columns stand behind them, and it has no answer as a whole", () => {
    expect(refusedBy("CHECK_RANGE", 6, "WATER_HELD", "flow", "us")).toBe(
      'CHECK_RANGE: argument is the text "flow"; it must be one of WATER_HELD: volume or container_capacity, or blank for its answer',
    );
    expect(refusedBy("CHECK_RANGE", 6, "FUNCTION_SOURCE", "flow", "us")).toBe(
      'CHECK_RANGE: argument is the text "flow"; it must be one of FUNCTION_SOURCE: function_name, or blank for its answer',
    );
    expect(refusedBy("CHECK_RANGE", 6, "COMMON_MISTAKES", "flow", "us")).toBe(
      'CHECK_RANGE: argument is the text "flow"; it must be one of COMMON_MISTAKES: function_name, input, mistake, its answer or ratio to the right one',
    );
  });

  test("a function without arguments has none to choose from", () => {
    expect(refusedBy("CHECK_RANGE", 6, "LIBRARY_VERSION", "flow", "us")).toBe(
      'CHECK_RANGE: argument is the text "flow"; it must be blank: LIBRARY_VERSION has no arguments',
    );
  });
});

describe("CHECK_RANGE without units", () => {
  test("tells the slip where both systems see the same one", () => {
    expect(ask("CHECK_RANGE", 0.0001, "RUN_MINUTES", "emitter_flow")).toBe("low: looks like gal/min or L/min");
  });

  test("a number between the ranges of the two systems is high, and both are named: 2 in/h or 2 mm/h", () => {
    expect(ask("CHECK_RANGE", 2, "APPLICATION_RATE", "")).toBe("high: usually 0.1 to 1.5 in/h or 2.5 to 38 mm/h");
  });

  test("a lift of 0 is usual, and so is one a little below: the source lies as high as the outlet, or higher", () => {
    for (const units of ["us", "metric"]) {
      expect(ask("CHECK_RANGE", 0, "TOTAL_DYNAMIC_HEAD", "lift", units)).toBe("ok");
      expect(ask("CHECK_RANGE", -10, "TOTAL_DYNAMIC_HEAD", "lift", units)).toBe("ok");
      expect(ask("CHECK_RANGE", -100, "TOTAL_DYNAMIC_HEAD", "lift", units)).toMatch(/^low: /);
    }
  });
});

describe("CONVERT_UNIT between kinds", () => {
  const told = (from: string, to: string): string => refusedBy("CONVERT_UNIT", 1, from, to);

  test("names the function that leads from one to the other, where there is one", () => {
    expect(told("gal/min", "in/h")).toMatch(/; APPLICATION_RATE leads from one to the other$/);
    expect(told("hp", "gal")).toBe(
      'CONVERT_UNIT: to is the text "gal"; it must be a unit of power, as hp is, and not of volume',
    );
  });
});

describe("COMMON_MISTAKES where the right answer is 0", () => {
  test("a mistake has its answer and no ratio: 1 - 0 / 1000", () => {
    const rows = ask("COMMON_MISTAKES", "LEACHING_FRACTION", 0, 1000) as Table;
    expect(rows).toContainEqual(["The part kept was taken for the part leached", 1, ""]);
    expect(rows.slice(1).filter(([, , ratio]) => ratio !== "")).toEqual([]);
  });
});

test("FRICTION_LOSS refuses laminar flow without the laminar law's loss where that is beyond all numbers", () => {
  // A bore of 1e-103 m to the fourth power is below the smallest double.
  expect(refusedBy("FRICTION_LOSS", 1e-300, 1e-100, 1, "metric")).toMatch(/ does not hold$/);
});
