/**
 * The planner's page and its picture, worked by hand on paper first (all inputs invented).
 *
 * Reference ET: Hargreaves for 93 F and 69 F on 8 July at latitude 38, 0.2508 in (worked in the opening workbook's test).
 * One in on one ft2 is 144 / 231 = 0.62338 gal. ET in gal on 1 ft2: 0.2508 x 0.62338 = 0.15634.
 *   Yard A  0.15634 x 1.1 x 2.25 = 0.3870 gal; / 0.85 = 0.4552; x 60 / 2 = 13.66 min; 1000 x 2 / 60 = 33.3 gal/min
 *   Yard C  0.15634 x 1.2 x 6.25 = 1.1726; / 0.82 = 1.4300; x 60 / 3 = 28.60; 500 x 3 / 60 = 25
 *   Yard B  0.15634 x 1.1 x 3.5  = 0.6019; / 0.85 = 0.7081; x 60 / 2 = 21.24; 2400 x 2 / 60 = 80: two valves of 40
 *   Yard D  0.15634 x 1.2 x 9    = 1.6885; / 0.85 = 1.9865; x 60 / 4 = 29.80; 300 x 4 / 60 = 20
 * Filling, bore squared x pi / 4 x 12 / 231 x ft / flow:
 *   A 0.015684 x 1500 / 33.33 = 0.7058; C 0.027434 x 900 / 25 = 0.9876; B 0.015684 x 1800 / 40 = 0.7058; D 0.027434 x 700 / 20 = 0.9602
 * With three fillings: A 15.77, C 31.56, B 23.36, D 32.68; a third of it: 5.26, 10.52, 7.79, 10.89
 * Bed 1: 0.15634 x 1.1 x 0.5625 = 0.09674 gal = 22.346 in3 on pi x 6.5^2 / 4 = 33.183 in2 x 1.2: 0.5612 in; / 0.75 = 0.7483 in;
 *   60 x 0.7483 / 0.40 = 112.2 min, 37.41 a cycle; 12 x 2.8 = 33.6 gal/min
 * Sets of a cycle: A and C (58.3 of 61.2) 0 to 10.52; B 12.52 to 12.52 + 2 x 7.79 + 2 = 30.10; D and the bed (53.6) 32.10 to 69.51
 *   a cycle is 69.51 long, the next starts 2 later: the third ends at 3 x 69.51 + 2 x 2 = 212.5 min, 5:30 + 3:32.5 = 9:02.5
 * Boom: 24 x 0.8 = 19.2; 19.2 x 231 / 144 / (25 x 30) = 0.041067 in
 *   plugs 0.06 / 0.041067 = 1.46: 2 passes of 40 / 25 = 1.6 min; empty 30 / 25 = 1.2 min
 *   4 in  0.15634 x 0.7 x 0.1406 = 0.015387 gal = 3.5544 in3 on 12.566 in2 x 1.1: 0.25713; / 0.9 = 0.2857: 6.96, 7 passes
 *   #1    0.15634 x 0.7 x 0.4444 = 0.048634 gal = 11.2345 in3 on 33.183 x 1.1: 0.30778; / 0.9 = 0.34198: 8.33, 9 passes
 *   2, 7 and 9 passes of 1.6 min and one dry crossing: 3.2 + 11.2 + 14.4 + 1.2 = 30.0 min, 28.8 x 19.2 = 552.96 gal
 * Meter: 33.33 x 15.77 + 25 x 31.56 + 80 x 23.36 + 20 x 32.68 + 33.6 x 112.2 + 552.96 = 526 + 789 + 1869 + 654 + 3771 + 553 = 8160 gal
 */
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as functions from "../../src/functions";
import { clock, drawDay, flowSteps } from "../../tools/nurseryDay/drawing";
import { planDay, stretchesOf } from "../../tools/nurseryDay/plan";
import { createHeadlessSheet } from "../rig/sheetEngine";

const ROOT = join(__dirname, "../..");
const MINUTES_PER_DAY = 1440;

