import fc from "fast-check";
import { sealed } from "../../src/sheet/seal";
import type { WorkbookStorage } from "../../src/sheet/storage";
import { workbookStorage } from "../../src/sheet/storage";
import { STORAGE_KEYS } from "../../src/sheet/storedTexts";
import type { NamedWorkbook } from "../../src/sheet/workbookFile";
import { NewerFile, toText } from "../../src/sheet/workbookFile";
import { MemoryStorage } from "../rig/memoryStorage";

const { present: PRESENT, before: BEFORE, lastGood: LAST_GOOD, setAside: ASIDE } = STORAGE_KEYS;
const NOON = new Date("2026-05-04T12:00:00Z");
const SEED = 20261129;

/** Small, so that every place of its text can be tried; the engine opens it as well. */
const DATA = { version: "19.3.2", sheets: [{ id: "a", name: "Plan", cells: { A1: "=1+1", B2: "six – 6" } }] };

const workbook = (name: string): NamedWorkbook => ({ name, data: DATA });
const text = (name: string) => toText(workbook(name), NOON);
/** As the first release kept it. */
const early = (name: string, formatVersion = 1) =>
  JSON.stringify({ format: "Canyard workbook", formatVersion, ...workbook(name) });
const newer = (name: string) =>
  sealed(JSON.stringify({ format: "Canyard workbook", formatVersion: 2, saved: NOON.toISOString(), book: name }));

const tab = (area: Storage): WorkbookStorage =>
  workbookStorage(
    () => area,
    () => NOON,
  );

async function restoreIn(storage: WorkbookStorage, { unusable = [] as readonly string[], mayWrite = true } = {}) {
  const opened: string[] = [];
  const { outcome, damaged } = await storage.restore(async ({ name }) => {
    if (unusable.includes(name)) throw new Error("the engine cannot open it");
    if (name === "newer engine") throw new NewerFile();
    opened.push(name);
  }, mayWrite);
  return { outcome, damaged, opened };
}
const restore = (area: Storage, how = {}) => restoreIn(tab(area), how);

/** A tab that has opened what lies there. */
async function openTab(area: Storage): Promise<WorkbookStorage> {
  const storage = tab(area);
  await restoreIn(storage);
  return storage;
}

beforeEach(() => void jest.spyOn(console, "error").mockImplementation(() => {}));
afterEach(() => jest.restoreAllMocks());

describe("an orderly browser", () => {
  test("nothing is found in a fresh one", async () => {
    expect(await restore(new MemoryStorage())).toEqual({
      outcome: { kind: "nothing stored" },
      damaged: "none",
      opened: [],
    });
  });

  test("what was saved is restored with its time, and kept as the last one that opened well", async () => {
    const area = new MemoryStorage();
    expect(tab(area).save(workbook("House 4"))).toBe("saved");
    expect(await restore(area)).toEqual({
      outcome: { kind: "restored", savedAt: NOON },
      damaged: "none",
      opened: ["House 4"],
    });
    expect(area.getItem(LAST_GOOD)).toBe(text("House 4"));
  });

  test("the save before lies beside the last one", async () => {
    const area = new MemoryStorage();
    const storage = tab(area);
    for (const name of ["one", "two", "three"]) expect(storage.save(workbook(name))).toBe("saved");
    expect([area.getItem(PRESENT), area.getItem(BEFORE)]).toEqual([text("three"), text("two")]);
  });

  test("what the first release kept opens, has no time, and is saved anew with a checksum", async () => {
    const area = new MemoryStorage({ [PRESENT]: early("House 4"), [LAST_GOOD]: early("House 3") });
    const storage = tab(area);
    expect(await restoreIn(storage)).toEqual({ outcome: { kind: "restored" }, damaged: "none", opened: ["House 4"] });
    expect(storage.save(workbook("House 5"))).toBe("saved");
    expect([area.getItem(PRESENT), area.getItem(BEFORE)]).toEqual([text("House 5"), early("House 4")]);
  });

  test("the first release reads what is kept now", () => {
    expect(JSON.parse(text("House 4"))).toMatchObject(JSON.parse(early("House 4")));
  });
});

