/**
 * The built script in this computer's time zone, which the caller sets by TZ: reads days and times from standard input,
 * gives them to cells as Dates, writes what the cells answer.
 */
import { readFileSync } from "node:fs";
import { createContext, runInContext } from "node:vm";

const context = createContext({});
runInContext(readFileSync(process.argv[2], "utf8"), context);
context.asked = JSON.parse(readFileSync(0, "utf8"));
const code = `({
  radiation: asked.days.map(([year, month, day]) =>
    CANYARD_EXTRATERRESTRIAL_RADIATION(45, new Date(year, month - 1, day))),
  starts: asked.times.map(([hour, minute]) =>
    CANYARD_PULSE_SCHEDULE(30, 1, 0, new Date(1899, 11, 30, hour, minute))[1][1]),
})`;
process.stdout.write(JSON.stringify(runInContext(code, context)));
