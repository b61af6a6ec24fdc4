/**
 * Asks the compiler about the mutants that the tests let live. It runs on every change, so that one it refuses does not
 * live; only those are asked about, since each takes it a part of a second.
 */
import { readFileSync, statSync } from "node:fs";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const ROOT = fileURLToPath(new URL("../..", import.meta.url));
const LIVING = ["Survived", "NoCoverage"];

/** The project in the compiler, in which one file at a time stands with another text. */
function openProject() {
  const { config } = ts.readConfigFile(`${ROOT}tsconfig.core.json`, ts.sys.readFile);
  const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, ROOT);
  const other = { file: "", text: "", version: 0 };
  const textOf = (file) => (file === other.file ? other.text : readFileSync(file, "utf8"));
  const service = ts.createLanguageService({
    getScriptFileNames: () => fileNames,
    getScriptVersion: (file) => (file === other.file ? `other ${other.version}` : "0"),
    getScriptSnapshot: (file) =>
      statSync(file, { throwIfNoEntry: false })?.isFile() ? ts.ScriptSnapshot.fromString(textOf(file)) : undefined,
    getCurrentDirectory: () => ROOT,
    getCompilationSettings: () => ({ ...options, noEmit: true, incremental: false, composite: false }),
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
    readDirectory: ts.sys.readDirectory,
    directoryExists: ts.sys.directoryExists,
    getDirectories: ts.sys.getDirectories,
  });
  return (file, text) => {
    Object.assign(other, { file, text, version: other.version + 1 });
    return [...service.getSyntacticDiagnostics(file), ...service.getSemanticDiagnostics(file)].length > 0;
  };
}

function placeIn(source, { line, column }) {
  const lines = source.split("\n");
  return lines.slice(0, line - 1).reduce((sum, each) => sum + each.length + 1, 0) + column - 1;
}

function mutated(source, { location: { start, end }, replacement }) {
  return source.slice(0, placeIn(source, start)) + replacement + source.slice(placeIn(source, end));
}

/** The reports, in which what lives and does not compile is marked as refused. */
export function askedCompiler(reports) {
  const isRefused = openProject();
  return reports.map((report) => ({
    ...report,
    files: Object.fromEntries(
      Object.entries(report.files).map(([fileName, file]) => {
        const path = `${ROOT}${fileName}`;
        if (isRefused(path, file.source)) throw new Error(`${fileName} does not compile as it was when it was run`);
        const mutants = file.mutants.map((mutant) =>
          LIVING.includes(mutant.status) && isRefused(path, mutated(file.source, mutant))
            ? { ...mutant, status: "CompileError" }
            : mutant,
        );
        return [fileName, { ...file, mutants }];
      }),
    ),
  }));
}
