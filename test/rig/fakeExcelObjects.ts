/** The objects of the fake Excel: which members the pane's adapter may use, each typed by @types/office-js. */
import {
  fullAddress,
  localAddress,
  type Area,
  type Contents,
  type FakeCell,
  type FakeSheet,
  type FakeWorkbook,
  type NamedThing,
} from "./fakeWorkbook";
import { chartsObject, shapesObject } from "./fakeExcelCharts";
import { conditionalFormatsObject, formatObject, validationObject } from "./fakeExcelLook";
import { freezePanesObject, pageBreaksObject, pageLayoutObject } from "./fakeExcelPages";
import { FakeHostError, hostObject, kindOf, later, type Batch, type Later } from "./hostObject";

export type SelectionHandler = (event: Excel.SelectionChangedEventArgs) => Promise<unknown>;

/** What a run of the fake gives its objects. */
export interface World extends Batch {
  readonly cells: FakeWorkbook;
  readonly handlers: Set<SelectionHandler>;
  write(area: Area, contents: Contents): void;
  /** Sets what is no content, and keeps it for undo; a range within the value stands by its address. */
  set(sheet: FakeSheet, at: string, what: string, value: unknown): void;
  /** Refuses a change that this host does not make, before it is made. */
  admit(what: string): void;
  /** Keeps a change for undo that is made elsewhere. */
  note(sheet: FakeSheet | null, at: string, what: string, value: unknown): void;
  /** A change that Excel cannot undo: it is refused within a group, and empties the list of steps. */
  changeForGood(member: string): void;
  areaOf(range: Excel.Range): Area;
  /** A value with the ranges in it by their addresses. */
  resolved(value: unknown): unknown;
  /** A number for each thing that has no name. */
  counted: number;
}

const areas = new WeakMap<object, Later<Area | null>>();

export function areaOf(range: object): Area {
  const area = areas.get(range)?.value ?? null;
  if (area === null) throw new FakeHostError("InvalidArgument");
  return area;
}

export function resolved(value: unknown): unknown {
  if (kindOf(value) === "Range") return fullAddress(areaOf(value as object));
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, resolved(each)]));
}

export const RANGE_VALUE_TYPE = {
  error: "Error",
  empty: "Empty",
  string: "String",
  double: "Double",
  boolean: "Boolean",
};

export const NAMED_ITEM_TYPE = { range: "Range", string: "String", double: "Double", array: "Array", error: "Error" };

/** More cells than this the host counts as -1. */
const MOST_COUNTED = 2_147_483_647;

const ERROR = /^#(?:[A-Z]+[!?]|N\/A|DIV\/0!)$/;

function isErrorValue(value: unknown): boolean {
  return typeof value === "string" && ERROR.test(value);
}

function valueType({ value, isText }: FakeCell): Excel.RangeValueType {
  const { error, empty, string, double, boolean } = RANGE_VALUE_TYPE;
  const byType = { string: value === "" ? empty : string, number: double, boolean };
  const type = isErrorValue(value) && !isText ? error : byType[typeof value as keyof typeof byType];
  return type as Excel.RangeValueType;
}

export function workbookObject(world: World): Excel.Workbook {
  return hostObject<Excel.Workbook>(world, {
    kind: "Workbook",
    properties: {},
    methods: {
      getSelectedRange: () =>
        rangeObject(
          world,
          later(world, () => world.cells.selected()),
        ),
    },
    parts: {
      worksheets: () => worksheetsObject(world),
      names: () =>
        namesObject(
          world,
          later(world, () => world.cells.names),
        ),
      tables: () => tablesObject(world),
      application: () =>
        hostObject<Excel.Application>(world, {
          kind: "Application",
          properties: {},
          methods: { suspendApiCalculationUntilNextSync: () => undefined },
        }),
      onSelectionChanged: () => selectionEvent(world),
    },
  });
}

function tablesObject(world: World): Excel.TableCollection {
  return hostObject<Excel.TableCollection>(world, {
    kind: "TableCollection",
    properties: {},
    items: () =>
      world.cells.tables.map((name) =>
        hostObject<Excel.Table>(world, { kind: "Table", properties: { name: () => name } }),
      ),
  });
}

