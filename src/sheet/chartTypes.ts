import type { Engine, EngineChartType } from "./engine";

/** What the engine's kinds of chart lack: columns that stand on one another under a line, and a line among points. */
export function completeChartTypes(engine: Engine): void {
  const { chartTypeRegistry } = engine.registries;
  const [combo, scatter] = [chartTypeRegistry.get("combo"), chartTypeRegistry.get("scatter")];
  if (combo.allowedDefinitionKeys.includes("stacked")) return;
  chartTypeRegistry.replace("combo", {
    ...combo,
    allowedDefinitionKeys: [...combo.allowedDefinitionKeys, "stacked"],
    getRuntime: (...given) => eachLineByItself(combo.getRuntime(...given)),
  });
  chartTypeRegistry.replace("scatter", {
    ...scatter,
    getRuntime: (getters, definition, ...rest) =>
      withLines(definition as Definition, scatter.getRuntime(getters, definition, ...rest)),
  });
}

type Runtime = ReturnType<EngineChartType["getRuntime"]>;
interface Definition {
  readonly dataSetStyles?: Readonly<Record<string, { readonly type?: string }>>;
}

/** On a stacked axis lines would be added up as well. */
function eachLineByItself(runtime: Runtime): Runtime {
  runtime.chartJsConfig.data.datasets.forEach((dataset, index) => {
    if (dataset.type === "line") dataset.stack = `line ${index}`;
  });
  return runtime;
}

function withLines({ dataSetStyles = {} }: Definition, runtime: Runtime): Runtime {
  runtime.chartJsConfig.data.datasets.forEach((dataset, index) => {
    if (dataSetStyles[String(index)]?.type === "line") Object.assign(dataset, { showLine: true, pointRadius: 0 });
  });
  return runtime;
}
