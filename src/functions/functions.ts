// Generated from the catalogue by `npm run generate`; do not edit.
/* eslint-disable @typescript-eslint/no-explicit-any */
import { answer as answerCell, furtherInputs } from "./host";

/**
 * Volume of a round pot, up to the fill line
 * @customfunction CONTAINER_VOLUME CONTAINER_VOLUME
 * @helpurl https://localhost:3000/reference/CONTAINER_VOLUME.html
 * @param {any[][]} top_diameter Inside diameter at the fill line (in or cm)
 * @param {any[][]} bottom_diameter Inside diameter at the bottom (in or cm)
 * @param {any[][]} height Inside height from the bottom to the fill line (in or cm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Volume of substrate up to the fill line (gal or L)
 */
export function CONTAINER_VOLUME(
  top_diameter: any[][],
  bottom_diameter: any[][],
  height: any[][],
  units: any[][],
): any {
  return answerCell("CONTAINER_VOLUME", [top_diameter, bottom_diameter, height, units]);
}

/**
 * Part of the substrate's volume that is water once the pot has drained
 * @customfunction CONTAINER_CAPACITY CONTAINER_CAPACITY
 * @helpurl https://localhost:3000/reference/CONTAINER_CAPACITY.html
 * @param {any[][]} wet_weight The substrate after soaking and free drainage, without the pot (lb or kg)
 * @param {any[][]} dry_weight The same substrate, dried in the oven, without the pot (lb or kg)
 * @param {any[][]} volume Substrate in the pot, to the fill line (gal or L)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Container capacity, water by volume (fraction)
 */
export function CONTAINER_CAPACITY(wet_weight: any[][], dry_weight: any[][], volume: any[][], units: any[][]): any {
  return answerCell("CONTAINER_CAPACITY", [wet_weight, dry_weight, volume, units]);
}

/**
 * Part of the substrate's volume that is air once the pot has drained
 * @customfunction AIR_SPACE AIR_SPACE
 * @helpurl https://localhost:3000/reference/AIR_SPACE.html
 * @param {any[][]} drained_volume Water that ran out of the saturated pot; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} container_volume Substrate in the pot, to the fill line, in the same unit (same unit)
 * @returns {any} Air space after drainage (fraction)
 */
export function AIR_SPACE(drained_volume: any[][], container_volume: any[][]): any {
  return answerCell("AIR_SPACE", [drained_volume, container_volume]);
}

/**
 * Air, water, pores and density of a substrate from one core
 * @customfunction POROMETER_TEST POROMETER_TEST
 * @helpurl https://localhost:3000/reference/POROMETER_TEST.html
 * @param {any[][]} core_volume Inside volume of the core (mL)
 * @param {any[][]} drained_volume Water that ran out of the saturated core; 0 is a value, so leave no blank (mL)
 * @param {any[][]} wet_weight The substrate after soaking and free drainage, without the core (g)
 * @param {any[][]} dry_weight The same substrate, dried in the oven, without the core (g)
 * @returns {any[][]} Air space, container capacity and total porosity (0 to 1), bulk density in g/cm3
 */
export function POROMETER_TEST(
  core_volume: any[][],
  drained_volume: any[][],
  wet_weight: any[][],
  dry_weight: any[][],
): any[][] {
  return answerCell("POROMETER_TEST", [core_volume, drained_volume, wet_weight, dry_weight]) as any[][];
}

/**
 * Water in the whole pot once it has drained
 * @customfunction WATER_HELD WATER_HELD
 * @helpurl https://localhost:3000/reference/WATER_HELD.html
 * @param {any[][]} volume Substrate in the pot, to the fill line (gal or L)
 * @param {any[][]} container_capacity Part of the volume that is water after free drainage (fraction)
 * @returns {any} Water held, in the unit of the volume (gal or L)
 */
export function WATER_HELD(volume: any[][], container_capacity: any[][]): any {
  return answerCell("WATER_HELD", [volume, container_capacity]);
}

/**
 * Water in the drained pot that plants can take up
 * @customfunction AVAILABLE_WATER AVAILABLE_WATER
 * @helpurl https://localhost:3000/reference/AVAILABLE_WATER.html
 * @param {any[][]} volume Substrate in the pot, to the fill line (gal or L)
 * @param {any[][]} container_capacity Part of the volume that is water after free drainage (fraction)
 * @param {any[][]} unavailable_water Part of the volume that is water which plants cannot take up (fraction)
 * @returns {any} Available water, in the unit of the volume (gal or L)
 */
export function AVAILABLE_WATER(volume: any[][], container_capacity: any[][], unavailable_water: any[][]): any {
  return answerCell("AVAILABLE_WATER", [volume, container_capacity, unavailable_water]);
}

/**
 * Days that a full pot lasts until it is time to irrigate
 * @customfunction IRRIGATION_INTERVAL IRRIGATION_INTERVAL
 * @helpurl https://localhost:3000/reference/IRRIGATION_INTERVAL.html
 * @param {any[][]} available_water Water in the full pot that plants can take up (gal or L)
 * @param {any[][]} depletion_fraction Part of the available water that may be used before it is time to irrigate (fraction)
 * @param {any[][]} daily_use Water that one plant uses in a day, in the same unit (gal or L)
 * @returns {any} Days from a full pot to the next irrigation (days)
 */
export function IRRIGATION_INTERVAL(available_water: any[][], depletion_fraction: any[][], daily_use: any[][]): any {
  return answerCell("IRRIGATION_INTERVAL", [available_water, depletion_fraction, daily_use]);
}

/**
 * Water that a pot has lost or taken up between two weighings
 * @customfunction WATER_FROM_WEIGHT WATER_FROM_WEIGHT
 * @helpurl https://localhost:3000/reference/WATER_FROM_WEIGHT.html
 * @param {any[][]} heavier_weight The wetter weighing, such as after drainage (lb or kg)
 * @param {any[][]} lighter_weight The drier weighing of the same pot, such as before the next irrigation (lb or kg)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Water between the two weighings (gal or L)
 */
export function WATER_FROM_WEIGHT(heavier_weight: any[][], lighter_weight: any[][], units: any[][]): any {
  return answerCell("WATER_FROM_WEIGHT", [heavier_weight, lighter_weight, units]);
}

/**
 * Weight of a pot or tray at which to irrigate
 * @customfunction TARGET_WEIGHT TARGET_WEIGHT
 * @helpurl https://localhost:3000/reference/TARGET_WEIGHT.html
 * @param {any[][]} drained_weight Weight after soaking and free drainage, in any one unit (lb or kg)
 * @param {any[][]} dry_weight Weight of the same without the water, in the same unit (lb or kg)
 * @param {any[][]} fraction Part left when it is time to irrigate: of the water, or of the total weight (fraction)
 * @param {any[][]} basis "water" counts the fraction on the water held, "total" on the whole drained weight
 * @returns {any} Weight at which to irrigate, in the unit of the weights (lb or kg)
 */
export function TARGET_WEIGHT(drained_weight: any[][], dry_weight: any[][], fraction: any[][], basis: any[][]): any {
  return answerCell("TARGET_WEIGHT", [drained_weight, dry_weight, fraction, basis]);
}

/**
 * Area of a round pot's opening
 * @customfunction TOP_AREA TOP_AREA
 * @helpurl https://localhost:3000/reference/TOP_AREA.html
 * @param {any[][]} top_diameter Diameter of the pot's opening (in or cm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Area of the opening (ft2 or m2)
 */
export function TOP_AREA(top_diameter: any[][], units: any[][]): any {
  return answerCell("TOP_AREA", [top_diameter, units]);
}

/**
 * Depth at which a volume of water would stand on a round pot's top
 * @customfunction WATER_DEPTH WATER_DEPTH
 * @helpurl https://localhost:3000/reference/WATER_DEPTH.html
 * @param {any[][]} volume Water for one pot (gal or L)
 * @param {any[][]} top_diameter Diameter of the pot's opening (in or cm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Depth over the pot's top (in or mm)
 */
export function WATER_DEPTH(volume: any[][], top_diameter: any[][], units: any[][]): any {
  return answerCell("WATER_DEPTH", [volume, top_diameter, units]);
}

/**
 * Ground that one plant takes up on the bed or bench
 * @customfunction PLANT_SPACING_AREA PLANT_SPACING_AREA
 * @helpurl https://localhost:3000/reference/PLANT_SPACING_AREA.html
 * @param {any[][]} in_row From centre to centre along the row; the side of a triangle (in or cm)
 * @param {any[][]} between_rows From row to row, at right angles; may be blank for a triangle (in or cm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [pattern] "square" for squares and rectangles, "triangle" for equilateral triangles of side in_row
 * @returns {any} Ground that one plant takes up (ft2 or m2)
 */
export function PLANT_SPACING_AREA(in_row: any[][], between_rows: any[][], units: any[][], pattern?: any[][]): any {
  return answerCell("PLANT_SPACING_AREA", [in_row, between_rows, units, pattern]);
}

/**
 * Reference evapotranspiration of a day from temperature, humidity, wind and sun
 * @customfunction ET0_PENMAN_MONTEITH ET0_PENMAN_MONTEITH
 * @helpurl https://localhost:3000/reference/ET0_PENMAN_MONTEITH.html
 * @param {any[][]} tmax Highest air temperature of the day; 0 is a value, so leave no blank (F or C)
 * @param {any[][]} tmin Lowest air temperature of the day; 0 is a value, so leave no blank (F or C)
 * @param {any[][]} rh_max Highest relative humidity of the day, 1 to 100 (%)
 * @param {any[][]} rh_min Lowest relative humidity of the day, 1 to 100 (%)
 * @param {any[][]} wind_speed Mean wind of the day; 0 is a value, so leave no blank (mph or m/s)
 * @param {any[][]} solar_radiation Solar radiation of the day at the ground (MJ/m2/day)
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank (degrees)
 * @param {any[][]} elevation Elevation above sea level; 0 is a value, so leave no blank (ft or m)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [wind_height] Height of the anemometer; left out, the wind is that at 2 m (6.56 ft) (ft or m)
 * @returns {any} Reference evapotranspiration of the day (in/day or mm/day)
 */
export function ET0_PENMAN_MONTEITH(
  tmax: any[][],
  tmin: any[][],
  rh_max: any[][],
  rh_min: any[][],
  wind_speed: any[][],
  solar_radiation: any[][],
  latitude: any[][],
  elevation: any[][],
  date: any[][],
  units: any[][],
  wind_height?: any[][],
): any {
  return answerCell("ET0_PENMAN_MONTEITH", [
    tmax,
    tmin,
    rh_max,
    rh_min,
    wind_speed,
    solar_radiation,
    latitude,
    elevation,
    date,
    units,
    wind_height,
  ]);
}

/**
 * Reference evapotranspiration of a day from its highest and lowest temperature
 * @customfunction ET0_HARGREAVES ET0_HARGREAVES
 * @helpurl https://localhost:3000/reference/ET0_HARGREAVES.html
 * @param {any[][]} tmax Highest air temperature of the day; 0 is a value, so leave no blank (F or C)
 * @param {any[][]} tmin Lowest air temperature of the day; 0 is a value, so leave no blank (F or C)
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank (degrees)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Reference evapotranspiration of the day (in/day or mm/day)
 */
export function ET0_HARGREAVES(tmax: any[][], tmin: any[][], latitude: any[][], date: any[][], units: any[][]): any {
  return answerCell("ET0_HARGREAVES", [tmax, tmin, latitude, date, units]);
}

/**
 * Reference evapotranspiration of every day of a weather table in one call
 * @customfunction ET0_TABLE ET0_TABLE
 * @helpurl https://localhost:3000/reference/ET0_TABLE.html
 * @param {any[][]} weather One row a day, 3 or 7 columns, in date order or not
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank (degrees)
 * @param {any[][]} elevation Elevation above sea level; 0 is a value, so leave no blank (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any[][]} One number a row, in the order of the rows
 */
