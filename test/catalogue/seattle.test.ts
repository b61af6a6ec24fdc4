/** ET0_TABLE on four years of real weather. */
import { evaluate, inOrder } from "../../src/kernel";
import type { CellInput, Table } from "../../src/kernel";
import { answerOf, entryOf } from "../rig/calls";
import { readSeattle, SEATTLE, type WeatherDay } from "../rig/seattle";
import { serialNumber } from "../rig/serialNumber";

const DAYS = 1461;

const weather = readSeattle();
const asRows = weather.map(({ date, tmax, tmin }) => [date, tmax, tmin]);

function tableOf(rows: readonly (readonly CellInput[])[]): unknown[] {
  const entry = entryOf("ET0_TABLE");
  const place = { ...SEATTLE, units: "metric" };
  return (evaluate(entry, inOrder(entry, { weather: rows, ...place })) as Table).map(([cell]) => cell);
}

function cellByCell({ date, tmax, tmin }: Pick<WeatherDay, "date" | "tmax" | "tmin">): number {
  return answerOf("ET0_HARGREAVES", { tmax, tmin, latitude: SEATTLE.latitude, date, units: "metric" });
}

describe("1,461 days of Seattle", () => {
  const column = tableOf(asRows);

  test("are all there: 1 January 2012 to 31 December 2015, no day twice", () => {
    expect(weather).toHaveLength(DAYS);
    expect(asRows.map(([date]) => date)).toEqual(
      Array.from({ length: DAYS }, (_, day) => serialNumber(2012, 1, 1) + day),
    );
    expect(weather.at(-1)?.date).toBe(serialNumber(2015, 12, 31));
  });

  test("give 1,461 numbers in one call of ET0_TABLE, none lost, none infinite", () => {
    expect(column).toHaveLength(DAYS);
    expect(column.filter((cell) => !Number.isFinite(cell))).toEqual([]);
  });

  test("give the same cell by cell in ET0_HARGREAVES, to the last bit", () => {
    expect(column).toEqual(weather.map(cellByCell));
  });

  function meanOfMonth(year: number, month: number): number {
    const from = serialNumber(year, month, 1);
    const numbers = column.filter((_, index) => {
      const date = weather[index]?.date ?? 0;
      return date >= from && date < from + 31;
    }) as number[];
    return numbers.reduce((sum, et) => sum + et, 0) / numbers.length;
  }

  // FAO-56, Table 2, average reference evapotranspiration of temperate regions in mm a day: cool (about 10 C) 1 to 2 in
  // humid ones and 1 to 3 in arid ones; moderate (20 C) 2 to 4 and 4 to 7; warm (above 30 C) 4 to 7 and 6 to 9.
  test.each([2012, 2013, 2014, 2015])(
    "lie in FAO-56's range for a moderate July and below a cool season's in January of %d",
    (year) => {
      expect(meanOfMonth(year, 7)).toBeGreaterThan(2);
      expect(meanOfMonth(year, 7)).toBeLessThan(7);
      expect(meanOfMonth(year, 1)).toBeGreaterThan(0);
      expect(meanOfMonth(year, 1)).toBeLessThan(2);
    },
  );

  test("lie between 0 and 9 mm on every day, FAO-56's largest average", () => {
    expect(Math.min(...(column as number[]))).toBeGreaterThan(0);
    expect(Math.max(...(column as number[]))).toBeLessThan(9);
  });

  // The same table, humid: half a year cool and half moderate is 182.5 x (1 + 2) = 548 to 182.5 x (2 + 4) = 1,095 mm.
  test.each([2012, 2013, 2014, 2015])(
    "add up to a sum that half a cool and half a moderate year make: 548 to 1,095 mm in %d",
    (year) => {
      const sum = weather.reduce((all, day, index) => (day.year === year ? all + (column[index] as number) : all), 0);
      expect(sum).toBeGreaterThan(548);
      expect(sum).toBeLessThan(1095);
    },
  );
});

describe("Seattle with every tenth lowest temperature missing", () => {
  const isMissing = (index: number): boolean => index % 10 === 9;
  const missing = weather.filter((_, index) => isMissing(index)).length;
  const whole = tableOf(asRows);

  test.each<[string, CellInput[]]>([
    ["an empty cell that a host sends as null", [null]],
    ["an empty text", [""]],
    ["an empty cell that a host sends as nothing", [undefined]],
    ["a dash", ["-"]],
  ])("the rows of %s come back empty, and the others as they were", (_blank, [blank]) => {
    const rows = asRows.map(([date, tmax, tmin], index) => [date, tmax, isMissing(index) ? blank : tmin]);
    const column = tableOf(rows);
    expect(column).toEqual(whole.map((et, index) => (isMissing(index) ? "" : et)));
    expect(column.filter((cell) => cell === "")).toHaveLength(missing);
    expect(column.filter((cell) => typeof cell === "number")).toHaveLength(DAYS - missing);
  });

  test("so do rows that a host fills with 0 in both temperatures", () => {
    const rows = asRows.map(([date, tmax, tmin], index) => [date, ...(isMissing(index) ? [0, 0] : [tmax, tmin])]);
    expect(tableOf(rows)).toEqual(whole.map((et, index) => (isMissing(index) ? "" : et)));
    expect(missing).toBe(146);
  });

  test("a single temperature of 0 is a reading, and its row a number", () => {
    const [frost] = tableOf([[serialNumber(2015, 1, 10), 6, 0]]);
    expect(frost).toBe(cellByCell({ date: serialNumber(2015, 1, 10), tmax: 6, tmin: 0 }));
  });
});
