import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import type { Columns } from "./emitters";
import { PLACES } from "./figures";
import type { AuditInputs } from "./inputs";

export interface Walk {
  readonly uniformity: CellRef;
  readonly design: CellRef;
  readonly head: CellRef;
  readonly tail: CellRef;
  readonly survey: BlockRef;
}

/** What the walk along the emitters says. */
export function fillWalk(kit: StarterBuilder, sheet: SheetBuilder, given: AuditInputs, { place, flow }: Columns): Walk {
  const hourly = kit.pick("gal/h", "L/h");
  const format = kit.pick("decimals3", "decimals2");
  sheet.block("Emitters: mL in some seconds");
  const mean = sheet.formula({
    label: "Flow of an emitter",
    unit: hourly,
    formula: `=AVERAGE(${flow!})`,
    format,
    how: "the mean of the flows: what minutes are worked with",
  });
  const [head, , tail] = PLACES.map((where) =>
    sheet.formula({
      label: `at the ${where}`.replace("at the middle", "in the middle"),
      unit: hourly,
      formula: `=IF(COUNTIFS(${place!}, "${where}", ${flow!}, ">=0") = 0, "", AVERAGEIF(${place!}, "${where}", ${flow!}))`,
      format,
      how: "the mean of those that stand there",
    }),
  ) as [CellRef, CellRef, CellRef];
  const uniformity = sheet.formula({
    label: "Evenness, measured",
    unit: "fraction",
    formula: `=CANYARD.DU_LOW_QUARTER(${flow!}, "count")`,
    format: "decimals3",
    how: "the lowest quarter / the mean; no flow counts as 0",
  });
  const design = sheet.formula({
    label: "Evenness that the design promises",
    unit: "fraction",
    formula: `=CANYARD.EMISSION_UNIFORMITY(${given.variation}, ${given.perPlant}, MIN(${head.here}:${tail.here}), ${mean.here})`,
    format: "decimals3",
    how: "from the maker's variation and the place that gets least; measured far below it: plugged emitters",
  });
  const survey = sheet.spill({
    label: "Emitters: how many are well",
    how: "Count, then share.",
    table: `=CANYARD.EMITTER_SURVEY(${flow!}, ${given.rated}, ${given.bandLow}, ${given.bandHigh})`,
    rows: 6,
    formats: [undefined, "decimals0", "decimals2"],
    header: false,
    plain: surveyPlain(given, flow!),
  });
  return { uniformity, design, head, tail, survey };
}

function surveyPlain({ rated, bandLow, bandHigh }: AuditInputs, flow: BlockRef): string[][] {
  const tested = `ROWS(${flow})`;
  const flowing = `COUNTIF(${flow}, ">0")`;
  const high = `COUNTIF(${flow}, ">" & ${bandHigh} * ${rated})`;
  const low = `(${flowing} - COUNTIF(${flow}, ">=" & ${bandLow} * ${rated}))`;
  const row = (label: string, count: string): string[] => [`="${label}"`, `=${count}`, `=(${count}) / ${tested}`];
  return [
    row("tested", tested),
    row("no flow", `${tested} - ${flowing}`),
    row("low", low),
    row("in band", `${flowing} - ${low} - ${high}`),
    row("high", high),
    ['="mean / rated"', '=""', `=SUM(${flow}) / ${tested} / ${rated}`],
  ];
}

export interface BottleResult {
  readonly mean: CellRef;
  readonly byMeanTime: CellRef;
}

/** The flows of the bottle test, and what comes out when the times are averaged instead. */
export function fillTrap(
  kit: StarterBuilder,
  sheet: SheetBuilder,
  given: AuditInputs,
  { time, flow }: Columns,
): BottleResult {
  const hourly = kit.pick("gal/h", "L/h");
  const format = kit.pick("decimals3", "decimals2");
  sheet.block("Emitters: seconds to fill a bottle");
  const mean = sheet.formula({
    label: "Flow of an emitter, by the bottle",
    unit: hourly,
    formula: `=AVERAGE(${flow!})`,
    format,
    how: "the mean of the flows",
  });
  const byMeanTime = sheet.formula({
    label: "Trap: flow at the mean of the times",
    unit: hourly,
    formula: `=CANYARD.EMITTER_FLOW(${given.bottle}, AVERAGE(${time!}), units)`,
    format,
    how: "a slow emitter weighs too much in it: always too low",
  });
  sheet.formula({
    label: "too low by",
    unit: "fraction",
    formula: `=1 - ${byMeanTime.here} / ${mean.here}`,
    format: "percent",
    how: "1 - trap / mean of the flows; more where emitters are less even",
  });
  sheet.formula({
    label: "Evenness, by the bottle",
    unit: "fraction",
    formula: `=CANYARD.DU_LOW_QUARTER(${flow!}, "skip")`,
    format: "decimals3",
    how: "the lowest quarter of the flows / their mean",
  });
  sheet.formula({
    label: "Trap: lowest quarter of the times",
    unit: "fraction",
    formula: `=CANYARD.DU_LOW_QUARTER(${time!}, "skip")`,
    format: "decimals3",
    how: "the shortest times are the wettest emitters: this is no evenness of the water",
  });
  return { mean, byMeanTime };
}
