import { cite, defineFunction } from "../../../kernel";
import {
  EC_ADDS_UP,
  EC_GUARD,
  FEED_EC_USUAL,
  FEED_PPM_USUAL,
  HIGHEST_EC,
  LABEL_EC_PARAM,
  LABEL_NOTE,
  LABEL_PPM_PARAM,
  WATER_EC_PARAM,
} from "./feedParams";

export const ppmFromEc = defineFunction({
  name: "PPM_FROM_EC",
  group: "Feed and water quality",
  summary: "Strength of a feed from its EC, the water's own EC and the label",
  formula: "ppm = (ECf - ECw) ppml / ECl",
  source: [
    cite("INJECTOR_TRANSCRIPT", "EC method: the EC of the tap water is taken off first"),
    cite("MSU_LABEL", "EC in proportion to ppm N"),
  ],
  assumptions: [
    LABEL_NOTE,
    EC_ADDS_UP,
    "Fresh feed at the hose end. In a leachate or a recirculated tank the salts are no longer in the proportions of the label.",
  ],
  params: {
    feed_ec: {
      quantity: "EC",
      symbol: "ECf",
      above: 0,
      atMost: HIGHEST_EC,
      guard: EC_GUARD,
      hint: "in uS/cm? Divide by 1000",
      about: "EC of the feed as the meter shows it",
      usual: FEED_EC_USUAL,
    },
    water_ec: WATER_EC_PARAM,
    label_ec: LABEL_EC_PARAM,
    label_ppm: LABEL_PPM_PARAM,
  },
  result: { quantity: "ppm", symbol: "ppm", about: "ppm (mg/L) of the label's element", usual: FEED_PPM_USUAL },
  examples: [
    {
      given: { feed_ec: 0.64, water_ec: 0, label_ec: 1.28, label_ppm: 200 },
      gives: 100,
      within: 0.5,
      from: cite("MSU_LABEL", "0.64 mmho at 100 ppm N and 1.28 at 200"),
    },
    {
      given: { feed_ec: 1.74, water_ec: 0.25, label_ec: 1.52, label_ppm: 200 },
      gives: 196.05,
      within: 0.01,
      from: cite("ARITHMETIC", "readings of the published transcript: 1.74 - 0.25 = 1.49; 1.49 x 200 / 1.52"),
    },
  ],
  mistakes: [
    { slip: "The EC of the water was not taken off", instead: () => ({ water_ec: 0 }) },
    {
      slip: "The EC of the water was added, not taken off",
      answer: ({ feed_ec, water_ec, label_ec, label_ppm }) => ((feed_ec + water_ec) * label_ppm) / label_ec,
    },
    {
      slip: "The label was turned upside down: EC over ppm",
      answer: ({ feed_ec, water_ec, label_ec, label_ppm }) => ((feed_ec - water_ec) * label_ec) / label_ppm,
    },
  ],
  seeAlso: ["FERTIGATION_EC", "INJECTOR_RATIO", "CONVERT_EC"],
  compute({ feed_ec, water_ec, label_ec, label_ppm }, show, { refuse }) {
    if (feed_ec < water_ec) {
      throw refuse("feed_ec", feed_ec, `it must be water_ec (${water_ec}) or more; were the two swapped?`);
    }
    const rise = show("r = ECf - ECw", feed_ec - water_ec, "EC", "What the feed adds to the water");
    return show("ppm = r * ppml / ECl", (rise * label_ppm) / label_ec, "ppm", "ppm by the label");
  },
});
