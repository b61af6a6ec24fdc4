import type { NumberParam } from "../../../kernel";

const AIR_TEMPERATURE = {
  quantity: "temperature",
  atLeast: -90,
  atMost: 60,
  guard: "no air temperature outside has been recorded beyond these; a guard against a wrong unit",
} as const;

export const TMAX_PARAM = {
  ...AIR_TEMPERATURE,
  symbol: "Tmax",
  about: "Highest air temperature of the day; 0 is a value, so leave no blank",
  hint: "check the units",
} as const satisfies NumberParam;

export const TMIN_PARAM = {
  ...AIR_TEMPERATURE,
  symbol: "Tmin",
  about: "Lowest air temperature of the day; 0 is a value, so leave no blank",
  hint: "check the units",
} as const satisfies NumberParam;
