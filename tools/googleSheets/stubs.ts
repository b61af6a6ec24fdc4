/** The functions of the Google Sheets script: one for each of the catalogue, with the comment that its help shows. */
import { catalogue, NAMESPACE, VERSION, type FunctionHelp, type Parameter } from "../../src/functions";
import { catalogue as entries } from "../../src/functions/catalogue";
import { isScalar, isTable, type Entry, type Param } from "../../src/kernel";

/** Ends with an underscore, by which that host knows what is not for cells. */
export const LIBRARY = "CanyardLibrary_";

const HEADER = `/**
 * Canyard ${VERSION}: irrigation arithmetic for container nurseries and greenhouses as functions of Google Sheets.
 * Made from the catalogue by the build. Paste the whole file into Extensions > Apps Script and save.
 * Planning figures for people, not for automatic control. Check with a bucket, a scale and a meter before relying on
 * them. Local codes, product labels and licensed practice come first.
 * The licence stands at the end.
 * @OnlyCurrentDoc
 */
`;

const TYPES: Readonly<Record<NonNullable<Param["kind"]> | "number", string>> = {
  number: "number",
  word: "string",
  text: "string",
  switch: "boolean",
  cell: "number|string",
  numbers: "number|number[][]",
  column: "number|number[][]",
  texts: "string|string[][]",
  cells: "Array<Array<number|string|Date>>",
  inputs: "...*",
};

function typeOf(param: Param): string {
  const type = TYPES[param.kind ?? "number"];
  return "orWord" in param && param.orWord !== undefined ? `${type}|string` : type;
}

function quoted(value: number | string | boolean): string {
  return typeof value === "string" ? `"${value}"` : String(value).toUpperCase();
}

/** That host shows no brackets around what may be left out, so that words say it. */
function leftOutText({ optional, repeating, default: start }: Parameter): string {
  if (repeating) return "; as many as it needs";
  if (!optional) return "";
  return start === undefined ? "; may be left out" : `; may be left out, then ${quoted(start)}`;
}

function wordsText({ about, words = [] }: Parameter): string {
  const list = words.map(quoted);
  return list.every((word) => about.includes(word)) ? "" : `: ${list.join(", ")}`;
}

function unitText(unit: string): string {
  return unit === "" ? "" : ` (${unit})`;
}

function parameterLine(parameter: Parameter, param: Param): string {
  const { name, about, unit } = parameter;
  const text = `${about}${unitText(unit)}${wordsText(parameter)}${leftOutText(parameter)}`;
  return ` * @param {${typeOf(param)}} ${name} ${text}`;
}

function resultType({ result }: Entry): string {
  if (isTable(result)) return "Array<Array<number|string>>";
  return isScalar(result) ? "number" : "string";
}

function stub(entry: Entry, { name, summary, params, result, caution }: FunctionHelp): string {
  const kinds = Object.values(entry.params);
  const gives = `${result.about}${unitText(result.unit)}`;
  const declared = params.map((parameter) => (parameter.repeating ? `...${parameter.name}` : parameter.name));
  return [
    "/**",
    ` * ${summary}.`,
    ` * Gives: ${gives}.`,
    ...(caution === "" ? [] : [` * Caution: ${caution}`]),
    " *",
    ...params.map((parameter, index) => parameterLine(parameter, kinds[index] as Param)),
    ` * @return {${resultType(entry)}} ${gives}`,
    " * @customfunction",
    " */",
    `function ${NAMESPACE}_${name}(${declared.join(", ")}) {`,
    `  return ${LIBRARY}.answer("${name}", arguments);`,
    "}",
    "",
  ].join("\n");
}

/** Everything before the library itself. */
export function stubsText(): string {
  return [HEADER, ...entries.map((entry, index) => stub(entry, catalogue[index] as FunctionHelp))].join("\n");
}
