import type { Growing } from "../../workbooks/model";
import type { UnitKind } from "./units";

export type Field = Growing["fields"][number]["field"];

/** What a weather table may bring, in the words of the dialog, and what it is measured in. */
export const FIELDS: Readonly<Record<Field, { readonly title: string; readonly kind: UnitKind | null }>> = {
  date: { title: "date", kind: null },
  tmax: { title: "highest temperature", kind: "temperature" },
  tmin: { title: "lowest temperature", kind: "temperature" },
  rh_max: { title: "highest relative humidity", kind: "humidity" },
  rh_min: { title: "lowest relative humidity", kind: "humidity" },
  wind: { title: "wind speed", kind: "speed" },
  solar: { title: "solar radiation", kind: "radiation" },
  rain: { title: "rain", kind: "depth" },
  irrigation: { title: "irrigation of one pot", kind: "volume" },
  et: { title: "reference ET (grass)", kind: "depth" },
};

/** A date may be spread over several columns. */
export type DatePart = "year" | "month" | "day" | "day of the year";
export type ColumnUse = Field | DatePart;

export const DATE_PARTS: readonly DatePart[] = ["year", "month", "day", "day of the year"];

export const isDatePart = (use: ColumnUse): use is DatePart => (DATE_PARTS as readonly string[]).includes(use);
