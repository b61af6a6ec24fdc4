/**
 * The same arithmetic as the catalogue's, written bare: no checks, no limits, no working, as one would write it into a
 * script for oneself. It is what a call is held against, so it must give the same numbers: a test holds it to that.
 */

export type Units = "us" | "metric";
export type Cell = number | string;

const METRES_PER_FOOT = 0.3048;
const METRES_PER_SECOND_PER_MPH = 0.44704;
const MILLIMETRES_PER_INCH = 25.4;
const MILLISECONDS_PER_DAY = 86_400_000;
const SERIAL_1970 = 25_569;
const MINUTES_PER_DAY = 1440;
const DUST = 1e-9;

function celsius(fahrenheit: number): number {
  return (fahrenheit - 32) / 1.8;
}

function dayOfYear(date: number): number {
  const year = new Date((date - SERIAL_1970) * MILLISECONDS_PER_DAY).getUTCFullYear();
  return date - SERIAL_1970 - Date.UTC(year, 0, 1) / MILLISECONDS_PER_DAY + 1;
}

/** MJ/m2/day above the atmosphere. */
function radiationAbove(latitude: number, date: number): number {
  const angle = (2 * Math.PI * dayOfYear(date)) / 365;
  const phi = (latitude * Math.PI) / 180;
  const declination = 0.409 * Math.sin(angle - 1.39);
  const sunset = Math.acos(Math.max(-1, Math.min(1, -Math.tan(phi) * Math.tan(declination))));
  const sum = sunset * Math.sin(phi) * Math.sin(declination) + Math.cos(phi) * Math.cos(declination) * Math.sin(sunset);
  return ((24 * 60) / Math.PI) * 0.082 * (1 + 0.033 * Math.cos(angle)) * sum;
}

function saturation(temperature: number): number {
  return 0.6108 * Math.exp((17.27 * temperature) / (temperature + 237.3));
}

/** ET0_PENMAN_MONTEITH; `windHeight` null for wind at 2 m. */
export function penmanMonteith(
  tmax: number,
  tmin: number,
  rhMax: number,
  rhMin: number,
  windSpeed: number,
  solar: number,
  latitude: number,
  elevation: number,
  date: number,
  units: Units,
  windHeight: number | null,
): number {
  const us = units === "us";
  const maxC = us ? celsius(tmax) : tmax;
  const minC = us ? celsius(tmin) : tmin;
  const metres = us ? elevation * METRES_PER_FOOT : elevation;
  let wind = us ? windSpeed * METRES_PER_SECOND_PER_MPH : windSpeed;
  if (windHeight !== null) {
    wind *= 4.87 / Math.log(67.8 * (us ? windHeight * METRES_PER_FOOT : windHeight) - 5.42);
  }
  const mean = (maxC + minC) / 2;
  const gamma = 0.665e-3 * 101.3 * ((293 - 0.0065 * metres) / 293) ** 5.26;
  const slope = (4098 * saturation(mean)) / (mean + 237.3) ** 2;
  const atMax = saturation(maxC);
  const atMin = saturation(minC);
  const actual = ((atMin * rhMax) / 100 + (atMax * rhMin) / 100) / 2;
  const clear = (0.75 + 2e-5 * metres) * radiationAbove(latitude, Math.floor(date));
  const share = solar < clear ? solar / clear : 1;
  const heat = ((maxC + 273.16) ** 4 + (minC + 273.16) ** 4) / 2;
  const net = 0.77 * solar - 4.903e-9 * heat * (0.34 - 0.14 * Math.sqrt(actual)) * (1.35 * share - 0.35);
  const dryness = (atMax + atMin) / 2 - actual;
  const et =
    (0.408 * slope * net + ((gamma * 900) / (mean + 273)) * wind * dryness) / (slope + gamma * (1 + 0.34 * wind));
  return Math.max(0, et) / (us ? MILLIMETRES_PER_INCH : 1);
}

/** ET0_HARGREAVES. */
export function hargreaves(tmax: number, tmin: number, latitude: number, date: number, units: Units): number {
  const us = units === "us";
  const mean = us ? celsius((tmax + tmin) / 2) : (tmax + tmin) / 2;
  const range = us ? (tmax - tmin) / 1.8 : tmax - tmin;
  const energy = 0.408 * radiationAbove(latitude, Math.floor(date));
  return Math.max(0, 0.0023 * (mean + 17.8) * Math.sqrt(range) * energy) / (us ? MILLIMETRES_PER_INCH : 1);
}

/** RUN_MINUTES. */
export function runMinutes(volume: number, flow: number, emitters: number): number {
  return (60 * volume) / (flow * emitters);
}

