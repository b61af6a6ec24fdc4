/** What docs/security.md promises, read off the built files. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative, sep } from "node:path";

const ROOT = join(__dirname, "../..");
const DIST = join(ROOT, "dist");

function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });
}

const nameOf = (path: string): string => relative(DIST, path).split(sep).join("/");
const ours = filesBelow(DIST).filter((path) => !nameOf(path).startsWith("vendor/"));
const read = (path: string): string => readFileSync(path, "utf8");
const scripts = ours.filter((path) => /\.(js|mjs|gs)$/.test(path));
const pages = ours.filter((path) => path.endsWith(".html"));

/** The policy that a page carries, directive by directive. */
function policyOf(path: string): Readonly<Record<string, string>> {
  const [, content] = /http-equiv=["']?Content-Security-Policy["']?\s+content="([^"]+)"/.exec(read(path)) ?? [];
  const directives = (content ?? "").split(";").map((each) => each.trim().split(" "));
  return Object.fromEntries(directives.map(([name, ...values]) => [name, values.join(" ")]));
}

test("no script of ours makes code out of text", () => {
  expect(scripts.length).toBeGreaterThan(4);
  for (const path of scripts) {
    expect([nameOf(path), /\beval\s*\(|new Function\b|\bFunction\s*\(\s*["'`]/.exec(read(path))?.[0]]).toEqual([
      nameOf(path),
      undefined,
    ]);
  }
});

test("no page holds a script of its own text, or an attribute that runs one", () => {
  for (const path of pages) {
    const inline = [...read(path).matchAll(/<script(?![^>]*\bsrc=)[^>]*>|\son[a-z]+=/g)].map(([found]) => found);
    expect([nameOf(path), inline]).toEqual([nameOf(path), []]);
  }
});

describe("every page carries a policy that starts from nothing", () => {
  test.each(pages.map((path) => [nameOf(path), path] as const))("%s", (name, path) => {
    const policy = policyOf(path);
    expect(policy["default-src"]).toBe("'none'");
    const text = Object.values(policy).join(" ");
    expect(text.includes("unsafe-eval")).toBe(name === "index.html");
    expect(policy["script-src"] ?? "").not.toContain("unsafe-inline");
    const outside = text.match(/https?:[^\s;]+/g) ?? [];
    expect(outside).toEqual(name === "taskpane.html" ? ["https://appsforoffice.microsoft.com"] : []);
    if (name.startsWith("reference/")) expect(policy["script-src"]).toBeUndefined();
  });
});

test("nothing but the workbook, whether the help is open and which units it shows goes into the browser's storage", () => {
  const keys = scripts.flatMap((path) =>
    [...read(path).matchAll(/["'`](canyard\.[a-z.-]+)["'`]/g)].map(([, key]) => key),
  );
  expect([...new Set(keys)].sort()).toEqual([
    "canyard.help",
    "canyard.pane.units",
    "canyard.workbook",
    "canyard.workbook.before",
    "canyard.workbook.last-good",
    "canyard.workbook.set-aside",
  ]);
  for (const path of scripts) expect(read(path)).not.toMatch(/document\.cookie|indexedDB|sessionStorage/);
});

describe("what is built in is named with its licence", () => {
  const licences = read(join(DIST, "LICENSES.txt"));

  test.each([
    ["preact", "MIT"],
    ["minisearch", "MIT"],
    ["@odoo/o-spreadsheet", "LGPL-3.0-or-later"],
    ["@odoo/owl", "LGPL-3.0-only"],
    ["chart.js", "MIT"],
    ["bootstrap", "MIT"],
    ["font-awesome", "OFL-1.1"],
  ])("%s: %s", (name, licence) => {
    const start = licences.indexOf(`\n${name} `);
    expect(start).toBeGreaterThan(0);
    expect(licences.slice(start, start + 120)).toContain(licence);
  });

  test("each is one that may be given on", () => {
    const kinds = [...licences.matchAll(/^Licence: (.+)$/gm)].map(([, kind]) => kind);
    expect(kinds.length).toBeGreaterThan(6);
    for (const kind of kinds)
      expect(kind).toMatch(/^\(?(MIT|ISC|BSD-[23]-Clause|Apache-2\.0|LGPL-3\.0-(or-later|only)|OFL-1\.1)/);
  });
});

test("no package is fetched from anywhere but the registry that npm is set to, nor by a floating version", () => {
  const { devDependencies, dependencies } = JSON.parse(read(join(ROOT, "package.json"))) as {
    devDependencies: Record<string, string>;
    dependencies?: Record<string, string>;
  };
  for (const version of Object.values({ ...devDependencies, ...dependencies }))
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  expect(read(join(ROOT, "package-lock.json"))).not.toMatch(/"resolved": "(git|http:|file:)/);
});
