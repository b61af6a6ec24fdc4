import { cite, defineFunction, UNITS_PARAM, type CellAnswer, type Show } from "../../../kernel";
import { wholeUp } from "../wholeNumbers";
import { BOOM_FLOW_PARAM, passDepth, SWATH_WIDTH_PARAM, TRAVEL_SPEED_PARAM } from "./boom";
import { faultOf, isUnwritten, type PlanCell } from "./planRows";

interface Section {
  readonly name: string;
  readonly depth: PlanCell;
  readonly length: PlanCell;
}

interface Work {
  readonly passes: number;
  readonly minutes: number;
  readonly volume: number;
}

/** One section, on symbols p (depth of a pass), v and Q. */
function workSection(depth: number, length: number, ofOnePass: number, speed: number, flow: number, show: Show): Work {
  show("G", depth, "water depth", "Depth for the first section, from the table");
  show("L", length, "length", "Length of the first section, from the table");
  const passes = show(
    "n = IF(G = 0, 0, MAX(1, ROUNDUP(G / p - 1E-9, 0)))",
    depth === 0 ? 0 : Math.max(1, wholeUp(depth / ofOnePass)),
    "count",
    "Passes, rounded up",
  );
  const once = show("tp = L / v", length / speed, "minutes", "Minutes of one pass");
  const minutes = show("t = MAX(n, 1) * tp", Math.max(passes, 1) * once, "minutes", "Minutes over the section");
  const volume = show("V = n * tp * Q", passes * once * flow, "volume", "Water applied");
  return { passes, minutes, volume };
}

export const boomPlan = defineFunction({
  name: "BOOM_PLAN",
  group: "Run time, zones, booms, mats",
  summary: "Passes, minutes and water of a boom for every section of a house",
  formula: "passes = depth / depth of a pass, rounded up; minutes = passes length / speed",
  source: cite("DEFINITION", "depth of a pass = flow / area swept; whole passes; time = way / speed"),
  assumptions: [
    "A pass is one way over the section with the water on, in either direction; the boom turns without delay.",
    "A section with depth 0 is passed over dry: no pass, no water, and the minutes of one crossing. A blank depth is a fault of its row, but may count as 0: write 0 where dry is meant.",
    "Not in it: the way back to the parking place, and a second crossing where an even number of passes leaves the boom at the near end. Each is length / speed.",
    "A row whose numbers are missing or wrong carries its reason and is left out of the sums; a row without a name and numbers is no row.",
  ],
  params: {
    section_names: { kind: "texts", about: "Names of the sections in the order in which the boom meets them" },
    depths: {
      kind: "column",
      quantity: "water depth",
      symbol: "Gs",
      atLeast: 0,
      blanks: "refused",
      about: "Gross depth wanted on each section; 0 is passed over dry",
    },
    lengths: {
      kind: "column",
      quantity: "length",
      symbol: "Ls",
      above: 0,
      blanks: "refused",
      about: "Length of each section along the rails",
    },
    boom_flow: BOOM_FLOW_PARAM,
    travel_speed: TRAVEL_SPEED_PARAM,
    swath_width: SWATH_WIDTH_PARAM,
    units: UNITS_PARAM,
  },
  unitConstants: { k: "volume of a depth on an area" },
  result: {
    header: true,
    table: [
      { name: "section", quantity: "text" },
      { name: "passes", quantity: "count" },
      { name: "minutes", quantity: "minutes" },
      { name: "volume", quantity: "volume" },
    ],
    about: "One row a section, then the total",
  },
  examples: [
    {
      given: {
        section_names: [["plugs"], ["empty"], ["pots"]],
        depths: [[0.8], [0], [4]],
        lengths: [[20], [10], [30]],
        boom_flow: 40,
        travel_speed: 10,
        swath_width: 8,
        units: "metric",
      },
      gives: [
        ["section", "passes", "minutes", "volume"],
        ["plugs", 2, 4, 160],
        ["empty", 0, 1, 0],
        ["pots", 8, 24, 960],
        ["total", 10, 29, 1120],
      ],
      from: cite("ARITHMETIC", "0.5 mm a pass: 1.6 is 2 passes of 2 min, 8 passes of 3 min, 40 L a minute"),
    },
    {
      given: {
        section_names: [["4 in"]],
        depths: [[0.3]],
        lengths: [[50]],
        boom_flow: 19.2,
        travel_speed: 25,
        swath_width: 30,
        units: "us",
      },
      gives: [
        ["section", "passes", "minutes", "volume"],
        ["4 in", 8, 16, 307.2],
        ["total", 8, 16, 307.2],
      ],
      from: cite("ARITHMETIC", "0.3 / 0.04107 = 7.3: 8 passes of 2 min; 16 x 19.2"),
    },
  ],
  mistakes: [],
  seeAlso: ["BOOM_DEPTH", "OVERHEAD_DEPTH", "GROSS_WATER"],
  caution:
    "A section with depth 0 or left out stays dry. Edges of trays dry first and a plugged nozzle leaves a stripe: look along the boom while it runs, and catch the water once a month.",
  compute(given, show, { constants: { k }, refuse }) {
    const { section_names, depths, lengths, boom_flow: flow, travel_speed: speed, swath_width: width } = given;
    const sections = section_names
      .map((name, row): Section => ({ name, depth: depths[row] as PlanCell, length: lengths[row] as PlanCell }))
      .filter(({ name, depth, length }) => !isUnwritten(name, depth, length));
    if (sections.length === 0) throw refuse("section_names", null, "it must have a section with its depth and length");
    const ofOnePass = passDepth({ flow, speed, width }, k, "p", show);
    return planned(sections, (depth, length, heard) => workSection(depth, length, ofOnePass, speed, flow, heard), show);
  },
});

type WorkOf = (depth: number, length: number, show: Show) => Work;

/** The table: each section, faulty ones with their reason, and the sums of the others. */
function planned(sections: readonly Section[], workOf: WorkOf, show: Show): CellAnswer[][] {
  const rows: CellAnswer[][] = [["section", "passes", "minutes", "volume"]];
  const sum = { passes: 0, minutes: 0, volume: 0, leftOut: 0 };
  let heard = show;
  for (const { name, depth, length } of sections) {
    const fault = faultOf(depth, length);
    if (fault !== null) {
      sum.leftOut += 1;
      rows.push([name, fault, "", ""]);
      continue;
    }
    const { passes, minutes, volume } = workOf(depth as number, length as number, heard);
    heard = show.silent;
    sum.passes += passes;
    sum.minutes += minutes;
    sum.volume += volume;
    rows.push([name, passes, minutes, volume]);
  }
  const label = sum.leftOut === 0 ? "total" : `total, ${sum.leftOut} left out`;
  rows.push([label, sum.passes, sum.minutes, sum.volume]);
  return rows;
}
