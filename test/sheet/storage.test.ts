import { render } from "../../src/sheet/render";
import { STORAGE_KEYS, workbookStorage } from "../../src/sheet/storage";
import type { NamedWorkbook } from "../../src/sheet/workbookFile";
import { toText } from "../../src/sheet/workbookFile";
import { blank } from "../../src/workbooks/blank";

const workbook = (name: string): NamedWorkbook => ({ name, data: render(blank) });

function area(content: Record<string, string> = {}, setItem?: () => void): Storage {
  const kept = new Map(Object.entries(content));
  const write = (key: string, text: string) => void kept.set(key, text);
  return { getItem: (key: string) => kept.get(key) ?? null, setItem: setItem ?? write } as unknown as Storage;
}

function restore(from: Storage, unusable: readonly string[] = []) {
  const opened: string[] = [];
  const outcome = workbookStorage(() => from).restore(({ name }) => {
    if (unusable.includes(name)) throw new Error("the engine cannot open it");
    opened.push(name);
  });
  return { outcome, opened };
}

beforeEach(() => void jest.spyOn(console, "error").mockImplementation(() => {}));
afterEach(() => jest.restoreAllMocks());

it("finds nothing in a fresh browser", () => {
  expect(restore(area())).toEqual({ outcome: "nothing stored", opened: [] });
});

it("restores what was saved, and keeps it as the last good one", () => {
  const here = area();
  expect(workbookStorage(() => here).save(workbook("House 4"))).toBe("saved");
  expect(restore(here)).toEqual({ outcome: "restored", opened: ["House 4"] });
  expect(here.getItem(STORAGE_KEYS.lastGood)).toBe(toText(workbook("House 4")));
});

it("falls back to the last good one, and sets the unreadable one aside", () => {
  const here = area({ [STORAGE_KEYS.present]: "{cut", [STORAGE_KEYS.lastGood]: toText(workbook("Before")) });
  expect(restore(here)).toEqual({ outcome: "last good restored", opened: ["Before"] });
  expect(here.getItem(STORAGE_KEYS.setAside)).toBe("{cut");
});

it("treats a workbook that the engine cannot open as unreadable", () => {
  const here = area({ [STORAGE_KEYS.present]: toText(workbook("Bad")) });
  expect(restore(here, ["Bad"])).toEqual({ outcome: "unreadable", opened: [] });
  expect(here.getItem(STORAGE_KEYS.setAside)).not.toBeNull();
});

it("tells a full storage from a refused one", () => {
  const full = area({}, () => {
    throw new DOMException("no room", "QuotaExceededError");
  });
  const forbidden = () => {
    throw new DOMException("no access", "SecurityError");
  };
  expect(workbookStorage(() => full).save(workbook("A"))).toBe("full");
  expect(workbookStorage(forbidden).save(workbook("A"))).toBe("refused");
  expect(workbookStorage(forbidden).restore(() => {})).toBe("refused");
});