type SelectionEvent = OfficeExtension.EventHandlers<Excel.SelectionChangedEventArgs>;
type AddedHandler = OfficeExtension.EventHandlerResult<Excel.SelectionChangedEventArgs>;

function selectionEvent(world: World): SelectionEvent {
  return hostObject<SelectionEvent>(world, {
    kind: "onSelectionChanged",
    properties: {},
    methods: {
      add: (handler) => {
        world.queue(() => world.handlers.add(handler));
        return addedHandler(world, handler);
      },
    },
  });
}

function addedHandler(world: World, handler: SelectionHandler): AddedHandler {
  return hostObject<AddedHandler>(world, {
    kind: "EventHandlerResult",
    properties: {},
    methods: { remove: () => world.queue(() => world.handlers.delete(handler)) },
    parts: { context: () => world as unknown as OfficeExtension.ClientRequestContext },
  });
}

function worksheetsObject(world: World): Excel.WorksheetCollection {
  const { cells } = world;
  return hostObject<Excel.WorksheetCollection>(world, {
    kind: "WorksheetCollection",
    properties: {},
    methods: {
      getItem: (name) =>
        worksheetObject(
          world,
          later(world, () => cells.sheet(name)),
        ),
      getActiveWorksheet: () =>
        worksheetObject(
          world,
          later(world, () => cells.activeSheet()),
        ),
      getItemOrNullObject: (key) =>
        worksheetObject(
          world,
          later(world, () => cells.find(key)),
        ),
      add: (name) =>
        worksheetObject(
          world,
          later(world, () => {
            world.admit("added");
            const sheet = cells.newSheet(name ?? "");
            world.note(sheet, "", "added", sheet.name);
            return sheet;
          }),
        ),
    },
    items: () => cells.sheets.map((sheet) => worksheetObject(world, { value: sheet })),
  });
}

function worksheetObject(world: World, found: Later<FakeSheet | null>): Excel.Worksheet {
  const sheet: Later<FakeSheet> = {
    get value() {
      if (found.value === null) throw new FakeHostError("ItemNotFound");
      return found.value;
    },
  };
  const range = (find: () => Area | null): Excel.Range => rangeObject(world, later(world, find));
  return hostObject<Excel.Worksheet>(world, {
    kind: "Worksheet",
    properties: { name: () => sheet.value.name, id: () => sheet.value.id },
    methods: {
      activate: () => world.queue(() => world.cells.select(sheet.value.name, "A1")),
      delete: () =>
        world.queue(() => {
          world.changeForGood("Worksheet.delete");
          world.cells.remove(sheet.value);
        }),
      getRange: (address) => range(() => sheet.value.area(address ?? "")),
      getRangeByIndexes: (row, column, rows, columns) =>
        range(() => ({ sheet: sheet.value, row, column, rows, columns })),
      getUsedRangeOrNullObject: () => range(() => sheet.value.used()),
    },
    parts: {
      names: () =>
        namesObject(
          world,
          later(world, () => sheet.value.names),
        ),
      charts: () => chartsObject(world, sheet),
      shapes: () => shapesObject(world, sheet),
      freezePanes: () => freezePanesObject(world, sheet),
      pageLayout: () => pageLayoutObject(world, sheet),
      horizontalPageBreaks: () => pageBreaksObject(world, sheet),
    },
    isNull: () => found.value === null,
  });
}

function namesObject(world: World, names: Later<ReadonlyMap<string, NamedThing>>): Excel.NamedItemCollection {
  const thing = (name: string): NamedThing | null =>
    [...names.value].find(([known]) => known.toLowerCase() === name.toLowerCase())?.[1] ?? null;
  return hostObject<Excel.NamedItemCollection>(world, {
    kind: "NamedItemCollection",
    properties: {},
    methods: {
      getItemOrNullObject: (name) =>
        nameObject(
          world,
          later(world, () => thing(name)),
          name,
        ),
      add: (name, reference) => {
        const added = later(world, () => {
          if (typeof reference === "string") throw new FakeHostError("InvalidArgument");
          const area = areaOf(reference);
          world.admit("named");
          world.cells.addName(name, area);
          world.note(null, name, "named", fullAddress(area));
          return thing(name);
        });
        return nameObject(world, added, name);
      },
    },
    items: () => [...names.value].map(([name, named]) => nameObject(world, { value: named }, name)),
  });
}