const sheet = planDay();
const page = readFileSync(join(ROOT, "docs/nursery-day.md"), "utf8");
const picture = readFileSync(join(ROOT, "docs/pictures/nursery-day.svg"), "utf8");

describe("the page and its picture", () => {
  test("are what the library makes of the day now", () => {
    const tsx = require.resolve("tsx/cli");
    const output = execFileSync(process.execPath, [tsx, "tools/nurseryDay.ts", "--check"], {
      cwd: ROOT,
      encoding: "utf8",
    });
    expect(output).toBe("docs/nursery-day.md is current\ndocs/pictures/nursery-day.svg is current\n");
  });

  test("show every formula that the day needs, a copied one once", () => {
    const formulas = sheet.entries().flatMap(([, { formula }]) => (formula === null ? [] : [formula]));
    const calls = new Set(formulas.flatMap((formula) => formula.match(/CANYARD\.[A-Z0-9_]+/g) ?? []));
    for (const call of calls) expect(page).toContain(`=${call}(`);
    expect(calls.size).toBe(14);
  });
});

describe("the day agrees with the day worked on paper", () => {
  test.each([
    ["reference ET, in", "B7", 0.2508, 0.0001],
    ["Yard A net, gal", "K18", 0.387, 0.0002],
    ["Yard C net, gal", "K19", 1.1726, 0.0005],
    ["Yard B net, gal", "K20", 0.6019, 0.0003],
    ["Yard D net, gal", "K21", 1.6885, 0.0007],
    ["Yard A minutes", "M18", 13.66, 0.01],
    ["Yard C minutes", "M19", 28.6, 0.02],
    ["Yard B minutes", "M20", 21.24, 0.01],
    ["Yard D minutes", "M21", 29.8, 0.02],
    ["Yard A flow, gal/min", "N18", 100 / 3, 1e-9],
    ["Yard B flow, gal/min", "N20", 80, 1e-9],
    ["Yard A filling, min", "Q18", 0.7058, 0.0001],
    ["Yard C filling, min", "Q19", 0.9876, 0.0001],
    ["Yard B filling, min", "Q20", 0.7058, 0.0001],
    ["Yard D filling, min", "Q21", 0.9602, 0.0001],
    ["Yard B with filling", "R20", 23.36, 0.01],
    ["Bed 1 depth, in", "B36", 0.7483, 0.0005],
    ["Bed 1 minutes", "B37", 112.2, 0.1],
    ["one pass of the boom, in", "B67", 0.041067, 0.000001],
    ["4 in pots, in", "I73", 0.2857, 0.0002],
    ["#1 pots, in", "I74", 0.34198, 0.0002],
    ["minutes of the boom", "M76", 30, 1e-9],
    ["water of the boom, gal", "N76", 552.96, 1e-9],
    ["through the meter, gal", "C89", 8160, 4],
  ])("%s", (_what, address, byHand, within) => {
    expect(Math.abs(sheet.number(address) - byHand)).toBeLessThanOrEqual(within);
  });

  test.each([
    ["Yard C stops, first cycle", "G44", 10.52],
    ["Yard B starts", "F45", 12.52],
    ["Yard B stops", "G45", 30.1],
    ["Bed 1 stops", "G47", 69.51],
    ["second cycle starts", "F48", 71.51],
    ["the round ends", "G58", 212.5],
    ["the boom is done", "B79", 212.5 + 2 + 30],
  ])("%s, in minutes after 5:30", (_what, address, byHand) => {
    expect(Math.abs((sheet.number(address) - 5.5 / 24) * MINUTES_PER_DAY - byHand)).toBeLessThan(0.2);
  });

  test("all checks are OK", () => {
    expect(["B93", "B94", "B95", "B96"].map((address) => sheet.value(address))).toEqual(["OK", "OK", "OK", "OK"]);
  });
});

