/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  plugins: ["./tools/mutation/prose.mjs", "./tools/mutation/runner.mjs"],
  testRunner: "warm",
  ignorers: ["prose"],
  coverageAnalysis: "perTest",
  concurrency: 2,
  timeoutMS: 20_000,
  timeoutFactor: 3,
  dryRunTimeoutMinutes: 10,
  ignorePatterns: ["dist", "docs/pictures", "reports"],
  reporters: ["progress-append-only", "clear-text", "json"],
  clearTextReporter: { reportMutants: false, reportTests: false, allowColor: false },
  jsonReporter: { fileName: "reports/mutation.json" },
  tempDirName: ".stryker-tmp",
  thresholds: { high: 95, low: 90 },
};
