import type { StarterBuilder } from "../../kit";
import type { Benches } from "./benches";
import type { RoundInputs } from "./inputs";
import type { Schedule } from "./result";
import type { Tank } from "./tank";
import type { Work } from "./work";

interface Parts {
  readonly round: RoundInputs;
  readonly benches: Benches;
  readonly work: Work;
  readonly schedule: Schedule;
  readonly tank: Tank;
}

export function addChecks(kit: StarterBuilder, { round, benches, work, schedule, tank }: Parts): void {
  const { given, worked } = benches;
  const { block } = schedule;
  const empties = block.column(4, 1);
  const named = `COUNTA(${given["bench"]!})`;
  kit.check(
    "Every bench that has a name stands in the round",
    `COUNT(${empties}) = ${named}`,
    "A number of that bench is missing on Benches: point at its cell there for what is wrong. Left out, it stays dry.",
  );
  kit.check(
    "Each bench has a place of its own in the round",
    `SUM(${worked["place"]!}) = ${named} * (${named} + 1) / 2`,
    "Two benches have the same number, or one has none: give each its own.",
  );
  kit.check(
    "The lowest level stays above the pump's minimum",
    `${tank.lowest} > 0`,
    "Fewer benches at once, after_drain, more water at the start, or a larger tank. A pump that runs dry breaks.",
  );
  kit.check(
    "The tank is large enough for the water on benches",
    `${round.tank} >= ${tank.needed}`,
    "Tank says what is needed. after_drain, or a top-up after each round, needs less.",
  );
  kit.check(
    "The tank is of usual size, or its reason is given",
    `OR(AND(${tank.perArea} >= ${round.usualLeast}, ${tank.perArea} <= ${round.usualMost}), LEN(${round.reason}) > 0)`,
    "Look at the units first. If the tank is right, write the reason on Inputs.",
  );
  kit.check(
    "The water at the start leaves room in the tank",
    `${round.start} * (1 + ${round.freeboard}) <= ${round.tank} + 0.000001`,
    "When every bench has drained all of it is in the tank again: it would run over.",
  );
  kit.check(
    "Each bench fills and drains within the limit",
    `MAX(${worked["both"]!}) <= ${round.longest}`,
    "A slow flood drowns roots and leaves the far end short: more flow, fewer benches at once, wider return pipes.",
  );
  kit.check(
    "Every flood is as deep as the trade floods",
    `COUNTIF(${worked["range"]!}, "ok") = ${named}`,
    "Look for feet, centimetres or another unit; the cell on Benches says which slip is likely.",
  );
  kit.check(
    "No more benches at once than there are",
    `${round.atOnce} <= ${named}`,
    "A bench alone gets all of the pump's flow: the round would be quicker than it says.",
  );
  kit.check(
    "At the end the tank lacks what the pots took up",
    `ABS(INDEX(${block.column(5, 1)}, MATCH(MAX(${empties}), ${empties}, 0)) - (${round.start} - ${round.dead} - ${tank.roundUptake})) < 0.000001`,
    "A formula on Work or Benches was changed.",
  );
  kit.check(
    "The schedule agrees with plain arithmetic",
    `AND(ABS((MAX(${empties}) - ${round.first}) * 24 * 60 - ${work.round}) < 0.000001, ABS(${tank.lowest} - (${work.lowest} - ${round.dead})) < 0.000001)`,
    "A formula on Work was changed: copy it again from the row above or below.",
  );
}
