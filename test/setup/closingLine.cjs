/** Counts a run for its last line, which the teardown prints. A suite that could not run counts as failed. */
module.exports = class ClosingLine {
  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    const skipped = results.numPendingTests + results.numTodoTests;
    globalThis.closingLine = `${results.numPassedTests} passed, ${failed} failed, ${skipped} skipped`;
  }
};
