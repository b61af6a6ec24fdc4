/** `npm run diagnosis`: writes docs/diagnosis.md. */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { diagnosed, diagnosisPage, recognitionOf } from "../test/rig/recognition";

writeFileSync(join(__dirname, "../docs/diagnosis.md"), diagnosisPage(diagnosed.map(recognitionOf)));
console.log("wrote docs/diagnosis.md");
