/**
 * `npm run validate`: reads dist/manifest.xml and what it points to, without a network.
 * `-- --folder <dist>` reads another folder, `-- --local` allows localhost.
 */
import { existsSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import { validate } from "./manifest/rules.mjs";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const { values } = parseArgs({
  options: { folder: { type: "string", default: join(ROOT, "dist") }, local: { type: "boolean", default: false } },
});
const folder = resolve(values.folder);
const file = join(folder, "manifest.xml");

if (!existsSync(file)) {
  console.error("there is no manifest.xml in that folder: run `npm run build` first");
  process.exitCode = 1;
} else {
  const { version } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8"));
  const results = validate(folder, readFileSync(file, "utf8"), { version, allowLocal: values.local });
  for (const { rule, wrong } of results) {
    console.log(`${wrong.length === 0 ? "ok   " : "WRONG"} ${rule}`);
    for (const sentence of wrong) console.log(`      ${sentence}`);
  }
  const failed = results.filter(({ wrong }) => wrong.length > 0).length;
  console.log(`${results.length - failed} rules hold, ${failed} do not`);
  if (failed > 0) process.exitCode = 1;
}
