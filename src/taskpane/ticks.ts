const STEPS = [1, 2, 5, 10];
const ROUNDING = 1e-9;

/** Round numbers between two ends, about as many as wanted. */
export function ticks(low: number, high: number, wanted: number): readonly number[] {
  const rough = (high - low) / wanted;
  if (!(rough > 0) || !Number.isFinite(rough)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * (STEPS.find((each) => each * power >= rough) ?? 10);
  const found: number[] = [];
  for (let count = Math.ceil(low / step - ROUNDING); count <= high / step + ROUNDING; count += 1)
    found.push(Number((count * step).toPrecision(12)));
  return found;
}
