import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import ts from "typescript";

const ROOT = join(__dirname, "..", "..");
const FIXTURE = join(__dirname, "mustNotCompile.ts");
const DIRECTIVE = "@ts-expect-error";

/** The options under which the lower layers are compiled. */
function coreOptions(): ts.CompilerOptions {
  const path = join(ROOT, "tsconfig.core.json");
  const { config } = ts.readConfigFile(path, (file) => ts.sys.readFile(file)) as { config: unknown };
  return { ...ts.parseJsonConfigFileContent(config, ts.sys, dirname(path)).options, noEmit: true };
}

/** Compiles the fixture with this text in its place; gives what the compiler says of it, line by line. */
function complaints(text: string): { line: number; says: string }[] {
  const options = coreOptions();
  const host = ts.createCompilerHost(options);
  const read = host.readFile.bind(host);
  const isFixture = (file: string): boolean => file.endsWith("mustNotCompile.ts");
  host.readFile = (file) => (isFixture(file) ? text : read(file));
  host.getSourceFile = (file, version) => {
    const source = host.readFile(file);
    return source === undefined ? undefined : ts.createSourceFile(file, source, version, true);
  };
  const program = ts.createProgram([FIXTURE], options, host);
  const source = program.getSourceFile(FIXTURE);
  if (source === undefined) throw new Error(`the compiler did not read ${FIXTURE}`);
  return ts.getPreEmitDiagnostics(program, source).map(({ start = 0, messageText }) => ({
    line: source.getLineAndCharacterOfPosition(start).line,
    says: ts.flattenDiagnosticMessageText(messageText, " "),
  }));
}

const fixture = readFileSync(FIXTURE, "utf8");
const lines = fixture.split("\n");
const directives = lines.flatMap((line, index) =>
  line.includes(DIRECTIVE) ? [{ index, what: line.split(DIRECTIVE)[1]?.trim() }] : [],
);

describe("what must not compile", () => {
  test("does not, and all else does: no complaint is left beside the expected ones", () => {
    expect(complaints(fixture)).toEqual([]);
  });

  describe("shows when nobody expects it", () => {
    const unexpected = complaints(lines.map((line) => line.replace(DIRECTIVE, "expected to fail:")).join("\n"));

    test.each(directives)("$what", ({ index }) => {
      expect(unexpected.map(({ line }) => line)).toContain(index + 1);
    });

    test("and nothing else shows", () => {
      const expected = new Set(directives.map(({ index }) => index + 1));
      expect(unexpected.filter(({ line }) => !expected.has(line))).toEqual([]);
    });
  });

  test("an expectation above a sound line is itself a complaint", () => {
    const soundLine = lines.findIndex((line) => line.startsWith("export const sound"));
    const text = [
      ...lines.slice(0, soundLine),
      `// ${DIRECTIVE} nothing is wrong here`,
      ...lines.slice(soundLine),
    ].join("\n");
    expect(complaints(text)).toMatchObject([{ line: soundLine, says: expect.stringContaining("Unused") }]);
  });
});
