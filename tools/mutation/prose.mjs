/**
 * Strings that only people read are not mutated: descriptions, help, citations, the words beside a step. Texts of
 * errors, words that a call takes, names, symbols and formulas are.
 */
import { declareValuePlugin, PluginKind } from "@stryker-mutator/api/plugin";

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

function isProse(path) {
  for (let at = path; at.parentPath; at = at.parentPath) {
    if (isProseIn(at.parent, at.node)) return true;
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
