/** @type {import("jest").Config} */
module.exports = {
  testEnvironment: "node",
  testMatch: ["<rootDir>/test/**/*.test.ts"],
  // What takes long of the starters runs beside LibreOffice, in `npm run test:office`.
  testPathIgnorePatterns: [
    "<rootDir>/test/workbooks/starterLimits.test.ts",
    "<rootDir>/test/workbooks/classExerciseUse.test.ts",
    "<rootDir>/test/starters/everyStarter.test.ts",
    "<rootDir>/test/sheet/xlsx/everyStarter.test.ts",
  ],
  modulePathIgnorePatterns: ["<rootDir>/dist"],
  globalSetup: "<rootDir>/test/setup/globalSetup.mjs",
  globalTeardown: "<rootDir>/test/setup/globalTeardown.mjs",
  reporters: ["default", "<rootDir>/test/setup/closingLine.cjs", "<rootDir>/test/setup/checkValues.cjs"],
  testTimeout: 30_000,
  maxWorkers: "100%",
  transform: {
    "^.+\\.ts$": ["ts-jest", { tsconfig: "<rootDir>/test/tsconfig.json", diagnostics: false }],
  },
};
