/** For the grower, three times a year: how even the water is, from cans and from emitters. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { fillCans } from "./cans";
import { addChecks } from "./checks";
import { fillBottle, fillEmitters } from "./emitters";
import { fillInputs } from "./inputs";
import { drawSorted, fillAudit, fillRate, fillWhatIf } from "./result";
import { fillTrap, fillWalk } from "./walk";
import { fillCounts, fillSorted } from "./work";

export const uniformityAudit: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const inputs = kit.sheet("Inputs", { title: "Tern Hollow: the tests and the block" });
    const cans = kit.sheet("Cans", {
      title: "Tern Hollow: the cans on the ground",
      widths: [22, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9],
      print: { landscape: true },
    });
    const walked = kit.sheet("Emitters", {
      title: "Tern Hollow: mL from each emitter",
      widths: [26, 10, 10, 12, 12, 3],
      print: { landscape: true },
    });
    const bottles = kit.sheet("Bottle", {
      title: "Tern Hollow: seconds that each emitter takes to fill a bottle",
      widths: [26, 10, 10, 12],
    });
    const work = kit.sheet("Work", { title: "The catches counted and sorted", widths: [36, 12, 14, 16, 64] });
    const result = kit.sheet("Result", { title: "Tern Hollow: how even the water is, and what it costs" });

    const given = fillInputs(kit, inputs);
    const grid = fillCans(kit, cans);
    const emitters = fillEmitters(kit, walked, given);
    const bottle = fillBottle(kit, bottles, given);
    const counts = fillCounts(work, given, grid);
    const sorted = fillSorted(work, given, grid, counts);
    const audit = fillAudit(result, given, grid, counts, sorted);
    const rate = fillRate(kit, result, given, grid, audit);
    fillWhatIf(kit, result, given, audit, rate.rate);
    const walk = fillWalk(kit, result, given, emitters);
    const trap = fillTrap(kit, result, given, bottle);
    drawSorted(result, sorted);
    addChecks(kit, { given, grid, counts, sorted, audit, rate, emitters, bottle, walk, trap });
    return kit.build();
  },
};
