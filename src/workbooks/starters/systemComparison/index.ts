/** For the bookkeeper, once per project: what each way of watering one yard costs a year, and whether a change pays. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { fillCases } from "./cases";
import { addChecks } from "./checks";
import { fillCosts } from "./costs";
import { fillInputs } from "./inputs";
import { fillChosen } from "./lookedAt";
import { fillComparison } from "./result";
import { fillSystems } from "./systems";
import { fillWater } from "./water";
import { fillYears } from "./years";

export const systemComparison: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const landscape = { landscape: true } as const;
    const inputs = kit.sheet("Inputs", {
      title: "Tern Hollow: the crop, the prices and the choice",
      widths: [36, 12, 10, 18, 62],
    });
    const sheet = kit.sheet("Systems", {
      title: "Tern Hollow: what each system takes",
      widths: [26, 13, 13, 13, 13, 13, 13, 13, 13, 13, 13],
      print: landscape,
    });
    const work = kit.sheet("Work", {
      title: "Water, costs, savings and cases of all six systems",
      widths: [30, 18, 13, 13, 13, 13, 13, 13, 13, 13, 11, 11, 11, 11],
      print: landscape,
    });
    const result = kit.sheet("Result", {
      title: "Tern Hollow: which system, and does it pay?",
      widths: [34, 11, 18, 18, 18, 18],
    });
    const given = fillInputs(kit, inputs);
    const systems = fillSystems(kit, sheet, given);
    const water = fillWater(kit, work, given, systems);
    const costs = fillCosts(kit, work, given, systems, water);
    const cases = fillCases(work, given, systems, costs);
    const chosen = fillChosen(work, given, systems, costs, cases);
    fillComparison(kit, result, { systems, water, costs, cases, chosen });
    const years = fillYears(work, result, costs, chosen);
    addChecks(kit, { given, systems, water, costs, chosen, years });
    return kit.build();
  },
};
