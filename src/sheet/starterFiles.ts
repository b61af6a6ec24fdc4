/** The starter workbooks, which lie beside this page and are fetched when they are asked for. */
import type { Workbook } from "../workbooks/model";

export type Edition = "us" | "metric";

export interface ListedStarter {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly editions: readonly Edition[];
}

export interface StarterFiles {
  list(): Promise<readonly ListedStarter[]>;
  workbook(id: string, edition: Edition): Promise<Workbook>;
}

const FOLDER = "starters/";

type Fetch = (file: string) => Promise<Pick<Response, "ok" | "status" | "json">>;

export function starterFiles(fetchFile: Fetch = (file) => fetch(file)): StarterFiles {
  const read = async (name: string): Promise<unknown> => {
    const file = FOLDER + name;
    const response = await fetchFile(file);
    if (!response.ok) throw new Error(`${file} is missing (${response.status})`);
    return response.json();
  };
  return {
    async list() {
      const found = await read("index.json");
      if (!Array.isArray(found) || !found.every(isListed)) throw new Error("the list of starters is damaged");
      return found;
    },
    async workbook(id, edition) {
      const found = (await read(`${id}-${edition}.json`)) as { readonly workbook?: Workbook } | null;
      if (!Array.isArray(found?.workbook?.sheets)) throw new Error(`the starter ${id} is damaged`);
      return found.workbook;
    },
  };
}

function isListed(entry: unknown): entry is ListedStarter {
  const { id, title, purpose, editions } = (entry ?? {}) as Partial<ListedStarter>;
  return [id, title, purpose].every((text) => typeof text === "string") && Array.isArray(editions);
}
