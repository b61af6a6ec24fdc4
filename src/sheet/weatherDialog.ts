/** The dialog that brings a weather table into the workbook: what was recognised, what is asked, what becomes of it. */
import type { BlockRow } from "./bringIn";
import { LEAST_ROWS } from "./bringIn";
import type * as WeatherTables from "./weather";
import type { Arranged, Choice, ColumnUse, DateOrder, Field, Recognised, TextTable, WantedField } from "./weather";

type Weather = typeof WeatherTables;
type ConvertUnit = (value: number, from: string, to: string) => number;

export interface WeatherTarget {
  /** What the workbook that is open takes. */
  fields(): readonly WantedField[];
  convert: ConvertUnit;
  bringIn(rows: readonly BlockRow[], told: { readonly sentence: string; readonly points: readonly string[] }): void;
}

const FAILED = "The table could not be read.";

export function connectWeatherDialog(target: WeatherTarget): () => void {
  const dialog = byId<HTMLDialogElement>("weather");
  const text = byId<HTMLTextAreaElement>("weather-text");
  const file = byId<HTMLInputElement>("weather-file");
  let form: TableForm | undefined;

  const read = async (from: string): Promise<void> => {
    form?.remove();
    form = undefined;
    const weather = await weatherTables();
    try {
      if (text.value.trim() !== "") form = new TableForm(weather, weather.readTable(text.value), target, from);
      else say("");
    } catch (error) {
      say(error instanceof weather.NoTable ? error.message : FAILED);
      if (!(error instanceof weather.NoTable)) console.error(error);
    }
  };
  byId("weather-open").addEventListener("click", () => file.click());
  file.addEventListener("change", () => {
    const [chosen] = Array.from(file.files ?? []);
    file.value = "";
    if (!chosen) return;
    void chosen.text().then((content) => {
      text.value = content;
      return read(chosen.name);
    });
  });
  text.addEventListener("input", () => void read("the pasted table"));
  byId("weather-back").addEventListener("click", () => dialog.close());
  byId("weather-take").addEventListener("click", () => {
    if (form?.take()) dialog.close();
  });
  return () => {
    form?.remove();
    form = undefined;
    text.value = "";
    say("");
    dialog.showModal();
    text.focus();
  };
}

function weatherTables(): Promise<Weather> {
  return import(/* webpackChunkName: "weather" */ "./weather");
}

/** One table in the dialog. */
class TableForm {
  private readonly recognised: Recognised;
  private readonly uses: (ColumnUse | null)[];
  private readonly units: (string | null)[];
  private order: DateOrder | undefined;
  private arranged: Arranged | undefined;

  constructor(
    private readonly weather: Weather,
    private readonly table: TextTable,
    private readonly target: WeatherTarget,
    private readonly from: string,
  ) {
    this.recognised = weather.recognise(table, this.fields());
    this.uses = this.recognised.columns.map(({ use }) => use);
    this.units = this.recognised.columns.map(({ unit }) => unit);
    this.order = this.recognised.order;
    byId("weather-columns").replaceChildren(...this.recognised.columns.map((_, at) => this.columnRow(at)));
    byId("weather-table").hidden = false;
    this.showOrder();
    this.work();
  }

  remove(): void {
    byId("weather-table").hidden = true;
    byId("weather-order").hidden = true;
    byId("weather-details").replaceChildren();
    byId<HTMLButtonElement>("weather-take").disabled = true;
  }

  /** False when there is nothing to take yet. */
  take(): boolean {
    if (!this.arranged) return false;
    const { rows, report } = this.arranged;
    this.target.bringIn(rows, {
      sentence: `${this.weather.summary(report)}, brought in from “${this.from}”.`,
      points: this.weather.details(report),
    });
    return true;
  }

  private fields(): readonly Field[] {
    return this.target.fields().map(({ field }) => field);
  }

  private columnRow(at: number): HTMLElement {
    const { heading, samples } = this.recognised.columns[at]!;
    const row = document.createElement("tr");
    const name = document.createElement("th");
    name.scope = "row";
    name.textContent = heading || `column ${at + 1}`;
    const sample = cell(samples.join(", "));
    sample.className = "samples";
    const unitCell = cell("");
    const showUnit = () => unitCell.replaceChildren(...this.unitChoice(at));
    const choices: (ColumnUse | "")[] = ["", ...this.fields(), ...this.weather.DATE_PARTS];
    const use = select(
      `What “${name.textContent}” is`,
      choices.map((each) => [each, this.titleOf(each)]),
      this.uses[at] ?? "",
      (value) => {
        this.uses[at] = (value || null) as ColumnUse | null;
        showUnit();
        this.work();
      },
    );
    showUnit();
    const useCell = cell("");
    useCell.append(use);
    row.append(name, sample, useCell, unitCell);
    return row;
  }

