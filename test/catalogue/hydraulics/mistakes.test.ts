/** What each slip of pipes, emitters and pumps gives, by the published formula with the slip put into it by hand. */
import { refusalOf } from "../../rig/calls";
import { expectNoMistake, type MistakeRow } from "../../rig/mistakeTable";
import { expectMistakesOfGroup } from "../../rig/mistakesOfGroup";

const { PI, sqrt } = Math;
const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
/** In litres: 231 cubic inches of 16.387064 mL. */
const GALLON = 3.785411784;

/** ft/s of 1 gal/min through 1 in2, and m/s of 1 L/min through 1 mm2. */
const FEET_A_SECOND = 231 / 60 / 12;
const METRES_A_SECOND = 1e6 / 60 / 1000;
/** ft of water for 1 psi, and m of water for 1 kPa. */
const FEET_PER_PSI = POUND / INCH ** 2 / 1000 / FOOT;
const METRES_PER_KPA = 1 / GRAVITY;
/** hp of the water for 1 gal/min lifted by 1 ft, and kW for 1 L/min by 1 m. */
const WATER_HP = (GALLON / POUND / 60) * (1 / 550);
const WATER_KW = GRAVITY / 60 / 1000;
const KILOWATTS_PER_HP = (550 * FOOT * POUND * GRAVITY) / 1000;
/** kWh of the water for 1 gal lifted by 1 ft, and for 1 L by 1 m. */
const FOOT_GALLON = (GALLON * GRAVITY * FOOT) / 3.6e6;
const METRE_LITRE = GRAVITY / 3.6e6;

/** Hazen-Williams, in m: flow in L/min, bore in mm. */
function hazenWilliams(flow: number, bore: number, length: number, c: number): number {
  return (10.67 * length * (flow / 60_000) ** 1.852) / (c ** 1.852 * (bore / 1000) ** 4.87);
}

/** Its answer in ft, of gal/min and inches. */
function hazenWilliamsInFeet(flow: number, bore: number, length: number, c: number): number {
  return hazenWilliams(flow * GALLON, bore * 25.4, length * FOOT, c) / FOOT;
}

/** Darcy-Weisbach with f = 0.32 Re^-0.25 and all the flow to the end: flow in L/h, bore in mm, length and answer in m. */
function smoothTube(flow: number, bore: number, length: number): number {
  const velocity = flow / 3_600_000 / ((PI / 4) * (bore / 1000) ** 2);
  const reynolds = (velocity * (bore / 1000)) / 1.004e-6;
  return ((0.32 / reynolds ** 0.25) * (length / (bore / 1000)) * velocity ** 2) / (2 * GRAVITY);
}

/** Christiansen at 1.75. */
function outlets(count: number): number {
  return 1 / 2.75 + 1 / (2 * count) + sqrt(0.75) / (6 * count ** 2);
}

const TWELVE = { outlets: 12, exponent: 1.75 };
const READINGS = { flow_1: 5, pressure_1: 30, flow_2: 3, pressure_2: 14 };
const DRIPPER = { flow_ref: 3.7, pressure_ref: 18, pressure: 11, exponent: 0.62 };
const FLUSH_US = { inside_diameter: 2.3, units: "us", velocity: 1.7 };
const FLUSH_METRIC = { inside_diameter: 40, units: "metric", velocity: 0.45 };
const PIPE_US = { flow: 62, inside_diameter: 2.149, length: 340, units: "us", c: 137 };
const PIPE_METRIC = { flow: 310, inside_diameter: 77.4, length: 230, units: "metric", c: 143 };
const DRIP_METRIC = { emitters: 90, emitter_flow: 2.3, emitter_spacing: 45, inside_diameter: 13.6, units: "metric" };
const DRIP_US = { emitters: 70, emitter_flow: 0.9, emitter_spacing: 18, inside_diameter: 0.62, units: "us" };
const ONE_OUTLET = { emitters: 1, emitter_flow: 300, emitter_spacing: 3000, inside_diameter: 16, units: "metric" };
const DRIP_METRIC_LOSS = smoothTube(90 * 2.3, 13.6, 90 * 0.45) * outlets(90);
const DRIP_US_LENGTH = 70 * 18 * INCH;
const DRIP_US_FLOW = 0.9 * GALLON;
const DRIP_US_BORE = 0.62 * 25.4;
const WATER_US = { flow: 62, inside_diameter: 2.149, units: "us" };
const WATER_METRIC = { flow: 310, inside_diameter: 77.4, units: "metric" };
const SEASON_US = { volume: 39_000, head: 130, efficiency: 0.55, units: "us" };
const SEASON_METRIC = { volume: 52_000, head: 37, efficiency: 0.47, units: "metric" };
const PUMP_US = { flow: 85, head: 130, efficiency: 0.62, units: "us" };
const PUMP_METRIC = { flow: 240, head: 37, efficiency: 0.57, units: "metric" };
const HEAD_US = { lift: 38, outlet_pressure: 43, friction_head: 13, units: "us" };
const HEAD_METRIC = { lift: -4, outlet_pressure: 250, friction_head: 3.3, units: "metric" };

