/** The file of a workbook with every feature, unzipped and looked at without the library that wrote it. */
import { finish } from "../../tools/starters/finish";
import { plainTwin, withOurFunctions } from "../../tools/starters/layOut";
import { storedForm, xlsxOf } from "../../tools/starters/xlsx";
import { potsAndDays } from "../rig/potsAndDays";
import { elements, partsOf, plain, sheetsOf, type StoredSheet, type TextParts } from "../rig/xlsxReader";

const finished = finish(potsAndDays);
const FACTS = { title: "Pots and days", edition: "us" } as const;

let parts: TextParts;
let sheets: readonly StoredSheet[];
beforeAll(async () => {
  parts = partsOf(await xlsxOf(withOurFunctions(finished), FACTS));
  sheets = sheetsOf(parts);
});

const part = (sheet: number): string => parts[sheets[sheet]!.part]!;
const cell = (sheet: number, address: string) => sheets[sheet]!.cells.get(address);

describe("formulas in the file", () => {
  test("have the form in which Excel stores our functions, texts untouched", () => {
    expect(storedForm('=IF(A1, CANYARD.WATER_HELD(B1, 0.5), "CANYARD.WATER_HELD")')).toBe(
      'IF(A1, _xldudf_CANYARD_WATER_HELD(B1, 0.5), "CANYARD.WATER_HELD")',
    );
    expect(cell(1, "B6")?.formula).toBe("2 * _xldudf_CANYARD_WATER_HELD(B5, 1 - 0.5)");
  });

  test("come with what they show: numbers, texts, truths, and texts without letters", () => {
    expect(cell(1, "B5")?.value).toBeCloseTo((Math.PI * 10.5 * 508) / 12 / 231, 12);
    expect(cell(1, "A2")?.value).toBe("All checks OK");
    expect(cell(1, "B8")?.value).toBe(true);
    expect(cell(1, "B13")?.value).toBe("");
    expect(cell(1, "E19")).toEqual({
      formula: `IFERROR(INDEX(_xldudf_CANYARD_WATER_BALANCE('Inputs & more'!B12:B15, 'Inputs & more'!C12:C15, 'Inputs & more'!D12:D15, 2), 3, 5), "")`,
      value: "irrigate",
      error: null,
    });
  });

  test("are none of them arrays, and none is in error", () => {
    const all = sheets.flatMap(({ cells }) => [...cells.values()]);
    expect(all.filter(({ error }) => error !== null)).toEqual([]);
    expect(sheets.map((_sheet, at) => part(at)).join("")).not.toMatch(/<f [^>]*t="array"/);
  });

  test("in the plain twin are built-in functions only", async () => {
    const twin = sheetsOf(partsOf(await xlsxOf(plainTwin(finished), FACTS)));
    const formulas = twin.flatMap(({ cells }) => [...cells.values()].flatMap(({ formula }) => formula ?? []));
    expect(formulas.length).toBeGreaterThan(8);
    expect(formulas.filter((formula) => /CANYARD|_xldudf_/i.test(formula))).toEqual([]);
  });
});

