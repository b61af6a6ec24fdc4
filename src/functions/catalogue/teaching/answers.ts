/** How a typed answer is held against the right one: tolerance, and the digits that were typed. */
import { isBlank, type CellInput } from "../../../kernel";

const DEFAULT_TOLERANCE = 0.02;
export const TOLERANCE_PARAM_DEFAULT = DEFAULT_TOLERANCE;

/** How many digits a number was typed with, and the place of the last of them. */
export function typedDigits(value: number): { readonly digits: number; readonly decimals: number } {
  const [mantissa = "", exponent = "0"] = String(Math.abs(value)).split("e");
  const decimals = (mantissa.split(".")[1] ?? "").length - Number(exponent);
  const digits = mantissa.replace(".", "").replace(/^0+/, "").length;
  return { digits, decimals };
}

const FEWEST_DIGITS = 2;
/** 2.805 is 2 % from 2.75 although its double lies a hair beyond. */
const DUST = 1e-9;

/** Whether the answer is this number, rounded to the digits that were typed: two or more. */
export function isRounded(answer: number, exact: number): boolean {
  const { digits, decimals } = typedDigits(answer);
  if (digits < FEWEST_DIGITS) return false;
  const half = 0.5 * 10 ** -Math.max(decimals, 0);
  return Math.abs(answer - exact) <= half * (1 + DUST);
}

/** Nothing is near a number that ran out. */
export function isWithin(answer: number, exact: number, relative: number, absolute = 0): boolean {
  if (!Number.isFinite(exact)) return false;
  return Math.abs(answer - exact) <= Math.max(relative * Math.abs(exact), absolute) * (1 + DUST);
}

/** An empty answer in any of the forms in which a host sends one; a 0 is one unless 0 is right. */
export function isUnanswered(answer: CellInput, correct: number): boolean {
  return isBlank(answer) || (answer === 0 && correct !== 0);
}
