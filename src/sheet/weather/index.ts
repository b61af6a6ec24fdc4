/** Weather tables brought into a workbook; loaded when one is first asked for. */
export { arrange, withoutUnit } from "./arrange";
export type { Arranged, Choice, WantedField } from "./arrange";
export { isoDate } from "./dates";
export type { DateOrder } from "./dates";
export { DATE_PARTS, FIELDS, isDatePart } from "./fields";
export type { ColumnUse, Field } from "./fields";
export { recognise } from "./recognise";
export type { Recognised } from "./recognise";
export { NoTable, readTable } from "./readTable";
export type { TextTable } from "./readTable";
export { details, summary } from "./reportWords";
export { unitsOf } from "./units";