const TABLES: Readonly<Record<string, readonly MistakeRow[]>> = {
  CHRISTIANSEN_FACTOR: [
    ["The limit for very many outlets was taken", TWELVE, 1 / 2.75],
    // A full spacing less half of one: (N F - 1/2) / (N - 1/2).
    [
      "The first outlet was taken at half a spacing",
      TWELVE,
      (12 * (1 / 2.75 + 1 / 24 + sqrt(0.75) / 864) - 0.5) / (12 - 0.5),
    ],
    ["The exponent of another friction formula was used", TWELVE, 1 / 2.852 + 1 / 24 + sqrt(0.852) / 864],
    ["The exponent of another friction formula was used", { outlets: 9 }, 1 / 3 + 1 / 18 + 1 / 486],
    // Twelfths of the flow in twelve lengths: 12, 11 ... 1, on the mean 6.5.
    ["The mean flow was sent through the whole line", TWELVE, (6.5 / 12) ** 1.75],
  ],
  EMITTER_EXPONENT: [
    ["Flow and pressure were swapped", READINGS, Math.log(30 / 14) / Math.log(5 / 3)],
    ["Ratios were divided, not their logarithms", READINGS, 5 / 3 / (30 / 14)],
    ["The change of flow was divided by the change of pressure", READINGS, 2 / 16],
  ],
  EMITTER_FLOW_AT_PRESSURE: [
    ["Flow was taken to follow the pressure itself", DRIPPER, (3.7 * 11) / 18],
    ["The pressures were swapped", DRIPPER, 3.7 * (18 / 11) ** 0.62],
    ["The exponent of a plain emitter was used for this one", DRIPPER, 3.7 * sqrt(11 / 18)],
    ["The flow was left as it was", DRIPPER, 3.7],
  ],
  FLUSH_FLOW: [
    ["The diameter was used as a radius", FLUSH_US, (1.7 * PI * 2.3 ** 2) / FEET_A_SECOND],
    ["The diameter was used as a radius", FLUSH_METRIC, (0.45 * PI * 40 ** 2) / METRES_A_SECOND],
    ["The diameter was used as a radius", { inside_diameter: 2.3, units: "us" }, (PI * 2.3 ** 2) / FEET_A_SECOND],
    [
      "The diameter was used as a radius",
      { inside_diameter: 40, units: "metric" },
      (0.3 * PI * 40 ** 2) / METRES_A_SECOND,
    ],
    ["The unit constant was left out: velocity x area is not yet a flow", FLUSH_US, (1.7 * PI * 2.3 ** 2) / 4],
    ["The unit constant was left out: velocity x area is not yet a flow", FLUSH_METRIC, (0.45 * PI * 40 ** 2) / 4],
    ["The flow was given per hour", FLUSH_US, ((60 * 1.7 * PI * 2.3 ** 2) / 4) * (1 / FEET_A_SECOND)],
    ["The flow was given per hour", FLUSH_METRIC, ((60 * 0.45 * PI * 40 ** 2) / 4) * (1 / METRES_A_SECOND)],
    ["The square of the bore was taken for its area", FLUSH_US, (1.7 * 2.3 ** 2) / FEET_A_SECOND],
    ["The square of the bore was taken for its area", FLUSH_METRIC, (0.45 * 40 ** 2) / METRES_A_SECOND],
  ],
  FRICTION_LOSS: [
    // A 2-inch pipe of class 200 has 2.149 in; metric pipe of 90 mm outside has 77.4 mm.
    ["The nominal size was used, not the inside diameter", PIPE_US, hazenWilliamsInFeet(62, 2, 340, 137)],
    ["The nominal size was used, not the inside diameter", PIPE_METRIC, hazenWilliams(310, 90, 230, 143)],
    // A 1 1/4-inch pipe of schedule 40 has 1.38 in, nearer to 1 1/2.
    [
      "The nominal size was used, not the inside diameter",
      { ...PIPE_US, inside_diameter: 1.38 },
      hazenWilliamsInFeet(62, 1.25, 340, 137),
    ],
    // Metric pipe of 63 mm outside may have 50 mm, and tube of 12 mm 9.
    [
      "The nominal size was used, not the inside diameter",
      { ...PIPE_METRIC, inside_diameter: 50 },
      hazenWilliams(310, 63, 230, 143),
    ],
    [
      "The nominal size was used, not the inside diameter",
      { ...PIPE_METRIC, inside_diameter: 9 },
      hazenWilliams(310, 12, 230, 143),
    ],
    // Thick walls: schedule 80 of 2 in has 1.939 in.
    [
      "The nominal size was used, not the inside diameter",
      { ...PIPE_US, inside_diameter: 1.939 },
      hazenWilliamsInFeet(62, 2, 340, 137),
    ],
    [
      "The loss of 100 ft or 100 m was taken for the loss of the whole length",
      PIPE_US,
      hazenWilliamsInFeet(62, 2.149, 100, 137),
    ],
    [
      "The loss of 100 ft or 100 m was taken for the loss of the whole length",
      PIPE_METRIC,
      hazenWilliams(310, 77.4, 100, 143),
    ],
    ["The loss was given as a pressure, not as head", PIPE_US, hazenWilliamsInFeet(62, 2.149, 340, 137) / FEET_PER_PSI],
    ["The loss was given as a pressure, not as head", PIPE_METRIC, hazenWilliams(310, 77.4, 230, 143) / METRES_PER_KPA],
    ["The flow per hour was taken as flow per minute", PIPE_US, hazenWilliamsInFeet(60 * 62, 2.149, 340, 137)],
    ["The smoothness of PVC was taken for a rougher pipe", PIPE_METRIC, hazenWilliams(310, 77.4, 230, 150)],
    ["The diameter was used as a radius", PIPE_METRIC, hazenWilliams(310, 2 * 77.4, 230, 143)],
  ],
  LATERAL_LOSS: [
    [
      "The factor for outlets was left out: all the flow was sent to the end",
      DRIP_METRIC,
      smoothTube(90 * 2.3, 13.6, 90 * 0.45),
    ],
    [
      "The factor for outlets was left out: all the flow was sent to the end",
      DRIP_US,
      smoothTube(70 * DRIP_US_FLOW, DRIP_US_BORE, DRIP_US_LENGTH) / FOOT,
    ],
    // One outlet has no factor, so that its line loses the same.
    ["The factor for outlets was left out: all the flow was sent to the end", ONE_OUTLET, smoothTube(300, 16, 30)],
    [
      "The flow of one emitter was taken for the flow of the line",
      DRIP_METRIC,
      smoothTube(2.3, 13.6, 90 * 0.45) * outlets(90),
    ],
    [
      "The flow per hour was taken as flow per minute",
      DRIP_METRIC,
      smoothTube(60 * 90 * 2.3, 13.6, 90 * 0.45) * outlets(90),
    ],
    ["The outside diameter was used (16 for 13.6 mm)", DRIP_METRIC, smoothTube(90 * 2.3, 16, 90 * 0.45) * outlets(90)],
    [
      "The outside diameter was used (16 for 13.6 mm)",
      DRIP_US,
      (smoothTube(70 * DRIP_US_FLOW, DRIP_US_BORE + 2.4, DRIP_US_LENGTH) * outlets(70)) / FOOT,
    ],
    // 45 m typed as 0.45 where cm belong: a hundredth of the line.
    ["The spacing was typed in the unit of the length", DRIP_METRIC, DRIP_METRIC_LOSS / 100],
    [
      "The spacing was typed in the unit of the length",
      DRIP_US,
      (smoothTube(70 * DRIP_US_FLOW, DRIP_US_BORE, DRIP_US_LENGTH / 12) * outlets(70)) / FOOT,
    ],
  ],
  PIPE_VELOCITY: [
    ["The diameter was used as a radius", WATER_US, (FEET_A_SECOND * 62) / (PI * 2.149 ** 2)],
    ["The diameter was used as a radius", WATER_METRIC, (METRES_A_SECOND * 310) / (PI * 77.4 ** 2)],
    ["The flow per hour was taken as flow per minute", WATER_US, (FEET_A_SECOND * 60 * 62) / ((PI / 4) * 2.149 ** 2)],
    ["The unit constant was left out: flow / area is not yet a velocity", WATER_US, 62 / ((PI / 4) * 2.149 ** 2)],
    ["The unit constant was left out: flow / area is not yet a velocity", WATER_METRIC, 310 / ((PI / 4) * 77.4 ** 2)],
    ["The square of the bore was taken for its area", WATER_US, (FEET_A_SECOND * 62) / 2.149 ** 2],
    ["The square of the bore was taken for its area", WATER_METRIC, (METRES_A_SECOND * 310) / 77.4 ** 2],
  ],
  PUMP_ENERGY: [
    ["The energy was multiplied by the efficiency, not divided", SEASON_US, FOOT_GALLON * 39_000 * 130 * 0.55],
    ["The energy was multiplied by the efficiency, not divided", SEASON_METRIC, METRE_LITRE * 52_000 * 37 * 0.47],
    ["The efficiency was left out", SEASON_US, FOOT_GALLON * 39_000 * 130],
    [
      "A pressure (psi or kPa) was typed where a head belongs",
      SEASON_US,
      (FOOT_GALLON * 39_000 * (130 / FEET_PER_PSI)) / 0.55,
    ],
    [
      "A pressure (psi or kPa) was typed where a head belongs",
      SEASON_METRIC,
      (METRE_LITRE * 52_000 * (37 / METRES_PER_KPA)) / 0.47,
    ],
    ["The volume was counted in the bill's thousands", SEASON_METRIC, (METRE_LITRE * 52 * 37) / 0.47],
  ],
  PUMP_POWER: [
    ["The power of the water was multiplied by the efficiency, not divided", PUMP_US, WATER_HP * 85 * 130 * 0.62],
    ["The power of the water was multiplied by the efficiency, not divided", PUMP_METRIC, WATER_KW * 240 * 37 * 0.57],
    ["The efficiency was left out", PUMP_METRIC, WATER_KW * 240 * 37],
    ["A pressure (psi or kPa) was typed where a head belongs", PUMP_US, (WATER_HP * 85 * (130 / FEET_PER_PSI)) / 0.62],
    [
      "A pressure (psi or kPa) was typed where a head belongs",
      PUMP_METRIC,
      (WATER_KW * 240 * (37 / METRES_PER_KPA)) / 0.57,
    ],
    ["The flow per hour was taken as flow per minute", PUMP_US, (WATER_HP * 60 * 85 * 130) / 0.62],
    ["Horsepower and kilowatts were confused", PUMP_US, ((WATER_HP * 85 * 130) / 0.62) * KILOWATTS_PER_HP],
    ["Horsepower and kilowatts were confused", PUMP_METRIC, (WATER_KW * 240 * 37) / 0.57 / KILOWATTS_PER_HP],
  ],
  TOTAL_DYNAMIC_HEAD: [
    ["The pressure was added as it stood, without turning it into head", HEAD_US, 38 + 43 + 13],
    ["The pressure was added as it stood, without turning it into head", HEAD_METRIC, -4 + 250 + 3.3],
    ["The pressure was divided by the constant, not multiplied", HEAD_US, 38 + 43 / FEET_PER_PSI + 13],
    ["The pressure was divided by the constant, not multiplied", HEAD_METRIC, -4 + 250 / METRES_PER_KPA + 3.3],
    ["Friction was left out", HEAD_US, 38 + 43 * FEET_PER_PSI],
    ["The pressure at the outlet was left out", HEAD_US, 38 + 13],
    ["The lift was left out", HEAD_METRIC, 250 * METRES_PER_KPA + 3.3],
    ["The lift was given the wrong sign", HEAD_US, -38 + 43 * FEET_PER_PSI + 13],
    ["The lift was given the wrong sign", HEAD_METRIC, 4 + 250 * METRES_PER_KPA + 3.3],
  ],
};

