/** The parts of a packed file are XML; prefixes differ from writer to writer, so elements are found by their bare names. */

export function parse(text: string): Document {
  const document = new DOMParser().parseFromString(text.replace(/^\uFEFF/, ""), "application/xml");
  if (document.getElementsByTagName("parsererror").length > 0) throw new Error("a part of the file is damaged");
  return document;
}

export function written(document: Document): string {
  const text = new XMLSerializer().serializeToString(document);
  return text.startsWith("<?xml") ? text : `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n${text}`;
}

export function all(parent: Document | Element, name: string): Element[] {
  return Array.from(parent.getElementsByTagNameNS("*", name));
}

export function first(parent: Document | Element, name: string): Element | undefined {
  return parent.getElementsByTagNameNS("*", name)[0];
}

export function child(parent: Element, name: string): Element | undefined {
  return children(parent).find(({ localName }) => localName === name);
}

export function children(parent: Element): Element[] {
  return Array.from(parent.childNodes).filter((node): node is Element => node.nodeType === 1);
}

/** A new element of the same vocabulary as its parent. */
export function add(parent: Element, name: string, attributes: Readonly<Record<string, string>> = {}): Element {
  const prefix = parent.prefix ? `${parent.prefix}:` : "";
  const element = parent.ownerDocument.createElementNS(parent.namespaceURI, prefix + name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  parent.append(element);
  return element;
}

/** An attribute by its bare name, whatever its prefix. */
export function attribute(element: Element, name: string): string | undefined {
  return Array.from(element.attributes).find(({ localName }) => localName === name)?.value;
}
