/** LibreOffice and the PDF tools of the system, for tests of files. */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { pathToFileURL } from "node:url";

/** How LibreOffice treats formulas that come with a value: as they are, or worked anew. */
export type Recalculation = "never" | "always";

const MODES: Readonly<Record<Recalculation, number>> = { always: 0, never: 1 };

function profile(folder: string, recalculation: Recalculation): string {
  const user = join(folder, `profile-${recalculation}`, "user");
  mkdirSync(user, { recursive: true });
  const settings = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry"><item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>${MODES[recalculation]}</value></prop></item></oor:items>`;
  writeFileSync(join(user, "registrymodifications.xcu"), settings);
  return pathToFileURL(join(folder, `profile-${recalculation}`)).href;
}

export class Office {
  private readonly folder = mkdtempSync(join(tmpdir(), "canyard-office-"));

  path(name: string): string {
    return join(this.folder, name);
  }

  /** Writes files and returns the paths, under a folder of their own. */
  write(under: string, files: Readonly<Record<string, Uint8Array>>): readonly string[] {
    mkdirSync(this.path(under), { recursive: true });
    return Object.entries(files).map(([name, bytes]) => {
      const path = join(this.path(under), name);
      writeFileSync(path, bytes);
      return path;
    });
  }

  /** Opens each file and saves it in another form; returns what was made, by the file's name without its ending. */
  convert(
    files: readonly string[],
    to: "xlsx" | "pdf",
    recalculation: Recalculation,
    into: string,
  ): ReadonlyMap<string, string> {
    const outside = this.path(into);
    rmSync(outside, { recursive: true, force: true });
    const settings = `-env:UserInstallation=${profile(this.folder, recalculation)}`;
    run("soffice", [settings, "--headless", "--norestore", "--convert-to", to, "--outdir", outside, ...files]);
    const made = new Map(
      files.map((file) => {
        const name = basename(file, ".xlsx");
        return [name, join(outside, `${name}.${to}`)];
      }),
    );
    const missing = [...made.values()].filter((path) => !readdirSync(outside).includes(basename(path)));
    if (missing.length > 0) throw new Error(`LibreOffice made no ${missing.map((path) => basename(path)).join(", ")}`);
    return made;
  }

  close(): void {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

/** The words of each page, without spaces. */
export function pagesOfText(pdf: string): readonly string[] {
  const text = run("pdftotext", ["-layout", pdf, "-"]).toString("utf8");
  return text
    .split("\f")
    .slice(0, -1)
    .map((page) => page.replace(/\s+/g, ""));
}

/** How often each colour stands on each page, as RRGGBB. */
export function pagesOfColours(pdf: string): readonly ReadonlyMap<string, number>[] {
  const drawn = run("pdftoppm", ["-r", "60", "-aa", "no", "-aaVector", "no", pdf]);
  const pages: ReadonlyMap<string, number>[] = [];
  for (let at = 0; at < drawn.length;) {
    const head = /^P6\s+(\d+)\s+(\d+)\s+255\s/.exec(drawn.subarray(at, at + 40).toString("latin1"))!;
    const start = at + head[0].length;
    at = start + Number(head[1]) * Number(head[2]) * 3;
    pages.push(colours(drawn.subarray(start, at)));
  }
  return pages;
}

function colours(pixels: Buffer): ReadonlyMap<string, number> {
  const counts = new Map<number, number>();
  for (let at = 0; at < pixels.length; at += 3) {
    const colour = pixels.readUIntBE(at, 3);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return new Map([...counts].map(([colour, count]) => [colour.toString(16).padStart(6, "0").toUpperCase(), count]));
}

function run(program: string, args: readonly string[]): Buffer {
  try {
    return execFileSync(program, args, { maxBuffer: 1024 ** 3, stdio: ["ignore", "pipe", "pipe"] });
  } catch (thrown) {
    if ((thrown as NodeJS.ErrnoException).code !== "ENOENT") throw thrown;
    throw new Error(
      `${program} is not here. On Debian: apt-get install --no-install-recommends libreoffice-calc-nogui poppler-utils fonts-liberation`,
    );
  }
}

export function readBytes(path: string): Uint8Array {
  return new Uint8Array(readFileSync(path));
}
