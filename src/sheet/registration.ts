import { errorCell, fromEngine, toEngine, type IsErrorCode } from "./cellValues";
import type { Engine, EngineArgument, EngineCell, EngineFunction, EngineParameter, EngineResult } from "./engine";
import type { FunctionHelp, Functions, Parameter } from "./functions";

/** Makes every catalogue entry a function of the engine, with its help, once. Needs no page. */
export function registerCatalogue(engine: Engine, functions: Functions): void {
  const isErrorCode = errorCodesOf(engine);
  for (const entry of functions.catalogue) {
    const name = `${functions.NAMESPACE}.${entry.name}`;
    if (engine.registries.functionRegistry.contains(name)) continue;
    const description = describe(entry, isErrorCode, functions);
    engine.addFunction(name, description);
    engine.createAutocompleteArgumentsProvider(name, description.args);
  }
}

function errorCodesOf(engine: Engine): IsErrorCode {
  const codes = new Set<unknown>(Object.values(engine.CellErrorType));
  return (value): value is string => codes.has(value);
}

function describe(entry: FunctionHelp, isErrorCode: IsErrorCode, functions: Functions): EngineFunction {
  return {
    description: entry.summary,
    isExported: true,
    category: `Canyard: ${entry.group}`,
    args: entry.params.map(describeParameter),
    compute: (...args) => compute(entry, args, isErrorCode, functions),
  };
}

function describeParameter(parameter: Parameter): EngineParameter {
  return {
    name: parameter.name,
    description: parameter.unit ? `${parameter.about} (${parameter.unit})` : parameter.about,
    type: [parameter.shape === "range" ? "RANGE" : "ANY"],
    ...(parameter.optional && !parameter.repeating && { optional: true }),
    ...(parameter.repeating && { repeating: true }),
    ...(parameter.words?.length && { proposalValues: parameter.words.map((word) => ({ value: word, label: "" })) }),
    // Without this the engine would call once per cell of a range; refusing a range is for the functions, in the same words as everywhere.
    acceptMatrix: true,
    acceptErrors: true,
  };
}

function compute(
  entry: FunctionHelp,
  args: readonly EngineArgument[],
  isErrorCode: IsErrorCode,
  functions: Functions,
): EngineResult {
  try {
    const given = args.map((argument, index) =>
      fromEngine(argument, entry.params[index]?.shape ?? "cell", isErrorCode),
    );
    return toEngine(functions.call(entry.name, given), functions.FunctionError);
  } catch (thrown) {
    return errorOf(thrown, `${functions.NAMESPACE}.${entry.name}`, functions);
  }
}

/** No exception of ours may reach the engine: it would show its maker's words. */
function errorOf(thrown: unknown, name: string, functions: Functions): EngineResult {
  if (thrown instanceof functions.FunctionError) return errorCell(thrown);
  if (thrown instanceof functions.PassedError) return thrown.original as unknown as EngineCell;
  console.error(name, thrown);
  return errorCell({ code: "#VALUE!", message: `${name} could not be worked out` });
}