export function ET0_TABLE(weather: any[][], latitude: any[][], elevation: any[][], units: any[][]): any[][] {
  return answerCell("ET0_TABLE", [weather, latitude, elevation, units]) as any[][];
}

/**
 * Reference evapotranspiration inside an unheated plastic house from the sun outside
 * @customfunction ET0_GREENHOUSE ET0_GREENHOUSE
 * @helpurl https://localhost:3000/reference/ET0_GREENHOUSE.html
 * @param {any[][]} solar_radiation Solar radiation of the day outside the house (MJ/m2/day)
 * @param {any[][]} transmission Part of the outside radiation that reaches the crop (fraction)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Reference evapotranspiration of the day inside (in/day or mm/day)
 */
export function ET0_GREENHOUSE(solar_radiation: any[][], transmission: any[][], date: any[][], units: any[][]): any {
  return answerCell("ET0_GREENHOUSE", [solar_radiation, transmission, date, units]);
}

/**
 * Solar radiation of a day before the air takes its part
 * @customfunction EXTRATERRESTRIAL_RADIATION EXTRATERRESTRIAL_RADIATION
 * @helpurl https://localhost:3000/reference/EXTRATERRESTRIAL_RADIATION.html
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank (degrees)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @returns {any} Radiation of the day above the atmosphere (MJ/m2/day)
 */
export function EXTRATERRESTRIAL_RADIATION(latitude: any[][], date: any[][]): any {
  return answerCell("EXTRATERRESTRIAL_RADIATION", [latitude, date]);
}

/**
 * Hours from sunrise to sunset
 * @customfunction DAYLIGHT_HOURS DAYLIGHT_HOURS
 * @helpurl https://localhost:3000/reference/DAYLIGHT_HOURS.html
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank (degrees)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @returns {any} Length of the day (h)
 */
export function DAYLIGHT_HOURS(latitude: any[][], date: any[][]): any {
  return answerCell("DAYLIGHT_HOURS", [latitude, date]);
}

/**
 * Solar radiation of a day from its hours of bright sunshine
 * @customfunction SOLAR_FROM_SUNSHINE SOLAR_FROM_SUNSHINE
 * @helpurl https://localhost:3000/reference/SOLAR_FROM_SUNSHINE.html
 * @param {any[][]} sunshine_hours Bright sunshine of the day; 0 is a value, so leave no blank (h)
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative; 0 is a value, so leave no blank (degrees)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @returns {any} Solar radiation of the day at the ground (MJ/m2/day)
 */
export function SOLAR_FROM_SUNSHINE(sunshine_hours: any[][], latitude: any[][], date: any[][]): any {
  return answerCell("SOLAR_FROM_SUNSHINE", [sunshine_hours, latitude, date]);
}

/**
 * Strength with which the air of a day draws water from leaves
 * @customfunction VAPOR_PRESSURE_DEFICIT VAPOR_PRESSURE_DEFICIT
 * @helpurl https://localhost:3000/reference/VAPOR_PRESSURE_DEFICIT.html
 * @param {any[][]} tmax Highest air temperature of the day; 0 is a value, so leave no blank (F or C)
 * @param {any[][]} tmin Lowest air temperature of the day; 0 is a value, so leave no blank (F or C)
 * @param {any[][]} rh_max Highest relative humidity of the day, 1 to 100 (%)
 * @param {any[][]} rh_min Lowest relative humidity of the day, 1 to 100 (%)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Mean vapour pressure deficit of the day (kPa)
 */
export function VAPOR_PRESSURE_DEFICIT(
  tmax: any[][],
  tmin: any[][],
  rh_max: any[][],
  rh_min: any[][],
  units: any[][],
): any {
  return answerCell("VAPOR_PRESSURE_DEFICIT", [tmax, tmin, rh_max, rh_min, units]);
}

/**
 * Wind at 2 m from the wind of a higher or lower mast
 * @customfunction WIND_AT_2M WIND_AT_2M
 * @helpurl https://localhost:3000/reference/WIND_AT_2M.html
 * @param {any[][]} wind_speed Mean wind of the day; 0 is a value, so leave no blank (mph or m/s)
 * @param {any[][]} height Height of the anemometer above the ground (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Mean wind of the day at 2 m (6.56 ft) (mph or m/s)
 */
export function WIND_AT_2M(wind_speed: any[][], height: any[][], units: any[][]): any {
  return answerCell("WIND_AT_2M", [wind_speed, height, units]);
}

/**
 * Factor from the evaporation of a Class A pan to reference evapotranspiration
 * @customfunction PAN_COEFFICIENT PAN_COEFFICIENT
 * @helpurl https://localhost:3000/reference/PAN_COEFFICIENT.html
 * @param {any[][]} surroundings Ground upwind of the pan: "green" short green plants, "dry" bare dry ground
 * @param {any[][]} fetch How far that ground reaches upwind of the pan (ft or m)
 * @param {any[][]} wind_speed Mean wind of the day at 2 m (6.56 ft) (mph or m/s)
 * @param {any[][]} rh_mean Mean relative humidity of the day, 30 to 84 (%)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Pan coefficient (factor)
 */
export function PAN_COEFFICIENT(
  surroundings: any[][],
  fetch: any[][],
  wind_speed: any[][],
  rh_mean: any[][],
  units: any[][],
): any {
  return answerCell("PAN_COEFFICIENT", [surroundings, fetch, wind_speed, rh_mean, units]);
}

/**
 * A plant's water use against the reference, from a weighed pot
 * @customfunction CROP_COEFFICIENT CROP_COEFFICIENT
 * @helpurl https://localhost:3000/reference/CROP_COEFFICIENT.html
 * @param {any[][]} measured_use Water that one plant used in the day, from two weighings (gal or L)
 * @param {any[][]} reference_et Reference evapotranspiration of the day (in or mm)
 * @param {any[][]} area_per_plant Area per plant on which the coefficient is to be based (ft2 or m2)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Crop coefficient on this area (factor)
 */
export function CROP_COEFFICIENT(
  measured_use: any[][],
  reference_et: any[][],
  area_per_plant: any[][],
  units: any[][],
): any {
  return answerCell("CROP_COEFFICIENT", [measured_use, reference_et, area_per_plant, units]);
}

/**
 * Water that one plant uses on this day
 * @customfunction PLANT_WATER_DEMAND PLANT_WATER_DEMAND
 * @helpurl https://localhost:3000/reference/PLANT_WATER_DEMAND.html
 * @param {any[][]} reference_et Reference evapotranspiration of the day (in or mm)
 * @param {any[][]} crop_coefficient Crop coefficient, on the same area (factor)
 * @param {any[][]} area_per_plant Area per plant on which the coefficient is based (ft2 or m2)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [cover_factor] Measured demand under cover over demand outside (factor)
 * @returns {any} Net water for one plant for the day (gal or L)
 */
export function PLANT_WATER_DEMAND(
  reference_et: any[][],
  crop_coefficient: any[][],
  area_per_plant: any[][],
  units: any[][],
  cover_factor?: any[][],
): any {
  return answerCell("PLANT_WATER_DEMAND", [reference_et, crop_coefficient, area_per_plant, units, cover_factor]);
}

/**
 * Rain that goes into one pot
 * @customfunction EFFECTIVE_RAIN EFFECTIVE_RAIN
 * @helpurl https://localhost:3000/reference/EFFECTIVE_RAIN.html
 * @param {any[][]} rain Rain of the day in the gauge; 0 is a value, so leave no blank (in or mm)
 * @param {any[][]} top_diameter Diameter of the pot's opening (in or cm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [capture_factor] Water that the pot catches with its plant over what it catches without (factor)
 * @param {any[][]} [room] Room left below container capacity; left out or "none" there is no cap, 0 is a full pot (gal or L)
 * @returns {any} Rain that counts, for one pot (gal or L)
 */
export function EFFECTIVE_RAIN(
  rain: any[][],
  top_diameter: any[][],
  units: any[][],
  capture_factor?: any[][],
  room?: any[][],
): any {
  return answerCell("EFFECTIVE_RAIN", [rain, top_diameter, units, capture_factor, room]);
}

/**
 * Water that the pot lacks, day by day, and when to irrigate
 * @customfunction WATER_BALANCE WATER_BALANCE
 * @helpurl https://localhost:3000/reference/WATER_BALANCE.html
 * @param {any[][]} et Use of each day, one row a day (same unit)
 * @param {any[][]} rain Rain that counts on each day; a blank is 0 (same unit)
 * @param {any[][]} irrigation Irrigation that the pot kept on each day; a blank is 0 (same unit)
 * @param {any[][]} capacity Available water of the full pot (same unit)
 * @param {any[][]} [trigger_fraction] Part of the capacity that may be used before it is time to irrigate (fraction)
 * @param {any[][]} [start_deficit] Deficit before the first day; 0 is a full pot (same unit)
 * @returns {any[][]} One row a day: deficit at its end, drainage, unmet use, and "irrigate" where the trigger is reached
 */
export function WATER_BALANCE(
  et: any[][],
  rain: any[][],
  irrigation: any[][],
  capacity: any[][],
  trigger_fraction?: any[][],
  start_deficit?: any[][],
): any[][] {
  return answerCell("WATER_BALANCE", [et, rain, irrigation, capacity, trigger_fraction, start_deficit]) as any[][];
}

/**
 * What a dripper or spray stake really gives, from a catch in mL
 * @customfunction EMITTER_FLOW EMITTER_FLOW
 * @helpurl https://localhost:3000/reference/EMITTER_FLOW.html
 * @param {any[][]} catch_ml Water caught under one emitter, mL; 0 is a value, so leave no blank (mL)
 * @param {any[][]} seconds Seconds for which the water was caught (s)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Flow of the emitter; mL in both systems give gal/h or L/h (gal/h or L/h)
 */
export function EMITTER_FLOW(catch_ml: any[][], seconds: any[][], units: any[][]): any {
  return answerCell("EMITTER_FLOW", [catch_ml, seconds, units]);
}

/**
 * What a hose, valve or pump really gives, from the seconds it takes to fill a bucket
 * @customfunction BUCKET_FLOW BUCKET_FLOW
 * @helpurl https://localhost:3000/reference/BUCKET_FLOW.html
 * @param {any[][]} volume Water caught (gal or L)
 * @param {any[][]} seconds Seconds for which the water was caught (s)
 * @returns {any} Flow per minute, in the unit of the volume (gal/min or L/min)
 */
export function BUCKET_FLOW(volume: any[][], seconds: any[][]): any {
  return answerCell("BUCKET_FLOW", [volume, seconds]);
}

/**
 * How fast overhead sprinklers put water down, from nozzle flow and spacing
 * @customfunction APPLICATION_RATE APPLICATION_RATE
 * @helpurl https://localhost:3000/reference/APPLICATION_RATE.html
 * @param {any[][]} nozzle_flow Flow of one full-circle nozzle (gal/min or L/min)
 * @param {any[][]} spacing_along Distance between nozzles along the row; the side of the triangle in "triangle" (ft or m)
 * @param {any[][]} spacing_between Distance between rows; in "triangle" blank or equal to spacing_along (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [pattern] "square" in line, rectangles too; "triangle" equilateral, one side is enough; "offset" staggered rows
 * @returns {any} Depth of water per hour on the ground (in/h or mm/h)
 */
export function APPLICATION_RATE(
  nozzle_flow: any[][],
  spacing_along: any[][],
  spacing_between: any[][],
  units: any[][],
  pattern?: any[][],
): any {
  return answerCell("APPLICATION_RATE", [nozzle_flow, spacing_along, spacing_between, units, pattern]);
}