describe("what the sheet allows", () => {
  const validation = (range: string) =>
    elements(part(0), "dataValidation").find(({ attributes }) => attributes["sqref"] === range)!;

  test.each([
    ["B5", "decimal", "1", "60", "Top diameter must be a number from 1 to 60 in."],
    ["B6", "whole", "1", "60", "Bottom diameter must be a whole number from 1 to 60 in."],
    ["B8", "list", '"us"', undefined, "This workbook is in US units."],
    ["B9", "list", "Lists!$A$2:$A$3", undefined, "Answer with a word of the sheet Lists."],
    ["B12:C15", "decimal", "0", "5", "ET and rain are numbers from 0 to 5 in."],
  ])("%s is checked with its sentence", (range, type, first, second, sentence) => {
    const { attributes, content } = validation(range);
    expect(attributes).toMatchObject({
      type,
      error: sentence,
      prompt: sentence,
      errorStyle: "stop",
      showErrorMessage: "1",
    });
    expect(plain(elements(content, "formula1")[0]!.content)).toBe(first);
    expect(elements(content, "formula2")[0]?.content).toBe(second);
  });

  test("a sentence that no spreadsheet takes is refused when the file is made", async () => {
    const tooLong = {
      ...potsAndDays,
      sheets: potsAndDays.sheets.map((sheet) => ({
        ...sheet,
        validations: [{ range: "A1", least: 0, most: 1, message: "x".repeat(226) }],
      })),
    };
    await expect(xlsxOf(withOurFunctions(finish(tooLong)), FACTS)).rejects.toThrow("longer than 225 characters");
  });

  test("only inputs may be changed, and no password keeps the rest", () => {
    const styles = elements(parts["xl/styles.xml"]!.replace(/[\s\S]*<cellXfs/, "<cellXfs"), "xf");
    const isOpen = (sheet: number, address: string) => {
      const style = new RegExp(`<c r="${address}"[^>]* s="(\\d+)"`).exec(part(sheet))?.[1];
      return styles[Number(style)]!.content.includes('locked="0"');
    };
    expect(["B5", "B9", "C9", "B12"].map((address) => isOpen(0, address))).toEqual([true, true, true, true]);
    expect(["A1", "B8"].map((address) => isOpen(0, address))).toEqual([false, false]);
    const protections = sheets.map((_sheet, at) => elements(part(at), "sheetProtection")[0]!.attributes);
    expect(protections.every(({ sheet, password, hashValue }) => sheet === "1" && !password && !hashValue)).toBe(true);
  });

  test("names stand for their cells", () => {
    const names = elements(parts["xl/workbook.xml"]!, "definedName").map(({ attributes, content }) => [
      attributes["name"],
      plain(content),
    ]);
    expect(names).toContainEqual(["units", "'Inputs & more'!$B$8"]);
    expect(names).toContainEqual(["days", "'Inputs & more'!$A$12:$A$15"]);
  });
});

describe("how it looks and prints", () => {
  test("checks are coloured by their words", () => {
    const rules = elements(part(1), "conditionalFormatting");
    expect(rules.map(({ attributes }) => attributes["sqref"])).toEqual(["A2 B9:B10 H33"]);
    expect(elements(rules[0]!.content, "formula").map(({ content }) => plain(content))).toEqual([
      '"OK"',
      '"All checks OK"',
      '"LOOK"',
      '"See Checks"',
    ]);
  });

  test("top rows and first columns stay in view, columns have their widths", () => {
    expect(elements(part(0), "pane")[0]!.attributes).toMatchObject({ xSplit: "1", ySplit: "3", state: "frozen" });
    const widths = elements(part(0), "col").map(({ attributes: { min, max, width } }) => [min, max, width].map(Number));
    expect(widths).toEqual([
      [1, 1, 30],
      [2, 3, 12],
      [4, 4, 14],
      [5, 5, 60],
    ]);
  });

  test("one page wide, lying where asked, with headings repeated and pages counted", () => {
    expect(part(0)).toContain('<pageSetUpPr fitToPage="1"/>');
    expect(elements(part(0), "pageSetup")[0]!.attributes).toMatchObject({ paperSize: "1", orientation: "landscape" });
    expect(elements(part(0), "pageSetup")[0]!.attributes["fitToWidth"] ?? "1").toBe("1");
    expect(elements(part(0), "oddFooter")[0]!.content).toBe("&amp;L&amp;A&amp;R&amp;P of &amp;N");
    const names = elements(parts["xl/workbook.xml"]!, "definedName").map(({ attributes, content }) => [
      attributes["name"],
      plain(content),
    ]);
    expect(names).toContainEqual(["_xlnm.Print_Area", "'Inputs & more'!$A$1:$E$17"]);
    expect(names).toContainEqual(["_xlnm.Print_Titles", "'Inputs & more'!$1:$3"]);
  });

  test("the metric edition prints on A4", async () => {
    const metric = partsOf(await xlsxOf(withOurFunctions(finished), { ...FACTS, edition: "metric" }));
    expect(metric[sheets[0]!.part]).toContain('paperSize="9"');
  });

  test("a row with words in further lines is as tall as these", () => {
    const height = /<row r="5"[^>]* ht="([\d.]+)"/.exec(part(1))?.[1];
    expect(Number(height)).toBeGreaterThan(4 * 13);
  });
});

