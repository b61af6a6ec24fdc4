/** Since which version of its library Excel knows a member, as @types/office-js tells it. */
import { readFileSync } from "node:fs";
import { join } from "node:path";

type Members = ReadonlyMap<string, number>;
let known: ReadonlyMap<string, Members> | null = null;

/** 1.9 as 9, 1.10 as 10; 0 for what the types say nothing of. */
export function sinceVersion(kind: string, member: string): number {
  known ??= read();
  return known.get(kind)?.get(member) ?? 0;
}

/** "1.10" as 10. */
export function minorOf(version: string): number {
  return Number(version.split(".")[1]);
}

function read(): ReadonlyMap<string, Members> {
  const file = join(require.resolve("@types/office-js/package.json"), "../index.d.ts");
  const text = readFileSync(file, "utf8");
  const from = text.indexOf("\ndeclare namespace Excel {");
  const excel = text.slice(from, text.indexOf("\n}\n", from));
  const classes = excel.matchAll(/\n {4}class (\w+) extends [^{]+\{\n([\s\S]*?)\n {4}\}\n/g);
  return new Map([...classes].map(([, name = "", body = ""]) => [name, membersOf(body)]));
}

function membersOf(body: string): Members {
  const members = new Map<string, number>();
  for (const [, comment = "", name = ""] of body.matchAll(/\/\*\*([\s\S]*?)\*\/\s*(?:readonly )?(\w+)\??[:(]/g)) {
    const version = /\[Api set: ExcelApi 1\.(\d+)/.exec(comment)?.[1];
    // Of several forms of a method the oldest counts.
    if (version !== undefined) members.set(name, Math.min(Number(version), members.get(name) ?? Infinity));
  }
  return members;
}
