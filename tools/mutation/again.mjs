/** Mutants that the tests let live are tried once more, after tests were written for them; the reports take what is new. */

const LIVING = ["Survived", "NoCoverage"];
const isLiving = ({ status }) => LIVING.includes(status);

/** What Stryker takes as files to be changed: the lines of the mutants that live. */
export function linesOfLiving(reports) {
  const ranges = reports.flatMap(({ files }) =>
    Object.entries(files).flatMap(([fileName, { mutants }]) =>
      mutants.filter(isLiving).map(({ location: { start, end } }) => `${fileName}:${start.line}-${end.line}`),
    ),
  );
  return [...new Set(ranges)];
}

function keyOf(fileName, { location: { start, end }, mutatorName, replacement }) {
  return JSON.stringify([fileName, start.line, start.column, end.line, end.column, mutatorName, replacement]);
}

/** The report, in which the living have the fate that they had in the other. */
export function withFates(report, other) {
  const fates = new Map(
    Object.entries(other.files).flatMap(([fileName, { mutants }]) =>
      mutants.map((mutant) => [keyOf(fileName, mutant), mutant.status]),
    ),
  );
  const files = Object.entries(report.files).map(([fileName, file]) => {
    const again = other.files[fileName];
    if (again !== undefined && again.source !== file.source) throw new Error(`${fileName} has changed: run its folder`);
    const mutants = file.mutants.map((mutant) =>
      isLiving(mutant) ? { ...mutant, status: fates.get(keyOf(fileName, mutant)) ?? mutant.status } : mutant,
    );
    return [fileName, { ...file, mutants }];
  });
  return { ...report, files: Object.fromEntries(files) };
}

/** The report, in which a file that both have is as in the other. */
export function withFile(report, other) {
  const files = Object.entries(report.files).map(([fileName, file]) => [fileName, other.files[fileName] ?? file]);
  return { ...report, files: Object.fromEntries(files) };
}
