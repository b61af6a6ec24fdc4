import { cite, defineFunction, type CellAnswer, type Show } from "../../../kernel";
import { MINUTES_PER_DAY, PAST_MIDNIGHT } from "../clock";
import { faultOf, isUnwritten, type PlanCell } from "../runTime/planRows";
import { BENCH_FLOW_USUAL } from "./fillMinutes";
import { floodingsOf, NEXT_WORDS, tankCourse, type Bench, type Flooding, type RoundRules } from "./floodRound";

const HEADER = ["bench", "fill start", "full", "drain start", "empty", "tank after", "note"] as const;

interface PlanRow {
  readonly name: string;
  /** The name, or where the row stands in the range. */
  readonly label: string;
  readonly volume: PlanCell;
  readonly uptake: PlanCell;
}

function rowsOf(names: readonly string[], volumes: readonly PlanCell[], uptakes: readonly PlanCell[]): PlanRow[] {
  return names
    .map((name, row): PlanRow => ({
      name,
      label: name === "" ? `row ${row + 1}` : name,
      volume: volumes[row] as PlanCell,
      uptake: uptakes[row] as PlanCell,
    }))
    .filter(({ name, volume, uptake }) => !isUnwritten(name, volume, uptake));
}

/** The rows that can be worked. */
function benchesOf(rows: readonly PlanRow[]): Bench[] {
  return rows.flatMap(({ volume, uptake }, row) =>
    typeof volume === "number" && typeof uptake === "number" ? [{ row, volume, uptake }] : [],
  );
}

/** The steps of the first bench, on symbols q, ts, td, s and T0. */
function showFirst(
  { volume, uptake, full, drainStart, empty }: Flooding,
  { drawn, back, tank }: { readonly drawn: number; readonly back: number; readonly tank: number },
  timeOf: (minutes: number) => number,
  show: Show,
): void {
  show("Vb", volume, "volume", "Standing water of the first bench, from the table");
  show("Ub", uptake, "volume", "What its pots take up, from the table");
  show("tf = (Vb + Ub) / q", full, "minutes", "Minutes to fill it");
  show("full = s + tf / 1440", timeOf(full), "time of day", "It is full");
  show("out = s + (tf + ts) / 1440", timeOf(drainStart), "time of day", "It has soaked, and starts to drain");
  show("empty = s + (tf + ts + td) / 1440", timeOf(empty), "time of day", "It is empty");
  show("drawn", drawn, "volume", "Drawn from the tank by then, for all benches");
  show("back", back, "volume", "Come back to the tank by then, from all benches");
  show("T = T0 - drawn + back", tank, "volume", "Tank when the first bench is empty");
}

function scheduled(
  rows: readonly PlanRow[],
  rules: RoundRules,
  startTime: number,
  startTank: number,
  show: Show,
): CellAnswer[][] {
  const timeOf = (minutes: number): number => startTime + minutes / MINUTES_PER_DAY;
  const floodings = floodingsOf(benchesOf(rows), rules);
  const { drawn, back, lowest, lowestAt, dry } = tankCourse(floodings, rules, startTank);
  const dryNote = (index: number | undefined): string =>
    index === undefined ? "" : `tank runs dry at ${rows[(floodings[index] as Flooding).row]?.label}`;
  const noted = new Set(dry);
  const answer: CellAnswer[][] = [[...HEADER]];
  for (const { name, volume, uptake } of rows) answer.push([name, "", "", "", "", "", faultOf(volume, uptake) ?? ""]);
  floodings.forEach((flooding, index) => {
    const { row, start, full, drainStart, empty } = flooding;
    const [itsDrawn, itsBack] = [drawn[index] as number, back[index] as number];
    const tank = startTank - itsDrawn + itsBack;
    const note = noted.has(index) ? dryNote(index) : "";
    answer[row + 1] = [
      rows[row]?.name ?? "",
      timeOf(start),
      timeOf(full),
      timeOf(drainStart),
      timeOf(empty),
      tank,
      note,
    ];
    if (index === 0) showFirst(flooding, { drawn: itsDrawn, back: itsBack, tank }, timeOf, show);
  });
  const leftOut = rows.length - floodings.length;
  const notes = [dryNote(dry[0]), leftOut === 0 ? "" : `${leftOut} left out`].filter((note) => note !== "");
  answer.push(["lowest tank level", timeOf(lowestAt), "", "", "", lowest, notes.join("; ")]);
  return answer;
}

