import type { StarterBuilder } from "../../kit";
import { blanksOf } from "../shared/blanksOf";
import type { LogInputs } from "./inputs";
import type { Log } from "./log";
import type { ZoneResults } from "./result";
import { TEST_ROWS, type Tests } from "./work";

interface Parts {
  readonly given: LogInputs;
  readonly log: Log;
  readonly tests: Tests;
  readonly zones: ZoneResults;
}

export const NOTHING_LEACHED = "Something leached in every zone that was tested";
export const MUCH_LEACHED = "No zone leached so much that dry substrate must be suspected";

export function addChecks(kit: StarterBuilder, { given, log, tests, zones }: Parts): void {
  const { fraction, pots } = zones.column as Record<string, NonNullable<Log[string]>>;
  kit.check(
    "Every pot in the log was measured",
    `COUNT(${log["fraction"]!}) + ${blanksOf(log["fraction"]!)} = ROWS(${log["fraction"]!})`,
    "A pot has no applied or no leachate, or more leachate than was applied. A dry saucer is 0; a pot not measured has no row.",
  );
  kit.check(
    "Every zone's latest test has pots enough",
    `COUNTIF(${pots!}, "<" & ${given.pots}) = 0`,
    "One pot says nothing. The pots of one test must stand below one another, with the same date and zone.",
  );
  kit.check(
    "The pail agrees with the emitters",
    `COUNTIF(${tests["ratio"]!}, ">" & 1 + ${given.tolerance}) + COUNTIF(${tests["ratio"]!}, "<" & 1 - ${given.tolerance}) = 0`,
    "Applied and flow x minutes differ: a plugged or worn emitter, another pressure, minutes mistyped, or a pail that missed some.",
  );
  kit.check(
    NOTHING_LEACHED,
    `COUNTIF(${fraction!}, 0) = 0`,
    "No leachate at all: the pots may be short of water, and salts gather. Run longer and test again; was 0 typed for a pot not read?",
  );
  kit.check(
    MUCH_LEACHED,
    `COUNTIF(${fraction!}, ">" & ${given.suspect}) = 0`,
    "Lift a pot. Light: water runs through dry substrate, so do not cut, rewet in short pulses. Heavy: set the shorter time.",
  );
  kit.check(
    "Salts in the leachate are below your limit",
    `COUNTIF(${tests["ec"]!}, ">" & ${given.salts}) = 0`,
    "Flush with clear water and test again; then look at the feed and at the water's own EC.",
  );
  kit.check(
    "The shown pots pool to the same fraction by both ways",
    `AND(COUNT(shown_test) = 1, ABS(${zones.pooled} - INDEX(${tests["fraction"]!}, MAX(1, SUM(shown_test)))) < 0.00001)`,
    "Choose a zone that has a test. A formula on Log was changed: copy it again from a row above.",
  );
  kit.check(
    "The log has room",
    `AND(MAX(${log["test"]!}) <= ${TEST_ROWS}, COUNTIF(${log["test"]!}, ">0") < ROWS(${log["test"]!}))`,
    "Keep a copy of this workbook as the season's record, and clear the oldest tests from the log.",
  );
}
