import { catalogue } from "../../src/functions/catalogue";
import {
  evaluate,
  GROUPS,
  isOptional,
  isRepeating,
  isScalar,
  isTable,
  sources,
  symbolsIn,
  work,
} from "../../src/kernel";
import { quantities } from "../../src/kernel/units";
import type { Citation, Entry, Param, ScalarResult } from "../../src/kernel";
import { catalogueExamples, scalarExamples } from "../rig/catalogueExamples";
import { relativeDifference } from "../rig/closeness";
import { contractArguments, contractNames } from "../rig/contractNames";
import { EXCEL_4_MACRO_NAMES, looksLikeCell } from "../rig/hostNames";
import { mistakeAnswer } from "../rig/mistakeAnswer";

const LONGEST_TEXT = 128;

/** Argument names that may carry several quantities, each with its reason. */
const ALLOWED_QUANTITIES: Readonly<Record<string, string>> = {
  depth: "of water in a tank, of water on pots in a run, of water on an area in a day",
  target: "a leaching fraction to run for; in a blend any one unit",
  flows: "of emitters in a survey, of zones in a sequence",
  height: "of a pot in inches or cm, of an anemometer in feet or m",
  rain: "of the gauge as a depth; in a balance in the unit of its other columns",
  drained_volume: "out of a porometer's core in mL, out of a pot in the unit of its volume",
  wet_weight: "of a porometer's core in g, of a pot or a mat in lb or kg",
  dry_weight: "of a porometer's core in g, of a pot or a mat in lb or kg",
  volume: "of water; of a bill in the bill's own unit",
  low: "an edge of a band as a ratio; in an exercise any one unit",
  high: "an edge of a band as a ratio; in an exercise any one unit",
  from: "a unit out of a short list of EC, or any unit as it is spelt",
  to: "a unit out of a short list of EC, or any unit as it is spelt",
};

const byName = catalogue.map((entry) => ({ name: entry.name, entry }));

function argumentsOf(entry: Entry): [name: string, param: Param][] {
  return Object.entries(entry.params);
}

describe("the catalogue as a whole", () => {
  test("follows the order of the contract, with no name twice and none outside it", () => {
    const names = catalogue.map(({ name }) => name);
    expect(names).toEqual(contractNames.filter((name) => names.includes(name)));
  });

  test("the contract has its 112 names, each once", () => {
    expect(contractNames).toHaveLength(112);
  });

  test("runs through the groups in the order of the job", () => {
    const order = catalogue.map(({ group }) => GROUPS.indexOf(group));
    expect(order).toEqual([...order].sort((a, b) => a - b));
  });

  test("an argument's name carries the same quantity in every function", () => {
    const carried = new Map<string, Map<string, string[]>>();
    for (const entry of catalogue) {
      for (const [name, param] of argumentsOf(entry)) {
        const what = "quantity" in param ? param.quantity : (param.kind ?? "");
        const uses = carried.get(name) ?? new Map<string, string[]>();
        uses.set(what, [...(uses.get(what) ?? []), entry.name]);
        carried.set(name, uses);
      }
    }
    const differing = [...carried].filter(([name, uses]) => uses.size > 1 && !(name in ALLOWED_QUANTITIES));
    expect(differing).toEqual([]);
  });
});

describe("names that a cell looks like are known", () => {
  test.each(["A1", "XFD1048576", "R1C1", "RC", "R", "C", "EC50", "DU25"])("%s looks like a cell", (name) => {
    expect(looksLikeCell(name)).toBe(true);
  });

  test.each(["XFE1", "A1048577", "A0", "ET0_TABLE", "RUN_MINUTES", "R1C1X"])("%s does not", (name) => {
    expect(looksLikeCell(name)).toBe(false);
  });
});

describe("the last step carries the symbol and the quantity of the answer", () => {
  test.each(scalarExamples)("$title", ({ entry, args }) => {
    const { symbol, quantity } = entry.result as ScalarResult;
    expect(work(entry, args).steps.at(-1)).toMatchObject({ symbol, quantity });
  });
});

