/** The library as it is built, which is what people run; compiled on the fly, each closure would cost more. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { ArgumentInput } from "../../src/kernel";

export type Call = (name: string, args: readonly ArgumentInput[]) => unknown;

export interface BuiltLibrary {
  readonly call: Call;
  readonly catalogue: readonly {
    readonly name: string;
    readonly examples: readonly { readonly args: readonly ArgumentInput[] }[];
  }[];
}

export const DIST = join(__dirname, "../../dist");

export async function builtLibrary(): Promise<BuiltLibrary> {
  return (await import(pathToFileURL(join(DIST, "library.mjs")).href)) as BuiltLibrary;
}