/**
 * How fast overhead water really comes down, from catch cans
 * @customfunction CATCH_RATE CATCH_RATE
 * @helpurl https://localhost:3000/reference/CATCH_RATE.html
 * @param {any[][]} catches_ml Water in each can, mL; a range of any shape (mL)
 * @param {any[][]} can_diameter Inside diameter of the mouth of a can (in or cm)
 * @param {any[][]} minutes Minutes for which the water ran over the cans (min)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [zeros] What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out
 * @returns {any} Mean depth of water per hour (in/h or mm/h)
 */
export function CATCH_RATE(
  catches_ml: any[][],
  can_diameter: any[][],
  minutes: any[][],
  units: any[][],
  zeros?: any[][],
): any {
  return answerCell("CATCH_RATE", [catches_ml, can_diameter, minutes, units, zeros]);
}

/**
 * How evenly water is spread: the driest quarter against the mean
 * @customfunction DU_LOW_QUARTER DU_LOW_QUARTER
 * @helpurl https://localhost:3000/reference/DU_LOW_QUARTER.html
 * @param {any[][]} readings Catches or flows, all in one unit; a range of any shape (same unit)
 * @param {any[][]} [zeros] What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out
 * @returns {any} Low-quarter distribution uniformity (fraction)
 */
export function DU_LOW_QUARTER(readings: any[][], zeros?: any[][]): any {
  return answerCell("DU_LOW_QUARTER", [readings, zeros]);
}

/**
 * How evenly sprinklers spread water: all deviations from the mean, wet and dry alike
 * @customfunction CU_CHRISTIANSEN CU_CHRISTIANSEN
 * @helpurl https://localhost:3000/reference/CU_CHRISTIANSEN.html
 * @param {any[][]} readings Catches or flows, all in one unit; a range of any shape (same unit)
 * @param {any[][]} [zeros] What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out
 * @returns {any} Christiansen's coefficient of uniformity (fraction)
 */
export function CU_CHRISTIANSEN(readings: any[][], zeros?: any[][]): any {
  return answerCell("CU_CHRISTIANSEN", [readings, zeros]);
}

/**
 * How alike drippers or stakes run: 1 minus their coefficient of variation
 * @customfunction STATISTICAL_UNIFORMITY STATISTICAL_UNIFORMITY
 * @helpurl https://localhost:3000/reference/STATISTICAL_UNIFORMITY.html
 * @param {any[][]} readings Catches or flows, all in one unit; a range of any shape (same unit)
 * @param {any[][]} [zeros] What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out
 * @returns {any} Statistical uniformity (fraction)
 */
export function STATISTICAL_UNIFORMITY(readings: any[][], zeros?: any[][]): any {
  return answerCell("STATISTICAL_UNIFORMITY", [readings, zeros]);
}

/**
 * How even a drip design can be, from emitter make and pressure
 * @customfunction EMISSION_UNIFORMITY EMISSION_UNIFORMITY
 * @helpurl https://localhost:3000/reference/EMISSION_UNIFORMITY.html
 * @param {any[][]} variation Maker's coefficient of variation of new emitters; 0 is a value, so leave no blank (fraction)
 * @param {any[][]} emitters_per_plant Emitters that serve one plant (count)
 * @param {any[][]} flow_min Flow of an emitter at the lowest pressure of the zone (gal/h or L/h)
 * @param {any[][]} flow_mean Mean flow of the zone, in the same unit (gal/h or L/h)
 * @returns {any} Design emission uniformity (fraction)
 */
export function EMISSION_UNIFORMITY(
  variation: any[][],
  emitters_per_plant: any[][],
  flow_min: any[][],
  flow_mean: any[][],
): any {
  return answerCell("EMISSION_UNIFORMITY", [variation, emitters_per_plant, flow_min, flow_mean]);
}

/**
 * How even a whole catch test or emitter test is, in one table: means, extremes, Cv, DU and CU
 * @customfunction UNIFORMITY_AUDIT UNIFORMITY_AUDIT
 * @helpurl https://localhost:3000/reference/UNIFORMITY_AUDIT.html
 * @param {any[][]} readings Catches or flows, all in one unit; a range of any shape (same unit)
 * @param {any[][]} [zeros] What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out
 * @returns {any[][]} Nine rows: readings used, blanks or zeros met, mean, low-quarter mean, min, max, Cv, DU, CU
 */
export function UNIFORMITY_AUDIT(readings: any[][], zeros?: any[][]): any[][] {
  return answerCell("UNIFORMITY_AUDIT", [readings, zeros]) as any[][];
}

/**
 * How many emitters of a zone give nothing, too little, what they should, or too much
 * @customfunction EMITTER_SURVEY EMITTER_SURVEY
 * @helpurl https://localhost:3000/reference/EMITTER_SURVEY.html
 * @param {any[][]} flows Measured flows, one cell an emitter; blank or 0 is no flow; a range of any shape (gal/h or L/h)
 * @param {any[][]} rated_flow Flow that the emitter should give at this pressure, in the same unit (gal/h or L/h)
 * @param {any[][]} [low] Lower edge of the band, as a ratio to the rated flow (factor)
 * @param {any[][]} [high] Upper edge of the band, as a ratio to the rated flow (factor)
 * @returns {any[][]} Six rows: tested, no flow, low, in band, high with count and share, then mean / rated
 */
export function EMITTER_SURVEY(flows: any[][], rated_flow: any[][], low?: any[][], high?: any[][]): any[][] {
  return answerCell("EMITTER_SURVEY", [flows, rated_flow, low, high]) as any[][];
}

/**
 * How much longer to run an uneven zone where roots share the ground
 * @customfunction RUN_TIME_MULTIPLIER RUN_TIME_MULTIPLIER
 * @helpurl https://localhost:3000/reference/RUN_TIME_MULTIPLIER.html
 * @param {any[][]} uniformity Low-quarter uniformity of the zone (fraction)
 * @returns {any} Factor on the run time of a perfectly even zone (factor)
 */
export function RUN_TIME_MULTIPLIER(uniformity: any[][]): any {
  return answerCell("RUN_TIME_MULTIPLIER", [uniformity]);
}

/**
 * Part of the water that entered the pot and ran out below
 * @customfunction LEACHING_FRACTION LEACHING_FRACTION
 * @helpurl https://localhost:3000/reference/LEACHING_FRACTION.html
 * @param {any[][]} leachate Water caught below the pot; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} applied Water that entered the pot, in the same unit (same unit)
 * @returns {any} Leaching fraction (fraction)
 */
export function LEACHING_FRACTION(leachate: any[][], applied: any[][]): any {
  return answerCell("LEACHING_FRACTION", [leachate, applied]);
}

/**
 * Leaching fraction of a block from a log of pots, and how far the pots differ
 * @customfunction LEACHING_SUMMARY LEACHING_SUMMARY
 * @helpurl https://localhost:3000/reference/LEACHING_SUMMARY.html
 * @param {any[][]} leachates Water caught below each pot, one row a pot; a dry saucer is 0 (same unit)
 * @param {any[][]} applieds Water that entered each pot, in the same unit, one row a pot (same unit)
 * @param {any[][]} [zeros] A blank or 0 leachate: "count" takes it as a dry saucer, "error" names the cell, "skip" leaves the pot out
 * @returns {any[][]} Pots, pooled fraction, mean of fractions, min, max, and Cv ("" for one pot, or where nothing leached)
 */
export function LEACHING_SUMMARY(leachates: any[][], applieds: any[][], zeros?: any[][]): any[][] {
  return answerCell("LEACHING_SUMMARY", [leachates, applieds, zeros]) as any[][];
}

/**
 * New run time from a leaching test
 * @customfunction RUN_MINUTES_FROM_LEACHING RUN_MINUTES_FROM_LEACHING
 * @helpurl https://localhost:3000/reference/RUN_MINUTES_FROM_LEACHING.html
 * @param {any[][]} minutes_now Run time of the test (min)
 * @param {any[][]} measured Leaching fraction measured at that run time; 0 or blank has no answer (fraction)
 * @param {any[][]} target Leaching fraction wanted; 0 is a value, so leave no blank (fraction)
 * @returns {any} Run time for the leaching fraction wanted (min)
 */
export function RUN_MINUTES_FROM_LEACHING(minutes_now: any[][], measured: any[][], target: any[][]): any {
  return answerCell("RUN_MINUTES_FROM_LEACHING", [minutes_now, measured, target]);
}

/**
 * Part of the water that must leach to keep the soil's salt at what the crop tolerates
 * @customfunction LEACHING_REQUIREMENT LEACHING_REQUIREMENT
 * @helpurl https://localhost:3000/reference/LEACHING_REQUIREMENT.html
 * @param {any[][]} ec_water EC of the water as applied, its feed included (mS/cm)
 * @param {any[][]} ec_threshold EC of the soil's saturation extract that the crop tolerates (mS/cm)
 * @returns {any} Leaching requirement, a part of the water applied (fraction)
 */
export function LEACHING_REQUIREMENT(ec_water: any[][], ec_threshold: any[][]): any {
  return answerCell("LEACHING_REQUIREMENT", [ec_water, ec_threshold]);
}

/**
 * Leaching fraction from the EC of the water applied and of the leachate
 * @customfunction LEACHING_FROM_EC LEACHING_FROM_EC
 * @helpurl https://localhost:3000/reference/LEACHING_FROM_EC.html
 * @param {any[][]} ec_applied EC of the water as applied, its feed included (mS/cm)
 * @param {any[][]} ec_leachate EC of the leachate, or the highest that the crop tolerates (mS/cm)
 * @returns {any} Leaching fraction (fraction)
 */
export function LEACHING_FROM_EC(ec_applied: any[][], ec_leachate: any[][]): any {
  return answerCell("LEACHING_FROM_EC", [ec_applied, ec_leachate]);
}

/**
 * Weight of an element that leaves the pots with the leachate
 * @customfunction NUTRIENT_LEACHED NUTRIENT_LEACHED
 * @helpurl https://localhost:3000/reference/NUTRIENT_LEACHED.html
 * @param {any[][]} applied_volume Feed that entered the pots, over the time in question (gal or L)
 * @param {any[][]} leaching_fraction Pooled leaching fraction of the block; 0 is a value, so leave no blank (fraction)
 * @param {any[][]} ppm Element in the leachate in mg/L; take that of the feed where the leachate was not tested (ppm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Weight of the element leached (lb or kg)
 */
export function NUTRIENT_LEACHED(
  applied_volume: any[][],
  leaching_fraction: any[][],
  ppm: any[][],
  units: any[][],
): any {
  return answerCell("NUTRIENT_LEACHED", [applied_volume, leaching_fraction, ppm, units]);
}

/**
 * Water to give so that the pots keep what the plants need
 * @customfunction GROSS_WATER GROSS_WATER
 * @helpurl https://localhost:3000/reference/GROSS_WATER.html
 * @param {any[][]} net Water that the plant needs (gal or L)
 * @param {any[][]} leaching_fraction Leaching fraction wanted; 0 is a value, so leave no blank (fraction)
 * @param {any[][]} uniformity Low-quarter uniformity of the zone (fraction)
 * @param {any[][]} [basis] "leaching" net / (1 - LF); "uniformity" net / DU; "larger" whichever of the two is more; "both" net / ((1 - LF) DU)
 * @returns {any} Gross water, in the unit of the net (gal or L)
 */
export function GROSS_WATER(net: any[][], leaching_fraction: any[][], uniformity: any[][], basis?: any[][]): any {
  return answerCell("GROSS_WATER", [net, leaching_fraction, uniformity, basis]);
}

/**
 * Minutes to give each plant its water
 * @customfunction RUN_MINUTES RUN_MINUTES
 * @helpurl https://localhost:3000/reference/RUN_MINUTES.html
 * @param {any[][]} volume_per_plant Gross water for one plant at this irrigation (gal or L)
 * @param {any[][]} emitter_flow Measured flow of one emitter, in the same volume unit per hour (gal/h or L/h)
 * @param {any[][]} [emitters_per_plant] Emitters that serve one plant (count)
 * @returns {any} Run time (min)
 */
