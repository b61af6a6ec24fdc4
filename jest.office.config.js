/** The files as LibreOffice opens, works and prints them, and what takes long of every starter: `npm run test:office`. */
const { testEnvironment, modulePathIgnorePatterns, transform, testPathIgnorePatterns } = require("./jest.config.js");

/** @type {import("jest").Config} */
module.exports = {
  testEnvironment,
  modulePathIgnorePatterns,
  transform,
  testMatch: ["<rootDir>/test/office/**/*.office.ts", ...testPathIgnorePatterns],
  reporters: ["default", "<rootDir>/test/setup/closingLine.cjs"],
  globalTeardown: "<rootDir>/test/setup/printClosingLine.mjs",
  testTimeout: 600_000,
};
