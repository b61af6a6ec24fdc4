import type { BlockRef, StarterBuilder } from "../../kit";
import type { Columns } from "./emitters";
import type { AuditInputs } from "./inputs";
import type { Audit, Rate } from "./result";
import type { BottleResult, Walk } from "./walk";
import type { Counts } from "./work";

interface Parts {
  readonly given: AuditInputs;
  readonly grid: BlockRef;
  readonly counts: Counts;
  readonly sorted: Columns;
  readonly audit: Audit;
  readonly rate: Rate;
  readonly emitters: Columns;
  readonly bottle: Columns;
  readonly walk: Walk;
  readonly trap: BottleResult;
}

export function addChecks(kit: StarterBuilder, parts: Parts): void {
  canChecks(kit, parts);
  emitterChecks(kit, parts);
}

function canChecks(kit: StarterBuilder, { given, grid, counts, sorted, audit, rate }: Parts): void {
  kit.check(
    "Every can has its water",
    `COUNTIF(${grid}, ">0") = ROWS(${grid}) * COLUMNS(${grid})`,
    "A can is blank or 0: say on Inputs whether it stayed dry (count) or fell over (skip).",
  );
  kit.check(
    "At least 16 cans, in fours",
    `AND(${counts.used} >= 16, MOD(${counts.used}, 4) = 0)`,
    "Fewer say little; with a number that 4 does not divide, books differ on what the lowest quarter is.",
  );
  kit.check(
    "The wind let the test count",
    `${given.wind} <= ${given.windMost}`,
    "Test again on a calm morning, or in the wind that is usual when you irrigate.",
  );
  kit.check(
    "The pressure was the usual one, within 10 %",
    `ABS(${given.pressure} / ${given.usualPressure} - 1) <= 0.1`,
    "At another pressure it is another system: run the zones as on a usual day, and test again.",
  );
  kit.check(
    "The evenness is not low",
    `${audit.value("du")} >= ${given.low}`,
    "Do not schedule on it: nozzles, pressure, spacing, heads that lean. A longer run only floods the wet pots.",
  );
  kit.check(
    "The rate is one that the trade sees",
    `${rate.range} = "ok"`,
    "Mouth of the can or minutes in another unit, or a radius for the diameter: the line on Result says which is likely.",
  );
  kit.check(
    "The sorted catches give the same evenness",
    `ABS(SUMIF(${sorted["n"]!}, "<=" & ${counts.quarter}, ${sorted["catch"]!}) / ${counts.quarter} / AVERAGE(${sorted["catch"]!}) - ${audit.value("du")}) < 0.000000001`,
    "A formula on Work was changed: copy it again from the row above or below.",
  );
}

function emitterChecks(kit: StarterBuilder, { emitters, bottle, walk, trap }: Parts): void {
  const { survey } = walk;
  kit.check(
    "18 emitters or more were caught, none left out",
    `AND(COUNT(${emitters["caught"]!}) = ROWS(${emitters["caught"]!}), COUNT(${emitters["caught"]!}) >= 18)`,
    "A row without a catch counts as an emitter without flow: fill it in, or delete the row.",
  );
  kit.check(
    "No emitter is without flow",
    `${survey.cell(1, 1)} = 0`,
    "Mend it first: a pot on a plugged emitter dries within hours on a hot day.",
  );
  kit.check(
    "Nine of ten emitters or more are in the band",
    `${survey.cell(3, 2)} >= 0.9`,
    "Few at the tail: pressure. Here and there: filter and flushing. All: the flow that they should give.",
  );
  kit.check(
    "Head and tail differ by no more than a fifth",
    `MIN(${walk.head}, ${walk.tail}) / MAX(${walk.head}, ${walk.tail}) >= 0.8`,
    "The pressure falls along the lines: shorter or wider lines, or emitters that compensate.",
  );
  kit.check(
    "The emitters are as even as the design promises",
    `${walk.uniformity} >= ${walk.design} - 0.05`,
    "More than 0.05 is missing. That is plugging, wear or mixed emitters, not pressure.",
  );
  kit.check(
    "Every emitter of the bottle test has its time",
    `COUNT(${bottle["time"]!}) = COUNTIF(${bottle["place"]!}, "?*")`,
    "A time is missing: it was left out. One that never fills the bottle belongs on the sheet Emitters.",
  );
  kit.check(
    "The flow comes from the flows, not from the times",
    `${trap.mean} >= ${trap.byMeanTime} - 0.000001`,
    "The mean of the flows is never below the flow at the mean time: a formula was changed.",
  );
}
