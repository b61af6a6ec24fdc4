const path = require("node:path");
const { Compilation } = require("webpack");
const CopyPlugin = require("copy-webpack-plugin");
const CustomFunctionsMetadataPlugin = require("custom-functions-metadata-plugin");
const HtmlPlugin = require("html-webpack-plugin");

/** The address that stands in the sources; a build puts the place where the files will be served in its stead. */
const SOURCE_URL = "https://localhost:3000/";
/** Reserved for examples: a build without --base-url works from any folder, but its manifest must be given a real one. */
const DEFAULT_BASE_URL = "https://canyard.example/";

const DIST = path.resolve(__dirname, "dist");

/** Puts the base address into every text that holds the one of the sources. */
class BaseUrlPlugin {
  constructor(baseUrl) {
    this.baseUrl = baseUrl;
  }

  apply(compiler) {
    const { RawSource } = compiler.webpack.sources;
    compiler.hooks.thisCompilation.tap("BaseUrlPlugin", (compilation) => {
      const stage = Compilation.PROCESS_ASSETS_STAGE_REPORT;
      compilation.hooks.processAssets.tap({ name: "BaseUrlPlugin", stage }, (assets) => {
        for (const name of Object.keys(assets).filter((asset) => /\.(json|xml|html)$/.test(asset))) {
          const text = assets[name].source().toString();
          if (text.includes(SOURCE_URL)) {
            compilation.updateAsset(name, new RawSource(text.split(SOURCE_URL).join(this.baseUrl)));
          }
        }
      });
    });
  }
}

const packageFolder = (name) => path.join(__dirname, "node_modules", name);

/** The sheet engine and what it needs: unmodified, each file by itself, so that it can be replaced. */
const vendorFiles = [
  { from: packageFolder("@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js"), to: "vendor/o_spreadsheet.min.iife.js" },
  { from: packageFolder("@odoo/o-spreadsheet/dist/o_spreadsheet.xml"), to: "vendor/o_spreadsheet.xml" },
  { from: packageFolder("@odoo/o-spreadsheet/dist/o_spreadsheet.css"), to: "vendor/o_spreadsheet.css" },
  { from: packageFolder("@odoo/o-spreadsheet/LICENSE"), to: "vendor/o_spreadsheet.LICENSE.txt", toType: "file" },
  { from: packageFolder("@odoo/owl/dist/owl.iife.min.js"), to: "vendor/owl.iife.min.js" },
  { from: packageFolder("chart.js/dist/chart.umd.min.js"), to: "vendor/chart.umd.min.js" },
  { from: packageFolder("chart.js/LICENSE.md"), to: "vendor/chart.LICENSE.md" },
  { from: packageFolder("bootstrap/dist/css/bootstrap.min.css"), to: "vendor/bootstrap.min.css" },
  { from: packageFolder("bootstrap/LICENSE"), to: "vendor/bootstrap.LICENSE.txt", toType: "file" },
  { from: packageFolder("font-awesome/css/font-awesome.min.css"), to: "vendor/font-awesome/css/" },
  { from: packageFolder("font-awesome/fonts"), to: "vendor/font-awesome/fonts/" },
].map((pattern) => ({ ...pattern, info: { minimized: true } }));

const typescriptFor = (compilerOptions) => ({
  test: /\.tsx?$/,
  exclude: /node_modules/,
  use: {
    loader: "ts-loader",
    options: { transpileOnly: true, compilerOptions: { noEmit: false, ...compilerOptions } },
  },
});
const typescript = typescriptFor({});

const common = {
  mode: "production",
  devtool: false,
  resolve: { extensions: [".ts", ".tsx", ".js"] },
  performance: { hints: false },
};

const functionsBundle = {
  ...common,
  name: "functions",
  target: ["web", "es2020"],
  entry: { functions: "./src/functions/entry.ts" },
  output: { path: DIST, filename: "[name].js", library: { name: "canyard", type: "var" } },
  module: { rules: [typescript] },
};

const library = {
  ...common,
  name: "library",
  target: "es2020",
  entry: { library: "./src/functions/library.ts" },
  experiments: { outputModule: true },
  output: { path: DIST, filename: "[name].mjs", library: { type: "module" }, module: true },
  module: { rules: [typescript] },
};

/**
 * For a host without modules and without the newest syntax; tools/googleSheets puts the functions before it. Left
 * readable, since people paste it into an editor: one long line would choke it, and nobody could see what they paste.
 */
const googleSheets = {
  ...common,
  name: "google-sheets",
  target: ["web", "es2018"],
  entry: { library: "./src/functions/googleSheets/index.ts" },
  output: {
    path: path.join(DIST, "google-sheets"),
    filename: "[name].js",
    library: { name: "CanyardLibrary_", type: "var" },
  },
  optimization: { minimize: false },
  module: { rules: [typescriptFor({ target: "ES2018" })] },
};

const page = (filename, template, chunk, options = {}) =>
  new HtmlPlugin({
    filename,
    template,
    chunks: [chunk],
    scriptLoading: "defer",
    inject: "head",
    minify: false,
    ...options,
  });

const pages = (baseUrl) => ({
  ...common,
  name: "pages",
  target: ["web", "es2020"],
  entry: { pane: "./src/taskpane/start.tsx", sheet: "./src/sheet/page.ts" },
  // What is fetched later lies beside the page, in whatever folder that is.
  output: { path: DIST, filename: "[name].js", publicPath: "" },
  module: { rules: [typescript] },
  plugins: [
    page("taskpane.html", "./src/taskpane/pane.html", "pane", { besideExcel: true }),
    page("help.html", "./src/taskpane/pane.html", "pane", { besideExcel: false }),
    page("index.html", "./src/sheet/index.html", "sheet"),
    new CopyPlugin({
      patterns: [
        { from: "manifest/manifest.xml", to: "manifest.xml" },
        { from: "manifest/icons/*.png", to: "icons/[name][ext]" },
        { from: "src/taskpane/pane.css", to: "pane.css" },
        { from: "src/sheet/sheet.css", to: "sheet.css" },
        ...vendorFiles,
      ],
    }),
    new BaseUrlPlugin(baseUrl),
  ],
});

module.exports = (env = {}) => {
  const baseUrl = env.baseUrl ?? DEFAULT_BASE_URL;
  return [
    {
      ...functionsBundle,
      plugins: [
        new CustomFunctionsMetadataPlugin({ input: "./src/functions/functions.ts", output: "functions.json" }),
        new BaseUrlPlugin(baseUrl),
      ],
    },
    library,
    googleSheets,
    pages(baseUrl),
  ];
};
