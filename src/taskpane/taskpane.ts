/** The function list of the pane: every entry of the catalogue, found by its name or its words. */
import type * as Bundle from "../functions";

declare global {
  interface Window {
    readonly canyard?: typeof Bundle;
  }
}

type Library = typeof Bundle;
type FunctionHelp = Library["catalogue"][number];

function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  ...children: (Node | string)[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name);
  made.append(...children);
  return made;
}

function byId(id: string): HTMLElement {
  const found = document.getElementById(id);
  if (found === null) throw new Error(`the page has no #${id}`);
  return found;
}

function formulaOf({ name, params }: FunctionHelp, namespace: string): string {
  const shown = params.map((parameter) => (parameter.optional ? `[${parameter.name}]` : parameter.name));
  return `=${namespace}.${name}(${shown.join(", ")})`;
}

function argumentList({ params }: FunctionHelp): HTMLElement {
  const list = element("dl");
  for (const { name, about, unit, optional } of params) {
    const unitText = unit === "" ? "" : ` (${unit})`;
    list.append(
      element("dt", element("code", name), optional ? " may be left out" : ""),
      element("dd", `${about}${unitText}`),
    );
  }
  return list;
}

function entryOf(entry: FunctionHelp, namespace: string): HTMLElement {
  const details = element("details", element("summary", element("strong", entry.name), ` ${entry.summary}`));
  details.id = entry.name;
  details.append(element("pre", element("code", formulaOf(entry, namespace))), argumentList(entry));
  details.append(element("p", `Formula: ${entry.formula}`));
  if (entry.caution !== "") details.append(element("p", element("strong", "Caution: "), entry.caution));
  details.append(element("p", `Source: ${entry.source}.`));
  return details;
}

function matches({ name, summary, group, params }: FunctionHelp, words: readonly string[]): boolean {
  const text = [name, summary, group, ...params.map((parameter) => `${parameter.name} ${parameter.about}`)]
    .join(" ")
    .replace(/_/g, " ")
    .toLowerCase();
  return words.every((word) => text.includes(word));
}

function showFunctions({ catalogue, NAMESPACE }: Library, wanted: string): void {
  const words = wanted.toLowerCase().replace(/_/g, " ").split(/\s+/).filter(Boolean);
  const found = catalogue.filter((entry) => matches(entry, words));
  const groups = [...new Set(found.map(({ group }) => group))];
  byId("functions").replaceChildren(
    ...groups.map((group) =>
      element(
        "section",
        element("h2", group),
        ...found.filter((entry) => entry.group === group).map((entry) => entryOf(entry, NAMESPACE)),
      ),
    ),
  );
  byId("found").textContent = found.length === 1 ? "1 function" : `${found.length} functions`;
}

function openNamed(): void {
  const named = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (named instanceof HTMLDetailsElement) {
    named.open = true;
    named.scrollIntoView();
  }
}

function start(): void {
  const library = window.canyard;
  if (library === undefined) {
    byId("found").textContent = "The functions did not arrive. Loading the page again may help.";
    return;
  }
  const search = byId("search") as HTMLInputElement;
  search.addEventListener("input", () => showFunctions(library, search.value));
  byId("version").textContent = `Version ${library.VERSION}`;
  showFunctions(library, "");
  openNamed();
  window.addEventListener("hashchange", openNamed);
}

start();
