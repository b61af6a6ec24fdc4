import { cite, type NumberParam, type Show } from "../../../kernel";

export const BOOM_FLOW_PARAM = {
  quantity: "flow",
  symbol: "Q",
  above: 0,
  about: "Flow of the whole boom, all nozzles together",
  usual: {
    us: [1, 60],
    metric: [4, 230],
    low: "looks like one nozzle",
    high: "looks like a flow per hour",
    source: cite("BOOM_2013", "nozzles 12 to 20 in apart, 0.067 to 0.8 gal/min each"),
  },
} as const satisfies NumberParam;

export const TRAVEL_SPEED_PARAM = {
  quantity: "boom speed",
  symbol: "v",
  above: 0,
  about: "Speed of the boom while it waters",
  usual: {
    us: [25, 250],
    metric: [7.6, 76],
    low: "looks like a speed per second",
    high: "looks like the other unit, or like a speed per hour",
    source: cite("BOOM_2013", "booms travel at 25 to 250 ft/min"),
  },
} as const satisfies NumberParam;

export const SWATH_WIDTH_PARAM = {
  quantity: "length",
  symbol: "W",
  above: 0,
  about: "Width that the boom waters",
  usual: {
    us: [4, 70],
    metric: [1.2, 21],
    high: "looks like the length of the house, or like the other unit",
    source: cite("BOOM_2013", "booms to 70 ft wide; one bench at least"),
  },
} as const satisfies NumberParam;

interface Boom {
  readonly flow: number;
  readonly speed: number;
  readonly width: number;
}

/** Depth of one pass on the symbol given; k is the volume of a depth on an area. */
export function passDepth({ flow, speed, width }: Boom, k: number, symbol: string, show: Show): number {
  const swept = show("a = v * W", speed * width, "area", "Area that the boom sweeps in a minute");
  return show(`${symbol} = Q / (k * a)`, flow / (k * swept), "water depth", "Depth of one pass");
}
