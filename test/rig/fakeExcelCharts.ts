/** Charts of the fake Excel. As the host does, it makes series of its own when a chart is added. */
import type { World } from "./fakeExcelObjects";
import { localAddress, type FakeChart, type FakeSeries, type FakeSheet } from "./fakeWorkbook";
import { FakeHostError, hostObject, later, type Later } from "./hostObject";

export function chartsObject(world: World, sheet: Later<FakeSheet>): Excel.ChartCollection {
  return hostObject<Excel.ChartCollection>(world, {
    kind: "ChartCollection",
    properties: {},
    methods: {
      add: (type: string, source: Excel.Range) => {
        const chart = later(world, (): FakeChart => {
          world.admit("chart");
          const { rows, columns } = world.areaOf(source);
          const length = world.cells.seriesOfNewChart ?? Math.min(rows, columns);
          const series = Array.from({ length }, () => newSeries(""));
          const made: FakeChart = { type, series, set: {}, hiddenEntries: [] };
          sheet.value.charts.push(made);
          world.note(sheet.value, "", "chart", type);
          return made;
        });
        return chartObject(world, sheet, chart);
      },
    },
  });
}

function newSeries(name: string): FakeSeries {
  return { name, values: "", labels: "", set: {} };
}

function chartObject(world: World, sheet: Later<FakeSheet>, chart: Later<FakeChart>): Excel.Chart {
  const set = (what: string) => (value: unknown) => {
    world.note(sheet.value, "", `chart.${what}`, value);
    chart.value.set[what] = value;
  };
  return hostObject<Excel.Chart>(world, {
    kind: "Chart",
    properties: {},
    writes: { name: set("name"), width: set("width"), height: set("height") },
    methods: {
      setPosition: (start) =>
        world.queue(() => {
          const cell = typeof start === "string" ? sheet.value.area(start) : world.areaOf(start);
          if (cell.sheet !== sheet.value) throw new FakeHostError("InvalidArgument");
          set("position")(localAddress(cell));
        }),
    },
    parts: {
      title: () =>
        hostObject<Excel.ChartTitle>(world, {
          kind: "ChartTitle",
          properties: {},
          writes: { text: set("title.text") },
        }),
      axes: () =>
        hostObject<Excel.ChartAxes>(world, {
          kind: "ChartAxes",
          properties: {},
          parts: {
            categoryAxis: () => axisObject(world, (what) => set(`categoryAxis.${what}`)),
            valueAxis: () => axisObject(world, (what) => set(`valueAxis.${what}`)),
          },
        }),
      legend: () => legendObject(world, chart, set),
      series: () => seriesCollection(world, sheet, chart),
    },
  });
}

type Set = (what: string) => (value: unknown) => void;

function axisObject(world: World, set: Set): Excel.ChartAxis {
  return hostObject<Excel.ChartAxis>(world, {
    kind: "ChartAxis",
    properties: {},
    writes: {
      categoryType: set("categoryType"),
      reversePlotOrder: set("reversePlotOrder"),
      position: set("position"),
    },
    parts: {
      title: () =>
        hostObject<Excel.ChartAxisTitle>(world, {
          kind: "ChartAxisTitle",
          properties: {},
          writes: { text: set("title.text"), visible: set("title.visible") },
        }),
    },
  });
}

function legendObject(world: World, chart: Later<FakeChart>, set: Set): Excel.ChartLegend {
  return hostObject<Excel.ChartLegend>(world, {
    kind: "ChartLegend",
    properties: {},
    writes: { visible: set("legend.visible"), position: set("legend.position") },
    parts: {
      legendEntries: () =>
        hostObject<Excel.ChartLegendEntryCollection>(world, {
          kind: "ChartLegendEntryCollection",
          properties: {},
          methods: {
            getItemAt: (index) =>
              hostObject<Excel.ChartLegendEntry>(world, {
                kind: "ChartLegendEntry",
                properties: {},
                writes: { visible: (isVisible) => void (isVisible || chart.value.hiddenEntries.push(index)) },
              }),
          },
        }),
    },
  });
}

