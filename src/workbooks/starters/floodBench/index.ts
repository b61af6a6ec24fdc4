/** For the grower, each season and after each change: the round over benches that share a tank, and the tank itself. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { fillBenches } from "./benches";
import { addChecks } from "./checks";
import { fillInputs } from "./inputs";
import { drawCharts, fillCard, fillSchedule } from "./result";
import { fillTank } from "./tank";
import { fillWork } from "./work";

export const floodBench: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const landscape = { landscape: true } as const;
    const inputs = kit.sheet("Inputs", { title: "Tern Hollow: the pump, the tank and the round" });
    const floor = kit.sheet("Benches", {
      title: "Tern Hollow: the flood benches",
      widths: [24, 11, 11, 13, 13, 11, 13, 13, 13, 14],
      print: landscape,
    });
    const arithmetic = kit.sheet("Work", {
      title: "The round by plain arithmetic, in minutes from the first fill",
      widths: [28, 13, 13, 13, 13, 11, 11, 11, 11, 12, 13, 13, 13],
      print: landscape,
    });
    const reservoir = kit.sheet("Tank", { title: "The tank: its size, its top-up, and the load on the benches" });
    const result = kit.sheet("Result", {
      title: "Tern Hollow: the round over the benches",
      widths: [34, 12, 12, 12, 12, 13, 26],
    });
    const round = fillInputs(kit, inputs);
    const benches = fillBenches(kit, floor, round);
    const work = fillWork(kit, arithmetic, round, benches);
    const schedule = fillSchedule(kit, result, round, work, benches.worked["place"]!);
    const tank = fillTank(kit, reservoir, round, benches, work, schedule);
    fillCard(kit, result, work, tank);
    drawCharts(kit, result, work);
    addChecks(kit, { round, benches, work, schedule, tank });
    return kit.build();
  },
};
