import { cite, type NumberParam } from "../../../kernel";

export const CONTAINER_CAPACITY_USUAL = {
  us: [0.45, 0.65],
  metric: [0.45, 0.65],
  low: "looks like a capacity by weight, or like available water",
  high: "check the drained weight",
  source: cite("SNA_BMP", "container capacity 45 to 65 % by volume"),
} as const;

export const AIR_SPACE_USUAL = {
  us: [0.1, 0.3],
  metric: [0.1, 0.3],
  low: "little air for roots: a fine or packed substrate, a shallow pot, or one that had not drained",
  high: "dries fast; check whether it was saturated before it drained",
  source: cite("SNA_BMP", "air space 10 to 30 % by volume"),
} as const;

/** Part of the available water used before an irrigation. */
export const DEPLETION_USUAL = {
  us: [0.2, 0.5],
  metric: [0.2, 0.5],
  low: "hardly anything is used between irrigations",
  high: "looks like the part left; plants are short of water before that",
  source: cite("PRACTICE", "20 to 50 % of the available water of container crops"),
} as const;

export const SUBSTRATE_VOLUME_PARAM = {
  quantity: "volume",
  symbol: "V",
  above: 0,
  about: "Substrate in the pot, to the fill line",
} as const satisfies NumberParam;

export const CONTAINER_CAPACITY_PARAM = {
  quantity: "fraction",
  symbol: "CC",
  above: 0,
  atMost: 1,
  about: "Part of the volume that is water after free drainage",
  usual: CONTAINER_CAPACITY_USUAL,
} as const satisfies NumberParam;

/** Air space and container capacity are measured at one height and hold for it alone. */
export const HOLDS_FOR_HEIGHT =
  "Holds for this height of substrate: a taller pot of the same substrate holds more air and less water per volume, while the two together stay the same.";
