// Generated from the catalogue by `npm run generate`; do not edit.
/* eslint-disable @typescript-eslint/no-explicit-any */
import { answer } from "./host";

/**
 * What a round pot holds, up to the fill line
 * @customfunction CONTAINER_VOLUME CONTAINER_VOLUME
 * @helpurl https://localhost:3000/taskpane.html#CONTAINER_VOLUME
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
  return answer("CONTAINER_VOLUME", [top_diameter, bottom_diameter, height, units]);
}

/**
 * Water in the whole pot after it has drained
 * @customfunction WATER_HELD WATER_HELD
 * @helpurl https://localhost:3000/taskpane.html#WATER_HELD
 * @param {any[][]} volume Substrate in the pot, to the fill line (gal or L)
 * @param {any[][]} container_capacity Part of the volume that is water after free drainage (fraction)
 * @returns {any} Water held, in the unit of the volume (gal or L)
 */
export function WATER_HELD(volume: any[][], container_capacity: any[][]): any {
  return answer("WATER_HELD", [volume, container_capacity]);
}

/**
 * Reference evapotranspiration of a day from temperature, humidity, wind and sun
 * @customfunction ET0_PENMAN_MONTEITH ET0_PENMAN_MONTEITH
 * @helpurl https://localhost:3000/taskpane.html#ET0_PENMAN_MONTEITH
 * @param {any[][]} tmax Highest air temperature of the day; 0 is a reading, so a blank cell that a host sends as 0 counts as 0 (F or C)
 * @param {any[][]} tmin Lowest air temperature of the day; 0 is a reading, so a blank cell that a host sends as 0 counts as 0 (F or C)
 * @param {any[][]} rh_max Highest relative humidity of the day, 1 to 100 (%)
 * @param {any[][]} rh_min Lowest relative humidity of the day, 1 to 100 (%)
 * @param {any[][]} wind_speed Mean wind of the day; 0 is a value, so a blank cell that a host sends as 0 counts as calm (mph or m/s)
 * @param {any[][]} solar_radiation Solar radiation of the day at the ground (MJ/m2/day)
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative (degrees)
 * @param {any[][]} elevation Elevation above sea level; 0 is a value, so a blank cell that a host sends as 0 counts as sea level (ft or m)
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
  return answer("ET0_PENMAN_MONTEITH", [
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
 * @helpurl https://localhost:3000/taskpane.html#ET0_HARGREAVES
 * @param {any[][]} tmax Highest air temperature of the day; 0 is a reading, so a blank cell that a host sends as 0 counts as 0 (F or C)
 * @param {any[][]} tmin Lowest air temperature of the day; 0 is a reading, so a blank cell that a host sends as 0 counts as 0 (F or C)
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative (degrees)
 * @param {any[][]} date Day, as a date of the sheet; of a date with a time the whole part counts (date)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any} Reference evapotranspiration of the day (in/day or mm/day)
 */
export function ET0_HARGREAVES(tmax: any[][], tmin: any[][], latitude: any[][], date: any[][], units: any[][]): any {
  return answer("ET0_HARGREAVES", [tmax, tmin, latitude, date, units]);
}

/**
 * Reference evapotranspiration of every day of a weather table in one call
 * @customfunction ET0_TABLE ET0_TABLE
 * @helpurl https://localhost:3000/taskpane.html#ET0_TABLE
 * @param {any[][]} weather One row a day, 3 or 7 columns, in date order or not
 * @param {any[][]} latitude Latitude in degrees and decimals, south negative (degrees)
 * @param {any[][]} elevation Elevation above sea level; 0 is a value, so a blank cell that a host sends as 0 counts as sea level (ft or m)
 * @param {any[][]} units The units of all numbers of this call: "us" or "metric"
 * @returns {any[][]} One number a row, in the order of the rows
 */
export function ET0_TABLE(weather: any[][], latitude: any[][], elevation: any[][], units: any[][]): any[][] {
  return answer("ET0_TABLE", [weather, latitude, elevation, units]) as any[][];
}

/**
 * What one plant uses on this day
 * @customfunction PLANT_WATER_DEMAND PLANT_WATER_DEMAND
 * @helpurl https://localhost:3000/taskpane.html#PLANT_WATER_DEMAND
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
  return answer("PLANT_WATER_DEMAND", [reference_et, crop_coefficient, area_per_plant, units, cover_factor]);
}

/**
 * How evenly water is spread: the driest quarter against the mean
 * @customfunction DU_LOW_QUARTER DU_LOW_QUARTER
 * @helpurl https://localhost:3000/taskpane.html#DU_LOW_QUARTER
 * @param {any[][]} readings Catches or flows, all in one unit; a range of any shape (same unit)
 * @param {any[][]} [zeros] What a blank or 0 is: "error" names the cell, "count" takes it as a reading of 0, "skip" leaves it out
 * @returns {any} Low-quarter distribution uniformity (fraction)
 */
