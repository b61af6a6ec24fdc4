/** What a design promises, and how long an uneven zone runs. */
import { NORM } from "@formulajs/formulajs";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute } from "../../rig/evidence";

type Inputs = Readonly<Record<string, unknown>>;

const promised = (inputs: Inputs): number =>
  answerOf("EMISSION_UNIFORMITY", { variation: 0.05, emitters_per_plant: 1, flow_min: 2, flow_mean: 2, ...inputs });
const multiplier = (uniformity: unknown): number => answerOf("RUN_TIME_MULTIPLIER", { uniformity });

const MANY = 20_000;

/** Flows of many emitters, spread normally around a mean of 1: the quantiles, from an independent library. */
function normalFlows(variation: number): number[] {
  return Array.from({ length: MANY }, (_, index) => 1 + variation * (NORM.S.INV((index + 0.5) / MANY) as number));
}

describe(byAnotherRoute("EMISSION_UNIFORMITY"), () => {
  test("Keller & Karmeli's formula: 0.05, 2 emitters, 3.6 over 3.8 L/h are 0.9048", () => {
    // 0.05 / 1.41421 = 0.035355; x 1.27 = 0.044901; 0.955099 x 0.947368 = 0.904831.
    const design = { variation: 0.05, emitters_per_plant: 2, flow_min: 3.6, flow_mean: 3.8 };
    expectClose(promised(design), 0.904831, 0, 0.000001);
  });

  test("one emitter, no difference of pressure: 1 - 1.27 x 0.07 = 0.9111", () => {
    expectClose(promised({ variation: 0.07 }), 0.9111, 1e-14);
  });

  test("emitters all alike leave the pressure alone: 1.8 over 2", () => {
    expectClose(promised({ variation: 0, flow_min: 1.8 }), 0.9, 1e-14);
  });

  test("four emitters to a plant halve what the make takes away", () => {
    expectClose(1 - promised({ emitters_per_plant: 4 }), (1 - promised({})) / 2, 1e-12);
  });
});

describe(against("EMISSION_UNIFORMITY", "@formulajs/formulajs 4.6.1"), () => {
  // The lowest quarter of a normal spread lies 1.2711 deviations below its mean; the formula rounds that to 1.27.
  test("1.27 is the mean of the lowest quarter of a normal spread, rounded: density over a quarter", () => {
    const edge = NORM.S.INV(0.25) as number;
    const below = (NORM.S.DIST(edge, false) as number) / 0.25;
    expectClose(below, 1.2711, 0, 0.00005);
    expectClose(1 - promised({ variation: 0.1 }), 0.1 * below, 0.001);
  });

  test.each([0.03, 0.05, 0.1, 0.15])("%d of variation gives what DU_LOW_QUARTER finds in normal flows", (variation) => {
    const measured = answerOf("DU_LOW_QUARTER", { readings: [normalFlows(variation)] });
    expectClose(promised({ variation }), measured, 0, 0.0013 * variation);
  });
});

describe("a design's uniformity", () => {
  test("is a figure of one plant's emitters, not of those tested: 18 instead of 1 would promise too much", () => {
    expect(promised({ variation: 0.1, emitters_per_plant: 18 }) - promised({ variation: 0.1 })).toBeGreaterThan(0.09);
  });

  test("counts variation twice when given the measured low-quarter flow: 0.81 for a zone of 0.90", () => {
    // Emitters of one pressure whose low quarter is 0.9 of the mean: Cv = 0.1 / 1.27.
    const variation = 0.1 / 1.27;
    expectClose(promised({ variation }), 0.9, 1e-12);
    expectClose(promised({ variation, flow_min: 1.8 }), 0.81, 1e-12);
  });

  test("rises with the emitters of a plant, and falls with variation and with a lower flow", () => {
    const rising = [1, 2, 3, 4, 6].map((emitters_per_plant) => promised({ emitters_per_plant }));
    expect(rising).toEqual([...rising].sort((a, b) => a - b));
    const falling = [0, 0.02, 0.05, 0.1, 0.3].map((variation) => promised({ variation }));
    expect(falling).toEqual([...falling].sort((a, b) => b - a));
    expect(promised({ flow_min: 1.6 })).toBeLessThan(promised({ flow_min: 1.7 }));
  });

  test("asks whether the flows were swapped when the lowest lies above the mean", () => {
    const swapped = refusalOf("EMISSION_UNIFORMITY", {
      variation: 0.05,
      emitters_per_plant: 1,
      flow_min: 2.1,
      flow_mean: 2,
    });
    expect(swapped).toMatchObject({ code: "#VALUE!", argument: "flow_min" });
    expect(swapped.message).toContain("were the two swapped?");
  });

  test("takes a variation of 5 for the slip it is", () => {
    const inputs = { variation: 5, emitters_per_plant: 1, flow_min: 2, flow_mean: 2 };
    expect(refusalOf("EMISSION_UNIFORMITY", inputs).message).toContain("write 0.05 or 5%");
  });
});

describe(byAnotherRoute("RUN_TIME_MULTIPLIER"), () => {
  test.each([
    [1, 1],
    [0.75, 20 / 17],
    [0.5, 10 / 7],
    [0.9, 50 / 47],
  ])("at a uniformity of %d it is %d: 1 / (0.4 + 0.6 DU) in whole numbers", (uniformity, factor) => {
    expectClose(multiplier(uniformity), factor, 1e-14);
  });

  test("auditing practice: 1.1765 at 0.75", () => {
    expectClose(multiplier(0.75), 1.1765, 0, 0.0001);
  });
});

describe(against("RUN_TIME_MULTIPLIER", "@formulajs/formulajs 4.6.1"), () => {
  // The half below the mean lies 0.7979 deviations below it, 0.4 + 0.6 DU says 0.6 x 1.2711 = 0.7627: 1 % apart at most.
  test.each([0.05, 0.1, 0.15, 0.2, 0.23])(
    "normal flows with a variation of %d: within 1 % of the mean over that of the lower half",
    (variation) => {
      const flows = normalFlows(variation);
      const lowerHalf = flows.slice(0, MANY / 2).reduce((sum, flow) => sum + flow, 0) / (MANY / 2);
      const uniformity = answerOf("DU_LOW_QUARTER", { readings: [flows] });
      expect(uniformity).toBeGreaterThan(0.7);
      expectClose(multiplier(uniformity), 1 / lowerHalf, 0.01);
    },
  );
});

describe("the run time multiplier", () => {
  test("stays below dividing by the uniformity itself, and is never below 1", () => {
    for (const uniformity of [0.2, 0.5, 0.75, 0.95]) {
      expect(multiplier(uniformity)).toBeLessThan(1 / uniformity);
      expect(multiplier(uniformity)).toBeGreaterThan(1);
    }
  });

  test("falls as the zone gets more even", () => {
    const factors = [0.3, 0.5, 0.7, 0.9, 1].map(multiplier);
    expect(factors).toEqual([...factors].sort((a, b) => b - a));
  });

  test("takes a uniformity of 75 for the slip it is: it would give 0.022", () => {
    const refused = refusalOf("RUN_TIME_MULTIPLIER", { uniformity: 75 });
    expect(refused.message).toContain("write 0.75 or 75%");
    expectClose(1 / (0.4 + 0.6 * 75), 0.022, 0, 0.0001);
  });
});
