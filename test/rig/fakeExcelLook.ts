/** The parts of a range of the fake Excel that are no contents: formats, limits, colours by condition. */
import { localAddress, type Area } from "./fakeWorkbook";
import { hostObject, type Later } from "./hostObject";
import type { World } from "./fakeExcelObjects";

type Writes<T> = { [K in keyof T]?: (value: T[K]) => void };

/** Settings of a block, each under its path. */
function settable<T>(world: World, area: Later<Area>, path: string, keys: readonly (keyof T & string)[]): Writes<T> {
  const write = (key: string) => (value: unknown) =>
    world.set(area.value.sheet, localAddress(area.value), `${path}.${key}`, value);
  return Object.fromEntries(keys.map((key) => [key, write(key)])) as Writes<T>;
}

export function formatObject(world: World, area: Later<Area>): Excel.RangeFormat {
  return hostObject<Excel.RangeFormat>(world, {
    kind: "RangeFormat",
    properties: {},
    writes: settable<Excel.RangeFormat>(world, area, "format", [
      "wrapText",
      "columnWidth",
      "horizontalAlignment",
      "verticalAlignment",
    ]),
    methods: {
      autofitRows: () =>
        world.queue(() => world.set(area.value.sheet, localAddress(area.value), "format.autofitRows", true)),
    },
    parts: {
      font: () =>
        hostObject<Excel.RangeFont>(world, {
          kind: "RangeFont",
          properties: {},
          writes: settable<Excel.RangeFont>(world, area, "format.font", ["color", "bold", "italic", "size"]),
        }),
      fill: () =>
        hostObject<Excel.RangeFill>(world, {
          kind: "RangeFill",
          properties: {},
          writes: settable<Excel.RangeFill>(world, area, "format.fill", ["color"]),
        }),
      borders: () =>
        hostObject<Excel.RangeBorderCollection>(world, {
          kind: "RangeBorderCollection",
          properties: {},
          methods: { getItem: (side: string) => borderObject(world, area, side) },
        }),
    },
  });
}

function borderObject(world: World, area: Later<Area>, side: string): Excel.RangeBorder {
  return hostObject<Excel.RangeBorder>(world, {
    kind: "RangeBorder",
    properties: {},
    writes: settable<Excel.RangeBorder>(world, area, `format.borders.${side}`, ["style", "weight", "color"]),
  });
}

export function validationObject(world: World, area: Later<Area>): Excel.DataValidation {
  return hostObject<Excel.DataValidation>(world, {
    kind: "DataValidation",
    properties: {},
    writes: settable<Excel.DataValidation>(world, area, "dataValidation", ["rule", "errorAlert", "prompt"]),
  });
}

export function conditionalFormatsObject(world: World, area: Later<Area>): Excel.ConditionalFormatCollection {
  return hostObject<Excel.ConditionalFormatCollection>(world, {
    kind: "ConditionalFormatCollection",
    properties: {},
    methods: {
      add: (type: string) => {
        const path = `conditionalFormats.${type}.${(world.counted += 1)}`;
        return hostObject<Excel.ConditionalFormat>(world, {
          kind: "ConditionalFormat",
          properties: {},
          parts: { custom: () => customFormatObject(world, area, path) },
        });
      },
    },
  });
}

function customFormatObject(world: World, area: Later<Area>, path: string): Excel.CustomConditionalFormat {
  const rangeFormat = (): Excel.ConditionalRangeFormat =>
    hostObject<Excel.ConditionalRangeFormat>(world, {
      kind: "ConditionalRangeFormat",
      properties: {},
      parts: {
        font: () =>
          hostObject<Excel.ConditionalRangeFont>(world, {
            kind: "ConditionalRangeFont",
            properties: {},
            writes: settable<Excel.ConditionalRangeFont>(world, area, `${path}.font`, ["color"]),
          }),
        fill: () =>
          hostObject<Excel.ConditionalRangeFill>(world, {
            kind: "ConditionalRangeFill",
            properties: {},
            writes: settable<Excel.ConditionalRangeFill>(world, area, `${path}.fill`, ["color"]),
          }),
      },
    });
  return hostObject<Excel.CustomConditionalFormat>(world, {
    kind: "CustomConditionalFormat",
    properties: {},
    parts: {
      rule: () =>
        hostObject<Excel.ConditionalFormatRule>(world, {
          kind: "ConditionalFormatRule",
          properties: {},
          writes: settable<Excel.ConditionalFormatRule>(world, area, path, ["formula"]),
        }),
      format: rangeFormat,
    },
  });
}
