/** What the opening of our page is held against: the engine as it comes, with a sheet of built-in formulas. */
import type { EngineData } from "../../../src/sheet/engine";
import { engineOnPage, TEMPLATES_FILE } from "../../../src/sheet/engine";

/** Filled in when this page is built. */
declare const PLAIN_DATA: EngineData;

interface PlainModel {
  readonly getters: {
    getSheetIdByName(name: string): string;
    getEvaluatedCell(position: object): { readonly value: unknown };
  };
}

declare global {
  interface Window {
    /** The value in a cell of a sheet, for the comparison of both pages. */
    plainValue?: (sheet: string, address: string) => unknown;
  }
}

async function start(): Promise<void> {
  const { engine, library } = engineOnPage()!;
  const response = await fetch(TEMPLATES_FILE);
  const templates = new DOMParser().parseFromString(await response.text(), "text/xml");
  const model = new engine.Model(PLAIN_DATA, { transportService: new engine.LocalTransportService() });
  const props = { model, notifyUser: () => {}, raiseError: () => {}, askConfirmation: () => {} };
  const app = new library.App(engine.Spreadsheet, { props, templates, warnIfNoStaticProps: false });
  const { getters } = model as unknown as PlainModel;
  window.plainValue = (sheet, address) => {
    const position = { sheetId: getters.getSheetIdByName(sheet), ...engine.helpers.toCartesian(address) };
    return getters.getEvaluatedCell(position).value;
  };
  await app.mount(document.getElementById("grid")!);
}

void start();
