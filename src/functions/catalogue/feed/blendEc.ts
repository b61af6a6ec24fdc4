import { cite, defineFunction } from "../../../kernel";
import { EC_ADDS_UP, EC_GUARD, HIGHEST_EC } from "./feedParams";

function sum(values: readonly number[]): number {
  return values.reduce((all, value) => all + value, 0);
}

export const blendEc = defineFunction({
  name: "BLEND_EC",
  group: "Feed and water quality",
  summary: "EC of several waters mixed",
  formula: "EC = sum(v c) / sum(v)",
  source: [cite("MASS_BALANCE", "salts of the parts = salts of the mixture"), cite("ALI2011", "Example 8.4")],
  assumptions: [
    "EC and concentrations mix so. pH never does: it depends on alkalinity, and must be measured in the mixture.",
    EC_ADDS_UP,
    "Volumes in one unit, or flows that run together. A blank cell may count as 0: count the cells of both columns.",
    "Nothing settles out when the waters meet.",
  ],
  params: {
    volumes: {
      kind: "numbers",
      quantity: "volume",
      symbol: "v",
      atLeast: 0,
      blanks: "refused",
      column: true,
      about: "Volume of each water, all in one unit; 0 is a water not used",
    },
    ecs: {
      kind: "numbers",
      quantity: "EC",
      symbol: "c",
      atLeast: 0,
      atMost: HIGHEST_EC,
      guard: EC_GUARD,
      blanks: "refused",
      column: true,
      about: "EC of each water, in the same order",
    },
  },
  result: {
    quantity: "EC",
    symbol: "EC",
    about: "EC of the mixture",
    usual: {
      us: [0, 1.5],
      metric: [0, 1.5],
      high: "too salty for most container crops (0.75 for plugs), or read in uS/cm",
      source: cite("PRACTICE", "irrigation water of container crops"),
    },
  },
  examples: [
    {
      given: { volumes: [[30], [70]], ecs: [[1.8], [0.4]] },
      gives: 0.82,
      from: cite("ARITHMETIC", "(30 x 1.8 + 70 x 0.4) / 100 = 82 / 100"),
    },
    {
      given: { volumes: [[5000], [3000], [2000]], ecs: [[1.1], [0.6], [0.05]] },
      gives: 0.74,
      from: cite("ARITHMETIC", "well, pond and roof: 5500 + 1800 + 100 = 7400 on 10,000"),
    },
  ],
  mistakes: [
    { slip: "The plain mean was taken, whatever the volumes", answer: ({ ecs }) => sum(ecs) / ecs.length },
    {
      slip: "The volumes were put in the wrong order",
      instead: ({ volumes }) => ({ volumes: [...volumes].reverse() }),
    },
  ],
  seeAlso: ["BLEND_SHARE", "TANK_DILUTION", "CONVERT_EC"],
  compute({ volumes, ecs }, show, { noAnswer }) {
    if (volumes.every((volume) => volume === 0)) {
      throw noAnswer("volumes are all 0; there is nothing to mix", "volumes");
    }
    const salts = volumes.reduce((all, volume, row) => all + volume * (ecs[row] as number), 0);
    const volume = show("V = SUM(v)", sum(volumes), "volume", "Volume of the mixture");
    return show("EC = SUMPRODUCT(v, c) / V", salts / volume, "EC", "Mean EC, weighed by the volumes");
  },
});
