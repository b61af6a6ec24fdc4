/** A program of someone else, under the strictest settings: what it takes from the library is declared, and so. */
import {
  call,
  catalogue,
  faults,
  FunctionError,
  NAMESPACE,
  PassedError,
  verdict,
  VERSION,
  working,
  type Answer,
  type ArgumentInput,
  type CellAnswer,
  type ErrorCode,
  type FunctionHelp,
  type Parameter,
  type UnitSystem,
  type WorkedStep,
} from "../../dist/library.mjs";

function minutes(volume: number, flow: number): number {
  const answer: Answer = call("RUN_MINUTES", [volume, flow]);
  if (typeof answer !== "number") throw new Error("RUN_MINUTES gives a number");
  return answer;
}

function pulses(): readonly (readonly CellAnswer[])[] {
  const answer = call("PULSE_SCHEDULE", [30, 2, 60, 0.25]);
  return typeof answer === "object" && !(answer instanceof FunctionError) ? answer : [];
}

function refusal(name: string, args: readonly ArgumentInput[]): readonly [ErrorCode | "passed", string, string | null] {
  try {
    call(name, args);
  } catch (error) {
    if (error instanceof FunctionError) return [error.code, error.message, error.argument];
    if (error instanceof PassedError) return ["passed", error.code, null];
    throw error;
  }
  throw new Error(`${name} answered`);
}

const help: FunctionHelp | undefined = catalogue.find(({ name }) => name === "RUN_MINUTES");
const optional = (help?.params ?? []).filter((param: Parameter) => param.optional).map(({ name }) => name);
const system: UnitSystem = "us";
const steps: readonly WorkedStep[] = working("RUN_MINUTES", [0.275, 6]);

const report = {
  answers: [minutes(0.275, 6), pulses().length, call(`${NAMESPACE}.RUN_MINUTES`, [1.5, 12])],
  refused: [
    refusal("RUN_MINUTES", [0.275, 0]),
    refusal("RUN_MINUTES_FROM_LEACHING", [20, 0, 0.15]),
    refusal("RUN_MINUTES", [{ code: "#DIV/0!" }, 6]),
  ],
  optional,
  unit: help?.result.unit,
  lastStep: steps[steps.length - 1]?.value,
  faults: faults("RUN_MINUTES", [null, "six"]).map(({ argument }) => argument),
  verdict: verdict("RUN_MINUTES", "emitter_flow", 0.1, system),
  version: VERSION,
};
console.log(JSON.stringify(report));
