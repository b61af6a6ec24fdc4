/** The cells of an .xlsx file as they are stored, read without the library that wrote it. */
import { strFromU8, unzipSync } from "fflate";

export interface StoredCell {
  readonly value: number | string | boolean | null;
  /** The code of a stored error. */
  readonly error: string | null;
  readonly formula: string | null;
}

export interface StoredSheet {
  readonly name: string;
  readonly part: string;
  readonly cells: ReadonlyMap<string, StoredCell>;
}

export type TextParts = Readonly<Record<string, string>>;

/** Every part of the file as text. */
export function partsOf(bytes: Uint8Array): TextParts {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}

export function sheetsOf(parts: TextParts): readonly StoredSheet[] {
  const targets = new Map(
    elements(parts["xl/_rels/workbook.xml.rels"]!, "Relationship").map(({ attributes }) => [
      attributes["Id"],
      attributes["Target"]!,
    ]),
  );
  const strings = elements(parts["xl/sharedStrings.xml"] ?? "", "si").map(({ content }) => textOf(content));
  return elements(parts["xl/workbook.xml"]!, "sheet").map(({ attributes }) => {
    const part = `xl/${targets.get(attributes["r:id"])!.replace(/^\/?(xl\/)?/, "")}`;
    return { name: plain(attributes["name"]!), part, cells: cellsIn(parts[part]!, strings) };
  });
}

function cellsIn(sheet: string, strings: readonly string[]): ReadonlyMap<string, StoredCell> {
  return new Map(
    elements(sheet, "c").map(({ attributes, content }) => [
      attributes["r"]!,
      storedCell(attributes["t"], content, strings),
    ]),
  );
}

function storedCell(type: string | undefined, content: string, strings: readonly string[]): StoredCell {
  const stored = elements(content, "v")[0]?.content;
  const formula = elements(content, "f")[0];
  return {
    formula: formula ? plain(formula.content) : null,
    error: type === "e" ? (stored ?? "") : null,
    value: valueOf(type, stored, content, strings),
  };
}

function valueOf(
  type: string | undefined,
  stored: string | undefined,
  content: string,
  strings: readonly string[],
): StoredCell["value"] {
  if (type === "inlineStr") return textOf(content);
  if (stored === undefined) return null;
  if (type === "s") return strings[Number(stored)]!;
  if (type === "b") return stored === "1";
  return type === "str" || type === "e" ? plain(stored) : Number(stored);
}

interface Element {
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: string;
}

/** The elements of one name, none of which holds another of its own name. */
export function elements(xml: string, name: string): readonly Element[] {
  const found = xml.matchAll(new RegExp(`<${name}(\\s[^>]*?)?(?:/>|>([\\s\\S]*?)</${name}>)`, "g"));
  return [...found].map(([, attributes = "", content = ""]) => ({
    attributes: Object.fromEntries(
      [...attributes.matchAll(/([\w:]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
    ),
    content,
  }));
}

function textOf(xml: string): string {
  return elements(xml, "t")
    .map(({ content }) => plain(content))
    .join("");
}

export function plain(text: string): string {
  return text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&apos;", "'")
    .replace(/&#(\d+);/g, (_all, code: string) => String.fromCharCode(Number(code)))
    .replaceAll("&amp;", "&");
}