export function RUN_MINUTES(volume_per_plant: any[][], emitter_flow: any[][], emitters_per_plant?: any[][]): any {
  return answerCell("RUN_MINUTES", [volume_per_plant, emitter_flow, emitters_per_plant]);
}

/**
 * Minutes for the day's weather in one call: demand, gross water and run time
 * @customfunction RUN_MINUTES_FROM_ET RUN_MINUTES_FROM_ET
 * @helpurl https://localhost:3000/reference/RUN_MINUTES_FROM_ET.html
 * @param {any[][]} reference_et Reference evapotranspiration of the day (in or mm)
 * @param {any[][]} crop_coefficient Crop coefficient, on the same area (factor)
 * @param {any[][]} area_per_plant Area per plant on which the coefficient is based (ft2 or m2)
 * @param {any[][]} leaching_fraction Leaching fraction wanted; 0 is a value, so leave no blank (fraction)
 * @param {any[][]} uniformity Low-quarter uniformity of the zone (fraction)
 * @param {any[][]} emitter_flow Measured flow of one emitter (gal/h or L/h)
 * @param {any[][]} emitters_per_plant Emitters that serve one plant (count)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [cover_factor] Measured demand under cover over demand outside (factor)
 * @returns {any} Run time for the day (min)
 */
export function RUN_MINUTES_FROM_ET(
  reference_et: any[][],
  crop_coefficient: any[][],
  area_per_plant: any[][],
  leaching_fraction: any[][],
  uniformity: any[][],
  emitter_flow: any[][],
  emitters_per_plant: any[][],
  units: any[][],
  cover_factor?: any[][],
): any {
  return answerCell("RUN_MINUTES_FROM_ET", [
    reference_et,
    crop_coefficient,
    area_per_plant,
    leaching_fraction,
    uniformity,
    emitter_flow,
    emitters_per_plant,
    units,
    cover_factor,
  ]);
}

/**
 * Part of overhead water that falls on the pots, not between them
 * @customfunction INTERCEPTION_FRACTION INTERCEPTION_FRACTION
 * @helpurl https://localhost:3000/reference/INTERCEPTION_FRACTION.html
 * @param {any[][]} top_diameter Outside diameter of the pot at the rim (in or cm)
 * @param {any[][]} area_per_plant Ground that one pot takes up, from centre to centre (ft2 or m2)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Part of the ground that pot tops cover (fraction)
 */
export function INTERCEPTION_FRACTION(top_diameter: any[][], area_per_plant: any[][], units: any[][]): any {
  return answerCell("INTERCEPTION_FRACTION", [top_diameter, area_per_plant, units]);
}

/**
 * Overhead water that a pot gets with its plant, against an empty pot
 * @customfunction CAPTURE_FACTOR CAPTURE_FACTOR
 * @helpurl https://localhost:3000/reference/CAPTURE_FACTOR.html
 * @param {any[][]} water_with_plant Water that entered the pot with its plant, kept and leached together (same unit)
 * @param {any[][]} water_empty_pot Water that an empty pot of the same opening caught, in the same unit (same unit)
 * @returns {any} Capture factor (factor)
 */
export function CAPTURE_FACTOR(water_with_plant: any[][], water_empty_pot: any[][]): any {
  return answerCell("CAPTURE_FACTOR", [water_with_plant, water_empty_pot]);
}

/**
 * Depth that sprinklers or a boom must give so that each pot gets its water
 * @customfunction OVERHEAD_DEPTH OVERHEAD_DEPTH
 * @helpurl https://localhost:3000/reference/OVERHEAD_DEPTH.html
 * @param {any[][]} net_per_plant Water that one plant uses (gal or L)
 * @param {any[][]} top_diameter Diameter of the pot's opening (in or cm)
 * @param {any[][]} capture_factor Water that the pot catches with its plant over what it catches without (factor)
 * @param {any[][]} leaching_fraction Leaching fraction wanted; 0 is a value, so leave no blank (fraction)
 * @param {any[][]} uniformity Low-quarter uniformity of the zone (fraction)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Gross depth over the whole bed (in or mm)
 */
export function OVERHEAD_DEPTH(
  net_per_plant: any[][],
  top_diameter: any[][],
  capture_factor: any[][],
  leaching_fraction: any[][],
  uniformity: any[][],
  units: any[][],
): any {
  return answerCell("OVERHEAD_DEPTH", [
    net_per_plant,
    top_diameter,
    capture_factor,
    leaching_fraction,
    uniformity,
    units,
  ]);
}

/**
 * Minutes that sprinklers take to give a depth
 * @customfunction OVERHEAD_RUN_MINUTES OVERHEAD_RUN_MINUTES
 * @helpurl https://localhost:3000/reference/OVERHEAD_RUN_MINUTES.html
 * @param {any[][]} depth Gross depth to give (in or mm)
 * @param {any[][]} application_rate Measured rate of the sprinklers, in the same unit per hour (in/h or mm/h)
 * @returns {any} Run time (min)
 */
export function OVERHEAD_RUN_MINUTES(depth: any[][], application_rate: any[][]): any {
  return answerCell("OVERHEAD_RUN_MINUTES", [depth, application_rate]);
}

/**
 * Minutes for a drip line that lies over the pot tops
 * @customfunction DRIP_LINE_RUN_MINUTES DRIP_LINE_RUN_MINUTES
 * @helpurl https://localhost:3000/reference/DRIP_LINE_RUN_MINUTES.html
 * @param {any[][]} volume_per_plant Gross water for one plant at this irrigation (gal or L)
 * @param {any[][]} emitter_flow Measured flow of one emitter, in the same volume unit per hour (gal/h or L/h)
 * @param {any[][]} emitter_spacing From one emitter to the next; not read when aligned_emitters is above 0 (in or cm)
 * @param {any[][]} top_diameter Diameter of the pot's opening, in the unit of the spacing (in or cm)
 * @param {any[][]} [aligned_emitters] Emitters put over each pot on purpose; 0 where the line just runs over the pots (count)
 * @param {any[][]} [basis] "fewest" so that no pot is short; "average" for the mean of the pots
 * @returns {any} Run time (min)
 */
export function DRIP_LINE_RUN_MINUTES(
  volume_per_plant: any[][],
  emitter_flow: any[][],
  emitter_spacing: any[][],
  top_diameter: any[][],
  aligned_emitters?: any[][],
  basis?: any[][],
): any {
  return answerCell("DRIP_LINE_RUN_MINUTES", [
    volume_per_plant,
    emitter_flow,
    emitter_spacing,
    top_diameter,
    aligned_emitters,
    basis,
  ]);
}

/**
 * Start and stop of each pulse when the day's water is given in parts
 * @customfunction PULSE_SCHEDULE PULSE_SCHEDULE
 * @helpurl https://localhost:3000/reference/PULSE_SCHEDULE.html
 * @param {any[][]} total_minutes Run time of the day, without filling the line (min)
 * @param {any[][]} pulses Number of pulses (count)
 * @param {any[][]} rest_minutes Rest from the stop of one pulse to the start of the next; 0 is a value, so leave no blank (min)
 * @param {any[][]} start_time Start of the first pulse, a time of the sheet; 0 is midnight (time)
 * @param {any[][]} [fill_minutes] Minutes for filling the line, added to every pulse (min)
 * @returns {any[][]} One row a pulse
 */
export function PULSE_SCHEDULE(
  total_minutes: any[][],
  pulses: any[][],
  rest_minutes: any[][],
  start_time: any[][],
  fill_minutes?: any[][],
): any[][] {
  return answerCell("PULSE_SCHEDULE", [total_minutes, pulses, rest_minutes, start_time, fill_minutes]) as any[][];
}

/**
 * Flow that a zone draws while it runs, per minute
 * @customfunction ZONE_FLOW ZONE_FLOW
 * @helpurl https://localhost:3000/reference/ZONE_FLOW.html
 * @param {any[][]} plants Plants of the zone (count)
 * @param {any[][]} emitters_per_plant Emitters that serve one plant (count)
 * @param {any[][]} emitter_flow Measured flow of one emitter, in the same volume unit per hour (gal/h or L/h)
 * @returns {any} Flow of the zone, in the same volume unit per minute (gal/min or L/min)
 */
export function ZONE_FLOW(plants: any[][], emitters_per_plant: any[][], emitter_flow: any[][]): any {
  return answerCell("ZONE_FLOW", [plants, emitters_per_plant, emitter_flow]);
}

/**
 * Equal zones that the supply carries at the same time
 * @customfunction ZONES_AT_ONCE ZONES_AT_ONCE
 * @helpurl https://localhost:3000/reference/ZONES_AT_ONCE.html
 * @param {any[][]} supply_flow Flow that the supply holds at the pressure that the zones need (gal/min or L/min)
 * @param {any[][]} zone_flow Flow of one zone, in the same unit (gal/min or L/min)
 * @returns {any} Whole zones at once; 0 where one zone is too big (count)
 */
export function ZONES_AT_ONCE(supply_flow: any[][], zone_flow: any[][]): any {
  return answerCell("ZONES_AT_ONCE", [supply_flow, zone_flow]);
}

/**
 * Start and stop of each zone, so that the supply is never asked for more than it gives
 * @customfunction ZONE_SEQUENCE ZONE_SEQUENCE
 * @helpurl https://localhost:3000/reference/ZONE_SEQUENCE.html
 * @param {any[][]} zone_names Names of the zones in the order in which they may run
 * @param {any[][]} minutes Run time of each zone for the whole round (min)
 * @param {any[][]} flows Flow of each zone, in the unit of the supply (gal/min or L/min)
 * @param {any[][]} supply_flow Flow that the supply holds at the pressure that the zones need (gal/min or L/min)
 * @param {any[][]} start_time Start of the first set, a time of the sheet; 0 is midnight (time)
 * @param {any[][]} [gap_minutes] From the last stop of a set to the start of the next, and between valves in turn; 0 is a value (min)
 * @param {any[][]} [cycles] How many times the whole order runs, with minutes / cycles each (count)
 * @returns {any[][]} One row a zone and cycle, then the end of the round with the highest flow at once
 */
export function ZONE_SEQUENCE(
  zone_names: any[][],
  minutes: any[][],
  flows: any[][],
  supply_flow: any[][],
  start_time: any[][],
  gap_minutes?: any[][],
  cycles?: any[][],
): any[][] {
  return answerCell("ZONE_SEQUENCE", [
    zone_names,
    minutes,
    flows,
    supply_flow,
    start_time,
    gap_minutes,
    cycles,
  ]) as any[][];
}

/**
 * Minutes until an empty line is full and its far end gets water
 * @customfunction LINE_FILL_MINUTES LINE_FILL_MINUTES
 * @helpurl https://localhost:3000/reference/LINE_FILL_MINUTES.html
 * @param {any[][]} pipe_length Length of pipe of this size (ft or m)
 * @param {any[][]} inside_diameter Inside diameter, from the pipe's table or a caliper; never the nominal size (in or mm)
 * @param {any[][]} fill_flow Flow into the line while it fills (gal/min or L/min)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Minutes to fill the line (min)
 */
export function LINE_FILL_MINUTES(
  pipe_length: any[][],
  inside_diameter: any[][],
  fill_flow: any[][],
  units: any[][],
): any {
  return answerCell("LINE_FILL_MINUTES", [pipe_length, inside_diameter, fill_flow, units]);
}

/**
 * Depth that one pass of a boom gives
 * @customfunction BOOM_DEPTH BOOM_DEPTH
 * @helpurl https://localhost:3000/reference/BOOM_DEPTH.html
 * @param {any[][]} boom_flow Flow of the whole boom, all nozzles together (gal/min or L/min)
 * @param {any[][]} travel_speed Speed of the boom while it waters (ft/min or m/min)
 * @param {any[][]} swath_width Width that the boom waters (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Depth of one pass (in or mm)
 */
