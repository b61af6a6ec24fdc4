/** Every worked example of every function through Excel's own dispatcher: what arrives is what the library says. */
import { join } from "node:path";
import { call, catalogue } from "../../src/functions";
import { openOfficialHost, type HostAnswer, type OfficialHost } from "../rig/officialRuntime";

let host: OfficialHost;
beforeAll(() => {
  host = openOfficialHost(join(__dirname, "../../dist/functions.js"));
});
afterAll(() => host.close());

/** As the host sends it: blocks of cells, null for what is left out; further inputs as one list of blocks. */
function sent(args: readonly unknown[], declared: number, repeats: boolean): unknown[] {
  const block = (value: unknown): unknown => (value === undefined ? null : Array.isArray(value) ? value : [[value]]);
  if (!repeats) return Array.from({ length: declared }, (_argument, index) => block(args[index]));
  const fixed = Array.from({ length: declared - 1 }, (_argument, index) => block(args[index]));
  return [...fixed, args.slice(declared - 1).map((value) => (Array.isArray(value) ? value : [[value ?? null]]))];
}

const examples = catalogue.flatMap(({ name, params, examples: list }) =>
  list.map(({ args }, index) => ({ title: `${name}, example ${index + 1}`, name, params, args })),
);

describe("through the official custom-functions runtime", () => {
  let answers: readonly HostAnswer[] = [];
  beforeAll(async () => {
    answers = await host.callMany(
      examples.map(({ name, params, args }) => [
        name,
        sent(
          args,
          params.length,
          params.some(({ repeating }) => repeating),
        ),
      ]),
    );
  });

  test.each(examples.map((example, index) => [example.title, example, index] as const))(
    "%s",
    (_title, { name, args }, index) => {
      expect(answers[index]).toEqual({ ok: true, value: call(name, args) });
    },
  );
});
