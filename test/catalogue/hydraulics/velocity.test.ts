/** Velocity in a pipe and the flow that flushes it: one equation from both ends. */
import fc from "fast-check";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { solveLine } from "../../rig/epanet";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

type System = "us" | "metric";

function velocity(flow: number, inside_diameter: number, units: System): number {
  return answerOf("PIPE_VELOCITY", { flow, inside_diameter, units });
}

function flush(inside_diameter: number, units: System, wanted?: number): number {
  return answerOf("FLUSH_FLOW", { inside_diameter, units, velocity: wanted });
}

describe(published("PIPE_VELOCITY"), () => {
  // Cut off at 0.01 ft/s rather than rounded, by a constant of three digits: 0.2 %.
  test.each([
    [5, 1.195, 1.42],
    [10, 1.195, 2.85],
    [16, 1.195, 4.57],
    [20, 1.195, 5.71],
    [20, 2.193, 1.69],
    [40, 2.193, 3.39],
    [80, 2.193, 6.78],
    [100, 2.193, 8.48],
    [55, 3.23, 2.15],
    [100, 3.23, 3.91],
    [130, 3.23, 5.08],
    [100, 4.154, 2.36],
    [200, 4.154, 4.72],
    [225, 4.154, 5.31],
  ])("course table of PVC class 160: %d gal/min in %d in run at %d ft/s", (flow, bore, printed) => {
    expectClose(velocity(flow, bore, "us"), printed, 0, 0.01 + 0.002 * printed);
  });
});

describe(published("FLUSH_FLOW"), () => {
  // The guide prints round numbers, "approximate"; these are the rows with two digits or more, good to 3 %.
  test.each([
    [2, 2.5, 25],
    [10, 1, 250],
    [10, 2.5, 600],
    [12, 1, 350],
    [16, 1, 625],
    [16, 2.5, 1600],
    [20, 1, 1000],
    [20, 2.5, 2500],
    [24, 1, 1400],
    [24, 2.5, 3500],
  ])("field guide, Table 3-1: a %d-inch pipe takes %d ft/s at %d gal/min", (bore, wanted, printed) => {
    expectClose(flush(bore, "us", wanted), printed, 0.03);
  });
});

describe(byAnotherRoute("PIPE_VELOCITY"), () => {
  test("0.408709 q / d^2: 200 gal/min in 3.048 in run at 8.799 ft/s, by a constant that is 0.06 % high", () => {
    expectClose((0.408709 * 200) / 3.048 ** 2, 8.799, 0, 0.002);
    expectClose((4 * 231) / (Math.PI * 12 * 60), 0.408709, 0.0006);
    expectClose(velocity(200, 3.048, "us"), 8.799, 0.0006);
  });

  test("a column of 1 s: 5 L/s fill 1.0627 m of a 77.4 mm pipe", () => {
    const metres = 0.005 / ((Math.PI / 4) * 0.0774 ** 2);
    expectClose(metres, 1.0627, 0, 0.0005);
    expectClose(velocity(300, 77.4, "metric"), metres, 1e-12);
  });

  test("the minutes that fill a line are its length over the velocity", () => {
    const minutes = answerOf("LINE_FILL_MINUTES", {
      pipe_length: 500,
      inside_diameter: 2.067,
      fill_flow: 40,
      units: "us",
    });
    expectClose(velocity(40, 2.067, "us") * 60 * minutes, 500, 1e-12);
  });
});

describe(byAnotherRoute("FLUSH_FLOW"), () => {
  test("the velocity limit of 5 ft/s lets 52.3 gal/min through 2-inch schedule 40 pipe", () => {
    expectClose(flush(2.067, "us", 5), 52.3, 0, 0.1);
  });

  test("0.3 m/s at the end of a 16 mm tube take 217.1 L/h", () => {
    expectClose(60 * flush(16, "metric"), 217.1, 0, 0.2);
  });
});

describe(against("PIPE_VELOCITY", "EPANET 2.3.5"), () => {
  test.each([
    [6, 16],
    [75, 52.5],
    [300, 77.4],
    [3800, 300],
  ])("%d L/min in %d mm", async (flow, bore) => {
    const line = { coefficient: 150, pipes: 1, length: 10, bore, outlet: flow, supply: 1000 };
    const answer = await solveLine({ ...line, formula: "Hazen-Williams" });
    // It takes 1699.0 L/min for a ft3/s, which is 1699.011.
    expectClose(velocity(flow, bore, "metric"), answer.velocity, 1e-5);
  });
});

describe("traps of velocity", () => {
  test("inside diameter, never nominal: 16 mm tube with a bore of 13.6 mm runs 38 % faster than a bore of 16 mm", () => {
    expectClose(velocity(6, 13.6, "metric") / velocity(6, 16, "metric"), (16 / 13.6) ** 2, 1e-12);
  });

  test("5 ft/s and 1.5 m/s are two rules: the second lets 1.6 % less through", () => {
    const us = flush(2.067, "us", 5) * 3.785411784;
    expectClose(flush(52.5018, "metric", 1.5) / us, 1 - 0.016, 0, 0.0005);
  });

  test("the velocity that is left out is 1 ft/s or 0.3 m/s, round in each system", () => {
    expect(flush(2, "us")).toBe(flush(2, "us", 1));
    expect(flush(50, "metric")).toBe(flush(50, "metric", 0.3));
    const asMetric = flush(50, "metric") / 3.785411784;
    expectClose(asMetric / flush(50 / 25.4, "us"), 0.3 / 0.3048, 1e-9);
  });

  test("a velocity of 0 flushes nothing and is refused", () => {
    expect(refusalOf("FLUSH_FLOW", { inside_diameter: 2, units: "us", velocity: 0 }).argument).toBe("velocity");
  });
});

test("the flow that flushes at a velocity runs at that velocity, in both systems", () => {
  fc.assert(
    fc.property(
      fc.constantFrom<System>("us", "metric"),
      fc.double({ min: 0.2, max: 500, noNaN: true }),
      fc.double({ min: 0.05, max: 10, noNaN: true }),
      (units, bore, wanted) => {
        expectClose(velocity(flush(bore, units, wanted), bore, units), wanted, 1e-12);
        expectClose(velocity(flush(bore, units, wanted), bore / 2, units), 4 * wanted, 1e-12);
      },
    ),
    { seed: SEED, numRuns: 200 },
  );
});
