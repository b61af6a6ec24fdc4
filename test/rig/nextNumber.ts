/** The double next to a number, above or below: just across a limit. */

function neighbour(value: number, step: 1n | -1n): number {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, value);
  view.setBigInt64(0, view.getBigInt64(0) + step);
  return view.getFloat64(0);
}

export function nextAbove(value: number): number {
  if (value === 0) return Number.MIN_VALUE;
  return neighbour(value, value > 0 ? 1n : -1n);
}

export function nextBelow(value: number): number {
  return -nextAbove(-value);
}