type Rows = readonly (readonly number[])[];

/** ET0_TABLE of complete rows of 3 columns. */
export function et0Table(weather: Rows, latitude: number, units: Units): number[][] {
  const answer: number[][] = [];
  for (const row of weather) {
    answer.push([hargreaves(row[1] as number, row[2] as number, latitude, row[0] as number, units)]);
  }
  return answer;
}

/** ET0_TABLE of complete rows of 7 columns. */
export function et0StationTable(weather: Rows, latitude: number, elevation: number, units: Units): number[][] {
  const answer: number[][] = [];
  for (const row of weather) {
    const et = penmanMonteith(
      row[1] as number,
      row[2] as number,
      row[3] as number,
      row[4] as number,
      row[5] as number,
      row[6] as number,
      latitude,
      elevation,
      row[0] as number,
      units,
      null,
    );
    answer.push([et]);
  }
  return answer;
}

/** WATER_BALANCE with its trigger at 0.4 of the capacity, from a full pot. */
export function waterBalance(et: Rows, rain: Rows, irrigation: Rows, capacity: number): Cell[][] {
  const answer: Cell[][] = [["day", "deficit", "drainage", "unmet", "note"]];
  let deficit = 0;
  for (let day = 0; day < et.length; day += 1) {
    const reached = deficit + (et[day]?.[0] as number) - (rain[day]?.[0] as number) - (irrigation[day]?.[0] as number);
    deficit = Math.max(0, Math.min(reached, capacity));
    const note = deficit >= 0.4 * capacity - DUST * capacity ? "irrigate" : "";
    answer.push([day + 1, deficit, Math.max(0, -reached), Math.max(0, reached - capacity), note]);
  }
  return answer;
}

/** ZONE_SEQUENCE in one cycle, with 1 minute between sets, for zones that the supply carries. */
export function zoneSequence(
  names: readonly (readonly string[])[],
  minutes: Rows,
  flows: Rows,
  supply: number,
  start: number,
): Cell[][] {
  const answer: Cell[][] = [["zone", "start", "stop", "flow", "note"]];
  let [setStart, setStop, setFlow, highest] = [0, 0, 0, 0];
  for (let zone = 0; zone < names.length; zone += 1) {
    const flow = flows[zone]?.[0] as number;
    if (Math.ceil((setFlow + flow) / supply - DUST) > 1) {
      setStart = setStop + 1;
      setFlow = 0;
    }
    const stop = setStart + (minutes[zone]?.[0] as number);
    setStop = Math.max(setStop, stop);
    setFlow += flow;
    highest = Math.max(highest, setFlow);
    answer.push([
      names[zone]?.[0] as string,
      start + setStart / MINUTES_PER_DAY,
      start + stop / MINUTES_PER_DAY,
      flow,
      "",
    ]);
  }
  answer.push(["end of round", start, start + setStop / MINUTES_PER_DAY, highest, ""]);
  return answer;
}

/** The readings of a column as plain numbers, with their sum. */
function numbersIn(column: Rows): { numbers: Float64Array; sum: number } {
  const numbers = new Float64Array(column.length);
  let sum = 0;
  for (let row = 0; row < column.length; row += 1) {
    numbers[row] = column[row]?.[0] as number;
    sum += numbers[row] as number;
  }
  return { numbers, sum };
}

/** DU_LOW_QUARTER of one column. */
export function lowQuarter(readings: Rows): number {
  const { numbers, sum } = numbersIn(readings);
  const quarter = Math.ceil(numbers.length / 4);
  numbers.sort();
  let low = 0;
  for (let index = 0; index < quarter; index += 1) low += numbers[index] as number;
  return low / quarter / (sum / numbers.length);
}

/** EMITTER_SURVEY of one column, with its band from 0.8 to 1.2 of the rated flow. */
export function emitterSurvey(flows: Rows, rated: number): Cell[][] {
  const count = flows.length;
  let [none, low, high, sum] = [0, 0, 0, 0];
  for (const row of flows) {
    const flow = row[0] as number;
    sum += flow;
    if (flow === 0) none += 1;
    else if (flow < 0.8 * rated * (1 - DUST)) low += 1;
    else if (flow > 1.2 * rated * (1 + DUST)) high += 1;
  }
  const inBand = count - none - low - high;
  return [
    ["tested", count, 1],
    ["no flow", none, none / count],
    ["low", low, low / count],
    ["in band", inBand, inBand / count],
    ["high", high, high / count],
    ["mean / rated", "", sum / count / rated],
  ];
}
