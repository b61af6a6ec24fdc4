import { cite, defineFunction } from "../../../kernel";
import { EC_ADDS_UP, EC_NOW_PARAM, EC_TARGET_PARAM, TANK_VOLUME_PARAM, WATER_EC_PARAM } from "./feedParams";

export const tankDilution = defineFunction({
  name: "TANK_DILUTION",
  group: "Feed and water quality",
  summary: "Water to add so that a tank that is too strong comes down to its EC",
  formula: "W = V (ECn - ECt) / (ECt - ECw)",
  source: cite("MASS_BALANCE", "V ECn + W ECw = (V + W) ECt"),
  assumptions: [
    "The tank has room for the water. Where it has none, let out V (ECn - ECt) / (ECn - ECw) first and fill up again.",
    "Every nutrient is thinned alike, sodium and chloride too.",
    EC_ADDS_UP,
  ],
  params: {
    tank_volume: TANK_VOLUME_PARAM,
    ec_now: EC_NOW_PARAM,
    ec_target: EC_TARGET_PARAM,
    water_ec: WATER_EC_PARAM,
  },
  result: { quantity: "volume", symbol: "W", about: "Water to add, in the unit of the tank" },
  examples: [
    {
      given: { tank_volume: 400, ec_now: 2, ec_target: 1.5, water_ec: 0.2 },
      gives: 153.84615384615384,
      from: cite("ARITHMETIC", "400 x 0.5 / 1.3 = 2000 / 13"),
    },
    {
      given: { tank_volume: 400, ec_now: 1.5, ec_target: 1.5, water_ec: 0.2 },
      gives: 0,
      from: cite("ARITHMETIC", "the tank is at its EC: nothing to add"),
    },
  ],
  mistakes: [
    { slip: "The EC of the water was left out", instead: () => ({ water_ec: 0 }) },
    {
      slip: "It was worked as the part to let out and replace",
      answer: ({ tank_volume, ec_now, ec_target, water_ec }) =>
        (tank_volume * (ec_now - ec_target)) / (ec_now - water_ec),
    },
    {
      slip: "The whole tank afterwards was given, not the water to add",
      answer: ({ tank_volume }, _constants, right) => tank_volume + right,
    },
  ],
  seeAlso: ["TANK_DOSE", "BLEND_EC", "ION_BUILDUP"],
  caution:
    "Mix and meter again before it reaches plants. Feed that is let out may not go into drains or surface water without permission: local rules come first.",
  compute({ tank_volume, ec_now, ec_target, water_ec }, show, { noAnswer }) {
    if (ec_target > ec_now) {
      const why = `ec_target is ${ec_target}, above ec_now (${ec_now}): no water brings that about; TANK_DOSE says how much stock does`;
      throw noAnswer(why, "ec_target");
    }
    if (ec_target < ec_now && water_ec >= ec_target) {
      const why = `water_ec is ${water_ec} and ec_target ${ec_target}: water as strong as that never brings the tank down to it`;
      throw noAnswer(why, "water_ec");
    }
    const excess = show("d = ECn - ECt", ec_now - ec_target, "EC", "EC that is too much");
    const room = show("g = ECt - ECw", ec_target - water_ec, "EC", "EC that the water can take up");
    const water = excess === 0 ? 0 : (tank_volume * excess) / room;
    return show("W = IF(d = 0, 0, V * d / g)", water, "volume", "Water to add");
  },
});
