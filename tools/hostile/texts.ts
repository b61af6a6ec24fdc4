/** Words of programmers in what people read. */
import { cellsOf, isCellError, type HostileCall, type HostileInput } from "./call";

const PROGRAMMERS_WORDS = ["NaN", "undefined", "Infinity", "[object"] as const;

/** Whether an input says the word itself, or is the number that is written so: an error may show what stood in the cell. */
function saidByInput(word: string, input: HostileInput): boolean {
  if (typeof input === "number") return String(input).includes(word);
  return typeof input === "string" && input.toLowerCase().includes(word.toLowerCase());
}

/** What is wrong with a text that came out of a call; null where nothing is. */
export function textFault({ args }: HostileCall, text: string): string | null {
  for (const word of PROGRAMMERS_WORDS) {
    if (!text.includes(word)) continue;
    const isTheirs = cellsOf(args).some((cell) => !isCellError(cell) && saidByInput(word, cell));
    if (!isTheirs) return `says ${word}: ${text.slice(0, 300)}`;
  }
  return text.trim() === "" && text !== "" ? "is made of blanks" : null;
}