expectMistakesOfGroup("Pipe, emitter, pump", TABLES);

expectNoMistake("FRICTION_LOSS", [
  // Too far from any size: 8.5 mm from 12, 17 in from 12; 0.3 and 20 in, 3 and 700 mm further still.
  [
    "The nominal size was used, not the inside diameter",
    { flow: 30, inside_diameter: 8.5, length: 9, units: "metric" },
  ],
  ["The nominal size was used, not the inside diameter", { flow: 900, inside_diameter: 17, length: 9, units: "us" }],
  ["The nominal size was used, not the inside diameter", { flow: 3, inside_diameter: 0.3, length: 9, units: "us" }],
  ["The nominal size was used, not the inside diameter", { flow: 3, inside_diameter: 3, length: 9, units: "metric" }],
  ["The nominal size was used, not the inside diameter", { flow: 900, inside_diameter: 20, length: 9, units: "us" }],
  [
    "The nominal size was used, not the inside diameter",
    { flow: 9000, inside_diameter: 700, length: 9, units: "metric" },
  ],
]);

expectNoMistake("TOTAL_DYNAMIC_HEAD", [["The pressure at the outlet was left out", { ...HEAD_METRIC, lift: -7 }]]);
expectNoMistake("EMITTER_EXPONENT", [["Flow and pressure were swapped", { ...READINGS, flow_2: 5 }]]);

