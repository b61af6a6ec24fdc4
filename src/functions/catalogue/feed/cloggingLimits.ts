/**
 * Emitter clogging hazard by water quality: Bucks, Nakayama & Gilbert (1979), Agricultural Water Management 2:149-162,
 * the table that FAO Irrigation and Drainage Paper 29 took over as its Table 20. Below the first limit minor, above the
 * second severe; both limits belong to moderate. mg/L; pH as such; bacteria per mL.
 */
export const CLOGGING_LIMITS = {
  suspended_solids: [50, 100],
  ph: [7, 8],
  dissolved_solids: [500, 2000],
  manganese: [0.1, 1.5],
  iron: [0.1, 1.5],
  hydrogen_sulfide: [0.5, 2],
  bacteria: [10_000, 50_000],
} as const satisfies Record<string, readonly [low: number, high: number]>;

export type WaterProperty = keyof typeof CLOGGING_LIMITS;
export const WATER_PROPERTIES = Object.keys(CLOGGING_LIMITS) as WaterProperty[];

export const CLOGGING_CLASSES = ["minor", "moderate", "severe"] as const;
