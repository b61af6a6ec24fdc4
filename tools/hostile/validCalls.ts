/**
 * Calls within the limits, the ground that hostile inputs are strewn on: a call that is wrong in every argument would be
 * refused at the first, and would prove little of the others.
 */
import fc, { type Arbitrary } from "fast-check";
import { call } from "../../src/functions";
import { catalogue } from "../../src/functions/catalogue";
import { isRepeating, type ArgumentInput, type Entry } from "../../src/kernel";
import { extremeNumbers, ordinaryNumbers, systemsOf, validInputs } from "../../test/rig/validInputs";
import type { Kind } from "./kinds";

export interface ValidCall {
  readonly args: readonly ArgumentInput[];
  readonly kind: Extract<Kind, `valid${string}`>;
}

function plainly(entry: Entry): Arbitrary<ValidCall> {
  return fc.oneof(
    ...systemsOf(entry).flatMap((system) => [
      {
        weight: 3,
        arbitrary: validInputs(entry, system, ordinaryNumbers).map((args): ValidCall => ({
          args,
          kind: "valid, sizes of a sheet",
        })),
      },
      {
        weight: 1,
        arbitrary: validInputs(entry, system, extremeNumbers).map((args): ValidCall => ({
          args,
          kind: "valid, any size",
        })),
      },
    ]),
  );
}

const repeats = (entry: Entry): boolean => Object.values(entry.params).some(isRepeating);

/** The number that a call gives, or one that is surely another. */
function rightAnswer(entry: Entry, args: readonly ArgumentInput[]): number {
  try {
    const answer = call(entry.name, args);
    return typeof answer === "number" ? answer : 1;
  } catch {
    return 1;
  }
}

const slips = fc.constantFrom(1, 1.0001, 0.5, 2, 10, 60, 1 / 60, 3.785411784, -1);

interface Asked {
  readonly entry: Entry;
  readonly valid: ValidCall;
  readonly slip: number;
}

/** What stands before the inputs of another function, by argument. */
function leadingInput(name: string, { entry, valid, slip }: Asked, given: ArgumentInput): ArgumentInput {
  if (name === "function_name") return entry.name;
  return name === "answer" ? rightAnswer(entry, valid.args) * slip : given;
}

/** A function that takes another's name, and in some the inputs of that other. */
function aboutAnother(entry: Entry): Arbitrary<ValidCall> {
  const names = Object.keys(entry.params).filter((name) => !isRepeating(entry.params[name]!));
  const another = fc
    .constantFrom(...catalogue.filter((other) => !repeats(other)))
    .chain((other) => fc.record({ entry: fc.constant(other), valid: plainly(other), slip: slips }));
  return fc.tuple(another, plainly(entry), fc.nat()).map(([asked, own, pick]): ValidCall => {
    const lead = names.map((name, index) => {
      const argumentNames = ["", ...Object.keys(asked.entry.params)];
      if (name === "argument") return argumentNames[pick % argumentNames.length];
      return leadingInput(name, asked, own.args[index]);
    });
    return { args: repeats(entry) ? [...lead, ...asked.valid.args] : lead, kind: asked.valid.kind };
  });
}

export function validCalls(entry: Entry): Arbitrary<ValidCall> {
  if (!("function_name" in entry.params)) return plainly(entry);
  return fc.oneof({ weight: 4, arbitrary: aboutAnother(entry) }, { weight: 1, arbitrary: plainly(entry) });
}