describe("typed into the browser sheet, the cells of the page give the answers of the page", () => {
  const typed = Object.fromEntries(
    sheet
      .entries()
      .flatMap(([address, { formula, value, isSpilled }]) => (isSpilled ? [] : [[address, formula ?? value]])),
  );
  const engine = createHeadlessSheet(functions).open(typed);

  test.each(sheet.entries().map(([address, { formula, value }]) => ({ address, formula: formula ?? "", value })))(
    "$address $formula",
    ({ address, value }) => {
      const answer = engine.value(address);
      if (typeof value === "number") expect(answer).toBeCloseTo(value, 9);
      else expect(answer ?? "").toBe(value);
    },
  );

  test("the minutes in one call are those of the chain", () => {
    for (const row of [18, 19, 20, 21]) expect(sheet.number(`S${row}`)).toBeCloseTo(sheet.number(`M${row}`), 12);
  });
});

describe("the picture", () => {
  const stretches = stretchesOf(sheet);
  const numbers = (name: string, of: string): number[] =>
    [...of.matchAll(new RegExp(` ${name}="([-\\d.]+)"`, "g"))].map(([, number]) => Number(number));
  const rectangles = (kind: string): string[] =>
    picture.match(new RegExp(`<rect [^>]*class="${kind}"[^>]*>`, "g")) ?? [];

  test("is drawn from the sequence: a bar for each zone, valve and cycle, and for each wet section of the boom", () => {
    expect(picture).toBe(drawDay(sheet));
    // Five zones in three cycles, one of them with two valves, and the boom over three sections that are wet.
    expect(rectangles("run")).toHaveLength(5 * 3 + 3 + 3);
    expect(stretches).toHaveLength(21);
  });

  test("puts its bars where their times are: as far apart as the minutes, on one scale", () => {
    const starts = rectangles("run").map((bar) => numbers("x", bar)[0] as number);
    const lengths = rectangles("run").map((bar) => numbers("width", bar)[0] as number);
    const names = [...new Set(stretches.map(({ name }) => name))];
    const inRows = names.flatMap((name) => stretches.filter((stretch) => stretch.name === name));
    const scale =
      ((starts.at(-1) as number) - (starts[0] as number)) / ((inRows.at(-1)?.start ?? NaN) - (inRows[0]?.start ?? NaN));
    inRows.forEach(({ start, stop }, index) => {
      expect(
        Math.abs((starts[index] as number) - (starts[0] as number) - scale * (start - (inRows[0]?.start ?? NaN))),
      ).toBeLessThan(0.2);
      expect(Math.abs((lengths[index] as number) - scale * (stop - start))).toBeLessThan(0.2);
    });
  });

  test("draws the water of the day below, and never more than the supply", () => {
    const steps = flowSteps(stretches);
    const water = steps.reduce((sum, { from, to, flow }) => sum + (to - from) * flow, 0);
    expect(water).toBeCloseTo(sheet.number("C89"), 6);
    for (const { flow } of steps) expect(flow).toBeLessThanOrEqual(sheet.number("B10"));
    expect(Math.max(...steps.map(({ flow }) => flow))).toBeCloseTo(sheet.number("H58"), 9);
  });

  test("is legible at 800 px: text of 15 px and more, in dark ink on white, inside the frame", () => {
    const [, width, height] = /viewBox="0 0 (\d+) (\d+)"/.exec(picture) ?? [];
    expect(Number(width)).toBe(800);
    expect(picture).toContain(`<rect x="0" y="0" width="800" height="${height}" fill="#ffffff"/>`);
    for (const size of numbers("font-size", picture)) expect(size).toBeGreaterThanOrEqual(15);
    for (const x of numbers("x", picture)) expect(x >= 0 && x <= 800).toBe(true);
    for (const y of numbers("y", picture)) expect(y >= 0 && y <= Number(height)).toBe(true);
  });

  test("says in words what it shows, for those who do not see it", () => {
    expect(picture).toMatch(/<title id="title">[^<]+<\/title>/);
    const [, description = ""] = /<desc id="what">([^<]+)<\/desc>/.exec(picture) ?? [];
    for (const { name, start, stop } of stretches) {
      expect(description).toContain(name);
      expect(description).toContain(`${clock(start)} to ${clock(stop)}`);
    }
    expect(page).toMatch(/!\[[^\]]{40,}\]\(pictures\/nursery-day\.svg\)/);
  });
});
