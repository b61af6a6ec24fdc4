/** The day as a picture: what runs when, zone by zone, and below it the flow that is drawn, against the supply. */
import { stretchesOf, type Stretch } from "./plan";
import type { DaySheet } from "./sheet";

const WIDTH = 800;
const LEFT = 160;
const RIGHT = 30;
const TOP = 66;
const ROW = 34;
const BAR = 22;
const FLOW_HEIGHT = 120;
const BETWEEN = 58;
const BELOW = 40;
const TICK_MINUTES = 30;

const INK = "#1f2933";
const RULE = "#c3cad1";
const BAND = "#eef2f6";
const EMITTERS = "#1f6fb2";
const SPRINKLERS = "#2e7d32";
const BOOM = "#9a4d00";
const LIMIT = "#b00020";

const COLOURS: Readonly<Record<string, string>> = { "Bed 1": SPRINKLERS, "Boom house": BOOM };

interface Axis {
  readonly from: number;
  readonly to: number;
  x(minute: number): number;
}

function axisOf(stretches: readonly Stretch[]): Axis {
  const from = Math.floor(Math.min(...stretches.map(({ start }) => start)) / TICK_MINUTES) * TICK_MINUTES;
  const to = Math.ceil(Math.max(...stretches.map(({ stop }) => stop)) / TICK_MINUTES) * TICK_MINUTES;
  return { from, to, x: (minute) => LEFT + ((minute - from) / (to - from)) * (WIDTH - LEFT - RIGHT) };
}

