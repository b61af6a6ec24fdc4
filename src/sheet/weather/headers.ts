/** What a column of a weather table is, by its heading. */
import type { ColumnUse } from "./fields";
import type { WeatherUnit } from "./units";
import { unitSpelt } from "./units";

export interface Heading {
  readonly use?: ColumnUse;
  /** More than one where the text leaves it open. */
  readonly units: readonly WeatherUnit[];
}

/** Words that headings run together: `MaxTemp`, `tempmax`. */
const JOINED = [
  "maximum|max|minimum|min|average|avg|mean|total|sum|highest|lowest|high|low|temperature|temp|precipitation|precip",
  "rainfall|rain|windspeed|wind|speed|solar|shortwave|radiation|rad|relative|rel|humidity|hum|rh|dewpoint|dew|soil|gust",
  "evapotranspiration|tair|air|daily|date|time|year|month|day|eto|et0|irrigation|sky|direction|dir|snow|t",
].join("|");
const ALL_JOINED = new RegExp(`^(?:${JOINED})+$`);
const EACH_JOINED = new RegExp(JOINED, "g");

const HIGH = ["max", "maximum", "high", "highest", "hi", "mx"];
const LOW = ["min", "minimum", "low", "lowest", "lo", "mn"];
const TEMPERATURE = ["temp", "temperature", "t", "tair", "ta", "t2m", "airtemp"];
const NOT_OF_THE_AIR = [
  "dew",
  "dewpoint",
  "soil",
  "wet",
  "wetbulb",
  "apparent",
  "feels",
  "ground",
  "grass",
  "heat",
  "chill",
  "water",
  "leaf",
  "wind",
  "rh",
  "humidity",
  "hum",
  "index",
  "depth",
];
const AT_A_TIME = [
  "hour",
  "hours",
  "hr",
  "time",
  "at",
  "flag",
  "qc",
  "quality",
  "attributes",
  "count",
  "normal",
  "dep",
  "departure",
];

interface Rule {
  readonly use: ColumnUse;
  /** One of each line. */
  readonly all: readonly (readonly string[])[];
  readonly none?: readonly string[];
}

const RULES: readonly Rule[] = [
  { use: "tmax", all: [["tmax", "tx", "tmx"]], none: NOT_OF_THE_AIR },
  { use: "tmin", all: [["tmin", "tn", "tmn"]], none: NOT_OF_THE_AIR },
  { use: "tmax", all: [TEMPERATURE, HIGH], none: [...NOT_OF_THE_AIR, ...LOW] },
  { use: "tmin", all: [TEMPERATURE, LOW], none: [...NOT_OF_THE_AIR, ...HIGH] },
  {
    use: "rh_max",
    all: [
      ["rh", "humidity", "hum", "rhmax", "relhum"],
      [...HIGH, "rhmax"],
    ],
    none: ["specific", "absolute"],
  },
  {
    use: "rh_min",
    all: [
      ["rh", "humidity", "hum", "rhmin", "relhum"],
      [...LOW, "rhmin"],
    ],
    none: ["specific", "absolute"],
  },
  {
    use: "rain",
    all: [
      [
        "rain",
        "rainfall",
        "precip",
        "precipitation",
        "prcp",
        "ppt",
        "pcp",
        "pcpn",
        "rr",
        "prectot",
        "prectotcorr",
        "rainfallamount",
      ],
    ],
    none: [
      "hours",
      "probability",
      "prob",
      "chance",
      "intensity",
      "rate",
      "duration",
      "cumulative",
      "accumulated",
      "ytd",
      "days",
      "type",
      "snow",
    ],
  },
  {
    use: "solar",
    all: [
      [
        "solar",
        "srad",
        "sol",
        "ghi",
        "shortwave",
        "swdown",
        "sw",
        "dwn",
        "rs",
        "insolation",
        "radiation",
        "rad",
        "globrad",
      ],
    ],
    none: ["net", "longwave", "lw", "uv", "par", "clear", "clrsky", "diffuse", "direct", ...HIGH, ...LOW],
  },
  {
    use: "wind",
    all: [["wind", "windspeed", "ws", "wspd", "wnd", "u2", "awnd", "ws2m", "wdsp"]],
    none: ["gust", "dir", "direction", "wd", "run", "chill", "peak", ...HIGH, ...LOW],
  },
  {
    use: "et",
    all: [["eto", "et0", "etos", "evapotranspiration", "evapotrans", "pet", "et"]],
    none: ["etr", "etrs", "actual", "crop", "alfalfa", "etc", "cumulative", "tall"],
  },
  { use: "irrigation", all: [["irrigation", "irrig", "applied", "watered"]] },
  { use: "day of the year", all: [["doy", "julian", "jday", "jd", "dayofyear", "yday"]] },
  {
    use: "date",
    all: [["date", "datetime", "dates", "yyyymmdd", "yearmoda", "timestamp"]],
    none: ["update", "modified"],
  },
  { use: "year", all: [["year", "yr", "yyyy"]] },
  { use: "month", all: [["month", "mo", "mon"]] },
  { use: "day", all: [["day", "dy", "dd", "dom"]] },
  { use: "date", all: [["time", "valid", "dt"]] },
];

