/** The built site with one page more, the engine alone, in a folder of its own. */
import { cpSync, existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import webpack, { type Configuration } from "webpack";
import { render } from "../../src/sheet/render";
import type { Workbook } from "../../src/workbooks/model";
import { startServer, type Served } from "./pageTools";

const ROOT = join(__dirname, "../..");
const DIST = join(ROOT, "dist");
const SOURCE = join(__dirname, "plain");

export const PLAIN_PAGE = "plain.html";

/** The same loader and mode as the pages of the build; the finished data of the sheet are put into the script. */
function configuration(folder: string, workbook: Workbook): Configuration {
  const options = { transpileOnly: true, compilerOptions: { noEmit: false } };
  return {
    mode: "production",
    devtool: false,
    context: ROOT,
    target: ["web", "es2020"],
    entry: { plain: join(SOURCE, "page.ts") },
    output: { path: folder, filename: "[name].js" },
    resolve: { extensions: [".ts", ".js"] },
    module: { rules: [{ test: /\.ts$/, use: { loader: "ts-loader", options } }] },
    plugins: [new webpack.DefinePlugin({ PLAIN_DATA: JSON.stringify(render(workbook)) })],
  };
}

function bundled(wanted: Configuration): Promise<void> {
  return new Promise((resolve, reject) => {
    webpack(wanted, (error, stats) => {
      if (error) reject(error);
      else if (stats?.hasErrors()) reject(new Error(stats.toString({ all: false, errors: true })));
      else resolve();
    });
  });
}

export async function openSite(plain: Workbook): Promise<Served> {
  if (!existsSync(join(DIST, "index.html")))
    throw new Error("There is no dist/index.html yet: run `npm run build` first.");
  const folder = mkdtempSync(join(tmpdir(), "canyard-bench-"));
  cpSync(DIST, folder, { recursive: true });
  cpSync(join(SOURCE, "page.html"), join(folder, PLAIN_PAGE));
  await bundled(configuration(folder, plain));
  const server = await startServer(folder);
  return {
    url: server.url,
    async close() {
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