describe("what the laminar law gives, where the formulas of turbulent flow do not hold", () => {
  /** 128 nu Q / (pi g D^4) in m/m: flow in m3/s, bore in m. */
  const poiseuille = (flow: number, bore: number): number => (128 * 1.004e-6 * flow) / (PI * GRAVITY * bore ** 4);
  const toldBy = (name: string, given: Readonly<Record<string, unknown>>): number =>
    Number(/gives a loss of ([\d.,e-]+) /.exec(refusalOf(name, given).message)?.[1]?.replace(",", ""));

  test("FRICTION_LOSS: 1.5 L/min through 340 m of 21 mm, and 0.4 gal/min through 700 ft of 1.1 in", () => {
    const metric = { flow: 1.5, inside_diameter: 21, length: 340, units: "metric" };
    expect(toldBy("FRICTION_LOSS", metric)).toBeCloseTo(poiseuille(1.5 / 60_000, 0.021) * 340, 4);
    const us = { flow: 0.4, inside_diameter: 1.1, length: 700, units: "us" };
    expect(toldBy("FRICTION_LOSS", us)).toBeCloseTo(poiseuille((0.4 * GALLON) / 60_000, 1.1 * INCH) * 700, 4);
  });

  test("LATERAL_LOSS: five emitters of 4 L/h run a line with 5, 4, 3, 2 and 1 fifths of 20 L/h, each over 0.7 m", () => {
    const given = { emitters: 5, emitter_flow: 4, emitter_spacing: 70, inside_diameter: 9, units: "metric" };
    const fifths = 5 + 4 + 3 + 2 + 1;
    expect(toldBy("LATERAL_LOSS", given)).toBeCloseTo(poiseuille(4 / 3_600_000, 0.009) * 0.7 * fifths, 5);
  });
});
