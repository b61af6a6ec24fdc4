import type { CellRef, FormulaLine, SheetBuilder, StarterBuilder } from "../../kit";
import type { FeedInputs } from "./inputs";
import type { FeedWork } from "./work";

/** A card for the wall: what is weighed, set and read, and nothing else. */
export function fillResult(kit: StarterBuilder, result: SheetBuilder, given: FeedInputs, worked: FeedWork): void {
  const volume = kit.pick("gal", "L");
  const copy = (label: string, unit: string, from: CellRef, format?: FormulaLine["format"]): CellRef =>
    result.formula({ label, unit, formula: `=${from}`, ...(format && { format }) });
  result.block("Mix", "");
  copy("Product", "", given.product);
  copy("Stock to make", volume, given.stockVolume, "decimals1");
  const weight = copy("Weigh", kit.pick("lb", "kg"), worked.weight, "decimals2");
  if (kit.edition === "us") {
    result.formula({
      label: "that is, whole pounds",
      unit: "lb",
      formula: `=INT(${weight.here})`,
      format: "decimals0",
    });
    result.formula({
      label: "and ounces",
      unit: "oz",
      formula: `=(${weight.here} - INT(${weight.here})) * 16`,
      format: "decimals1",
      how: "16 ounces to the pound",
    });
  }
  copy("Injector set to 1 in", "parts", given.ratio, "decimals0");
  result.block("Read at the hose before it reaches plants", "");
  copy("EC should be", "mS/cm", worked.expectedEc, "decimals2");
  result.formula({
    label: "accept from",
    unit: "mS/cm",
    formula: `=${worked.expectedEc} - ${given.band}`,
    format: "decimals2",
  });
  result.formula({
    label: "accept to",
    unit: "mS/cm",
    formula: `=${worked.expectedEc} + ${given.band}`,
    format: "decimals2",
  });
  copy("This stock makes feed", volume, worked.treatedWater, "decimals0");
  copy("Fertiliser in it", "currency", worked.cost, "money");
  result.skip();
  result.note(
    "Gloves and eye protection. Fill the tank half with water first, then the fertiliser, then water to the mark.",
    "caution",
  );
  result.note(
    "Calcium never together with sulphate or phosphate in one stock tank. Backflow preventer approved locally.",
    "caution",
  );
  fillStrengths(result, given, worked);
}

/** Planned against measured, for the chart. */
function fillStrengths(result: SheetBuilder, given: FeedInputs, worked: FeedWork): void {
  result.block("Nitrogen, planned and found");
  const first = result.next;
  result.formula({ label: "planned", unit: "ppm N", formula: `=${given.ppm}`, format: "decimals0", how: "wanted" });
  result.formula({
    label: "by the injector's test",
    unit: "ppm N",
    formula: `=${given.ppm} * ${given.ratio} / ${worked.measuredRatio}`,
    format: "decimals0",
    how: "wanted x set ratio / measured ratio",
  });
  result.formula({
    label: "by the meter",
    unit: "ppm N",
    formula: `=${worked.measuredPpm}`,
    format: "decimals0",
    how: "from the EC at the hose",
  });
  const last = result.next - 1;
  result.chart({
    type: "columns",
    title: "Nitrogen, planned and found",
    description: "Three columns: ppm of nitrogen as planned, by the injector's test, and by the meter.",
    labels: `A${first}:A${last}`,
    series: [{ name: "ppm N", values: `D${first}:D${last}` }],
    axisTitles: { values: "ppm N" },
    position: { cell: `A${last + 2}`, width: 520, height: 260 },
  });
}
