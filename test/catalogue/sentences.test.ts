/**
 * Whole sentences of refusals that depend on several arguments, and answers on the very edge of such a rule. The words
 * are those of the functions' own help; the numbers are arithmetic, worked beside each, and the rows of a sheet those of the
 * host's published limits, 1,048,576.
 */
import { answerOf, refusalOf, tableOf } from "../rig/calls";

const column = (...cells: readonly unknown[]): unknown[][] => cells.map((cell) => [cell]);

const REFUSED: readonly [name: string, byName: Readonly<Record<string, unknown>>, sentence: string][] = [
  [
    "PLANT_SPACING_AREA",
    { in_row: 12, between_rows: 10, pattern: "triangle", units: "us" },
    'between_rows is 10; it must be blank or in_row (12) in a triangle of equal sides; where the rows\' distance was measured, take "square"',
  ],
  [
    // 80 + 60 - 20 = 120 mL of air and water in 100 mL.
    "POROMETER_TEST",
    { core_volume: 100, drained_volume: 80, wet_weight: 60, dry_weight: 20 },
    "core_volume is 100; it must be drained_volume + wet_weight - dry_weight or more, since air and water fit into it; were two numbers swapped, or is the core in wet_weight?",
  ],
  [
    "BOOM_PLAN",
    {
      section_names: column(""),
      depths: column(null),
      lengths: column(null),
      boom_flow: 10,
      travel_speed: 20,
      swath_width: 20,
      units: "us",
    },
    "section_names is blank; it must have a section with its depth and length",
  ],
  [
    "ZONE_SEQUENCE",
    { zone_names: column(""), minutes: column(null), flows: column(null), supply_flow: 10, start_time: 0 },
    "zone_names is blank; it must have a zone with its minutes and its flow",
  ],
  [
    "FLOOD_SCHEDULE",
    {
      bench_names: column(""),
      flood_volumes: column(null),
      uptakes: column(null),
      bench_flow: 10,
      benches_at_once: 1,
      soak_minutes: 5,
      drain_minutes: 10,
      start_time: 0,
      start_tank: 500,
      next: "after_fill",
    },
    "bench_names is blank; it must have a bench with its volume and its uptake",
  ],
  ["PAYBACK_YEARS", { investment: 1000, annual_savings: [[0]] }, "annual_savings never pay the investment back"],
  [
    // 40 + 40 never reach 100.
    "PAYBACK_YEARS",
    { investment: 100, annual_savings: column(40, 40) },
    "annual_savings never pay the investment back",
  ],
  [
    "WATER_COST",
    { volume: 10, tier_limits: column(5, "ten"), tier_prices: column(1, 2) },
    'tier_limits is the text "ten" in row 2 of the range; it must be 0 or more (same unit): a number, not text',
  ],
  [
    "ACID_VOLUME",
    { alkalinity: 100, target_alkalinity: 120, acid_normality: 5, volume: 100, units: "us" },
    "target_alkalinity is 120, above alkalinity (100): acid only takes it down",
  ],
  ["BLEND_EC", { volumes: column(0, 0), ecs: column(1, 2) }, "volumes are all 0; there is nothing to mix"],
  [
    "BLEND_SHARE",
    { value_a: 2, value_b: 2, target: 2 },
    "value_a and value_b are both 2; the part of one changes nothing",
  ],
  [
    "SODIUM_ADSORPTION",
    { sodium: 10, calcium: 0, magnesium: 0, basis: "ppm" },
    "calcium and magnesium are both 0; the ratio has no bound in such a soft water",
  ],
  [
    "EMITTER_EXPONENT",
    { flow_1: 1, pressure_1: 10, flow_2: 2, pressure_2: 10 },
    "pressure_2 is 10; it must differ from pressure_1",
  ],
  [
    "TOTAL_DYNAMIC_HEAD",
    { lift: -30, outlet_pressure: 0, friction_head: 30, units: "us" },
    "lift, pressure and friction come to 0 or less; the source feeds the outlet without a pump",
  ],
  [
    "ET0_TABLE",
    { weather: column(46_023, 46_024), latitude: 38, elevation: 0, units: "us" },
    "weather is 1 column wide; it must have 3 columns (date, tmax, tmin) or 7 (date, tmax, tmin, rh_max, rh_min, wind, solar)",
  ],
  [
    "ET0_TABLE",
    { weather: [[46_023, 80, 60, 90]], latitude: 38, elevation: 0, units: "us" },
    "weather is 4 columns wide; it must have 3 columns (date, tmax, tmin) or 7 (date, tmax, tmin, rh_max, rh_min, wind, solar)",
  ],
  [
    "VAPOR_PRESSURE_DEFICIT",
    { tmax: 20, tmin: 25, rh_max: 90, rh_min: 40, units: "metric" },
    "tmin is 25; it must be tmax (20) or less",
  ],
  [
    "VAPOR_PRESSURE_DEFICIT",
    { tmax: 25, tmin: 20, rh_max: 40, rh_min: 90, units: "metric" },
    "rh_min is 90; it must be rh_max (40) or less (%)",
  ],
  [
    // The first pot of the log counts as any other: 5 out of 4.
    "LEACHING_SUMMARY",
    { leachates: column(5, 1), applieds: column(4, 4) },
    "leachates is 5; it must be 4 or less, the applieds of the same pot (number 1 of those counted); were the two columns swapped?",
  ],
];