export function BOOM_DEPTH(boom_flow: any[][], travel_speed: any[][], swath_width: any[][], units: any[][]): any {
  return answerCell("BOOM_DEPTH", [boom_flow, travel_speed, swath_width, units]);
}

/**
 * Passes, minutes and water of a boom for every section of a house
 * @customfunction BOOM_PLAN BOOM_PLAN
 * @helpurl https://localhost:3000/reference/BOOM_PLAN.html
 * @param {any[][]} section_names Names of the sections in the order in which the boom meets them
 * @param {any[][]} depths Gross depth wanted on each section; 0 is passed over dry (in or mm)
 * @param {any[][]} lengths Length of each section along the rails (ft or m)
 * @param {any[][]} boom_flow Flow of the whole boom, all nozzles together (gal/min or L/min)
 * @param {any[][]} travel_speed Speed of the boom while it waters (ft/min or m/min)
 * @param {any[][]} swath_width Width that the boom waters (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any[][]} One row a section, then the total
 */
export function BOOM_PLAN(
  section_names: any[][],
  depths: any[][],
  lengths: any[][],
  boom_flow: any[][],
  travel_speed: any[][],
  swath_width: any[][],
  units: any[][],
): any[][] {
  return answerCell("BOOM_PLAN", [
    section_names,
    depths,
    lengths,
    boom_flow,
    travel_speed,
    swath_width,
    units,
  ]) as any[][];
}

/**
 * Water that fills a capillary mat again
 * @customfunction MAT_RECHARGE MAT_RECHARGE
 * @helpurl https://localhost:3000/reference/MAT_RECHARGE.html
 * @param {any[][]} mat_area Area of the whole mat (ft2 or m2)
 * @param {any[][]} wet_weight Weight of the square, soaked and drained (lb or kg)
 * @param {any[][]} dry_weight Weight of the same square, dry (lb or kg)
 * @param {any[][]} sample_area Area of the square that was weighed (ft2 or m2)
 * @param {any[][]} depleted_fraction Part of the water of the full mat that is gone; 1 is a dry mat (fraction)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Water that the mat takes up (gal or L)
 */
export function MAT_RECHARGE(
  mat_area: any[][],
  wet_weight: any[][],
  dry_weight: any[][],
  sample_area: any[][],
  depleted_fraction: any[][],
  units: any[][],
): any {
  return answerCell("MAT_RECHARGE", [mat_area, wet_weight, dry_weight, sample_area, depleted_fraction, units]);
}

/**
 * Water that stands on a bench or floor when it is flooded
 * @customfunction FLOOD_VOLUME FLOOD_VOLUME
 * @helpurl https://localhost:3000/reference/FLOOD_VOLUME.html
 * @param {any[][]} bench_area Area inside the rim that the water covers (ft2 or m2)
 * @param {any[][]} flood_depth Depth of the standing water (in or mm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [pots] Pots on the bench; 0 is an empty bench (count)
 * @param {any[][]} [pot_base_diameter] Outside diameter of a pot at its base; needed with pots (in or cm)
 * @returns {any} Standing water, without what the pots take up (gal or L)
 */
export function FLOOD_VOLUME(
  bench_area: any[][],
  flood_depth: any[][],
  units: any[][],
  pots?: any[][],
  pot_base_diameter?: any[][],
): any {
  return answerCell("FLOOD_VOLUME", [bench_area, flood_depth, units, pots, pot_base_diameter]);
}

/**
 * Minutes that the pump takes to flood a bench
 * @customfunction FILL_MINUTES FILL_MINUTES
 * @helpurl https://localhost:3000/reference/FILL_MINUTES.html
 * @param {any[][]} volume Standing water on the full bench (gal or L)
 * @param {any[][]} fill_flow Flow that reaches the bench, in the same volume unit per minute (gal/min or L/min)
 * @param {any[][]} [uptake] What all pots of the bench take up, in the same unit; 0 is none (gal or L)
 * @returns {any} Minutes from the start of the pump to the full bench (min)
 */
export function FILL_MINUTES(volume: any[][], fill_flow: any[][], uptake?: any[][]): any {
  return answerCell("FILL_MINUTES", [volume, fill_flow, uptake]);
}

/**
 * Fill and drain of each bench, and whether the tank lasts through the round
 * @customfunction FLOOD_SCHEDULE FLOOD_SCHEDULE
 * @helpurl https://localhost:3000/reference/FLOOD_SCHEDULE.html
 * @param {any[][]} bench_names Names of the benches in the order in which they are flooded
 * @param {any[][]} flood_volumes Standing water of each full bench, one row a bench (gal or L)
 * @param {any[][]} uptakes What the pots of each bench take up, in the same unit; 0 is a value, so leave no blank (gal or L)
 * @param {any[][]} bench_flow Flow that reaches each open bench, in the same volume unit per minute (gal/min or L/min)
 * @param {any[][]} benches_at_once Benches that are filled at the same time (count)
 * @param {any[][]} soak_minutes Minutes from the full bench to the start of its drain; 0 is a value, so leave no blank (min)
 * @param {any[][]} drain_minutes Minutes from the start of the drain to the empty bench (min)
 * @param {any[][]} start_time Start of the first fill, a time of the sheet; 0 is midnight (time)
 * @param {any[][]} start_tank Water in the tank at the start, above the pump's intake (gal or L)
 * @param {any[][]} [next] "after_fill" starts the next group when this one is full, "after_drain" when it is empty
 * @returns {any[][]} One row a bench, with the tank's level when it is empty; then the lowest level of the round and its time
 */
export function FLOOD_SCHEDULE(
  bench_names: any[][],
  flood_volumes: any[][],
  uptakes: any[][],
  bench_flow: any[][],
  benches_at_once: any[][],
  soak_minutes: any[][],
  drain_minutes: any[][],
  start_time: any[][],
  start_tank: any[][],
  next?: any[][],
): any[][] {
  return answerCell("FLOOD_SCHEDULE", [
    bench_names,
    flood_volumes,
    uptakes,
    bench_flow,
    benches_at_once,
    soak_minutes,
    drain_minutes,
    start_time,
    start_tank,
    next,
  ]) as any[][];
}

/**
 * Size of the tank that the flood water comes from and runs back to
 * @customfunction RECIRCULATION_TANK RECIRCULATION_TANK
 * @helpurl https://localhost:3000/reference/RECIRCULATION_TANK.html
 * @param {any[][]} flood_volume Standing water on one full bench (gal or L)
 * @param {any[][]} benches_holding_water The most benches that hold water at once: filling, soaking or draining (count)
 * @param {any[][]} uptake_until_topup What the pots of all benches take up until the tank is topped up; 0 is a value, so leave no blank (gal or L)
 * @param {any[][]} dead_storage Water below the pump's intake; 0 is a value, so leave no blank (gal or L)
 * @param {any[][]} [freeboard] Room above the full tank, as a part of what it holds; 0 is none (fraction)
 * @returns {any} Volume of the tank, in the unit of the others (gal or L)
 */
export function RECIRCULATION_TANK(
  flood_volume: any[][],
  benches_holding_water: any[][],
  uptake_until_topup: any[][],
  dead_storage: any[][],
  freeboard?: any[][],
): any {
  return answerCell("RECIRCULATION_TANK", [
    flood_volume,
    benches_holding_water,
    uptake_until_topup,
    dead_storage,
    freeboard,
  ]);
}

/**
 * Water in an upright round tank
 * @customfunction TANK_VOLUME TANK_VOLUME
 * @helpurl https://localhost:3000/reference/TANK_VOLUME.html
 * @param {any[][]} diameter Inside diameter (ft or m)
 * @param {any[][]} depth Depth of the water (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Volume of the water (gal or L)
 */
export function TANK_VOLUME(diameter: any[][], depth: any[][], units: any[][]): any {
  return answerCell("TANK_VOLUME", [diameter, depth, units]);
}

/**
 * Water that a roof or a bed of plastic brings in from a rain
 * @customfunction RAIN_HARVEST RAIN_HARVEST
 * @helpurl https://localhost:3000/reference/RAIN_HARVEST.html
 * @param {any[][]} area Footprint that the rain is collected from (ft2 or m2)
 * @param {any[][]} rain Rain of a storm, a month or a year; 0 is a value, so leave no blank (in or mm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [coefficient] Part of the rain that arrives in the tank (fraction)
 * @returns {any} Water brought in (gal or L)
 */
export function RAIN_HARVEST(area: any[][], rain: any[][], units: any[][], coefficient?: any[][]): any {
  return answerCell("RAIN_HARVEST", [area, rain, units, coefficient]);
}

/**
 * Days that a pond or tank lasts
 * @customfunction DAYS_OF_STORAGE DAYS_OF_STORAGE
 * @helpurl https://localhost:3000/reference/DAYS_OF_STORAGE.html
 * @param {any[][]} usable_volume Water that can be pumped from the store (gal or L)
 * @param {any[][]} daily_use Use of a day, in the same unit (gal or L)
 * @param {any[][]} [daily_loss] Evaporation and seepage of a day; 0 is none (gal or L)
 * @param {any[][]} [daily_inflow] What comes in on a day; 0 is none (gal or L)
 * @returns {any} Days until the usable volume is gone (days)
 */
export function DAYS_OF_STORAGE(
  usable_volume: any[][],
  daily_use: any[][],
  daily_loss?: any[][],
  daily_inflow?: any[][],
): any {
  return answerCell("DAYS_OF_STORAGE", [usable_volume, daily_use, daily_loss, daily_inflow]);
}

/**
 * Flow that the well or the main must bring on the hottest day
 * @customfunction PEAK_SUPPLY_FLOW PEAK_SUPPLY_FLOW
 * @helpurl https://localhost:3000/reference/PEAK_SUPPLY_FLOW.html
 * @param {any[][]} area Area that is irrigated (ft2 or m2)
 * @param {any[][]} depth Gross water of the hottest day, as a depth over the area (in/day or mm/day)
 * @param {any[][]} hours_per_day Hours of the day in which water runs (h)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Flow of the supply while water runs (gal/min or L/min)
 */
export function PEAK_SUPPLY_FLOW(area: any[][], depth: any[][], hours_per_day: any[][], units: any[][]): any {
  return answerCell("PEAK_SUPPLY_FLOW", [area, depth, hours_per_day, units]);
}

/**
 * Fertilizer to weigh out for a tank that is fed straight from the mix
 * @customfunction FERTILIZER_WEIGHT FERTILIZER_WEIGHT
 * @helpurl https://localhost:3000/reference/FERTILIZER_WEIGHT.html
 * @param {any[][]} ppm Element wanted in the water as applied (mg/L of N, or of P or K as elements), not ppm of the product (ppm)
 * @param {any[][]} analysis Part of the product that is that element, by weight: 20 % N is 0.20; label P2O5 and K2O must be converted (fraction)
 * @param {any[][]} volume Water that is to be fed (gal or L)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Weight of the product (lb or kg)
 */
export function FERTILIZER_WEIGHT(ppm: any[][], analysis: any[][], volume: any[][], units: any[][]): any {
  return answerCell("FERTILIZER_WEIGHT", [ppm, analysis, volume, units]);
}

/**
 * Strength of a feed from the fertilizer weighed into it, as ppm of an element
 * @customfunction PPM_FROM_WEIGHT PPM_FROM_WEIGHT
 * @helpurl https://localhost:3000/reference/PPM_FROM_WEIGHT.html
 * @param {any[][]} weight Weight of the product (lb or kg)
 * @param {any[][]} analysis Part of the product that is that element, by weight: 20 % N is 0.20; label P2O5 and K2O must be converted (fraction)
 * @param {any[][]} volume Water that it is dissolved in (gal or L)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} ppm (mg/L) of the element (ppm)
 */
export function PPM_FROM_WEIGHT(weight: any[][], analysis: any[][], volume: any[][], units: any[][]): any {
  return answerCell("PPM_FROM_WEIGHT", [weight, analysis, volume, units]);
}

