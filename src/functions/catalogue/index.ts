/** The catalogue's contents page: every cell function, in the order in which the job is done. */
import type { Entry } from "../../kernel";

// Container and substrate
import { containerVolume } from "./container/containerVolume";
import { containerCapacity } from "./container/containerCapacity";
import { airSpace } from "./container/airSpace";
import { porometerTest } from "./container/porometerTest";
import { waterHeld } from "./container/waterHeld";
import { availableWater } from "./container/availableWater";
import { irrigationInterval } from "./container/irrigationInterval";
import { waterFromWeight } from "./container/waterFromWeight";
import { targetWeight } from "./container/targetWeight";
import { topArea } from "./container/topArea";
import { waterDepth } from "./container/waterDepth";
import { plantSpacingArea } from "./container/plantSpacingArea";
// Weather and demand
import { et0PenmanMonteith } from "./weather/et0PenmanMonteith";
import { et0Hargreaves } from "./weather/et0Hargreaves";
import { et0Table } from "./weather/et0Table";
import { et0Greenhouse } from "./weather/et0Greenhouse";
import { extraterrestrialRadiation } from "./weather/extraterrestrialRadiation";
import { daylightHours } from "./weather/daylightHours";
import { solarFromSunshine } from "./weather/solarFromSunshine";
import { vaporPressureDeficit } from "./weather/vaporPressureDeficit";
import { windAt2m } from "./weather/windAt2m";
import { panCoefficient } from "./weather/panCoefficient";
import { cropCoefficient } from "./weather/cropCoefficient";
import { plantWaterDemand } from "./weather/plantWaterDemand";
import { effectiveRain } from "./weather/effectiveRain";
import { waterBalance } from "./weather/waterBalance";
// Flow and uniformity
import { emitterFlow } from "./uniformity/emitterFlow";
import { bucketFlow } from "./uniformity/bucketFlow";
import { applicationRate } from "./uniformity/applicationRate";
import { catchRate } from "./uniformity/catchRate";
import { duLowQuarter } from "./uniformity/duLowQuarter";
import { cuChristiansen } from "./uniformity/cuChristiansen";
import { statisticalUniformity } from "./uniformity/statisticalUniformity";
import { emissionUniformity } from "./uniformity/emissionUniformity";
import { uniformityAudit } from "./uniformity/uniformityAudit";
import { emitterSurvey } from "./uniformity/emitterSurvey";
import { runTimeMultiplier } from "./uniformity/runTimeMultiplier";
// Leaching
import { leachingFraction } from "./leaching/leachingFraction";
import { leachingSummary } from "./leaching/leachingSummary";
import { runMinutesFromLeaching } from "./leaching/runMinutesFromLeaching";
import { leachingRequirement } from "./leaching/leachingRequirement";
import { leachingFromEc } from "./leaching/leachingFromEc";
import { nutrientLeached } from "./leaching/nutrientLeached";
// Run time, zones, booms, mats
import { grossWater } from "./runTime/grossWater";
import { runMinutes } from "./runTime/runMinutes";
import { runMinutesFromEt } from "./runTime/runMinutesFromEt";
import { interceptionFraction } from "./runTime/interceptionFraction";
import { captureFactor } from "./runTime/captureFactor";
import { overheadDepth } from "./runTime/overheadDepth";
import { overheadRunMinutes } from "./runTime/overheadRunMinutes";
import { dripLineRunMinutes } from "./runTime/dripLineRunMinutes";
import { pulseSchedule } from "./runTime/pulseSchedule";
import { zoneFlow } from "./runTime/zoneFlow";
import { zonesAtOnce } from "./runTime/zonesAtOnce";
import { zoneSequence } from "./runTime/zoneSequence";
import { lineFillMinutes } from "./runTime/lineFillMinutes";
import { boomDepth } from "./runTime/boomDepth";
import { boomPlan } from "./runTime/boomPlan";
import { matRecharge } from "./runTime/matRecharge";
// Flood benches, tanks, supply
import { floodVolume } from "./supply/floodVolume";
import { fillMinutes } from "./supply/fillMinutes";
import { floodSchedule } from "./supply/floodSchedule";
import { recirculationTank } from "./supply/recirculationTank";
import { tankVolume } from "./supply/tankVolume";
import { rainHarvest } from "./supply/rainHarvest";
import { daysOfStorage } from "./supply/daysOfStorage";
import { peakSupplyFlow } from "./supply/peakSupplyFlow";
// Feed and water quality
import { fertilizerWeight } from "./feed/fertilizerWeight";
import { ppmFromWeight } from "./feed/ppmFromWeight";
import { stockWeight } from "./feed/stockWeight";
import { injectorRatio } from "./feed/injectorRatio";
import { fertigationEc } from "./feed/fertigationEc";
import { ppmFromEc } from "./feed/ppmFromEc";
import { tankDose } from "./feed/tankDose";
import { tankDilution } from "./feed/tankDilution";
import { ionBuildup } from "./feed/ionBuildup";
import { blendEc } from "./feed/blendEc";
import { blendShare } from "./feed/blendShare";
import { convertEc } from "./feed/convertEc";
import { elementFromOxide } from "./feed/elementFromOxide";
import { sodiumAdsorption } from "./feed/sodiumAdsorption";
import { cloggingRisk } from "./feed/cloggingRisk";
import { acidNormality } from "./feed/acidNormality";
import { acidVolume } from "./feed/acidVolume";
// Pipe, emitter, pump
import { frictionLoss } from "./hydraulics/frictionLoss";
import { christiansenFactor } from "./hydraulics/christiansenFactor";
import { lateralLoss } from "./hydraulics/lateralLoss";
import { pipeVelocity } from "./hydraulics/pipeVelocity";
import { flushFlow } from "./hydraulics/flushFlow";
import { emitterFlowAtPressure } from "./hydraulics/emitterFlowAtPressure";
import { emitterExponent } from "./hydraulics/emitterExponent";
import { totalDynamicHead } from "./hydraulics/totalDynamicHead";
import { pumpPower } from "./hydraulics/pumpPower";
import { pumpEnergy } from "./hydraulics/pumpEnergy";
// Money
import { waterCost } from "./money/waterCost";
import { fertilizerCost } from "./money/fertilizerCost";
import { costPerSaleablePlant } from "./money/costPerSaleablePlant";
import { annualizedCost } from "./money/annualizedCost";
import { paybackYears } from "./money/paybackYears";
import { paybackTable } from "./money/paybackTable";
import { paybackSensitivity } from "./money/paybackSensitivity";
import { waterAfterSavings } from "./money/waterAfterSavings";
// Teaching and audit
import { showWorking } from "./teaching/showWorking";
import { exerciseNumber } from "./teaching/exerciseNumber";
import { checkAnswer } from "./teaching/checkAnswer";
import { diagnoseAnswer } from "./teaching/diagnoseAnswer";
import { commonMistakes } from "./teaching/commonMistakes";
import { convertUnit } from "./teaching/convertUnit";
import { checkRange } from "./teaching/checkRange";
import { unitLabel } from "./teaching/unitLabel";
import { functionSource } from "./teaching/functionSource";
import { libraryVersion } from "./teaching/libraryVersion";
import { nameOf, type LookUp } from "./teaching/lookUp";