export function clock(minutes: number): string {
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

function short(value: number): string {
  return String(Number(value.toFixed(1)));
}

function text(x: number, y: number, words: string, more = ""): string {
  return `  <text x="${short(x)}" y="${short(y)}"${more}>${words}</text>`;
}

function rectangle(x: number, y: number, width: number, height: number, more: string): string {
  return `  <rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}" ${more}/>`;
}

function line(x1: number, y1: number, x2: number, y2: number, more: string): string {
  return `  <line x1="${short(x1)}" y1="${short(y1)}" x2="${short(x2)}" y2="${short(y2)}" ${more}/>`;
}

function hours(axis: Axis, top: number, bottom: number): string[] {
  const lines: string[] = [];
  for (let minute = axis.from; minute <= axis.to; minute += TICK_MINUTES) {
    lines.push(line(axis.x(minute), top, axis.x(minute), bottom, `stroke="${RULE}"`));
    if (minute % 60 === 0 || minute === axis.from) {
      lines.push(text(axis.x(minute), bottom + 18, clock(minute), ' text-anchor="middle"'));
    }
  }
  return lines;
}

function cycleBands(axis: Axis, stretches: readonly Stretch[], bottom: number): string[] {
  const cycles = [...new Set(stretches.map(({ cycle }) => cycle))].filter((cycle) => cycle > 0);
  return cycles.flatMap((cycle) => {
    const its = stretches.filter((stretch) => stretch.cycle === cycle);
    const from = axis.x(Math.min(...its.map(({ start }) => start)));
    const to = axis.x(Math.max(...its.map(({ stop }) => stop)));
    return [
      rectangle(from, TOP - 8, to - from, bottom - TOP + 8, `fill="${BAND}"`),
      text((from + to) / 2, TOP - 14, `cycle ${cycle}`, ' text-anchor="middle"'),
    ];
  });
}

function bars(axis: Axis, stretches: readonly Stretch[], names: readonly string[]): string[] {
  const rows = names.flatMap((name, index) => {
    const middle = TOP + index * ROW + ROW / 2;
    const its = stretches.filter((stretch) => stretch.name === name);
    const [{ flow, cycle }] = its as [Stretch];
    const valves = cycle === 0 ? 1 : its.filter((stretch) => stretch.cycle === cycle).length;
    const drawn = valves === 1 ? short(flow) : `${valves} x ${short(flow)}`;
    return [
      text(LEFT - 12, middle + 5, `${name}, ${drawn}`, ' text-anchor="end"'),
      ...its.map(({ start, stop }) =>
        rectangle(
          axis.x(start),
          middle - BAR / 2,
          axis.x(stop) - axis.x(start),
          BAR,
          `fill="${COLOURS[name] ?? EMITTERS}" class="run"`,
        ),
      ),
    ];
  });
  return [text(LEFT - 12, TOP - 14, "gal/min", ' text-anchor="end"'), ...rows];
}

/** Flow drawn from one moment to the next. */
export function flowSteps(stretches: readonly Stretch[]): readonly { from: number; to: number; flow: number }[] {
  const moments = [...new Set(stretches.flatMap(({ start, stop }) => [start, stop]))].sort((a, b) => a - b);
  return moments.slice(0, -1).map((from, index) => {
    const to = moments[index + 1] as number;
    const middle = (from + to) / 2;
    const open = stretches.filter(({ start, stop }) => start < middle && stop > middle);
    return { from, to, flow: open.reduce((sum, { flow }) => sum + flow, 0) };
  });
}

function flowPanel(axis: Axis, stretches: readonly Stretch[], supply: number, top: number): string[] {
  const bottom = top + FLOW_HEIGHT;
  const most = Math.ceil((1.15 * supply) / 20) * 20;
  const y = (flow: number): number => bottom - (flow / most) * FLOW_HEIGHT;
  const marks = Array.from({ length: most / 20 + 1 }, (_, index) => index * 20);
  return [
    ...hours(axis, top, bottom),
    ...marks.map((flow) => text(LEFT - 12, y(flow) + 5, String(flow), ' text-anchor="end"')),
    text(LEFT, top - 12, "drawn from the supply, gal/min"),
    ...flowSteps(stretches)
      .filter(({ flow }) => flow > 0)
      .map(({ from, to, flow }) =>
        rectangle(axis.x(from), y(flow), axis.x(to) - axis.x(from), bottom - y(flow), 'fill="#7a8794" class="flow"'),
      ),
    line(LEFT, bottom, WIDTH - RIGHT, bottom, `stroke="${INK}"`),
    line(LEFT, y(supply), WIDTH - RIGHT, y(supply), `stroke="${LIMIT}" stroke-width="2" stroke-dasharray="7 4"`),
    text(WIDTH - RIGHT, y(supply) - 7, `counted on: ${short(supply)}`, ` text-anchor="end" fill="${LIMIT}"`),
  ];
}

/** docs/pictures/nursery-day.svg */
export function drawDay(sheet: DaySheet): string {
  const stretches = stretchesOf(sheet);
  const names = [...new Set(stretches.map(({ name }) => name))];
  const axis = axisOf(stretches);
  const bottom = TOP + names.length * ROW;
  const flowTop = bottom + BETWEEN;
  const height = flowTop + FLOW_HEIGHT + BELOW;
  const words = names
    .map((name) => {
      const its = stretches.filter((stretch) => stretch.name === name);
      return `${name}: ${its.map(({ start, stop }) => `${clock(start)} to ${clock(stop)}`).join(", ")}`;
    })
    .join("; ");
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" role="img" aria-labelledby="title what" font-family="Helvetica, Arial, sans-serif" font-size="15" fill="${INK}">`,
    '  <title id="title">What runs when at Tern Hollow, and the flow that is drawn</title>',
    `  <desc id="what">${words}.</desc>`,
    rectangle(0, 0, WIDTH, height, 'fill="#ffffff"'),
    text(LEFT, 26, "Tern Hollow, 8 July: what runs when", ' font-size="18" font-weight="bold"'),
    ...cycleBands(axis, stretches, bottom),
    ...hours(axis, TOP - 8, bottom),
    ...bars(axis, stretches, names),
    ...flowPanel(axis, stretches, sheet.number("B10"), flowTop),
    "</svg>",
    "",
  ].join("\n");
}
