import { cite, defineFunction, type Show } from "../../../kernel";

const EC_UNITS = ["mS/cm", "dS/m", "mmho/cm", "uS/cm", "tds_ppm"] as const;
type EcUnit = (typeof EC_UNITS)[number];

/** The reading in mS/cm. */
function inMilli(value: number, from: EcUnit, factor: number, show: Show): number {
  const words = "EC in mS/cm";
  if (from === "uS/cm") return show("E = x / 1000", value / 1000, "EC", words);
  if (from === "tds_ppm") return show("E = x / f", value / factor, "EC", words);
  return show("E = x", value, "EC", words);
}

function fromMilli(ec: number, to: EcUnit, factor: number, show: Show): number {
  const words = `In ${to}`;
  if (to === "uS/cm") return show("y = E * 1000", ec * 1000, "as named", words);
  if (to === "tds_ppm") return show("y = E * f", ec * factor, "as named", words);
  return show("y = E", ec, "as named", words);
}

/** How many of a unit make 1 mS/cm, for the plain-spreadsheet equivalent. */
function perMilli(side: "from" | "to"): string {
  return `IF(${side} = "uS/cm", 1000, IF(${side} = "tds_ppm", f, 1))`;
}

/** What the factor of the meter does to the number; nothing that could go wrong where it is not read. */
function timesFactor(from: EcUnit, to: EcUnit, factor: number | null): number {
  if (factor === null || (from === "tds_ppm") === (to === "tds_ppm")) return NaN;
  return to === "tds_ppm" ? factor : 1 / factor;
}

export const convertEc = defineFunction({
  name: "CONVERT_EC",
  group: "Feed and water quality",
  summary: "EC from one unit to another, or to and from the ppm of a TDS meter",
  formula: "1 mS/cm = 1 dS/m = 1 mmho/cm = 1000 uS/cm; TDS ppm = mS/cm x factor",
  source: [cite("DEFINITION", "1 S/m = 10 mS/cm; the mho is the siemens"), cite("UT_GLOSSARY", "1 mS/cm = 640 ppm")],
  assumptions: [
    "TDS ppm is what a meter makes of EC with its own factor: 500 or 700 on meters, 640 in laboratories (800 above 5 mS/cm). It is not ppm of N, nor of any nutrient.",
    "The factor must be that of the meter or the report, so there is no default. It is not read where neither side is TDS.",
    "Both readings at 25 C, or from a meter that corrects to it.",
  ],
  params: {
    value: { quantity: "as named", symbol: "x", atLeast: 0, about: "The reading; 0 is a value, so leave no blank" },
    from: { kind: "word", words: EC_UNITS, about: "Unit of the reading" },
    to: { kind: "word", words: EC_UNITS, about: "Unit wanted" },
    tds_factor: {
      quantity: "TDS factor",
      symbol: "f",
      atLeast: 100,
      atMost: 1000,
      guard: "no water has less or more",
      hint: "a factor of 0.5, 0.64 or 0.7 counts from uS/cm: write 500, 640 or 700",
      mayBeLeftOut: true,
      about: "ppm for 1 mS/cm, as the meter or the laboratory counts; needed where a side is tds_ppm",
      usual: {
        us: [500, 800],
        metric: [500, 800],
        source: cite("PRACTICE", "500 and 700 on meters, 640 and 800 in laboratories"),
      },
    },
  },
  result: { quantity: "as named", symbol: "y", about: "The reading in the unit wanted" },
  examples: [
    {
      given: { value: 750, from: "uS/cm", to: "dS/m" },
      gives: 0.75,
      from: cite("DEFINITION", "1000 uS/cm = 1 dS/m"),
    },
    {
      given: { value: 1, from: "mS/cm", to: "tds_ppm", tds_factor: 640 },
      gives: 640,
      from: cite("UT_GLOSSARY", "1 mS/cm = 640 ppm"),
    },
    {
      given: { value: 1050, from: "tds_ppm", to: "mS/cm", tds_factor: 700 },
      gives: 1.5,
      from: cite("ARITHMETIC", "1050 / 700"),
    },
  ],
  mistakes: [
    { slip: "The number was kept and only the unit was changed", answer: ({ value }) => value },
    {
      slip: "The factor was used the wrong way round",
      answer: ({ from, to, tds_factor }, _constants, right) => right / timesFactor(from, to, tds_factor) ** 2,
    },
    {
      slip: "The scale of another TDS meter was used",
      answer: ({ from, to, tds_factor }, _constants, right) =>
        (right / timesFactor(from, to, tds_factor)) * timesFactor(from, to, tds_factor === 500 ? 700 : 500),
    },
  ],
  seeAlso: ["FERTIGATION_EC", "PPM_FROM_EC", "CONVERT_UNIT"],
  native: `x / ${perMilli("from")} * ${perMilli("to")}`,
  compute({ value, from, to, tds_factor }, show, { refuse }) {
    if (tds_factor === null && (from === "tds_ppm" || to === "tds_ppm")) {
      throw refuse("tds_factor", null, "it must be given where a side is tds_ppm: 500, 640 or 700, by the meter");
    }
    if (from === to) return show("y = x", value, "as named", "The same unit");
    const factor = tds_factor ?? 0;
    return fromMilli(inMilli(value, from, factor, show), to, factor, show);
  },
});
