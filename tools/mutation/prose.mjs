/**
 * Strings that only people read are not mutated: descriptions, help, citations, the words beside a step. Texts of
 * errors, words that a call takes, names, symbols and formulas are.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { declareValuePlugin, PluginKind } from "@stryker-mutator/api/plugin";
import ts from "typescript";

const PROSE_PROPERTIES = new Set([
  "about",
  "summary",
  "formula",
  "assumptions",
  "caution",
  "slip",
  "low",
  "high",
  "guard",
  "hint",
  "source",
  "from",
]);

const RECORDERS = new Set(["show", "toMetric", "fromMetric", "silent"]);

const nameOf = (node) => node?.name ?? node?.value;

function isRecorder(callee) {
  return RECORDERS.has(callee.type === "MemberExpression" ? nameOf(callee.property) : nameOf(callee));
}

/** Whether a node, seen from its parent, stands where only words for people stand. */
function isProseIn(parent, node) {
  if (parent.type === "ObjectProperty") return parent.value === node && PROSE_PROPERTIES.has(nameOf(parent.key));
  if (parent.type !== "CallExpression") return false;
  if (nameOf(parent.callee) === "cite") return parent.callee !== node;
  return isRecorder(parent.callee) && parent.arguments[3] === node;
}

const WITHIN_WORDS = new Set([
  "ArrayExpression",
  "TemplateLiteral",
  "BinaryExpression",
  "ConditionalExpression",
  "TSAsExpression",
  "TSSatisfiesExpression",
  "CallExpression",
]);

const CATALOGUE = "src/functions/catalogue";

/** The syntax trees of the catalogue. */
function catalogueTrees() {
  return readdirSync(CATALOGUE, { recursive: true })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => join(CATALOGUE, file))
    .map((file) => ts.createSourceFile(file, readFileSync(file, "utf8"), ts.ScriptTarget.Latest, true));
}

/** Whether a value is made of the node's own words and no more. */
function isAround(node) {
  return (
    ts.isArrayLiteralExpression(node) ||
    ts.isTemplateSpan(node) ||
    ts.isTemplateExpression(node) ||
    ts.isBinaryExpression(node) ||
    ts.isConditionalExpression(node) ||
    ts.isAsExpression(node) ||
    ts.isSpreadElement(node)
  );
}

/** Where the value of a use of a constant goes: "prose", another constant's name, or elsewhere. */
function goal(use) {
  let at = use;
  while (isAround(at.parent)) at = at.parent;
  const { parent } = at;
  if (ts.isPropertyAssignment(parent) && parent.initializer === at) {
    return { isProse: PROSE_PROPERTIES.has(parent.name.text) };
  }
  if (ts.isVariableDeclaration(parent) && parent.initializer === at) return { into: parent.name.text };
  if (!ts.isCallExpression(parent)) return { isProse: false };
  const callee = ts.isPropertyAccessExpression(parent.expression) ? parent.expression.name : parent.expression;
  return { isProse: callee.text === "cite" || (RECORDERS.has(callee.text) && parent.arguments[3] === at) };
}

function isUse(node) {
  const { parent } = node;
  if (ts.isImportSpecifier(parent) || ts.isExportSpecifier(parent)) return false;
  return !(ts.isVariableDeclaration(parent) && parent.name === node);
}

/** Constants of the catalogue that hold words, and that stand nowhere but where only words for people stand. */
function proseConstants() {
  const holding = new Set();
  const goals = new Map();
  const visit = (node) => {
    if (ts.isVariableDeclaration(node) && ts.isIdentifier(node.name)) {
      holding.add(node.name.text);
    }
    if (ts.isIdentifier(node) && isUse(node)) goals.set(node.text, [...(goals.get(node.text) ?? []), goal(node)]);
    ts.forEachChild(node, visit);
  };
  catalogueTrees().forEach(visit);
  const isOnlyProse = (name, asked = new Set()) => {
    if (asked.has(name) || !holding.has(name)) return false;
    const uses = goals.get(name) ?? [];
    return (
      uses.length > 0 && uses.every(({ isProse, into }) => isProse ?? isOnlyProse(into, new Set([...asked, name])))
    );
  };
  return new Set([...holding].filter((name) => isOnlyProse(name)));
}

const constants = proseConstants();

function isProse(path) {
  for (let at = path; at.parentPath; at = at.parentPath) {
    if (isProseIn(at.parent, at.node)) return true;
    if (at.parent.type === "VariableDeclarator") return constants.has(nameOf(at.parent.id));
    if (!WITHIN_WORDS.has(at.parent.type)) return false;
  }
  return false;
}

export const strykerPlugins = [
  declareValuePlugin(PluginKind.Ignore, "prose", {
    shouldIgnore(path) {
      const isText = path.isStringLiteral() || path.isTemplateLiteral();
      return isText && isProse(path) ? "Words for people" : undefined;
    },
  }),
];