function seriesCollection(world: World, sheet: Later<FakeSheet>, chart: Later<FakeChart>): Excel.ChartSeriesCollection {
  const at = (find: () => FakeSeries): Excel.ChartSeries => seriesObject(world, sheet, chart, later(world, find));
  return hostObject<Excel.ChartSeriesCollection>(world, {
    kind: "ChartSeriesCollection",
    properties: { count: () => chart.value.series.length },
    methods: {
      getItemAt: (index) =>
        at(() => {
          const found = chart.value.series[index];
          if (found === undefined) throw new FakeHostError("InvalidArgument");
          return found;
        }),
      add: (name = "") =>
        at(() => {
          const series = newSeries(name);
          chart.value.series.push(series);
          return series;
        }),
    },
  });
}

function seriesObject(
  world: World,
  sheet: Later<FakeSheet>,
  chart: Later<FakeChart>,
  series: Later<FakeSeries>,
): Excel.ChartSeries {
  const note = (what: string, value: unknown): void => world.note(sheet.value, "", `series.${what}`, value);
  const set = (what: string, value: unknown): void => {
    note(what, value);
    series.value.set[what] = value;
  };
  return hostObject<Excel.ChartSeries>(world, {
    kind: "ChartSeries",
    properties: {},
    writes: {
      name: (name) => {
        note("name", name);
        series.value.name = name;
      },
      chartType: (type) => set("chartType", type),
      markerStyle: (style) => set("markerStyle", style),
      markerBackgroundColor: (colour) => set("markerBackgroundColor", colour),
      markerForegroundColor: (colour) => set("markerForegroundColor", colour),
    },
    methods: {
      setValues: (range) => world.queue(() => void (series.value.values = world.resolved(range) as string)),
      setXAxisValues: (range) => world.queue(() => void (series.value.labels = world.resolved(range) as string)),
      delete: () =>
        world.queue(() => {
          note("deleted", series.value.name);
          chart.value.series.splice(chart.value.series.indexOf(series.value), 1);
        }),
    },
    parts: {
      format: () =>
        hostObject<Excel.ChartSeriesFormat>(world, {
          kind: "ChartSeriesFormat",
          properties: {},
          parts: {
            fill: () =>
              hostObject<Excel.ChartFill>(world, {
                kind: "ChartFill",
                properties: {},
                methods: {
                  clear: () => world.queue(() => set("fill", "none")),
                  setSolidColor: (colour) => world.queue(() => set("fill", colour)),
                },
              }),
            line: () =>
              hostObject<Excel.ChartLineFormat>(world, {
                kind: "ChartLineFormat",
                properties: {},
                writes: {
                  color: (colour) => set("line.color", colour),
                  lineStyle: (style) => set("line.lineStyle", style),
                },
                methods: { clear: () => world.queue(() => set("line", "none")) },
              }),
          },
        }),
    },
  });
}

/** Some hosts count a chart among the shapes of its sheet, others do not. */
export function shapesObject(world: World, sheet: Later<FakeSheet>): Excel.ShapeCollection {
  return hostObject<Excel.ShapeCollection>(world, {
    kind: "ShapeCollection",
    properties: {},
    methods: {
      getItemOrNullObject: (name) => {
        const chart = later(world, () =>
          world.cells.chartsAreShapes ? (sheet.value.charts.find(({ set }) => set["name"] === name) ?? null) : null,
        );
        return hostObject<Excel.Shape>(world, {
          kind: "Shape",
          properties: {},
          writes: {
            altTextDescription: (words) => {
              world.note(sheet.value, "", "shape.altTextDescription", words);
              if (chart.value !== null) chart.value.set["altTextDescription"] = words;
            },
          },
          isNull: () => chart.value === null,
        });
      },
    },
  });
}
