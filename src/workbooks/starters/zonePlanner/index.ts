/** For the grower, once a season: how long each zone runs, and in which order on what the supply gives. */
import { StarterBuilder, type Edition } from "../../kit";
import type { StarterKind } from "../kinds";
import { ABOUT } from "./about";
import { addChecks } from "./checks";
import { fillInputs } from "./inputs";
import { fillResult, fillStrip } from "./result";
import { fillChain, fillOrder, fillZones } from "./work";

export const zonePlanner: StarterKind = {
  id: ABOUT.id,
  title: ABOUT.title,
  purpose: ABOUT.purpose,
  build(edition: Edition) {
    const kit = new StarterBuilder(edition, ABOUT);
    const landscape = { landscape: true } as const;
    const inputs = kit.sheet("Inputs", {
      title: "Tern Hollow: the supply and the zones",
      widths: [36, 18, 12, 13, 11, 11, 11, 12, 11, 11, 10, 10],
      print: landscape,
    });
    const work = kit.sheet("Work", {
      title: "Minutes, flow and filling of each zone",
      widths: [36, 12, 12, 13, 12, 12, 12, 12, 26],
      print: landscape,
    });
    const result = kit.sheet("Result", {
      title: "Tern Hollow: the day, zone by zone",
      widths: [30, 10, 10, 12, 48],
    });
    const given = fillInputs(kit, inputs);
    const zones = fillZones(kit, work, given);
    const order = fillOrder(kit, work, given, zones);
    const chain = fillChain(kit, work, given);
    const day = fillResult(kit, result, given, order);
    fillStrip(work, result, given, day);
    addChecks(kit, { given, zones, order, chain, day });
    return kit.build();
  },
};
