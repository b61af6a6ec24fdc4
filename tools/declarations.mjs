/** Writes dist/library.d.mts: the library's types in one file, as the compiler declares them, with what they need. */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
const ENTRY = join(ROOT, "src/functions/library.ts");
const TARGET = join(ROOT, "dist/library.d.mts");
const HEAD = "/** The types of library.mjs. Made from the sources by the build. */\n";

/** The catalogue's entries are values; none of their types is the library's. */
const NOT_FOLLOWED = join(ROOT, "src/functions/catalogue");

/** The declarations of one source file, as a tree. */
function declared(path) {
  const { outputText } = ts.transpileDeclaration(readFileSync(path, "utf8"), { fileName: path });
  return ts.createSourceFile(path, outputText, ts.ScriptTarget.Latest, true);
}

function fileOf(specifier, from) {
  const path = join(dirname(from), specifier);
  return [`${path}.ts`, join(path, "index.ts")].find((candidate) => existsSync(candidate));
}

/** The trees of a file and of all that it takes names from. */
function treesFrom(entry) {
  const trees = new Map();
  const follow = (path) => {
    if (trees.has(path) || path.startsWith(NOT_FOLLOWED)) return;
    const tree = declared(path);
    trees.set(path, tree);
    for (const { moduleSpecifier } of tree.statements) {
      const specifier = moduleSpecifier?.text;
      if (specifier?.startsWith(".") && !specifier.endsWith(".json")) follow(fileOf(specifier, path));
    }
  };
  follow(entry);
  return [...trees.values()];
}

function namesOf(statement) {
  if (ts.isVariableStatement(statement)) return statement.declarationList.declarations.map(({ name }) => name.text);
  return statement.name === undefined ? [] : [statement.name.text];
}

/** Every top-level declaration by its name; a name may stand for one thing only. */
function declarationsOf(trees) {
  const byName = new Map();
  for (const statement of trees.flatMap(({ statements }) => [...statements])) {
    for (const name of namesOf(statement)) byName.set(name, byName.has(name) ? null : statement);
  }
  return byName;
}

/** What a declaration refers to: `Name`, `typeof name` and `extends Name`. */
function referredIn(node) {
  const found = new Set();
  const visit = (part) => {
    const { text } = part.typeName ?? part.exprName ?? (ts.isExpressionWithTypeArguments(part) ? part.expression : {});
    if (text !== undefined) found.add(text);
    ts.forEachChild(part, visit);
  };
  visit(node);
  return found;
}

/** The declarations of the names asked for, and of all that these name, each once. */
function closure(roots, byName) {
  const needed = new Set();
  const add = (name) => {
    const statement = byName.get(name);
    if (statement === undefined || needed.has(statement)) return;
    if (statement === null) throw new Error(`two things of the library are called ${name}`);
    needed.add(statement);
    for (const name of referredIn(statement)) add(name);
  };
  for (const root of roots) {
    if (!byName.has(root)) throw new Error(`the library exports ${root}, which is declared nowhere`);
    add(root);
  }
  return [...needed];
}

function isType(statement) {
  return ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement);
}

/** A type may be named by whoever reads the file; a value only if the library really exports it. */
function printed(statement, roots) {
  const bare = statement
    .getFullText()
    .trim()
    .replace(/^export /m, "");
  const exported = isType(statement) || namesOf(statement).some((name) => roots.includes(name));
  return exported ? bare.replace(/^(declare |interface |type )/m, "export $1") : bare;
}

/** The names that a file of re-exports lists. */
function exportedNames(tree) {
  return tree.statements.flatMap(({ exportClause }) => exportClause.elements.map(({ name }) => name.text));
}

export function libraryDeclarations() {
  const trees = treesFrom(ENTRY);
  const roots = exportedNames(trees[0]);
  const texts = closure(roots, declarationsOf(trees)).map((statement) => printed(statement, roots));
  return `${HEAD}${texts.join("\n")}\nexport {};\n`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(dirname(TARGET), { recursive: true });
  writeFileSync(TARGET, libraryDeclarations());
}