describe("a damaged workbook", () => {
  const before = toText(workbook("before"), new Date("2026-05-04T11:00:00Z"));
  const restored = {
    outcome: { kind: "earlier one restored", latest: "unreadable", savedAt: new Date("2026-05-04T11:00:00Z") },
    damaged: "set aside",
    opened: ["before"],
  };

  async function expectEarlierOne(damaged: string): Promise<void> {
    const area = new MemoryStorage({ [PRESENT]: damaged, [BEFORE]: before });
    expect([damaged, await restore(area)]).toEqual([damaged, restored]);
    expect(area.getItem(ASIDE)).toBe(damaged);
    // The next opening finds it in its place.
    expect(await restore(area)).toMatchObject({ outcome: { kind: "restored" }, opened: ["before"] });
    expect(tab(area).asideTexts()).toEqual([{ key: ASIDE, text: damaged }]);
  }

  test("cut short after any character: the one before comes back, the rest of it is set aside", async () => {
    const whole = text("now");
    for (let length = 0; length < whole.length; length += 1) await expectEarlierOne(whole.slice(0, length));
  });

  test("with any one character another: likewise", async () => {
    const whole = text("now");
    const others = fc.sample(fc.integer({ min: 1, max: 0xffff }), { seed: SEED, numRuns: whole.length });
    const bits = fc.sample(fc.integer({ min: 0, max: 6 }), { seed: SEED, numRuns: whole.length });
    for (let at = 0; at < whole.length; at += 1) {
      const code = whole.charCodeAt(at);
      for (const changed of [code ^ others[at]!, code ^ (1 << bits[at]!)])
        await expectEarlierOne(whole.slice(0, at) + String.fromCharCode(changed) + whole.slice(at + 1));
    }
  }, 60_000);

  test("that the engine cannot open is unreadable too", async () => {
    const area = new MemoryStorage({
      [PRESENT]: text("bad"),
      [BEFORE]: text("bad as well"),
      [LAST_GOOD]: early("good"),
    });
    expect(await restore(area, { unusable: ["bad", "bad as well"] })).toEqual({
      outcome: { kind: "earlier one restored", latest: "unreadable" },
      damaged: "set aside",
      opened: ["good"],
    });
    expect(
      tab(area)
        .asideTexts()
        .map((each) => each.text),
    ).toEqual([text("bad"), text("bad as well")]);
  });

  test("with nothing before it is set aside, and stays there after the next save", async () => {
    const area = new MemoryStorage({ [PRESENT]: "{cut" });
    const storage = tab(area);
    expect(await restoreIn(storage)).toEqual({ outcome: { kind: "unreadable" }, damaged: "set aside", opened: [] });
    expect(storage.save(workbook("fresh"))).toBe("saved");
    expect([area.getItem(PRESENT), area.getItem(ASIDE)]).toEqual([text("fresh"), "{cut"]);
    expect(area.getItem(BEFORE)).toBeNull();
  });

  test("a second one is set aside beside the first, until the person throws one away", async () => {
    const area = new MemoryStorage({ [PRESENT]: "{second", [BEFORE]: before, [ASIDE]: "{first" });
    const storage = tab(area);
    await restoreIn(storage);
    expect(storage.asideTexts().map((each) => each.text)).toEqual(["{first", "{second"]);
    storage.removeAside(ASIDE);
    expect(storage.asideTexts().map((each) => each.text)).toEqual(["{second"]);
  });

  test("a missing one: the one before comes back", async () => {
    expect(await restore(new MemoryStorage({ [BEFORE]: before }))).toMatchObject({
      outcome: { kind: "earlier one restored", latest: "missing" },
      damaged: "none",
      opened: ["before"],
    });
  });

  test("without room beside it it is not replaced until the person lets it go", async () => {
    const area = new MemoryStorage({ [PRESENT]: text("now").slice(0, -1), [BEFORE]: before });
    area.room = area.size;
    const storage = tab(area);
    expect(await restoreIn(storage)).toMatchObject({ damaged: "no room to set it aside", opened: ["before"] });
    expect(storage.save(workbook("next"))).toBe("no room aside");
    expect(storage.release()).toBe(false);
    expect(storage.unreadTexts()).toEqual([text("now").slice(0, -1)]);
    expect(area.getItem(PRESENT)).toBe(text("now").slice(0, -1));
    storage.discard();
    area.room += 100;
    expect(storage.save(workbook("next"))).toBe("saved");
  });

  test("a tab that may not write sets nothing aside, but does so before it replaces it later", async () => {
    const area = new MemoryStorage({ [PRESENT]: "{cut", [BEFORE]: before });
    const storage = tab(area);
    expect(await restoreIn(storage, { mayWrite: false })).toMatchObject({ damaged: "none", opened: ["before"] });
    expect([area.getItem(PRESENT), area.getItem(ASIDE), area.getItem(LAST_GOOD)]).toEqual(["{cut", null, null]);
    expect(storage.save(workbook("next"))).toBe("saved");
    expect(area.getItem(ASIDE)).toBe("{cut");
  });
});