describe.each(byName)("$name", ({ entry }) => {
  const params = argumentsOf(entry);
  const examples = catalogueExamples.filter((example) => example.entry === entry);

  test("has a name that a spreadsheet host takes", () => {
    expect(entry.name).toMatch(/^[A-Z][A-Z0-9_]{2,63}$/);
    expect(looksLikeCell(entry.name)).toBe(false);
    expect(EXCEL_4_MACRO_NAMES.has(entry.name)).toBe(false);
  });

  test("takes the arguments of the contract in its order", () => {
    const repeats = params.some(([, param]) => isRepeating(param));
    const written = ([name, param]: (typeof params)[number]): string => {
      if (isRepeating(param)) return `${name}...`;
      return isOptional(param) && !repeats ? `[${name}]` : name;
    };
    const list = params.map(written).join(" ");
    expect(list).toBe(contractArguments[entry.name]);
  });

  test("names its arguments in lower case, whole words joined by underscores", () => {
    for (const [name] of params) expect(name).toMatch(/^[a-z][a-z0-9]*(_[a-z0-9]+)*$/);
  });

  test("puts units last of the required arguments, and only optional ones behind required ones", () => {
    const optional = params.map(([, param]) => isOptional(param));
    expect(optional).toEqual([...optional].sort((a, b) => Number(a) - Number(b)));
    const units = params.findIndex(([name]) => name === "units");
    const optionalBehind = optional.filter(Boolean).length;
    expect([-1, params.length - optionalBehind - 1, params.length - 1]).toContain(units);
  });

  test("brings constants of the units only where it takes units", () => {
    if ("units" in entry.params) expect(entry.params["units"]).toMatchObject({ words: ["us", "metric"] });
    else expect(entry.unitConstants ?? {}).toEqual({});
  });

  test("uses no symbol for two things", () => {
    const known = params.flatMap(([, param]) => ("symbol" in param ? [param.symbol] : []));
    known.push(...Object.keys(entry.unitConstants ?? {}));
    expect(new Set(known).size).toBe(known.length);
    for (const { args } of examples) {
      const recorded = work(entry, args).steps.map(({ symbol }) => symbol);
      expect(recorded.filter((symbol, index) => known.includes(symbol) || recorded.indexOf(symbol) !== index)).toEqual(
        [],
      );
    }
  });

  test("writes its steps in symbols that are already known", () => {
    for (const { args } of examples) {
      const { steps, values } = work(entry, args);
      const known = new Set(values.keys());
      for (const { symbol, formula } of steps) {
        expect({ formula, unknown: symbolsIn(formula).filter((used) => !known.has(used)) }).toEqual({
          formula,
          unknown: [],
        });
        known.add(symbol);
      }
    }
  });

  test("has symbols that a formula can carry", () => {
    const { result } = entry;
    const symbols = params.flatMap(([, param]) => ("symbol" in param ? [param.symbol] : []));
    for (const symbol of [...symbols, ...(isScalar(result) ? [result.symbol] : [])]) {
      expect(symbolsIn(symbol)).toEqual([symbol]);
    }
  });

  test("takes a word by default that it knows", () => {
    for (const [name, param] of params) {
      if (param.kind !== "word" || param.default === undefined) continue;
      expect({ name, words: param.words }).toEqual({ name, words: expect.arrayContaining([param.default]) });
    }
  });

  test("records every step under a symbol", () => {
    for (const { args } of examples) {
      for (const { symbol } of work(entry, args).steps) expect(symbolsIn(symbol)).toEqual([symbol]);
    }
  });

  test("names the columns of a table, each with a known quantity; a header shows the names", () => {
    const { result } = entry;
    if (!isTable(result)) return;
    for (const { name, quantity } of result.table) {
      expect(name).not.toBe("");
      expect(["text", ...Object.keys(quantities)]).toContain(quantity);
    }
    const names = result.table.map(({ name }) => name);
    for (const { gives } of examples) {
      expect(JSON.stringify((gives as unknown[][])[0]) === JSON.stringify(names)).toBe(result.header);
    }
  });

  test("sends the reader on to functions of the contract, and not to itself", () => {
    expect(entry.seeAlso.length).toBeGreaterThan(0);
    expect(entry.seeAlso.filter((name) => !contractNames.includes(name) || name === entry.name)).toEqual([]);
  });

  test("has texts that fit the host's help, without a final full stop", () => {
    const texts = [entry.summary, entry.result.about, ...params.map(([, param]) => param.about)];
    for (const text of texts) {
      expect(text.length).toBeGreaterThan(0);
      expect(text.length).toBeLessThanOrEqual(LONGEST_TEXT);
      expect(text).not.toMatch(/[.\s]$/);
    }
  });

  test("has a formula, assumptions, a source and two worked examples or more, or the one call that it has", () => {
    expect(entry.formula).not.toBe("");
    expect(entry.assumptions.length).toBeGreaterThan(0);
    expect(examples.length).toBeGreaterThanOrEqual(params.length === 0 ? 1 : 2);
    const citations: Citation[] = [entry.source, ...entry.examples.map(({ from }) => from)].flat() as Citation[];
    for (const { source, place } of citations) {
      expect(Object.keys(sources)).toContain(source);
      expect(place).not.toBe("");
    }
  });

  test("prints the answers of its examples to 2 % or better", () => {
    for (const { gives, within = 0 } of examples) {
      const cells = typeof gives === "object" ? gives.flat() : [gives];
      const numbers = cells.filter((cell) => typeof cell === "number");
      for (const number of numbers) expect(within).toBeLessThanOrEqual(0.02 * Math.abs(number));
    }
  });

  test("names mistakes whose answers can be told from the right one, by more than 0.5 % in an example", () => {
    for (const mistake of entry.mistakes) {
      const differences = examples.map(({ args }) => {
        const wrong = mistakeAnswer(entry, mistake, args);
        return wrong === null ? 0 : relativeDifference(wrong, evaluate(entry, args) as number);
      });
      expect({ slip: mistake.slip, far: differences.some((difference) => difference > 0.005) }).toEqual({
        slip: mistake.slip,
        far: true,
      });
    }
  });
});
