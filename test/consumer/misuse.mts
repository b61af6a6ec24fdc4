/** What the library's types must not let pass: each line below a directive must fail to compile. */
import { call, catalogue, verdict } from "../../dist/library.mjs";

// @ts-expect-error a name is a text
call(1, []);
// @ts-expect-error arguments are a list
call("RUN_MINUTES", 0.275, 6);
// @ts-expect-error an answer may be words or a table
export const sum: number = call("RUN_MINUTES", [0.275, 6]);
// @ts-expect-error there are two systems
verdict("RUN_MINUTES", "emitter_flow", 6, "imperial");
// @ts-expect-error there may be no such entry
export const { name } = catalogue[0];
// @ts-expect-error the catalogue is not to be changed
catalogue.push();
// @ts-expect-error what an entry is inside is not the library's
export type { Entry } from "../../dist/library.mjs";
// @ts-expect-error nor how one is found
export { find } from "../../dist/library.mjs";
