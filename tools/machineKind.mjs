import { cpus, totalmem } from "node:os";

const GIGABYTE = 2 ** 30;

/** "2 cores, 16 GB, Node 20.1.0, linux x64": what kind of machine a page was measured on, not which. */
export function machineKind() {
  const memory = Math.round(totalmem() / GIGABYTE);
  return `${cpus().length} cores, ${memory} GB, Node ${process.versions.node}, ${process.platform} ${process.arch}`;
}
