import type { ComponentLibrary, Engine, EngineModel } from "./engine";
import { TEMPLATES_FILE } from "./engine";
import { withOurWords } from "./guard";
import { pressByKey } from "./keyPress";
import { tell } from "./notices";
import { ask } from "./question";
import { correctedTemplates } from "./templates";
import { wording } from "./wording";

/** Puts a workbook on the page, in the place of the one before. */
export interface Grid {
  show(model: EngineModel): Promise<void>;
}

export async function createGrid(engine: Engine, library: ComponentLibrary, host: HTMLElement): Promise<Grid> {
  const templates = correctedTemplates(await textOf(TEMPLATES_FILE));
  const dark = window.matchMedia("(prefers-color-scheme: dark)");
  pressByKey(host);
  let mounted: { destroy(): void } | undefined;
  let present: EngineModel | undefined;

  const show = async (model: EngineModel) => {
    mounted?.destroy();
    present = model;
    const props = { model, colorScheme: dark.matches ? "dark" : "light", ...talk(engine, model) };
    const app = new library.App(engine.Spreadsheet, {
      props,
      templates,
      translateFn: wording,
      warnIfNoStaticProps: false,
    });
    mounted = app;
    await app.mount(host);
  };
  dark.addEventListener("change", () => present && void show(present));
  return { show };
}

/** What the engine has to say goes where our own sentences go. */
function talk(engine: Engine, model: EngineModel) {
  return {
    notifyUser: ({ text }: { text: string }) => tellOfGrid(String(text)),
    raiseError: (text: string, then?: () => void) => {
      tellOfGrid(withOurWords(engine, model, String(text)));
      then?.();
    },
    askConfirmation: (text: string, confirm: () => void, cancel?: () => void) => {
      void ask(String(text), "Go on").then((agreed) => (agreed ? confirm() : cancel?.()));
    },
  };
}

export function tellOfGrid(sentence: string): void {
  tell(sentence, "the grid");
}

async function textOf(file: string): Promise<string> {
  const response = await fetch(file);
  if (!response.ok) throw new Error(`${file} is missing (${response.status})`);
  return response.text();
}
