/** For the grower, every week or two: the log of leaching tests, and the minutes that they ask for. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { addChecks, MUCH_LEACHED, NOTHING_LEACHED } from "./checks";
import { fillInputs } from "./inputs";
import { fillLog } from "./log";
import { fillResult } from "./result";
import { fillWork } from "./work";

export const leachingLog: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  expectedLooks: [NOTHING_LEACHED, MUCH_LEACHED],
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const landscape = { landscape: true } as const;
    const inputs = kit.sheet("Inputs", {
      title: "Tern Hollow: what is wanted, and the zones",
      widths: [36, 18, 12, 13, 64],
    });
    const pots = kit.sheet("Log", {
      title: "Leaching tests, pot by pot",
      widths: [12, 12, 7, 10, 10, 9, 10, 10, 11, 8, 10, 10, 10],
      frozenRows: 9,
      print: { ...landscape, repeatedRows: [7, 9] },
    });
    const work = kit.sheet("Work", {
      title: "The tests, pooled",
      widths: [8, 12, 12, 18, 9, 8, 10, 10, 11, 9, 9, 10, 11, 10, 12],
      print: landscape,
    });
    const result = kit.sheet("Result", {
      title: "Tern Hollow: minutes after the leaching tests",
      widths: [22, 10, 12, 8, 11, 10, 14, 10, 10, 40],
      print: landscape,
    });
    const given = fillInputs(kit, inputs);
    const log = fillLog(kit, pots, given);
    const tests = fillWork(kit, work, given, log);
    const zones = fillResult(kit, result, given, log, tests);
    addChecks(kit, { given, log, tests, zones });
    return kit.build();
  },
};
