/** dist/google-sheets/Canyard.gs as a file: what is in it, what its help says, and that it works every example. */
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { Linter } from "eslint";
import globals from "globals";
import ts from "typescript";
import { catalogue, VERSION } from "../../src/functions";
import { catalogueExamples } from "../rig/catalogueExamples";
import { argumentsSent, openGoogleSheet, script, SCRIPT_FILE } from "../rig/googleSheets";
import { expectPrinted } from "../rig/printed";

const LIBRARY = "CanyardLibrary_";
const sheet = openGoogleSheet();

describe("every example of the catalogue, given as Google Sheets would send it", () => {
  test.each(catalogueExamples)("CANYARD_$title", (example) => {
    const found = sheet.cell(`CANYARD_${example.entry.name}`, argumentsSent(example.entry, example.args, sheet));
    if ("error" in found) throw new Error(found.error);
    expectPrinted(found.value, example);
  });
});

describe("the script as a file", () => {
  const tree = ts.createSourceFile("Canyard.js", script, ts.ScriptTarget.ES2018, true, ts.ScriptKind.JS);
  const stubs = tree.statements.filter(ts.isFunctionDeclaration);

  test("is a script of 2018 without modules, and names nothing but the language and the host's two services", () => {
    const messages = new Linter().verify(script, {
      languageOptions: {
        ecmaVersion: 2018,
        sourceType: "script",
        globals: { ...globals.es2018, BigInt: "readonly", SpreadsheetApp: "readonly", Utilities: "readonly" },
      },
      rules: { "no-undef": ["error", { typeof: true }], "no-eval": "error", "no-new-func": "error" },
    });
    expect(messages.map(({ message, line }) => `${line}: ${message}`)).toEqual([]);
  });

  test("has one function for each of the catalogue, in its order, and one object beside them", () => {
    const names = tree.statements.flatMap((statement) => {
      if (ts.isFunctionDeclaration(statement)) return [statement.name?.text];
      if (ts.isVariableStatement(statement))
        return statement.declarationList.declarations.map((each) => each.getText());
      return [];
    });
    expect(names).toEqual([...catalogue.map(({ name }) => `CANYARD_${name}`), LIBRARY]);
    expect(Object.keys(sheet.context).sort()).toEqual([...names].sort());
  });

  test("has names that are legal, and only the library's ends with the underscore that hides it", () => {
    for (const { name } of stubs) expect(name?.text).toMatch(/^CANYARD_[A-Z][A-Z0-9_]*[A-Z0-9]$/);
    expect(LIBRARY).toMatch(/^[A-Za-z]+_$/);
  });

  test("names its version, asks for no access beyond its own spreadsheet, and carries the licence", () => {
    const [header = ""] = script.split("*/");
    expect(header).toContain(`Canyard ${VERSION}:`);
    expect(header).toContain("@OnlyCurrentDoc");
    expect(script).toContain("Permission is hereby granted, free of charge");
  });

  test("can be pasted and read: less than a megabyte, and no endless lines", () => {
    expect(statSync(SCRIPT_FILE).size).toBeLessThan(1_000_000);
    expect(Math.max(...script.split("\n").map(({ length }) => length))).toBeLessThan(1000);
  });

  describe("the comment that the help of the host shows", () => {
    test.each(catalogue.map((entry, index) => [entry.name, entry, stubs[index] as ts.FunctionDeclaration] as const))(
      "%s: summary, caution, every argument with its unit, and what may be left out",
      (_name, entry, stub) => {
        const [comment] = ts.getJSDocCommentsAndTags(stub).filter(ts.isJSDoc);
        const tags = ts.getJSDocTags(stub);
        const text = ts.getTextOfJSDocComment(comment?.comment) ?? "";
        expect(text.split("\n")[0]).toBe(`${entry.summary}.`);
        expect(text).toContain(`Gives: ${entry.result.about}`);
        expect(text).toContain(entry.result.unit);
        expect(text).toContain(entry.caution);
        expect(tags.map(({ tagName }) => tagName.text)).toEqual([
          ...entry.params.map(() => "param"),
          "return",
          "customfunction",
        ]);
        const params = tags.filter(ts.isJSDocParameterTag);
        expect(params.map(({ name }) => name.getText())).toEqual(entry.params.map(({ name }) => name));
        expect(stub.parameters.map(({ name }) => name.getText())).toEqual(entry.params.map(({ name }) => name));
        params.forEach(({ comment: words, typeExpression, isBracketed }, index) => {
          const { about, unit, optional, repeating } = entry.params[index] as (typeof entry.params)[number];
          const said = ts.getTextOfJSDocComment(words) ?? "";
          expect(said.startsWith(about)).toBe(true);
          expect(said).toContain(unit);
          // Brackets mean nothing to that host, so that words must say it.
          expect([isBracketed, said.includes("may be left out")]).toEqual([false, optional && !repeating]);
          expect(typeExpression).toBeDefined();
        });
      },
    );
  });
});

describe("docs/google-sheets.md", () => {
  const page = readFileSync(join(__dirname, "../../docs/google-sheets.md"), "utf8");
  const lines = [...page.matchAll(/^\| `=(CANYARD_\w+)\((.*)\)` +\| (.+?) +\|$/gm)].map(
    ([, name = "", args = "", gives = ""]) => [`${name}(${args})`, name, args, gives] as const,
  );
  /** As the page says that they stand. */
  const cells: Readonly<Record<string, unknown>> = {
    A2: sheet.date(2015, 7, 15),
    A3: sheet.date(1899, 12, 30, 6, 0),
    A4: "",
    "B2:B5": [[80], [100], [120], [100]],
  };

  function argumentOf(typed: string): unknown {
    if (typed in cells) return cells[typed];
    return typed.endsWith("%") ? Number(typed.slice(0, -1)) / 100 : (JSON.parse(typed) as unknown);
  }

  test("has lines to try: a number, a table, an error", () => {
    expect(lines.length).toBeGreaterThanOrEqual(9);
    for (const kind of [/^[\d.]+$/, /^\d+ rows/, /^`#ERROR!` /]) {
      expect(lines.some(([, , , gives]) => kind.test(gives))).toBe(true);
    }
  });

  test.each(lines)("%s gives what the page says", (_title, name, args, gives) => {
    const found = sheet.cell(name, args.split(/, */).map(argumentOf));
    if ("error" in found) {
      expect(`\`#ERROR!\` ${found.error}`).toBe(gives);
    } else if (Array.isArray(found.value)) {
      expect(`${found.value.length} rows`).toBe(/^\d+ rows/.exec(gives)?.[0]);
    } else {
      const decimals = gives.split(".")[1]?.length ?? 0;
      expect((found.value as number).toFixed(decimals)).toBe(gives);
    }
  });

  test("says how many functions and lines there are", () => {
    expect(page).toContain(`all ${catalogue.length} functions`);
    const told = Number(/about ([\d,]+) lines/.exec(page)?.[1]?.replace(",", ""));
    expect(Math.abs(script.split("\n").length / told - 1)).toBeLessThan(0.05);
  });
});
