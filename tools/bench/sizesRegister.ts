/** Parsing and registering the functions in the official runtime, against as many functions that do nothing. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openOfficialHost, type OfficialHost } from "../../test/rig/officialRuntime";
import { FUNCTIONS_FILE } from "./engineFunctions";
import { compareTimed, type Comparison } from "./measure";

const METADATA_FILE = join(__dirname, "../../dist/functions.json");

interface Metadata {
  readonly functions: readonly { readonly id: string; readonly parameters: readonly { readonly name: string }[] }[];
}

/** For the same metadata: the same ids with the same arguments, and nothing behind them. */
function emptyFunctions({ functions }: Metadata): string {
  return functions
    .map(
      ({ id, parameters }) => `CustomFunctions.associate("${id}",function(${parameters.map(({ name }) => name)}){});`,
    )
    .join("");
}

function withHost<T>(file: string, work: (host: OfficialHost) => T): T {
  const host = openOfficialHost(file);
  try {
    return work(host);
  } finally {
    host.close();
  }
}

/** Each time a new window with the runtime in it, and a text that was never compiled before: that is the first start. */
export async function compareRegistering(rounds: number): Promise<Comparison> {
  const folder = mkdtempSync(join(tmpdir(), "canyard-bench-"));
  const metadata = JSON.parse(readFileSync(METADATA_FILE, "utf8")) as Metadata;
  const wanted = metadata.functions.map(({ id }) => id).sort();
  const nothing = join(folder, "nothing.js");
  writeFileSync(nothing, "");
  let visits = 0;
  const timed = (text: string) => async (): Promise<number> => {
    const file = join(folder, `functions${(visits += 1)}.js`);
    writeFileSync(file, `${text}\n// ${visits}`);
    return withHost(nothing, (host) => {
      const start = performance.now();
      host.load(file);
      const time = performance.now() - start;
      if (host.ids().sort().join() !== wanted.join()) throw new Error("not every function is registered");
      return time;
    });
  };
  try {
    return await compareTimed(timed(readFileSync(FUNCTIONS_FILE, "utf8")), timed(emptyFunctions(metadata)), rounds, 3);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
