/** A page of dist/ as a browser's parser makes it. */
import { JSDOM } from "jsdom";

const { DOMParser } = new JSDOM("").window;

export function parsedPage(html: string): Document {
  return new DOMParser().parseFromString(html, "text/html");
}

/** Text as a person reads it: one blank between words, whatever stands in the file. */
export function readable(text: string | null | undefined): string {
  return (text ?? "").replace(/\s+/g, " ").trim();
}

/** The names of all elements in their order, as they are written. */
export function tagsWritten(html: string): readonly string[] {
  return [...html.matchAll(/<([a-z][a-z0-9]*)/g)].map(([, name]) => name as string);
}

/** The same as the parser understood them: it moves or adds elements where the nesting is not that of the language. */
export function tagsUnderstood(page: Document): readonly string[] {
  return [...page.querySelectorAll("*")].map(({ localName }) => localName);
}
