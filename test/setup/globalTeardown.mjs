import printClosingLine from "./printClosingLine.mjs";

export default async function globalTeardown() {
  await globalThis.closeTestWorld();
  await printClosingLine();
}
