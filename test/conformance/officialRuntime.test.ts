import { join } from "node:path";
import { errorArgument, openOfficialHost, type HostCellError, type OfficialHost } from "../rig/officialRuntime";
import { expectOutcome, type Outcome } from "./expectOutcome";
import { conformance, type Given, type Row } from "./table";

const FUNCTIONS = join(__dirname, "../../dist/functions.js");

let host: OfficialHost;
beforeAll(() => {
  host = openOfficialHost(FUNCTIONS);
});
afterAll(() => host.close());

/** Hosts send an empty cell in different forms. */
const EMPTY_FORMS = [null, 0, ""] as const;

function hostArgument(given: Given, emptyForm: unknown): unknown {
  if ("cell" in given) return [[given.cell]];
  if ("block" in given) return given.block;
  if ("errorCell" in given) return [[errorArgument(given.errorCell)]];
  return "leftOut" in given ? null : [[emptyForm]];
}

function isCellError(value: unknown): value is HostCellError {
  return typeof value === "object" && value !== null && "error" in value;
}

function cellOf(value: unknown): unknown {
  return isCellError(value) ? { code: value.error, message: value.message } : value;
}

async function outcomeOf({ name, given }: Row, emptyForm: unknown): Promise<Outcome> {
  const args = given.map((each) => hostArgument(each, emptyForm));
  const answer = await host.call(name, args, { errorsAllowed: true });
  if (!answer.ok) return { code: answer.error ?? "", message: answer.message ?? "" };
  if (!Array.isArray(answer.value)) return { value: answer.value };
  return { table: (answer.value as unknown[][]).map((row) => row.map(cellOf)) };
}

describe("through the official custom-functions runtime", () => {
  test.each(conformance.map((row) => [row.title, row] as const))("%s", async (_title, row) => {
    for (const form of EMPTY_FORMS) {
      expectOutcome(await outcomeOf(row, form), row.gives, { valueError: "#VALUE!" });
    }
  });

  // The runtime puts an object of its own behind the arguments that came.
  test.each([
    ["none", ["LIBRARY_VERSION"]],
    ["an empty list", ["LIBRARY_VERSION", []]],
    ["null", ["LIBRARY_VERSION", null]],
  ])("further inputs that are %s are none", async (_what, args) => {
    const { ok, value } = await host.call("SHOW_WORKING", args);
    expect(ok).toBe(true);
    expect((value as unknown[][])[0]).toEqual(["step", "words", "symbols", "numbers", "result", "unit"]);
  });

  test("a further input that is one value is that one", async () => {
    await expect(host.call("SHOW_WORKING", ["RUN_MINUTES", 1])).resolves.toMatchObject({
      ok: true,
      value: [expect.anything(), ["error", expect.stringContaining("emitter_flow is blank"), "", "", "", ""]],
    });
  });

  test("a cell sent as a plain value, not as a block of one, is the same", async () => {
    await expect(host.call("RUN_MINUTES", [0.275, 6])).resolves.toMatchObject({ ok: true, value: 2.75 });
  });
});
