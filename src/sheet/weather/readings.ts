/** The numbers of a weather table, and what stands in their place where there is none. */

export type Reading =
  | { readonly kind: "number"; readonly value: number; readonly isFlagged: boolean }
  /** Blank, or a word or number that stands for a missing reading. */
  | { readonly kind: "missing" }
  /** Rain too little to measure. */
  | { readonly kind: "trace" }
  | { readonly kind: "unreadable" };

const MISSING_WORDS = /^(|-+|\.+|\*+|\?+|na|n\/a|nan|null|none|nil|m|miss(ing)?|nd|no data|#n\/a|#null!)$/i;
const TRACE_WORDS = /^(t|tr|trace)$/i;
/** No weather reads so, and data sets write them where nothing was measured. */
const MISSING_NUMBERS = [9999, 9999.9, 99999, 99999.9, 999.9, 999.99];
const LOWEST_POSSIBLE = -99;

export function readNumber(text: string, hasDecimalComma: boolean): Reading {
  const bare = text.trim();
  if (MISSING_WORDS.test(bare)) return { kind: "missing" };
  if (TRACE_WORDS.test(bare)) return { kind: "trace" };
  const plain = hasDecimalComma ? bare.replace(/\./g, "").replace(",", ".") : bare.replace(/,(?=\d{3}(\D|$))/g, "");
  const [, number, flag] =
    /^([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)\s*([a-z*#]?)$/i.exec(plain.replace("−", "-")) ?? [];
  if (number === undefined) return { kind: "unreadable" };
  const value = Number(number);
  if (value <= LOWEST_POSSIBLE || MISSING_NUMBERS.includes(value)) return { kind: "missing" };
  return { kind: "number", value, isFlagged: flag !== "" };
}
