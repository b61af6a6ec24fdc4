/** For the grower, at each mix: what to weigh, what the meter should show, and what to add to a tank that has drifted. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { addChecks } from "./checks";
import { fillInputs } from "./inputs";
import { fillLog } from "./log";
import { fillResult } from "./result";
import { fillWork } from "./work";

export const stockTank: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const inputs = kit.sheet("Inputs", { title: "Tern Hollow: bag, water, injector and tanks" });
    const work = kit.sheet("Work", { title: "From the bag to the feed" });
    const log = kit.sheet("Log", {
      title: "The mixing tank, day by day",
      widths: [14, 12, 12, 12, 12, 12, 12, 12],
      print: { landscape: true },
    });
    const result = kit.sheet("Result", { title: "Mixing card", widths: [40, 10, 7, 16, 52] });
    const given = fillInputs(kit, inputs);
    const worked = fillWork(kit, work, given);
    const readings = fillLog(kit, log, given, worked);
    fillResult(kit, result, given, worked);
    addChecks(kit, given, worked, readings);
    return kit.build();
  },
};
