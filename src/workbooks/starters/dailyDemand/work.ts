import type { CellRef, SheetBuilder, StarterBuilder } from "../../kit";
import type { Days } from "./days";
import type { DemandInputs } from "./inputs";

export interface Pot {
  readonly area: CellRef;
  readonly available: CellRef;
  readonly refill: CellRef;
}

export function fillPot(kit: StarterBuilder, work: SheetBuilder, given: DemandInputs): Pot {
  const volumeUnit = kit.pick("gal", "L");
  work.block("The pot");
  const area = work.formula({
    label: "Ground of a plant",
    unit: kit.pick("ft2", "m2"),
    formula: `=CANYARD.PLANT_SPACING_AREA(${given.inRow}, ${given.between}, units)`,
    format: "decimals3",
    how: "in the row x between rows",
  });
  const volume = work.formula({
    label: "Substrate in the pot",
    unit: volumeUnit,
    formula: `=CANYARD.CONTAINER_VOLUME(${given.top}, ${given.bottom}, ${given.height}, units)`,
    format: "decimals2",
    how: "a cone cut off at the bottom",
  });
  const available = kit.name(
    "available_water",
    work.formula({
      label: "Available water of the full pot",
      unit: volumeUnit,
      formula: `=CANYARD.AVAILABLE_WATER(${volume.here}, ${given.capacity}, ${given.unavailable})`,
      format: "decimals3",
      how: "substrate x (water when drained - water that plants cannot take up)",
    }),
  );
  const refill = kit.name(
    "refill_line",
    work.formula({
      label: "Deficit at which to irrigate",
      unit: volumeUnit,
      formula: `=${available.here} * ${given.trigger}`,
      format: "decimals3",
      how: "available water x part that may be used",
    }),
  );
  return { area, available, refill };
}

/** Up to where the days are worked; the sheet Days refers to these lines by their names. */
export function fillSpan(kit: StarterBuilder, work: SheetBuilder, { column }: Days): void {
  work.block("The days");
  kit.name(
    "last_day",
    work.formula({
      label: "Last day that is worked",
      unit: "date",
      formula: `=MAX(${column["readOn"]!})`,
      format: "date",
      how: "the latest day with a reading; days after it are to come",
    }),
  );
  kit.name(
    "today_row",
    work.formula({
      label: "Row of that day in the table",
      unit: "count",
      formula: `=COUNT(${column["date"]!}) - COUNTIF(${column["reading"]!}, "to come")`,
      format: "decimals0",
      how: "days with a date - days to come",
    }),
  );
  kit.name(
    "mean_et",
    work.formula({
      label: "Mean ET of all days with a reading",
      unit: kit.pick("in/day", "mm/day"),
      formula: `=IFERROR(AVERAGE(${column["known"]!}), 0)`,
      format: kit.pick("decimals3", "decimals2"),
      how: "for a missing day that has no reading anywhere near",
    }),
  );
}
