/**
 * A draw that is the same for ever on every host: integer arithmetic on the bytes of a text, nothing else. The number of
 * the algorithm is part of the text, so that a better one could be added without changing what stands in old sheets.
 */
const ALGORITHM = 1;
/** Stands between the parts, so that "a" and "bc" differ from "ab" and "c". */
const SEPARATOR = "\u001f";

const FNV_START = 0x811c9dc5;
const FNV_PRIME = 0x01000193;
const GOLDEN = 0x9e3779b9;
const WORDS = 2 ** 32;

/** UTF-8, written out, since not every host has an encoder. */
function bytesOf(text: string): number[] {
  return Array.from(text).flatMap((character) => {
    const code = character.codePointAt(0) as number;
    if (code < 0x80) return [code];
    if (code < 0x800) return [0xc0 | (code >> 6), 0x80 | (code & 63)];
    if (code < 0x10000) return [0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
    return [0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
  });
}

/** FNV-1a over the bytes (Fowler, Noll and Vo), 32 bits. */
function hashOf(text: string): number {
  let hash = FNV_START;
  for (const byte of bytesOf(text)) hash = Math.imul(hash ^ byte, FNV_PRIME);
  return hash >>> 0;
}

/** Spreads every bit of a word over all others: the finisher of MurmurHash3 (A. Appleby). */
function mixed(word: number): number {
  let bits = word;
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b);
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35);
  return (bits ^ (bits >>> 16)) >>> 0;
}

/** A whole number from 0 to below `count`, all equally likely: words beyond the last full round are drawn again. */
export function drawBelow(count: number, parts: readonly string[]): number {
  if (!(count >= 1 && count <= WORDS)) throw new Error(`a draw below ${count} cannot be fair`);
  const start = hashOf([...parts, String(ALGORITHM)].join(SEPARATOR));
  const fair = WORDS - (WORDS % count);
  for (let attempt = 1; ; attempt += 1) {
    const word = mixed((start + Math.imul(attempt, GOLDEN)) >>> 0);
    if (word < fair) return word % count;
  }
}