/**
 * Fertilizer to weigh out for a stock tank behind an injector
 * @customfunction STOCK_WEIGHT STOCK_WEIGHT
 * @helpurl https://localhost:3000/reference/STOCK_WEIGHT.html
 * @param {any[][]} ppm Element wanted in the water as applied (mg/L of N, or of P or K as elements), not ppm of the product (ppm)
 * @param {any[][]} analysis Part of the product that is that element, by weight: 20 % N is 0.20; label P2O5 and K2O must be converted (fraction)
 * @param {any[][]} injector_ratio Injector ratio: 100 for 1:100, which is 1 part of stock in 100 parts of treated water, or 1 % (factor)
 * @param {any[][]} stock_volume Finished stock to be made (gal or L)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Weight of the product for the stock tank (lb or kg)
 */
export function STOCK_WEIGHT(
  ppm: any[][],
  analysis: any[][],
  injector_ratio: any[][],
  stock_volume: any[][],
  units: any[][],
): any {
  return answerCell("STOCK_WEIGHT", [ppm, analysis, injector_ratio, stock_volume, units]);
}

/**
 * Ratio that an injector really doses, from the water treated and the stock it used
 * @customfunction INJECTOR_RATIO INJECTOR_RATIO
 * @helpurl https://localhost:3000/reference/INJECTOR_RATIO.html
 * @param {any[][]} treated_volume Water that went through in the test, caught at the end or read off a meter (gal or L)
 * @param {any[][]} stock_used Stock that was drawn meanwhile, in the same unit (gal or L)
 * @param {any[][]} [counts_stock] TRUE: the treated volume holds the stock (caught behind the injector); FALSE: metered before the injector
 * @returns {any} Parts of treated water for 1 part of stock (factor)
 */
export function INJECTOR_RATIO(treated_volume: any[][], stock_used: any[][], counts_stock?: any[][]): any {
  return answerCell("INJECTOR_RATIO", [treated_volume, stock_used, counts_stock]);
}

/**
 * EC that the meter should show at the hose end when the feed is right
 * @customfunction FERTIGATION_EC FERTIGATION_EC
 * @helpurl https://localhost:3000/reference/FERTIGATION_EC.html
 * @param {any[][]} water_ec EC of the clear water before any feed; 0 is a value, so leave no blank (mS/cm)
 * @param {any[][]} ppm Element wanted in the water as applied (mg/L of N, or of P or K as elements), not ppm of the product (ppm)
 * @param {any[][]} label_ec EC that the label of this product gives for pure water at label_ppm (mS/cm)
 * @param {any[][]} label_ppm ppm of the same element in the same row of the label (ppm)
 * @returns {any} EC of the feed, the water's own included (mS/cm)
 */
export function FERTIGATION_EC(water_ec: any[][], ppm: any[][], label_ec: any[][], label_ppm: any[][]): any {
  return answerCell("FERTIGATION_EC", [water_ec, ppm, label_ec, label_ppm]);
}

/**
 * Strength of a feed from its EC, the water's own EC and the label
 * @customfunction PPM_FROM_EC PPM_FROM_EC
 * @helpurl https://localhost:3000/reference/PPM_FROM_EC.html
 * @param {any[][]} feed_ec EC of the feed as the meter shows it (mS/cm)
 * @param {any[][]} water_ec EC of the clear water before any feed; 0 is a value, so leave no blank (mS/cm)
 * @param {any[][]} label_ec EC that the label of this product gives for pure water at label_ppm (mS/cm)
 * @param {any[][]} label_ppm ppm of the same element in the same row of the label (ppm)
 * @returns {any} ppm (mg/L) of the label's element (ppm)
 */
export function PPM_FROM_EC(feed_ec: any[][], water_ec: any[][], label_ec: any[][], label_ppm: any[][]): any {
  return answerCell("PPM_FROM_EC", [feed_ec, water_ec, label_ec, label_ppm]);
}

/**
 * Stock to add so that a tank comes up to its EC
 * @customfunction TANK_DOSE TANK_DOSE
 * @helpurl https://localhost:3000/reference/TANK_DOSE.html
 * @param {any[][]} tank_volume Feed in the tank now, not what the tank could hold (gal or L)
 * @param {any[][]} ec_now EC of the tank as it reads now, well mixed; 0 is a value, so leave no blank (mS/cm)
 * @param {any[][]} ec_target EC that the tank shall have, the water's own EC included (mS/cm)
 * @param {any[][]} feed_ec_rise EC that this stock adds to clear water at the injector ratio (mS/cm)
 * @param {any[][]} injector_ratio Injector ratio: 100 for 1:100, which is 1 part of stock in 100 parts of treated water, or 1 % (factor)
 * @returns {any} Stock to add, in the unit of the tank (gal or L)
 */
export function TANK_DOSE(
  tank_volume: any[][],
  ec_now: any[][],
  ec_target: any[][],
  feed_ec_rise: any[][],
  injector_ratio: any[][],
): any {
  return answerCell("TANK_DOSE", [tank_volume, ec_now, ec_target, feed_ec_rise, injector_ratio]);
}

/**
 * Water to add so that a tank that is too strong comes down to its EC
 * @customfunction TANK_DILUTION TANK_DILUTION
 * @helpurl https://localhost:3000/reference/TANK_DILUTION.html
 * @param {any[][]} tank_volume Feed in the tank now, not what the tank could hold (gal or L)
 * @param {any[][]} ec_now EC of the tank as it reads now, well mixed; 0 is a value, so leave no blank (mS/cm)
 * @param {any[][]} ec_target EC that the tank shall have, the water's own EC included (mS/cm)
 * @param {any[][]} water_ec EC of the clear water before any feed; 0 is a value, so leave no blank (mS/cm)
 * @returns {any} Water to add, in the unit of the tank (gal or L)
 */
export function TANK_DILUTION(tank_volume: any[][], ec_now: any[][], ec_target: any[][], water_ec: any[][]): any {
  return answerCell("TANK_DILUTION", [tank_volume, ec_now, ec_target, water_ec]);
}

/**
 * Sodium or chloride that gathers in water that goes round and round
 * @customfunction ION_BUILDUP ION_BUILDUP
 * @helpurl https://localhost:3000/reference/ION_BUILDUP.html
 * @param {any[][]} start_ppm The ion in the tank at the start; 0 is a value, so leave no blank (ppm)
 * @param {any[][]} makeup_ppm The ion in the make-up water; 0 is a value, so leave no blank (ppm)
 * @param {any[][]} uptake_ppm The ion that plants take up, per litre of water that they drink; 0 is a value, so leave no blank (ppm)
 * @param {any[][]} makeup_volume Make-up water at each round (gal or L)
 * @param {any[][]} tank_volume Water in the whole loop, in the same unit: tank, pipes, benches (gal or L)
 * @param {any[][]} rounds Rounds of make-up, such as days; 0 is a value, so leave no blank (count)
 * @returns {any} The ion in the tank after those rounds (ppm)
 */
export function ION_BUILDUP(
  start_ppm: any[][],
  makeup_ppm: any[][],
  uptake_ppm: any[][],
  makeup_volume: any[][],
  tank_volume: any[][],
  rounds: any[][],
): any {
  return answerCell("ION_BUILDUP", [start_ppm, makeup_ppm, uptake_ppm, makeup_volume, tank_volume, rounds]);
}

/**
 * EC of several waters mixed
 * @customfunction BLEND_EC BLEND_EC
 * @helpurl https://localhost:3000/reference/BLEND_EC.html
 * @param {any[][]} volumes Volume of each water, all in one unit; 0 is a water not used (gal or L)
 * @param {any[][]} ecs EC of each water, in the same order (mS/cm)
 * @returns {any} EC of the mixture (mS/cm)
 */
export function BLEND_EC(volumes: any[][], ecs: any[][]): any {
  return answerCell("BLEND_EC", [volumes, ecs]);
}

/**
 * Part of one water to mix with another for a target
 * @customfunction BLEND_SHARE BLEND_SHARE
 * @helpurl https://localhost:3000/reference/BLEND_SHARE.html
 * @param {any[][]} value_a EC or concentration of water a; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} value_b The same of water b, in the same unit; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} target The same wanted in the mixture: between the two (same unit)
 * @returns {any} Part of water a in the mixture (fraction)
 */
export function BLEND_SHARE(value_a: any[][], value_b: any[][], target: any[][]): any {
  return answerCell("BLEND_SHARE", [value_a, value_b, target]);
}

/**
 * EC from one unit to another, or to and from the ppm of a TDS meter
 * @customfunction CONVERT_EC CONVERT_EC
 * @helpurl https://localhost:3000/reference/CONVERT_EC.html
 * @param {any[][]} value The reading; 0 is a value, so leave no blank (as named)
 * @param {any[][]} from Unit of the reading
 * @param {any[][]} to Unit wanted
 * @param {any[][]} [tds_factor] ppm for 1 mS/cm, as the meter or the laboratory counts; needed where a side is tds_ppm (ppm per mS/cm)
 * @returns {any} The reading in the unit wanted (as named)
 */
export function CONVERT_EC(value: any[][], from: any[][], to: any[][], tds_factor?: any[][]): any {
  return answerCell("CONVERT_EC", [value, from, to, tds_factor]);
}

/**
 * The element in what a label prints as oxide, or a laboratory as nitrate or ammonium
 * @customfunction ELEMENT_FROM_OXIDE ELEMENT_FROM_OXIDE
 * @helpurl https://localhost:3000/reference/ELEMENT_FROM_OXIDE.html
 * @param {any[][]} percent Percentage that the label prints; 0 is a value, so leave no blank (%)
 * @param {any[][]} oxide What the percentage is of, as the label writes it
 * @returns {any} Percentage of the element (%)
 */
export function ELEMENT_FROM_OXIDE(percent: any[][], oxide: any[][]): any {
  return answerCell("ELEMENT_FROM_OXIDE", [percent, oxide]);
}

/**
 * Sodium against calcium and magnesium: the sodium adsorption ratio of a water
 * @customfunction SODIUM_ADSORPTION SODIUM_ADSORPTION
 * @helpurl https://localhost:3000/reference/SODIUM_ADSORPTION.html
 * @param {any[][]} sodium Sodium; 0 is a value, so leave no blank (as named)
 * @param {any[][]} calcium Calcium, in the same unit; 0 is a value, so leave no blank (as named)
 * @param {any[][]} magnesium Magnesium, in the same unit; 0 is a value, so leave no blank (as named)
 * @param {any[][]} [basis] Unit of all three: "meq" per litre, or "ppm" (mg/L of the ion)
 * @returns {any} Sodium adsorption ratio (factor)
 */
export function SODIUM_ADSORPTION(sodium: any[][], calcium: any[][], magnesium: any[][], basis?: any[][]): any {
  return answerCell("SODIUM_ADSORPTION", [sodium, calcium, magnesium, basis]);
}

/**
 * Risk that a property of the water clogs emitters
 * @customfunction CLOGGING_RISK CLOGGING_RISK
 * @helpurl https://localhost:3000/reference/CLOGGING_RISK.html
 * @param {any[][]} property What was measured
 * @param {any[][]} value What the report says: mg/L, bacteria per mL, or pH; 0 is a value, but not as pH, so leave no blank (as named)
 * @returns {any} "minor", "moderate" or "severe"
 */
export function CLOGGING_RISK(property: any[][], value: any[][]): any {
  return answerCell("CLOGGING_RISK", [property, value]);
}

/**
 * Strength of an acid in equivalents per litre, from its label
 * @customfunction ACID_NORMALITY ACID_NORMALITY
 * @helpurl https://localhost:3000/reference/ACID_NORMALITY.html
 * @param {any[][]} acid Which acid
 * @param {any[][]} percent_by_weight Acid by weight, as a fraction: 93 % is 0.93 (fraction)
 * @param {any[][]} specific_gravity Weight of the acid against water, by the label (factor)
 * @returns {any} Equivalents of protons per litre of acid (eq/L)
 */
