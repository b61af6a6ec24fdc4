import { cite, defineFunction } from "../../../kernel";
import {
  CHECK_BEFORE_PLANTS,
  EC_ADDS_UP,
  FEED_EC_USUAL,
  INJECTION_CAUTION,
  LABEL_EC_PARAM,
  LABEL_NOTE,
  LABEL_PPM_PARAM,
  PPM_PARAM,
  WATER_EC_PARAM,
} from "./feedParams";

export const fertigationEc = defineFunction({
  name: "FERTIGATION_EC",
  group: "Feed and water quality",
  summary: "EC that the meter should show at the hose end when the feed is right",
  formula: "EC = ECw + ppm ECl / ppml",
  source: [
    cite("MSU_LABEL", "EC in proportion to ppm N; it is not the EC of the water"),
    cite("BAG_CHART", "EC at 50, 100 and 200 ppm N"),
  ],
  assumptions: [LABEL_NOTE, EC_ADDS_UP, "One product, or several with one label row that holds for their mixture."],
  params: { water_ec: WATER_EC_PARAM, ppm: PPM_PARAM, label_ec: LABEL_EC_PARAM, label_ppm: LABEL_PPM_PARAM },
  result: { quantity: "EC", symbol: "EC", about: "EC of the feed, the water's own included", usual: FEED_EC_USUAL },
  examples: [
    {
      given: { water_ec: 0, ppm: 100, label_ec: 1.48, label_ppm: 200 },
      gives: 0.74,
      within: 0.001,
      from: cite("BAG_CHART", "1.48 at 200 ppm N and 0.74 at 100, in pure water"),
    },
    {
      given: { water_ec: 0.3, ppm: 150, label_ec: 1.48, label_ppm: 200 },
      gives: 1.41,
      from: cite("ARITHMETIC", "150 / 200 x 1.48 = 1.11, and 0.30 of the water"),
    },
  ],
  mistakes: [
    { slip: "The EC of the water was left out", instead: () => ({ water_ec: 0 }) },
    {
      slip: "The EC of the water was taken off, not added",
      answer: ({ water_ec }, _constants, right) => right - 2 * water_ec,
    },
    { slip: "The label's EC was taken as it stands, at other ppm", instead: ({ label_ppm }) => ({ ppm: label_ppm }) },
    {
      slip: "The label was turned upside down: ppm over EC",
      answer: ({ water_ec, ppm, label_ec, label_ppm }) => water_ec + (ppm * label_ppm) / label_ec,
    },
  ],
  seeAlso: ["PPM_FROM_EC", "STOCK_WEIGHT", "CONVERT_EC"],
  caution: `A reading far from the answer is a slip in weighing, ratio, label or meter: stop and look. ${CHECK_BEFORE_PLANTS} ${INJECTION_CAUTION}`,
  compute({ water_ec, ppm, label_ec, label_ppm }, show) {
    const rise = show("r = ppm * ECl / ppml", (ppm * label_ec) / label_ppm, "EC", "What the feed adds");
    return show("EC = ECw + r", water_ec + rise, "EC", "EC of water and feed");
  },
});
