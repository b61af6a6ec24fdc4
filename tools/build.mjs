/** `npm run build`: makes dist/ from clean. `-- --base-url https://example.org/canyard/` names the place of its files. */
import { rmSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parseArgs } from "node:util";
import webpack from "webpack";
import configuration from "../webpack.config.js";

const DIST = fileURLToPath(new URL("../dist", import.meta.url));

/** The address with a slash at its end; a host loads an add-in from https only. */
function baseUrlOf(text) {
  if (text === undefined) return undefined;
  const address = URL.canParse(text) ? new URL(text) : null;
  if (address?.protocol !== "https:") {
    throw new Error(`--base-url is ${text}; it must be an https address, as https://example.org/canyard/`);
  }
  return address.href.endsWith("/") ? address.href : `${address.href}/`;
}

export async function build({ baseUrl } = {}) {
  rmSync(DIST, { recursive: true, force: true });
  const compiler = webpack(configuration({ baseUrl: baseUrlOf(baseUrl) }));
  const stats = await new Promise((resolve, reject) => {
    compiler.run((error, result) => (error ? reject(error) : resolve(result)));
  });
  await new Promise((resolve) => compiler.close(resolve));
  if (stats.hasErrors()) throw new Error(stats.toString({ all: false, errors: true, errorDetails: true }));
  return stats;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    const { values } = parseArgs({ options: { "base-url": { type: "string" } } });
    const stats = await build({ baseUrl: values["base-url"] });
    console.log(stats.toString({ all: false, warnings: true, timings: true }));
    console.log("dist/ is built");
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