describe("a workbook of a newer version", () => {
  test.each([
    ["of the file", newer("now")],
    ["of the file, without a checksum", early("now", 2)],
    ["of the engine", text("newer engine")],
  ])("%s stays as it is, and no earlier one is opened", async (_, kept) => {
    const area = new MemoryStorage({ [PRESENT]: kept, [BEFORE]: text("before") });
    const storage = tab(area);
    expect(await restoreIn(storage)).toEqual({ outcome: { kind: "newer" }, damaged: "none", opened: [] });
    expect(area.texts()).toEqual([kept, text("before")]);
    expect(storage.unreadTexts()).toEqual([kept]);
  });

  test("gives way only after it was set aside", async () => {
    const area = new MemoryStorage({ [PRESENT]: newer("now") });
    const storage = tab(area);
    await restoreIn(storage);
    expect(storage.release()).toBe(true);
    expect(storage.save(workbook("mine"))).toBe("saved");
    expect([area.getItem(PRESENT), area.getItem(ASIDE)]).toEqual([text("mine"), newer("now")]);
  });

  test("with one character of its version changed is damaged, and no newer one", async () => {
    const changed = text("now").replace('"formatVersion":1', '"formatVersion":7');
    const area = new MemoryStorage({ [PRESENT]: changed, [BEFORE]: text("before") });
    expect(await restore(area)).toMatchObject({ damaged: "set aside", opened: ["before"] });
  });
});

describe("a full storage", () => {
  const NAMES = ["the one in hand", "an earlier one", "an opened one"] as const;
  const content = {
    [PRESENT]: text(NAMES[0]),
    [BEFORE]: text(NAMES[1]),
    [LAST_GOOD]: text(NAMES[2]),
    other: "x".repeat(50),
  };
  const large = (characters: number): NamedWorkbook => ({
    ...workbook("larger"),
    data: { ...DATA, note: "n".repeat(characters) },
  });

  test.each([
    ["that fits beside what is there, or in the place of copies", 200, ["saved"]],
    ["that fits only when there is room beside everything", 2_000, ["full", "saved"]],
  ])("and a workbook %s: saved, or the last good one stays", async (_, characters, expected) => {
    const outcomes = new Set<string>();
    for (let free = 0; free <= characters + 1_000; free += 7) {
      const area = new MemoryStorage(content);
      const storage = await openTab(area);
      area.room = area.size + free;
      const outcome = storage.save(large(characters));
      outcomes.add(outcome);
      expect([free, (await restore(area)).opened]).toEqual([free, [outcome === "saved" ? "larger" : NAMES[0]]]);
      expect(area.getItem("other")).toHaveLength(50);
    }
    expect([...outcomes].sort()).toEqual(expected);
  });

  test("where copies cannot make room, they stay, and it is tried again with the next save", async () => {
    const area = new MemoryStorage(content);
    const storage = await openTab(area);
    storage.save(workbook("now"));
    area.room = area.size;
    expect(storage.save(large(5_000))).toBe("full");
    // The copy of the present one has taken the place of the one before it: that is what a save does first.
    expect([area.getItem(PRESENT), area.getItem(BEFORE), area.getItem(LAST_GOOD)]).toEqual([
      text("now"),
      text("now"),
      text(NAMES[0]),
    ]);
    area.room = Infinity;
    expect(storage.save(large(5_000))).toBe("saved");
    expect(await restore(area)).toMatchObject({ opened: ["larger"] });
  });

  test("from the first to the last good save, of two that grow", async () => {
    for (let room = 0; room < 3_500; room += 53) {
      const area = new MemoryStorage({ other: "y" });
      area.room = room;
      const storage = tab(area);
      let last: string | undefined;
      for (let size = 1; size <= 8; size += 1) {
        const name = "n".repeat(size * 60);
        if (storage.save(workbook(name)) === "saved") last = name;
      }
      expect([room, (await restore(area)).opened]).toEqual([room, last === undefined ? [] : [last]]);
    }
  });

  test("that has room for nothing at all is one that refuses", () => {
    const area = new MemoryStorage();
    area.room = 0;
    expect(tab(area).save(workbook("A"))).toBe("refused");
    area.room = 30;
    area.setItem("other", "x");
    expect(tab(area).save(workbook("A"))).toBe("full");
  });

  test("is known by the name that an older browser gives it", () => {
    const area = new MemoryStorage({ other: "x" });
    area.setItem = () => {
      throw new DOMException("no room", "NS_ERROR_DOM_QUOTA_REACHED");
    };
    expect(tab(area).save(workbook("A"))).toBe("full");
  });
});

