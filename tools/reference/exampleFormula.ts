/** An example as a person types it, by the same rules as the help writes a formula into a cell. */
import { NAMESPACE, type FunctionHelp } from "../../src/functions";
import type { ArgumentInput } from "../../src/kernel";
import { exampleTexts, formulaOf } from "../../src/taskpane/fields";
import type { UnitSystem } from "../../src/taskpane/library";

/** The units that an example's numbers are in; null where they are the same in both. */
export function systemOf({ params }: FunctionHelp, args: readonly ArgumentInput[]): UnitSystem | null {
  const word = args[params.findIndex(({ name }) => name === "units")];
  return word === "us" || word === "metric" ? word : null;
}

export function exampleFormula(help: FunctionHelp, example: FunctionHelp["examples"][number]): string {
  const alone = { ...help, examples: [example] };
  return formulaOf(alone, exampleTexts(alone, systemOf(help, example.args) ?? "us"), NAMESPACE);
}
