/**
 * Counts a run for its last line, which the teardown prints. A suite that could not run counts as failed. What an
 * earlier run of the same round counted is added.
 */
const EARLIER = /^(\d+) passed, (\d+) failed, (\d+) skipped$/.exec(process.env.CANYARD_COUNTED_BEFORE ?? "");
const [passedBefore, failedBefore, skippedBefore] = EARLIER?.slice(1).map(Number) ?? [0, 0, 0];

module.exports = class ClosingLine {
  onRunComplete(_contexts, results) {
    const passed = passedBefore + results.numPassedTests;
    const failed = failedBefore + results.numFailedTests + results.numRuntimeErrorTestSuites;
    const skipped = skippedBefore + results.numPendingTests + results.numTodoTests;
    globalThis.closingLine = `${passed} passed, ${failed} failed, ${skipped} skipped`;
  }
};
