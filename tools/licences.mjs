/** LICENSES.txt: every package of which a built file holds a part, with the text of its licence. */
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const PACKAGES = join(ROOT, "node_modules");

/** Served as files of their own, unmodified: see webpack.config.js. */
const SERVED_ALONE = ["@odoo/o-spreadsheet", "@odoo/owl", "bootstrap", "chart.js", "font-awesome"];

/** The packages whose modules webpack put into a bundle. */
export function bundledPackages(stats) {
  const options = {
    all: false,
    modules: true,
    nestedModules: true,
    modulesSpace: Infinity,
    nestedModulesSpace: Infinity,
  };
  const names = stats.toJson({ all: false, children: true, ...options }).children?.flatMap(modulesOf) ?? [];
  const found = names.flatMap((name) => /node_modules[\\/]((?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/.exec(name)?.[1] ?? []);
  return [...new Set(found.map((name) => name.replaceAll("\\", "/")))].sort();
}

function modulesOf({ modules = [], name }) {
  return [name ?? "", ...modules.flatMap((module) => [module.name ?? "", ...modulesOf(module)])];
}

function licenceOf(name) {
  const folder = join(PACKAGES, name);
  const { version, license, homepage } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const file = readdirSync(folder).find((each) => /^(licen[cs]e|copying)/i.test(each));
  const text = file && existsSync(join(folder, file)) ? readFileSync(join(folder, file), "utf8").trim() : "";
  return { name, version, license: license ?? "see the text", homepage: homepage ?? "", text };
}

function section({ name, version, license, homepage, text }, where) {
  const head = [`${name} ${version}`, `Licence: ${license}`, homepage, where].filter(Boolean).join("\n");
  return `${"=".repeat(72)}\n${head}\n\n${text || "(the package holds no text of its licence; see its page)"}\n`;
}

export function writeLicences(folder, stats) {
  const own = readFileSync(join(ROOT, "LICENSE"), "utf8").trim();
  const bundled = bundledPackages(stats).map((name) => section(licenceOf(name), "Built into our own scripts."));
  const alone = SERVED_ALONE.map((name) =>
    section(licenceOf(name), "Unmodified, in files of their own under vendor/, which can be replaced."),
  );
  writeFileSync(join(folder, "LICENSES.txt"), [`Canyard\n\n${own}\n`, ...bundled, ...alone].join("\n"));
}