export function readHeading(text: string): Heading {
  const { words, unit } = split(text);
  const tokens = tokensOf(words);
  const stated = unit === undefined ? suffixUnit(tokens) : { units: unitSpelt(unit), tokens };
  const use = useOf(stated.tokens);
  return { ...(use && { use }), units: stated.units };
}

/** `Max Temp (F)`, `Rain [mm]`, `temp_max, C`, `tmax: °C` */
function split(text: string): { words: string; unit?: string } {
  const bracket = /^(.*?)\s*[([{]\s*([^)\]}]*?)\s*[)\]}]\s*(.*)$/s.exec(text);
  if (bracket) return { words: `${bracket[1]!} ${bracket[3]!}`, unit: bracket[2]! };
  const after = /^(.+?)\s*[,:;/]\s*([^,:;]+)$/s.exec(text);
  if (after && unitSpelt(after[2]!).length > 0) return { words: after[1]!, unit: after[2]! };
  const degree = /^(.+?)\s*[°º]\s*([FCfc])\s*$/.exec(text);
  return degree ? { words: degree[1]!, unit: degree[2]! } : { words: text };
}

const LONGEST_UNIT = 5;

/** `rain_mm`, `WindSpeedMph`, `T_MAX_F`, `SRAD MJ m-2 d-1` */
function suffixUnit(tokens: readonly string[]): { units: readonly WeatherUnit[]; tokens: readonly string[] } {
  for (let length = Math.min(LONGEST_UNIT, tokens.length - 1); length > 0; length -= 1) {
    const tail = tokens.slice(-length);
    const withPowers = tail.join(" ").replace(/ (\d)(?=\s|$)/g, "-$1");
    const units = [tail.join("/"), withPowers].map(unitSpelt).find((found) => found.length > 0);
    if (units) return { units, tokens: tokens.slice(0, -length) };
  }
  return { units: [], tokens };
}

function tokensOf(text: string): readonly string[] {
  return text
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replace(/([A-Z]{2,})([A-Z][a-z])/g, "$1 $2")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}%]+/gu, " ")
    .trim()
    .split(" ")
    .flatMap((word) => (ALL_JOINED.test(word) ? (word.match(EACH_JOINED) ?? [word]) : [word]))
    .filter((word) => word !== "");
}

function useOf(tokens: readonly string[]): ColumnUse | undefined {
  const has = (words: readonly string[]) => words.some((word) => tokens.includes(word));
  return RULES.find(({ use, all, none = [] }) => all.every(has) && !has(none) && !(use !== "date" && has(AT_A_TIME)))
    ?.use;
}
