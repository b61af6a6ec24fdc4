import { BOX_COLOUR, LOOKS, NUMBER_FORMATS } from "../workbooks/looks";
import type { Cell, StyleName } from "../workbooks/model";
import { FORMAT_NAMES, STYLE_NAMES } from "../workbooks/model";

/** Beside words that take several lines, what belongs to them stands level with them. */
const EVERY = { verticalAlign: "middle" };
const WRAPPING = { wrapping: "wrap" };

function styleOf(name: StyleName): object {
  const { text, fill, bold, italic, size, centred, wraps } = LOOKS[name];
  // The overall check heads a wide column: centred it would lie beyond the edge of a narrow window.
  const isCentred = centred && name !== "check";
  return {
    ...EVERY,
    textColor: `#${text}`,
    ...(fill && { fillColor: `#${fill}` }),
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(size && { fontSize: size }),
    ...(isCentred && { align: "center" }),
    ...(wraps && WRAPPING),
  };
}

const EDGE = { style: "thin", color: `#${BOX_COLOUR}` };
const BOX_ID = 1;

/** The engine refers to styles, formats and borders by number, from 1. */
export const BORDERS = { [BOX_ID]: { top: EDGE, bottom: EDGE, left: EDGE, right: EDGE } };
export const FORMAT_TABLE = numbered(FORMAT_NAMES, NUMBER_FORMATS);
// Each style, one for a cell without style, and the same once more with the words going on in further lines.
const PLAIN = STYLE_NAMES.length + 1;
const WRAPPED = STYLE_NAMES.length + 1;
export const STYLE_TABLE: Readonly<Record<number, object>> = Object.fromEntries(
  [...STYLE_NAMES.map(styleOf), EVERY].flatMap((style, at) => [
    [at + 1, style],
    [at + 1 + WRAPPED, { ...style, ...WRAPPING }],
  ]),
);

export function styleNumber({ style, wraps }: Cell): number {
  return (style ? numberOf(STYLE_NAMES, style) : PLAIN) + (wraps ? WRAPPED : 0);
}

export function formatNumber({ format }: Cell): number | undefined {
  return format && numberOf(FORMAT_NAMES, format);
}

export function borderNumber({ style }: Cell): number | undefined {
  return style === "input" ? BOX_ID : undefined;
}

function numbered<Name extends string, Value>(
  names: readonly Name[],
  values: Readonly<Record<Name, Value>>,
): Readonly<Record<number, Value>> {
  return Object.fromEntries(names.map((name) => [numberOf(names, name), values[name]]));
}

function numberOf<Name extends string>(names: readonly Name[], name: Name): number {
  return names.indexOf(name) + 1;
}
