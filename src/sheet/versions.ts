/** Versions of the engine's own data, which go "19.3.2". */
import type { Engine, EngineData, EngineModel } from "./engine";
import { NewerFile } from "./workbookFile";
import { asObject } from "./workbookShape";

function versionOf(engine: Engine): string {
  return String(engine.load({}, true).version);
}

/** Early versions were whole numbers, all of them older than any of these. */
function isLater(version: unknown, than: string): boolean {
  if (typeof version !== "string") return false;
  const [parts, others] = [version.split(".").map(Number), than.split(".").map(Number)];
  const at = parts.findIndex((part, index) => part !== (others[index] ?? 0));
  return at >= 0 && parts[at]! > (others[at] ?? 0);
}

/** Throws NewerFile for data that this engine came too early for; it would call them damaged. */
export function refuseNewer(engine: Engine, { version }: EngineData): void {
  if (isLater(version, versionOf(engine))) throw new NewerFile();
}

interface Remembered {
  readonly name: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** Of data of an older version: tells of a model made from them what is no longer as it was. Ask before opening, which alters the data. */
export function changesByOpening(engine: Engine, data: EngineData): (model: EngineModel) => readonly string[] {
  if (data.version === undefined || data.version === versionOf(engine)) return () => [];
  const before: readonly Remembered[] = data.sheets.map(({ name, cells }) => ({ name, cells: textsOf(cells) }));
  return (model) => {
    const ids = model.getters.getSheetIds();
    return before.flatMap((sheet, at) => changesOf(engine, model, sheet, ids[at]));
  };
}

function textsOf(cells: unknown): Readonly<Record<string, string>> {
  const single = Object.entries(asObject(cells) ?? {}).filter(([address]) => /^[A-Z]+\d+$/.test(address));
  return Object.fromEntries(
    single.flatMap(([address, cell]) => {
      const { formula, content } = asObject(cell) ?? { content: cell };
      const text = formula ?? content;
      return typeof text === "string" ? [[address, text]] : [];
    }),
  );
}

function changesOf(
  engine: Engine,
  model: EngineModel,
  { name, cells }: Remembered,
  sheetId: string | undefined,
): readonly string[] {
  if (sheetId === undefined) return [`The sheet “${name}” is not there.`];
  const newName = model.getters.getSheetName(sheetId);
  const changed = Object.entries(cells).filter(([address, text]) => {
    const position = { sheetId, ...engine.helpers.toCartesian(address) };
    return plain(model.getters.getCellText(position, { showFormula: true })) !== plain(text);
  });
  return [
    ...(newName === name ? [] : [`The sheet “${name}” is now called “${newName}”.`]),
    ...(changed.length === 0
      ? []
      : [`Written in another way: ${listed(changed.map(([address]) => address))} of ${newName}.`]),
  ];
}

const MOST_NAMED = 8;

function listed(addresses: readonly string[]): string {
  const rest = addresses.length - MOST_NAMED;
  return addresses.slice(0, MOST_NAMED).join(", ") + (rest > 0 ? ` and ${rest} more cells` : "");
}

/** Blanks, capitals and the quotes around the name of a sheet make no difference. */
function plain(text: string): string {
  return text.replace(/[\s']/g, "").toUpperCase();
}
