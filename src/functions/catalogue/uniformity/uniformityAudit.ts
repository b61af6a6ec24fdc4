import { cite, defineFunction, type CellAnswer } from "../../../kernel";
import { DAY_OF_THE_TEST, LOWEST_SECONDS, READINGS_PARAM, ZEROS_PARAM } from "./readings";
import { largest, NO_MEAN, showCount, showCu, showCv, showDu, showLowQuarter, showMean, smallest } from "./spread";

export const uniformityAudit = defineFunction({
  name: "UNIFORMITY_AUDIT",
  group: "Flow and uniformity",
  summary: "How even a whole catch test or emitter test is, in one table: means, extremes, Cv, DU and CU",
  formula: "DU = low-quarter mean / mean; CU = 1 - mean deviation / mean; Cv = s / mean",
  source: [
    cite("MERRIAM_KELLER", "distribution uniformity of the low quarter"),
    cite("CHRISTIANSEN1942", "uniformity coefficient"),
    cite("BRALTS_KESNER", "coefficient of variation; 1 - Cv is the statistical uniformity"),
  ],
  assumptions: [
    "DU, CU and Cv are those of DU_LOW_QUARTER, CU_CHRISTIANSEN and STATISTICAL_UNIFORMITY (which is 1 - Cv), to the last digit.",
    'Blanks or zeros are counted before the word in zeros decides about them: under "skip" check that row before trusting the rest.',
    "The lowest quarter is n / 4 readings, rounded up; take a multiple of 4, 16 or more.",
    "Where all readings are 0 there is no mean to divide by, and the last three rows say so.",
    LOWEST_SECONDS,
    DAY_OF_THE_TEST,
  ],
  params: { readings: { ...READINGS_PARAM, fewest: 4 }, zeros: ZEROS_PARAM },
  result: {
    header: false,
    table: [
      { name: "measure", quantity: "text" },
      { name: "value", quantity: "any one unit" },
    ],
    about: "Nine rows: readings used, blanks or zeros met, mean, low-quarter mean, min, max, Cv, DU, CU",
  },
  examples: [
    {
      given: {
        readings: [
          [112, 98, 105, 121, 84, 76],
          [118, 109, 95, 88, 126, 101],
          [92, 115, 107, 79, 70, 103],
          [119, 96, 110, 90, 85, 113],
        ],
      },
      gives: [
        ["readings used", 24],
        ["blanks or zeros met", 0],
        ["mean", 100.5],
        ["low-quarter mean", 482 / 6],
        ["min", 70],
        ["max", 126],
        ["Cv", Math.sqrt(5350 / 23) / 100.5],
        ["DU", 482 / 6 / 100.5],
        ["CU", 1 - 305 / 2412],
      ],
      from: cite(
        "ARITHMETIC",
        "2,412 / 24; 70 + 76 + 79 + 84 + 85 + 88 = 482, / 6; squares of the deviations add up to 5,350: sqrt(5,350 / 23) = 15.2515; deviations to 305: 1 - 305 / 2,412",
      ),
    },
    {
      given: { readings: [[10, 20, 0, 30, 40]], zeros: "skip" },
      gives: [
        ["readings used", 4],
        ["blanks or zeros met", 1],
        ["mean", 25],
        ["low-quarter mean", 10],
        ["min", 10],
        ["max", 40],
        ["Cv", Math.sqrt(500 / 3) / 25],
        ["DU", 0.4],
        ["CU", 0.6],
      ],
      from: cite(
        "ARITHMETIC",
        "100 / 4; squares 225 + 25 + 25 + 225 = 500, over 3; deviations 15 + 5 + 5 + 15 = 40, / 4 = 10",
      ),
    },
  ],
  mistakes: [],
  seeAlso: ["DU_LOW_QUARTER", "CU_CHRISTIANSEN", "STATISTICAL_UNIFORMITY", "CATCH_RATE", "EMITTER_SURVEY"],
  caution:
    "A DU below 0.60 cannot be scheduled away: a longer run floods the wet pots before the driest quarter is served. Mend the system.",
  compute({ readings }, show, { blanksMet }) {
    const n = showCount(readings, show);
    const met = show("b", blanksMet("readings"), "count", "Blanks or zeros met");
    const low = showLowQuarter(readings, n, show);
    const m = showMean(readings, show);
    const orWhyNot = (measure: () => number): CellAnswer => (m === 0 ? NO_MEAN : measure());
    return [
      ["readings used", n],
      ["blanks or zeros met", met],
      ["mean", m],
      ["low-quarter mean", low],
      ["min", show("xmin = MIN(x)", smallest(readings), "any one unit", "Lowest reading")],
      ["max", show("xmax = MAX(x)", largest(readings), "any one unit", "Highest reading")],
      ["Cv", orWhyNot(() => showCv(readings, m, show))],
      ["DU", orWhyNot(() => showDu(low, m, show))],
      ["CU", orWhyNot(() => showCu(readings, m, show))],
    ];
  },
});
