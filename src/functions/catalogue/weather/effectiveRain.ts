import { cite, defineFunction, UNITS_PARAM } from "../../../kernel";
import { ONE_CASE } from "../plainFormula";
import { CAPTURE_USUAL, potTop, TOP_DIAMETER_PARAM } from "../runTime/potTop";

export const effectiveRain = defineFunction({
  name: "EFFECTIVE_RAIN",
  group: "Weather and demand",
  summary: "Rain that goes into one pot",
  formula: "V = min(k P pi D2 / 4 CF, room)",
  source: [
    cite("GEOMETRY", "a depth on a round pot top"),
    cite("EP458", "capture factor: water in the pot with the plant over water in it without"),
  ],
  assumptions: [
    "Only what falls on the pot top, times the capture factor of the canopy: leaves may lead rain to the pot (above 1) or shed it (below 1).",
    "The room is the pot's deficit; what is beyond it drains. A blank cell may count as 0, a full pot that takes no rain.",
    "Dry substrate that repels water takes less than its room.",
    ONE_CASE,
  ],
  params: {
    rain: {
      quantity: "water depth",
      symbol: "P",
      atLeast: 0,
      about: "Rain of the day in the gauge; 0 is a value, so leave no blank",
      usual: {
        us: [0, 5],
        metric: [0, 125],
        high: "looks like the other unit, or like a month's sum",
        source: cite("PRACTICE", "heavy rain of a day"),
      },
    },
    top_diameter: TOP_DIAMETER_PARAM,
    units: UNITS_PARAM,
    capture_factor: {
      quantity: "factor",
      symbol: "CF",
      above: 0,
      default: 1,
      about: "Water that the pot catches with its plant over what it catches without",
      usual: CAPTURE_USUAL,
    },
    room: {
      quantity: "volume",
      symbol: "room",
      atLeast: 0,
      mayBeLeftOut: true,
      orWord: "none",
      about: 'Room left below container capacity; left out or "none" there is no cap, 0 is a full pot',
    },
  },
  unitConstants: { k: "volume of a depth on a pot" },
  result: { quantity: "volume", symbol: "V", about: "Rain that counts, for one pot" },
  examples: [
    {
      given: { rain: 0.5, top_diameter: 10, units: "us" },
      gives: 0.17,
      within: 0.00001,
      from: cite("ARITHMETIC", "0.5 x 25 pi / 231 = 39.27 in3 / 231"),
    },
    {
      given: { rain: 10, top_diameter: 25.4, units: "metric", capture_factor: 1.2, room: 0.4 },
      gives: 0.4,
      from: cite("ARITHMETIC", "10 mm x 0.0507 m2 x 1.2 = 0.608 L, and the pot takes 0.4 L"),
    },
    {
      given: { rain: 4, top_diameter: 25.4, units: "metric", capture_factor: 1.2, room: 0.4 },
      gives: 0.2432,
      within: 0.0001,
      from: cite("ARITHMETIC", "4 mm x 0.05067 m2 x 1.2 = 0.2432 L, all of it held"),
    },
  ],
  mistakes: [
    {
      slip: "The room was left out: more was counted than the pot can hold",
      instead: () => ({ room: null }),
    },
    {
      slip: "The diameter was used as a radius",
      instead: ({ top_diameter }) => ({ top_diameter: 2 * top_diameter }),
    },
    {
      slip: "The capture factor was left out",
      instead: () => ({ capture_factor: 1 }),
    },
    {
      slip: "A square of the diameter was taken for the round top",
      answer: ({ room }, _constants, right) => Math.min((right * 4) / Math.PI, room ?? Infinity),
    },
  ],
  seeAlso: ["WATER_BALANCE", "CAPTURE_FACTOR", "RAIN_HARVEST"],
  caution: "A canopy may keep a pot dry in heavy rain: lift a few pots before skipping an irrigation.",
  compute({ rain, top_diameter: diameter, capture_factor: capture, room }, show, { constants: { k } }) {
    const top = potTop(diameter, show);
    const caught = show("W = k * P * At * CF", k * rain * top * capture, "volume", "Rain that the pot catches");
    if (room === null) return show("V = W", caught, "volume", "Rain that counts, without a cap");
    return show("V = MIN(W, room)", Math.min(caught, room), "volume", "Rain that counts, no more than the room");
  },
});
