import { cite, defineFunction, shortNumber, UNITS_PARAM } from "../../../kernel";
import { CONTAINER_CAPACITY_USUAL, HOLDS_FOR_HEIGHT, SUBSTRATE_VOLUME_PARAM } from "./substrate";

export const containerCapacity = defineFunction({
  name: "CONTAINER_CAPACITY",
  group: "Container and substrate",
  summary: "Part of the substrate's volume that is water once the pot has drained",
  formula: "CC = (Ww - Wd) / (w V); w = 8.345 lb/gal, 1 kg/L",
  source: [
    cite("BOYER2012", "Table 1, footnote: (wet weight - oven-dry weight) / volume of the sample"),
    cite("POROMETER", "container capacity"),
  ],
  assumptions: [
    "Water by volume, at 1 kg/L (8.345 lb/gal). A laboratory may report water by weight, which is another number.",
    "Weights without the pot. A pot left on both weights cancels out; on the wet weight alone it counts as water.",
    "Wet: soaked from below until it shines on top, then drained until dripping stops. Dry: at 105 C (221 F) to constant weight.",
    HOLDS_FOR_HEIGHT,
  ],
  params: {
    wet_weight: {
      quantity: "weight",
      symbol: "Ww",
      above: 0,
      about: "The substrate after soaking and free drainage, without the pot",
    },
    dry_weight: {
      quantity: "weight",
      symbol: "Wd",
      above: 0,
      about: "The same substrate, dried in the oven, without the pot",
    },
    volume: SUBSTRATE_VOLUME_PARAM,
    units: UNITS_PARAM,
  },
  unitConstants: { w: "weight of a volume of water" },
  result: {
    quantity: "fraction",
    symbol: "CC",
    about: "Container capacity, water by volume",
    usual: CONTAINER_CAPACITY_USUAL,
  },
  examples: [
    {
      given: { wet_weight: 6.3, dry_weight: 1.8, volume: 9, units: "metric" },
      gives: 0.5,
      from: cite("ARITHMETIC", "4.5 kg of water is 4.5 L, in 9 L"),
    },
    {
      given: { wet_weight: 0.29, dry_weight: 0.075, volume: 0.3475, units: "metric" },
      gives: 0.6187,
      within: 0.0001,
      from: cite("ARITHMETIC", "a porometer core of 347.5 cm3: 215 g of water is 215 cm3; 215 / 347.5"),
    },
    {
      given: { wet_weight: 14.5, dry_weight: 4.5, volume: 2.4, units: "us" },
      gives: 0.4993,
      within: 0.0001,
      from: cite("ARITHMETIC", "10 lb of water is 4.5359 L or 1.1983 gal, in 2.4 gal"),
    },
  ],
  mistakes: [
    {
      slip: "The dry weight was not taken off",
      answer: ({ wet_weight, volume }, { w }) => wet_weight / (w * volume),
    },
    {
      slip: "Water was taken by weight: a part of the wet weight",
      answer: ({ wet_weight, dry_weight }) => (wet_weight - dry_weight) / wet_weight,
    },
    {
      slip: "Water was taken by weight: against the dry weight",
      answer: ({ wet_weight, dry_weight }) => (wet_weight - dry_weight) / dry_weight,
    },
    {
      slip: "Pounds of water were taken for gallons",
      answer: ({ units }, { w }, right) => (units === "us" ? right * w : NaN),
    },
  ],
  seeAlso: ["WATER_HELD", "AVAILABLE_WATER", "AIR_SPACE", "POROMETER_TEST", "CONTAINER_VOLUME"],
  compute({ wet_weight: wet, dry_weight: dry, volume }, show, { constants: { w }, refuse }) {
    if (wet <= dry) throw refuse("wet_weight", wet, `it must be more than dry_weight (${dry}); were the two swapped?`);
    const held = show("H = (Ww - Wd) / w", (wet - dry) / w, "volume", "Water held after drainage");
    if (held > volume) {
      const itMust = `it must be ${shortNumber(held)} or more, the water that the weights say it held`;
      throw refuse("volume", volume, `${itMust}; were two numbers swapped, or is the pot in wet_weight?`);
    }
    return show("CC = H / V", held / volume, "fraction", "Water held over the volume of the substrate");
  },
});
