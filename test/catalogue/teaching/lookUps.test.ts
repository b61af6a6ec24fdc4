import { readFileSync } from "node:fs";
import { join } from "node:path";
import packageFile from "../../../package.json";
import { catalogue } from "../../../src/functions/catalogue";
import { editDistance, nameOf, nearest } from "../../../src/functions/catalogue/teaching/lookUp";
import { evaluate, inOrder, isTable, sources, unitOf, usualOf } from "../../../src/kernel";
import type { Citation, Entry } from "../../../src/kernel";
import { entryOf, refusalOf } from "../../rig/calls";
import { byAnotherRoute, noArithmetic } from "../../rig/evidence";
import { contractNames } from "../../rig/contractNames";
import { nextAbove, nextBelow } from "../../rig/nextNumber";

const ROOT = join(__dirname, "../../..");

function textOf(name: string, byName: Readonly<Record<string, unknown>>): string {
  const entry = entryOf(name);
  const answer = evaluate(entry, inOrder(entry, byName));
  if (typeof answer !== "string") throw new Error(`${name} answered ${JSON.stringify(answer)}, not a text`);
  return answer;
}

function verdict(value: unknown, function_name: string, argument: string, units?: string): string {
  return textOf("CHECK_RANGE", { value, function_name, argument, units });
}

const ranges = catalogue.flatMap((entry) =>
  ["", ...Object.keys(entry.params)].flatMap((argument) => {
    const usual = usualOf(entry, argument);
    return usual === undefined ? [] : [{ title: `${entry.name} ${argument}`, name: entry.name, argument, usual }];
  }),
);

describe(byAnotherRoute("CHECK_RANGE"), () => {
  test.each(ranges)(
    "both ends of the usual range are ok, and what lies beyond is not: $title",
    ({ name, argument, usual }) => {
      for (const system of ["us", "metric"] as const) {
        const [low, high] = usual[system];
        expect([low, high].map((value) => verdict(value, name, argument, system))).toEqual(["ok", "ok"]);
        expect(verdict(nextBelow(low), name, argument, system)).toMatch(/^low: ./);
        expect(verdict(nextAbove(high), name, argument, system)).toMatch(/^high: ./);
      }
    },
  );

  test.each(ranges)(
    "without units a number in either range is ok, and one beyond both is not: $title",
    ({ name, argument, usual }) => {
      const all = [...usual.us, ...usual.metric];
      for (const value of all) expect(verdict(value, name, argument)).toBe("ok");
      expect(verdict(nextBelow(Math.min(...all)), name, argument)).toMatch(/^low: ./);
      expect(verdict(nextAbove(Math.max(...all)), name, argument)).toMatch(/^high: ./);
    },
  );

  test("a flow in gal/min typed where gal/h belongs is told so: 6 gal/h is 0.1 gal/min", () => {
    expect(verdict(6 / 60, "RUN_MINUTES", "emitter_flow", "us")).toBe("low: looks like gal/min or L/min");
  });

  test("where no slip is known, both ranges are named when the units are left out", () => {
    expect(verdict(1, "PLANT_SPACING_AREA", "in_row")).toBe("low: usually 2 to 72 in or 5 to 180 cm");
    expect(verdict(1, "PLANT_SPACING_AREA", "in_row", "us")).toBe("low: usually 2 to 72");
    expect(verdict(100, "PLANT_SPACING_AREA", "in_row")).toBe("ok");
    expect(verdict(100, "PLANT_SPACING_AREA", "in_row", "us")).toMatch(/^high: /);
  });

  test.each([null, undefined, "", "  "])("a blank value is a blank: %j", (value) => {
    expect(verdict(value, "RUN_MINUTES", "emitter_flow", "us")).toBe("");
  });

  test("no number is an error, not even one that the function itself would refuse", () => {
    for (const value of [0, -5, 1e300, -1e300, 5e-324]) {
      expect(verdict(value, "LEACHING_FRACTION", "")).toMatch(/^(ok$|low: |high: )/);
      expect(verdict(value, "RUN_MINUTES", "emitters_per_plant")).toBe("no usual range is known");
    }
  });

  test("says so where no usual range is known: words, names of benches, the columns of a table", () => {
    expect(verdict(4, "GROSS_WATER", "basis")).toBe("no usual range is known");
    expect(verdict(4, "FLOOD_SCHEDULE", "bench_names")).toBe("no usual range is known");
    expect(verdict(4, "FLOOD_SCHEDULE", "tank after")).toBe("no usual range is known");
  });

  test("names in any case, with or without the prefix, blanks around them", () => {
    expect(verdict(6, " canyard.run_minutes ", " Emitter_Flow ", "US")).toBe("ok");
  });
});

