import { cite, defineFunction } from "../../../kernel";

export const recirculationTank = defineFunction({
  name: "RECIRCULATION_TANK",
  group: "Flood benches, tanks, supply",
  summary: "Size of the tank that the flood water comes from and runs back to",
  formula: "T = (V b + U + D) (1 + f)",
  source: [
    cite("DEFINITION", "water on the benches at once + water taken up until the top-up + water never reached"),
    cite("SUBIRRIGATION_2011", "as a check: 1/2 to 1 gal a square foot of growing area"),
  ],
  assumptions: [
    "With a schedule that starts the next group while the last one soaks, more benches hold water than are filled at once: count them in FLOOD_SCHEDULE.",
    "Where the tank is topped up daily, the uptake is that of a day.",
    "All volumes in one unit.",
  ],
  params: {
    flood_volume: { quantity: "volume", symbol: "V", above: 0, about: "Standing water on one full bench" },
    benches_holding_water: {
      quantity: "count",
      symbol: "b",
      atLeast: 1,
      whole: true,
      about: "The most benches that hold water at once: filling, soaking or draining",
    },
    uptake_until_topup: {
      quantity: "volume",
      symbol: "U",
      atLeast: 0,
      about: "What the pots of all benches take up until the tank is topped up; 0 is a value, so leave no blank",
    },
    dead_storage: {
      quantity: "volume",
      symbol: "D",
      atLeast: 0,
      about: "Water below the pump's intake; 0 is a value, so leave no blank",
    },
    freeboard: {
      quantity: "fraction",
      symbol: "f",
      atLeast: 0,
      atMost: 1,
      guard: "more than the tank holds is a percentage typed as a whole number",
      default: 0.1,
      about: "Room above the full tank, as a part of what it holds; 0 is none",
    },
  },
  result: { quantity: "volume", symbol: "T", about: "Volume of the tank, in the unit of the others" },
  examples: [
    {
      given: { flood_volume: 120, benches_holding_water: 4, uptake_until_topup: 24, dead_storage: 40 },
      gives: 598.4,
      from: cite("ARITHMETIC", "(480 + 24 + 40) x 1.1; for four benches of 240 ft2, 0.62 gal a square foot"),
    },
    {
      given: {
        flood_volume: 450,
        benches_holding_water: 3,
        uptake_until_topup: 90,
        dead_storage: 60,
        freeboard: 0.2,
      },
      gives: 1800,
      from: cite("ARITHMETIC", "(1,350 + 90 + 60) x 1.2"),
    },
  ],
  mistakes: [
    { slip: "The tank was sized for one bench", instead: () => ({ benches_holding_water: 1 }) },
    { slip: "What the pots take up was left out", instead: () => ({ uptake_until_topup: 0 }) },
    { slip: "Water below the pump's intake was counted as usable", instead: () => ({ dead_storage: 0 }) },
    { slip: "The freeboard was left out", instead: () => ({ freeboard: 0 }) },
  ],
  seeAlso: ["FLOOD_VOLUME", "FLOOD_SCHEDULE", "TANK_VOLUME", "ION_BUILDUP"],
  caution:
    "Recirculated water carries disease from one bench to all: treat it, keep sick crops off it, and follow the label of what you treat with. A full tank is heavy, 8.345 lb a gallon, 1 kg a litre: ask what the floor carries.",
  compute({ flood_volume, benches_holding_water, uptake_until_topup, dead_storage, freeboard }, show) {
    const out = show("W = V * b", flood_volume * benches_holding_water, "volume", "Water on the benches at once");
    const held = show("S = W + U + D", out + uptake_until_topup + dead_storage, "volume", "What the tank must hold");
    return show("T = S * (1 + f)", held * (1 + freeboard), "volume", "Tank with its freeboard");
  },
});
