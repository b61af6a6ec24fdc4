/** The objects of the fake Excel: which members the pane's adapter may use, each typed by @types/office-js. */
import {
  fullAddress,
  type Area,
  type Contents,
  type FakeCell,
  type FakeSheet,
  type FakeWorkbook,
  type NamedThing,
} from "./fakeWorkbook";
import { FakeHostError, hostObject, later, type Batch, type Later } from "./hostObject";

export type SelectionHandler = (event: Excel.SelectionChangedEventArgs) => Promise<unknown>;

/** What a run of the fake gives its objects. */
export interface World extends Batch {
  readonly cells: FakeWorkbook;
  readonly handlers: Set<SelectionHandler>;
  write(area: Area, contents: Contents): void;
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
      onSelectionChanged: () => selectionEvent(world),
    },
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
    },
  });
}

function worksheetObject(world: World, sheet: Later<FakeSheet>): Excel.Worksheet {
  const range = (find: () => Area | null): Excel.Range => rangeObject(world, later(world, find));
  return hostObject<Excel.Worksheet>(world, {
    kind: "Worksheet",
    properties: { name: () => sheet.value.name },
    methods: {
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
    },
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
        ),
    },
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

function nameObject(world: World, named: Later<NamedThing | null>): Excel.NamedItem {
  const area = (): Area => {
    const thing = named.value;
    if (thing === null || !("cells" in thing)) throw new FakeHostError("InvalidOperation");
    return world.cells.sheet(thing.on).area(thing.cells);
  };
  return hostObject<Excel.NamedItem>(world, {
    kind: "NamedItem",
    properties: {
      type: () => typeOfNamed(named.value),
      value: () => (named.value !== null && "value" in named.value ? named.value.value : fullAddress(area())),
    },
    methods: { getRange: () => rangeObject(world, later(world, area)) },
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
  return hostObject<Excel.Range>(world, {
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
    writes: { formulas: (contents) => world.write(present(), contents as Contents) },
    methods: {
      getCell: (row, column) =>
        rangeObject(
          world,
          later(world, () => within(row, column)),
        ),
    },
    isNull: () => area.value === null,
  });
}
