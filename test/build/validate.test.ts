/** The manifest that a build makes holds every rule, and each rule refuses a manifest that breaks it. */
import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");
const DIST = join(ROOT, "dist");
const { version } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as { version: string };
const GOOD = readFileSync(join(DIST, "manifest.xml"), "utf8");

interface Result {
  readonly rule: string;
  readonly wrong: readonly string[];
}

function validated(folder: string, manifests: readonly { text: string; allowLocal?: boolean }[]): Result[][] {
  const { stdout, stderr, status } = spawnSync(process.execPath, [join(ROOT, "test/rig/validateManifests.mjs")], {
    input: JSON.stringify({ folder, version, manifests }),
    encoding: "utf8",
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Result[][];
}

/** A rule, what is done to the good manifest, and a part of the sentence that must come. */
type Break = readonly [rule: string, what: string, from: string | RegExp, to: string, sentence: string];

const BREAKS: readonly Break[] = [
  ["it is well-formed", "a tag is left open", "</Requirements>", "", "not well-formed"],
  [
    "it is a task pane add-in",
    "it is a mail add-in",
    'xsi:type="TaskPaneApp"',
    'xsi:type="MailApp"',
    "must be TaskPaneApp",
  ],
  [
    "it is a task pane add-in",
    "the root is in no namespace",
    'xmlns="http://schemas.microsoft.com/office/appforoffice/1.1"',
    "",
    "the root is OfficeApp; it must be",
  ],
  ["every part is there", "no support address", /<SupportUrl[^>]*>/, "", "SupportUrl is missing"],
  ["every part is there", "no permissions", /<Permissions>.*<\/Permissions>/, "", "Permissions is missing"],
  [
    "the elements are in order",
    "version before id",
    /(<Id>.*<\/Id>)\s*(<Version>.*<\/Version>)/,
    "$2$1",
    "Id stands after Version",
  ],
  [
    "the elements are in order",
    "requirements after settings",
    /(<Requirements>[\s\S]*?<\/Requirements>)\s*(<DefaultSettings>[\s\S]*?<\/DefaultSettings>)/,
    "$2$1",
    "Requirements stands after DefaultSettings",
  ],
  [
    "the elements are in order",
    "the namespace before the metadata",
    /(<Metadata>[\s\S]*?<\/Metadata>)\s*(<Namespace[^>]*>)/,
    "$2$1",
    "Metadata stands after Namespace",
  ],
  [
    "the elements are in order",
    "an element that is not of the schema",
    "<Permissions>",
    "<Colour/><Permissions>",
    "holds Colour",
  ],
  [
    "texts are there and short enough",
    "a long description",
    /<Description DefaultValue="[^"]*"/,
    `<Description DefaultValue="${"a".repeat(251)}"`,
    "251 characters; at most 250",
  ],
  [
    "texts are there and short enough",
    "a long label",
    'DefaultValue="Canyard help"',
    `DefaultValue="${"a".repeat(126)}"`,
    "126 characters; at most 125",
  ],
  [
    "texts are there and short enough",
    "an empty name",
    '<DisplayName DefaultValue="Canyard"',
    '<DisplayName DefaultValue=""',
    "DisplayName is empty",
  ],
  [
    "texts are there and short enough",
    "a long id",
    /GetStarted\.Title/g,
    "GetStarted.Title.That.Has.No.End.At.All",
    "at most 32",
  ],
  [
    "every resource id resolves",
    "an id that is nowhere",
    'resid="Group.Label"',
    'resid="Group.Lable"',
    "points to Group.Lable",
  ],
  [
    "every resource id resolves",
    "an address where a text belongs",
    'resid="Group.Label"',
    'resid="Taskpane.Url"',
    "must be a String",
  ],
  [
    "no id occurs twice",
    "two resources of one id",
    ' id="GetStarted.Title"',
    ' id="Group.Label"',
    "Group.Label occurs twice",
  ],
  ["id and version are legal", "an id that is no GUID", /<Id>.*<\/Id>/, "<Id>canyard</Id>", "must be a GUID"],
  [
    "id and version are legal",
    "a version of three parts",
    /<Version>.*<\/Version>/,
    "<Version>1.2.3</Version>",
    "four parts",
  ],
  [
    "id and version are legal",
    "another version than the package's",
    /<Version>.*<\/Version>/,
    "<Version>9.9.9.0</Version>",
    "the version of package.json",
  ],
  [
    "the host is the workbook",
    "a document as host",
    '<Host Name="Workbook"/>',
    '<Host Name="Document"/>',
    "only Workbook",
  ],
  ["the host is the workbook", "leave to read only", "ReadWriteDocument", "ReadDocument", "must be ReadWriteDocument"],
  [
    "it asks for the requirement sets that it needs, and no more",
    "a set is missing",
    /<Set Name="SharedRuntime"[^>]*>/,
    "",
    "SharedRuntime is missing",
  ],
  [
    "it asks for the requirement sets that it needs, and no more",
    "a set too many",
    "</Sets>",
    '<Set Name="ExcelApi" MinVersion="1.20"/></Sets>',
    "shuts out hosts",
  ],
  [
    "it has functions and a button",
    "no functions",
    'xsi:type="CustomFunctions"',
    'xsi:type="Launch"',
    "no ExtensionPoint CustomFunctions",
  ],
  [
    "addresses are https, and no localhost",
    "http",
    'SupportUrl DefaultValue="https:',
    'SupportUrl DefaultValue="http:',
    "must begin with https",
  ],
  [
    "addresses are https, and no localhost",
    "localhost",
    /https:\/\/canyard\.example\//g,
    "https://localhost:3000/",
    "names no localhost",
  ],
  [
    "addresses share one base",
    "an icon from elsewhere",
    /<IconUrl DefaultValue="[^"]*"/,
    '<IconUrl DefaultValue="https://elsewhere.example/icon.png"',
    "must lie under",
  ],
  ["pane and functions share one page", "a short life", 'lifetime="long"', 'lifetime="short"', "must be long"],
  [
    "pane and functions share one page",
    "the button opens another page",
    /(<Action xsi:type="ShowTaskpane">\s*<SourceLocation resid=")Taskpane\.Url/,
    "$1GetStarted.LearnMoreUrl",
    "Action opens GetStarted.LearnMoreUrl",
  ],
  [
    "the shared page loads the functions",
    "the shared page is one without functions",
    /taskpane\.html/g,
    "bare.html",
    "does not load functions.js",
  ],
  [
    "the namespace is legal",
    "a name that reads like a cell",
    'DefaultValue="CANYARD"',
    'DefaultValue="CAN1"',
    "reads like a cell",
  ],
  [
    "the namespace is legal",
    "a name with a blank",
    'DefaultValue="CANYARD"',
    'DefaultValue="CAN YARD"',
    "must be 2 to 32 capitals",
  ],
  ["every file is there", "a script that does not exist", 'functions.js"', 'function.js"', "needs function.js"],
  [
    "icons have their size",
    "the small icon where the large belongs",
    "icon-80.png",
    "icon-16.png",
    "is 16 x 16; it must be 80 x 80",
  ],
  ["icons have their size", "a file that is no picture", "icon-64.png", "../functions.json", "no PNG picture"],
];

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "canyard-manifest-"));
  for (const name of ["functions.js", "functions.json", "taskpane.html", "reference/index.html", "icons"]) {
    cpSync(join(DIST, name), join(folder, name), { recursive: true });
  }
  writeFileSync(join(folder, "bare.html"), "<!doctype html><title>bare</title>");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("the manifest of a build holds every rule", () => {
  const [results] = validated(DIST, [{ text: GOOD }]);
  expect(results!.length).toBeGreaterThan(15);
  expect(results!.filter(({ wrong }) => wrong.length > 0)).toEqual([]);
});

