/** Writes the reference site, dist/reference: a page a function, and the index. Run by the build. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { referenceFiles } from "./reference/site";

const FOLDER = join(__dirname, "../dist/reference");

mkdirSync(FOLDER, { recursive: true });
for (const [name, text] of Object.entries(referenceFiles())) writeFileSync(join(FOLDER, name), text);