export function ACID_NORMALITY(acid: any[][], percent_by_weight: any[][], specific_gravity: any[][]): any {
  return answerCell("ACID_NORMALITY", [acid, percent_by_weight, specific_gravity]);
}

/**
 * Acid that takes the alkalinity of water down to a target
 * @customfunction ACID_VOLUME ACID_VOLUME
 * @helpurl https://localhost:3000/reference/ACID_VOLUME.html
 * @param {any[][]} alkalinity Alkalinity of the water, ppm as CaCO3 (ppm CaCO3)
 * @param {any[][]} target_alkalinity Alkalinity to leave, ppm as CaCO3; 0 is a value, so leave no blank (ppm CaCO3)
 * @param {any[][]} acid_normality Strength of the acid in equivalents per litre, from ACID_NORMALITY (eq/L)
 * @param {any[][]} volume Water to be treated (gal or L)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Acid as it is in the drum (mL)
 */
export function ACID_VOLUME(
  alkalinity: any[][],
  target_alkalinity: any[][],
  acid_normality: any[][],
  volume: any[][],
  units: any[][],
): any {
  return answerCell("ACID_VOLUME", [alkalinity, target_alkalinity, acid_normality, volume, units]);
}

/**
 * Head that water loses by friction in a pipe that carries one flow to its end
 * @customfunction FRICTION_LOSS FRICTION_LOSS
 * @helpurl https://localhost:3000/reference/FRICTION_LOSS.html
 * @param {any[][]} flow Flow through the pipe (gal/min or L/min)
 * @param {any[][]} inside_diameter Inside diameter, from the pipe's table or a caliper; never the nominal size (in or mm)
 * @param {any[][]} length Length of pipe of this bore that carries this flow (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [c] Hazen-Williams coefficient: the smoother the pipe, the higher (factor)
 * @returns {any} Head lost by friction (ft or m)
 */
export function FRICTION_LOSS(
  flow: any[][],
  inside_diameter: any[][],
  length: any[][],
  units: any[][],
  c?: any[][],
): any {
  return answerCell("FRICTION_LOSS", [flow, inside_diameter, length, units, c]);
}

/**
 * Part of the friction loss that is left because a line gives off its flow on the way
 * @customfunction CHRISTIANSEN_FACTOR CHRISTIANSEN_FACTOR
 * @helpurl https://localhost:3000/reference/CHRISTIANSEN_FACTOR.html
 * @param {any[][]} outlets Outlets on the line (count)
 * @param {any[][]} [exponent] Exponent of the flow in the friction formula: 1.852, 1.75 or 2 (factor)
 * @returns {any} Factor on the loss of the full flow over the full length (factor)
 */
export function CHRISTIANSEN_FACTOR(outlets: any[][], exponent?: any[][]): any {
  return answerCell("CHRISTIANSEN_FACTOR", [outlets, exponent]);
}

/**
 * Head lost along a level drip line, from its inlet to its last emitter
 * @customfunction LATERAL_LOSS LATERAL_LOSS
 * @helpurl https://localhost:3000/reference/LATERAL_LOSS.html
 * @param {any[][]} emitters Emitters on the line (count)
 * @param {any[][]} emitter_flow Flow of one emitter (gal/h or L/h)
 * @param {any[][]} emitter_spacing From one emitter to the next, and from the inlet to the first (in or cm)
 * @param {any[][]} inside_diameter Inside diameter, from the pipe's table or a caliper; never the nominal size (in or mm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Head lost from the inlet to the last emitter, on level ground (ft or m)
 */
export function LATERAL_LOSS(
  emitters: any[][],
  emitter_flow: any[][],
  emitter_spacing: any[][],
  inside_diameter: any[][],
  units: any[][],
): any {
  return answerCell("LATERAL_LOSS", [emitters, emitter_flow, emitter_spacing, inside_diameter, units]);
}

/**
 * Speed of the water in a pipe
 * @customfunction PIPE_VELOCITY PIPE_VELOCITY
 * @helpurl https://localhost:3000/reference/PIPE_VELOCITY.html
 * @param {any[][]} flow Flow through the pipe (gal/min or L/min)
 * @param {any[][]} inside_diameter Inside diameter, from the pipe's table or a caliper; never the nominal size (in or mm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Mean velocity of the water (ft/s or m/s)
 */
export function PIPE_VELOCITY(flow: any[][], inside_diameter: any[][], units: any[][]): any {
  return answerCell("PIPE_VELOCITY", [flow, inside_diameter, units]);
}

/**
 * Flow that must leave the open end of a line to carry the dirt out
 * @customfunction FLUSH_FLOW FLUSH_FLOW
 * @helpurl https://localhost:3000/reference/FLUSH_FLOW.html
 * @param {any[][]} inside_diameter Inside diameter, from the pipe's table or a caliper; never the nominal size (in or mm)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @param {any[][]} [velocity] Velocity wanted at the line's end; left out, 1 ft/s or 0.3 m/s (ft/s or m/s)
 * @returns {any} Flow at the open end of one line (gal/min or L/min)
 */
export function FLUSH_FLOW(inside_diameter: any[][], units: any[][], velocity?: any[][]): any {
  return answerCell("FLUSH_FLOW", [inside_diameter, units, velocity]);
}

/**
 * Flow of an emitter at another pressure than the one it was measured at
 * @customfunction EMITTER_FLOW_AT_PRESSURE EMITTER_FLOW_AT_PRESSURE
 * @helpurl https://localhost:3000/reference/EMITTER_FLOW_AT_PRESSURE.html
 * @param {any[][]} flow_ref Flow known at the first pressure, in any unit of flow (gal/h or L/h)
 * @param {any[][]} pressure_ref Pressure at which that flow holds (psi or kPa)
 * @param {any[][]} pressure Pressure asked for, in the same unit (psi or kPa)
 * @param {any[][]} [exponent] Exponent of the emitter: 0 compensating, 0.5 turbulent, 1 laminar (factor)
 * @returns {any} Flow at that pressure, in the unit of the flow (gal/h or L/h)
 */
export function EMITTER_FLOW_AT_PRESSURE(
  flow_ref: any[][],
  pressure_ref: any[][],
  pressure: any[][],
  exponent?: any[][],
): any {
  return answerCell("EMITTER_FLOW_AT_PRESSURE", [flow_ref, pressure_ref, pressure, exponent]);
}

/**
 * Response of an emitter to pressure, from its flow at two pressures
 * @customfunction EMITTER_EXPONENT EMITTER_EXPONENT
 * @helpurl https://localhost:3000/reference/EMITTER_EXPONENT.html
 * @param {any[][]} flow_1 Flow at the first pressure, in any unit of flow (gal/h or L/h)
 * @param {any[][]} pressure_1 The first pressure (psi or kPa)
 * @param {any[][]} flow_2 Flow at the second pressure, in the same unit (gal/h or L/h)
 * @param {any[][]} pressure_2 The second pressure, in the same unit (psi or kPa)
 * @returns {any} Exponent of the emitter (factor)
 */
export function EMITTER_EXPONENT(flow_1: any[][], pressure_1: any[][], flow_2: any[][], pressure_2: any[][]): any {
  return answerCell("EMITTER_EXPONENT", [flow_1, pressure_1, flow_2, pressure_2]);
}

/**
 * Head that the pump must make: lift, pressure at the outlet and friction together
 * @customfunction TOTAL_DYNAMIC_HEAD TOTAL_DYNAMIC_HEAD
 * @helpurl https://localhost:3000/reference/TOTAL_DYNAMIC_HEAD.html
 * @param {any[][]} lift Height of the outlet above the water level while pumping; below 0 where the source lies higher (ft or m)
 * @param {any[][]} outlet_pressure Pressure wanted at the outlet; 0 for an open end (psi or kPa)
 * @param {any[][]} friction_head Head lost by friction from the water's intake to the outlet (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Total dynamic head of the pump (ft or m)
 */
export function TOTAL_DYNAMIC_HEAD(
  lift: any[][],
  outlet_pressure: any[][],
  friction_head: any[][],
  units: any[][],
): any {
  return answerCell("TOTAL_DYNAMIC_HEAD", [lift, outlet_pressure, friction_head, units]);
}

/**
 * Power that the pump takes at its shaft
 * @customfunction PUMP_POWER PUMP_POWER
 * @helpurl https://localhost:3000/reference/PUMP_POWER.html
 * @param {any[][]} flow Flow through the pump (gal/min or L/min)
 * @param {any[][]} head Total dynamic head: lift, pressure and friction together (ft or m)
 * @param {any[][]} efficiency Efficiency of the pump at this flow, a fraction (fraction)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Power at the pump's shaft (hp or kW)
 */
export function PUMP_POWER(flow: any[][], head: any[][], efficiency: any[][], units: any[][]): any {
  return answerCell("PUMP_POWER", [flow, head, efficiency, units]);
}

/**
 * Electricity that it takes to pump a volume of water
 * @customfunction PUMP_ENERGY PUMP_ENERGY
 * @helpurl https://localhost:3000/reference/PUMP_ENERGY.html
 * @param {any[][]} volume Water pumped (gal or L)
 * @param {any[][]} head Total dynamic head: lift, pressure and friction together (ft or m)
 * @param {any[][]} efficiency Overall efficiency, from the meter to the water, a fraction (fraction)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Electric energy drawn from the meter (kWh)
 */
export function PUMP_ENERGY(volume: any[][], head: any[][], efficiency: any[][], units: any[][]): any {
  return answerCell("PUMP_ENERGY", [volume, head, efficiency, units]);
}

/**
 * What one water bill comes to under a tariff of blocks
 * @customfunction WATER_COST WATER_COST
 * @helpurl https://localhost:3000/reference/WATER_COST.html
 * @param {any[][]} volume Water of this bill, in the bill's unit; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} tier_limits Upper end of each block, counted from 0 and rising; the last may be blank: no limit (same unit)
 * @param {any[][]} tier_prices Price of one unit of water in each block, one row a block (currency)
 * @param {any[][]} [fixed_charge] Charge of the bill whatever the volume (currency)
 * @returns {any} What the bill comes to, counted as positive (currency)
 */
export function WATER_COST(volume: any[][], tier_limits: any[][], tier_prices: any[][], fixed_charge?: any[][]): any {
  return answerCell("WATER_COST", [volume, tier_limits, tier_prices, fixed_charge]);
}

/**
 * What the fertilizer in a volume of feed costs
 * @customfunction FERTILIZER_COST FERTILIZER_COST
 * @helpurl https://localhost:3000/reference/FERTILIZER_COST.html
 * @param {any[][]} volume Feed applied, as it leaves the hose (gal or L)
 * @param {any[][]} ppm Element wanted in the water as applied (mg/L of N, or of P or K as elements), not ppm of the product (ppm)
 * @param {any[][]} analysis Part of the product that is that element, by weight: 20 % N is 0.20; label P2O5 and K2O must be converted (fraction)
 * @param {any[][]} price_per_weight Price of the product, counted as positive (currency/lb or currency/kg)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Cost of the fertilizer in the feed (currency)
 */
export function FERTILIZER_COST(
  volume: any[][],
  ppm: any[][],
  analysis: any[][],
  price_per_weight: any[][],
  units: any[][],
): any {
  return answerCell("FERTILIZER_COST", [volume, ppm, analysis, price_per_weight, units]);
}

/**
 * What each plant that can be sold has cost, those that were lost included
 * @customfunction COST_PER_SALEABLE_PLANT COST_PER_SALEABLE_PLANT
 * @helpurl https://localhost:3000/reference/COST_PER_SALEABLE_PLANT.html
 * @param {any[][]} total_cost Cost of the whole crop, counted as positive (currency)
 * @param {any[][]} plants_started Plants that were started (count)
 * @param {any[][]} loss_fraction Part of the plants started that cannot be sold; 0 is a value, so leave no blank (fraction)
 * @returns {any} Cost of a plant that can be sold (currency)
 */
