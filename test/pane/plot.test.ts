import * as library from "../../src/functions";
import { exampleArguments } from "../../src/taskpane/fields";
import type { Argument, FunctionHelp } from "../../src/taskpane/library";
import { plotOf, plottable } from "../../src/taskpane/plot";
import { ticks } from "../../src/taskpane/ticks";

function entryOf(name: string): FunctionHelp {
  const entry = library.catalogue.find((each) => each.name === name);
  if (entry === undefined) throw new Error(`there is no ${name}`);
  return entry;
}

function plotAgainst(name: string, argument: string, given: readonly Argument[], system: "us" | "metric" = "us") {
  const entry = entryOf(name);
  const parameter = entry.params.find((each) => each.name === argument);
  if (parameter === undefined) throw new Error(`${name} has no ${argument}`);
  return plotOf(library, entry, given, parameter, system);
}

describe("the drawing of an answer against one argument", () => {
  test("follows the formula at every point, and marks the present one", () => {
    const plot = plotAgainst("RUN_MINUTES", "emitter_flow", [0.275, 6]);
    expect(plot?.points.length).toBeGreaterThan(50);
    // 60 V / q
    for (const { x, y } of plot?.points ?? []) expect(y).toBeCloseTo((60 * 0.275) / x, 9);
    expect(plot?.present?.x).toBe(6);
    expect(plot?.present?.y).toBeCloseTo(2.75, 12);
  });

  test("spans the usual range, in the units of the call", () => {
    const entry = entryOf("GROSS_WATER");
    const usual = entry.params.find(({ name }) => name === "leaching_fraction")?.usual;
    const plot = plotAgainst("GROSS_WATER", "leaching_fraction", [1, 0.15, 0.9]);
    expect([plot?.low, plot?.high]).toEqual(usual?.us);
  });

  test("reaches as far as a present value that is not usual", () => {
    const plot = plotAgainst("GROSS_WATER", "leaching_fraction", [1, 0.7, 0.9]);
    expect(plot?.high).toBe(0.7);
    expect(plot?.present?.y).toBeCloseTo(1 / 0.3, 9);
  });

  test("stands at the default of an argument that is left out", () => {
    const plot = plotAgainst("RUN_MINUTES", "emitters_per_plant", [0.275, 6]);
    expect(plot?.present).toEqual({ x: 1, y: 2.75 });
  });

  test("against whole numbers has whole numbers only", () => {
    const plot = plotAgainst("LATERAL_LOSS", "emitters", exampleArguments(entryOf("LATERAL_LOSS"), "us"));
    expect(plot?.points.length).toBeGreaterThan(3);
    expect(plot?.points.filter(({ x }) => !Number.isInteger(x))).toEqual([]);
  });

  test("shows the part of the range that has answers, where that is a small one", () => {
    // The exponent is -0.5 at least and 1.5 at most: 4 (12 / 10)^-0.5 = 3.65 to 4 (12 / 10)^1.5 = 5.26.
    const plot = plotAgainst("EMITTER_EXPONENT", "flow_1", [4.32, 12, 4, 10], "metric");
    expect(plot?.low).toBeGreaterThanOrEqual(3.65);
    expect(plot?.high).toBeLessThanOrEqual(5.26);
    expect(plot?.points.length).toBeGreaterThan(50);
  });

  test("leaves out the part of the range where there is no answer", () => {
    const plot = plotAgainst("RUN_MINUTES", "emitter_flow", [0.275, 0]);
    expect(plot?.points.every(({ x }) => x > 0)).toBe(true);
    expect(plot?.present).toBeNull();
  });

  test("is not made where nothing has an answer", () => {
    expect(plotAgainst("RUN_MINUTES", "emitter_flow", [])).toBeNull();
    expect(plotAgainst("RUN_MINUTES", "emitter_flow", ["text", 6])).toBeNull();
    expect(plotAgainst("RUN_MINUTES", "emitter_flow", [{ code: "#REF!", message: "" }, 6])).toBeNull();
  });

  test("does not change what was given", () => {
    const given = Object.freeze([0.275, 6]);
    expect(() => plotAgainst("RUN_MINUTES", "emitter_flow", given)).not.toThrow();
    expect(given).toEqual([0.275, 6]);
  });

  test("is never against words, dates, ranges, or of a table", () => {
    for (const entry of library.catalogue) {
      const fixed = plottable(entry).filter(
        ({ shape, words, quantity }) => shape === "range" || words || quantity === "date",
      );
      expect(fixed).toEqual([]);
      if (entry.result.shape === "table") expect(plottable(entry)).toEqual([]);
    }
  });
});

const DRAWN = library.catalogue.flatMap((entry) =>
  (["us", "metric"] as const).flatMap((system) =>
    plottable(entry).map((parameter) => ({ name: entry.name, against: parameter.name, system, entry, parameter })),
  ),
);

/** Arguments that the example leaves out, so that there is no place on the line to begin from, and why. */
const NOT_DRAWN: Readonly<Record<string, string>> = {
  "ET0_PENMAN_MONTEITH against wind_height, us": "left out, it means 2 m; no usual range is known",
  "FLOOD_VOLUME against pots, us": "pots take room only with their diameter, which is left out as well",
};

describe("every function that can be drawn is drawn with its example's numbers", () => {
  const titleOf = ({ name, against, system }: (typeof DRAWN)[number]): string =>
    `${name} against ${against}, ${system}`;

  test("but for those that say why not", () => {
    const undrawn = DRAWN.filter(
      ({ entry, parameter, system }) =>
        plotOf(library, entry, exampleArguments(entry, system), parameter, system) === null,
    );
    expect(undrawn.map(titleOf)).toEqual(Object.keys(NOT_DRAWN));
  });

  test.each(DRAWN.filter((each) => NOT_DRAWN[titleOf(each)] === undefined))(
    "$name against $against, $system",
    ({ entry, parameter, system }) => {
      const plot = plotOf(library, entry, exampleArguments(entry, system), parameter, system);
      expect(plot).not.toBeNull();
      expect(plot?.points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))).toBe(true);
      expect(plot?.low).toBeLessThan(plot?.high as number);
    },
  );
});

describe("the ticks of an axis", () => {
  test.each([
    [0, 10, 5, [0, 2, 4, 6, 8, 10]],
    [0, 1, 4, [0, 0.5, 1]],
    [-3, 3, 3, [-2, 0, 2]],
    [0.1, 0.35, 5, [0.1, 0.15, 0.2, 0.25, 0.3, 0.35]],
    [990, 1010, 4, [990, 995, 1000, 1005, 1010]],
    [5, 5, 4, [5]],
  ])("from %d to %d, about %d of them", (low, high, wanted, expected) => {
    expect(ticks(low, high, wanted)).toEqual(expected);
  });

  test("of ends that are no numbers is the lower end alone", () => {
    expect(ticks(0, Infinity, 4)).toEqual([0]);
    expect(ticks(NaN, 1, 4)).toEqual([NaN]);
  });
});
