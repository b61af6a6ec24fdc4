import type { StarterBuilder } from "../../kit";
import type { Days } from "./days";
import type { DemandInputs } from "./inputs";
import type { Sums } from "./result";
import type { Readings } from "./weather";
import type { Weighed } from "./weighed";
import type { Pot } from "./work";

interface Parts {
  readonly given: DemandInputs;
  readonly read: Readings;
  readonly pot: Pot;
  readonly days: Days;
  readonly weighed: Weighed;
  readonly sums: Sums;
}

export const MISSING_DAYS = "Every day up to the last has its reading";

export function addChecks(kit: StarterBuilder, { given, read, pot, days, weighed, sums }: Parts): void {
  const { date, reading, et, use } = days.column as Record<"date" | "reading" | "et" | "use", unknown>;
  const usual = kit.list(`highest usual ET, ${kit.pick("in/day", "mm/day")}`, [kit.pick(0.5, 12)]);
  kit.check(
    MISSING_DAYS,
    `${sums.filled} = 0`,
    "Days without a reading were filled from the days around: Result counts them, Days marks them. Type the readings when you have them.",
  );
  kit.check(
    "No gap is too long to be filled from the days around",
    `COUNTIF(${String(reading)}, "guessed") = 0`,
    "A gap of a week or more stands on the mean of all days. Find the readings elsewhere.",
  );
  kit.check(
    "Each day is the day after the one above",
    `AND(COUNTIF(${String(reading)}, "date?") = 0, MAX(${String(date)}) - MIN(${String(date)}) + 1 = COUNT(${String(date)}))`,
    "A day is left out, twice there or out of order: a left-out day needs a row with its date, readings blank.",
  );
  kit.check(
    "Every day has its rain",
    `COUNT(${read["rain"]!}) >= today_row`,
    "A blank counts as no rain: type 0 where none fell, so that a forgotten gauge is seen.",
  );
  kit.check(
    "Every day has its irrigation",
    `COUNT(${read["irrigation"]!}) >= today_row`,
    "A blank counts as no irrigation: type 0 on a day without.",
  );
  kit.check(
    "Reference ET is what the trade sees",
    `AND(today_row > 0, MAX(${String(et)}) > 0, MAX(${String(et)}) <= ${usual.cell(0)})`,
    "Look for temperatures in the other unit, a week's sum typed as a day, or a station's ET that is already x a crop coefficient.",
  );
  kit.check(
    "A full pot lasts the thirstiest day",
    `MAX(${String(use)}) <= ${pot.available}`,
    "The plant uses more in a day than the pot holds for it: two irrigations or more on such days, or a larger pot.",
  );
  kit.check(
    "The pot could always give what the plant used",
    `${sums.unmet} = 0`,
    "The balance ran dry: irrigation was too little or is not typed in, or the pot holds more than the sheet thinks. Weigh one.",
  );
  kit.check(
    "The balance closes",
    `ABS(${sums.use} - (${sums.last} - ${given.start} + ${sums.rain} + ${sums.kept} - ${sums.drained} + ${sums.unmet})) < 0.000000001 * (1 + ${sums.use})`,
    "Use must be change of the deficit + rain + irrigation - drained + unmet. A formula on Days was changed: copy it again from the first day.",
  );
  kit.check(
    "Pots were weighed, and the scale agrees with the weather",
    `AND(COUNTIF(${weighed["word"]!}, "OK") > 0, COUNTIF(${weighed["word"]!}, "LOOK") = 0)`,
    "Believe the scale: correct the crop coefficient, the area or the readings. A dry pot drinks less than it would.",
  );
}
