/** An emitter's flow and the pressure behind it. */
import fc from "fast-check";
import { answerOf, entryOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { SMOOTH, solveLine, type EpanetAnswer } from "../../rig/epanet";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";
import { mistakeAnswer } from "../../rig/mistakeAnswer";

function flowAt(flow_ref: number, pressure_ref: number, pressure: number, exponent?: number): number {
  return answerOf("EMITTER_FLOW_AT_PRESSURE", { flow_ref, pressure_ref, pressure, exponent });
}

function exponentOf(flow_1: number, pressure_1: number, flow_2: number, pressure_2: number): number {
  return answerOf("EMITTER_EXPONENT", { flow_1, pressure_1, flow_2, pressure_2 });
}

describe(published("EMITTER_FLOW_AT_PRESSURE"), () => {
  // 12 m is printed for 12.01: half a unit of its last digit is 4 %, which at 0.42 is 1.7 % of flow.
  test("FAO Irrigation Manual Module 9, Example 8: 4 L/h at 10 m and 0.42 give 4.32 L/h at 12 m", () => {
    expectClose(flowAt(4, 10, 12, 0.42), 4.32, 0.017);
  });
});

describe(published("EMITTER_EXPONENT"), () => {
  test("FAO Irrigation Manual Module 9, Example 8, back: 4 L/h at 10 m and 4.32 L/h at 12 m belong to 0.42", () => {
    expectClose(exponentOf(4.32, 12, 4, 10), 0.42, 0, 0.005);
  });
});

describe(byAnotherRoute("EMITTER_FLOW_AT_PRESSURE"), () => {
  test("q = k H^x with k the flow at 1 m: 1.265 L/h at 1 m are 4.0003 L/h at 10 m", () => {
    expectClose(flowAt(1.265, 1, 10), 1.265 * Math.sqrt(10), 1e-12);
    expectClose(flowAt(1.265, 1, 10), 4.0003, 0, 0.001);
  });

  test("from 15 to 12 psi a turbulent emitter loses 10.6 % of its flow", () => {
    expectClose(flowAt(1, 15, 12), 0.8944, 0, 0.0001);
  });

  test("20 % of pressure is 10 % of flow at 0.5", () => {
    expectClose(1 - flowAt(1, 1, 0.8), 0.1, 0, 0.006);
  });
});

describe(byAnotherRoute("EMITTER_EXPONENT"), () => {
  test("4 L/h at 10 m and 5.6 L/h at 20 m: ln 1.4 / ln 2 = 0.4854", () => {
    expectClose(exponentOf(4, 10, 5.6, 20), 0.4854, 0, 0.0002);
  });

  test("from 10 to 11 psi a flow that is 1 % off moves the exponent by 0.1, as the help says", () => {
    const right = exponentOf(Math.sqrt(1.1), 11, 1, 10);
    expectClose(exponentOf(1.01 * Math.sqrt(1.1), 11, 1, 10) - right, 0.1, 0, 0.006);
  });
});

describe(against("EMITTER_FLOW_AT_PRESSURE", "EPANET 2.3.5, emitters on one line"), () => {
  const line = {
    formula: "Darcy-Weisbach",
    coefficient: SMOOTH,
    pipes: 40,
    length: 2,
    bore: 13.6,
    supply: 20,
  } as const;
  const solved = (exponent: number): Promise<EpanetAnswer> =>
    solveLine({ ...line, outlet: { flowAt1m: 0.05, exponent } });

  // Every emitter of the line has its own pressure; each is held against the first.
  test.each([0.3, 0.42, 0.5, 0.75, 1])("an exponent of %d", async (exponent) => {
    const { flows, heads } = await solved(exponent);
    const [firstFlow, firstHead] = [flows[0] as number, heads[0] as number];
    expect(heads.at(-1)).toBeLessThan(0.98 * firstHead);
    flows.forEach((flow, at) => {
      expectClose(flowAt(firstFlow, firstHead, heads[at] as number, exponent), flow, 1e-5);
    });
  });
});

describe("traps of emitters", () => {
  test("a compensating emitter, exponent 0, keeps its flow and divides nothing by zero", () => {
    expect(flowAt(2, 150, 250, 0)).toBe(2);
    expect(flowAt(2, 150, 50, 0)).toBe(2);
    expect(exponentOf(2, 250, 2, 100)).toBe(0);
    expect(exponentOf(2, 100, 2, 250)).toBe(0);
  });

  test("the unit of pressure drops out: psi, kPa, feet or metres give one answer", () => {
    const psi = flowAt(1, 15, 12, 0.42);
    for (const unit of [6.894757, 2.3067, 0.7031]) expectClose(flowAt(1, 15 * unit, 12 * unit, 0.42), psi, 1e-12);
  });

  test("flow does not follow the pressure itself: half of it leaves 71 % of the flow", () => {
    expectClose(flowAt(10, 20, 10), 7.071, 0, 0.0005);
  });

  test("two readings at one pressure say nothing, and are refused by name", () => {
    const same = { flow_1: 4, pressure_1: 10, flow_2: 4.1, pressure_2: 10 };
    expect(refusalOf("EMITTER_EXPONENT", same)).toMatchObject({ code: "#VALUE!", argument: "pressure_2" });
  });

  test("an exponent that no emitter has asks whether flow and pressure were swapped", () => {
    const swapped = { flow_1: 10, pressure_1: 4, flow_2: 20, pressure_2: 5.6 };
    expect(refusalOf("EMITTER_EXPONENT", swapped).message).toContain("were flow and pressure swapped?");
    const wrongOrder = { flow_1: 8, pressure_1: 10, flow_2: 4, pressure_2: 20 };
    expect(refusalOf("EMITTER_EXPONENT", wrongOrder)).toMatchObject({ code: "#VALUE!", argument: "flow_2" });
  });

  test("a reading that scatters a little below 0 or above 1 is answered, and either function takes the other's answer", () => {
    const below = exponentOf(1.98, 250, 2, 100);
    expect(below).toBeLessThan(0);
    expectClose(flowAt(2, 100, 250, below), 1.98, 1e-12);
    const above = exponentOf(2.05, 20, 1, 10);
    expect(above).toBeGreaterThan(1);
    expectClose(flowAt(1, 10, 20, above), 2.05, 1e-12);
  });

  test("the mistake of swapped places has no answer where the exponent is 0", () => {
    const entry = entryOf("EMITTER_EXPONENT");
    const [swapped] = entry.mistakes;
    expect(mistakeAnswer(entry, swapped as (typeof entry.mistakes)[number], [2, 250, 2, 100])).toBeNull();
  });
});

describe("emitters, for any pressure", () => {
  const flow = fc.double({ min: 0.1, max: 100, noNaN: true });
  const pressure = fc.double({ min: 5, max: 500, noNaN: true });
  const exponent = fc.double({ min: 0.01, max: 1, noNaN: true });

  test("the exponent comes back from two flows that were worked out with it", () => {
    fc.assert(
      fc.property(flow, pressure, fc.double({ min: 1.1, max: 5, noNaN: true }), exponent, (q, p, times, x) => {
        expectClose(exponentOf(flowAt(q, p, p * times, x), p * times, q, p), x, 1e-9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("by way of a third pressure it comes to the same, and back to where it began", () => {
    fc.assert(
      fc.property(flow, pressure, pressure, pressure, exponent, (q, first, via, last, x) => {
        expectClose(flowAt(flowAt(q, first, via, x), via, last, x), flowAt(q, first, last, x), 1e-12);
        expectClose(flowAt(flowAt(q, first, via, x), via, first, x), q, 1e-12);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("more pressure is more flow, and the more the higher the exponent", () => {
    fc.assert(
      fc.property(flow, pressure, fc.double({ min: 1.01, max: 4, noNaN: true }), exponent, (q, p, times, x) => {
        expect(flowAt(q, p, p * times, x)).toBeGreaterThan(q);
        expect(flowAt(q, p, p * times, x + 0.1)).toBeGreaterThan(flowAt(q, p, p * times, x));
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});
