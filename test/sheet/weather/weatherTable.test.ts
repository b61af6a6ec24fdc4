import { call } from "../../../src/functions";
import { arrange, withoutUnit } from "../../../src/sheet/weather/arrange";
import type { Choice, WantedField } from "../../../src/sheet/weather/arrange";
import { recognise } from "../../../src/sheet/weather/recognise";
import { NoTable, readTable } from "../../../src/sheet/weather/readTable";
import { details, summary } from "../../../src/sheet/weather/reportWords";
import { seattleText } from "../../rig/seattle";

const convert = (value: number, from: string, to: string) => call("CONVERT_UNIT", [value, from, to]) as number;

const US: readonly WantedField[] = [
  { field: "date", unit: "date" },
  { field: "tmax", unit: "F" },
  { field: "tmin", unit: "F" },
  { field: "rain", unit: "in" },
  { field: "irrigation", unit: "gal", missing: 0 },
];
const ALL: readonly WantedField[] = [
  { field: "date", unit: "date" },
  { field: "tmax", unit: "C" },
  { field: "tmin", unit: "C" },
  { field: "rh_max", unit: "%" },
  { field: "rh_min", unit: "%" },
  { field: "wind", unit: "m/s" },
  { field: "solar", unit: "MJ/m2/day" },
  { field: "rain", unit: "mm" },
  { field: "et", unit: "mm/day" },
];
const namesOf = (fields: readonly WantedField[]) => fields.map(({ field }) => field);

function brought(text: string, fields: readonly WantedField[], changes: Partial<Choice> = {}) {
  const table = readTable(text);
  const { columns, order = "month first" } = recognise(table, namesOf(fields));
  const choice = { uses: columns.map(({ use }) => use), units: columns.map(({ unit }) => unit), order, ...changes };
  return { columns, choice, ...arrange(table, choice, fields, convert) };
}

const JULY_1_2026 = 46_204;

describe("four years of Seattle", () => {
  test("give 1,461 whole days in the units of the sheet", () => {
    const { rows, report, columns } = brought(seattleText(), US);
    expect(summary(report)).toBe("1,461 days, 2012-01-01 to 2015-12-31");
    expect(details(report)).toEqual([
      "No day is incomplete.",
      "Not in the table, so left empty: irrigation of one pot.",
    ]);
    // 2012-01-01,0.0,12.8,5.0: 12.8 x 1.8 + 32 = 55.04 and 5 x 1.8 + 32 = 41
    expect(rows[0]).toEqual([40_909, expect.closeTo(55.04, 9), expect.closeTo(41, 9), 0, 0]);
    // 2012-01-02,10.9,10.6,2.8: 10.9 / 25.4
    expect(rows[1]![3]).toBeCloseTo(10.9 / 25.4, 12);
    expect(rows).toHaveLength(1461);
    expect(columns.map(({ use, unit, isGuessed }) => [use, unit, isGuessed])).toEqual([
      ["date", null, false],
      ["rain", "mm", true],
      ["tmax", "C", true],
      ["tmin", "C", true],
      [null, null, false],
      [null, null, false],
    ]);
  });
});