function typeOfNamed(thing: NamedThing | null): Excel.NamedItem["type"] {
  const { range, error, double, string, array } = NAMED_ITEM_TYPE;
  const type = (): string => {
    if (thing === null || "cells" in thing) return range;
    if (Array.isArray(thing.value)) return array;
    if (isErrorValue(thing.value)) return error;
    return typeof thing.value === "number" ? double : string;
  };
  return type() as Excel.NamedItem["type"];
}

function nameObject(world: World, named: Later<NamedThing | null>, name: string): Excel.NamedItem {
  const area = (): Area => {
    const thing = named.value;
    if (thing === null || !("cells" in thing)) throw new FakeHostError("InvalidOperation");
    return world.cells.sheet(thing.on).area(thing.cells);
  };
  return hostObject<Excel.NamedItem>(world, {
    kind: "NamedItem",
    properties: {
      name: () => name,
      type: () => typeOfNamed(named.value),
      value: () => (named.value !== null && "value" in named.value ? named.value.value : fullAddress(area())),
    },
    methods: {
      getRange: () => rangeObject(world, later(world, area)),
      delete: () =>
        world.queue(() => {
          world.note(null, name, "name deleted", name);
          world.cells.names.delete(name);
        }),
    },
    isNull: () => named.value === null,
  });
}

function rangeObject(world: World, area: Later<Area | null>): Excel.Range {
  const present = (): Area => {
    if (area.value === null) throw new FakeHostError("ItemNotFound");
    return area.value;
  };
  const each = <V>(pick: (cell: FakeCell) => V): V[][] => {
    const { sheet, row, column, rows, columns } = present();
    return Array.from({ length: rows }, (_row, down) =>
      Array.from({ length: columns }, (_column, across) => pick(sheet.cell(row + down, column + across))),
    );
  };
  const within = (row: number, column: number): Area => {
    const whole = present();
    return { ...whole, row: whole.row + row, column: whole.column + column, rows: 1, columns: 1 };
  };
  const count = (): number => present().rows * present().columns;
  const there: Later<Area> = {
    get value() {
      return present();
    },
  };
  const object = hostObject<Excel.Range>(world, {
    kind: "Range",
    properties: {
      address: () => fullAddress(present()),
      cellCount: () => (count() > MOST_COUNTED ? -1 : count()),
      rowIndex: () => present().row,
      columnIndex: () => present().column,
      rowCount: () => present().rows,
      columnCount: () => present().columns,
      formulas: () => each(({ content }) => content),
      values: () => each(({ value }) => value),
      valueTypes: () => each(valueType),
      text: () => each(({ text }) => text),
    },
    writes: {
      formulas: (contents) => world.write(present(), contents as Contents),
      numberFormat: (formats) => setFormats(world, present(), formats as string[][]),
    },
    methods: {
      getCell: (row, column) =>
        rangeObject(
          world,
          later(world, () => within(row, column)),
        ),
    },
    parts: {
      format: () => formatObject(world, there),
      dataValidation: () => validationObject(world, there),
      conditionalFormats: () => conditionalFormatsObject(world, there),
    },
    isNull: () => area.value === null,
  });
  areas.set(object, area);
  return object;
}

/** One format a cell; in one that is given the format for text, a formula that is entered later stays text. */
function setFormats(world: World, area: Area, formats: readonly (readonly string[])[]): void {
  const fits = formats.length === area.rows && formats.every((row) => row.length === area.columns);
  if (!fits) throw new FakeHostError("InvalidArgument");
  formats.forEach((row, down) =>
    row.forEach((format, across) => {
      const cell = { ...area, row: area.row + down, column: area.column + across, rows: 1, columns: 1 };
      world.set(area.sheet, localAddress(cell), "numberFormat", format);
    }),
  );
}
