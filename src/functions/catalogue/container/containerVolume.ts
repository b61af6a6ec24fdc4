import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";

export const containerVolume = defineFunction({
  name: "CONTAINER_VOLUME",
  group: "Container and substrate",
  summary: "Volume of a round pot, up to the fill line",
  formula: "V = pi H (Dt2 + Dt Db + Db2) / 12",
  source: cite("GEOMETRY", "volume of a truncated cone"),
  assumptions: [
    "Inside sizes; the height and the top diameter are those at the fill line, 1 to 2.5 cm (1/2 to 1 in) below the rim.",
    "Round and straight-sided. For a square pot, or one with feet and ribs, fill it with water to the line and weigh that.",
    "A trade size is a name and not a volume: a #1 holds 0.62 to 0.74 US gal (2.3 to 2.8 L), and makers differ by a tenth and more.",
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
    bottom_diameter: {
      quantity: "pot size",
      symbol: "Db",
      above: 0,
      about: "Inside diameter at the bottom",
      usual: {
        us: [1, 40],
        metric: [2.5, 100],
        high: "looks like mm, or like a volume",
        source: cite("PRACTICE", "liner pots to boxed trees"),
      },
    },
    height: {
      quantity: "pot size",
      symbol: "H",
      above: 0,
      about: "Inside height from the bottom to the fill line",
      usual: {
        us: [1.5, 36],
        metric: [4, 90],
        high: "looks like mm, or like a volume",
        source: cite("PRACTICE", "liner pots to boxed trees"),
      },
    },
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a cube" },
  result: {
    quantity: "volume",
    symbol: "V",
    about: "Volume of substrate up to the fill line",
    usual: {
      us: [0.025, 110],
      metric: [0.1, 420],
      low: "smaller than any pot: a plug, or the units differ",
      high: "larger than any pot: check the units",
      source: cite("ANSI_Z60", "6.5 in3 of the smallest pot to 25,410 in3 of the largest box"),
    },
  },
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
      slip: "The mean of the top and the bottom area was taken, which is high for a tapered pot",
      answer: ({ top_diameter: dt, bottom_diameter: db, height }, { k }) =>
        (k * Math.PI * height * (dt * dt + db * db)) / 8,
    },
    {
      slip: "The diameters were used as radii",
      answer: ({ top_diameter: dt, bottom_diameter: db, height }, { k }) =>
        (k * Math.PI * height * (dt * dt + dt * db + db * db)) / 3,
    },
    {
      slip: "Width times height, an area, was taken as a volume and divided by 231 or by 1000",
      answer: ({ top_diameter, height }, { k }) => k * top_diameter * height,
    },
  ],
  seeAlso: ["WATER_HELD", "AVAILABLE_WATER", "CONTAINER_CAPACITY", "AIR_SPACE", "TOP_AREA"],
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
