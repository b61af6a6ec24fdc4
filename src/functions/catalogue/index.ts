/** The catalogue's contents page: every cell function, in the order in which the job is done. */
import type { Entry } from "../../kernel";

// Container and substrate
import { containerVolume } from "./container/containerVolume";
import { waterHeld } from "./container/waterHeld";
// Weather and demand
import { et0PenmanMonteith } from "./weather/et0PenmanMonteith";
import { et0Hargreaves } from "./weather/et0Hargreaves";
import { et0Table } from "./weather/et0Table";
import { plantWaterDemand } from "./weather/plantWaterDemand";
// Flow and uniformity
import { duLowQuarter } from "./uniformity/duLowQuarter";
// Leaching
import { leachingFraction } from "./leaching/leachingFraction";
import { runMinutesFromLeaching } from "./leaching/runMinutesFromLeaching";
// Run time, zones, booms, mats
import { grossWater } from "./runTime/grossWater";
import { runMinutes } from "./runTime/runMinutes";
import { pulseSchedule } from "./runTime/pulseSchedule";
// Money
import { paybackYears } from "./money/paybackYears";

export const catalogue: readonly Entry[] = [
  containerVolume,
  waterHeld,
  et0PenmanMonteith,
  et0Hargreaves,
  et0Table,
  plantWaterDemand,
  duLowQuarter,
  leachingFraction,
  runMinutesFromLeaching,
  grossWater,
  runMinutes,
  pulseSchedule,
  paybackYears,
];
