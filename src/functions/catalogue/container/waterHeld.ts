import { cite, defineFunction } from "../../../kernel";

export const waterHeld = defineFunction({
  name: "WATER_HELD",
  group: "Container and substrate",
  summary: "Water in the whole pot after it has drained",
  formula: "W = V CC",
  source: cite("DEFINITION", "container capacity is water by volume, so water held = volume x capacity"),
  assumptions: ["Container capacity by volume, measured in this container: it falls as the container gets taller."],
  params: {
    volume: { quantity: "volume", symbol: "V", above: 0, about: "Substrate in the pot, to the fill line" },
    container_capacity: {
      quantity: "fraction",
      symbol: "CC",
      above: 0,
      atMost: 1,
      about: "Part of the volume that is water after free drainage",
      usual: {
        us: [0.45, 0.65],
        metric: [0.45, 0.65],
        low: "looks like a capacity by weight, or like available water",
        high: "look again at the drained weight",
        source: cite("SNA_BMP", "container capacity"),
      },
    },
  },
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
      slip: "Air and water were taken the wrong way round",
      answer: ({ volume, container_capacity }) => volume * (1 - container_capacity),
    },
  ],
  seeAlso: ["CONTAINER_VOLUME"],
  compute({ volume, container_capacity }, show) {
    return show("W = V * CC", volume * container_capacity, "volume", "Water held after drainage");
  },
});
