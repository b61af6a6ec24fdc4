/** dist/library.mjs and its types, as a program of someone else meets them; and every line of its document. */
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript";

const ROOT = join(__dirname, "../..");
const DECLARATIONS = join(ROOT, "dist/library.d.mts");
const consumer = (file: string): string => join(ROOT, "test/consumer", file);

function node(...args: string[]): string {
  return execFileSync(process.execPath, args, { cwd: ROOT, encoding: "utf8" });
}

const STRICTEST: ts.CompilerOptions = {
  strict: true,
  exactOptionalPropertyTypes: true,
  noUncheckedIndexedAccess: true,
  noPropertyAccessFromIndexSignature: true,
  verbatimModuleSyntax: true,
  skipLibCheck: false,
  target: ts.ScriptTarget.ES2022,
  lib: ["lib.es2022.d.ts", "lib.dom.d.ts"],
  module: ts.ModuleKind.NodeNext,
  moduleResolution: ts.ModuleResolutionKind.NodeNext,
  types: [],
  noEmit: true,
};

function complaints(files: readonly string[], options: ts.CompilerOptions): string[] {
  const program = ts.createProgram(files, options);
  return ts
    .getPreEmitDiagnostics(program)
    .map(({ file, messageText }) => `${file?.fileName}: ${ts.flattenDiagnosticMessageText(messageText, " ")}`);
}

describe("the library's types", () => {
  test("serve a program under the strictest settings, and refuse what is misused", () => {
    expect(complaints([consumer("program.mts"), consumer("misuse.mts")], STRICTEST)).toEqual([]);
  });

  test("serve it as a package too", () => {
    const { exports: entry } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as { exports: unknown };
    expect(entry).toEqual({ ".": { types: "./dist/library.d.mts", import: "./dist/library.mjs" } });
    const program = "import { call } from 'canyard'; console.log(call('RUN_MINUTES', [0.275, 6]))";
    expect(node("--input-type=module", "-e", program)).toBe("2.75\n");
  });

  test("stand for the sources that they are made of, both ways", () => {
    const { config } = ts.readConfigFile(join(ROOT, "tsconfig.core.json"), (file) => ts.sys.readFile(file)) as {
      config: unknown;
    };
    const { options } = ts.parseJsonConfigFileContent(config, ts.sys, ROOT);
    expect(complaints([consumer("typesAgree.ts")], { ...options, skipLibCheck: false, noEmit: true })).toEqual([]);
  }, 60_000);

  test("declare each value that the module exports, and no other", () => {
    const program = ts.createProgram([DECLARATIONS], STRICTEST);
    const checker = program.getTypeChecker();
    const module = checker.getSymbolAtLocation(program.getSourceFile(DECLARATIONS) as ts.SourceFile) as ts.Symbol;
    const declared = checker.getExportsOfModule(module).filter(({ flags }) => (flags & ts.SymbolFlags.Value) !== 0);
    const exported = node("-e", "import('./dist/library.mjs').then((m) => console.log(Object.keys(m).join()))");
    expect(declared.map(({ name }) => name).sort()).toEqual(exported.trim().split(",").sort());
  });

  test("hold no type of the inside that says anything goes", () => {
    const text = readFileSync(DECLARATIONS, "utf8");
    expect(text).not.toMatch(/: any\b|\bunknown\b|\bimport\b/);
  });
});

describe("a program that uses it, run by Node", () => {
  let report: Record<string, unknown> = {};
  beforeAll(() => {
    report = JSON.parse(node("--import", "tsx", "test/consumer/program.mts")) as Record<string, unknown>;
  });

  test("gets answers: 60 x 0.275 / 6 and 60 x 1.5 / 12 minutes, and two pulses below their header", () => {
    expect(report["answers"]).toEqual([2.75, 3, 7.5]);
  });

  test("gets each refusal with its code, its words and its argument, by the library's own errors", () => {
    expect(report["refused"]).toEqual([
      ["#VALUE!", "RUN_MINUTES: emitter_flow is blank or 0; it must be more than 0 (gal/h or L/h)", "emitter_flow"],
      ["#N/A", expect.stringContaining("nothing leached"), "measured"],
      ["passed", "#DIV/0!", null],
    ]);
  });

  test("gets what is known of a function", () => {
    expect(report).toMatchObject({
      optional: ["emitters_per_plant"],
      unit: "min",
      lastStep: 2.75,
      faults: ["volume_per_plant", "emitter_flow"],
      verdict: "low: looks like gal/min or L/min",
      version: (JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as { version: string }).version,
    });
  });
});

describe("docs/library.md", () => {
  const page = readFileSync(join(ROOT, "docs/library.md"), "utf8");
  const programs = [...page.matchAll(/```js\n([\s\S]*?)```/g)].map((match) => match[1] as string);

  test("has a program for each thing that the library does", () => {
    const { length } = programs;
    expect(length).toBeGreaterThanOrEqual(6);
    const named = programs.join("\n");
    for (const name of ["call", "catalogue", "faults", "FunctionError", "verdict", "VERSION", "working"]) {
      expect(named).toMatch(new RegExp(`import \\{[^}]*\\b${name}\\b`));
    }
  });

  test.each(programs.map((program, index) => [index + 1, program] as const))(
    "program %d prints what stands behind its lines",
    (_number, program) => {
      const promised = [...program.matchAll(/\/\/ (.*)$/gm)].map((match) => match[1] as string);
      expect(promised.length).toBeGreaterThan(0);
      expect(node("--input-type=module", "-e", program).trimEnd().split("\n")).toEqual(promised);
    },
  );
});
