import { type NumberParam } from "../../../kernel";
import { EC_GUARD, HIGHEST_EC } from "../feed/feedParams";

/** What every EC of water in this group has in common; a blank must never pass as water without salt. */
export const EC_OF_WATER = {
  quantity: "EC",
  above: 0,
  atMost: HIGHEST_EC,
  guard: EC_GUARD,
  hint: "in uS/cm? Divide by 1000",
} as const satisfies Partial<NumberParam>;
