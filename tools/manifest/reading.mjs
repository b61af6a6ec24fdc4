/** A manifest as the rules look at it. */
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { DOMParser } from "@xmldom/xmldom";

const XSI = "http://www.w3.org/2001/XMLSchema-instance";

/** The XML document; throws a sentence where it is not well-formed. */
export function parsed(text) {
  const stop = (_level, message) => {
    throw new Error(`it is not well-formed XML: ${String(message).split("\n")[0]}`);
  };
  return new DOMParser({ onError: stop }).parseFromString(text, "text/xml");
}

export const elementsOf = (node) => Array.from(node.childNodes ?? []).filter(({ nodeType }) => nodeType === 1);

/** Every element of the document below a node, the node itself left out. */
export const allBelow = (node) => elementsOf(node).flatMap((child) => [child, ...allBelow(child)]);

export const typeOf = (element) => element.getAttributeNS(XSI, "type") ?? "";

/** An element's children of a name. */
export const named = (element, name) => elementsOf(element).filter(({ localName }) => localName === name);

/** The element at a path of names, or undefined. */
export function at(element, ...path) {
  return path.reduce((found, name) => found && named(found, name)[0], element);
}

/** What is read once and used by many rules. */
export function manifestIn(folder, text) {
  const root = parsed(text).documentElement;
  const overrides = at(root, "VersionOverrides");
  const resources = overrides && at(overrides, "Resources");
  const resource = (kind) => (resources ? elementsOf(at(resources, kind) ?? resources).filter((each) => each.getAttribute("id")) : []);
  const file = (name) => join(folder, name);
  const source = at(root, "DefaultSettings", "SourceLocation")?.getAttribute("DefaultValue") ?? "";
  return {
    root,
    overrides,
    urls: resource("Urls"),
    images: resource("Images"),
    shortStrings: resource("ShortStrings"),
    longStrings: resource("LongStrings"),
    source,
    /** The folder that everything is served from. */
    base: URL.canParse(source) ? new URL(".", source).href : "",
    has: (name) => existsSync(file(name)),
    bytes: (name) => readFileSync(file(name)),
    textOf: (name) => readFileSync(file(name), "utf8"),
  };
}

/** Every address of a manifest, with the element that has it. */
export function addresses({ root }) {
  return [root, ...allBelow(root)].flatMap((element) => {
    const value = element.localName === "AppDomain" ? element.textContent.trim() : element.getAttribute("DefaultValue");
    const isAddress = element.localName === "AppDomain" || /Url$|^Url$|SourceLocation|^Image$/.test(element.localName);
    return isAddress && value ? [{ element, value }] : [];
  });
}

/** The resource that an id names, of whatever kind. */
export function resourceOf(manifest, id) {
  return [...manifest.urls, ...manifest.images, ...manifest.shortStrings, ...manifest.longStrings].find(
    (each) => each.getAttribute("id") === id,
  );
}

export function nameOf(element) {
  const id = element.getAttribute("id") || element.getAttribute("resid");
  return id ? `${element.localName} ${id}` : element.localName;
}
