/** The dialog in which a workbook to start from is chosen. */
import { blank } from "../workbooks/blank";
import type { Workbook } from "../workbooks/model";
import { ternHollow } from "../workbooks/ternHollow";
import type { Edition, ListedStarter, StarterFiles } from "./starterFiles";

const NOT_FETCHED = "The starter workbooks could not be fetched just now. These two are here all the same.";
/** Where inches and gallons are at home. */
const US_LANGUAGES = /^(en-US|es-US|en-LR)$/i;

export const START_FROM_IT = "Start from it";

export interface Choice {
  readonly title: string;
  readonly purpose: string;
  /** How the button says it that puts the workbook in the place of the present one. */
  readonly agree: string;
  workbook(): Promise<Workbook>;
}

const OWN: readonly Choice[] = [
  {
    title: "The example",
    purpose: "One summer day of a yard at an invented nursery, from the pot to the pulses, in US units.",
    agree: "Open the example",
    workbook: () => Promise.resolve(ternHollow),
  },
  {
    title: "A blank workbook",
    purpose: "Nothing in it: for your own sheet with the functions.",
    agree: "Start a blank workbook",
    workbook: () => Promise.resolve(blank),
  },
];

/** Opens the dialog; `take` is called with what was chosen. */
export function connectChooser(files: StarterFiles, take: (choice: Choice) => void): () => void {
  const dialog = document.getElementById("chooser") as HTMLDialogElement;
  const problem = document.getElementById("chooser-problem")!;
  const list = document.getElementById("chooser-list")!;
  const chosenEdition = () => dialog.querySelector<HTMLInputElement>("input[name=edition]:checked")!.value as Edition;
  const preferred: Edition = US_LANGUAGES.test(navigator.language) ? "us" : "metric";
  dialog.querySelector<HTMLInputElement>(`input[value=${preferred}]`)!.checked = true;
  document.getElementById("chooser-back")!.addEventListener("click", () => dialog.close());

  const show = (choices: readonly Choice[]): void => {
    list.replaceChildren(
      ...choices.map((choice) =>
        entryOf(choice, () => {
          dialog.close();
          take(choice);
        }),
      ),
    );
  };
  const starter = ({ id, title, purpose, editions }: ListedStarter): Choice => ({
    title,
    purpose,
    agree: START_FROM_IT,
    workbook: () => {
      const wanted = chosenEdition();
      return files.workbook(id, editions.includes(wanted) ? wanted : editions[0]!);
    },
  });
  return () => {
    problem.textContent = "";
    if (!list.hasChildNodes()) show(OWN);
    dialog.showModal();
    files
      .list()
      .then((starters) => show([...starters.map(starter), ...OWN]))
      .catch((error: unknown) => {
        console.warn(error);
        problem.textContent = NOT_FETCHED;
      });
  };
}

function entryOf({ title, purpose }: Choice, choose: () => void): HTMLElement {
  const button = document.createElement("button");
  button.type = "button";
  const [name, what] = [document.createElement("strong"), document.createElement("span")];
  name.textContent = title;
  what.textContent = purpose;
  button.append(name, what);
  button.addEventListener("click", choose);
  const entry = document.createElement("li");
  entry.append(button);
  return entry;
}
