/** The reference site as it was built: complete, well made, without scripts. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { catalogue, working, type FunctionHelp } from "../../src/functions";
import { parsedPage, readable, tagsUnderstood, tagsWritten } from "../rig/builtPage";

const DIST = join(__dirname, "../../dist");
const FOLDER = join(DIST, "reference");
const names = catalogue.map(({ name }) => name);
const files = readdirSync(FOLDER).filter((file) => file.endsWith(".html"));
const html: Readonly<Record<string, string>> = Object.fromEntries(
  files.map((file) => [file, readFileSync(join(FOLDER, file), "utf8")]),
);
const pages = Object.fromEntries(files.map((file) => [file, parsedPage(html[file]!)]));
const pageOf = (name: string): Document => pages[`${name}.html`]!;

/** What each page gets wrong: file and fault, none where all is well. */
function faultsOf(look: (page: Document, file: string) => readonly string[]): readonly string[] {
  return Object.entries(pages).flatMap(([file, page]) => look(page, file).map((fault) => `${file}: ${fault}`));
}

test("there is one page a function, the index and the style sheet, and no other file", () => {
  const expected = [...names.map((name) => `${name}.html`), "index.html", "reference.css"];
  expect(readdirSync(FOLDER).sort()).toEqual(expected.sort());
});

