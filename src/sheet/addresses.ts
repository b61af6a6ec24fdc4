/** Parts of an address in A1 form, counted from 0 as the engine counts. */

export function columnOf(address: string): number {
  const letters = address.replace(/[^A-Za-z]/g, "").toUpperCase();
  return [...letters].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

export function rowOf(address: string): number {
  return Number(address.replace(/[^0-9]/g, "")) - 1;
}

/** The engine keeps its own ranges without dollar signs. */
export const plain = (range: string): string => range.replaceAll("$", "");
