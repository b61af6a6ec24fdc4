import { cite, defineFunction } from "../../../kernel";
import { HOLDS_FOR_HEIGHT } from "./substrate";

export const porometerTest = defineFunction({
  name: "POROMETER_TEST",
  group: "Container and substrate",
  summary: "Air, water, pores and density of a substrate from one core",
  formula: "AS = Vd / V; CC = (Ww - Wd) / V; TP = AS + CC; Db = Wd / V",
  source: [cite("BOYER2012", "Table 1, footnotes: the four definitions"), cite("POROMETER", "the four definitions")],
  assumptions: [
    "mL and g in both systems; 1 g of water is 1 mL. Weights without the core.",
    "Wet: after saturation from below and free drainage. Dry: at 105 C (221 F) to constant weight.",
    `A core of 7.6 cm (3 in) is not a pot of 25 cm (10 in). ${HOLDS_FOR_HEIGHT}`,
    "Bulk density / (1 - total porosity) is the density of the particles: 0.35 to 2.1 g/cm3 for substrates, 2.65 for sand. Anything else means a wrong weight or volume.",
  ],
  params: {
    core_volume: {
      quantity: "catch",
      symbol: "V",
      above: 0,
      about: "Inside volume of the core",
      usual: {
        us: [50, 3000],
        metric: [50, 3000],
        low: "looks like in3 or L",
        high: "more than a core holds",
        source: cite("POROMETER", "core of 347.5 cm3; larger ones are whole small pots (common practice)"),
      },
    },
    drained_volume: {
      quantity: "catch",
      symbol: "Vd",
      atLeast: 0,
      about: "Water that ran out of the saturated core; 0 is a value, so leave no blank",
    },
    wet_weight: {
      quantity: "sample weight",
      symbol: "Ww",
      above: 0,
      about: "The substrate after soaking and free drainage, without the core",
      usual: {
        us: [30, 3000],
        metric: [30, 3000],
        low: "looks like lb, oz or kg",
        source: cite("PRACTICE", "what such a core weighs wet"),
      },
    },
    dry_weight: {
      quantity: "sample weight",
      symbol: "Wd",
      above: 0,
      about: "The same substrate, dried in the oven, without the core",
      usual: {
        us: [5, 2000],
        metric: [5, 2000],
        low: "looks like lb, oz or kg",
        source: cite("PRACTICE", "what such a core weighs dry"),
      },
    },
  },
  result: {
    header: false,
    table: [
      { name: "label", quantity: "text" },
      { name: "value", quantity: "factor" },
    ],
    about: "Air space, container capacity and total porosity (0 to 1), bulk density in g/cm3",
  },
  examples: [
    {
      given: { core_volume: 347.5, drained_volume: 66, wet_weight: 290, dry_weight: 75 },
      gives: [
        ["air space", 0.1899],
        ["container capacity", 0.6187],
        ["total porosity", 0.8086],
        ["bulk density g/cm3", 0.2158],
      ],
      within: 0.0001,
      from: cite("ARITHMETIC", "66 / 347.5; 215 / 347.5; 281 / 347.5; 75 / 347.5"),
    },
    {
      given: { core_volume: 100, drained_volume: 31, wet_weight: 66, dry_weight: 18 },
      gives: [
        ["air space", 0.31],
        ["container capacity", 0.48],
        ["total porosity", 0.79],
        ["bulk density g/cm3", 0.18],
      ],
      from: cite("BOYER2012", "Table 1, pine bark: 31, 48 and 79 % by volume, 0.18 g/cm3, for a core of 100 mL"),
    },
  ],
  mistakes: [],
  seeAlso: ["AIR_SPACE", "CONTAINER_CAPACITY", "AVAILABLE_WATER"],
  compute({ core_volume: core, drained_volume: drained, wet_weight: wet, dry_weight: dry }, show, { refuse }) {
    if (drained > core) {
      throw refuse("drained_volume", drained, `it must be core_volume (${core}) or less; were the two swapped?`);
    }
    if (wet <= dry) throw refuse("wet_weight", wet, `it must be more than dry_weight (${dry}); were the two swapped?`);
    const air = show("AS = Vd / V", drained / core, "fraction", "Drained water, now air, over the volume");
    const water = show("CC = (Ww - Wd) / V", (wet - dry) / core, "fraction", "Water held over the volume");
    const pores = show("TP = AS + CC", air + water, "fraction", "Air and water together");
    if (pores > 1) {
      const itMust = "it must be drained_volume + wet_weight - dry_weight or more, since air and water fit into it";
      throw refuse("core_volume", core, `${itMust}; were two numbers swapped, or is the core in wet_weight?`);
    }
    const density = show("Db = Wd / V", dry / core, "bulk density", "Dry weight over the volume");
    return [
      ["air space", air],
      ["container capacity", water],
      ["total porosity", pores],
      ["bulk density g/cm3", density],
    ];
  },
});
