/** The counts of a run as its last line. */
export default async function printClosingLine() {
  // The reporters write to the error stream in pieces of their own; this line comes after the last of them.
  await new Promise((resolve) => setImmediate(resolve));
  console.log(globalThis.closingLine ?? "0 passed, 0 failed, 0 skipped");
}
