import { cite, defineFunction } from "../../../kernel";
import { CLOGGING_CLASSES, CLOGGING_LIMITS, WATER_PROPERTIES } from "./cloggingLimits";

const HIGHEST_PH = 14;

/** One limit of all properties as a nested IF: `IF(property = "ph", 7, ...)`. */
function limitFormula(which: 0 | 1): string {
  return WATER_PROPERTIES.reduceRight(
    (rest, property) => `IF(property = "${property}", ${CLOGGING_LIMITS[property][which]}, ${rest})`,
    "NA()",
  );
}

const [MINOR, MODERATE, SEVERE] = CLOGGING_CLASSES;

export const cloggingRisk = defineFunction({
  name: "CLOGGING_RISK",
  group: "Feed and water quality",
  summary: "Risk that a property of the water clogs emitters",
  formula: "below the first limit minor, above the second severe, between them moderate",
  source: [
    cite("BUCKS1979", "classes of water for trickle irrigation"),
    cite("FAO29_RECALLED", "Table 20, the same limits"),
  ],
  assumptions: [
    "Limits in mg/L: suspended_solids 50 and 100, dissolved_solids 500 and 2000, manganese and iron 0.1 and 1.5, hydrogen_sulfide 0.5 and 2. ph 7 and 8. bacteria 10,000 and 50,000 per mL. Both limits belong to moderate.",
    "Each property by itself: two moderate ones together clog sooner than either.",
    "Tables differ: some print 0.2 for hydrogen sulfide or iron, or 7.5 for ph.",
    "Take the sample from the running pump, and have iron, hydrogen sulfide and ph read on the spot.",
  ],
  params: {
    property: { kind: "word", words: WATER_PROPERTIES, about: "What was measured" },
    value: {
      quantity: "as named",
      symbol: "x",
      atLeast: 0,
      about: "What the report says: mg/L, bacteria per mL, or pH; 0 is a value, but not as pH, so leave no blank",
    },
  },
  result: { text: true, about: '"minor", "moderate" or "severe"' },
  examples: [
    {
      given: { property: "suspended_solids", value: 40 },
      gives: "minor",
      from: cite("BUCKS1979", "below 50 mg/L"),
    },
    { given: { property: "iron", value: 0.8 }, gives: "moderate", from: cite("BUCKS1979", "0.1 to 1.5 mg/L") },
    { given: { property: "ph", value: 8.2 }, gives: "severe", from: cite("BUCKS1979", "above 8.0") },
  ],
  mistakes: [],
  seeAlso: ["ACID_VOLUME", "FLUSH_FLOW", "EMITTER_SURVEY"],
  caution:
    "Filter, flush and walk the lines whatever the class says. Chlorine or acid against clogging: label, local code and licensed practice come first, and the two never together.",
  native: `IF(x < ${limitFormula(0)}, "${MINOR}", IF(x <= ${limitFormula(1)}, "${MODERATE}", "${SEVERE}"))`,
  compute({ property, value }, show, { refuse }) {
    if (property === "ph" && (value === 0 || value > HIGHEST_PH)) {
      throw refuse("value", value, `it must be more than 0, up to ${HIGHEST_PH}, for ph`);
    }
    const [low, high] = CLOGGING_LIMITS[property];
    show(`a = ${low}`, low, "as named", "Below this minor");
    show(`b = ${high}`, high, "as named", "Above this severe");
    const step = value < low ? 1 : value <= high ? 2 : 3;
    show("c = IF(x < a, 1, IF(x <= b, 2, 3))", step, "count", "Class: 1 minor, 2 moderate, 3 severe");
    return CLOGGING_CLASSES[step - 1] ?? SEVERE;
  },
});