describe(byAnotherRoute("UNIT_LABEL"), () => {
  const label = (function_name: string, argument: string, units: string): string =>
    textOf("UNIT_LABEL", { function_name, argument, units });

  test.each([
    ["RUN_MINUTES_FROM_ET", "reference_et", "in", "mm"],
    ["CONTAINER_VOLUME", "", "gal", "L"],
    ["FRICTION_LOSS", "inside_diameter", "in", "mm"],
    ["EMITTER_FLOW", "catch_ml", "mL", "mL"],
    ["BOOM_DEPTH", "travel_speed", "ft/min", "m/min"],
    ["PUMP_POWER", "", "hp", "kW"],
    ["FERTILIZER_COST", "price_per_weight", "currency/lb", "currency/kg"],
    ["LEACHING_FRACTION", "", "fraction", "fraction"],
    ["GROSS_WATER", "basis", "", ""],
    ["BOOM_PLAN", "minutes", "min", "min"],
  ])("%s %s: the contract's unit table has %s and %s", (name, argument, us, metric) => {
    expect([label(name, argument, "us"), label(name, argument, "metric")]).toEqual([us, metric]);
  });

  test("has a unit, or none for a word or a name, for every argument of every function", () => {
    for (const entry of catalogue) {
      for (const [name, param] of Object.entries(entry.params)) {
        const wanted = "quantity" in param ? unitOf(param.quantity, "us") : "";
        expect(label(entry.name, name, "us")).toBe(wanted);
      }
    }
  });

  test("a table has no unit as a whole: its columns are offered", () => {
    const tables = catalogue.filter(({ result }) => isTable(result));
    expect(tables.length).toBeGreaterThan(5);
    for (const { name } of tables) {
      const { message } = refusalOf("UNIT_LABEL", { function_name: name, argument: "", units: "us" });
      expect(message).toMatch(/^UNIT_LABEL: argument is blank; it must be one of [A-Z0-9_]+: /);
    }
  });
});

function citationsOf({ source }: Entry): readonly Citation[] {
  return [source].flat() as Citation[];
}

describe(noArithmetic("FUNCTION_SOURCE", "the entries and the reference page"), () => {
  test("names author and place of every source of every function, and what was only recalled", () => {
    for (const entry of catalogue) {
      const text = textOf("FUNCTION_SOURCE", { function_name: entry.name });
      for (const { source, place } of citationsOf(entry)) {
        expect(text).toContain(sources[source].text);
        expect(text).toContain(place);
        if (sources[source].standing === "recalled") expect(text).toContain("recalled, not read again");
      }
    }
  });

  test("is the source that the reference page prints for each function", () => {
    const page = readFileSync(join(ROOT, "docs/FUNCTIONS.md"), "utf8");
    const printed = new Map(
      page
        .split(/^### /m)
        .map((section) => [section.slice(0, section.indexOf("\n")).trim(), /^Source: (.+)\.$/m.exec(section)?.[1]]),
    );
    for (const { name } of catalogue)
      expect(textOf("FUNCTION_SOURCE", { function_name: name })).toBe(printed.get(name));
  });

  test("FAO-56 stands behind Penman-Monteith with its equation 6", () => {
    expect(textOf("FUNCTION_SOURCE", { function_name: "ET0_PENMAN_MONTEITH" })).toMatch(/^Allen, .*Paper 56.*Eq\. 6\b/);
  });
});

describe(noArithmetic("LIBRARY_VERSION", "package.json and the manifest"), () => {
  test("is the version of the package, three numbers", () => {
    expect(textOf("LIBRARY_VERSION", {})).toBe(packageFile.version);
    expect(packageFile.version).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test("is the version of the manifest, which has a fourth number, 0", () => {
    const manifest = readFileSync(join(ROOT, "manifest/manifest.xml"), "utf8");
    expect(/<Version>([^<]+)<\/Version>/.exec(manifest)?.[1]).toBe(`${textOf("LIBRARY_VERSION", {})}.0`);
  });
});

describe("a name that no function has", () => {
  test.each(["CHECK_RANGE", "UNIT_LABEL", "FUNCTION_SOURCE"])("is answered by %s with the nearest three", (name) => {
    const given = { value: 1, function_name: "run_minute", argument: "", units: "us" };
    const { code, argument, message } = refusalOf(name, given);
    expect([code, argument]).toEqual(["#VALUE!", "function_name"]);
    expect(message).toMatch(
      new RegExp(
        `^${name}: function_name is the text "run_minute"; there is no function RUN_MINUTE: did you mean RUN_MINUTES, `,
      ),
    );
  });

  test("is the only thing wrong before the argument is looked at", () => {
    const { message } = refusalOf("CHECK_RANGE", { value: 1, function_name: "RUN_MINUTES", argument: "flow" });
    expect(message).toBe(
      'CHECK_RANGE: argument is the text "flow"; it must be one of RUN_MINUTES: volume_per_plant, emitter_flow or emitters_per_plant, or blank for its answer',
    );
  });
});

describe("the nearest names", () => {
  test.each([
    ["", "abc", 3],
    ["abc", "abc", 0],
    ["kitten", "sitting", 3],
    ["flaw", "lawn", 2],
  ])("%s and %s are %d letters apart", (from, to, apart) => {
    expect(editDistance(from, to)).toBe(apart);
    expect(editDistance(to, from)).toBe(apart);
  });

  test("come nearest first, in the order given where two are as near", () => {
    expect(nearest("cat", ["dog", "cart", "bat", "cat"], 3)).toEqual(["cat", "cart", "bat"]);
  });

  test.each([" canyard.run_minutes", "RUN_MINUTES ", "Canyard.Run_Minutes"])("%j is RUN_MINUTES", (asked) => {
    expect(nameOf(asked)).toBe("RUN_MINUTES");
  });
});

describe("the catalogue is complete", () => {
  test("with every function of the contract, in its order; the arguments of each are held by the editor's test", () => {
    expect(catalogue.map(({ name }) => name)).toEqual(contractNames);
  });
});