describe("a storage closed to the page", () => {
  test.each([
    [
      "that throws",
      () => {
        throw new DOMException("no access", "SecurityError");
      },
    ],
    ["that is not there", () => null as unknown as Storage],
  ])("%s: refused, whatever is asked of it", async (_, area: () => Storage) => {
    const storage = workbookStorage(area);
    expect(storage.save(workbook("A"))).toBe("refused");
    expect(await restoreIn(storage)).toEqual({ outcome: { kind: "refused" }, damaged: "none", opened: [] });
    expect([storage.isAsKnown(), storage.release(), storage.asideTexts()]).toEqual([true, true, []]);
  });

  test("that keeps less than it was given: not saved, and the one before comes back", async () => {
    const area = new MemoryStorage();
    const storage = tab(area);
    storage.save(workbook("good"));
    area.damage = (given) => (given.includes("cut here") ? given.slice(0, 200) : given);
    expect(storage.save(workbook("cut here"))).toBe("refused");
    expect(await restore(area)).toMatchObject({ outcome: { kind: "earlier one restored" }, opened: ["good"] });
    expect(storage.save(workbook("good again"))).toBe("changed elsewhere");
  });
});

describe("a page that ends between two writes", () => {
  test("a save: the new one or the one before opens", async () => {
    for (const room of [Infinity, 3, 2.5, 2].map((texts) => texts * text("three").length + 100)) {
      for (let steps = 0; steps < 8; steps += 1) {
        const area = new MemoryStorage();
        const storage = tab(area);
        for (const name of ["one", "two"]) storage.save(workbook(name));
        area.room = room;
        area.stepsLeft = steps;
        const outcome = storage.save(workbook("three"));
        const { opened } = await restore(area.copy());
        expect([steps, opened]).toEqual([steps, [outcome === "saved" ? "three" : "two"]]);
      }
    }
  });

  test("an opening of a damaged one: it is still there, and so is the one before", async () => {
    for (let steps = 0; steps < 8; steps += 1) {
      const area = new MemoryStorage({ [PRESENT]: "{cut", [BEFORE]: text("before") });
      area.stepsLeft = steps;
      await restore(area);
      const left = area.copy();
      expect(left.texts()).toContain("{cut");
      expect((await restore(left)).opened).toEqual(["before"]);
      expect(left.texts()).toContain("{cut");
    }
  });
});

describe("two tabs", () => {
  test("what another has kept since is not replaced until the person says so", async () => {
    const area = new MemoryStorage({ [PRESENT]: text("both") });
    const [first, second] = [await openTab(area), await openTab(area)];
    expect(first.save(workbook("first"))).toBe("saved");
    expect(second.isAsKnown()).toBe(false);
    expect(second.save(workbook("second"))).toBe("changed elsewhere");
    expect(area.getItem(PRESENT)).toBe(text("first"));
    second.accept();
    expect(second.save(workbook("second"))).toBe("saved");
    expect([area.getItem(PRESENT), area.getItem(BEFORE)]).toEqual([text("second"), text("first")]);
    expect(first.save(workbook("first again"))).toBe("changed elsewhere");
  });

  test("the same with a tab of the first release, which asks nobody", async () => {
    const area = new MemoryStorage({ [PRESENT]: text("both") });
    const storage = await openTab(area);
    area.setItem(PRESENT, early("of the first release"));
    expect(storage.save(workbook("mine"))).toBe("changed elsewhere");
    expect(await restoreIn(storage)).toMatchObject({ opened: ["of the first release"] });
    expect(storage.save(workbook("mine"))).toBe("saved");
  });

  test("two that save in one instant: the one whose text is gone can see it", async () => {
    const area = new MemoryStorage({ [PRESENT]: text("both") });
    const [first, second] = [await openTab(area), await openTab(area.copy())];
    first.save(workbook("first"));
    second.save(workbook("second"));
    // Each saw the old text; the second's arrives last.
    area.setItem(PRESENT, text("second"));
    expect(first.isAsKnown()).toBe(false);
    expect(first.save(workbook("first again"))).toBe("changed elsewhere");
  });

  test("where the site's data were cleared nothing is replaced, so it is saved", async () => {
    const area = new MemoryStorage({ [PRESENT]: text("both") });
    const storage = await openTab(area);
    area.clear();
    expect(storage.isAsKnown()).toBe(true);
    expect(storage.save(workbook("mine"))).toBe("saved");
  });
});
