import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const containerVolume = defineFunction({
  name: "CONTAINER_VOLUME",
  group: "Container and substrate",
  summary: "What a round pot holds, up to the fill line",
  formula: "V = pi H (Dt2 + Dt Db + Db2) / 12",
  source: cite("GEOMETRY", "volume of a truncated cone"),
  assumptions: [
    "Inside sizes; the height and the top diameter are those at the fill line, which lies below the rim.",
    "A trade size is a name and not a volume: measure the pot, or fill it with water and weigh it.",
  ],
  params: {
    top_diameter: {
      quantity: "pot size",
      symbol: "Dt",
      above: 0,
      about: "Inside diameter at the fill line",
      usual: {
        us: [2, 40],
        metric: [5, 100],
        high: "looks like mm, or like a volume",
        source: cite("PRACTICE", "liner pots to boxed trees"),
      },
    },
    bottom_diameter: { quantity: "pot size", symbol: "Db", above: 0, about: "Inside diameter at the bottom" },
    height: { quantity: "pot size", symbol: "H", above: 0, about: "Inside height from the bottom to the fill line" },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a cube" },
  result: { quantity: "volume", symbol: "V", about: "Volume of substrate up to the fill line" },
  examples: [
    {
      given: { top_diameter: 7, bottom_diameter: 7, height: 7, units: "us" },
      gives: 1.17,
      within: 0.006,
      from: cite("NOTE_7IN", "a straight pot of 7 in by 7 in"),
    },
    {
      given: { top_diameter: 27.9, bottom_diameter: 22.9, height: 24, units: "metric" },
      gives: 12.2,
      within: 0.02,
      from: cite("ARITHMETIC", "pi x 24 (778.41 + 638.91 + 524.41) / 12 = 12,200 cm3"),
    },
  ],
  mistakes: [
    {
      slip: "The pot was taken as a straight cylinder of the top diameter",
      instead: ({ top_diameter }) => ({ bottom_diameter: top_diameter }),
    },
    {
      slip: "Diameters were used as radii",
      answer: ({ top_diameter: dt, bottom_diameter: db, height }, { k }) =>
        (k * Math.PI * height * (dt * dt + dt * db + db * db)) / 3,
    },
    {
      slip: "Width times height was divided by 231: an area taken as a volume",
      answer: ({ top_diameter, height }, { k }) => k * top_diameter * height,
    },
  ],
  seeAlso: ["WATER_HELD"],
  compute({ top_diameter: dt, bottom_diameter: db, height }, show, { constants: { k } }) {
    const squares = show("S = Dt^2 + Dt * Db + Db^2", dt ** 2 + dt * db + db ** 2, "pot area", "Sum of the squares");
    return show(
      "V = k * PI() * H * S / 12",
      (k * Math.PI * height * squares) / 12,
      "volume",
      "Volume to the fill line",
    );
  },
});
