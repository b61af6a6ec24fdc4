/** Reads manifests as JSON from the standard input and writes what each rule found, in one process for all. */
import { readFileSync } from "node:fs";
import { validate } from "../../tools/manifest/rules.mjs";

const { folder, version, manifests } = JSON.parse(readFileSync(0, "utf8"));
const results = manifests.map(({ text, allowLocal }) => validate(folder, text, { version, allowLocal }));
process.stdout.write(JSON.stringify(results));
