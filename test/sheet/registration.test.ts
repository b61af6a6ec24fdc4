import * as functions from "../../src/functions";
import type { HeadlessSheet } from "../rig/sheetEngine";
import { createHeadlessSheet } from "../rig/sheetEngine";

const BROKEN = "LEACHING_FRACTION";

/** The real functions, of which one fails as only a programming mistake can. */
const withOneBroken: typeof functions = {
  ...functions,
  call: (name, args) => {
    if (name === BROKEN) throw new TypeError("a mistake of ours");
    return functions.call(name, args);
  },
};

const { open } = createHeadlessSheet(withOneBroken);

const errorText = (name: string, args: Parameters<typeof functions.call>[1]): string => {
  try {
    functions.call(name, args);
  } catch (thrown) {
    return (thrown as Error).message;
  }
  throw new Error("no error came");
};

describe("a CANYARD formula in the browser sheet", () => {
  it("gives the answer, whatever the case it is typed in", () => {
    const sheet = open({ A1: 0.275, A2: 6, B1: "=CANYARD.RUN_MINUTES(A1, A2)", B2: "=canyard.run_minutes(A1,A2)" });
    expect(sheet.value("B1")).toBeCloseTo(2.75, 12);
    expect(sheet.value("B2")).toBeCloseTo(2.75, 12);
  });

  it("follows a change of its input", () => {
    const sheet = open({ A1: 0.275, B1: "=CANYARD.RUN_MINUTES(A1, 6)" });
    sheet.set("A1", 0.55);
    expect(sheet.value("B1")).toBeCloseTo(5.5, 12);
  });

  it("shows the same error text as everywhere, for a blank cell", () => {
    const sheet = open({ A1: 0.275, B1: "=CANYARD.RUN_MINUTES(A1, Z1)" });
    expect(sheet.value("B1")).toBe("#ERROR");
    expect(sheet.message("B1")).toBe(errorText("RUN_MINUTES", [0.275, null]));
  });

  it("refuses a range where one cell is wanted, and does not spread over it", () => {
    const sheet = open({ A1: 1, A2: 2, B1: "=CANYARD.RUN_MINUTES(A1:A2, 6)", D1: "=CANYARD.RUN_MINUTES(A1:A2*2, 6)" });
    expect(sheet.message("B1")).toBe(errorText("RUN_MINUTES", [[[1], [2]], 6]));
    expect(sheet.value("B2")).toBeNull();
    expect(sheet.value("D1")).toBe("#ERROR");
    expect(sheet.value("D2")).toBeNull();
  });

  it("takes a range of one cell as that cell", () => {
    expect(open({ A1: 0.275, B1: "=CANYARD.RUN_MINUTES(A1:A1, 6)" }).value("B1")).toBeCloseTo(2.75, 12);
  });

  it("takes a range row by row", () => {
    const sheet = open({ A1: 80, B1: 100, A2: 100, B2: 120, C1: "=CANYARD.DU_LOW_QUARTER(A1:B2)" });
    expect(sheet.value("C1")).toBeCloseTo(0.8, 12);
  });

  it("lets IFERROR catch an error", () => {
    expect(open({ B1: '=IFERROR(CANYARD.RUN_MINUTES(1, 0), "check")' }).value("B1")).toBe("check");
  });

  it("hands on an error that comes in, code and text unchanged", () => {
    const sheet = open({ A1: "=1/0", A2: "=CANYARD.RUN_MINUTES(1, 0)" });
    sheet.set("B1", "=CANYARD.RUN_MINUTES(A1, 6)");
    sheet.set("B2", "=CANYARD.RUN_MINUTES(A2, 6)");
    sheet.set("B3", "=CANYARD.DU_LOW_QUARTER(A1:A4)");
    expect([sheet.value("B1"), sheet.message("B1")]).toEqual([sheet.value("A1"), sheet.message("A1")]);
    expect([sheet.value("B2"), sheet.message("B2")]).toEqual([sheet.value("A2"), sheet.message("A2")]);
    expect(sheet.value("B3")).toBe(sheet.value("A1"));
  });

  it("spills a table, row by row", () => {
    const sheet = open({ A1: "=CANYARD.PULSE_SCHEDULE(45, 3, 60, 0.25)" });
    expect(["A1", "B1", "C1", "D1"].map(sheet.value)).toEqual(["pulse", "start", "stop", "minutes"]);
    expect(["A4", "D4"].map(sheet.value)).toEqual([3, 15]);
  });

  it("tells of a programming mistake without the engine's words", () => {
    const complaint = jest.spyOn(console, "error").mockImplementation(() => {});
    const sheet = open({ B1: `=CANYARD.${BROKEN}(1, 2)`, B2: `=IFERROR(CANYARD.${BROKEN}(1, 2), 0)` });
    expect(sheet.value("B1")).toBe("#ERROR");
    expect(sheet.message("B1")).toBe(`CANYARD.${BROKEN} could not be worked out`);
    expect(sheet.value("B2")).toBe(0);
    expect(complaint).toHaveBeenCalled();
    complaint.mockRestore();
  });

  it("gets dates as the serial numbers of the 1900 system", () => {
    const sheet = open({ A1: "=DATE(2024,1,1)", A2: "=DATE(1900,3,1)" });
    expect([sheet.value("A1"), sheet.value("A2")]).toEqual([45292, 61]);
  });
});

describe("every function of the catalogue", () => {
  const names = functions.catalogue.map(({ name }) => name).filter((name) => name !== BROKEN);

  it.each(names)("%s gives in the sheet what it gives by itself", (name) => {
    const { examples } = functions.catalogue.find((entry) => entry.name === name)!;
    for (const { args } of examples) {
      const sheet = open({});
      sheet.set("A50", `=CANYARD.${name}(${args.map((arg, index) => written(sheet, arg, index)).join(", ")})`);
      expect(shownFrom(sheet, 50, functions.call(name, args))).toEqual(plain(functions.call(name, args)));
    }
  });
});

type Argument = Parameters<typeof functions.call>[1][number];
type Answer = ReturnType<typeof functions.call>;

const letter = (column: number): string => String.fromCharCode(65 + column);

/** An argument as it stands in a formula; a range is put in the sheet first. */
function written(sheet: HeadlessSheet, argument: Argument, index: number): string {
  if (Array.isArray(argument)) return putInSheet(sheet, argument, index * 5);
  return typeof argument === "string" ? `"${argument}"` : String(argument ?? "");
}

function putInSheet(sheet: HeadlessSheet, rows: readonly (readonly unknown[])[], left: number): string {
  rows.forEach((row, down) =>
    row.forEach((cell, across) => {
      if (cell !== null && cell !== undefined)
        sheet.set(`${letter(left + across)}${down + 1}`, cell as string | number);
    }),
  );
  return `${letter(left)}1:${letter(left + rows[0]!.length - 1)}${rows.length}`;
}

function shownFrom(sheet: HeadlessSheet, top: number, like: Answer): unknown[][] {
  const shown = (down: number, across: number) => {
    const address = `${letter(across)}${top + down}`;
    return sheet.message(address) ?? sheet.value(address);
  };
  return rowsOf(like).map((row, down) => row.map((_, across) => shown(down, across)));
}

function plain(answer: Answer): unknown[][] {
  return rowsOf(answer).map((row) => row.map((cell) => (cell instanceof Error ? cell.message : cell)));
}

function rowsOf(answer: Answer): readonly (readonly unknown[])[] {
  return Array.isArray(answer) ? answer : [[answer]];
}
