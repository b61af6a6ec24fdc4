import { cite, defineFunction } from "../../../kernel";
import { CONTAINER_CAPACITY_PARAM, HOLDS_FOR_HEIGHT, SUBSTRATE_VOLUME_PARAM } from "./substrate";

export const availableWater = defineFunction({
  name: "AVAILABLE_WATER",
  group: "Container and substrate",
  summary: "Water in the drained pot that plants can take up",
  formula: "AW = V (CC - UW)",
  source: [
    cite("FAO56", "Eq. 82: total available water = (field capacity - wilting point) x volume of the root zone"),
    cite("DEFINITION", "container capacity stands in the place of field capacity"),
  ],
  assumptions: [
    "Both fractions by volume and of this substrate; the unavailable one is what is left at 1.5 MPa, unless you mean another limit.",
    "Easily available water stops earlier, at 50 cm of suction: give the water content there as unavailable, and the answer is what plants take without strain. Say which limit was meant.",
    "All of the substrate is rooted. In a fresh potting only the old root ball gives water.",
    HOLDS_FOR_HEIGHT,
  ],
  params: {
    volume: SUBSTRATE_VOLUME_PARAM,
    container_capacity: CONTAINER_CAPACITY_PARAM,
    unavailable_water: {
      quantity: "fraction",
      symbol: "UW",
      above: 0,
      below: 1,
      about: "Part of the volume that is water which plants cannot take up",
      usual: {
        us: [0.2, 0.35],
        metric: [0.2, 0.35],
        low: "every substrate keeps more: the plants would run dry before the sheet says so",
        high: "check whether available water was meant",
        source: cite("SNA_BMP", "unavailable water 25 to 35 % by volume; peat a little less (common practice)"),
      },
    },
  },
  result: { quantity: "volume", symbol: "AW", about: "Available water, in the unit of the volume" },
  examples: [
    {
      given: { volume: 9, container_capacity: 0.55, unavailable_water: 0.25 },
      gives: 2.7,
      from: cite("ARITHMETIC", "9 x 0.30"),
    },
    {
      given: { volume: 800, container_capacity: 0.32, unavailable_water: 0.12 },
      gives: 160,
      from: cite("FAO56", "Example 37: a soil of 0.32 and 0.12, 0.8 m deep, under 1 m2: 160 mm or 160 L"),
    },
  ],
  mistakes: [
    {
      slip: "Unavailable water was not taken off: that is all the water held",
      answer: ({ volume, container_capacity }) => volume * container_capacity,
    },
    {
      slip: "The unavailable water was taken for the available",
      answer: ({ volume, unavailable_water }) => volume * unavailable_water,
    },
    {
      slip: "The unavailable part was taken as a part of the water, not of the volume",
      answer: ({ volume, container_capacity, unavailable_water }) =>
        volume * container_capacity * (1 - unavailable_water),
    },
  ],
  seeAlso: ["WATER_HELD", "CONTAINER_CAPACITY", "IRRIGATION_INTERVAL", "WATER_BALANCE"],
  caution:
    "Counting too much water as available dries plants out: weigh a pot when the first plant flags, and correct the number by it.",
  compute({ volume, container_capacity: capacity, unavailable_water: unavailable }, show, { refuse }) {
    if (unavailable >= capacity) {
      const itMust = `it must be less than container_capacity (${capacity}); were the two swapped?`;
      throw refuse("unavailable_water", unavailable, itMust);
    }
    const part = show("a = CC - UW", capacity - unavailable, "fraction", "Part of the volume that is available water");
    return show("AW = V * a", volume * part, "volume", "Available water in the pot");
  },
});
