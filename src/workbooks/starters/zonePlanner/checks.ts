import type { StarterBuilder } from "../../kit";
import { blanksOf } from "../shared/blanksOf";
import type { Columns, ZoneInputs } from "./inputs";
import type { Day } from "./result";
import type { Chain, Zones } from "./work";

interface Parts {
  readonly given: ZoneInputs;
  readonly zones: Zones;
  readonly order: Columns;
  readonly chain: Chain;
  readonly day: Day;
}

export function addChecks(kit: StarterBuilder, { given, zones, order, chain, day }: Parts): void {
  const { sequence } = day;
  const stops = sequence.column(2, 1);
  kit.check(
    "Every zone that has a name has its minutes",
    `COUNT(${order["minutes"]!}) + ${blanksOf(order["zone"]!)} = ROWS(${order["zone"]!})`,
    "A number of that zone is missing on Inputs: point at the cell on Work for what is wrong.",
  );
  kit.check(
    "Every zone stands in the day",
    `COUNTIF(${sequence.column(1, 1)}, ">=0") - 1 = COUNT(${order["minutes"]!}) * ${given.cycles}`,
    "A zone was left out of the sequence: its note says why. A zone left out stays dry.",
  );
  kit.check(
    "The round is over in time",
    `MAX(${stops}) <= ${given.end}`,
    "Start earlier, give fewer cycles, find more supply, or move a zone to the evening.",
  );
  kit.check(
    "No zone asks for more than the supply gives",
    `MAX(${order["flow"]!}) <= supply_flow`,
    "It is run as several valves in turn: its pipes must be split like that.",
  );
  kit.check(
    "Every cycle is long enough for the far end",
    `MIN(${zones.spaced["times"]!}, ${zones.line["times"]!}) >= 1.5`,
    "A cycle is shorter than 1.5 times the filling of the line: fewer cycles, or lines that stay full.",
  );
  kit.check(
    "No zone is watered on emitters that are too uneven",
    `MIN(${given.spaced["uniformity"]!}, ${given.line["uniformity"]!}, ${given.overhead["uniformity"]!}) >= 0.6`,
    "Below 0.60 mend the system first: longer runs drown the wet pots.",
  );
  kit.check(
    "Emitter flows are what the trade sees",
    `COUNTIF(${zones.spaced["range"]!}, "ok") + ${blanksOf(zones.spaced["range"]!)} = ROWS(${zones.spaced["range"]!})`,
    "Look for a flow per minute where per hour is meant, or one unit where the other is meant.",
  );
  kit.check(
    "The followed zone gives the same minutes by both ways",
    `ABS(${chain.minutes} / INDEX(${zones.spaced["minutes"]!}, MATCH(${chain.shown}, ${zones.spaced["zone"]!}, 0)) - 1) < 0.000000001`,
    "A formula on Work was changed: copy it again from the row above or below.",
  );
}
