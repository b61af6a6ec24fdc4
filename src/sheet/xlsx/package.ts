/** The parts of an .xlsx file by their paths, and how they refer to one another. */
import { all, attribute, parse } from "./xml";

export type Bytes = Readonly<Record<string, Uint8Array>>;

export interface Relationship {
  readonly id: string;
  /** The last word of its type: "worksheet", "chart", "image". */
  readonly kind: string;
  /** The path of a part, or an address outside the file. */
  readonly target: string;
  readonly isOutside: boolean;
}

const utf8 = new TextDecoder();

export class Package {
  private readonly documents = new Map<string, Document>();

  constructor(private readonly bytes: Bytes) {}

  get paths(): string[] {
    return Object.keys(this.bytes);
  }

  raw(path: string): Uint8Array {
    return this.bytes[path]!;
  }

  has(path: string): boolean {
    return path in this.bytes;
  }

  /** The same document at every call, so that changes to it stay. */
  document(path: string): Document {
    const known = this.documents.get(path);
    if (known) return known;
    const bytes = this.bytes[path];
    if (!bytes) throw new Error(`the file has no part ${path}`);
    const document = parse(utf8.decode(bytes));
    this.documents.set(path, document);
    return document;
  }

  replace(path: string, text: string): void {
    this.documents.set(path, parse(text));
  }

  relationships(path: string): Relationship[] {
    const rels = relsOf(path);
    if (!this.has(rels)) return [];
    return all(this.document(rels), "Relationship").map((element) => {
      const isOutside = attribute(element, "TargetMode") === "External";
      const target = attribute(element, "Target") ?? "";
      return {
        id: attribute(element, "Id") ?? "",
        kind: (attribute(element, "Type") ?? "").split("/").at(-1)!,
        target: isOutside ? target : resolved(path, target),
        isOutside,
      };
    });
  }
}

export function relsOf(path: string): string {
  const cut = path.lastIndexOf("/") + 1;
  return `${path.slice(0, cut)}_rels/${path.slice(cut)}.rels`;
}

function resolved(from: string, target: string): string {
  const steps = target.startsWith("/") ? [] : from.split("/").slice(0, -1);
  for (const step of target.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}

/** How a part is called from another's folder. */
export function relative(from: string, target: string): string {
  const here = from.split("/").slice(0, -1);
  const there = target.split("/");
  while (here.length > 0 && here[0] === there[0] && there.length > 1) {
    here.shift();
    there.shift();
  }
  return [...here.map(() => ".."), ...there].join("/");
}
