/** Lints texts as if they stood in files of the project: pairs of path and code in, the rules that each breaks out. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { ESLint } from "eslint";

const root = fileURLToPath(new URL("../..", import.meta.url));
const eslint = new ESLint({ cwd: root });

const broken = [];
for (const [path, code] of JSON.parse(readFileSync(0, "utf8"))) {
  const [result] = await eslint.lintText(code, { filePath: root + path });
  broken.push(result.messages.map(({ ruleId, message }) => ruleId ?? message));
}
process.stdout.write(JSON.stringify(broken));
