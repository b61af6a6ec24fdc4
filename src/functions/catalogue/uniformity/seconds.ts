import { cite, type NumberParam } from "../../../kernel";

/** How long a bucket, a bottle or a cylinder was held under the water. */
export const SECONDS_PARAM = {
  quantity: "seconds",
  symbol: "s",
  above: 0,
  about: "Seconds for which the water was caught",
  usual: {
    us: [10, 600],
    metric: [10, 600],
    low: "too short to time by hand, or minutes were typed",
    high: "longer than a bucket test takes",
    source: cite("PRACTICE", "30 s under an emitter, seconds to fill a bucket under a hose"),
  },
} as const satisfies NumberParam;

export const SECONDS_PER_MINUTE = 60;
