import type { BlockRef, CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import { FIGURES, PRODUCT_ROWS, PRODUCTS } from "./figures";

const EC = { least: 0, most: 20 };
const A_FRACTION = { least: 0.01, most: 1 };

export interface FeedInputs {
  readonly product: CellRef;
  readonly analysis: CellRef;
  readonly labelEc: CellRef;
  readonly labelPpm: CellRef;
  readonly price: CellRef;
  readonly most: CellRef;
  readonly ppm: CellRef;
  readonly waterEc: CellRef;
  readonly ratio: CellRef;
  readonly stockVolume: CellRef;
  readonly treated: CellRef;
  readonly stockUsed: CellRef;
  readonly hoseEc: CellRef;
  readonly tank: CellRef;
  readonly setEc: CellRef;
  readonly band: CellRef;
  readonly volumes: BlockRef;
  readonly ecs: BlockRef;
  readonly products: Readonly<Record<string, BlockRef>>;
}

export function fillInputs(kit: StarterBuilder, inputs: SheetBuilder): FeedInputs {
  const figures = FIGURES[kit.edition];
  const volume = kit.pick("gal", "L");
  const weight = kit.pick("lb", "kg");
  const ec = (label: string, value: number, how: string, format: "decimals2" | "decimals3" = "decimals2"): CellRef =>
    inputs.input({ label, unit: "mS/cm", input: value, format, limits: EC, how });
  const volumeLimits = { least: 0.01, most: kit.pick(50_000, 200_000) };

  inputs.block("The bag");
  kit.units(inputs);
  const product = inputs.input({ label: "Product", input: "20-10-20" });
  const analysis = inputs.input({
    label: "Part of nitrogen in it",
    unit: "fraction",
    input: 0.2,
    format: "percent",
    limits: A_FRACTION,
    how: "20 % on the label is 20% or 0.20 here",
  });
  const labelEc = ec(
    "EC on the label",
    0.65,
    "in pure water, at the strength of the next line; from this bag, not another",
  );
  const labelPpm = inputs.input({
    label: "at a strength of",
    unit: "ppm N",
    input: 100,
    format: "decimals0",
    limits: { least: 1, most: 2000 },
    how: "ppm of nitrogen, not of the product",
  });
  const price = inputs.input({
    label: "Price",
    unit: `currency/${weight}`,
    input: figures.price,
    format: "money",
    limits: { least: 0.01, most: 1000 },
  });
  const most = inputs.input({
    label: "Most that dissolves",
    unit: `${weight}/${volume}`,
    input: figures.most,
    format: "decimals2",
    limits: { least: 0.01, most: kit.pick(10, 1.2) },
    how: "from the label or the maker's sheet, in cold water",
  });

  inputs.block("The feed and the injector");
  const ppm = inputs.input({
    label: "Nitrogen wanted in the feed",
    unit: "ppm N",
    input: 150,
    format: "decimals0",
    limits: { least: 1, most: 1000 },
    how: "as it leaves the hose; 150 to 250 for many greenhouse crops on constant feed",
  });
  const waterEc = ec("EC of the clear water", 0.35, "before any feed; it is never part of the feed's own EC");
  const ratio = inputs.input({
    label: "Injector ratio, set",
    unit: "1 to",
    input: 100,
    format: "decimals0",
    limits: { least: 1, most: 1000 },
    how: "100 for 1:100: 1 part of stock in 100 parts of treated water",
  });
  const stockVolume = inputs.input({
    label: "Stock to make",
    unit: volume,
    input: figures.stockVolume,
    format: "decimals1",
    limits: volumeLimits,
  });

  inputs.block("Test of the injector");
  const treated = inputs.input({
    label: "Treated water caught behind it",
    unit: volume,
    input: figures.treated,
    format: "decimals1",
    limits: volumeLimits,
    how: "before each growing cycle; the stock is in this volume",
  });
  const stockUsed = inputs.input({
    label: "Stock drawn meanwhile",
    unit: volume,
    input: figures.stockUsed,
    format: "decimals3",
    limits: { least: 0.0001, most: kit.pick(1000, 4000) },
    how: "from a graduated cylinder",
  });
  const hoseEc = ec("EC of the feed at the hose", 1.34, "the meter, freshly calibrated");

  inputs.block("The mixing tank");
  const tank = inputs.input({
    label: "Feed in the tank",
    unit: volume,
    input: figures.tank,
    format: "decimals0",
    limits: volumeLimits,
    how: "what is in it now, not what it could hold",
  });
  const setEc = kit.name("ec_set", ec("EC that it shall have", 1.325, "the water's own EC included", "decimals3"));
  const band = ec("Leave it while within", 0.05, "up or down; meters and mixing are not finer than that");

  inputs.skip().note("Waters put together for the next filling", "heading");
  const waters = inputs.table({
    rows: 3,
    columns: [
      { key: "water", heading: "water", inputs: ["returned from the benches", "fresh", null] },
      {
        key: "volume",
        heading: "volume",
        unit: volume,
        inputs: [figures.returned, figures.fresh, 0],
        format: "decimals0",
        limits: { least: 0, most: volumeLimits.most },
      },
      { key: "ec", heading: "EC", unit: "mS/cm", inputs: [1.35, 0.35, 0], format: "decimals2", limits: EC },
    ],
  });

  inputs.skip().note("Which concentrate goes into which stock tank", "heading");
  const yesNo = kit.list("yes or no", ["yes", "no"]);
  const tanks = kit.list("stock tank", ["A", "B"]);
  const empty = Array.from({ length: PRODUCT_ROWS - PRODUCTS.length }, () => null);
  const products = inputs.table({
    rows: PRODUCT_ROWS,
    columns: [
      { key: "name", heading: "product", inputs: [...PRODUCTS.map(({ name }) => name), ...empty] },
      {
        key: "tank",
        heading: "tank",
        inputs: [...PRODUCTS.map((each) => each.tank), ...empty],
        limits: { list: tanks },
      },
      {
        key: "calcium",
        heading: "calcium",
        inputs: [...PRODUCTS.map(({ calcium }) => calcium), ...empty],
        limits: { list: yesNo },
      },
      {
        key: "clouds",
        heading: "sulphate or phosphate",
        inputs: [...PRODUCTS.map(({ clouds }) => clouds), ...empty],
        limits: { list: yesNo },
      },
    ],
  });
  return {
    product,
    analysis,
    labelEc,
    labelPpm,
    price,
    most,
    ppm,
    waterEc,
    ratio,
    stockVolume,
    treated,
    stockUsed,
    hoseEc,
    tank,
    setEc,
    band,
    volumes: waters.column["volume"]!,
    ecs: waters.column["ec"]!,
    products: products.column,
  };
}
