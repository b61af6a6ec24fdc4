/** Inputs for the benchmarks: many different rows, the same in every run, so that nothing is worked out beforehand. */
import type { Units } from "./bare";

/** Numbers from 0 to 1, always the same ones for a seed (mulberry32). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

const SEED = 20_260_301;
/** 1 January 2015. */
const FIRST_DAY = 42_005;
const DAYS_OF_TEN_YEARS = 3650;

/** A day at a weather station, its arguments in the order of ET0_PENMAN_MONTEITH. */
export type StationCall = readonly [
  tmax: number,
  tmin: number,
  rhMax: number,
  rhMin: number,
  wind: number,
  solar: number,
  latitude: number,
  elevation: number,
  date: number,
  units: Units,
  windHeight: number | null,
];

function stationDay(next: () => number, units: Units, hasHeight: boolean): StationCall {
  const [tmin, range] = [2 + 16 * next(), 4 + 14 * next()];
  const rhMin = 20 + 40 * next();
  const us = units === "us";
  const temperature = (inC: number): number => (us ? inC * 1.8 + 32 : inC);
  return [
    temperature(tmin + range),
    temperature(tmin),
    rhMin + 30 * next(),
    rhMin,
    (us ? 2 : 1) * (0.5 + 4 * next()),
    8 + 18 * next(),
    30 + 25 * next(),
    (us ? 3 : 1) * 500 * next(),
    FIRST_DAY + Math.floor(DAYS_OF_TEN_YEARS * next()),
    units,
    hasHeight ? (us ? 3 : 1) * (3 + 7 * next()) : null,
  ];
}

/** Calls of ET0_PENMAN_MONTEITH; every second one names the height of the anemometer. */
export function stationCalls(count: number, units: Units): StationCall[] {
  const next = numbersFrom(SEED);
  return Array.from({ length: count }, (_none, index) => stationDay(next, units, index % 2 === 1));
}

/** Calls of RUN_MINUTES: volume, flow of an emitter, emitters. */
export function runMinutesCalls(count: number): [volume: number, flow: number, emitters: number][] {
  const next = numbersFrom(SEED + 1);
  return Array.from({ length: count }, () => [0.2 + 2 * next(), 1 + 8 * next(), 1 + Math.floor(3 * next())]);
}

/** A weather table: date, tmax, tmin in C and, of 7 columns, humidities, wind in m/s and solar radiation. */
export function weatherTable(days: number, columns: 3 | 7): number[][] {
  const next = numbersFrom(SEED + 2);
  return Array.from({ length: days }, (_none, day) => {
    const [tmax, tmin, rhMax, rhMin, wind, solar] = stationDay(next, "metric", false);
    const row = [FIRST_DAY + (day % DAYS_OF_TEN_YEARS), tmax, tmin, rhMax, rhMin, wind, solar];
    return row.slice(0, columns);
  });
}

/** A column of numbers from `low` to `high`, one a row. */
export function column(rows: number, low: number, high: number, seed = 3): number[][] {
  const next = numbersFrom(SEED + seed);
  return Array.from({ length: rows }, () => [low + (high - low) * next()]);
}

export function zoneNames(rows: number): string[][] {
  return Array.from({ length: rows }, (_none, row) => [`Zone ${row + 1}`]);
}
