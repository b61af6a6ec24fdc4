/** The kinds of input that the calls are made of, in the words of the report. */

/** Of one cell, whatever the argument is. */
export const CELL_KINDS = [
  "empty cell",
  "left out in the middle",
  "empty text",
  "text of blanks",
  "TRUE or FALSE",
  "zero",
  "negative zero",
  "not a number",
  "infinity",
  "huge number",
  "tiny number",
  "denormal number",
  "negative number",
  "date",
  "date as text",
  "number as text",
  "text",
  "name of a function as text",
  "quotes, markup, line breaks",
  "text of 32,767 letters",
  "text like an error",
  "cell in error",
  "data type of the host",
] as const;

/** Of a whole argument. */
export const RANGE_KINDS = [
  "range of one cell",
  "empty range",
  "range of blanks",
  "range of numbers",
  "wide range",
  "range of mixed kinds",
  "one hostile cell in a range",
] as const;

/** Made from what the argument's own entry says. */
export const ARGUMENT_KINDS = [
  "limit, or just beyond it",
  "fraction where a whole number belongs",
  "right word in odd case",
  "wrong word",
  "wrong word for the units",
] as const;

/** Of a call. */
export const CALL_KINDS = [
  "valid, sizes of a sheet",
  "valid, any size",
  "every argument hostile",
  "arguments in another order",
  "too few arguments",
  "too many arguments",
  "name of no function",
  "very long ranges",
] as const;

export const KINDS = [...CELL_KINDS, ...RANGE_KINDS, ...ARGUMENT_KINDS, ...CALL_KINDS] as const;

export type CellKind = (typeof CELL_KINDS)[number];
export type Kind = (typeof KINDS)[number];
