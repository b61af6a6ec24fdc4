/** The last line of a run: how many passed, failed and were skipped. A suite that could not run counts as failed. */
module.exports = class ClosingLine {
  onRunComplete(_contexts, results) {
    const failed = results.numFailedTests + results.numRuntimeErrorTestSuites;
    const skipped = results.numPendingTests + results.numTodoTests;
    console.log(`${results.numPassedTests} passed, ${failed} failed, ${skipped} skipped`);
  }
};