export const floodSchedule = defineFunction({
  name: "FLOOD_SCHEDULE",
  group: "Flood benches, tanks, supply",
  summary: "Fill and drain of each bench, and whether the tank lasts through the round",
  formula: "fill = (volume + uptake) / flow; empty = full + soak + drain; tank = start - drawn + come back",
  source: cite(
    "DEFINITION",
    "volume = flow x time; what leaves the tank stands on a bench, is in the pots, or comes back",
  ),
  assumptions: [
    "A pump shared by two benches gives each half. Volumes, uptakes, flow and tank are in one volume unit.",
    "Groups of benches_at_once, in the order given, start together. The next group starts when the last bench of the one before is full (after_fill) or empty (after_drain).",
    "A bench draws its volume and its uptake while it fills, and gives the volume back evenly over its drain. Pipes hold nothing, nothing is lost, and nothing is topped up during the round.",
    "Below 0 the tank's values go on as if water were there: the lowest level is then what is lacking.",
    "The note stands on the first bench that fills when the level passes below 0, each time that it does; the last row names the first of them.",
    "A row whose volume or uptake is missing or wrong carries its reason and is left out, the benches behind it move up, and the last row counts such rows. A row without a name and numbers is no row.",
    PAST_MIDNIGHT,
  ],
  params: {
    bench_names: { kind: "texts", about: "Names of the benches in the order in which they are flooded" },
    flood_volumes: {
      kind: "column",
      quantity: "volume",
      symbol: "V",
      above: 0,
      blanks: "refused",
      about: "Standing water of each full bench, one row a bench",
    },
    uptakes: {
      kind: "column",
      quantity: "volume",
      symbol: "U",
      atLeast: 0,
      blanks: "refused",
      about: "What the pots of each bench take up, in the same unit; 0 is a value, so leave no blank",
    },
    bench_flow: {
      quantity: "flow",
      symbol: "q",
      above: 0,
      about: "Flow that reaches each open bench, in the same volume unit per minute",
      usual: BENCH_FLOW_USUAL,
    },
    benches_at_once: {
      quantity: "count",
      symbol: "n",
      atLeast: 1,
      whole: true,
      about: "Benches that are filled at the same time",
    },
    soak_minutes: {
      quantity: "minutes",
      symbol: "ts",
      atLeast: 0,
      about: "Minutes from the full bench to the start of its drain; 0 is a value, so leave no blank",
      usual: {
        us: [5, 15],
        metric: [5, 15],
        low: "pots may not be wet through: lift a few",
        high: "long floods drown roots",
        source: cite("PRACTICE", "soak of 5 to 15 minutes"),
      },
    },
    drain_minutes: {
      quantity: "minutes",
      symbol: "td",
      above: 0,
      about: "Minutes from the start of the drain to the empty bench",
      usual: {
        us: [2, 10],
        metric: [2, 10],
        high: "slow: return pipes must be wider than supply pipes",
        source: cite("PRACTICE", "drained within 10 minutes"),
      },
    },
    start_time: {
      quantity: "time of day",
      symbol: "s",
      atLeast: 0,
      about: "Start of the first fill, a time of the sheet; 0 is midnight",
    },
    start_tank: {
      quantity: "volume",
      symbol: "T0",
      above: 0,
      about: "Water in the tank at the start, above the pump's intake",
    },
    next: {
      kind: "word",
      words: NEXT_WORDS,
      default: "after_fill",
      about: '"after_fill" starts the next group when this one is full, "after_drain" when it is empty',
    },
  },
  result: {
    header: true,
    table: [
      { name: "bench", quantity: "text" },
      { name: "fill start", quantity: "time of day" },
      { name: "full", quantity: "time of day" },
      { name: "drain start", quantity: "time of day" },
      { name: "empty", quantity: "time of day" },
      { name: "tank after", quantity: "volume" },
      { name: "note", quantity: "text" },
    ],
    about: "One row a bench, with the tank's level when it is empty; then the lowest level of the round and its time",
  },
  examples: [
    {
      given: {
        bench_names: [["north"], ["south"]],
        flood_volumes: [[95], [95]],
        uptakes: [[5], [5]],
        bench_flow: 10,
        benches_at_once: 1,
        soak_minutes: 5,
        drain_minutes: 10,
        start_time: 0.25,
        start_tank: 200,
      },
      gives: [
        [...HEADER],
        ["north", 0.25, 0.25 + 10 / 1440, 0.25 + 15 / 1440, 0.25 + 25 / 1440, 95, ""],
        ["south", 0.25 + 10 / 1440, 0.25 + 20 / 1440, 0.25 + 25 / 1440, 0.25 + 35 / 1440, 190, ""],
        ["lowest tank level", 0.25 + 20 / 1440, "", "", "", 47.5, ""],
      ],
      from: cite(
        "ARITHMETIC",
        "fill 100 / 10; minute 15: 200 - 150; minute 20: 50 - 50 + 5 x 9.5; 25: + 5 x 9.5; 35: + 95",
      ),
    },
    {
      given: {
        bench_names: [["north"], ["south"]],
        flood_volumes: [[95], [95]],
        uptakes: [[5], [5]],
        bench_flow: 10,
        benches_at_once: 1,
        soak_minutes: 5,
        drain_minutes: 10,
        start_time: 0.25,
        start_tank: 120,
        next: "after_drain",
      },
      gives: [
        [...HEADER],
        ["north", 0.25, 0.25 + 10 / 1440, 0.25 + 15 / 1440, 0.25 + 25 / 1440, 115, ""],
        ["south", 0.25 + 25 / 1440, 0.25 + 35 / 1440, 0.25 + 40 / 1440, 0.25 + 50 / 1440, 110, ""],
        ["lowest tank level", 0.25 + 35 / 1440, "", "", "", 15, ""],
      ],
      from: cite("ARITHMETIC", "120 - 100 + 95 = 115 at minute 25; 115 - 100 = 15 at 35; 15 + 95 at 50"),
    },
    {
      given: {
        bench_names: [["north"], ["middle"], ["south"]],
        flood_volumes: [[95], [null], [95]],
        uptakes: [[5], [5], [5]],
        bench_flow: 10,
        benches_at_once: 1,
        soak_minutes: 5,
        drain_minutes: 10,
        start_time: 0.25,
        start_tank: 120,
      },
      gives: [
        [...HEADER],
        ["north", 0.25, 0.25 + 10 / 1440, 0.25 + 15 / 1440, 0.25 + 25 / 1440, 15, ""],
        ["middle", "", "", "", "", "", "left out: flood_volumes is blank or 0; it must be more than 0 (gal or L)"],
        [
          "south",
          0.25 + 10 / 1440,
          0.25 + 20 / 1440,
          0.25 + 25 / 1440,
          0.25 + 35 / 1440,
          110,
          "tank runs dry at south",
        ],
        ["lowest tank level", 0.25 + 20 / 1440, "", "", "", -32.5, "tank runs dry at south; 1 left out"],
      ],
      from: cite("ARITHMETIC", "as the first example with 80 less in the tank: 20 at minute 10, 0 at 12, -32.5 at 20"),
    },
  ],
  mistakes: [],
  seeAlso: ["FLOOD_VOLUME", "FILL_MINUTES", "RECIRCULATION_TANK", "BUCKET_FLOW"],
  caution:
    "Recirculated water carries disease from one bench to all: treat it, and flood sick crops last or not at all. A pump that runs dry breaks, and the benches behind it stay dry.",
  compute(given, show, { refuse }) {
    const { bench_flow, benches_at_once, soak_minutes, drain_minutes, start_time, start_tank, next } = given;
    const rows = rowsOf(given.bench_names, given.flood_volumes, given.uptakes);
    if (rows.length === 0) throw refuse("bench_names", null, "it must have a bench with its volume and its uptake");
    const rules: RoundRules = {
      flow: bench_flow,
      atOnce: benches_at_once,
      soak: soak_minutes,
      drain: drain_minutes,
      next,
    };
    return scheduled(rows, rules, start_time, start_tank, show);
  },
});
