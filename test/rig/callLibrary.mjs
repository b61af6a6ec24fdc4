/** Calls dist/library.mjs as any program would: reads calls from standard input, writes what came of them. */
import { readFileSync } from "node:fs";

const LEFT_OUT = "(left out)";
const { call } = await import(process.argv[2]);

/** Errors in cells as data: JSON would drop their message. */
function cell(value) {
  return value instanceof Error ? { code: value.code, message: value.message } : value;
}

function answer([name, args]) {
  try {
    const given = args.map((arg) => (arg === LEFT_OUT ? undefined : arg));
    const found = call(name, given);
    return { answer: Array.isArray(found) ? found.map((row) => row.map(cell)) : found };
  } catch (error) {
    return { code: error.code, message: error.message };
  }
}

process.stdout.write(JSON.stringify(JSON.parse(readFileSync(0, "utf8")).map(answer)));
