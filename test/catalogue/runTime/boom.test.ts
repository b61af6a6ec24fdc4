/** The boom as a little model: by hand, and against a boom that is moved over its house step by step. */
import fc from "fast-check";
import { answerOf, refusalOf, stepsOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute } from "../../rig/evidence";
import { combined, quantity } from "../../rig/unitMath";
import { SEED } from "../../rig/validInputs";

const EXACT = 1e-12;
const MATHJS = "mathjs 15.2.0, units";

const size = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

interface Boom {
  readonly boom_flow: number;
  readonly travel_speed: number;
  readonly swath_width: number;
  readonly units: "us" | "metric";
}

interface Section {
  readonly name: string;
  readonly depth: unknown;
  readonly length: unknown;
}

type Row = readonly [section: string, passes: number, minutes: number, volume: number];

const METRIC: Boom = { boom_flow: 40, travel_speed: 10, swath_width: 8, units: "metric" };
const section = (name: string, depth: unknown, length: unknown): Section => ({ name, depth, length });

function argumentsOf(sections: readonly Section[], boom: Boom): Record<string, unknown> {
  return {
    section_names: sections.map(({ name }) => [name]),
    depths: sections.map(({ depth }) => [depth]),
    lengths: sections.map(({ length }) => [length]),
    ...boom,
  };
}

function plan(sections: readonly Section[], boom: Boom = METRIC): { rows: readonly Row[]; total: Row } {
  const [header, ...body] = tableOf("BOOM_PLAN", argumentsOf(sections, boom));
  expect(header).toEqual(["section", "passes", "minutes", "volume"]);
  const rows = body as unknown as Row[];
  return { rows: rows.slice(0, -1), total: rows.at(-1) as Row };
}

const onePass = (boom: Boom): number => answerOf("BOOM_DEPTH", { ...boom });

describe(byAnotherRoute("BOOM_DEPTH"), () => {
  test("40 L in a minute on 10 m x 8 m are 0.5 L/m2, 0.5 mm", () => {
    expectClose(onePass(METRIC), 0.5, EXACT);
  });

  test("24 nozzles of 0.8 gal/min at 25 ft/min over 30 ft: 4,435.2 in3 on 108,000 in2, 0.0411 in", () => {
    const depth = (24 * 0.8 * 231) / (25 * 12 * 30 * 12);
    expectClose(depth, 0.0411, 0, 0.00005);
    expectClose(onePass({ boom_flow: 19.2, travel_speed: 25, swath_width: 30, units: "us" }), depth, EXACT);
  });

  test("the speed for a depth is flow / (depth x width): 0.8 mm of 40 L/min over 8 m at 6.25 m/min", () => {
    expectClose(onePass({ ...METRIC, travel_speed: 6.25 }), 0.8, EXACT);
  });
});

describe(against("BOOM_DEPTH", MATHJS), () => {
  test.each([
    ["us", "gallon", "foot", "inch", 19.2, 25, 30],
    ["metric", "litre", "m", "mm", 40, 10, 8],
  ] as const)("flow over speed and width in %s", (units, volume, length, depth, flow, speed, width) => {
    const byUnits = combined(
      [quantity(flow, `${volume}/minute`)],
      [quantity(speed, `${length}/minute`), quantity(width, length)],
      depth,
    );
    expectClose(onePass({ boom_flow: flow, travel_speed: speed, swath_width: width, units }), byUnits, EXACT);
  });
});

describe(byAnotherRoute("BOOM_PLAN"), () => {
  /*
   * 19.2 gal/min at 25 ft/min over 30 ft: 0.041067 in a pass.
   *   plugs  0.06 in, 40 ft: 1.46, so 2 passes of 1.6 min = 3.2 min, 61.44 gal
   *   empty  0,       30 ft: one crossing of 1.2 min without water
   *   4 in   0.285,   40 ft: 6.94, so 7 passes = 11.2 min, 215.04 gal
   *   #1     0.341,   40 ft: 8.30, so 9 passes = 14.4 min, 276.48 gal
   * Together 18 passes, 30 min, of which 28.8 with water: 28.8 x 19.2 = 552.96 gal.
   */
  test("a house of four sections, worked on paper", () => {
    const { rows, total } = plan(
      [section("plugs", 0.06, 40), section("empty", 0, 30), section("4 in", 0.285, 40), section("#1", 0.341, 40)],
      { boom_flow: 19.2, travel_speed: 25, swath_width: 30, units: "us" },
    );
    const byHand: Row[] = [
      ["plugs", 2, 3.2, 61.44],
      ["empty", 0, 1.2, 0],
      ["4 in", 7, 11.2, 215.04],
      ["#1", 9, 14.4, 276.48],
      ["total", 18, 30, 552.96],
    ];
    [...rows, total].forEach(([name, passes, minutes, volume], index) => {
      const [itsName, itsPasses, itsMinutes, itsVolume] = byHand[index] as Row;
      expect([name, passes]).toEqual([itsName, itsPasses]);
      expectClose(minutes, itsMinutes, 1e-9);
      expectClose(volume, itsVolume, 1e-9);
    });
  });

  test("4 mm in passes of 0.5 mm are 8", () => {
    expect(plan([section("pots", 4, 30)]).rows[0]?.[1]).toBe(8);
  });
});

