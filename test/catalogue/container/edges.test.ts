/** Numbers just at the limits that two arguments of the container group set each other. */
import { answerOf, refusalOf, tableOf } from "../../rig/calls";
import { expectClose } from "../../rig/closeness";

describe("a pot at its limits", () => {
  test("of nothing but pores drains all of its volume: 250 of 250 mL are air", () => {
    expect(answerOf("AIR_SPACE", { drained_volume: 250, container_volume: 250 })).toBe(1);
  });

  test("may hold its whole volume of water: 8 kg in 8 L", () => {
    const pot = { wet_weight: 10, dry_weight: 2, volume: 8, units: "metric" };
    expect(answerOf("CONTAINER_CAPACITY", pot)).toBe(1);
  });

  test("whose water is all out of reach has none available, and is refused", () => {
    const pot = { volume: 9, container_capacity: 0.3, unavailable_water: 0.3 };
    expect(refusalOf("AVAILABLE_WATER", pot)).toMatchObject({ code: "#VALUE!", argument: "unavailable_water" });
    expectClose(answerOf("AVAILABLE_WATER", { ...pot, container_capacity: 0.3125 }), 9 * 0.0125, 1e-12);
  });

  test("that weighs dry what it weighs drained holds no water to set a target by", () => {
    const pot = { drained_weight: 3, dry_weight: 3, fraction: 0.5, basis: "water" };
    expect(refusalOf("TARGET_WEIGHT", pot)).toMatchObject({ code: "#VALUE!", argument: "drained_weight" });
  });
});

describe("a core at its limits", () => {
  const CORE = { core_volume: 128, drained_volume: 32, wet_weight: 120, dry_weight: 24 };

  test("may be all pores, 32 mL of air and 96 g of water in 128 mL, and not a gram more", () => {
    expect(tableOf("POROMETER_TEST", CORE)).toEqual([
      ["air space", 32 / 128],
      ["container capacity", 96 / 128],
      ["total porosity", 1],
      ["bulk density g/cm3", 24 / 128],
    ]);
    const more = refusalOf("POROMETER_TEST", { ...CORE, wet_weight: 121 });
    expect(more).toMatchObject({ code: "#VALUE!", argument: "core_volume" });
  });

  test("that drained its own volume leaves no room for the water in it: the volume is at fault, not a swap", () => {
    expect(refusalOf("POROMETER_TEST", { ...CORE, drained_volume: 128 }).argument).toBe("core_volume");
    expect(refusalOf("POROMETER_TEST", { ...CORE, drained_volume: 129 }).argument).toBe("drained_volume");
  });

  test("that weighs dry what it weighs wet was not dried", () => {
    expect(refusalOf("POROMETER_TEST", { ...CORE, dry_weight: 120 }).argument).toBe("wet_weight");
  });
});
