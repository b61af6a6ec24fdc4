import type { CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { FIGURES, MOST_BENCHES } from "./figures";

export interface RoundInputs {
  readonly atOnce: CellRef;
  readonly benchFlow: CellRef;
  readonly tank: CellRef;
  readonly freeboard: CellRef;
  readonly start: CellRef;
  readonly dead: CellRef;
  readonly first: CellRef;
  readonly soak: CellRef;
  readonly drain: CellRef;
  readonly next: CellRef;
  readonly rounds: CellRef;
  readonly longest: CellRef;
  readonly usualLeast: CellRef;
  readonly usualMost: CellRef;
  readonly reason: CellRef;
  readonly waterWeight: CellRef;
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): RoundInputs {
  inputs.block("The pump and the tank");
  kit.units(inputs);
  const pump = pumpAndTank(kit, inputs);
  inputs.block("The round");
  const round = roundLines(inputs);
  inputs.block("What the house holds it against");
  return { ...pump, ...round, ...houseLines(kit, inputs) };
}

function pumpAndTank(kit: StarterBuilder, inputs: SheetBuilder) {
  const figures = FIGURES[kit.edition];
  const volume = kit.pick("gal", "L");
  const flow = kit.pick("gal/min", "L/min");
  const volumes = { least: kit.pick(1, 5), most: kit.pick(50_000, 200_000) };
  const supply = kit.name(
    "supply_flow",
    inputs.input({
      label: "Flow of the pump, at the benches",
      unit: flow,
      input: figures.flow,
      format: "decimals1",
      limits: { least: kit.pick(1, 4), most: kit.pick(500, 2000) },
      how: "bucket and watch at the inlet of a bench: 60 x volume / seconds",
    }),
  );
  const atOnce = inputs.input({
    label: "Benches filled at once",
    unit: "count",
    input: 1,
    format: "decimals0",
    limits: { least: 1, most: MOST_BENCHES, whole: true },
    how: "they share the pump",
  });
  const benchFlow = inputs.formula({
    label: "Flow to each open bench",
    unit: flow,
    formula: `=${supply.here} / ${atOnce.here}`,
    format: "decimals1",
    how: "flow of the pump / benches at once",
  });
  const tank = inputs.input({
    label: "Volume of the tank",
    unit: volume,
    input: figures.tank,
    format: "decimals0",
    limits: volumes,
    how: "up to its rim",
  });
  const freeboard = inputs.input({
    label: "Room kept above the water",
    unit: "fraction",
    input: 0.1,
    format: "percent0",
    limits: { least: 0, most: 1 },
    how: "as a part of the water; for what runs back late, and for pipes that empty",
  });
  const start = inputs.input({
    label: "Water in the tank at the start",
    unit: volume,
    input: figures.start,
    format: "decimals0",
    limits: volumes,
    how: "all of it, topped up, with every bench empty",
  });
  const dead = inputs.input({
    label: "of it below the pump's minimum",
    unit: volume,
    input: figures.dead,
    format: "decimals0",
    limits: { least: 0, most: volumes.most },
    how: "what is left when the float switch stops the pump",
  });
  return { atOnce, benchFlow, tank, freeboard, start, dead };
}

function roundLines(inputs: SheetBuilder) {
  const first = inputs.input({
    label: "First fill",
    unit: "time",
    input: 7 / 24,
    format: "time",
    limits: { least: 0, most: 0.999 },
  });
  const soak = inputs.input({
    label: "Soak",
    unit: "min",
    input: 10,
    format: "decimals0",
    limits: { least: 0, most: 120 },
    how: "from full to the start of the drain; 5 to 15 minutes (common practice): as short as wets the pots",
  });
  const drain = inputs.input({
    label: "Drain",
    unit: "min",
    input: 8,
    format: "decimals0",
    limits: { least: 0.5, most: 120 },
    how: "from the start of the drain to the empty bench, by the watch; within 10 minutes (common practice)",
  });
  const next = inputs.input({
    label: "The next bench starts",
    unit: "word",
    input: "after_fill",
    limits: { words: ["after_fill", "after_drain"] },
    how: "after_fill: when this one is full; after_drain: when it is empty. Slower, from a smaller tank",
  });
  const rounds = inputs.input({
    label: "Rounds until the tank is topped up",
    unit: "count",
    input: 1,
    format: "decimals0",
    limits: { least: 1, most: 20, whole: true },
    how: "rounds a day where a person tops up daily",
  });
  return { first, soak, drain, next, rounds };
}

function houseLines(kit: StarterBuilder, inputs: SheetBuilder) {
  const figures = FIGURES[kit.edition];
  const perArea = kit.pick("gal/ft2", "L/m2");
  const usual = { least: kit.pick(0.05, 2), most: kit.pick(10, 400) };
  const longest = inputs.input({
    label: "Longest fill and drain allowed",
    unit: "min",
    input: 20,
    format: "decimals0",
    limits: { least: 1, most: 240 },
    how: "the house's own limit, without the soak; 10 and 10 minutes are common practice",
  });
  const usualLeast = inputs.input({
    label: "Usual tank for the benches, from",
    unit: perArea,
    input: figures.usual[0],
    format: "decimals1",
    limits: usual,
    how: "volume of the tank / area of the benches, as the trade builds it",
  });
  const usualMost = inputs.input({
    label: "Usual tank for the benches, to",
    unit: perArea,
    input: figures.usual[1],
    format: "decimals1",
    limits: usual,
  });
  const reason = inputs.input({
    label: "Why this tank is outside, if it is",
    unit: "words",
    input: "",
  });
  const waterWeight = inputs.locked({
    label: `Weight of 1 ${kit.pick("gal", "L")} of water`,
    unit: kit.pick("lb", "kg"),
    input: figures.waterWeight,
    how: "for the load on the benches",
    message: `A ${kit.pick("gallon weighs 8.345 lb", "litre weighs 1 kg")}: it is the same everywhere.`,
  });
  return { longest, usualLeast, usualMost, reason, waterWeight };
}