describe("charts in the file", () => {
  const chart = (number: number): string => parts[`xl/charts/chart${number}.xml`]!;
  const seriesOf = (number: number) => elements(chart(number), "c:ser").map(({ content }) => content);

  test("each has words for someone who cannot see it, and its place and size", () => {
    const drawn = elements(parts["xl/drawings/drawing1.xml"]!, "xdr:cNvPr").map(({ attributes }) => attributes);
    expect(drawn.map(({ descr }) => descr)).toContain("Two stacked columns for each day.");
    expect(drawn).toHaveLength(6);
    expect(elements(parts["xl/drawings/drawing1.xml"]!, "xdr:ext")[0]!.attributes).toEqual({
      cx: "4381500",
      cy: "3048000",
    });
    expect(part(2)).toContain('<drawing r:id="rId1"/></worksheet>');
  });

  test("columns with a line share their axes; stacked ones stand on one another", () => {
    expect(chart(1)).toMatch(/<c:barChart><c:barDir val="col"\/><c:grouping val="clustered"\/>.*<c:lineChart>/);
    expect(chart(2)).toContain('<c:grouping val="stacked"/>');
    expect(chart(2)).toContain('<c:overlap val="100"/>');
  });

  test("a strip stands on a series without colour and without a name in a legend, first line on top", () => {
    expect(seriesOf(3)[0]).toContain("<c:spPr><a:noFill/>");
    expect(chart(3)).toContain('<c:orientation val="maxMin"/>');
    expect(seriesOf(3)[0]).toContain("<c:tx><c:v> </c:v></c:tx>");
    expect(chart(3)).not.toContain("<c:legend>");
    expect(chart(3)).toContain('<c:barDir val="bar"/>');
  });

  test("points have numbers on both axes", () => {
    expect(elements(chart(6), "c:xVal")[0]!.content).toContain("<c:numCache>");
    expect(elements(chart(6), "c:valAx")).toHaveLength(2);
  });

  test("points are kept, so that it is drawn without being worked", () => {
    const [used] = seriesOf(5);
    expect(elements(elements(used!, "c:cat")[0]!.content, "c:v").map(({ content }) => content)).toEqual([
      "Mon",
      "Tue",
      "Wed",
      "Thu",
    ]);
    expect(elements(elements(used!, "c:val")[0]!.content, "c:v").map(({ content }) => Number(content))).toEqual([
      0.5, 0.4, 0.5, 0.6,
    ]);
    expect(elements(used!, "c:f").map(({ content }) => plain(content))).toEqual(
      ["'Inputs &amp; more'!$A$12:$A$15", "'Inputs &amp; more'!$B$12:$B$15"].map(plain),
    );
  });

  test("series differ by more than colour", () => {
    const lines = seriesOf(5).map((each) =>
      [/a:prstDash val="(\w+)"/.exec(each)?.[1], /c:symbol val="(\w+)"/.exec(each)?.[1]].join(),
    );
    expect(new Set(lines).size).toBe(3);
    const bars = seriesOf(2).map((each) => /prst="(\w+)"/.exec(each)?.[1]);
    expect(new Set(bars).size).toBe(2);
  });
});

describe("the file itself", () => {
  test("is the same, byte by byte, whenever it is made", async () => {
    const [one, other] = [
      await xlsxOf(withOurFunctions(finished), FACTS),
      await xlsxOf(withOurFunctions(finish(potsAndDays)), FACTS),
    ];
    expect(Buffer.compare(Buffer.from(one), Buffer.from(other))).toBe(0);
  });

  test("names its title and no one", () => {
    const core = parts["docProps/core.xml"]!;
    expect(elements(core, "dc:title")[0]!.content).toBe("Pots and days");
    expect(elements(core, "dc:creator")[0]!.content).toBe("Canyard");
    expect(elements(parts["docProps/app.xml"]!, "Application")[0]!.content).toBe(
      "Microsoft Excel workbook made by Canyard",
    );
    expect(elements(core, "cp:lastModifiedBy")[0]!.content).toBe("Canyard");
    expect(elements(core, "dcterms:created")[0]!.content).toBe("2026-01-01T00:00:00Z");
  });

  test("does not ask to be worked anew on opening", () => {
    expect(parts["xl/workbook.xml"]).toContain('<calcPr calcId="191029"/>');
    expect(parts["xl/workbook.xml"]).not.toContain("fullCalcOnLoad");
  });
});
