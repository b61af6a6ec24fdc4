/** What the trade usually sees, of each argument and of the answer. */
import type { FunctionHelp } from "../../src/functions";
import { usualOf, type Entry } from "../../src/kernel";
import { unitFor, type UnitSystem } from "../../src/taskpane/library";
import { numberFact } from "./numberFacts";

export interface UsualFacts {
  /** The argument's name, or "answer". */
  readonly what: string;
  readonly us: string;
  readonly metric: string;
  /** The likely slip behind a number below or above; "" where none is named. */
  readonly below: string;
  readonly above: string;
  readonly source: string;
}

const ANSWER = "answer";

export function usualFacts(entry: Entry, help: FunctionHelp): readonly UsualFacts[] {
  const described = [...help.params, { ...help.result, name: ANSWER }];
  return described.flatMap((about) => {
    const range = usualOf(entry, about.name === ANSWER ? "" : about.name);
    if (about.usual === undefined || range === undefined) return [];
    const inUnits = (system: UnitSystem): string => {
      const [low, high] = range[system];
      return `${numberFact(low, "")} to ${numberFact(high, unitFor(about, system))}`;
    };
    const { low: below = "", high: above = "" } = range;
    return [
      { what: about.name, us: inUnits("us"), metric: inUnits("metric"), below, above, source: about.usual.source },
    ];
  });
}