  private titleOf(use: ColumnUse | ""): string {
    if (use === "") return "not used";
    return this.weather.isDatePart(use) ? use : this.weather.FIELDS[use].title;
  }

  private unitChoice(at: number): Node[] {
    const use = this.uses[at];
    const kind = use && !this.weather.isDatePart(use) ? this.weather.FIELDS[use].kind : null;
    if (!kind) return [];
    const units = this.weather.unitsOf(kind);
    if (!units.some(({ name }) => name === this.units[at])) this.units[at] = null;
    const hint = document.createElement("span");
    hint.className = "hint";
    const { isGuessed, unit: guess } = this.recognised.columns[at]!;
    const showHint = () => {
      const isOpen = !this.units[at];
      hint.classList.toggle("open", isOpen);
      const isGuess = isGuessed && this.units[at] === guess;
      hint.textContent = isOpen ? "choose the unit" : isGuess ? "by the numbers: please check" : "";
    };
    const choice = select(
      `Unit of “${this.recognised.columns[at]!.heading}”`,
      [["", "unit?"], ...units.map(({ name }): [string, string] => [name, name])],
      this.units[at] ?? "",
      (value) => {
        this.units[at] = value || null;
        showHint();
        this.work();
      },
    );
    showHint();
    return [choice, hint];
  }

  private showOrder(): void {
    const place = byId("weather-order");
    place.hidden = this.recognised.order !== undefined;
    for (const radio of Array.from(place.querySelectorAll<HTMLInputElement>("input"))) {
      radio.checked = false;
      radio.onchange = () => {
        this.order = radio.value as DateOrder;
        this.work();
      };
    }
  }

  private work(): void {
    this.arranged = undefined;
    const open = this.openQuestions();
    if (open.length > 0) this.show(open[0]!, []);
    else this.arrange();
    byId<HTMLButtonElement>("weather-take").disabled = this.arranged === undefined;
  }

  private openQuestions(): string[] {
    const choice = { uses: this.uses, units: this.units, order: "month first" as const };
    const headings = this.weather.withoutUnit(choice).map((at) => `“${this.table.headings[at]!}”`);
    const twice = this.uses.find((use, at) => use !== null && this.uses.indexOf(use) !== at);
    const hasDate = this.uses.some((use) => use === "date" || use === "year");
    return [
      ...(hasDate ? [] : ["Which column is the date?"]),
      ...(twice ? [`Two columns are the ${this.titleOf(twice)}: choose one.`] : []),
      ...(headings.length > 0 ? [`In which unit is ${headings.join(" and ")}?`] : []),
      ...(this.order === undefined ? ["Which comes first in the dates, the day or the month?"] : []),
      ...this.recognised.rivals
        .filter((field) => !this.uses.includes(field))
        .map((field) => `Which column is the ${this.titleOf(field)}?`),
    ];
  }

  private arrange(): void {
    const { uses, units, order = "month first" } = this;
    const choice: Choice = { uses, units, order };
    try {
      const arranged = this.weather.arrange(this.table, choice, this.target.fields(), this.target.convert);
      const lines = this.weather.details(arranged.report);
      if (arranged.rows.length < LEAST_ROWS) this.show("It takes two days or more.", lines);
      else {
        this.arranged = arranged;
        this.show(`${this.weather.summary(arranged.report)}.`, lines);
      }
    } catch (error) {
      if (!(error instanceof this.weather.NoTable)) throw error;
      this.show(error.message, []);
    }
  }

  private show(sentence: string, lines: readonly string[]): void {
    say(sentence);
    byId("weather-details").replaceChildren(
      ...lines.map((line) => {
        const entry = document.createElement("li");
        entry.textContent = line;
        return entry;
      }),
    );
  }
}

function say(sentence: string): void {
  byId("weather-says").textContent = sentence;
}

function cell(text: string): HTMLTableCellElement {
  const made = document.createElement("td");
  made.textContent = text;
  return made;
}

function select(
  label: string,
  choices: readonly (readonly [value: string, words: string])[],
  chosen: string,
  change: (value: string) => void,
): HTMLSelectElement {
  const made = document.createElement("select");
  made.setAttribute("aria-label", label);
  made.append(...choices.map(([value, words]) => new Option(words, value, false, value === chosen)));
  made.addEventListener("change", () => change(made.value));
  return made;
}

function byId<T extends HTMLElement = HTMLElement>(id: string): T {
  return document.getElementById(id) as T;
}
