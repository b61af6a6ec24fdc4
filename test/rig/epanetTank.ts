/** A tank's level in EPANET, the hydraulic simulator: water drawn from it, or brought back to it, in slots of equal length. */
import { NodeProperty, Project, Workspace } from "epanet-js";

const SECONDS_PER_MINUTE = 60;
const LITRES_PER_CUBIC_METRE = 1000;
const TANK_DIAMETER = 10;
const FULL = 10;
/** Of a tank whose bottom is far below, so that the level may be followed where it would have run dry. */
const TANK_AREA = (Math.PI / 4) * TANK_DIAMETER ** 2;

function network(net: readonly number[], secondsASlot: number): string {
  const step = `0:00:${String(secondsASlot).padStart(2, "0")}`;
  const minutes = (net.length * secondsASlot) / SECONDS_PER_MINUTE;
  return [
    "[JUNCTIONS]",
    "bench 0 1 draw",
    "[TANKS]",
    `tank 1000 ${FULL} 0 ${2 * FULL} ${TANK_DIAMETER} 0`,
    "[PIPES]",
    "pipe tank bench 10 100 140 0 Open",
    "[PATTERNS]",
    ...net.map((flow) => `draw ${flow}`),
    "[TIMES]",
    `Duration ${Math.floor(minutes / 60)}:${String(Math.ceil(minutes) % 60).padStart(2, "0")}:00`,
    `Hydraulic Timestep ${step}`,
    `Pattern Timestep ${step}`,
    "[OPTIONS]",
    "Units LPM",
    "Headloss H-W",
    "Accuracy 1e-5",
    "Unbalanced Continue 10",
    "[END]",
  ].join("\n");
}

/**
 * Litres more than at the start, by second of the round; `net` is what is drawn in each slot, in L/min, less what comes
 * back.
 */
export async function tankInEpanet(net: readonly number[], secondsASlot: number): Promise<ReadonlyMap<number, number>> {
  const workspace = new Workspace();
  await workspace.loadModule();
  workspace.writeFile("round.inp", network(net, secondsASlot));
  const project = new Project(workspace);
  project.open("round.inp", "round.rpt", "round.bin");
  const tank = project.getNodeIndex("tank");
  project.openH();
  project.initH(0);
  const litres = new Map<number, number>();
  let isGoingOn = true;
  while (isGoingOn) {
    const second = project.runH();
    const level = project.getNodeValue(tank, NodeProperty.Head) - 1000;
    litres.set(second, (level - FULL) * TANK_AREA * LITRES_PER_CUBIC_METRE);
    isGoingOn = project.nextH() > 0;
  }
  project.closeH();
  project.close();
  return litres;
}
