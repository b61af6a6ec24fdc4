import { bringInPlugin } from "./bringIn";
import type { Engine } from "./engine";
import type { Functions } from "./functions";
import { provideGroupBy } from "./groupBy";
import { growingBlockPlugin } from "./growingBlock";
import { guardPlugin } from "./guard";
import { completeChartTypes } from "./chartTypes";
import { registerCatalogue } from "./registration";

/** Teaches the engine our functions and what our workbooks need beyond its own abilities. Needs no page. */
export function prepareEngine(engine: Engine, functions: Functions): void {
  provideGroupBy();
  registerCatalogue(engine, functions);
  engine.registries.corePluginRegistry.replace("canyard_growing_block", growingBlockPlugin(engine));
  engine.registries.featurePluginRegistry.replace("canyard_bring_in", bringInPlugin(engine));
  engine.registries.featurePluginRegistry.replace("canyard_guard", guardPlugin(engine));
  completeChartTypes(engine);
}
