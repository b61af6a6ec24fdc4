/** The files as LibreOffice opens, works and prints them: `npm run test:office`. */
const { testEnvironment, modulePathIgnorePatterns, transform } = require("./jest.config.js");

/** @type {import("jest").Config} */
module.exports = {
  testEnvironment,
  modulePathIgnorePatterns,
  transform,
  testMatch: ["<rootDir>/test/office/**/*.office.ts"],
  reporters: ["default", "<rootDir>/test/setup/closingLine.cjs"],
  globalTeardown: "<rootDir>/test/setup/printClosingLine.mjs",
  testTimeout: 600_000,
};