interface Swept {
  readonly passes: number;
  readonly minutes: number;
  readonly volume: number;
}

/** Depth of a volume on an area, out of the inches of a foot and of a gallon. */
const depthOf = ({ units }: Boom, volume: number, area: number): number =>
  units === "us" ? (volume * 231) / (area * 144) : volume / area;

/**
 * A boom that is moved over a section in steps of a tenth of a minute, there and back with the water on, until the last
 * step of the section has had its depth; over a section that wants none it goes once, with the water off.
 */
function moveOver(boom: Boom, steps: number, wanted: number): Swept {
  const stepMinutes = 0.1;
  const { boom_flow: flow, travel_speed: speed, swath_width: width } = boom;
  const got = new Float64Array(steps);
  let [passes, minutes, volume, position, direction] = [0, 0, 0, 0, 1];
  const wet = wanted > 0;
  for (;;) {
    minutes += stepMinutes;
    if (wet) {
      volume += flow * stepMinutes;
      got[position] = (got[position] as number) + depthOf(boom, flow * stepMinutes, speed * stepMinutes * width);
    }
    const isAtEnd = direction > 0 ? position === steps - 1 : position === 0;
    if (!isAtEnd) {
      position += direction;
      continue;
    }
    if (!wet) return { passes: 0, minutes, volume: 0 };
    passes += 1;
    direction = -direction;
    // A billionth of a pass is the dust of the sums above, not water.
    const dust = 1e-9 * depthOf(boom, flow, speed * width);
    if (got.every((depth) => depth >= wanted - dust)) return { passes, minutes, volume };
  }
}

const houses = fc.record({
  boom: fc.record({
    boom_flow: size(2, 200),
    travel_speed: size(5, 200),
    swath_width: size(2, 60),
    units: fc.constantFrom("us" as const, "metric" as const),
  }),
  sections: fc.array(
    fc.record({
      steps: fc.integer({ min: 1, max: 60 }),
      // Depth in passes: whole ones among them, and none.
      passes: fc.oneof(size(0.001, 20), fc.integer({ min: 1, max: 20 }), fc.constant(0)),
    }),
    { minLength: 1, maxLength: 8 },
  ),
});

const property = (
  holds: (house: { sections: Section[]; swept: Swept[]; boom: Boom; wanted: number[] }) => void,
): void =>
  fc.assert(
    fc.property(houses, ({ boom, sections }) => {
      const pass = depthOf(boom, boom.boom_flow, boom.travel_speed * boom.swath_width);
      const wanted = sections.map(({ passes }) => passes * pass);
      const built = sections.map(({ steps }, index) =>
        section(`section ${index + 1}`, wanted[index], (steps * boom.travel_speed) / 10),
      );
      const swept = sections.map(({ steps }, index) => moveOver(boom, steps, wanted[index] as number));
      holds({ sections: built, swept, boom, wanted });
    }),
    { seed: SEED, numRuns: 200 },
  );

// Against a boom that is moved over its house step by step, for any house.
describe(byAnotherRoute("BOOM_PLAN"), () => {
  test("passes, minutes and water are those of a boom moved step by step until the depth is there, for any house", () => {
    property(({ sections, swept, boom }) => {
      const { rows, total } = plan(sections, boom);
      rows.forEach(([, passes, minutes, volume], index) => {
        const moved = swept[index] as Swept;
        expect(passes).toBe(moved.passes);
        expectClose(minutes, moved.minutes, 1e-9);
        expectClose(volume, moved.volume, 1e-9);
      });
      const sum = (of: keyof Swept): number => swept.reduce((all, moved) => all + moved[of], 0);
      expect(total[1]).toBe(sum("passes"));
      expectClose(total[2], sum("minutes"), 1e-9);
      expectClose(total[3], sum("volume"), 1e-9);
    });
  });
});

