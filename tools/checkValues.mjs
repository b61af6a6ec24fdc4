/** `npm run check-values`: runs the tests and writes docs/check-values.md from those that passed. */
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";

const jest = createRequire(import.meta.url).resolve("jest/bin/jest");
const env = { ...process.env, CANYARD_CHECK_VALUES: "write" };
const { status } = spawnSync(process.execPath, [jest], { env, stdio: "inherit" });
process.exitCode = status ?? 1;
