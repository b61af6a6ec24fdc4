import type { CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import type { Benches } from "./benches";
import type { RoundInputs } from "./inputs";
import type { Schedule } from "./result";
import type { Work } from "./work";

export interface Tank {
  readonly needed: CellRef;
  readonly perArea: CellRef;
  readonly roundUptake: CellRef;
  readonly lowest: CellRef;
  readonly load: CellRef;
}

/** How large the tank must be, what is topped up, and what the benches carry. */
export function fillTank(
  kit: StarterBuilder,
  tank: SheetBuilder,
  round: RoundInputs,
  { worked }: Benches,
  work: Work,
  schedule: Schedule,
): Tank {
  const volume = kit.pick("gal", "L");
  const weight = kit.pick("lb", "kg");
  const line = (
    label: string,
    unit: string,
    formula: string,
    how: string,
    format: "decimals0" | "decimals1" | "decimals2" = "decimals1",
  ) => tank.formula({ label, unit, formula: `=${formula}`, how, format });

  tank.block("How large the tank must be");
  const flood = line("Largest flood of a bench", volume, `MAX(${worked["volume"]!})`, "the most of the standing water");
  const holding = line(
    "Benches that hold water at once",
    "count",
    `MAX(${work.moments["holding"]!})`,
    "the most of the round: filling, soaking or draining",
    "decimals0",
  );
  const roundUptake = line("Taken up in a round", volume, `SUM(${worked["uptake"]!})`, "by the pots of all benches");
  const uptake = line(
    "Taken up until the top-up",
    volume,
    `${roundUptake.here} * ${round.rounds}`,
    "x rounds until then",
  );
  const needed = line(
    "Tank needed",
    volume,
    `CANYARD.RECIRCULATION_TANK(${flood.here}, ${holding.here}, ${uptake.here}, ${round.dead}, ${round.freeboard})`,
    "(flood x benches + taken up + below the minimum) x (1 + room above)",
    "decimals0",
  );
  line(
    "Really out of the tank at its lowest",
    volume,
    `${round.start} - ${work.lowest}`,
    "at the start - lowest; less than flood x benches, as one drains while another fills. A drain that sticks needs the rest",
  );
  const perArea = line(
    "This tank for its benches",
    kit.pick("gal/ft2", "L/m2"),
    `${round.tank} / SUM(${worked["area"]!})`,
    "volume of the tank / area of the benches",
    "decimals2",
  );

  tank.block("The tank through the days");
  const lowest = line(
    "Lowest level above the minimum",
    volume,
    `${schedule.lowest}`,
    "from the schedule; below 0 it is what is lacking",
  );
  line(
    "Top up after a round",
    volume,
    roundUptake.here,
    "what the pots took up; what leaks or dries away comes on top",
  );
  line(
    "Rounds that the tank lasts",
    "count",
    `IF(${lowest.here} < 0, 0, IF(${roundUptake.here} = 0, "no end", 1 + ROUNDDOWN(${lowest.here} / ${roundUptake.here}, 0)))`,
    "without a top-up: each round starts lower by what the one before took up",
    "decimals0",
  );

  tank.block("What a bench carries");
  const load = line(
    "Heaviest water on a bench",
    weight,
    `MAX(${worked["load"]!})`,
    "the most of the weights on Benches",
    "decimals0",
  );
  line(
    "Heaviest load, wet pots with it",
    `${weight}/${kit.pick("ft2", "m2")}`,
    `MAX(${worked["loadPerArea"]!})`,
    "the most on Benches; the bench itself is not in it",
  );
  tank.note("Ask the bench maker what it carries: this is what lies on it, not what it holds.", "caution");
  return { needed, perArea, roundUptake, lowest, load };
}
