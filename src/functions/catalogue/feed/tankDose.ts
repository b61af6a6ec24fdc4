import { cite, defineFunction } from "../../../kernel";
import {
  CHECK_BEFORE_PLANTS,
  EC_ADDS_UP,
  EC_GUARD,
  EC_NOW_PARAM,
  EC_TARGET_PARAM,
  HIGHEST_EC,
  INJECTION_CAUTION,
  INJECTOR_RATIO_PARAM,
  TANK_VOLUME_PARAM,
} from "./feedParams";

export const tankDose = defineFunction({
  name: "TANK_DOSE",
  group: "Feed and water quality",
  summary: "Stock to add so that a tank comes up to its EC",
  formula: "D = V (ECt - ECn) / (r R)",
  source: cite(
    "MASS_BALANCE",
    "salts of the stock = salts that the tank lacks, counted as the EC they make when diluted",
  ),
  assumptions: [
    "The stock counts as R times the rise that it makes as a feed. Its own reading is lower, since EC lags behind the salts in a concentrate: never measure the stock for this.",
    "The rise is that above the water's own EC: feed at the hose end less clear water.",
    "The volume of the stock is neglected: the dose comes out short by about 1 part in R, 1 % at 1:100.",
    EC_ADDS_UP,
  ],
  params: {
    tank_volume: TANK_VOLUME_PARAM,
    ec_now: EC_NOW_PARAM,
    ec_target: EC_TARGET_PARAM,
    feed_ec_rise: {
      quantity: "EC",
      symbol: "r",
      above: 0,
      atMost: HIGHEST_EC,
      guard: EC_GUARD,
      hint: "in uS/cm? Divide by 1000",
      about: "EC that this stock adds to clear water at the injector ratio",
      usual: {
        us: [0.15, 3],
        metric: [0.15, 3],
        low: "looks like the EC of the water alone",
        high: "looks like the EC of the stock, or like uS/cm",
        source: cite("MSU_LABEL", "0.32 to 1.28 at 50 to 200 ppm N; others lie up to twice as high"),
      },
    },
    injector_ratio: INJECTOR_RATIO_PARAM,
  },
  result: { quantity: "volume", symbol: "D", about: "Stock to add, in the unit of the tank" },
  examples: [
    {
      given: { tank_volume: 400, ec_now: 1, ec_target: 1.5, feed_ec_rise: 1.5, injector_ratio: 100 },
      gives: 1.3333333333333333,
      from: cite("ARITHMETIC", "short by 0.5; the stock counts as 150: 400 x 0.5 / 150"),
    },
    {
      given: { tank_volume: 2000, ec_now: 1.8, ec_target: 1.8, feed_ec_rise: 1.2, injector_ratio: 200 },
      gives: 0,
      from: cite("ARITHMETIC", "the tank is at its EC: nothing to add"),
    },
  ],
  mistakes: [
    { slip: "The stock was counted as feed: the injector ratio was left out", instead: () => ({ injector_ratio: 1 }) },
    {
      slip: "The EC wanted was used, not what is lacking",
      answer: ({ tank_volume, ec_target, feed_ec_rise, injector_ratio }) =>
        (tank_volume * ec_target) / (feed_ec_rise * injector_ratio),
    },
    {
      slip: "It was multiplied by the rise, not divided",
      instead: ({ feed_ec_rise }) => ({ feed_ec_rise: 1 / feed_ec_rise }),
    },
  ],
  seeAlso: ["TANK_DILUTION", "FERTIGATION_EC", "STOCK_WEIGHT"],
  caution: `Add most of it, mix, meter, then add the rest. Gloves and eye protection. ${CHECK_BEFORE_PLANTS} ${INJECTION_CAUTION}`,
  compute({ tank_volume, ec_now, ec_target, feed_ec_rise, injector_ratio }, show, { noAnswer }) {
    if (ec_target < ec_now) {
      const why = `ec_target is ${ec_target}, below ec_now (${ec_now}): no stock brings that about; TANK_DILUTION says how much water does`;
      throw noAnswer(why, "ec_target");
    }
    const lacking = show("d = ECt - ECn", ec_target - ec_now, "EC", "EC that the tank lacks");
    const stock = show("s = r * R", feed_ec_rise * injector_ratio, "EC", "EC that the stock counts as");
    return show("D = V * d / s", (tank_volume * lacking) / stock, "volume", "Stock to add");
  },
});
