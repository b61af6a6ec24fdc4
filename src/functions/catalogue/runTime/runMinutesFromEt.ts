import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import {
  AREA_PER_PLANT_PARAM,
  COVER_FACTOR_PARAM,
  CROP_COEFFICIENT_PARAM,
  REFERENCE_ET_PARAM,
  SAME_AREA,
} from "../weather/demand";
import { EMITTER_FLOW_PARAM, EMITTERS_PER_PLANT_PARAM, MEASURED_WITHOUT_FILL, RUN_MINUTES_USUAL } from "./emitters";
import { largerLoss, LARGER_LOSS_ONLY, LEACHING_FRACTION_PARAM, UNIFORMITY_PARAM } from "./losses";

export const runMinutesFromEt = defineFunction({
  name: "RUN_MINUTES_FROM_ET",
  group: "Run time, zones, booms, mats",
  summary: "Minutes for the day's weather in one call: demand, gross water and run time",
  formula: "t = 60 k ET Kc A c / min(1 - LF, DU) / (n q)",
  source: [
    cite("FAO56", "Eq. 58, crop water use, and Annex 1: 1 mm on 1 m2 is 1 L"),
    cite("ENH1268", "gross = net / (1 - LF)"),
    cite("MERRIAM_KELLER", "gross = net / DU of the low quarter"),
  ],
  assumptions: [
    'The chain PLANT_WATER_DEMAND, GROSS_WATER (basis "larger"), RUN_MINUTES in one cell, for stakes and drippers of which each pot has its own.',
    SAME_AREA,
    LARGER_LOSS_ONLY,
    MEASURED_WITHOUT_FILL,
  ],
  params: {
    reference_et: REFERENCE_ET_PARAM,
    crop_coefficient: CROP_COEFFICIENT_PARAM,
    area_per_plant: AREA_PER_PLANT_PARAM,
    leaching_fraction: LEACHING_FRACTION_PARAM,
    uniformity: UNIFORMITY_PARAM,
    emitter_flow: { ...EMITTER_FLOW_PARAM, about: "Measured flow of one emitter" },
    emitters_per_plant: EMITTERS_PER_PLANT_PARAM,
    units: UNITS_PARAM,
    cover_factor: COVER_FACTOR_PARAM,
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: { quantity: "minutes", symbol: "t", about: "Run time for the day", usual: RUN_MINUTES_USUAL },
  examples: [
    {
      given: {
        reference_et: 0.25,
        crop_coefficient: 1.1,
        area_per_plant: 3.5,
        leaching_fraction: 0.15,
        uniformity: 0.88,
        emitter_flow: 1,
        emitters_per_plant: 2,
        units: "us",
      },
      gives: 21.176470588235293,
      from: cite("ARITHMETIC", "0.25 x 1.1 x 3.5 x 144 / 231 = 0.6 gal; / 0.85; x 60 / 2 = 360 / 17"),
    },
    {
      given: {
        reference_et: 5,
        crop_coefficient: 0.8,
        area_per_plant: 0.16,
        leaching_fraction: 0.1,
        uniformity: 0.8,
        emitter_flow: 4,
        emitters_per_plant: 2,
        units: "metric",
      },
      gives: 6,
      from: cite("ARITHMETIC", "5 x 0.8 x 0.16 = 0.64 L; / 0.8 = 0.8 L; 0.8 L at 8 L/h is a tenth of an hour"),
    },
    {
      given: {
        reference_et: 5,
        crop_coefficient: 0.8,
        area_per_plant: 0.16,
        leaching_fraction: 0.1,
        uniformity: 0.8,
        emitter_flow: 4,
        emitters_per_plant: 2,
        units: "metric",
        cover_factor: 0.75,
      },
      gives: 4.5,
      from: cite("ARITHMETIC", "three quarters of the demand outside: 6 x 0.75"),
    },
  ],
  mistakes: [
    { slip: "The crop coefficient was left out", instead: () => ({ crop_coefficient: 1 }) },
    { slip: "The cover factor was left out", instead: () => ({ cover_factor: 1 }) },
    {
      slip: "The net water was run: nothing was added for leaching or unevenness",
      instead: () => ({ leaching_fraction: 0, uniformity: 1 }),
    },
    { slip: "The uniformity was left out", instead: () => ({ uniformity: 1 }) },
    { slip: "The leaching fraction was left out", instead: () => ({ leaching_fraction: 0 }) },
    {
      slip: "Leaching and uniformity were both divided out",
      answer: ({ leaching_fraction, uniformity }, _constants, right) =>
        right / Math.max(1 - leaching_fraction, uniformity),
    },
    {
      slip: "The unit constant was left out: depth x area is not yet a volume",
      answer: (_given, { k }, right) => right / k,
    },
    { slip: "The emitters per plant were left out", instead: () => ({ emitters_per_plant: 1 }) },
    {
      slip: "The flow per hour was taken as flow per minute",
      answer: (_given, _constants, right) => right / 60,
    },
  ],
  seeAlso: ["PLANT_WATER_DEMAND", "GROSS_WATER", "RUN_MINUTES", "RUN_MINUTES_FROM_LEACHING"],
  caution:
    "One emitter to a pot has no neighbour: a plugged one dries the plant in hours. Check the minutes with a weighed pot and a leaching test, and walk the lines on the first hot days.",
  compute(given, show, { constants: { k } }) {
    const { reference_et: et, crop_coefficient: kc, area_per_plant: area, cover_factor: cover } = given;
    const use = show("ETc = ET * Kc * c", et * kc * cover, "water depth", "Depth that the plant uses");
    const net = show("N = k * ETc * A", k * use * area, "volume", "Net water for one plant");
    const d = largerLoss(given.leaching_fraction, given.uniformity, show);
    const gross = show("G = N / d", net / d, "volume", "Gross water for one plant");
    const flow = show("Q = q * n", given.emitter_flow * given.emitters_per_plant, "emitter flow", "Flow to one plant");
    return show("t = 60 * G / Q", (60 * gross) / flow, "minutes", "Run time");
  },
});