describe("whatever the house", () => {
  test("minutes are passes x length / speed, and one crossing where it is dry", () => {
    property(({ sections, boom }) => {
      const { rows } = plan(sections, boom);
      rows.forEach(([, passes, minutes], index) => {
        const crossing = (sections[index] as { length: number }).length / boom.travel_speed;
        expectClose(minutes, (passes === 0 ? 1 : passes) * crossing, EXACT);
      });
    });
  });

  test("the volume is the flow of the wet minutes, and the depth of the passes on the section", () => {
    property(({ sections, boom }) => {
      const { rows, total } = plan(sections, boom);
      const wetMinutes = rows.reduce((sum, [, passes, minutes]) => sum + (passes === 0 ? 0 : minutes), 0);
      expectClose(total[3], wetMinutes * boom.boom_flow, 1e-9);
      rows.forEach(([, passes, , volume], index) => {
        const area = (sections[index] as { length: number }).length * boom.swath_width;
        expectClose(depthOf(boom, volume, area), passes * onePass(boom), 1e-9);
      });
    });
  });

  test("no section gets less than it wants, nor a pass more", () => {
    property(({ sections, boom, wanted }) => {
      const pass = onePass(boom);
      plan(sections, boom).rows.forEach(([, passes], index) => {
        const depth = wanted[index] as number;
        expect(passes * pass).toBeGreaterThanOrEqual(depth - 1.1e-9 * pass);
        if (depth > 0) expect((passes - 1) * pass).toBeLessThan(Math.max(depth, 1e-9 * pass));
      });
    });
  });
});

describe("passes of a boom", () => {
  const passes = (depth: number, pass: number): number =>
    plan([section("A", depth, 10)], { boom_flow: pass * 80, travel_speed: 10, swath_width: 8, units: "metric" })
      .rows[0]?.[1] ?? NaN;

  test("of 4.0 / 0.5 are 8, of 0.3 / 0.1 are 3 and of 0.7 / 0.1 are 7, not one more", () => {
    expect(passes(4, 0.5)).toBe(8);
    expect(passes(0.3, 0.1)).toBe(3);
    expect(passes(0.7, 0.1)).toBe(7);
    expect(passes(0.3 + 1e-6, 0.1)).toBe(4);
  });

  test("are one at least where any water is wanted", () => {
    expect(passes(1e-12, 0.5)).toBe(1);
  });

  test("count one way each: there and back with the water on is two", () => {
    const { rows } = plan([section("A", 2 * onePass(METRIC), 30)]);
    expect(rows[0]?.slice(1)).toEqual([2, 6, 240]);
  });
});

describe("a section that cannot be worked", () => {
  const good = section("good", 1, 20);

  test.each([
    ["a blank depth", section("bad", null, 20), "left out: depths is blank; it must be 0 or more (mm)"],
    ["a depth below 0", section("bad", -1, 20), "left out: depths is -1; it must be 0 or more (mm)"],
    [
      "a text for a depth",
      section("bad", "wet", 20),
      'left out: depths is the text "wet"; it must be 0 or more (mm): a number, not text',
    ],
    ["a blank length", section("bad", 1, ""), "left out: lengths is blank or 0; it must be more than 0 (m)"],
    ["a length of 0", section("bad", 1, 0), "left out: lengths is blank or 0; it must be more than 0 (m)"],
  ])("for %s carries its reason, and the total counts it out", (_what, bad, reason) => {
    const { rows, total } = plan([good, bad]);
    expect(rows[1]).toEqual(["bad", reason, "", ""]);
    expect(total).toEqual(["total, 1 left out", ...(rows[0]?.slice(1) ?? [])]);
  });

  test.each<[string, unknown]>([
    ["empty", null],
    ["sent as 0 by a host", 0],
  ])("because nothing is written in it is no row: cells %s", (_how, blank) => {
    const { rows, total } = plan([good, section(blank as string, blank, blank)]);
    expect(rows).toHaveLength(1);
    expect(total[0]).toBe("total");
  });

  test("in a range without any section is refused, naming section_names", () => {
    const refused = refusalOf("BOOM_PLAN", argumentsOf([section("", null, null)], METRIC));
    expect(refused).toMatchObject({ code: "#VALUE!", argument: "section_names" });
  });

  test("with a depth of 0 is no fault: the boom passes over it dry", () => {
    expect(plan([section("empty", 0, 20)]).rows[0]).toEqual(["empty", 0, 2, 0]);
  });
});

describe("the working of a plan", () => {
  test("shows the first section that can be worked", () => {
    const step = stepsOf("BOOM_PLAN", argumentsOf([section("bad", null, 20), section("pots", 4, 30)], METRIC));
    expect([step("p"), step("G"), step("n"), step("t"), step("V")]).toEqual([0.5, 4, 8, 24, 960]);
  });
});

describe("together with OVERHEAD_DEPTH", () => {
  test("pots of 16 cm that use 0.2 L get it: 9.947 mm on the top, at 1.1 caught and 0.9 even 10.05 mm, 21 passes", () => {
    // 0.2 L on 201.06 cm2 is 9.947 mm; / 1.1 = 9.043; / 0.9 = 10.048; / 0.5 = 20.1 passes.
    const depth = answerOf("OVERHEAD_DEPTH", {
      net_per_plant: 0.2,
      top_diameter: 16,
      capture_factor: 1.1,
      leaching_fraction: 0.1,
      uniformity: 0.9,
      units: "metric",
    });
    expectClose(depth, 10.048, 0, 0.0005);
    expect(plan([section("pots", depth, 30)]).rows[0]?.[1]).toBe(21);
  });
});
