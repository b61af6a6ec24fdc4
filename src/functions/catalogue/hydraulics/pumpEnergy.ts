import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { EFFICIENCY_PARAM, ELECTRICITY_CAUTION, HEAD_PARAM } from "./pumping";

export const pumpEnergy = defineFunction({
  name: "PUMP_ENERGY",
  group: "Pipe, emitter, pump",
  summary: "Electricity that it takes to pump a volume of water",
  formula: "E = k V H / e",
  source: cite("UC_IG6", "energy = weight of the water x head, over the efficiency of the plant"),
  assumptions: [
    "Overall efficiency, from the electric meter to the water: pump x motor x drive. The plate of the pump alone makes the bill look too small.",
    "Head is the total dynamic head in feet or metres, not psi or kPa, and the same for the whole volume.",
    "Volume pumped, not the volume that the plants kept: leaching, flushing and leaks are pumped too.",
    "Water of 1 kg/L: 3.14 kWh for a million gallon-feet, 2.724 kWh for a million litre-metres, at an efficiency of 1. Demand and standing charges of the bill are not in it.",
  ],
  params: {
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Water pumped" },
    head: HEAD_PARAM,
    efficiency: {
      ...EFFICIENCY_PARAM,
      about: "Overall efficiency, from the meter to the water, a fraction",
      usual: {
        us: [0.4, 0.77],
        metric: [0.4, 0.77],
        low: "below most plants: have the pump tested",
        high: "looks like the pump alone, without its motor",
        source: cite("COLORADO_4712", "plants average 0.45 to 0.55; 0.72 to 0.77 can be reached"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "energy of a lifted volume", p: "head of a pressure" },
  result: { quantity: "energy", symbol: "E", about: "Electric energy drawn from the meter" },
  examples: [
    {
      given: { volume: 325851, head: 1, efficiency: 1, units: "us" },
      gives: 1.0241,
      within: 0.0002,
      from: cite("UC_IG6", "an acre-foot lifted by 1 ft: 2,719,226 ft-lb, at 2,655,224 ft-lb to the kWh"),
    },
    {
      given: { volume: 1000, head: 40, efficiency: 0.51, units: "metric" },
      gives: 0.21365,
      within: 0.0001,
      from: cite("ARITHMETIC", "1000 kg x 9.80665 x 40 = 392,266 J = 0.10896 kWh; / 0.51"),
    },
  ],
  mistakes: [
    {
      slip: "The energy was multiplied by the efficiency, not divided",
      answer: ({ efficiency }, _constants, right) => right * efficiency ** 2,
    },
    {
      slip: "The efficiency was left out",
      instead: () => ({ efficiency: 1 }),
    },
    {
      slip: "A pressure (psi or kPa) was typed where a head belongs",
      answer: (_given, { p }, right) => right / p,
    },
    {
      slip: "The volume was counted in the bill's thousands",
      answer: (_given, _constants, right) => right / 1000,
    },
  ],
  seeAlso: ["TOTAL_DYNAMIC_HEAD", "PUMP_POWER", "WATER_COST"],
  caution: `${ELECTRICITY_CAUTION} Pumping from wells, streams and ponds may need a permit.`,
  compute({ volume, head, efficiency }, show, { constants: { k } }) {
    const water = show("W = k * V * H", k * volume * head, "energy", "Energy that the water takes up");
    return show("E = W / e", water / efficiency, "energy", "Energy drawn");
  },
});
