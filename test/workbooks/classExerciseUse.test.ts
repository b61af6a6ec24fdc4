/** The class exercise in use: drawing again, levels, handing out, and what each check sees. */
import { rowNumber } from "../../src/workbooks/kit";
import { isValue } from "../../src/workbooks/model";
import { classExercise } from "../../src/workbooks/starters/classExercise";
import { quietly } from "../rig/sheetEngine";
import { openStarter, type StarterReader } from "../rig/starterReader";

let book: StarterReader;
beforeEach(() => {
  book = openStarter(classExercise, "us");
});

/** The row of a label in column A. */
function row(sheet: string, label: string): number {
  const { cells } = book.workbook.sheets.find(({ name }) => name === sheet)!;
  const [address] = Object.entries(cells).find(
    ([at, cell]) => at.startsWith("A") && isValue(cell) && cell.value === label,
  )!;
  return rowNumber(address);
}

const mark = (label: string) => book.headless.value(`Student!E${row("Student", label)}`);
const words = (label: string) => book.headless.value(`Student!F${row("Student", label)}`);

/** Sets the range of one of the eight numbers; the highest first, so that it is never below the lowest. */
function setRange(item: number, lowest: number, highest: number): void {
  for (const [heading, value] of [
    ["highest", highest],
    ["lowest", lowest],
  ] as const) {
    if (book.column("Inputs", heading)[item] !== value) book.setInColumn("Inputs", heading, item, value);
  }
}

/** The sheet takes no change that is none. */
function setLevel(level: number): void {
  const label = "Level of what the student is told";
  if (book.line("Inputs", label) !== level) book.setLine("Inputs", label, level);
}
const [KC, LEACHING, UNIFORMITY, FLOW] = [1, 3, 4, 5];
const CLASS_SIZE = 30;

