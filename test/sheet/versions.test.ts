import * as functions from "../../src/functions";
import type { EngineData } from "../../src/sheet/engine";
import { openSheetModel } from "../../src/sheet/sheetModel";
import { changesByOpening, refuseNewer } from "../../src/sheet/versions";
import { NewerFile } from "../../src/sheet/workbookFile";
import { createHeadlessSheet } from "../rig/sheetEngine";

const { engine } = createHeadlessSheet(functions);

function opened(data: EngineData) {
  const changes = changesByOpening(engine, data);
  const { adapter, model } = openSheetModel(engine, data, () => {});
  return { adapter, changes: changes(model) };
}

beforeEach(() => void jest.spyOn(console, "debug").mockImplementation(() => {}));
afterEach(() => jest.restoreAllMocks());

const present = (): string => String(engine.load({}, true).version);
const sheet = { id: "a", name: "Plan", cells: { A1: "6", A2: "=A1*2" } };

test("data of the engine's own version and of earlier ones are taken, later ones are not", () => {
  const later = present().replace(/\d+$/, (last) => String(Number(last) + 1));
  const refuse = (version: string) => () => refuseNewer(engine, { version, sheets: [sheet] });
  for (const version of [present(), "18.0", "19.0.9", "9.99.99"]) expect(refuse(version)).not.toThrow();
  for (const version of [later, "99.1", `${present()}.1`, "20.0"]) expect(refuse(version)).toThrow(NewerFile);
  expect(() => refuseNewer(engine, { sheets: [sheet] })).not.toThrow();
});

test("data of an older version open with their numbers, and nothing is told where nothing changed", () => {
  const cells = { A1: { content: "6" }, A2: { content: "=A1*2" }, A3: { content: "=SUM(Plan!A1, 'Plan'!A2)" } };
  const old = { version: "18.0", sheets: [{ id: "a", name: "Plan", colNumber: 5, rowNumber: 9, cells }] };
  const { adapter, changes } = opened(old);
  expect([adapter.read("A2").value, adapter.read("A3").value]).toEqual([12, 18]);
  expect(changes).toEqual([]);
});

test("a sheet that gets another name is told, with the cells that name it", () => {
  const cells = { A1: { content: "6" }, A2: { content: "='a*b'!A1*2" } };
  // Such names were allowed in early versions, which were whole numbers.
  const { adapter, changes } = opened({ version: 5 as unknown as string, sheets: [{ id: "a", name: "a*b", cells }] });
  expect(adapter.read("A2").value).toBe(12);
  expect(changes).toEqual(["The sheet “a*b” is now called “a_b”.", "Written in another way: A2 of a_b."]);
});

test("data of the present version are not looked through", () => {
  expect(opened({ version: present(), sheets: [sheet] }).changes).toEqual([]);
});
