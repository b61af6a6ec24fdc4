/** Everything that the catalogue cites, once. A citation names a key of this table and the place in the source. */
interface Source {
  readonly text: string;
  /** How far the source can be trusted: read, recalled from memory, a definition, or the trade's habit. */
  readonly standing: "published" | "recalled" | "definition" | "common practice";
}

export const sources = {
  FAO56: {
    text: "Allen, R.G., Pereira, L.S., Raes, D. & Smith, M. (1998), Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
    standing: "published",
  },
  ENH1268: {
    text: "Million, J.B. & Yeager, T.H., Monitoring leaching fraction for irrigation scheduling in container nurseries, UF/IFAS Extension ENH1268",
    standing: "published",
  },
  EP458: {
    text: "Million, J.B. & Yeager, T.H., Measuring the sprinkler irrigation requirement of container-grown nursery plants, UF/IFAS Extension EP458",
    standing: "published",
  },
  SCHUCH_BURGER: {
    text: "Schuch, U.K. & Burger, D.W. (1997), Water use and crop coefficients of woody ornamentals in containers, Journal of the American Society for Horticultural Science 122(5):727-734 (abstract)",
    standing: "published",
  },
  SNA_BMP: {
    text: "Yeager, T. et al., Best management practices: guide for producing nursery crops, Southern Nursery Association",
    standing: "recalled",
  },
  AE194: {
    text: "UF/IFAS Extension AE194, uniformity of sprinkler irrigation systems",
    standing: "published",
  },
  NOTE_7IN: {
    text: "Public note on nursery containers: 7 in by 7 in holds 4.4 L or 1.17 US gallons",
    standing: "published",
  },
  CLEMSON: { text: "Clemson Extension, nursery irrigation notes", standing: "published" },
  ARITHMETIC: { text: "Plain arithmetic, worked out beside the number", standing: "definition" },
  DEFINITION: { text: "Definition", standing: "definition" },
  GEOMETRY: { text: "Geometry of a solid or plane figure", standing: "definition" },
  PRACTICE: { text: "Common practice, no source", standing: "common practice" },
  DCF: { text: "Time value of money, savings at year ends: standard engineering economics", standing: "definition" },
  MERRIAM_KELLER: {
    text: "Merriam, J.L. & Keller, J. (1978), Farm irrigation system evaluation: a guide for management",
    standing: "recalled",
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;

export interface Citation {
  readonly source: SourceKey;
  /** Chapter, equation, table or example; for a definition, what it says. */
  readonly place: string;
}

export function cite(source: SourceKey, place: string): Citation {
  return { source, place };
}

const STANDING_NOTE = { published: "", recalled: " (recalled, not read again)", definition: "", "common practice": "" };

export function citationText({ source, place }: Citation): string {
  const { text, standing } = sources[source];
  return `${text}${STANDING_NOTE[standing]}: ${place}`;
}
