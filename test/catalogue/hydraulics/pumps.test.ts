/** Head, power and energy of a pump, against print and a units library. */
import fc from "fast-check";
import { unit, type Unit } from "mathjs";
import { answerOf, refusalOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";
import { against, byAnotherRoute, published } from "../../rig/evidence";
import { SEED } from "../../rig/validInputs";

const MATHJS = "mathjs 15.2.0, units";
/** The library's units carry twelve digits. */
const UNITS_APART = 1e-10;

type System = "us" | "metric";

function head(lift: number, outlet_pressure: number, friction_head: number, units: System): number {
  return answerOf("TOTAL_DYNAMIC_HEAD", { lift, outlet_pressure, friction_head, units });
}

function power(flow: number, ofHead: number, efficiency: number, units: System): number {
  return answerOf("PUMP_POWER", { flow, head: ofHead, efficiency, units });
}

function energy(volume: number, ofHead: number, efficiency: number, units: System): number {
  return answerOf("PUMP_ENERGY", { volume, head: ofHead, efficiency, units });
}

describe(published("TOTAL_DYNAMIC_HEAD"), () => {
  test("FAO-56 Annex 1: 1 cm of water is 0.09807 kPa, so 9.807 kPa are 1 m", () => {
    expectClose(head(0, 9.807, 0, "metric"), 1, 0.0001);
  });

  test("UF/IFAS Circular 1048 (Haman, Zazueta & Izuno): a column of 2.31 ft makes a pressure of 1 psi", () => {
    // 2.31 is rounded from 144 / 62.4 = 2.3077, and 62.4 from 62.428 lb/ft3.
    expectClose(head(0, 1, 0, "us"), 2.31, 0, 0.0051);
  });
});

describe(published("PUMP_POWER"), () => {
  // They take 62.4 lb/ft3 and 7.481 gal/ft3 where 1 kg/L is 62.428 and the gallon 1/7.4805: 0.05 % apart.
  test.each([
    [100, 150],
    [452.6, 120],
    [25, 95],
  ])("Merkley & Allen, Eq. 222: %d gal/min by %d ft are Q H / 3956 hp in the water", (flow, feet) => {
    expectClose(power(flow, feet, 1, "us"), (flow * feet) / 3956, 0.0006);
  });

  test.each([
    [10, 40],
    [2.5, 28],
  ])("Merkley & Allen, Eq. 224: %d L/s by %d m are Q H / 102 kW in the water", (litres, metres) => {
    // 102 is rounded from 101.97.
    expectClose(power(60 * litres, metres, 1, "metric"), (litres * metres) / 102, 0.0004);
  });

  test("Merkley & Allen, Eq. 221: power at the shaft is that of the water over the efficiency", () => {
    expectClose(power(100, 150, 0.65, "us"), (100 * 150) / 3956 / 0.65, 0.0006);
  });

  test("Alabama Extension ANR-548: HP = gal/min x ft / (3960 x efficiency)", () => {
    // 3960 takes the gallon at 8.333 lb, where it is 8.345: 0.15 % apart.
    expectClose(power(500, 120, 0.72, "us"), (500 * 120) / (3960 * 0.72), 0.0016);
  });

  test("trade article on pumping cost: a pump of 100 hp is one of 74.6 kW", () => {
    const horsepower = power(1000, 300, 0.75, "us");
    const kilowatts = power(1000 * 3.785411784, 300 * 0.3048, 0.75, "metric");
    expectClose((100 / horsepower) * kilowatts, 74.6, 0, 0.051);
  });
});

describe(published("PUMP_ENERGY"), () => {
  const FOOT_POUNDS_PER_KWH = 3.6e6 / (0.45359237 * 9.80665 * 0.3048);

  // They round the weight of a gallon to 8.345 lb from 8.3454: 0.005 %.
  test.each([
    [1, 2_719_226],
    [100, 271_922_600],
  ])(
    "University of California IG6-96: an acre-foot, 325,851 gal, lifted by %d ft takes %d ft-lb",
    (feet, footPounds) => {
      expectClose(energy(325_851, feet, 1, "us") * FOOT_POUNDS_PER_KWH, footPounds, 0.0001);
    },
  );
});

describe(byAnotherRoute("TOTAL_DYNAMIC_HEAD"), () => {
  test("40 ft + 45 psi x 2.31 + 12 ft = 155.95 ft, 0.1 % above ours for the rounded 2.31", () => {
    expectClose(head(40, 45, 12, "us"), 155.85, 0, 0.15);
  });

  test("1 psi is 2.31 ft, 1 bar is 10.197 m", () => {
    expectClose(head(0, 1, 0, "us"), 2.31, 0, 0.004);
    expectClose(head(0, 100, 0, "metric"), 10.197, 0, 0.001);
  });

  test("30 psi at the foot of 12 ft are 24.8 psi at its top", () => {
    expectClose(head(12, 24.8, 0, "us"), head(0, 30, 0, "us"), 0.001);
  });
});

describe(byAnotherRoute("PUMP_POWER"), () => {
  test("100 gal/min by 150 ft: 3.788 hp in the water with 3960, 5.828 hp at 65 %; ours is 0.14 % more", () => {
    expectClose(power(100, 150, 1, "us"), 3.788 * 1.0014, 0, 0.001);
    expectClose(power(100, 150, 0.65, "us"), 5.828 * 1.0014, 0, 0.002);
  });

  test("10 m3/h by 40 m: 1.0896 kW in the water, 2.1365 kW from the line at 0.60 x 0.85", () => {
    expectClose(power(10_000 / 60, 40, 1, "metric"), 1.0896, 0, 0.0005);
    expectClose(power(10_000 / 60, 40, 0.6 * 0.85, "metric"), 2.1365, 0, 0.001);
  });

  test("gal/min x psi / 1714 is the same power, without head", () => {
    expectClose(power(100, head(0, 65, 0, "us"), 1, "us"), (100 * 65) / 1714, 0.0002);
  });
});

describe(byAnotherRoute("PUMP_ENERGY"), () => {
  test("1 m3 by 40 m at 0.51 takes 0.21365 kWh: head / (367.1 x efficiency)", () => {
    expectClose(energy(1000, 40, 0.51, "metric"), 40 / (367.1 * 0.51), 0.0001);
    expectClose(energy(1000, 40, 0.51, "metric"), 0.21365, 0, 0.0001);
  });

  test("an acre-foot by 1 ft takes 1.0241 kWh", () => {
    expectClose(energy((43_560 * 1728) / 231, 1, 1, "us"), 1.0241, 0, 0.0002);
  });

  test("1000 gal by 120 ft at 0.50 take 0.754 kWh", () => {
    expectClose(energy(1000, 120, 0.5, "us"), 0.754, 0, 0.0005);
  });

  test("12,000 m3 of a season by 40 m at 0.51 and 0.14 a kWh cost 358.93", () => {
    expectClose(energy(12e6, 40, 0.51, "metric") * 0.14, 358.93, 0, 0.01);
  });

  test("a plant that gives 0.885 horsepower-hours of water a kWh has an overall efficiency of 66 %", () => {
    // 1000 gal in an hour, by as many feet as make the water take up 0.885 hp.
    const feet = 0.885 / power(1000 / 60, 1, 1, "us");
    expectClose(energy(1000, feet, 1, "us"), 0.66, 0, 0.0005);
  });
});

describe(against("TOTAL_DYNAMIC_HEAD", MATHJS), () => {
  const waterWeight = unit(1000, "kg/m^3").multiply(unit(9.80665, "m/s^2"));

  test.each([5, 20, 45, 60])("%d psi as feet of water", (psi) => {
    const feet = unit(psi, "psi").divide(waterWeight);
    expectClose(head(0, psi, 0, "us"), (feet as Unit).toNumber("ft"), UNITS_APART);
  });

  test.each([35, 140, 310])("%d kPa as metres of water", (kilopascals) => {
    const metres = unit(kilopascals, "kPa").divide(waterWeight);
    expectClose(head(0, kilopascals, 0, "metric"), (metres as Unit).toNumber("m"), UNITS_APART);
  });

  test("a psi is 6.894757 kPa, and not the 6.896 that FAO-56 Annex 1 misprints", () => {
    const kilopascals = unit(1, "psi").toNumber("kPa");
    expectClose(kilopascals, 6.894757, 0, 0.00001);
    expectClose(head(0, kilopascals, 0, "metric") / 0.3048, head(0, 1, 0, "us"), UNITS_APART);
  });
});

/** Weight of the water x head, with every unit carried along. */
function work(amount: Unit, ofHead: Unit): Unit {
  const weight = unit(1000 * 9.80665, "N/m^3");
  return amount.multiply(weight).multiply(ofHead) as Unit;
}

describe(against("PUMP_POWER", MATHJS), () => {
  test.each([
    [15, 90, 0.5],
    [100, 150, 0.65],
    [452.6, 210, 0.72],
  ])("%d gal/min by %d ft at %d", (flow, feet, efficiency) => {
    const judged = work(unit(flow, "gallon/minute"), unit(feet, "ft")).toNumber("hp") / efficiency;
    expectClose(power(flow, feet, efficiency, "us"), judged, UNITS_APART);
  });

  test.each([
    [50, 27, 0.5],
    [380, 46, 0.65],
  ])("%d L/min by %d m at %d", (flow, metres, efficiency) => {
    const judged = work(unit(flow, "liter/minute"), unit(metres, "m")).toNumber("kW") / efficiency;
    expectClose(power(flow, metres, efficiency, "metric"), judged, UNITS_APART);
  });
});

describe(against("PUMP_ENERGY", MATHJS), () => {
  test("396,000 gal of a season by 90 ft at 0.55", () => {
    const judged = work(unit(396_000, "gallon"), unit(90, "ft")).toNumber("kWh") / 0.55;
    expectClose(energy(396_000, 90, 0.55, "us"), judged, UNITS_APART);
  });

  test("1,500,000 L by 27 m at 0.55", () => {
    const judged = work(unit(1_500_000, "liter"), unit(27, "m")).toNumber("kWh") / 0.55;
    expectClose(energy(1_500_000, 27, 0.55, "metric"), judged, UNITS_APART);
  });
});

describe("traps of pumps", () => {
  test("psi is not feet: 45 psi added as 45 ft would make the pump 38 % too small", () => {
    expectClose(1 - (40 + 45 + 12) / head(40, 45, 12, "us"), 0.377, 0, 0.001);
  });

  test("a source above the outlet takes its height off, and where it does the whole work no pump is needed", () => {
    expectClose(head(-3, 196.133, 2.5, "metric"), 19.5, 1e-12);
    const gravityFed = { lift: -30, outlet_pressure: 100, friction_head: 3, units: "metric" };
    expect(refusalOf("TOTAL_DYNAMIC_HEAD", gravityFed)).toMatchObject({ code: "#N/A" });
    expect(refusalOf("TOTAL_DYNAMIC_HEAD", gravityFed).message).toContain("without a pump");
  });

  test("efficiency is a fraction: 65 is answered with what to write", () => {
    const typed = { flow: 100, head: 150, efficiency: 65, units: "us" };
    expect(refusalOf("PUMP_POWER", typed).message).toContain("write 0.65 or 65%");
    expect(refusalOf("PUMP_ENERGY", { volume: 1, ...typed, flow: undefined }).message).toContain("write 0.65 or 65%");
  });

  test("efficiencies of pump and motor multiply: 0.60 and 0.85 are 0.51, not 0.725", () => {
    expectClose(power(100, 100, 0.51, "us"), power(100, 100, 0.6, "us") / 0.85, 1e-12);
  });

  test("mechanical horsepower, 0.7457 kW, and not the metric one of 0.7355", () => {
    const ratio = power(3.785411784, 0.3048, 1, "metric") / power(1, 1, 1, "us");
    expectClose(ratio, 0.7457, 0, 0.00005);
  });
});

describe("pumps, in general", () => {
  const flow = fc.double({ min: 1, max: 1000, noNaN: true });
  const feet = fc.double({ min: 5, max: 400, noNaN: true });
  const efficiency = fc.double({ min: 0.2, max: 1, noNaN: true });
  const units = fc.constantFrom<System>("us", "metric");

  test("power for an hour is the energy of an hour's volume", () => {
    fc.assert(
      fc.property(flow, feet, efficiency, units, (q, h, e, system) => {
        const kilowatts = power(q, h, e, system) * (system === "us" ? unit(1, "hp").toNumber("kW") : 1);
        expectClose(energy(60 * q, h, e, system), kilowatts, 1e-9);
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("two pumps in a row share the head, and their power adds up to that of one", () => {
    fc.assert(
      fc.property(flow, feet, feet, efficiency, units, (q, first, second, e, system) => {
        expectClose(
          power(q, first, e, system) + power(q, second, e, system),
          power(q, first + second, e, system),
          1e-12,
        );
      }),
      { seed: SEED, numRuns: 200 },
    );
  });

  test("head adds up, and more efficiency is less power", () => {
    fc.assert(
      fc.property(feet, feet, feet, units, efficiency, (lift, pressure, friction, system, e) => {
        const whole = head(lift, pressure, friction, system);
        expectClose(head(lift, pressure, 0, system) + friction, whole, 1e-12);
        expectClose(head(0, pressure, friction, system) + lift, whole, 1e-12);
        expect(power(10, whole, 0.9 * e, system)).toBeGreaterThan(power(10, whole, e, system));
      }),
      { seed: SEED, numRuns: 200 },
    );
  });
});
