import { columnLetters, type BlockRef, type CellRef, type SheetBuilder, type StarterBuilder } from "../../kit";
import type { FormatName, StyleName } from "../../model";
import { CASES, type Cases } from "./cases";
import { LINES, type Costs } from "./costs";
import type { Chosen } from "./lookedAt";
import type { Systems } from "./systems";
import type { Water } from "./water";

interface Parts {
  readonly systems: Systems;
  readonly water: Water;
  readonly costs: Costs;
  readonly cases: Cases;
  readonly chosen: Chosen;
}

/** A line of the comparison: a number of each printed system. */
interface Line {
  readonly label: string;
  readonly unit?: string;
  /** One row a system. */
  readonly block: BlockRef;
  readonly format?: FormatName;
  readonly style?: StyleName;
}

const FIRST = 3;
/** The baseline and three more. */
const PRINTED = 4;
const MONEY = { unit: "currency", format: "money0" } as const;
const YEARS = { unit: "years", format: "decimals1" } as const;

export function fillComparison(kit: StarterBuilder, result: SheetBuilder, parts: Parts): void {
  const { water, costs, cases, chosen } = parts;
  fillVerdict(result, chosen);
  const block = blocks(result, chosen);
  block("The systems side by side", [
    { label: "For these pots", block: water.season["suits"]!, style: "result" },
    { label: "Water a season", unit: "bill units", block: water.season["units"]!, format: "decimals0" },
    { label: "Of the baseline's water", unit: "fraction", block: water.season["part"]!, format: "percent0" },
    { label: "Nitrogen leached", unit: kit.pick("lb", "kg"), block: costs.pumped["leached"]!, format: "decimals0" },
    {
      label: "Nitrogen beside the pots",
      unit: kit.pick("lb", "kg"),
      block: costs.pumped["beside"]!,
      format: "decimals0",
    },
  ]);
  block("Costs of a year (a cost is positive)", linesOf(costs.cost));
  block("Saved a year (a saving is positive)", linesOf(costs.saving));
  block("Does it pay?", [
    { label: "Investment, less grants", ...MONEY, block: costs.system["investment"]! },
    { label: "Payback, simple", ...YEARS, block: cases.simple["planned"]!, style: "result" },
    { label: "Payback with interest", ...YEARS, block: cases.withInterest["planned"]!, style: "result" },
    { label: "Life of what wears out", ...YEARS, block: parts.systems.investment["life"]! },
    { label: "Net present value", ...MONEY, block: cases.value["planned"]!, style: "result" },
    { label: "System a year, with interest", ...MONEY, block: costs.system["yearly"]! },
    { label: "Cost of a plant sold", unit: "currency", format: "money", block: costs.system["saleable"]! },
  ]);
  result.note("System a year stands for replacement and investment. A house over mats, benches, booms is not in.");
  block("Other cases: payback, simple", casesOf(cases.simple, YEARS));
  block("Other cases: with interest", casesOf(cases.withInterest, YEARS));
  block("Other cases: net present value", casesOf(cases.value, MONEY));
  result.note("own well: water price 0, with the lift of the well. no loss gain: as many plants lost as before.");
  result.note("smaller savings: less by the swing. short life: of what wears out. They may come together.");
}

function linesOf(columns: Costs["cost"]): readonly Line[] {
  return [
    ...LINES.map(({ key, heading }): Line => ({ label: heading, ...MONEY, block: columns[key]! })),
    { label: "together", ...MONEY, block: columns["total"]!, style: "total" },
  ];
}

function casesOf(columns: Cases["value"], look: typeof MONEY | typeof YEARS): readonly Line[] {
  return CASES.map(({ key, heading }): Line => ({ label: heading, ...look, block: columns[key]! }));
}

function fillVerdict(result: SheetBuilder, { lookedAt }: Chosen): void {
  const [system, years, bad] = [lookedAt("system"), lookedAt("interest"), lookedAt("bad")];
  const pays = `IF(ISNUMBER(${years}), "paid back after " & TEXT(${years}, "0.0") & " years, with interest", "never paid back with interest")`;
  result.put(`A${result.next}`, { formula: `="As planned, " & ${system} & ": " & ${pays} & "."`, style: "result" });
  result.put(`A${result.next + 1}`, {
    formula: `="In " & ${bad} & " of ${CASES.length} cases it does not pay within the " & plan_years & " years of the plan."`,
    style: "result",
  });
  result
    .skip(2)
    .note("Wrong purchases come from hoped-for savings: read the other cases before anyone signs.", "caution");
}

/** Prints lines under a heading with the names of the printed systems. */
function blocks(result: SheetBuilder, { column }: Chosen) {
  const printed = Array.from({ length: PRINTED }, (_none, at) => at);
  const letters = (at: number) => columnLetters(FIRST + at);
  const place = (at: number): CellRef => column["place"]!.cell(at);
  return (title: string, lines: readonly Line[]): void => {
    result.skip();
    const heading = result.next;
    result.put(`A${heading}`, { value: title, style: "heading" });
    result.put(`B${heading}`, { value: "unit", style: "heading" });
    for (const at of printed) {
      const system = column["system"]!.cell(at);
      result.put(`${letters(at)}${heading}`, { formula: `=IF(${place(at)} = 0, "", ${system})`, style: "heading" });
    }
    lines.forEach(({ label, unit = "", block, format, style }, line) => {
      const row = heading + 1 + line;
      const look = { ...(style && { style }), ...(format && { format }) };
      result.put(`A${row}`, { value: label, ...(style === "total" && { style }) });
      result.put(`B${row}`, { value: unit, ...(style === "total" && { style }) });
      for (const at of printed) {
        const formula = `=IF(${place(at)} = 0, "", INDEX(${block}, ${place(at)}))`;
        result.put(`${letters(at)}${row}`, { formula, ...look });
      }
    });
    result.skip(lines.length + 1);
  };
}
