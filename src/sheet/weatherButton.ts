/** The button that brings a weather table in; there when the workbook takes one. */
import { bringIn } from "./bringIn";
import type { Desk } from "./desk";
import type { Functions } from "./functions";
import { growingBlockOf } from "./growingBlock";
import { tell } from "./notices";
import { connectWeatherDialog } from "./weatherDialog";

export function connectWeather(desk: Desk, functions: Functions): void {
  const button = document.getElementById("weather-button")!;
  const open = connectWeatherDialog({
    fields: () => growingBlockOf(desk.model())?.fields ?? [],
    convert: (value, from, to) => Number(functions.call("CONVERT_UNIT", [value, from, to])),
    bringIn: (rows, { sentence, points }) => {
      bringIn(desk.model(), rows);
      tell(sentence, "weather", { points });
    },
  });
  button.addEventListener("click", open);
  const show = () => (button.hidden = growingBlockOf(desk.model()) === undefined);
  desk.sheet.watch(show);
  show();
}
