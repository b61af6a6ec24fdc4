/** EPANET, the solver of pipe networks, as a judge: one line of equal pipes from a reservoir, an outlet at the end of each. */
import {
  FlowUnits,
  HeadLossType,
  LinkProperty,
  LinkType,
  NodeProperty,
  NodeType,
  Option,
  Project,
  Workspace,
} from "epanet-js";

/** What the solver takes water to be, 1.1e-5 ft2/s, in m2/s. */
const ITS_VISCOSITY = 1.1e-5 * 0.3048 ** 2;
const VISCOSITY_AT_20C = 1.004e-6;

export interface EpanetLine {
  readonly formula: "Hazen-Williams" | "Darcy-Weisbach";
  /** C, or the roughness in mm: as good as none for smooth tube. */
  readonly coefficient: number;
  readonly pipes: number;
  /** Length of each pipe, m. */
  readonly length: number;
  /** Bore, mm. */
  readonly bore: number;
  /** What each outlet takes, L/min, whatever the pressure; or emitters that follow it. */
  readonly outlet: number | { readonly flowAt1m: number; readonly exponent: number };
  /** Head of the reservoir, m. */
  readonly supply: number;
}

export interface EpanetAnswer {
  /** Head from the reservoir to the last outlet, m. */
  readonly loss: number;
  /** In the first pipe, m/s. */
  readonly velocity: number;
  /** What each outlet gives, L/min. */
  readonly flows: readonly number[];
  /** Pressure head at each outlet, m. */
  readonly heads: readonly number[];
}

export const SMOOTH = 1e-6;

const loaded = (async () => {
  const workspace = new Workspace();
  await workspace.loadModule();
  return workspace;
})();

function addOutlets(model: Project, { pipes, outlet }: EpanetLine): void {
  for (let at = 1; at <= pipes; at += 1) {
    const node = model.addNode(`J${at}`, NodeType.Junction);
    model.setJunctionData(node, 0, typeof outlet === "number" ? outlet : 0, "");
    if (typeof outlet !== "number") model.setNodeValue(node, NodeProperty.Emitter, outlet.flowAt1m);
  }
}

function addPipes(model: Project, { pipes, length, bore, coefficient }: EpanetLine): void {
  for (let at = 1; at <= pipes; at += 1) {
    const pipe = model.addLink(`P${at}`, LinkType.Pipe, at === 1 ? "R" : `J${at - 1}`, `J${at}`);
    model.setPipeData(pipe, length, bore, coefficient, 0);
  }
}

export async function solveLine(line: EpanetLine): Promise<EpanetAnswer> {
  const model = new Project(await loaded);
  const formula = line.formula === "Hazen-Williams" ? HeadLossType.HW : HeadLossType.DW;
  model.init("report.rpt", "answer.bin", FlowUnits.LPM, formula);
  model.setOption(Option.Accuracy, 1e-8);
  model.setOption(Option.Trials, 500);
  model.setOption(Option.SpViscos, VISCOSITY_AT_20C / ITS_VISCOSITY);
  if (typeof line.outlet !== "number") model.setOption(Option.Emitexpon, line.outlet.exponent);
  addOutlets(model, line);
  const reservoir = model.addNode("R", NodeType.Reservoir);
  model.setNodeValue(reservoir, NodeProperty.Elevation, line.supply);
  addPipes(model, line);
  model.solveH();
  const nodes = Array.from({ length: line.pipes }, (_none, at) => model.getNodeIndex(`J${at + 1}`));
  const heads = nodes.map((node) => model.getNodeValue(node, NodeProperty.Head));
  const answer = {
    loss: line.supply - (heads.at(-1) ?? NaN),
    velocity: model.getLinkValue(model.getLinkIndex("P1"), LinkProperty.Velocity),
    flows: nodes.map((node) => model.getNodeValue(node, NodeProperty.Demand)),
    heads,
  };
  model.close();
  return answer;
}