describe("links", () => {
  const linksOf = (page: Document): readonly string[] =>
    [...page.querySelectorAll("[href], [src]")].map(
      (element) => element.getAttribute("href") ?? element.getAttribute("src") ?? "",
    );

  test("are relative, so that the site works in any folder", () => {
    expect(faultsOf((page) => linksOf(page).filter((link) => /^[a-z]+:|^\//i.test(link)))).toEqual([]);
  });

  test("lead to files of the build, and to places that are on the page", () => {
    const isBroken = (link: string, file: string): boolean => {
      const [path = "", place] = link.split("#");
      const target = path === "" ? file : path;
      if (!existsSync(join(FOLDER, target))) return true;
      // The help finds a function by its name itself.
      if (target.startsWith("../")) return place !== undefined && !names.includes(place);
      return place !== undefined && pages[target]?.getElementById(place) === null;
    };
    expect(faultsOf((page, file) => linksOf(page).filter((link) => isBroken(link, file)))).toEqual([]);
  });

  test("lead from every page to the index, the browser sheet and its place in the help", () => {
    for (const name of names) {
      expect(linksOf(pageOf(name))).toEqual(
        expect.arrayContaining(["index.html", "../index.html", `../help.html#${name}`]),
      );
    }
  });

  test("go through all functions in the order of the job, and back", () => {
    const turn = (rel: string) =>
      names.map((name) => pageOf(name).querySelector(`a[rel=${rel}]`)?.getAttribute("href"));
    expect(turn("next")).toEqual([...names.slice(1).map((name) => `${name}.html`), undefined]);
    expect(turn("prev")).toEqual([undefined, ...names.slice(0, -1).map((name) => `${name}.html`)]);
  });
});

describe("as documents", () => {
  test("they hold no script, no style of their own and nothing that runs", () => {
    const faults = faultsOf((page) =>
      [...page.querySelectorAll("*")]
        .filter(
          ({ localName, attributes }) =>
            ["script", "style", "iframe", "object", "embed", "form", "base"].includes(localName) ||
            [...attributes].some(({ name, value }) => /^on|^style$/.test(name) || /^javascript:/i.test(value)),
        )
        .map(({ localName }) => localName),
    );
    expect(faults).toEqual([]);
  });

  test("they allow themselves one style sheet and one picture from beside them, and nothing else", () => {
    const policy = "default-src 'none'; style-src 'self'; img-src 'self'; base-uri 'none'; form-action 'none'";
    const policyOf = (page: Document) =>
      page.querySelector('meta[http-equiv="Content-Security-Policy"]')?.getAttribute("content");
    expect(faultsOf((page) => (policyOf(page) === policy ? [] : [String(policyOf(page))]))).toEqual([]);
  });

  test("their elements are nested as they are written: the parser neither moves nor adds one", () => {
    const faults = faultsOf((page, file) =>
      tagsUnderstood(page).join(" ") === tagsWritten(html[file]!).join(" ") ? [] : ["is understood differently"],
    );
    expect(faults).toEqual([]);
    const wrong = "<!doctype html><html><head></head><body><p><div></div></p></body></html>";
    expect(tagsUnderstood(parsedPage(wrong))).not.toEqual(tagsWritten(wrong));
  });

  test("lists hold their items only, and no link or region stands in another", () => {
    const WRONG = [
      ":is(ul, ol) > :not(li)",
      "dl > :not(div, dt, dd)",
      "a a",
      "main main",
      "tr > :not(th, td)",
      "p :is(p, ul, ol, table, pre, div, section)",
    ];
    expect(faultsOf((page) => WRONG.filter((selector) => page.querySelector(selector) !== null))).toEqual([]);
  });

  test("no id occurs twice, and what is named by an id is there", () => {
    const faults = faultsOf((page) => {
      const ids = [...page.querySelectorAll("[id]")].map(({ id }) => id);
      const used = [...page.querySelectorAll("[aria-labelledby]")].map((each) => each.getAttribute("aria-labelledby")!);
      return [...ids.filter((id, at) => ids.indexOf(id) !== at), ...used.filter((id) => !ids.includes(id))];
    });
    expect(faults).toEqual([]);
  });

  test("each has a title of its own, a language, one first heading and no level left out below it", () => {
    const titles = Object.values(pages).map(({ title }) => title);
    expect(new Set(titles).size).toBe(files.length);
    const faults = faultsOf((page) => {
      const levels = [...page.querySelectorAll("h1, h2, h3, h4")].map(({ localName }) => Number(localName[1]));
      const isSound =
        page.documentElement.lang === "en" &&
        levels[0] === 1 &&
        levels.slice(1).every((level, at) => level > 1 && level - levels[at]! <= 1);
      return isSound ? [] : [levels.join(" ")];
    });
    expect(faults).toEqual([]);
  });
});

describe("every fact of a function is on its page", () => {
  /** Facts that must stand there as they are in the catalogue. */
  const factsOf = (entry: FunctionHelp): readonly string[] => [
    entry.name,
    entry.group,
    entry.summary,
    ...entry.questions,
    entry.caution,
    entry.formula,
    ...entry.params.flatMap(({ name, about, unitUs, unitMetric, limits, words = [], usual }) => [
      name,
      about,
      unitUs,
      unitMetric,
      limits,
      ...words.map((word) => `"${word}"`),
      ...(usual === undefined ? [] : [usual.source]),
    ]),
    entry.result.about,
    entry.result.unitUs,
    entry.result.unitMetric,
    entry.result.usual?.source ?? "",
    ...entry.examples.map(({ source }) => source),
    ...entry.assumptions,
    ...entry.mistakes,
    ...Object.values(entry.spreadsheetAlone),
    ...entry.source.split("; "),
    ...entry.seeAlso,
  ];

  test.each(catalogue.map((entry) => [entry.name, entry] as const))("%s", (name, entry) => {
    const text = readable(pageOf(name).querySelector("main")?.textContent);
    const missing = factsOf(entry).filter((fact) => !text.includes(readable(fact)));
    expect(missing).toEqual([]);
  });

  const cellsIn = (row: Element): readonly string[] =>
    [...row.children].map(({ textContent }) => readable(textContent));
  const rowsUnder = (name: string, heading: string): readonly (readonly string[])[] =>
    [...pageOf(name).querySelectorAll(`table[aria-labelledby=${heading}] > tbody > tr`)].map(cellsIn);

  test("the table of arguments has a row an argument, in order, with both units and what stands for one left out", () => {
    for (const { name, params } of catalogue) {
      const rows = rowsUnder(name, "arguments");
      const expected = params.map((param) => [param.name, param.about, param.unitUs, param.unitMetric]);
      expect([name, rows.map((row) => row.slice(0, 4))]).toEqual([name, expected]);
      params.forEach(({ optional, repeating, default: start }, at) => {
        const otherwise = rows[at]?.[5] ?? "";
        const place = `${name} ${at + 1}: ${otherwise}`;
        if (start !== undefined) expect(place.toUpperCase()).toContain(String(start).toUpperCase());
        else expect([place, otherwise === "needed"]).toEqual([place, !optional && !repeating]);
      });
    }
  });

  test("usual ranges have their numbers in both units", () => {
    for (const { name, params, result } of catalogue) {
      const described = [...params, { ...result, name: "answer" }].filter(({ usual }) => usual !== undefined);
      const rows = rowsUnder(name, "usual");
      expect([name, rows.map(([what]) => what)]).toEqual([name, described.map((about) => about.name)]);
      described.forEach(({ usual }, at) => {
        const [, us, metric] = rows[at]!;
        expect([name, us]).toEqual([name, expect.stringContaining(`${usual!.us[0]} to ${usual!.us[1]}`)]);
        expect([name, metric]).toEqual([name, expect.stringContaining(`${usual!.metric[0]} to ${usual!.metric[1]}`)]);
      });
    }
  });

  test("the working of the first example is told step by step, and ends in its answer", () => {
    for (const { name, examples } of catalogue) {
      const steps = working(name, examples[0]!.args);
      const shown = [...pageOf(name).querySelectorAll(".steps li")].map(({ textContent }) => readable(textContent));
      expect([name, shown.length]).toEqual([name, steps.length]);
      steps.forEach(({ words, symbols, numbers, value }, at) => {
        for (const part of [words, symbols, numbers]) expect(shown[at]).toContain(readable(part));
        const last = Number([...shown[at]!.matchAll(/= (-?[\d.]+(?:e[-+]\d+)?)/gi)].at(-1)?.[1]);
        expect([name, at, Math.abs(last - value) <= 1e-5 * Math.abs(value)]).toEqual([name, at, true]);
      });
    }
  });
});

test("the index has every function under its group, with its summary and what people ask", () => {
  const index = pages["index.html"]!;
  const sections = [...index.querySelectorAll("main section")];
  for (const { name, group, summary, questions } of catalogue) {
    const section = sections.find((each) => each.querySelector("h2")?.textContent === group)!;
    const item = [...section.querySelectorAll("dl > div")].find(
      (each) => each.querySelector("a")?.textContent === name,
    );
    const text = readable(item?.textContent);
    for (const fact of [summary, ...questions]) expect([name, text]).toEqual([name, expect.stringContaining(fact)]);
  }
  const byName = [...index.querySelectorAll(".names a")].map(({ textContent }) => textContent);
  expect(byName).toEqual([...names].sort());
  const groups = [...new Set(catalogue.map(({ group }) => group))];
  const anchors = [...index.querySelectorAll(".groups a")].map(({ textContent }) => textContent);
  expect(anchors).toEqual(groups);
});
