import type { CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import type { FeedInputs } from "./inputs";

export interface FeedWork {
  readonly weight: CellRef;
  readonly secondWeight: CellRef;
  readonly concentration: CellRef;
  readonly expectedEc: CellRef;
  readonly rise: CellRef;
  readonly cost: CellRef;
  readonly secondCost: CellRef;
  readonly treatedWater: CellRef;
  readonly measuredRatio: CellRef;
  readonly measuredEc: CellRef;
  readonly measuredPpm: CellRef;
  readonly weightAsMeasured: CellRef;
  readonly blend: CellRef;
}

export function fillWork(kit: StarterBuilder, work: SheetBuilder, given: FeedInputs): FeedWork {
  const mix = fillMix(kit, work, given);
  const test = fillTest(kit, work, given);
  work.block("The next filling");
  const blend = work.formula({
    label: "EC of the waters put together",
    unit: "mS/cm",
    formula: `=CANYARD.BLEND_EC(${given.volumes}, ${given.ecs})`,
    format: "decimals2",
    how: "sum of volume x EC / sum of the volumes",
  });
  return { ...mix, ...test, blend };
}

function fillMix(kit: StarterBuilder, work: SheetBuilder, given: FeedInputs) {
  const weightUnit = kit.pick("lb", "kg");
  const volumeUnit = kit.pick("gal", "L");
  const { ppm, analysis, ratio, stockVolume, waterEc, labelEc, labelPpm, price } = given;
  work.block("The mix");
  const weight = work.formula({
    label: "Weigh into the stock tank",
    unit: weightUnit,
    formula: `=CANYARD.STOCK_WEIGHT(${ppm}, ${analysis}, ${ratio}, ${stockVolume}, units)`,
    format: "decimals2",
    how: "ppm x ratio x stock volume / (part of nitrogen x 1,000,000)",
  });
  const treatedWater = work.formula({
    label: "Feed that this stock makes",
    unit: volumeUnit,
    formula: `=${stockVolume} * ${ratio}`,
    format: "decimals0",
    how: "stock volume x ratio",
  });
  const secondWeight = work.formula({
    label: "The weight by another way",
    unit: weightUnit,
    formula: `=CANYARD.FERTILIZER_WEIGHT(${ppm}, ${analysis}, ${treatedWater.here}, units)`,
    format: "decimals2",
    how: "what all the feed holds; must be the same",
  });
  const concentration = work.formula({
    label: "Strength of the stock",
    unit: `${weightUnit}/${volumeUnit}`,
    formula: `=${weight.here} / ${stockVolume}`,
    format: "decimals3",
    how: "weight / stock volume",
  });
  const expectedEc = work.formula({
    label: "EC that the hose should show",
    unit: "mS/cm",
    formula: `=CANYARD.FERTIGATION_EC(${waterEc}, ${ppm}, ${labelEc}, ${labelPpm})`,
    format: "decimals3",
    how: "EC of the water + ppm x label EC / label ppm",
  });
  const rise = work.formula({
    label: "of which the feed adds",
    unit: "mS/cm",
    formula: `=${expectedEc.here} - ${waterEc}`,
    format: "decimals3",
    how: "EC at the hose - EC of the water",
  });
  const cost = work.formula({
    label: "Fertiliser in it",
    unit: "currency",
    formula: `=CANYARD.FERTILIZER_COST(${treatedWater.here}, ${ppm}, ${analysis}, ${price}, units)`,
    format: "money",
    how: "weight of the product in all the feed x price",
  });
  const secondCost = work.formula({
    label: "The same by the scale",
    unit: "currency",
    formula: `=${weight.here} * ${price}`,
    format: "money",
    how: "weight x price",
  });
  return { weight, secondWeight, concentration, expectedEc, rise, cost, secondCost, treatedWater };
}

function fillTest(kit: StarterBuilder, work: SheetBuilder, given: FeedInputs) {
  const { ppm, analysis, ratio, stockVolume, waterEc, labelEc, labelPpm, treated, stockUsed, hoseEc } = given;
  work.block("What the injector and the meter say");
  const measuredRatio = work.formula({
    label: "Injector ratio, measured",
    unit: "1 to",
    formula: `=CANYARD.INJECTOR_RATIO(${treated}, ${stockUsed}, TRUE)`,
    format: "decimals1",
    how: "treated water / stock drawn",
  });
  const measuredPpmPlanned = work.formula({
    label: "Nitrogen that it then gives",
    unit: "ppm N",
    formula: `=${ppm} * ${ratio} / ${measuredRatio.here}`,
    format: "decimals0",
    how: "ppm wanted x set ratio / measured ratio",
  });
  const measuredEc = work.formula({
    label: "EC that the hose should show then",
    unit: "mS/cm",
    formula: `=CANYARD.FERTIGATION_EC(${waterEc}, ${measuredPpmPlanned.here}, ${labelEc}, ${labelPpm})`,
    format: "decimals3",
    how: "EC of the water + ppm given x label EC / label ppm",
  });
  const measuredPpm = work.formula({
    label: "Nitrogen by the meter",
    unit: "ppm N",
    formula: `=IF(${hoseEc} < ${waterEc}, "", CANYARD.PPM_FROM_EC(${hoseEc}, ${waterEc}, ${labelEc}, ${labelPpm}))`,
    format: "decimals0",
    how: "(EC at the hose - EC of the water) x label ppm / label EC",
  });
  const weightAsMeasured = work.formula({
    label: "Weigh for the measured ratio",
    unit: kit.pick("lb", "kg"),
    formula: `=CANYARD.STOCK_WEIGHT(${ppm}, ${analysis}, ${measuredRatio.here}, ${stockVolume}, units)`,
    format: "decimals2",
    how: "as above with the measured ratio, for an injector that cannot be set right",
  });
  return { measuredRatio, measuredEc, measuredPpm, weightAsMeasured };
}
