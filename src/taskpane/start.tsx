/** Puts the pane on its page: at once as a plain page, then with the sheet that turns out to be beside it. */
import { render } from "preact";
import { browserSheet, passRegionKeyOn, sheetAround } from "./browserSheet";
import { excelWhenReady, hostTheme } from "./excel";
import { plainPage } from "./plainPage";
import type { SheetHost } from "./sheetHost";
import { App } from "./view/App";

const HOST_LIBRARY = "host-library";

let shown = false;

function show(host: SheetHost): void {
  const target = document.getElementById("pane");
  if (target === null) return;
  if (!shown) target.replaceChildren();
  shown = true;
  if (window.canyard === undefined) {
    target.textContent = "The functions did not arrive. Loading the page again may help.";
    return;
  }
  render(<App library={window.canyard} host={host} />, target);
}

function followTheme(): void {
  const apply = (): void => {
    const theme = hostTheme();
    if (theme !== null) document.documentElement.dataset["theme"] = theme.isDark ? "dark" : "light";
  };
  apply();
  window.addEventListener("focus", apply);
}

async function start(): Promise<void> {
  const around = sheetAround();
  show(around === null ? plainPage : browserSheet(around));
  if (around !== null) {
    document.documentElement.dataset["docked"] = "";
    return passRegionKeyOn();
  }
  const excel = await excelWhenReady(document.getElementById(HOST_LIBRARY) as HTMLScriptElement | null);
  if (excel === null) return;
  followTheme();
  show(excel);
}

void start();
