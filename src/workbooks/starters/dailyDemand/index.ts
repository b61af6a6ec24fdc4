/** For the grower, every day: what a pot used, what came back, what it lacks, and whether a scale agrees. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { addChecks, MISSING_DAYS } from "./checks";
import { fillDays } from "./days";
import { fillInputs } from "./inputs";
import { fillResult } from "./result";
import { fillWeather } from "./weather";
import { fillWeighed } from "./weighed";
import { fillPot, fillSpan } from "./work";

export const dailyDemand: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  expectedLooks: [MISSING_DAYS],
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const landscape = { landscape: true } as const;
    const inputs = kit.sheet("Inputs", { title: "Tern Hollow, Yard B: the pot and the crop" });
    const weather = kit.sheet("Weather", {
      title: "Weather and water, day by day",
      widths: [13, 12, 12, 12, 14, 14],
      frozenRows: 7,
      print: { repeatedRows: [5, 7] },
    });
    const weighings = kit.sheet("Weighed", {
      title: "Weighed pots: the referee",
      widths: [13, 12, 12, 13, 13, 13, 10, 14],
      print: landscape,
    });
    const work = kit.sheet("Work", { title: "The pot, and the days that are worked" });
    const daily = kit.sheet("Days", {
      title: "How each day is worked, all for one pot",
      widths: [12, 13, 10, 12, 11, 11, 11, 10, 10, 10, 10, 8, 10, 10, 10, 10],
      print: landscape,
    });
    const result = kit.sheet("Result", {
      title: "Tern Hollow, Yard B: what the pot lacks",
      widths: [38, 8, 5, 24, 66],
    });
    const given = fillInputs(kit, inputs);
    const read = fillWeather(kit, weather);
    const pot = fillPot(kit, work, given);
    const days = fillDays(kit, daily, given, read, pot);
    fillSpan(kit, work, days);
    const weighed = fillWeighed(kit, weighings, given, pot, days);
    const sums = fillResult(kit, result, given, days, weighed);
    addChecks(kit, { given, read, pot, days, weighed, sums });
    return kit.build();
  },
};
