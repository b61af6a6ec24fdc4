import { cite, type NumberParam } from "../../../kernel";

export const REFERENCE_ET_PARAM = {
  quantity: "water depth",
  symbol: "ET",
  above: 0,
  about: "Reference evapotranspiration of the day",
  usual: {
    us: [0.02, 0.5],
    metric: [0.5, 12],
    high: "looks like the other unit, or like a week's sum",
    source: cite("FAO56", "Table 2, average reference evapotranspiration"),
  },
} as const satisfies NumberParam;

export const CROP_COEFFICIENT_USUAL = {
  us: [0.3, 5],
  metric: [0.3, 5],
  high: "check the area it was measured on",
  source: cite("SCHUCH_BURGER", "container basis, 1 to 4.7 for high water users"),
} as const;

export const AREA_PER_PLANT_PARAM = {
  quantity: "area",
  symbol: "A",
  above: 0,
  about: "Area per plant on which the coefficient is based",
} as const satisfies NumberParam;

export const CROP_COEFFICIENT_PARAM = {
  quantity: "factor",
  symbol: "Kc",
  above: 0,
  about: "Crop coefficient, on the same area",
  usual: CROP_COEFFICIENT_USUAL,
} as const satisfies NumberParam;

export const COVER_FACTOR_PARAM = {
  quantity: "factor",
  symbol: "c",
  above: 0,
  default: 1,
  about: "Measured demand under cover over demand outside",
  usual: { us: [0.3, 1.2], metric: [0.3, 1.2], source: cite("PRACTICE", "shade and plastic houses") },
} as const satisfies NumberParam;

export const SAME_AREA =
  "The area must be the one for which the crop coefficient was measured: bed area per plant, canopy or pot top.";
