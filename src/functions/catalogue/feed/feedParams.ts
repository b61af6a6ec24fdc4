import { cite, type NumberParam } from "../../../kernel";

/** What the trade feeds; the range of the answers in ppm too. */
export const FEED_PPM_USUAL = {
  us: [25, 500],
  metric: [25, 500],
  low: "weaker than any feed: check the analysis, or a TDS meter's scale",
  high: "looks like ppm of the product, or like a stock",
  source: cite("UMASS_FEED", "150 to 250 ppm N as a constant feed; 50 to 100 in nurseries (common practice)"),
} as const;

export const PPM_PARAM = {
  quantity: "ppm",
  symbol: "ppm",
  above: 0,
  about: "Element wanted in the water as applied (mg/L of N, or of P or K as elements), not ppm of the product",
  usual: FEED_PPM_USUAL,
} as const satisfies NumberParam;

export const ANALYSIS_PARAM = {
  quantity: "fraction",
  symbol: "a",
  above: 0,
  atMost: 1,
  about: "Part of the product that is that element, by weight: 20 % N is 0.20; label P2O5 and K2O must be converted",
  usual: {
    us: [0.02, 0.62],
    metric: [0.02, 0.62],
    low: "less than any fertilizer holds: a percentage taken twice",
    high: "more than any fertilizer holds",
    source: cite("PRACTICE", "soluble fertilizers, 0.46 for urea the highest in N"),
  },
} as const satisfies NumberParam;

export const INJECTOR_RATIO_USUAL = {
  us: [10, 500],
  metric: [10, 500],
  low: "looks like a percentage: 1 % is 1:100, so write 100",
  high: "weaker than most injectors go",
  source: cite("PRACTICE", "1:15, 1:100, 1:128 and 1:200 in use"),
} as const;

export const INJECTOR_RATIO_PARAM = {
  quantity: "factor",
  symbol: "R",
  atLeast: 1,
  about: "Injector ratio: 100 for 1:100, which is 1 part of stock in 100 parts of treated water, or 1 %",
  usual: INJECTOR_RATIO_USUAL,
  hint: "write 100 for 1:100; a cell may have turned 1:100 into a time of day",
} as const satisfies NumberParam;

/** The sea has 55 mS/cm; what lies above was read in uS/cm. */
export const HIGHEST_EC = 60;
export const EC_GUARD = "the sea has 55 mS/cm: a larger number is in uS/cm";

const EC_HINT = "in uS/cm? Divide by 1000";

export const WATER_EC_PARAM = {
  quantity: "EC",
  symbol: "ECw",
  atLeast: 0,
  atMost: HIGHEST_EC,
  guard: EC_GUARD,
  hint: EC_HINT,
  about: "EC of the clear water before any feed; 0 is a value, so leave no blank",
  usual: {
    us: [0, 1.5],
    metric: [0, 1.5],
    high: "too salty for most container crops (0.75 for plugs), or read in uS/cm",
    source: cite("PRACTICE", "irrigation water of container crops"),
  },
} as const satisfies NumberParam;

export const LABEL_EC_PARAM = {
  quantity: "EC",
  symbol: "ECl",
  above: 0,
  atMost: HIGHEST_EC,
  guard: EC_GUARD,
  hint: EC_HINT,
  about: "EC that the label of this product gives for pure water at label_ppm",
  usual: {
    us: [0.15, 3],
    metric: [0.15, 3],
    high: "looks like uS/cm",
    source: cite("MSU_LABEL", "0.32 to 1.28 at 50 to 200 ppm N; others lie up to twice as high"),
  },
} as const satisfies NumberParam;

export const LABEL_PPM_PARAM = {
  quantity: "ppm",
  symbol: "ppml",
  above: 0,
  about: "ppm of the same element in the same row of the label",
  usual: FEED_PPM_USUAL,
} as const satisfies NumberParam;

/** EC of a feed as it meets the roots. */
export const FEED_EC_USUAL = {
  us: [0.3, 3],
  metric: [0.3, 3],
  low: "hardly any feed in it",
  high: "above 3 mS/cm many crops burn; look for a slip of ten, or for uS/cm",
  source: cite("PRACTICE", "feeds of container crops"),
} as const;

export const TANK_VOLUME_PARAM = {
  quantity: "volume",
  symbol: "V",
  above: 0,
  about: "Feed in the tank now, not what the tank could hold",
} as const satisfies NumberParam;

export const EC_NOW_PARAM = {
  quantity: "EC",
  symbol: "ECn",
  atLeast: 0,
  atMost: HIGHEST_EC,
  guard: EC_GUARD,
  hint: EC_HINT,
  about: "EC of the tank as it reads now, well mixed; 0 is a value, so leave no blank",
  usual: FEED_EC_USUAL,
} as const satisfies NumberParam;

export const EC_TARGET_PARAM = {
  quantity: "EC",
  symbol: "ECt",
  above: 0,
  atMost: HIGHEST_EC,
  guard: EC_GUARD,
  hint: EC_HINT,
  about: "EC that the tank shall have, the water's own EC included",
  usual: FEED_EC_USUAL,
} as const satisfies NumberParam;

export const EC_ADDS_UP =
  "EC adds up in the range of feeds only, to about 3 mS/cm; above it rises less than the salts do. Meter with temperature compensation to 25 C.";

export const SAME_ELEMENT =
  "ppm and analysis are of one and the same element; ELEMENT_FROM_OXIDE converts the P2O5 and K2O of a label.";

export const CHECK_BEFORE_PLANTS =
  "Too strong a feed burns roots: check with a calibrated meter at the hose end before it reaches plants.";

export const INJECTION_CAUTION =
  "Any line that feed is injected into needs backflow prevention approved for a health hazard. Label, local code and licensed practice come first.";

export const LABEL_NOTE =
  "Take the label of this very product: at the same ppm of N two products differ by a tenth and more, so no built-in table could stand for it.";
