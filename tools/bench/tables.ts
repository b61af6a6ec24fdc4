/** The functions whose growth is measured, each with inputs of any length and a bare loop over the same. */
import type { ArgumentInput } from "../../src/kernel";
import * as bare from "./bare";
import { column, weatherTable, zoneNames } from "./samples";

export interface TableCase {
  readonly name: string;
  readonly function: string;
  readonly sizes: readonly number[];
  /** Whether it is held to a bare loop, or only reported beside it. */
  readonly heldToBare: boolean;
  make(rows: number): { readonly args: readonly ArgumentInput[]; readonly bare: () => unknown };
}

const TO_A_MILLION = [1000, 10_000, 100_000, 1_000_000];
const [LATITUDE, ELEVATION, CAPACITY, RATED, SUPPLY, START] = [45, 100, 20, 4, 60, 0.25];

export const tables: readonly TableCase[] = [
  {
    name: "ET0_TABLE of 3 columns",
    function: "ET0_TABLE",
    sizes: TO_A_MILLION,
    heldToBare: true,
    make(rows) {
      const weather = weatherTable(rows, 3);
      return {
        args: [weather, LATITUDE, ELEVATION, "metric"],
        bare: () => bare.et0Table(weather, LATITUDE, "metric"),
      };
    },
  },
  {
    name: "ET0_TABLE of 7 columns",
    function: "ET0_TABLE",
    sizes: TO_A_MILLION,
    heldToBare: true,
    make(rows) {
      const weather = weatherTable(rows, 7);
      return {
        args: [weather, LATITUDE, ELEVATION, "metric"],
        bare: () => bare.et0StationTable(weather, LATITUDE, ELEVATION, "metric"),
      };
    },
  },
  {
    name: "WATER_BALANCE",
    function: "WATER_BALANCE",
    sizes: TO_A_MILLION,
    heldToBare: false,
    make(rows) {
      const [et, rain, irrigation] = [column(rows, 1, 6, 3), column(rows, 0, 3, 4), column(rows, 0, 3, 5)];
      return {
        args: [et, rain, irrigation, CAPACITY],
        bare: () => bare.waterBalance(et, rain, irrigation, CAPACITY),
      };
    },
  },
  {
    name: "ZONE_SEQUENCE",
    function: "ZONE_SEQUENCE",
    sizes: [20, 200, 2000],
    heldToBare: false,
    make(rows) {
      const [names, minutes, flows] = [zoneNames(rows), column(rows, 5, 40, 6), column(rows, 5, 40, 7)];
      return {
        args: [names, minutes, flows, SUPPLY, START],
        bare: () => bare.zoneSequence(names, minutes, flows, SUPPLY, START),
      };
    },
  },
  {
    name: "DU_LOW_QUARTER",
    function: "DU_LOW_QUARTER",
    sizes: TO_A_MILLION,
    heldToBare: false,
    make(rows) {
      const readings = column(rows, 10, 30, 8);
      return { args: [readings], bare: () => bare.lowQuarter(readings) };
    },
  },
  {
    name: "EMITTER_SURVEY",
    function: "EMITTER_SURVEY",
    sizes: TO_A_MILLION,
    heldToBare: false,
    make(rows) {
      const flows = column(rows, 2, 6, 9);
      return { args: [flows, RATED], bare: () => bare.emitterSurvey(flows, RATED) };
    },
  },
];
