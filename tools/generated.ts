/** What is generated from the catalogue: the file that the official metadata tool reads, and the reference page. */
import { catalogue, NAMESPACE, type FunctionHelp, type Parameter } from "../src/functions";

const HELP_BASE = "https://localhost:3000/";

function unitInBrackets(unit: string): string {
  return unit === "" ? "" : ` (${unit})`;
}

function typeOf(repeating: boolean): string {
  return repeating ? "any[][][]" : "any[][]";
}

function parameterLine({ name, about, unit, optional, repeating }: Parameter): string {
  const shown = optional && !repeating ? `[${name}]` : name;
  return ` * @param {${typeOf(repeating)}} ${shown} ${about}${unitInBrackets(unit)}`;
}

function hostFunction({ name, summary, params, result }: FunctionHelp): string {
  const names = params.map(({ name: parameter, repeating }) =>
    repeating ? `...furtherInputs(${parameter})` : parameter,
  );
  const declared = params.map(
    ({ name: parameter, optional, repeating }) =>
      `${parameter}${optional && !repeating ? "?" : ""}: ${typeOf(repeating)}`,
  );
  const type = result.shape === "table" ? "any[][]" : "any";
  return [
    "/**",
    ` * ${summary}`,
    ` * @customfunction ${name} ${name}`,
    ` * @helpurl ${HELP_BASE}reference/${name}.html`,
    ...params.map(parameterLine),
    ` * @returns {${type}} ${result.about}${unitInBrackets(result.unit)}`,
    " */",
    `export function ${name}(${declared.join(", ")}): ${type} {`,
    `  return answerCell("${name}", [${names.join(", ")}])${result.shape === "table" ? " as any[][]" : ""};`,
    "}",
  ].join("\n");
}

/** src/functions/functions.ts */
export function functionsFile(): string {
  return [
    "// Generated from the catalogue by `npm run generate`; do not edit.",
    "/* eslint-disable @typescript-eslint/no-explicit-any */",
    'import { answer as answerCell, furtherInputs } from "./host";',
    "",
    ...catalogue.map((entry) => `${hostFunction(entry)}\n`),
  ].join("\n");
}

function cell(text: string): string {
  return text.replace(/\|/g, "\\|").replace(/\n/g, " ");
}

function argumentRow({ name, about, unit, limits, optional, words, default: start }: Parameter): string {
  const allowed = words === undefined ? limits : words.map((word) => `"${word}"`).join(", ");
  const otherwise = !optional ? "" : start === undefined ? "may be left out" : `default ${start}`;
  return `| \`${name}\` | ${cell(about)} | ${unit} | ${cell([allowed, otherwise].filter(Boolean).join("; "))} |`;
}

function valueText(value: unknown): string {
  if (Array.isArray(value)) {
    const rows = value as readonly unknown[];
    return `{${rows.map((row) => (Array.isArray(row) ? row.map(valueText).join(", ") : valueText(row))).join("; ")}}`;
  }
  if (value === null || value === undefined) return "";
  return typeof value === "string" ? `"${value}"` : String(value);
}

function exampleLine(name: string, { args, gives, source }: FunctionHelp["examples"][number]): string {
  const last = args.reduce<number>((found, value, index) => (value === undefined ? found : index), 0);
  const formula = `=${NAMESPACE}.${name}(${args
    .slice(0, last + 1)
    .map(valueText)
    .join(", ")})`;
  return `- \`${formula}\` gives \`${valueText(gives)}\` (${source})`;
}

function bulleted(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [`**${title}**`, "", ...lines.map((line) => `- ${line}`), ""];
}

function spreadsheetAlone({ spreadsheetAlone: formulas }: FunctionHelp): readonly string[] {
  const titles = { any: "", us: " (us)", metric: " (metric)" };
  return (["any", "us", "metric"] as const).flatMap((key) => {
    const formula = formulas[key];
    return formula === undefined ? [] : [`**In built-in functions${titles[key]}**`, "", "```text", formula, "```", ""];
  });
}

function referenceSection(entry: FunctionHelp): readonly string[] {
  const { name, summary, formula, params, result, examples, source } = entry;
  const shown = params.map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name)).join(", ");
  return [
    `### ${name}`,
    "",
    `${summary}.`,
    "",
    "```text",
    `=${NAMESPACE}.${name}(${shown})`,
    "```",
    "",
    `Formula: ${formula}`,
    "",
    "| argument | meaning | unit | allowed |",
    "| --- | --- | --- | --- |",
    ...params.map(argumentRow),
    "",
    `Gives: ${result.about}${unitInBrackets(result.unit)}.`,
    "",
    "**Examples**",
    "",
    ...examples.map((example) => exampleLine(name, example)),
    "",
    ...bulleted("What it takes for granted", entry.assumptions),
    ...bulleted("Likely mistakes", entry.mistakes),
    ...spreadsheetAlone(entry),
    ...(entry.caution === "" ? [] : [`**Caution:** ${entry.caution}`, ""]),
    `Source: ${source}.`,
    "",
    ...(entry.seeAlso.length === 0 ? [] : [`See also: ${entry.seeAlso.join(", ")}.`, ""]),
  ];
}

/** docs/FUNCTIONS.md */
export function referencePage(): string {
  const groups = [...new Set(catalogue.map(({ group }) => group))];
  return [
    "<!-- Generated from the catalogue by `npm run generate`; do not edit. -->",
    "",
    "# The functions",
    "",
    "In a sheet each is written with the prefix `CANYARD.`; arguments in square brackets may be left out.",
    "",
    ...groups.flatMap((group) => [
      `## ${group}`,
      "",
      ...catalogue.filter((entry) => entry.group === group).flatMap(referenceSection),
    ]),
  ].join("\n");
}
