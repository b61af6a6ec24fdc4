import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { catalogue, NAMESPACE } from "../../src/functions";
import { openOfficialHost } from "../rig/officialRuntime";

const ROOT = join(__dirname, "../..");
const DIST = join(ROOT, "dist");

function filesBelow(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    return statSync(path).isDirectory() ? filesBelow(path) : [path];
  });
}

const files = filesBelow(DIST);
const text = (name: string): string => readFileSync(join(DIST, name), "utf8");

interface HostParameter {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly dimensionality: string;
  readonly optional?: boolean;
}

interface HostFunction {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly HostParameter[];
  readonly result: { readonly dimensionality?: string };
}

const { functions } = JSON.parse(text("functions.json")) as { functions: readonly HostFunction[] };

describe("the metadata that the official tool made", () => {
  test("names every function of the catalogue, in its order", () => {
    expect(functions.map(({ id }) => id)).toEqual(catalogue.map(({ name }) => name));
    expect(functions.map(({ name }) => name)).toEqual(catalogue.map(({ name }) => name));
  });

  test.each(catalogue.map((entry, index) => [entry.name, entry, functions[index] as HostFunction] as const))(
    "%s has the catalogue's arguments, texts and shape",
    (name, entry, described) => {
      expect(described.description).toBe(entry.summary);
      expect(described.parameters.map((parameter) => parameter.name)).toEqual(entry.params.map((param) => param.name));
      expect(described.parameters.map(({ optional }) => optional === true)).toEqual(
        entry.params.map(({ optional }) => optional),
      );
      // Blocks of any: a range where one value belongs must reach us, to be refused in words.
      for (const { type, dimensionality } of described.parameters) {
        expect([type, dimensionality]).toEqual(["any", "matrix"]);
      }
      entry.params.forEach(({ about }, at) => expect(described.parameters[at]?.description).toContain(about));
      expect(described.result.dimensionality === "matrix").toBe(entry.result.shape === "table");
      expect(described.helpUrl).toMatch(new RegExp(`^https://.+/reference/${name}\\.html$`));
    },
  );

  test("every id is associated by the built functions.js, and no other", () => {
    const host = openOfficialHost(join(DIST, "functions.js"));
    try {
      expect(host.ids().sort()).toEqual(functions.map(({ id }) => id).sort());
    } finally {
      host.close();
    }
  });
});

describe("a production build", () => {
  const ours = files.filter((path) => !relative(DIST, path).startsWith("vendor"));

  test("holds no address of this computer", () => {
    const found = files
      .filter((path) => /\.(js|mjs|json|xml|html|css)$/.test(path) && !path.includes("vendor"))
      .filter((path) => readFileSync(path, "utf8").includes("localhost"));
    expect(found.map((path) => relative(DIST, path))).toEqual([]);
  });

  test("holds no source of the host's own library", () => {
    const marks = ["OSFWebView", "_richApiNativeBridge", "Microsoft.Office.WebExtension"];
    const found = files
      .filter((path) => /\.(js|mjs)$/.test(path))
      .filter((path) => marks.some((mark) => readFileSync(path, "utf8").includes(mark)));
    expect(found.map((path) => relative(DIST, path))).toEqual([]);
  });

  test("fetches from elsewhere nothing but the host's library, in the add-in's page", () => {
    const references = ours
      .filter((path) => /\.(html|css)$/.test(path))
      .flatMap((path) =>
        [...readFileSync(path, "utf8").matchAll(/(?:src|href)=["']?(https?:[^"' >]+)|url\((https?:[^)]+)\)/g)].map(
          (match) => `${relative(DIST, path)}: ${match[1] ?? match[2]}`,
        ),
      );
    expect(references).toEqual(["taskpane.html: https://appsforoffice.microsoft.com/lib/1/hosted/office.js"]);
    const asking = ours
      .filter((path) => /\.(js|mjs)$/.test(path))
      .filter((path) => /XMLHttpRequest|sendBeacon|WebSocket|importScripts/.test(readFileSync(path, "utf8")));
    expect(asking).toEqual([]);
  });

  test("keeps the sheet's engine as files of its own, unmodified", () => {
    const engine = require.resolve("@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js");
    expect(readFileSync(join(DIST, "vendor/o_spreadsheet.min.iife.js")).equals(readFileSync(engine))).toBe(true);
    expect(text("sheet.js")).not.toContain("LGPL");
  });
});

describe("the manifest", () => {
  const manifest = text("manifest.xml");
  const attribute = (pattern: RegExp): string[] => [...manifest.matchAll(pattern)].map((match) => match[1] as string);

  test("every address is https and below one place", () => {
    const addresses = attribute(/DefaultValue="(https?:[^"]+)"/g);
    expect(addresses.length).toBeGreaterThan(5);
    expect(new Set(addresses.map((address) => new URL(address).origin)).size).toBe(1);
    expect(addresses.every((address) => address.startsWith("https://"))).toBe(true);
  });

  test("every file that it names is in dist/", () => {
    const paths = attribute(/DefaultValue="https:\/\/[^/"]+\/([^"]+)"/g);
    const missing = paths.filter((path) => !files.includes(join(DIST, path)));
    expect(missing).toEqual([]);
  });

  test("every resource id resolves, and the page is one and the same everywhere", () => {
    const used = attribute(/resid="([^"]+)"/g);
    const defined = attribute(/<bt:(?:Image|Url|String) id="([^"]+)"/g);
    expect(used.filter((id) => !defined.includes(id))).toEqual([]);
    expect(defined.filter((id) => !used.includes(id))).toEqual([]);
    const pages = attribute(/<(?:Runtime|SourceLocation) resid="([^"]+)"/g).filter(
      (id) => !id.startsWith("Functions."),
    );
    expect(new Set(pages)).toEqual(new Set(["Taskpane.Url"]));
  });

  test("its namespace is the one that the library says", () => {
    expect(attribute(/id="Functions.Namespace" DefaultValue="([^"]+)"/g)).toEqual([NAMESPACE]);
  });

  test.each([16, 32, 64, 80])("the icon of %d pixels is that size", (size) => {
    const picture = readFileSync(join(DIST, `icons/icon-${size}.png`));
    expect([picture.readUInt32BE(16), picture.readUInt32BE(20)]).toEqual([size, size]);
  });
});

describe("generated files", () => {
  test("are current with the catalogue", () => {
    const output = execFileSync(process.execPath, [require.resolve("tsx/cli"), "tools/generate.ts", "--check"], {
      cwd: ROOT,
      encoding: "utf8",
    });
    expect(output).toBe("src/functions/functions.ts is current\ndocs/FUNCTIONS.md is current\n");
  });
});

describe("dist/library.mjs", () => {
  test("gives FAO-56 Example 20's 5.0 mm from a plain Node program", () => {
    const program = `import('./dist/library.mjs').then(m=>console.log(m.call('ET0_HARGREAVES',[26.6,14.8,45.72,42200,'metric'])))`;
    const output = execFileSync(process.execPath, ["-e", program], { cwd: ROOT, encoding: "utf8" });
    expect(Math.abs(Number(output) - 5)).toBeLessThan(0.051);
  });

  test("depends on no other module", () => {
    expect(text("library.mjs")).not.toMatch(/\bimport\s*[("'{*]|\brequire\(/);
  });
});
