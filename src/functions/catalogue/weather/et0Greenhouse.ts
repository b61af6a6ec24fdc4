import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { DATE_PARAM, dayOfYearStep } from "./dayOfYear";
import { SOLAR_PARAM } from "./radiation";

export const et0Greenhouse = defineFunction({
  name: "ET0_GREENHOUSE",
  group: "Weather and demand",
  summary: "Reference evapotranspiration inside an unheated plastic house from the sun outside",
  formula: "ET0 = (0.288 + 0.0019 J) t Go to day 220, (1.339 - 0.00288 J) t Go after",
  source: cite("FERNANDEZ2010", "radiation method; Go = 0.408 x outside radiation, in mm"),
  assumptions: [
    "Unheated plastic houses of northern mid-latitudes, soil-grown vegetables in a Mediterranean climate. Fog, pad-and-fan cooling, heating and lamps change it; do not use it south of the equator.",
    "The coefficients are recalled; that both branches meet at day 220 (0.706 and 0.705) speaks for them. Hold a week of it against a weighed pot before you rely on it.",
    "Outside radiation and a transmission measured in this house: whitewash, screens and dust change it through the year. Where the radiation was measured inside, the transmission is 1.",
  ],
  params: {
    solar_radiation: { ...SOLAR_PARAM, about: "Solar radiation of the day outside the house" },
    transmission: {
      quantity: "fraction",
      symbol: "t",
      above: 0,
      atMost: 1,
      about: "Part of the outside radiation that reaches the crop",
      usual: {
        us: [0.3, 0.9],
        metric: [0.3, 0.9],
        low: "looks like the part held back",
        high: "cover and frame hold back 0.10 to 0.40",
        source: cite("UMASS_WATER", "cover and frame hold back 10 to 40 %; lower under whitewash (common practice)"),
      },
    },
    date: DATE_PARAM,
    units: UNITS_PARAM,
  },
  result: {
    quantity: "water depth per day",
    symbol: "ET0",
    about: "Reference evapotranspiration of the day inside",
    usual: {
      us: [0.01, 0.3],
      metric: [0.3, 8],
      high: "check the unit of the radiation",
      source: cite("PRACTICE", "winter to midsummer under plastic"),
    },
  },
  examples: [
    {
      given: { solar_radiation: 10 / 0.408, transmission: 0.6, date: 42154, units: "metric" },
      gives: 3.438,
      from: cite("ARITHMETIC", "day 150, 10 mm outside: (0.288 + 0.0019 x 150) x 0.6 x 10 = 0.573 x 6"),
    },
    {
      given: { solar_radiation: 14.7, transmission: 0.6, date: 42284, units: "us" },
      gives: 0.07546,
      within: 0.00001,
      from: cite("ARITHMETIC", "day 280: (1.339 - 0.8064) x 0.6 x 0.408 x 14.7 = 1.9166 mm = 0.07546 in"),
    },
  ],
  mistakes: [
    {
      slip: "The transmission was left out: the crop was given the sun outside",
      answer: ({ transmission }, _constants, right) => right / transmission,
    },
    {
      slip: "The transmission was counted twice, as with radiation measured inside",
      answer: ({ transmission }, _constants, right) => right * transmission,
    },
    {
      slip: "The part held back was taken for the part let through",
      answer: ({ transmission }, _constants, right) => (right * (1 - transmission)) / transmission,
    },
    {
      slip: "Radiation was left in MJ, not turned into millimetres of water (x 0.408)",
      answer: (_given, _constants, right) => right / 0.408,
    },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "SOLAR_FROM_SUNSHINE", "CROP_COEFFICIENT", "WATER_FROM_WEIGHT"],
  caution: "An estimate for a reference surface. Pots on benches dry faster than soil: check with a weighed pot.",
  compute({ solar_radiation: solar, transmission, date }, show) {
    const inside = show("Ri = t * Rs", transmission * solar, "radiation", "Radiation inside the house");
    const water = show("G = 0.408 * Ri", 0.408 * inside, "evaporation in mm", "That radiation as evaporated water");
    const j = dayOfYearStep(date, show);
    const share = show(
      "f = IF(J <= 220, 0.288 + 0.0019 * J, 1.339 - 0.00288 * J)",
      j <= 220 ? 0.288 + 0.0019 * j : 1.339 - 0.00288 * j,
      "factor",
      "Part of it that evaporates water at this time of year",
    );
    const et = show("ETm = f * G", share * water, "evaporation in mm", "Reference evapotranspiration");
    return show.fromMetric("ET0 = ETm", et, "water depth per day", "The same in the unit asked for");
  },
});