describe("a refusal says the whole of it", () => {
  test.each(REFUSED)("%s %j", (name, byName, sentence) => {
    expect(refusalOf(name, byName).message).toBe(`${name}: ${sentence}`);
  });
});

test("a zone sequence of more rows than a sheet has is refused, with the most rounds that fit", () => {
  // A sheet has 1,048,576 rows, two of them for the header and the end of the round: 524,287 zones twice, not thrice.
  const names = Array.from({ length: 524_287 }, (_, zone) => [`zone ${zone}`]);
  const ones = names.map(() => [1]);
  const plan = { zone_names: names, minutes: ones, flows: ones, supply_flow: 1, start_time: 0 };
  expect(refusalOf("ZONE_SEQUENCE", { ...plan, cycles: 3 }).message).toBe(
    "ZONE_SEQUENCE: cycles is 3; it must be 2 or less: the table has a row for each zone and cycle",
  );
});

describe("whole columns of a sheet, a million rows of which two are written, are read as those two", () => {
  const SHEET_ROWS = 1_048_576;
  const whole = (...written: readonly unknown[]): unknown[][] => {
    const rows = Array.from({ length: SHEET_ROWS }, () => [null as unknown]);
    written.forEach((cell, row) => (rows[row] = [cell]));
    return rows;
  };

  test("ZONE_SEQUENCE", () => {
    const plan = { supply_flow: 30, start_time: 0.25, gap_minutes: 2 };
    const byHand = { zone_names: column("A", "B"), minutes: column(6, 20), flows: column(20, 30) };
    const wholeColumns = { zone_names: whole("A", "B"), minutes: whole(6, 20), flows: whole(20, 30) };
    expect(tableOf("ZONE_SEQUENCE", { ...wholeColumns, ...plan })).toEqual(
      tableOf("ZONE_SEQUENCE", { ...byHand, ...plan }),
    );
  });

  test("BOOM_PLAN", () => {
    const boom = { boom_flow: 19.2, travel_speed: 20, swath_width: 30, units: "us" };
    const byHand = { section_names: column("A", "B"), depths: column(0.3, 0.1), lengths: column(40, 20) };
    const wholeColumns = { section_names: whole("A", "B"), depths: whole(0.3, 0.1), lengths: whole(40, 20) };
    expect(tableOf("BOOM_PLAN", { ...wholeColumns, ...boom })).toEqual(tableOf("BOOM_PLAN", { ...byHand, ...boom }));
  });
});

describe("laminar flow is told with the formula that does not hold in it", () => {
  test.each([
    ["FRICTION_LOSS", { flow: 0.1, inside_diameter: 50, length: 100, units: "metric" }, "Hazen-Williams"],
    [
      "LATERAL_LOSS",
      { emitters: 2, emitter_flow: 1, emitter_spacing: 30, inside_diameter: 16, units: "metric" },
      "the formula of turbulent flow",
    ],
  ])("%s", (name, byName, formula) => {
    expect(refusalOf(name, byName).message).toContain(
      `below 2000), where ${formula} does not hold; the laminar law gives`,
    );
  });
});

describe("on the very edge", () => {
  test("an emitter that compensates fully has exponent 0, one in laminar flow exactly 1", () => {
    // ln(2 / 2) / ln(10 / 20) = 0; ln(1 / 2) / ln(10 / 20) = 1.
    expect(answerOf("EMITTER_EXPONENT", { flow_1: 2, pressure_1: 10, flow_2: 2, pressure_2: 20 })).toBe(0);
    expect(answerOf("EMITTER_EXPONENT", { flow_1: 1, pressure_1: 10, flow_2: 2, pressure_2: 20 })).toBe(1);
  });

  test("a pot dried down to its dry weight is no water left, and still an answer", () => {
    expect(answerOf("TARGET_WEIGHT", { drained_weight: 100, dry_weight: 50, fraction: 0.5, basis: "total" })).toBe(50);
  });

  test("an unnamed section with text for a depth is a faulty row, one without any cell is none", () => {
    const rows = tableOf("BOOM_PLAN", {
      section_names: column("4 in", "", ""),
      depths: column(0.3, "deep", null),
      lengths: column(40, null, null),
      boom_flow: 19.2,
      travel_speed: 20,
      swath_width: 30,
      units: "us",
    });
    expect(rows).toHaveLength(4);
    expect(rows[2]?.[1]).toMatch(/^left out: depths is the text "deep"/);
  });

  test("savings that miss the investment by the dust of their last digits have paid it back", () => {
    // In decimals they come to 1,000,000.00, in binary to a hair less.
    const savings = [142857.21, 142872.01, 142886.81, 142901.61, 142916.41, 142931.21, 142634.74];
    expect(savings.reduce((sum, saving) => sum + saving, 0)).toBeLessThan(1_000_000);
    const years = answerOf("PAYBACK_YEARS", { investment: 1_000_000, annual_savings: column(...savings) });
    expect(years).toBeCloseTo(7, 9);
  });
});