describe("tables as others write them", () => {
  test("a network's, with units in brackets and marks behind numbers", () => {
    const text = `Stn Id,Stn Name,Date,ETo (in),Precip (in),Sol Rad (Ly/day),Max Air Temp (F),Min Air Temp (F),Max Rel Hum (%),Min Rel Hum (%),Avg Wind Speed (mph),qc
6,"Hollow, East",7/1/2026,0.25,0.00,700,95.0,59.0,90,30,10.0,Y
6,"Hollow, East",7/2/2026,0.20,0.10R,600,86.0,50.0,--,35,5.0,Y`;
    const { rows, report } = brought(text, ALL);
    expect(rows[0]).toEqual([
      JULY_1_2026,
      expect.closeTo(35, 9), // (95 - 32) / 1.8
      expect.closeTo(15, 9), // (59 - 32) / 1.8
      90,
      30,
      expect.closeTo(4.4704, 9), // 10 x 1609.344 / 3600
      expect.closeTo(29.288, 9), // 700 x 4.184 / 100
      0,
      expect.closeTo(6.35, 9), // 0.25 x 25.4
    ]);
    expect(rows[1]![7]).toBeCloseTo(2.54, 9);
    expect(report.incomplete).toEqual([{ day: JULY_1_2026 + 1, lacks: ["rh_max"] }]);
    expect(report.flagged).toBe(1);
  });

  test("a global data set's, with lines above, year, month and day apart and -999 for nothing", () => {
    const text = `-BEGIN HEADER-
Dates (month/day/year): 07/01/2026 through 07/03/2026
The value for missing data is: -999
T2M_MAX  Temperature at 2 Meters Maximum (C)
-END HEADER-
YEAR,MO,DY,T2M_MAX,T2M_MIN,PRECTOTCORR,WS2M,ALLSKY_SFC_SW_DWN
2026,7,1,31.5,18.2,0.0,2.1,27.5
2026,7,2,-999,17.9,4.4,1.8,-999
2026,7,3,29.9,17.0,0.2,2.4,24.1`;
    const { columns, choice } = brought(text, ALL);
    expect(columns.map(({ use }) => use)).toEqual(["year", "month", "day", "tmax", "tmin", "rain", "wind", "solar"]);
    // Three days are too few to tell C from F by the numbers alone: the dialog asks for four units.
    expect(withoutUnit(choice)).toEqual([3, 4, 5, 6]);
    const units = [null, null, null, "C", "C", "mm", "m/s", "MJ/m2 a day"];
    const { rows, report } = brought(text, ALL, { units });
    expect(rows.map(([day, tmax]) => [day, tmax])).toEqual([
      [JULY_1_2026, 31.5],
      [JULY_1_2026 + 1, null],
      [JULY_1_2026 + 2, 29.9],
    ]);
    expect(report.incomplete).toEqual([{ day: JULY_1_2026 + 1, lacks: ["tmax", "solar"] }]);
  });

  test("a European one, with semicolons, decimal commas and the day first", () => {
    const text = `Datum/Date;Tmax (°C);Tmin (°C);Rain (mm);Wind (km/h)
01.07.2026;31,5;18,2;0,0;7,2
02.07.2026;29,0;17,9;4,4;3,6`;
    const { rows } = brought(text, ALL);
    expect(rows[1]!.slice(0, 3)).toEqual([JULY_1_2026 + 1, 29, 17.9]);
    // 3.6 km/h are 1 m/s
    expect(rows[1]![5]).toBeCloseTo(1, 12);
  });

  test("one pasted from a spreadsheet: tabs, a line of units, W/m2", () => {
    const text = "Day\tT max\tT min\tRad\n\tF\tF\tW/m2\n7/1/2026\t95\t59\t100\n7/2/2026\t86\t50\t\n";
    const { rows } = brought(text, ALL);
    expect(rows[0]!.slice(0, 3)).toEqual([JULY_1_2026, expect.closeTo(35, 9), expect.closeTo(15, 9)]);
    // 100 W x 86,400 s
    expect(rows[0]![6]).toBeCloseTo(8.64, 12);
  });

  test("tenths of degrees and of millimetres", () => {
    const text = "DATE,PRCP (tenths of mm),TMAX (0.1 C),TMIN (0.1 C)\n2026-07-01,25,315,182\n2026-07-02,0,290,179\n";
    expect(brought(text, ALL).rows[0]!.filter((value) => value !== null)).toEqual([JULY_1_2026, 31.5, 18.2, 2.5]);
  });
});

