/**
 * Stands for Excel's library on a page of the real browser: it says that it runs in Excel, and takes any call. What is
 * asked of Excel itself is tested against the recording fake; here only the page around it is.
 */
import type { BrowserContext } from "playwright-core";

const LIBRARY = "https://appsforoffice.microsoft.com/lib/1/hosted/**";

/** Runs on the page, as text: every member of the host is there, collections are empty but for the sheets, new sheets have an id. */
const STAND_IN = `
(() => {
  let sheets = 0;
  window.excelSheets = [];
  const anything = (path) => {
    const target = function () {};
    return new Proxy(target, {
      get(_target, key) {
        if (key === "then" || typeof key === "symbol") return undefined;
        if (key === "items") return path === "worksheets" ? window.excelSheets.map((name) => ({ name })) : [];
        if (key === "count") return 1;
        if (key === "id") return "sheet" + (sheets += 1);
        if (key === "isNullObject") return false;
        return anything(key);
      },
      apply: () => anything(),
      set: () => true,
    });
  };
  window.excelFailures = [];
  window.excelHold = null;
  const context = {
    workbook: anything(),
    sync: async () => {
      if (window.excelHold) await window.excelHold;
      const code = window.excelFailures.shift();
      if (code) throw Object.assign(new Error("raw text of the host"), { code });
    },
  };
  window.Excel = { run: async (_options, work) => work(context), RangeValueType: {}, NamedItemType: {} };
  window.Office = {
    HostType: { Excel: "Excel" },
    onReady: () => Promise.resolve({ host: "Excel" }),
    context: {
      requirements: { isSetSupported: (_name, version) => Number(version.slice(2)) <= (window.excelVersion ?? 20) },
    },
  };
})();
`;

export async function standInForExcel(context: BrowserContext): Promise<void> {
  await context.route(LIBRARY, (route) => route.fulfill({ body: STAND_IN, contentType: "text/javascript" }));
}
