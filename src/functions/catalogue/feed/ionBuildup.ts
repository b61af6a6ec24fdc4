import { cite, defineFunction } from "../../../kernel";
import { TANK_VOLUME_PARAM } from "./feedParams";

export const ionBuildup = defineFunction({
  name: "ION_BUILDUP",
  group: "Feed and water quality",
  summary: "Sodium or chloride that gathers in water that goes round and round",
  formula: "C = C0 + n (Cm - Cu) Vm / V",
  source: [
    cite("MASS_BALANCE", "what the make-up brings stays in the tank, but for what plants take up"),
    cite("CARMASSI", "balance of an ion in a closed loop, its uptake concentration"),
  ],
  assumptions: [
    "Closed loop: the make-up replaces what plants drink, nothing is let out, and the tank stands at the same level after each round.",
    "Uptake is ppm of the ion in the water that plants drink, and holds steady. Sodium and chloride uptake rises somewhat as they gather, so a long forecast is on the high side.",
    "Where plants take up more than the make-up brings, the ion falls to 0 and stays there.",
    "One ion at a time. An uptake of 0 is the worst case.",
  ],
  params: {
    start_ppm: {
      quantity: "ppm",
      symbol: "C0",
      atLeast: 0,
      about: "The ion in the tank at the start; 0 is a value, so leave no blank",
    },
    makeup_ppm: {
      quantity: "ppm",
      symbol: "Cm",
      atLeast: 0,
      about: "The ion in the make-up water; 0 is a value, so leave no blank",
    },
    uptake_ppm: {
      quantity: "ppm",
      symbol: "Cu",
      atLeast: 0,
      about: "The ion that plants take up, per litre of water that they drink; 0 is a value, so leave no blank",
    },
    makeup_volume: { quantity: "volume", symbol: "Vm", above: 0, about: "Make-up water at each round" },
    tank_volume: { ...TANK_VOLUME_PARAM, about: "Water in the whole loop, in the same unit: tank, pipes, benches" },
    rounds: {
      quantity: "count",
      symbol: "n",
      atLeast: 0,
      about: "Rounds of make-up, such as days; 0 is a value, so leave no blank",
    },
  },
  result: {
    quantity: "ppm",
    symbol: "C",
    about: "The ion in the tank after those rounds",
    usual: {
      us: [0, 70],
      metric: [0, 70],
      high: "sodium above 50 to 70, or chloride above 70 to 140: let some out and refill",
      source: cite("PRACTICE", "sodium and chloride in the water of container crops"),
    },
  },
  examples: [
    {
      given: { start_ppm: 20, makeup_ppm: 40, uptake_ppm: 10, makeup_volume: 50, tank_volume: 1000, rounds: 40 },
      gives: 80,
      from: cite("ARITHMETIC", "30 ppm stay, a twentieth of the tank: 1.5 a round; 20 + 40 x 1.5"),
    },
    {
      given: { start_ppm: 30, makeup_ppm: 25, uptake_ppm: 5, makeup_volume: 200, tank_volume: 4000, rounds: 14 },
      gives: 44,
      from: cite("ARITHMETIC", "20 ppm stay, a twentieth of the tank: 1 a round; 30 + 14"),
    },
  ],
  mistakes: [
    { slip: "What plants take up was left out", instead: () => ({ uptake_ppm: 0 }) },
    { slip: "The make-up was counted once, not at each round", instead: () => ({ rounds: 1 }) },
    {
      slip: "The make-up was counted as the whole tank",
      instead: ({ tank_volume }) => ({ makeup_volume: tank_volume }),
    },
    { slip: "What was there at the start was left out", instead: () => ({ start_ppm: 0 }) },
  ],
  seeAlso: ["TANK_DILUTION", "BLEND_SHARE", "RECIRCULATION_TANK"],
  caution:
    "Recirculated water carries disease and salts round: disinfect it, and have sodium and chloride measured. What is let out falls under local rules.",
  compute({ start_ppm, makeup_ppm, uptake_ppm, makeup_volume, tank_volume, rounds }, show) {
    const stays = show("s = Cm - Cu", makeup_ppm - uptake_ppm, "ppm", "What plants leave behind of the make-up");
    const rise = show("g = s * Vm / V", (stays * makeup_volume) / tank_volume, "ppm", "Rise of the tank at each round");
    return show("C = MAX(0, C0 + n * g)", Math.max(0, start_ppm + rounds * rise), "ppm", "The ion after the rounds");
  },
});