const byName = new Map<string, Entry>();
/** Finds a function by its name as a cell has it, in any case, with or without the prefix; once the list is made. */
export const find: LookUp = (name) => byName.get(name) ?? byName.get(nameOf(name));
const names: string[] = [];

export const catalogue: readonly Entry[] = [
  containerVolume,
  containerCapacity,
  airSpace,
  porometerTest,
  waterHeld,
  availableWater,
  irrigationInterval,
  waterFromWeight,
  targetWeight,
  topArea,
  waterDepth,
  plantSpacingArea,
  et0PenmanMonteith,
  et0Hargreaves,
  et0Table,
  et0Greenhouse,
  extraterrestrialRadiation,
  daylightHours,
  solarFromSunshine,
  vaporPressureDeficit,
  windAt2m,
  panCoefficient,
  cropCoefficient,
  plantWaterDemand,
  effectiveRain,
  waterBalance,
  emitterFlow,
  bucketFlow,
  applicationRate,
  catchRate,
  duLowQuarter,
  cuChristiansen,
  statisticalUniformity,
  emissionUniformity,
  uniformityAudit,
  emitterSurvey,
  runTimeMultiplier,
  leachingFraction,
  leachingSummary,
  runMinutesFromLeaching,
  leachingRequirement,
  leachingFromEc,
  nutrientLeached,
  grossWater,
  runMinutes,
  runMinutesFromEt,
  interceptionFraction,
  captureFactor,
  overheadDepth,
  overheadRunMinutes,
  dripLineRunMinutes,
  pulseSchedule,
  zoneFlow,
  zonesAtOnce,
  zoneSequence,
  lineFillMinutes,
  boomDepth,
  boomPlan,
  matRecharge,
  floodVolume,
  fillMinutes,
  floodSchedule,
  recirculationTank,
  tankVolume,
  rainHarvest,
  daysOfStorage,
  peakSupplyFlow,
  fertilizerWeight,
  ppmFromWeight,
  stockWeight,
  injectorRatio,
  fertigationEc,
  ppmFromEc,
  tankDose,
  tankDilution,
  ionBuildup,
  blendEc,
  blendShare,
  convertEc,
  elementFromOxide,
  sodiumAdsorption,
  cloggingRisk,
  acidNormality,
  acidVolume,
  frictionLoss,
  christiansenFactor,
  lateralLoss,
  pipeVelocity,
  flushFlow,
  emitterFlowAtPressure,
  emitterExponent,
  totalDynamicHead,
  pumpPower,
  pumpEnergy,
  waterCost,
  fertilizerCost,
  costPerSaleablePlant,
  annualizedCost,
  paybackYears,
  paybackTable,
  paybackSensitivity,
  waterAfterSavings,
  showWorking(find, names),
  exerciseNumber,
  checkAnswer,
  diagnoseAnswer(find, names),
  commonMistakes(find, names),
  convertUnit,
  checkRange(find, names),
  unitLabel(find, names),
  functionSource(find, names),
  libraryVersion,
];

for (const entry of catalogue) byName.set(entry.name, entry);
names.push(...byName.keys());