test("one for this computer only may name localhost, when that is said", () => {
  const text = GOOD.replaceAll("https://canyard.example/", "https://localhost:3000/");
  const [results] = validated(folder, [{ text, allowLocal: true }]);
  expect(results!.find(({ rule }) => rule === "addresses are https, and no localhost")!.wrong).toEqual([]);
});

test("each rule refuses a manifest that breaks it", () => {
  const results = validated(
    folder,
    BREAKS.map(([, , from, to]) => ({ text: GOOD.replace(from, to) })),
  );
  BREAKS.forEach(([rule, what, from, to, sentence], index) => {
    expect([what, GOOD.replace(from, to) === GOOD]).toEqual([what, false]);
    const wrong = results[index]!.find((each) => each.rule === rule)?.wrong ?? [];
    expect([what, wrong.join("; ")]).toEqual([what, expect.stringContaining(sentence)]);
  });
});

test("no rule goes without a manifest that breaks it", () => {
  const [results] = validated(folder, [{ text: GOOD }]);
  const broken = new Set(BREAKS.map(([rule]) => rule));
  const byFile = ["functions.json agrees"];
  expect(results!.map(({ rule }) => rule).filter((rule) => !broken.has(rule) && !byFile.includes(rule))).toEqual([]);
});

describe("metadata that do not agree are refused", () => {
  const good = JSON.parse(readFileSync(join(DIST, "functions.json"), "utf8")) as {
    functions: Record<string, unknown>[];
  };

  test.each([
    [
      "a function that the script does not know",
      () => [...good.functions, { ...good.functions[0], id: "NOT_THERE", name: "NOT_THERE" }],
      "does not know NOT_THERE",
    ],
    ["a function twice", () => [...good.functions, good.functions[0]], "occurs twice"],
    ["a name that is not the id", () => [{ ...good.functions[0], name: "OTHER" }], "is called OTHER"],
    [
      "a help page elsewhere",
      () => [{ ...good.functions[0], helpUrl: "https://elsewhere.example/" }],
      "must lie under",
    ],
    ["no function at all", () => [], "names no function"],
  ])("%s", (_what, functions, sentence) => {
    writeFileSync(join(folder, "functions.json"), JSON.stringify({ functions: functions() }));
    const [results] = validated(folder, [{ text: GOOD }]);
    expect(results!.find(({ rule }) => rule === "functions.json agrees")!.wrong.join("; ")).toContain(sentence);
    cpSync(join(DIST, "functions.json"), join(folder, "functions.json"));
  });
});

test("the command tells each rule and ends in error where one does not hold", () => {
  const run = (args: readonly string[]) =>
    spawnSync(process.execPath, [join(ROOT, "tools/validate.mjs"), ...args], { encoding: "utf8" });
  const good = run([]);
  expect([good.status, good.stdout]).toEqual([0, expect.stringMatching(/\d+ rules hold, 0 do not/)]);
  writeFileSync(join(folder, "manifest.xml"), GOOD.replace('lifetime="long"', 'lifetime="short"'));
  const bad = run(["--folder", folder]);
  expect([bad.status, bad.stdout]).toEqual([1, expect.stringContaining("WRONG pane and functions share one page")]);
});
