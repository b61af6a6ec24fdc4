/** What CHECK_ANSWER says, in built-in functions. The answer is a cell; the right answer is not 0. */
export function plainMark(answer: string, right: string, relative: string, absolute: string): string {
  const off = `ABS(${answer} - ${right})`;
  const tolerance = `MAX(${relative} * ABS(${right}), ${absolute})`;
  const judged = `IF(${off} <= MAX(${tolerance}, ${halfOfLastDigit(answer)}) * ${DUST}, "right", IF(${off} <= 5 * ${tolerance} * ${DUST}, "close", "wrong"))`;
  const isNumber = `IF(ISNUMBER(${answer}), ${judged}, "not answered: type a number, without its unit")`;
  return `IF(OR(${answer} = "", ${answer} = 0), "not answered", ${isNumber})`;
}

/** 2.805 is 2 % from 2.75 although its double lies a hair beyond. */
const DUST = "1.000000001";
const MOST_DECIMALS = 5;

/** Half a unit of the last digit typed, if two or more were typed; else 0. */
function halfOfLastDigit(answer: string, decimals = 0): string {
  if (decimals > MOST_DECIMALS) return "0";
  const least = 10 ** (1 - decimals);
  const half = (0.5 * 10 ** -decimals).toFixed(decimals + 1);
  const longer = halfOfLastDigit(answer, decimals + 1);
  return `IF(${answer} = ROUND(${answer}, ${decimals}), IF(ABS(${answer}) >= ${Number(least.toFixed(5))}, ${half}, 0), ${longer})`;
}
