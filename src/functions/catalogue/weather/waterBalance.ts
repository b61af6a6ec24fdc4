import { cite, defineFunction, type CellAnswer, type NumbersParam, type Show } from "../../../kernel";
import { DEPLETION_USUAL } from "../container/substrate";

const DAILY = {
  kind: "numbers",
  quantity: "any one unit",
  atLeast: 0,
  column: true,
} as const satisfies Partial<NumbersParam>;

/** A deficit that misses the trigger by float dust alone, as a part of the capacity, has reached it. */
const DUST = 1e-9;

interface Day {
  readonly before: number;
  readonly et: number;
  readonly rain: number;
  readonly irrigation: number;
}

function showFirstDay({ before, et, rain, irrigation }: Day, capacity: number, trigger: number, show: Show): void {
  const unit = "any one unit";
  show("u", et, unit, "Use of the first day");
  show("p", rain, unit, "Rain of the first day");
  show("w", irrigation, unit, "Irrigation of the first day");
  const reached = show("x = D0 + u - p - w", before + et - rain - irrigation, unit, "Deficit, if it had no limits");
  show("drain = MAX(0, -1 * x)", Math.max(0, -reached), unit, "Beyond full: drainage");
  show("short = MAX(0, x - C)", Math.max(0, reached - capacity), unit, "Beyond empty: use that is not met");
  show("D = MAX(0, MIN(x, C))", Math.max(0, Math.min(reached, capacity)), unit, "Deficit at the end of the day");
  show("T = f * C", trigger, unit, "Deficit at which to irrigate");
}

export const waterBalance = defineFunction({
  name: "WATER_BALANCE",
  group: "Weather and demand",
  summary: "Water that the pot lacks, day by day, and when to irrigate",
  formula: "D = D before + ET - rain - irrigation, kept between 0 and capacity",
  source: cite("FAO56", "Eq. 85, root-zone depletion, with no runoff and no capillary rise"),
  assumptions: [
    "All in one unit per pot (volumes: PLANT_WATER_DEMAND, EFFECTIVE_RAIN, irrigation that the pot kept), or all as depths over one and the same area. Never depths over different areas.",
    "The whole use of the day counts as ET, also from a dry pot; what the pot could not give is unmet. ET = change of deficit + rain + irrigation - drainage + unmet, every day.",
    "The note belongs to the end of the day: irrigate before the next one. What is given is entered the day it is given; nothing is irrigated by itself.",
    "A blank rain or irrigation is 0. A blank ET is an error that names the row; it may count as 0, so count the cells.",
  ],
  params: {
    et: { ...DAILY, symbol: "ET", blanks: "refused", about: "Use of each day, one row a day" },
    rain: { ...DAILY, symbol: "P", blanks: "zero", about: "Rain that counts on each day; a blank is 0" },
    irrigation: {
      ...DAILY,
      symbol: "I",
      blanks: "zero",
      about: "Irrigation that the pot kept on each day; a blank is 0",
    },
    capacity: {
      quantity: "any one unit",
      symbol: "C",
      above: 0,
      about: "Available water of the full pot",
    },
    trigger_fraction: {
      quantity: "fraction",
      symbol: "f",
      above: 0,
      atMost: 1,
      default: 0.4,
      about: "Part of the capacity that may be used before it is time to irrigate",
      usual: DEPLETION_USUAL,
    },
    start_deficit: {
      quantity: "any one unit",
      symbol: "D0",
      atLeast: 0,
      default: 0,
      about: "Deficit before the first day; 0 is a full pot",
    },
  },
  result: {
    header: true,
    table: [
      { name: "day", quantity: "count" },
      { name: "deficit", quantity: "any one unit" },
      { name: "drainage", quantity: "any one unit" },
      { name: "unmet", quantity: "any one unit" },
      { name: "note", quantity: "text" },
    ],
    about: 'One row a day: deficit at its end, drainage, unmet use, and "irrigate" where the trigger is reached',
  },
  examples: [
    {
      given: { et: [[0.5], [0.7], [0.8]], rain: [[0], [0], [0]], irrigation: [[0], [0.9], [0]], capacity: 1.5 },
      gives: [
        ["day", "deficit", "drainage", "unmet", "note"],
        [1, 0.5, 0, 0, ""],
        [2, 0.3, 0, 0, ""],
        [3, 1.1, 0, 0, "irrigate"],
      ],
      from: cite("ARITHMETIC", "trigger 0.4 x 1.5 = 0.6 L; 0.5; 0.5 + 0.7 - 0.9; 0.3 + 0.8"),
    },
    {
      given: {
        et: [[6], [6], [6], [90], [90]],
        rain: [[0], [0], [80], [0], [0]],
        irrigation: [[null], [null], [null], [null], [null]],
        capacity: 160,
        start_deficit: 55,
      },
      gives: [
        ["day", "deficit", "drainage", "unmet", "note"],
        [1, 61, 0, 0, ""],
        [2, 67, 0, 0, "irrigate"],
        [3, 0, 7, 0, ""],
        [4, 90, 0, 0, "irrigate"],
        [5, 160, 0, 20, "irrigate"],
      ],
      from: cite(
        "ARITHMETIC",
        "trigger 64 mm; 55 + 6; + 6; 67 + 6 - 80 = -7 drains; 0 + 90; 90 + 90 is 20 more than 160",
      ),
    },
  ],
  mistakes: [],
  seeAlso: ["PLANT_WATER_DEMAND", "EFFECTIVE_RAIN", "ET0_TABLE", "AVAILABLE_WATER", "IRRIGATION_INTERVAL"],
  caution:
    "A balance drifts: set the deficit anew from a weighed pot every week or two, and walk the block on hot days whatever the sheet says.",
  compute({ et, rain, irrigation, capacity, trigger_fraction, start_deficit }, show, { refuse }) {
    if (start_deficit > capacity) {
      throw refuse("start_deficit", start_deficit, `it must be capacity (${capacity}) or less`);
    }
    const trigger = trigger_fraction * capacity;
    const first = { before: start_deficit, et: et[0] ?? 0, rain: rain[0] ?? 0, irrigation: irrigation[0] ?? 0 };
    showFirstDay(first, capacity, trigger, show);
    const rows: CellAnswer[][] = [["day", "deficit", "drainage", "unmet", "note"]];
    let deficit = start_deficit;
    for (let day = 0; day < et.length; day += 1) {
      const reached = deficit + (et[day] as number) - (rain[day] as number) - (irrigation[day] as number);
      deficit = Math.max(0, Math.min(reached, capacity));
      const isDue = deficit >= trigger - DUST * capacity;
      rows.push([day + 1, deficit, Math.max(0, -reached), Math.max(0, reached - capacity), isDue ? "irrigate" : ""]);
    }
    return rows;
  },
});
