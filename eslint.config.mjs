import js from "@eslint/js";
import { createNodeResolver, importX } from "eslint-plugin-import-x";
import globals from "globals";
import tseslint from "typescript-eslint";

/** Each layer and what it may not import from: imports go downwards only. */
const LAYERS = [
  {
    target: "./src/kernel",
    from: "./src",
    except: ["./kernel"],
    message: "The kernel stands alone.",
  },
  {
    target: "./src/functions/catalogue",
    from: "./src",
    except: ["./kernel", "./functions/catalogue"],
    message: "The catalogue builds on the kernel only.",
  },
  {
    target: "./src/workbooks",
    from: "./src",
    except: ["./workbooks"],
    message: "Workbooks are data: no host, no functions.",
  },
  {
    target: "./src/functions",
    from: "./src",
    except: ["./functions", "./kernel"],
    message: "The library knows no page.",
  },
  {
    target: "./src/sheet",
    from: ["./src/taskpane", "./src/kernel", "./src/functions/host.ts", "./src/functions/functions.ts"],
    message: "The sheet uses the library's front door.",
  },
  {
    target: "./src/taskpane",
    from: ["./src/sheet", "./src/kernel", "./src/functions/host.ts", "./src/functions/functions.ts"],
    message: "The pane uses the library's front door.",
  },
];

/** Names that one file alone may say: each host is behind its own adapter. */
const HOST_NAMES = [
  ["CustomFunctions", "src/functions/host.ts"],
  ["Excel", "src/taskpane/excel.ts"],
  ["Office", "src/taskpane/excel.ts"],
  ["o_spreadsheet", "src/sheet/engine.ts"],
  ["SpreadsheetApp", "src/functions/googleSheets/dates.ts"],
  ["Utilities", "src/functions/googleSheets/dates.ts"],
];

const forbidden = (allowedFile) =>
  HOST_NAMES.filter(([, file]) => file !== allowedFile).map(([name, file]) => ({
    name,
    message: `Only ${file} names the host's ${name}.`,
  }));

const PAGE_NAMES = ["window", "document", "localStorage", "navigator", "fetch", "setTimeout", "setInterval", "console"];
const IMPURE = [
  { object: "Math", property: "random", message: "Same input, same answer." },
  { object: "Date", property: "now", message: "The library has no clock." },
  { object: "performance", property: "now", message: "The library has no clock." },
];

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", "coverage/", "src/functions/functions.ts"] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    plugins: { "import-x": importX },
    settings: { "import-x/resolver-next": [createNodeResolver({ extensions: [".ts", ".js", ".json"] })] },
    rules: {
      "import-x/no-restricted-paths": ["error", { zones: LAYERS }],
      "import-x/no-cycle": "error",
      "no-restricted-globals": ["error", ...forbidden(null)],
      eqeqeq: "error",
      "max-depth": ["error", 4],
      complexity: ["error", 14],
      "@typescript-eslint/consistent-type-imports": ["error", { fixStyle: "inline-type-imports" }],
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
    },
  },
  {
    files: ["src/kernel/**", "src/functions/catalogue/**", "src/functions/{call,index,library}.ts", "src/workbooks/**"],
    rules: {
      "no-restricted-globals": ["error", ...forbidden(null), ...PAGE_NAMES],
      "no-restricted-properties": ["error", ...IMPURE],
      "no-restricted-syntax": [
        "error",
        { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: "The library has no clock." },
      ],
    },
  },
  ...HOST_NAMES.map(([, file]) => ({
    files: [file],
    rules: { "no-restricted-globals": ["error", ...forbidden(file)] },
  })),
  {
    files: ["*.js", "tools/**", "test/**/*.mjs"],
    languageOptions: { globals: globals.node },
  },
  {
    files: ["src/sheet/serviceWorker.js"],
    languageOptions: { globals: globals.serviceworker },
  },
  {
    // Parts of it run inside the pages that it takes pictures of.
    files: ["tools/pictures.mjs"],
    languageOptions: { globals: { ...globals.node, ...globals.browser } },
  },
  {
    files: ["*.js", "**/*.cjs"],
    rules: { "@typescript-eslint/no-require-imports": "off" },
    languageOptions: { sourceType: "commonjs", globals: globals.node },
  },
);