describe("nothing is dropped in silence", () => {
  const text = `date,tmax (F),tmin (F),rain (in)
7/1/2026,90,60,0
7/2/2026,91,61,T
7/2/2026,95,61,0
7/4/2026,92,warm,0.10
July the 5th,90,60,0
7/6/2026,88,89,0
7/7/2026,880,60,NA
7/8/2026,,,
total,,,0.1`;
  const { rows, report } = brought(text, US);

  test("days without a row are put in, and counted as incomplete", () => {
    expect(rows.map(([day]) => day)).toEqual(Array.from({ length: 8 }, (_, at) => JULY_1_2026 + at));
    expect(report.added).toEqual([JULY_1_2026 + 2, JULY_1_2026 + 4]);
    expect(report.incomplete).toEqual([
      { day: JULY_1_2026 + 2, lacks: ["tmax", "tmin", "rain"] },
      { day: JULY_1_2026 + 3, lacks: ["tmin"] },
      { day: JULY_1_2026 + 4, lacks: ["tmax", "tmin", "rain"] },
      { day: JULY_1_2026 + 6, lacks: ["tmax", "rain"] },
      { day: JULY_1_2026 + 7, lacks: ["tmax", "tmin", "rain"] },
    ]);
  });

  test("each oddity is named with its line", () => {
    expect(details(report)).toEqual([
      "5 incomplete days: 2026-07-03 (no highest temperature, no lowest temperature, no rain); 2026-07-04 (no lowest temperature); 2026-07-05 (no highest temperature, no lowest temperature, no rain); 2026-07-07 (no highest temperature, no rain); 2026-07-08 (no highest temperature, no lowest temperature, no rain).",
      "2 days without a row, put in with a date and no readings: 2026-07-03; 2026-07-05.",
      "1 row for a day that has one already, not taken: 2026-07-02 in line 4, with other readings.",
      "2 rows without a date that can be read, not taken: line 6 “July the 5th 90 60 0”; line 10 “total   0.1”.",
      "1 cell that cannot be read, left empty: line 5, tmin (F) “warm”.",
      "1 reading that no weather can have in the unit chosen, left empty: line 8, tmax (F) “880”.",
      "1 day with the lowest temperature above the highest, taken as they stand: 2026-07-06.",
      "1 day with a trace of rain, taken as 0.",
      "Not in the table, so left empty: irrigation of one pot.",
    ]);
  });
});

describe("what is unclear is asked", () => {
  test("two columns that could be the same", () => {
    const table = readTable("date,tmax (F),tmax (C),tmin (F)\n2026-07-01,95,35,59\n");
    const { columns, rivals } = recognise(table, namesOf(US));
    expect(rivals).toEqual(["tmax"]);
    expect(columns.map(({ use }) => use)).toEqual(["date", "tmax", null, "tmin"]);
  });

  test("dates that can be read both ways", () => {
    expect(recognise(readTable("date,tmax (F)\n1/2/2026,90\n"), namesOf(US)).order).toBeUndefined();
  });

  test("a unit that neither the heading nor the numbers tell", () => {
    const { columns } = recognise(readTable("date,tmax,tmin,rain\n2026-07-01,35,20,0.5\n"), namesOf(US));
    expect(columns.map(({ unit }) => unit)).toEqual([null, null, null, null]);
  });

  test("not one that the numbers tell, and the others' unit goes with it", () => {
    const { columns } = recognise(readTable("date,tmax,tmin,rain\n2026-07-01,95,70,0.5\n"), namesOf(US));
    expect(columns.map(({ unit, isGuessed }) => [unit, isGuessed])).toEqual([
      [null, false],
      ["F", true],
      ["F", true],
      ["in", true],
    ]);
  });
});

describe("what is no daily table is refused in a sentence", () => {
  const hourly = (hours: number) =>
    Array.from({ length: hours }, (_, at) => `2026-07-0${1 + Math.floor(at / 24)} ${at % 24}:30,${60 + at}`).join("\n");

  test.each([
    ["nothing", "  \n", /nothing in it/],
    ["a letter", "Dear all,\nthe pump is mended.\n", /No line of headings/],
    ["headings alone", "date,tmax\n", /no days/],
  ])("%s", (_, text, sentence) => {
    expect(() => readTable(text)).toThrow(NoTable);
    expect(() => readTable(text)).toThrow(sentence);
  });

  test("one with a row for each hour", () => {
    expect(() => brought(`time,tmax (F)\n${hourly(48)}`, US)).toThrow(/24 rows for each day, with the time of day/);
  });

  test("one with a hole of years, which is a slip in a date", () => {
    expect(() => brought("date,tmax (F)\n2026-07-01,90\n2036-07-02,91\n", US)).toThrow(/no row for 3653 days/);
  });
});
