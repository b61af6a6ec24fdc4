import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { MOST_BENCHES } from "./figures";
import type { RoundInputs } from "./inputs";
import type { Tank } from "./tank";
import type { Work } from "./work";

const LAST_ROW = "lowest tank level";

export interface Schedule {
  readonly block: BlockRef;
  /** Lowest level above the pump's minimum, as a formula. */
  readonly lowest: string;
}

export function fillSchedule(
  kit: StarterBuilder,
  result: SheetBuilder,
  round: RoundInputs,
  work: Work,
  places: BlockRef,
): Schedule {
  const volume = kit.pick("gal", "L");
  const { inOrder } = work;
  const benches = ["bench", "volume", "uptake"].map((key) => String(inOrder[key]!)).join(", ");
  const block = result.spill({
    label: "The round",
    how: `Tank after: ${volume} above the pump's minimum when the bench is empty.`,
    table: `=CANYARD.FLOOD_SCHEDULE(${benches}, ${round.benchFlow}, ${round.atOnce}, ${round.soak}, ${round.drain}, ${round.first}, ${round.start} - ${round.dead}, ${round.next})`,
    rows: MOST_BENCHES + 2,
    formats: [undefined, "time", "time", "time", "time", "decimals1", undefined],
    header: true,
    plain: schedulePlain(places, round, work),
  });
  // Where the schedule is refused its first cell says why, and so does what asks for its corner.
  const found = `INDEX(${block.column(5)}, MATCH("${LAST_ROW}", ${block.column(0)}, 0))`;
  return { block, lowest: `IF(${block.cell(0)} = "", "", ${found})` };
}

/** The same from the arithmetic on Work. */
function schedulePlain(
  places: BlockRef,
  round: RoundInputs,
  { inOrder, moments, changes, lowest }: Work,
): readonly (readonly string[])[] {
  const written = `COUNT(${places})`;
  const lowestAt = `INDEX(${changes["minute"]!}, MATCH("lowest", ${changes["mark"]!}, 0))`;
  const time = (minutes: string): string => `${round.first} + ${minutes} / 24 / 60`;
  const above = `${lowest} - ${round.dead}`;
  const row = (index: number): string[] => {
    const isBench = index < MOST_BENCHES;
    const of = (key: string): string => String(moments[key]!.cell(index));
    const pick = (bench: string, last: string): string => {
      const after = `IF(${written} = ${index}, ${last}, "")`;
      return isBench ? `=IF(${written} > ${index}, ${bench}, ${after})` : `=${after}`;
    };
    const moment = (key: string): string => (isBench ? `IF(ISNUMBER(${of(key)}), ${time(of(key))}, "")` : "");
    const after = isBench
      ? `IF(ISNUMBER(${of("empty")}), INDEX(${changes["water"]!}, MATCH(${of("empty")}, ${changes["minute"]!}, 0)) - ${round.dead}, "")`
      : "";
    return [
      pick(isBench ? String(inOrder["bench"]!.cell(index)) : "", `"${LAST_ROW}"`),
      pick(moment("start"), time(lowestAt)),
      pick(moment("full"), '""'),
      pick(moment("drain"), '""'),
      pick(moment("empty"), '""'),
      pick(after, above),
      pick('""', `IF(${above} < 0, "tank runs dry", "")`),
    ];
  };
  const header = ["bench", "fill start", "full", "drain start", "empty", "tank after", "note"];
  return [header.map((text) => `="${text}"`), ...Array.from({ length: MOST_BENCHES + 1 }, (_, index) => row(index))];
}

/** What the card beside the pump says below the round. */
export function fillCard(kit: StarterBuilder, result: SheetBuilder, { round, lowest }: Work, tank: Tank): void {
  const volume = kit.pick("gal", "L");
  const copy = (label: string, unit: string, from: CellRef, format: "decimals0" | "decimals1"): CellRef =>
    result.formula({ label, unit, formula: `=${from}`, format });
  copy("The round takes", "min", round, "decimals0");
  copy("Lowest water in the tank", volume, lowest, "decimals0");
  copy("Tank needed", volume, tank.needed, "decimals0");
  copy("Top up after the round", volume, tank.roundUptake, "decimals0");
  copy("Heaviest water on a bench", kit.pick("lb", "kg"), tank.load, "decimals0");
  result
    .note(
      "Ask the bench maker what a bench carries: wet pots and the bench itself come on top of the water.",
      "caution",
    )
    .note(
      "One tank carries disease from one bench to all: treat the water, flood sick crops last or not at all.",
      "caution",
    );
}

export function drawCharts(kit: StarterBuilder, result: SheetBuilder, { course, moments }: Work): void {
  const volume = kit.pick("gal", "L");
  const first = result.next + 1;
  result
    .chart({
      type: "lines",
      title: "Water in the tank through the round",
      description:
        "A line over the minutes of the round: the water in the tank, falling while benches fill and rising while they drain. Two level lines: the lowest of the round, and the pump's minimum.",
      labels: String(course["minute"]!),
      series: [
        { name: "water in the tank", values: String(course["water"]!) },
        { name: "lowest of the round", values: String(course["lowest"]!) },
        { name: "pump's minimum", values: String(course["least"]!) },
      ],
      axisTitles: { labels: "minutes from the first fill", values: volume },
      position: { cell: `A${first}`, width: 720, height: 320 },
    })
    .chart({
      type: "bars",
      stacked: true,
      topDown: true,
      title: "Strip of the benches",
      description:
        "A lying bar for each bench, from the top in the order of the round: filling, then soaking, then draining, over the minutes from the first fill.",
      labels: String(moments["bench"]!),
      series: [
        { name: "waits", values: String(moments["wait"]!), unseen: true },
        { name: "fills", values: String(moments["filling"]!) },
        { name: "soaks", values: String(moments["soaking"]!) },
        { name: "drains", values: String(moments["draining"]!) },
      ],
      axisTitles: { values: "minutes from the first fill" },
      position: { cell: `A${first + 17}`, width: 720, height: 280 },
    });
}
