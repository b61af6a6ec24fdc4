import { cite, defineFunction } from "../../../kernel";
import { CONTAINER_CAPACITY_PARAM, HOLDS_FOR_HEIGHT, SUBSTRATE_VOLUME_PARAM } from "./substrate";

export const waterHeld = defineFunction({
  name: "WATER_HELD",
  group: "Container and substrate",
  summary: "Water in the whole pot once it has drained",
  formula: "W = V CC",
  source: cite("DEFINITION", "container capacity is water by volume, so water held = volume x capacity"),
  assumptions: [
    "Container capacity is by volume.",
    HOLDS_FOR_HEIGHT,
    "Not all of it is for the plant: a quarter to a third of the volume stays in the substrate. See AVAILABLE_WATER.",
  ],
  params: { volume: SUBSTRATE_VOLUME_PARAM, container_capacity: CONTAINER_CAPACITY_PARAM },
  result: { quantity: "volume", symbol: "W", about: "Water held, in the unit of the volume" },
  examples: [
    {
      given: { volume: 9, container_capacity: 0.55 },
      gives: 4.95,
      from: cite("ARITHMETIC", "9 x 0.55"),
    },
    {
      given: { volume: 2.5, container_capacity: 0.5 },
      gives: 1.25,
      from: cite("ARITHMETIC", "half of 2.5"),
    },
  ],
  mistakes: [
    {
      slip: "What is not water, solids and air, was taken for the water",
      answer: ({ volume, container_capacity }) => volume * (1 - container_capacity),
    },
    {
      slip: "The volume was divided by the capacity",
      answer: ({ volume, container_capacity }) => volume / container_capacity,
    },
  ],
  seeAlso: ["AVAILABLE_WATER", "CONTAINER_CAPACITY", "CONTAINER_VOLUME"],
  compute({ volume, container_capacity }, show) {
    return show("W = V * CC", volume * container_capacity, "volume", "Water held after drainage");
  },
});