export function COST_PER_SALEABLE_PLANT(total_cost: any[][], plants_started: any[][], loss_fraction: any[][]): any {
  return answerCell("COST_PER_SALEABLE_PLANT", [total_cost, plants_started, loss_fraction]);
}

/**
 * What an investment costs a year over its life, interest included
 * @customfunction ANNUALIZED_COST ANNUALIZED_COST
 * @helpurl https://localhost:3000/reference/ANNUALIZED_COST.html
 * @param {any[][]} investment What is paid at the start, counted as positive (currency)
 * @param {any[][]} life_years Years that the parts last; need not be whole (years)
 * @param {any[][]} rate Interest a year; 0 is a value (straight line), so leave no blank (fraction)
 * @param {any[][]} [salvage] What the parts still bring at the end of their life; not more than the investment (currency)
 * @returns {any} Cost per year (currency)
 */
export function ANNUALIZED_COST(investment: any[][], life_years: any[][], rate: any[][], salvage?: any[][]): any {
  return answerCell("ANNUALIZED_COST", [investment, life_years, rate, salvage]);
}

/**
 * How many years the savings take to pay the investment back
 * @customfunction PAYBACK_YEARS PAYBACK_YEARS
 * @helpurl https://localhost:3000/reference/PAYBACK_YEARS.html
 * @param {any[][]} investment What is paid at the start, counted as positive (currency)
 * @param {any[][]} annual_savings Saving of a year, or a range with one saving a year in order (currency)
 * @param {any[][]} [discount_rate] Interest a year; 0 counts no interest (fraction)
 * @returns {any} Years to pay back (years)
 */
export function PAYBACK_YEARS(investment: any[][], annual_savings: any[][], discount_rate?: any[][]): any {
  return answerCell("PAYBACK_YEARS", [investment, annual_savings, discount_rate]);
}

/**
 * What an investment has brought in so far, year by year, with interest and without
 * @customfunction PAYBACK_TABLE PAYBACK_TABLE
 * @helpurl https://localhost:3000/reference/PAYBACK_TABLE.html
 * @param {any[][]} investment What is paid at the start, counted as positive (currency)
 * @param {any[][]} annual_saving Saving of every year, below 0 an extra cost; 0 is a value, so leave no blank (currency)
 * @param {any[][]} years Years that the table shows (count)
 * @param {any[][]} [discount_rate] Interest a year; 0 counts no interest (fraction)
 * @returns {any[][]} Year 0 with the investment alone, then one row a year; both sums are net of the investment
 */
export function PAYBACK_TABLE(
  investment: any[][],
  annual_saving: any[][],
  years: any[][],
  discount_rate?: any[][],
): any[][] {
  return answerCell("PAYBACK_TABLE", [investment, annual_saving, years, discount_rate]) as any[][];
}

/**
 * Which number of a plan matters most: each saving, the investment and the life moved one at a time
 * @customfunction PAYBACK_SENSITIVITY PAYBACK_SENSITIVITY
 * @helpurl https://localhost:3000/reference/PAYBACK_SENSITIVITY.html
 * @param {any[][]} investment What is paid at the start, counted as positive (currency)
 * @param {any[][]} saving_names One line of the plan a row: water, feed, labour, upkeep
 * @param {any[][]} saving_values Saving of a year of each line, one row a line; below 0 it is an extra cost (currency)
 * @param {any[][]} life_years Years that the parts last; need not be whole (years)
 * @param {any[][]} [swing] How far each number is moved down and up: 0.25 is a quarter (fraction)
 * @param {any[][]} [discount_rate] Interest a year; 0 counts no interest (fraction)
 * @returns {any[][]} The plan, then one row a number: value and payback with it lower and higher, the widest first
 */
export function PAYBACK_SENSITIVITY(
  investment: any[][],
  saving_names: any[][],
  saving_values: any[][],
  life_years: any[][],
  swing?: any[][],
  discount_rate?: any[][],
): any[][] {
  return answerCell("PAYBACK_SENSITIVITY", [
    investment,
    saving_names,
    saving_values,
    life_years,
    swing,
    discount_rate,
  ]) as any[][];
}

/**
 * How much water is still needed when several savings act one after the other
 * @customfunction WATER_AFTER_SAVINGS WATER_AFTER_SAVINGS
 * @helpurl https://localhost:3000/reference/WATER_AFTER_SAVINGS.html
 * @param {any[][]} baseline Water used before, such as a season's meter reading (same unit)
 * @param {any[][]} savings One saving a cell, each a fraction of what the one before left (fraction)
 * @returns {any} Water still needed, in the unit of the baseline (same unit)
 */
export function WATER_AFTER_SAVINGS(baseline: any[][], savings: any[][]): any {
  return answerCell("WATER_AFTER_SAVINGS", [baseline, savings]);
}

/**
 * Working of any function, step by step, with the numbers in it
 * @customfunction SHOW_WORKING SHOW_WORKING
 * @helpurl https://localhost:3000/reference/SHOW_WORKING.html
 * @param {any[][]} function_name Name of the function, such as RUN_MINUTES, in quotation marks
 * @param {any[][][]} input Its arguments in its order, cells or ranges
 * @returns {any[][]} One row a step, then the source, the limits and the plain-spreadsheet formula
 */
export function SHOW_WORKING(function_name: any[][], input: any[][][]): any[][] {
  return answerCell("SHOW_WORKING", [function_name, ...furtherInputs(input)]) as any[][];
}

/**
 * Number for each student and item, the same for ever and on every computer
 * @customfunction EXERCISE_NUMBER EXERCISE_NUMBER
 * @helpurl https://localhost:3000/reference/EXERCISE_NUMBER.html
 * @param {any[][]} seed The word of the term or class, kept by the instructor
 * @param {any[][]} student The student's number or short name in the class list
 * @param {any[][]} item What the number is for, such as the name of the argument; add # and a counter to redraw
 * @param {any[][]} low Lowest value; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} high Highest value, not below low (same unit)
 * @param {any[][]} step Distance from value to value, such as 0.05 (same unit)
 * @returns {any} The drawn number, on the step, without float dust (same unit)
 */
export function EXERCISE_NUMBER(
  seed: any[][],
  student: any[][],
  item: any[][],
  low: any[][],
  high: any[][],
  step: any[][],
): any {
  return answerCell("EXERCISE_NUMBER", [seed, student, item, low, high, step]);
}

/**
 * Mark for a student's number: right, close, wrong or not answered
 * @customfunction CHECK_ANSWER CHECK_ANSWER
 * @helpurl https://localhost:3000/reference/CHECK_ANSWER.html
 * @param {any[][]} answer The student's cell
 * @param {any[][]} correct The right answer; 0 is a value, so leave no blank (same unit)
 * @param {any[][]} [relative_tolerance] Part of the right answer by which it may be off (fraction)
 * @param {any[][]} [absolute_tolerance] Amount by which it may be off, in its own unit: needed where the right answer is 0 (same unit)
 * @returns {any} The mark in a word
 */
export function CHECK_ANSWER(
  answer: any[][],
  correct: any[][],
  relative_tolerance?: any[][],
  absolute_tolerance?: any[][],
): any {
  return answerCell("CHECK_ANSWER", [answer, correct, relative_tolerance, absolute_tolerance]);
}

/**
 * Diagnosis of a student's number: right, or the mistake that gives it
 * @customfunction DIAGNOSE_ANSWER DIAGNOSE_ANSWER
 * @helpurl https://localhost:3000/reference/DIAGNOSE_ANSWER.html
 * @param {any[][]} answer The student's cell
 * @param {any[][]} function_name Name of the function that gives the right answer, in quotation marks
 * @param {any[][]} relative_tolerance Part of the right answer by which it may be off; blank is 0.02 (fraction)
 * @param {any[][]} detail 0 right or wrong, 1 which step, 2 the mistake in words, 3 the numbers too; blank is 2 (count)
 * @param {any[][][]} input Its arguments in its order, cells or ranges
 * @returns {any} Begins with right, not answered or wrong
 */
export function DIAGNOSE_ANSWER(
  answer: any[][],
  function_name: any[][],
  relative_tolerance: any[][],
  detail: any[][],
  input: any[][][],
): any {
  return answerCell("DIAGNOSE_ANSWER", [answer, function_name, relative_tolerance, detail, ...furtherInputs(input)]);
}

/**
 * Mistakes that people make with a function, and the number that each gives
 * @customfunction COMMON_MISTAKES COMMON_MISTAKES
 * @helpurl https://localhost:3000/reference/COMMON_MISTAKES.html
 * @param {any[][]} function_name Name of the function, in quotation marks; one with a single number as its answer
 * @param {any[][][]} input Its arguments in its order, cells or ranges
 * @returns {any[][]} One row a mistake
 */
export function COMMON_MISTAKES(function_name: any[][], input: any[][][]): any[][] {
  return answerCell("COMMON_MISTAKES", [function_name, ...furtherInputs(input)]) as any[][];
}

/**
 * Number in another unit of the same kind: gallons in litres, psi in kPa, CCF in m3
 * @customfunction CONVERT_UNIT CONVERT_UNIT
 * @helpurl https://localhost:3000/reference/CONVERT_UNIT.html
 * @param {any[][]} value The number to convert; 0 is a value, so leave no blank (as named)
 * @param {any[][]} from Unit that the number is in, such as gal, CCF, psi, mm, gal/h
 * @param {any[][]} to Unit wanted, of the same kind
 * @returns {any} The number in the unit wanted (as named)
 */
export function CONVERT_UNIT(value: any[][], from: any[][], to: any[][]): any {
  return answerCell("CONVERT_UNIT", [value, from, to]);
}

/**
 * Verdict on a number: one that the trade usually sees, or the likely slip where it is not
 * @customfunction CHECK_RANGE CHECK_RANGE
 * @helpurl https://localhost:3000/reference/CHECK_RANGE.html
 * @param {any[][]} value The number to look at; a blank is answered with a blank (as named)
 * @param {any[][]} function_name Name of the function that the number goes into or comes out of
 * @param {any[][]} argument Name of its argument; "" for its answer
 * @param {any[][]} [units] The units of the number: "us" or "metric"; left out, either
 * @returns {any} "ok", or "low: " or "high: " with the likely slip
 */
export function CHECK_RANGE(value: any[][], function_name: any[][], argument: any[][], units?: any[][]): any {
  return answerCell("CHECK_RANGE", [value, function_name, argument, units]);
}

/**
 * Unit of an argument or an answer, for the heading of a column
 * @customfunction UNIT_LABEL UNIT_LABEL
 * @helpurl https://localhost:3000/reference/UNIT_LABEL.html
 * @param {any[][]} function_name Name of the function
 * @param {any[][]} argument Name of its argument; "" for its answer
 * @param {any[][]} units The units that the sheet is in: "us" or "metric"
 * @returns {any} The unit as text, such as gal/h
 */
export function UNIT_LABEL(function_name: any[][], argument: any[][], units: any[][]): any {
  return answerCell("UNIT_LABEL", [function_name, argument, units]);
}

/**
 * Source of a function's formula: author, year, title, equation or table
 * @customfunction FUNCTION_SOURCE FUNCTION_SOURCE
 * @helpurl https://localhost:3000/reference/FUNCTION_SOURCE.html
 * @param {any[][]} function_name Name of the function
 * @returns {any} The citation
 */
export function FUNCTION_SOURCE(function_name: any[][]): any {
  return answerCell("FUNCTION_SOURCE", [function_name]);
}

/**
 * Version of the functions in this sheet, to write beside its results
 * @customfunction LIBRARY_VERSION LIBRARY_VERSION
 * @helpurl https://localhost:3000/reference/LIBRARY_VERSION.html
 * @returns {any} Three numbers with points between them
 */
export function LIBRARY_VERSION(): any {
  return answerCell("LIBRARY_VERSION", []);
}
