/** docs/quality.md: what became of the mutants, folder by folder, and every one that lives. */
import { machineKind } from "../machineKind.mjs";

const CODE = /`/g;

/** Mutants whose fate says something about the tests; the others never ran, or did not compile. */
const COUNTED = ["Killed", "Timeout", "Survived", "NoCoverage"];

function folderOf(fileName) {
  return fileName.replace(/^src\/(functions\/)?/, "").replace(/\/[^/]+$/, "");
}

function allMutants(reports) {
  return reports.flatMap(({ files }) =>
    Object.entries(files).flatMap(([fileName, { source, mutants }]) => {
      const lines = source.split("\n");
      return mutants.map((mutant) => ({ ...mutant, fileName, lines }));
    }),
  );
}

function counts(mutants) {
  const of = (status) => mutants.filter((mutant) => mutant.status === status).length;
  return {
    killed: of("Killed"),
    timeout: of("Timeout"),
    survived: of("Survived"),
    noCoverage: of("NoCoverage"),
    refused: of("CompileError"),
    ignored: of("Ignored"),
  };
}

/** Per cent of the counted mutants that a test noticed. */
export function scoreOf(mutants) {
  const { killed, timeout, survived, noCoverage } = counts(mutants);
  const counted = killed + timeout + survived + noCoverage;
  return counted === 0 ? 100 : (100 * (killed + timeout)) / counted;
}

function row(name, mutants) {
  const { killed, timeout, survived, noCoverage, refused, ignored } = counts(mutants);
  const score = scoreOf(mutants).toFixed(1);
  return `| ${[name, score, killed, timeout, survived, noCoverage, refused, ignored].join(" | ")} |`;
}

function textAt({ lines, location: { start, end } }) {
  const first = lines[start.line - 1];
  const text =
    start.line === end.line ? first.slice(start.column - 1, end.column - 1) : `${first.slice(start.column - 1)} …`;
  return text.replace(CODE, "'").slice(0, 100);
}

function survivorLine(mutant) {
  const { fileName, location, mutatorName, replacement } = mutant;
  const by = replacement.replace(/\s+/g, " ").replace(CODE, "'").slice(0, 100);
  return `- ${fileName.replace(/^src\//, "")}:${location.start.line} ${mutatorName}: \`${textAt(mutant)}\` as \`${by}\``;
}

const marksOf = (name) => [`<!-- ${name}: begin -->`, `<!-- ${name}: end -->`];

/** What stands between two marks stays: what a person wrote, and the runs in a row. */
function kept(before, name) {
  const marks = marksOf(name);
  const [begin, end] = marks.map((mark) => before.indexOf(mark));
  return begin < 0 ? marks.join("\n\n") : before.slice(begin, end + marks[1].length);
}

const RUNS = "runs in a row";

/** The page with another text about the runs in a row. */
export function withRuns(page, text) {
  return page.replace(kept(page, RUNS), marksOf(RUNS).join(`\n\n${text}\n\n`));
}

export function qualityPage(reports, names, before) {
  const mutants = allMutants(reports);
  const folders = [...new Set(mutants.map(({ fileName }) => folderOf(fileName)))].sort();
  const alive = mutants.filter(({ status }) => status === "Survived" || status === "NoCoverage");
  const days = [...new Set(reports.map(({ on }) => on.toISOString().split("T")[0]))].sort();
  const missing = names.filter((name) => !reports.some((report) => report.name === name));
  return `# Tests of the tests

\`npm run mutate\` changes the kernel and the catalogue in one small way at a time and asks whether a test notices (StrykerJS). It writes this page. Run on ${days.join(", ")}: ${machineKind()}.

**${scoreOf(mutants).toFixed(1)} % of ${mutants.filter(({ status }) => COUNTED.includes(status)).length} mutants were noticed.** Not counted: those that no test noticed and the compiler refuses (it runs on every change), and strings that only people read (descriptions, help, citations, the words beside a step); texts of errors, words that a call takes, names, symbols and formulas are mutated.

| part | score, % | killed | timed out | survived | not reached | refused by the compiler | words for people |
| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: |
${row("**all**", mutants)}
${folders
  .map((folder) =>
    row(
      folder,
      mutants.filter(({ fileName }) => folderOf(fileName) === folder),
    ),
  )
  .join("\n")}

${missing.length === 0 ? "" : `Not run yet: ${missing.join(", ")}.\n\n`}${kept(before, "read by a person")}

${kept(before, RUNS)}

## Every mutant that lives

${alive.map(survivorLine).sort().join("\n")}
`;
}