describe("a draw that does not keep wrong methods apart", () => {
  test("with uniformity 0.98 forgetting it lies within 2 % of the key: every student must draw again", () => {
    setRange(LEACHING, 0.01, 0.01);
    setRange(UNIFORMITY, 0.98, 0.98);
    // 0.98 / 0.99 is 1.0101 % off, and nothing added at all 2 %; a tolerance of the step is 0.5 %.
    expect(book.column("Work", "2 the loss that counts left out")[0]).toBeCloseTo(2.0202, 4);
    expect(book.column("Work", "2 nothing added")[0]).toBeCloseTo(4, 9);
    expect(new Set(book.column("Work", "draw"))).toEqual(new Set(["redraw"]));
    expect(book.check("Wrong methods can be told from the right one, for every student")).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test("at a tolerance of 2 % forgetting a uniformity of 0.98 is one tolerance away, not three", () => {
    setRange(UNIFORMITY, 0.98, 0.98);
    setRange(LEACHING, 0, 0);
    book.setInColumn("Inputs", "part of the right answer", 1, 0.02);
    expect(book.column("Work", "2 nothing added")[0]).toBeCloseTo(1, 9);
    expect(new Set(book.column("Work", "draw"))).toEqual(new Set(["redraw"]));
  });

  test("an absolute tolerance counts where it is the wider one", () => {
    // TH-02: key 29.60027 min, twice as much without the emitters: 29.60027 / 5 min = 5.920 tolerances.
    book.setInColumn("Inputs", "or so much", 2, 5);
    expect(book.column("Work", "3 emitters left out")[1]).toBeCloseTo(5.92005, 4);
  });

  test("a crop coefficient of 1 cannot show whether it was left out", () => {
    setRange(KC, 1, 1);
    expect(book.column("Work", "1 Kc left out")[0]).toBe(0);
    expect(new Set(book.column("Work", "draw"))).toEqual(new Set(["redraw"]));
  });

  test("pasting the counters to try, again and again, ends with ok for all: the counters of the demo", () => {
    const demo = book.column("Inputs", "counter");
    demo.forEach((counter, at) => {
      if (counter !== 1) book.setInColumn("Inputs", "counter", at, 1);
    });
    const most = Math.max(...(demo as number[]));
    let pastes = 0;
    while (book.column("Work", "draw").includes("redraw") && pastes < most) {
      const next = book.column("Work", "counter to try");
      const now = book.column("Inputs", "counter");
      next.forEach((counter, at) => {
        if (counter !== now[at]) book.setInColumn("Inputs", "counter", at, counter!);
      });
      pastes += 1;
    }
    expect(book.column("Inputs", "counter")).toEqual(demo);
    expect(pastes).toBe(most - 1);
  }, 60_000);
});

describe("the student's sheet", () => {
  const GROSS = "2 Water to give it";
  const MINUTES = "3 Minutes a day";
  const VALVES = "5 Valves, run one after another";

  test.each([
    [0, "wrong: not yet the right number"],
    [1, "wrong: look again at step 2, Gross water: G = N / d"],
    [2, "wrong: 0.964 is what comes out when leaching and uniformity were both divided out"],
    // On the own 0.76 gal: both 0.76 / (0.83 x 0.95) = 0.9639, right 0.76 / 0.83 = 0.9157.
    [
      3,
      "wrong: 0.964 is what comes out when leaching and uniformity were both divided out (that gives 0.9639; right is 0.9157)",
    ],
  ])("tells at level %d: %s", (level, text) => {
    setLevel(level);
    expect(words(GROSS)).toBe(text);
    expect(mark(GROSS)).toBe("wrong");
  });

  test.each([
    [0, "wrong: not yet the right number"],
    [1, "wrong: look again at flow of the zone / flow to plan with, rounded up"],
    [2, "wrong: 3 is what comes out when the valves were not rounded up"],
    [3, "wrong: 3 is what comes out when the valves were not rounded up (right is 4)"],
  ])("tells of the valves, which no function gives, at level %d: %s", (level, text) => {
    setLevel(level);
    book.setLine("Student", VALVES, 3);
    expect([mark(VALVES), words(VALVES)]).toEqual(["wrong", text]);
  });

  test("judges each step on the student's own number of the step before", () => {
    expect(mark(MINUTES)).toBe("right");
    book.setLine("Student", GROSS, 0.915);
    expect(mark(GROSS)).toBe("right");
    // 60 x 0.915 / 2.2 = 24.95: 26.3 is 5.4 % more, between one tolerance of 2 % and five.
    expect(mark(MINUTES)).toBe("close");
    book.setLine("Student", MINUTES, 25);
    expect(mark(MINUTES)).toBe("right");
  });

  test("a blank is not answered, and what follows waits for it", () => {
    expect([mark("6 New minutes of Zone 2"), words("6 New minutes of Zone 2")]).toEqual(["not answered", ""]);
    book.setLine("Student", GROSS, "");
    expect(mark(GROSS)).toBe("not answered");
    expect([mark(MINUTES), words(MINUTES)]).toEqual(["first the step before", "first the step before"]);
  });

  test("shows another student's numbers when another ID is chosen, and the check agrees", () => {
    book.setLine("Student", "Your student ID", "TH-02");
    expect(book.line("Student", "Uniformity")).toBe(0.7);
    expect(book.line("Student", "Plants")).toBe(1600);
    expect(book.check("The student's sheet has the numbers of the class list")).toBe("OK");
  });

  test("shows the working of an answered step when asked, ending with the right number, and otherwise nothing", () => {
    const block = () => book.block("Working", "How it is worked with your numbers");
    book.setLine("Working", "Of step", 2);
    expect(block()[0]).toEqual(["step", "words", "symbols", "numbers", "result", "unit"]);
    // 0.76 / 0.83 on the own net water
    expect(block()[2]!.slice(2, 4)).toEqual(["G = N / d", "0.76 / 0.83"]);
    expect(block()[2]![4]).toBeCloseTo(0.76 / 0.83, 12);
    book.setLine("Working", "Of step", 5);
    expect(block()[0]![0]).toBe("flow of the zone / flow to plan with, rounded up to whole valves");
    book.setLine("Working", "Of step", 6);
    expect(block().flat().filter(Boolean)).toEqual([]);
    book.setLine("Working", "Of step", 2);
    book.setLine("Working", "Show the working", "no");
    expect(block().flat().filter(Boolean)).toEqual([]);
  });

  test("works in a copy without the instructor's sheets, which holds no key", () => {
    const { model } = book.headless.sheet;
    const kept = ["Inputs", "Student", "Working"];
    for (const { name } of book.workbook.sheets.filter((sheet) => !kept.includes(sheet.name))) {
      const sheetId = model.getters.getSheetIdByName(name)!;
      quietly(() => model.dispatch("DELETE_SHEET", { sheetId, sheetName: name }));
    }
    expect(kept.map((name) => book.headless.value(`${name}!A2`))).toEqual(["", "", ""]);
    expect([mark(GROSS), mark(MINUTES)]).toEqual(["wrong", "right"]);
    expect(book.line("Student", "Plants")).toBe(2300);
    const faulty = book.workbook.sheets
      .filter(({ name }) => kept.includes(name))
      .flatMap(({ name, cells }) => Object.keys(cells).map((address) => `${name}!${address}`))
      .filter((address) => book.headless.message(address) !== null);
    expect(faulty).toEqual([]);
  });
});

describe("a check looks when its cause is put in", () => {
  const cases: readonly (readonly [check: string, cause: () => void])[] = [
    ["Every student has a key for every step", () => setRange(UNIFORMITY, 0, 0)],
    ["Every key is the same by a second route", () => book.headless.set(`Work!H${row("Work", "Key") + 5}`, 1)],
    [
      "Wrong methods can be told from the right one, for every student",
      () => book.setInColumn("Inputs", "counter", 2, 1),
    ],
    [
      "No two students have the same eight numbers",
      () => {
        const lowest = book.column("Inputs", "lowest");
        lowest.forEach((value, at) => book.setInColumn("Inputs", "highest", at, value!));
      },
    ],
    ["No ID stands twice in the class list", () => book.setInColumn("Inputs", "student ID", 1, "TH-01")],
    ["The ranges are what the trade sees", () => setRange(FLOW, 0.9, 40)],
    ["The keys in minutes are what the trade sees", () => setRange(FLOW, 0.3, 0.3)],
    [
      "The student's sheet has the numbers of the class list",
      () => book.headless.set(`Student!D${row("Student", "Plants")}`, 999),
    ],
    ["Every answer is a number", () => book.setInColumn("Answers", "1 net water", 0, "0.94 gal")],
    ["Every answer belongs to a student", () => book.setInColumn("Inputs", "student ID", CLASS_SIZE - 1, "")],
    ["Every answer of every student has one code", () => book.setInColumn("Result", "3 minutes", 0, "Q")],
  ];

  test.each(cases)("%s", (check, cause) => {
    expect(book.check(check)).toBe("OK");
    cause();
    expect(book.check(check)).toBe("LOOK");
    expect(book.overall()).toBe("See Checks");
  });

  test("none is without a cause here", () => {
    const labels = Object.entries(book.workbook.sheets.find(({ name }) => name === "Checks")!.cells)
      .filter(([address, cell]) => /^A[6-9]$|^A[1-9]\d$/.test(address) && isValue(cell))
      .map(([, cell]) => (isValue(cell) ? cell.value : ""));
    expect(labels).toEqual(cases.map(([check]) => check));
  });
});

describe("what is typed wrong is said in words", () => {
  test("a range that gives a step what it cannot take", () => {
    setRange(UNIFORMITY, 0, 0);
    expect(book.headless.message(`Work!C${row("Work", "Key") + 5}`)).toBe(
      "GROSS_WATER: uniformity is blank or 0; it must be more than 0, up to 1 (fraction)",
    );
  });

  test("a range that is turned round", () => {
    book.setInColumn("Inputs", "highest", FLOW, 0.5);
    expect(book.headless.message("Work!H10")).toBe("EXERCISE_NUMBER: high is 0.5; it must be low (0.9) or more");
    expect(book.column("Inputs", "range")[FLOW]).toBe("turned");
  });

  test("an answer with its unit", () => {
    book.setInColumn("Answers", "1 net water", 0, "0.94 gal");
    expect(book.column("Answers", "1 net water: mark")[0]).toBe("not answered: type a number, without its unit");
    expect(book.column("Result", "1 net water")[0]).toBe("N");
  });
});

test("a row without an ID is no student: nothing is worked for it, and nothing is in error", () => {
  book.setInColumn("Inputs", "student ID", CLASS_SIZE - 1, "");
  STEP_HEADINGS.forEach((step) => book.setInColumn("Answers", step, CLASS_SIZE - 1, ""));
  expect(book.overall()).toBe("All checks OK");
  expect(book.column("Work", "1 net water")[CLASS_SIZE - 1]).toBe("");
  expect(book.column("Result", "points")[CLASS_SIZE - 1]).toBe("");
  expect(book.line("Result", "Students")).toBe(CLASS_SIZE - 1);
});

test("the record stays what it was when an answer changes, and says so", () => {
  book.setInColumn("Answers", "2 gross water", 2, 0.724);
  expect(book.column("Result", "2 gross water")[2]).toBe("R");
  expect(book.column("Record", "2 gross water")[2]).toBe("W");
  // Its minutes, right on the number before, are so no longer.
  expect(book.line("Record", "Codes that have changed since")).toBe(2);
});

const STEP_HEADINGS = ["1 net water", "2 gross water", "3 minutes", "4 zone flow", "5 valves", "6 new minutes"];