export function DU_LOW_QUARTER(readings: any[][], zeros?: any[][]): any {
  return answer("DU_LOW_QUARTER", [readings, zeros]);
}

/**
 * What part of the water that entered the pot ran out below
 * @customfunction LEACHING_FRACTION LEACHING_FRACTION
 * @helpurl https://localhost:3000/taskpane.html#LEACHING_FRACTION
 * @param {any[][]} leachate Water caught below the pot; 0 is a result, so write 0 and leave no blank (same unit)
 * @param {any[][]} applied Water that entered the pot, in the same unit (same unit)
 * @returns {any} Leaching fraction (fraction)
 */
export function LEACHING_FRACTION(leachate: any[][], applied: any[][]): any {
  return answer("LEACHING_FRACTION", [leachate, applied]);
}

/**
 * New run time from a leaching test
 * @customfunction RUN_MINUTES_FROM_LEACHING RUN_MINUTES_FROM_LEACHING
 * @helpurl https://localhost:3000/taskpane.html#RUN_MINUTES_FROM_LEACHING
 * @param {any[][]} minutes_now Run time of the test (min)
 * @param {any[][]} measured Leaching fraction measured at that run time; 0 or blank has no answer (fraction)
 * @param {any[][]} target Leaching fraction wanted; 0 is a value, so a blank cell that a host sends as 0 counts as none (fraction)
 * @returns {any} Run time for the leaching fraction wanted (min)
 */
export function RUN_MINUTES_FROM_LEACHING(minutes_now: any[][], measured: any[][], target: any[][]): any {
  return answer("RUN_MINUTES_FROM_LEACHING", [minutes_now, measured, target]);
}

/**
 * What to give so that the pots keep what the plant needs
 * @customfunction GROSS_WATER GROSS_WATER
 * @helpurl https://localhost:3000/taskpane.html#GROSS_WATER
 * @param {any[][]} net Water that the plant needs (gal or L)
 * @param {any[][]} leaching_fraction Leaching fraction wanted; 0 is a value (fraction)
 * @param {any[][]} uniformity Low-quarter uniformity of the zone (fraction)
 * @param {any[][]} [basis] "leaching" net / (1 - LF); "uniformity" net / DU; "larger" whichever of the two is more; "both" net / ((1 - LF) DU)
 * @returns {any} Gross water, in the unit of the net (gal or L)
 */
export function GROSS_WATER(net: any[][], leaching_fraction: any[][], uniformity: any[][], basis?: any[][]): any {
  return answer("GROSS_WATER", [net, leaching_fraction, uniformity, basis]);
}

/**
 * Minutes to give each plant its water
 * @customfunction RUN_MINUTES RUN_MINUTES
 * @helpurl https://localhost:3000/taskpane.html#RUN_MINUTES
 * @param {any[][]} volume_per_plant Gross water for one plant at this irrigation (gal or L)
 * @param {any[][]} emitter_flow Measured flow of one emitter, in the same volume unit per hour (gal/h or L/h)
 * @param {any[][]} [emitters_per_plant] Emitters that serve one plant (count)
 * @returns {any} Run time (min)
 */
export function RUN_MINUTES(volume_per_plant: any[][], emitter_flow: any[][], emitters_per_plant?: any[][]): any {
  return answer("RUN_MINUTES", [volume_per_plant, emitter_flow, emitters_per_plant]);
}

/**
 * Start and stop of each pulse when the day's water is given in parts
 * @customfunction PULSE_SCHEDULE PULSE_SCHEDULE
 * @helpurl https://localhost:3000/taskpane.html#PULSE_SCHEDULE
 * @param {any[][]} total_minutes Run time of the day, without filling the line (min)
 * @param {any[][]} pulses Number of pulses (count)
 * @param {any[][]} rest_minutes Rest from the stop of one pulse to the start of the next; 0 is a value (min)
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
  return answer("PULSE_SCHEDULE", [total_minutes, pulses, rest_minutes, start_time, fill_minutes]) as any[][];
}

/**
 * Years until the savings have paid the investment back
 * @customfunction PAYBACK_YEARS PAYBACK_YEARS
 * @helpurl https://localhost:3000/taskpane.html#PAYBACK_YEARS
 * @param {any[][]} investment What is paid at the start (currency)
 * @param {any[][]} annual_savings Saving of a year, or a range with one saving a year in order (currency)
 * @param {any[][]} [discount_rate] Interest a year; 0 is the simple payback (fraction)
 * @returns {any} Years to pay back (years)
 */
export function PAYBACK_YEARS(investment: any[][], annual_savings: any[][], discount_rate?: any[][]): any {
  return answer("PAYBACK_YEARS", [investment, annual_savings, discount_rate]);
}
