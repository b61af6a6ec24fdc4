/** Ranges that a grower would believe, and what is the same for the whole class; all invented. */
import type { Edition } from "../../kit";

/** A number that each student draws; what it is called is part of the draw, so it stays as it is. */
export interface Item {
  readonly key: ItemKey;
  readonly label: string;
  /** Where the trade's usual range of it is known: a function, and its argument or "" for its answer. */
  readonly usual: readonly [name: string, argument: string];
  readonly unit: Readonly<Record<Edition, string>>;
  readonly range: Readonly<Record<Edition, Range>>;
  /** Why it may lie outside the usual range. */
  readonly onPurpose?: true;
}
type Range = readonly [lowest: number, highest: number, step: number];

export type ItemKey = "et" | "kc" | "area" | "leaching" | "uniformity" | "flow" | "plants" | "measured";

const both = <T>(value: T): Readonly<Record<Edition, T>> => ({ us: value, metric: value });

export const ITEMS: readonly Item[] = [
  {
    key: "et",
    label: "reference ET",
    usual: ["PLANT_WATER_DEMAND", "reference_et"],
    unit: { us: "in/day", metric: "mm/day" },
    range: { us: [0.2, 0.32, 0.01], metric: [5, 8, 0.25] },
  },
  {
    key: "kc",
    label: "crop coefficient",
    usual: ["PLANT_WATER_DEMAND", "crop_coefficient"],
    unit: both("factor"),
    range: both([1.1, 1.3, 0.05]),
  },
  {
    key: "area",
    label: "area of a plant",
    usual: ["PLANT_SPACING_AREA", ""],
    unit: { us: "ft2", metric: "m2" },
    range: { us: [2.25, 4, 0.25], metric: [0.2, 0.4, 0.02] },
  },
  {
    key: "leaching",
    label: "leaching wanted",
    usual: ["GROSS_WATER", "leaching_fraction"],
    unit: both("fraction"),
    range: both([0.13, 0.2, 0.01]),
  },
  {
    key: "uniformity",
    label: "uniformity",
    usual: ["GROSS_WATER", "uniformity"],
    unit: both("fraction"),
    range: both([0.7, 0.95, 0.05]),
  },
  {
    key: "flow",
    label: "flow of an emitter",
    usual: ["RUN_MINUTES", "emitter_flow"],
    unit: { us: "gal/h", metric: "L/h" },
    range: { us: [0.9, 1.1, 0.05], metric: [3.4, 4.4, 0.2] },
  },
  {
    key: "plants",
    label: "plants",
    usual: ["ZONE_FLOW", "plants"],
    unit: both("count"),
    range: both([1000, 2400, 100]),
  },
  {
    key: "measured",
    label: "leaching measured",
    usual: ["RUN_MINUTES_FROM_LEACHING", "measured"],
    unit: both("fraction"),
    range: both([0.32, 0.48, 0.02]),
    onPurpose: true,
  },
];

export const SEED = "maple";
export const EMITTERS = 2;
export const MINUTES_NOW = 20;
export const SUPPLY: Readonly<Record<Edition, number>> = { us: 25, metric: 100 };
/** The student whose sheet is shown. */
export const SHOWN = "TH-05";
/** 2026-09-24 */
export const RECORDED_ON = 46_289;

export const CODES = [
  { code: "R", meaning: "right", points: 1 },
  { code: "F", meaning: "right on the student's own number of the step before", points: 1 },
  { code: "C", meaning: "close: within five tolerances", points: 0.5 },
  { code: "W", meaning: "wrong", points: 0 },
  { code: "N", meaning: "not answered", points: 0 },
] as const;

/** Words that a diagnosis holds, for counting. */
export const MISTAKES = [
  "the crop coefficient was left out",
  "the unit constant was left out",
  "decimal point is one place off",
  "the uniformity was left out",
  "the leaching fraction was left out",
  "both divided out",
  "leaching fraction was added",
  "nothing was added",
  "taken as flow per minute",
  "emitters per plant were left out",
  "left per hour",
  "not rounded up",
  "difference of the two fractions",
  "nothing left for the target",
  "the ratio was inverted",
  "no known mistake",
] as const;
