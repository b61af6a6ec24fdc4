import { useMemo, useState } from "preact/hooks";
import type { Argument, FunctionHelp, Parameter } from "../library";
import { unitFor } from "../library";
import { plotOf, plottable, type Plot } from "../plot";
import { usePane } from "./context";
import { shownNumber } from "../shown";
import { ticks } from "../ticks";

const WIDTH = 300;
const HEIGHT = 170;
const LEFT = 50;
const RIGHT = 10;
const TOP = 10;
const BOTTOM = 28;

function extent(values: readonly number[]): readonly [number, number] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  return low === high ? [low - 1, high + 1] : [Math.min(low, 0 < low && low < high / 3 ? 0 : low), high];
}

function Drawing({ plot, label }: { plot: Plot; label: string }) {
  const { points, present } = plot;
  const [bottom, top] = extent([...points.map(({ y }) => y), ...(present === null ? [] : [present.y])]);
  const x = (value: number): number =>
    LEFT + ((value - plot.low) / (plot.high - plot.low || 1)) * (WIDTH - LEFT - RIGHT);
  const y = (value: number): number => HEIGHT - BOTTOM - ((value - bottom) / (top - bottom)) * (HEIGHT - TOP - BOTTOM);
  return (
    <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={label} class="plot">
      {ticks(bottom, top, 4).map((tick) => (
        <g key={`y${tick}`}>
          <line class="rule" x1={LEFT} x2={WIDTH - RIGHT} y1={y(tick)} y2={y(tick)} />
          <text x={LEFT - 5} y={y(tick) + 4} text-anchor="end">
            {shownNumber(tick)}
          </text>
        </g>
      ))}
      {ticks(plot.low, plot.high, 5).map((tick) => (
        <text key={`x${tick}`} x={x(tick)} y={HEIGHT - 10} text-anchor="middle">
          {shownNumber(tick)}
        </text>
      ))}
      <polyline
        class="line"
        points={points.map((point) => `${x(point.x).toFixed(1)},${y(point.y).toFixed(1)}`).join(" ")}
      />
      {present !== null && <circle class="present" cx={x(present.x)} cy={y(present.y)} r="4.5" />}
    </svg>
  );
}

function withUnit(name: string, unit: string): string {
  return unit === "" ? name : `${name} (${unit})`;
}

function amount(value: number, unit: string): string {
  return `${shownNumber(value)} ${unit}`.trim();
}

interface PlotViewProps {
  readonly entry: FunctionHelp;
  readonly given: readonly Argument[];
}

export function PlotView({ entry, given }: PlotViewProps) {
  const { library, system } = usePane();
  const choices = plottable(entry);
  const [chosen, setChosen] = useState(choices[0]?.name ?? "");
  const parameter: Parameter | undefined = choices.find(({ name }) => name === chosen) ?? choices[0];
  const plot = useMemo(
    () => (parameter === undefined ? null : plotOf(library, entry, given, parameter, system)),
    [library, entry, given, parameter, system],
  );
  if (parameter === undefined) return null;
  const unit = unitFor(parameter, system);
  const answerUnit = unitFor(entry.result, system);
  const label = `${withUnit(entry.result.about, answerUnit)} against ${withUnit(parameter.name, unit)}`;
  return (
    <section>
      <h2>How the answer changes</h2>
      <div class="row">
        <label for="against">with</label>
        <select id="against" value={parameter.name} onChange={(event) => setChosen(event.currentTarget.value)}>
          {choices.map(({ name }) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </div>
      {plot === null ? (
        <p class="quiet">No line can be drawn with these numbers.</p>
      ) : (
        <figure>
          <Drawing plot={plot} label={label} />
          <figcaption>
            Across: {withUnit(parameter.name, unit)}. Up: {withUnit("the answer", answerUnit)}.
            {plot.present !== null &&
              ` The dot: ${amount(plot.present.x, unit)} gives ${amount(plot.present.y, answerUnit)}.`}
          </figcaption>
        </figure>
      )}
    </section>
  );
}
