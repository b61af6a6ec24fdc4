import type { StarterBuilder } from "../../kit";
import { blanksOf } from "../shared/blanksOf";
import type { Costs } from "./costs";
import type { Given } from "./inputs";
import type { Chosen } from "./lookedAt";
import type { Systems } from "./systems";
import type { Water } from "./water";
import type { Years } from "./years";

interface Parts {
  readonly given: Given;
  readonly systems: Systems;
  readonly water: Water;
  readonly costs: Costs;
  readonly chosen: Chosen;
  readonly years: Years;
}

export function addChecks(kit: StarterBuilder, { given, systems, water, costs, chosen, years }: Parts): void {
  const { season, tariff } = water;
  const { lookedAt } = chosen;
  const cost = (key: string) => String(costs.cost[key]!);
  const lines = `${costs.cost["water"]!.cell(0)}:${absolute(costs.cost["replacement"]!.last)}`;
  kit.check(
    "No number is missing",
    `AND(COUNT(${given.numbers.join(", ")}) = ${given.numbers.length}, ${systems.bodies.map(blanksOf).join(" + ")} = 0)`,
    "Fill the empty cell on Inputs or Systems: a line left out looks like a saving.",
  );
  kit.check(
    "Every line of cost is worked for every system",
    `COUNT(${lines}) = ROWS(${lines}) * COLUMNS(${lines})`,
    "Point at the cell on Work that is no number: it says what is wrong.",
  );
  kit.check(
    "Costs add up to the same across and down",
    `ABS(SUM(${lines}) - SUM(${cost("total")})) < 0.005`,
    "A formula on Work was changed: copy it again from the row above or below.",
  );
  kit.check(
    "The baseline's water is that of the meter",
    `ABS(${season["units"]!.cell(0)} / ${given.meter} - 1) <= ${given.within}`,
    "Look at the unit of the bill, the days, mean day / hottest day, a leak, or other zones on the same meter.",
  );
  kit.check(
    "The bills hold the whole season's water",
    `ABS(SUM(${given.shares}) - 1) < 0.0005`,
    "The parts of the bills must add up to 100 %.",
  );
  kit.check(
    "The tariff's blocks rise",
    `COUNTIF(${tariff["order"]!}, "ok") = ROWS(${tariff["order"]!})`,
    "Each upper end must be above the one before, without gaps; only the last block may have none.",
  );
  kit.check(
    "The baseline's bills are the same by both ways",
    billsByBothWays(water, given),
    "Each bill again from the steps of the tariff: a formula on Work was changed, or the tariff's rows have gaps.",
  );
  kit.check(
    "Plants keep about the same water with every system",
    `MAX(${season["kept"]!}) <= 1.15 * MIN(${season["kept"]!})`,
    "A system looks better than it is, or a unit slipped: compare kept by a plant on Work, system by system.",
  );
  kit.check(
    "Labour is a sane part of the cost",
    `AND(MIN(${costs.system["share"]!}) >= 0.15, MAX(${costs.system["share"]!}) <= 0.75)`,
    "40 % and more is usual: look for labour left out, or an hourly wage that is not one.",
  );
  kit.check(
    "Lost plants are counted at cost, not at price",
    `${given.invested} <= ${given.materials} + ${given.cropLabour}`,
    "What was spent on a plant by then cannot be more than its whole cost.",
  );
  kit.check(
    "A grant is no more than what it helps to pay",
    `MIN(${costs.system["rest"]!}) >= 0`,
    "The grant is larger than the other parts and work: count only what is paid out.",
  );
  kit.check(
    "The system looked at suits the pots",
    `INDEX(${season["suits"]!}, ${lookedAt("place")}) = "suits"`,
    "It is for other pots, or needs a roof: its figures here are no reason to buy it.",
  );
  kit.check(
    "Its new chores are counted",
    `${lookedAt("chores")} > 0`,
    "Checking emitters, cleaning filters and mats, placing: nobody waters without them.",
  );
  kit.check(
    "It pays back",
    `ISNUMBER(${lookedAt("interest")})`,
    "The savings never reach the investment with interest: do not buy it for the money.",
  );
  kit.check(
    "It pays back within the life of what wears out",
    `IF(ISNUMBER(${lookedAt("interest")}), ${lookedAt("interest")} <= ${lookedAt("life")}, FALSE)`,
    "The parts are worn out before they are paid: ask for longer-lived ones, a grant, or leave it.",
  );
  kit.check(
    "Its net present value is the same by three ways",
    `AND(${sameMoney(`NPV(discount_rate, ${savings(years)}) - ${lookedAt("investment")}`, lookedAt("value"))}, ${sameMoney(years.sensitivity.cell(1, 1), lookedAt("value"))})`,
    "A formula on Work or Result was changed, or cells that a table fills are not free.",
  );
}

/** The baseline's bills in steps: the fixed charges, then each step on the water above it. */
function billsByBothWays({ season, tariff, bills }: Water, given: Given): string {
  const blocks = [0, 1, 2, 3].map((block) => {
    const from = tariff["from"]!.cell(block);
    const above = `${season["units"]!.cell(0)} * ${given.shares} - ${from}`;
    return `SUMPRODUCT((${above} > 0) * (${above})) * ${tariff["step"]!.cell(block)}`;
  });
  const charges = `(ROWS(${given.bills}) - ${blanksOf(given.bills)}) * fixed_charge`;
  return sameMoney(`${charges} + ${blocks.join(" + ")}`, bills["total"]!.cell(0));
}

function savings({ table }: Years): string {
  return String(table.column(1, 2));
}

function sameMoney(one: unknown, other: unknown): string {
  return `ABS(${String(one)} - (${String(other)})) < 0.005`;
}

function absolute(address: string): string {
  return address.replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
}
