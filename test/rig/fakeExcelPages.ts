/** The parts of a sheet of the fake Excel that belong to no cell: frozen panes and the page on which it is printed. */
import type { World } from "./fakeExcelObjects";
import type { FakeSheet } from "./fakeWorkbook";
import { hostObject, type Later } from "./hostObject";

export function freezePanesObject(world: World, sheet: Later<FakeSheet>): Excel.WorksheetFreezePanes {
  const freeze = (what: string) => (value: unknown) =>
    world.queue(() => world.set(sheet.value, "", `freezePanes.${what}`, world.resolved(value)));
  return hostObject<Excel.WorksheetFreezePanes>(world, {
    kind: "WorksheetFreezePanes",
    properties: {},
    methods: { freezeRows: freeze("rows"), freezeColumns: freeze("columns"), freezeAt: freeze("at") },
  });
}

export function pageLayoutObject(world: World, sheet: Later<FakeSheet>): Excel.PageLayout {
  const set = (what: string) => (value: unknown) => world.set(sheet.value, "", `pageLayout.${what}`, value);
  const later = (what: string) => (value: unknown) => world.queue(() => set(what)(world.resolved(value)));
  return hostObject<Excel.PageLayout>(world, {
    kind: "PageLayout",
    properties: {},
    writes: { paperSize: set("paperSize"), orientation: set("orientation"), zoom: set("zoom") },
    methods: {
      setPrintTitleRows: later("printTitleRows"),
      setPrintArea: later("printArea"),
      setPrintMargins: (unit: string, margins: Excel.PageLayoutMarginOptions) =>
        later("printMargins")({ unit, ...margins }),
    },
    parts: {
      headersFooters: () =>
        hostObject<Excel.HeaderFooterGroup>(world, {
          kind: "HeaderFooterGroup",
          properties: {},
          parts: {
            defaultForAllPages: () =>
              hostObject<Excel.HeaderFooter>(world, {
                kind: "HeaderFooter",
                properties: {},
                writes: {
                  leftFooter: set("leftFooter"),
                  rightFooter: set("rightFooter"),
                },
              }),
          },
        }),
    },
  });
}

export function pageBreaksObject(world: World, sheet: Later<FakeSheet>): Excel.PageBreakCollection {
  return hostObject<Excel.PageBreakCollection>(world, {
    kind: "PageBreakCollection",
    properties: {},
    methods: {
      add: (cell) => {
        world.queue(() => world.set(sheet.value, "", "pageLayout.breaks", world.resolved(cell)));
        return hostObject<Excel.PageBreak>(world, { kind: "PageBreak", properties: {} });
      },
    },
  });
}
