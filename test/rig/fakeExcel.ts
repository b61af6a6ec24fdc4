/**
 * A fake of Excel for the pane's adapter. Its members are typed by @types/office-js, and it is as strict as the host:
 * see hostObject.ts. It refuses while a cell is edited, on a protected sheet and for a wrong workbook, keeps undo as the
 * host does, and records every call, every write and every misuse.
 */
import { minorOf, sinceVersion } from "./apiSets";
import {
  areaOf,
  NAMED_ITEM_TYPE,
  RANGE_VALUE_TYPE,
  resolved,
  workbookObject,
  type SelectionHandler,
  type World,
} from "./fakeExcelObjects";
import { FakeWorkbook, type Area, type Change, type Contents, type FakeSheet, type Write } from "./fakeWorkbook";
import { FakeHostError } from "./hostObject";

type UndoSupport = "groups" | "refuses" | "does not know it";

export class FakeExcel {
  readonly workbook = new FakeWorkbook();
  /** Every call, as `Worksheet.getRange("A1")`. */
  readonly calls: string[] = [];
  /** What a person could undo, the oldest first. */
  readonly undo: (readonly Change[])[] = [];
  /** Members that the host does not declare, and reads before load and sync. */
  readonly misuses: string[] = [];
  readonly handlers = new Set<SelectionHandler>();
  undoSupport: UndoSupport = "groups";
  /** The version of its library; a later member is refused. */
  version = "1.20";
  /** Settings that a host refuses to make part of a group, by the beginning of their path. */
  readonly withoutUndo: string[] = [];
  /** Settings that a host refuses altogether, by the beginning of their path, with the code that it gives. */
  readonly refused = new Map<string, string>();
  /** Error codes with which the next syncs fail, one each; "" lets one through. */
  readonly failures: string[] = [];
  private editing: { readonly ended: Promise<void>; readonly end: () => void } | null = null;

  get writes(): readonly Write[] {
    return this.undo.flat().filter((change): change is Write => "content" in change);
  }

  /** What a page has as `Excel`. */
  get global(): unknown {
    return { run: this.run, RangeValueType: RANGE_VALUE_TYPE, NamedItemType: NAMED_ITEM_TYPE };
  }

  /** What a page has as `Office`. */
  get office(): unknown {
    const isSetSupported = (name: string, version: string): boolean =>
      name === "ExcelApi" && minorOf(version) <= minorOf(this.version);
    return { context: { requirements: { isSetSupported } } };
  }

  startEditing(): void {
    let end = (): void => undefined;
    const ended = new Promise<void>((resolve) => (end = resolve));
    this.editing = { ended, end };
  }

  endEditing(): void {
    this.editing?.end();
    this.editing = null;
  }

  /** A person selects a cell. */
  async select(sheet: string, address: string): Promise<void> {
    this.workbook.select(sheet, address);
    const event = { type: "WorkbookSelectionChanged" } as unknown as Excel.SelectionChangedEventArgs;
    await Promise.all([...this.handlers].map((handler) => handler(event)));
  }

  /** `Excel.run` with options, with the context of an object made before, or with neither. */
  readonly run = async <T>(...given: readonly unknown[]): Promise<T> => {
    const work = given[given.length - 1] as (context: Excel.RequestContext) => Promise<T>;
    const first = given.length > 1 ? given[0] : {};
    if (first instanceof FakeContext) return work(first as unknown as Excel.RequestContext);
    const context = new FakeContext(this, first as Excel.RunOptions);
    this.calls.push(`Excel.run(${JSON.stringify(first)})`);
    try {
      return await work(context as unknown as Excel.RequestContext);
    } finally {
      context.close();
    }
  };

  /** Lets a batch through; refuses or holds it back while a cell is being edited. */
  async admit({ delayForCellEdit = false }: Excel.RunOptions): Promise<void> {
    if (this.editing === null) return;
    if (!delayForCellEdit) throw new FakeHostError("InvalidOperationInCellEditMode");
    await this.editing.ended;
  }
}

/** One run: its own queue, and its own place in the undo. */
class FakeContext implements World, Pick<Excel.RequestContext, "workbook" | "sync"> {
  readonly cells: FakeWorkbook;
  readonly handlers: Set<SelectionHandler>;
  counted = 0;
  private steps: (() => void)[] = [];
  private written: Change[] = [];
  private readonly merged: Change[] = [];

  constructor(
    private readonly excel: FakeExcel,
    private readonly options: Excel.RunOptions,
  ) {
    this.cells = excel.workbook;
    this.handlers = excel.handlers;
  }

  get workbook(): Excel.Workbook {
    return workbookObject(this);
  }

  queue(step: () => void): void {
    this.steps.push(step);
  }

  recordCall(text: string): void {
    this.excel.calls.push(text);
  }

  refuse(code: string, what: string): never {
    this.excel.misuses.push(`${code}: ${what}`);
    throw new FakeHostError(code);
  }

  check(kind: string, member: string): void {
    const since = sinceVersion(kind, member);
    if (since > minorOf(this.excel.version)) this.refuse("ApiNotFound", `${kind}.${member} is of ExcelApi 1.${since}`);
  }

  private get isGroup(): boolean {
    return this.options.mergeUndoGroup === true;
  }

  admit(what: string): void {
    const isWithout = this.excel.withoutUndo.some((path) => what.startsWith(path));
    if (this.isGroup && (isWithout || this.excel.undoSupport === "refuses")) {
      throw new FakeHostError("UndoNotSupported");
    }
    for (const [path, code] of this.excel.refused) if (what.startsWith(path)) throw new FakeHostError(code);
  }

  write(area: Area, contents: Contents): void {
    this.admit("formulas");
    this.written.push(...this.cells.write(area, contents));
  }

  note(sheet: FakeSheet | null, at: string, what: string, value: unknown): void {
    this.admit(what);
    this.written.push({ sheet: sheet?.name ?? "", at, what, value });
  }

  set(sheet: FakeSheet, at: string, what: string, value: unknown): void {
    const setting = { sheet: sheet.name, at, what, value: resolved(value) };
    this.note(sheet, at, what, setting.value);
    sheet.settings.push(setting);
  }

  changeForGood(member: string): void {
    if (this.isGroup) throw new FakeHostError("UndoNotSupported");
    this.recordCall(`${member} empties the list of steps to undo`);
    this.excel.undo.length = 0;
    this.written = [];
  }

  readonly areaOf = areaOf;
  readonly resolved = resolved;

  readonly sync = async <T>(passed?: T): Promise<T> => {
    await this.excel.admit(this.options);
    const steps = this.steps;
    this.steps = [];
    this.recordCall("sync()");
    const failure = this.excel.failures.shift() ?? "";
    if (failure !== "") throw new FakeHostError(failure);
    try {
      for (const step of steps) step();
    } finally {
      this.keepForUndo();
    }
    return passed as T;
  };

  /** Each sync with writes is a step of its own, unless the run is merged into one. */
  private keepForUndo(): void {
    const written = this.written;
    this.written = [];
    if (written.length === 0) return;
    if (this.options.mergeUndoGroup === true && this.excel.undoSupport === "groups") this.merged.push(...written);
    else this.excel.undo.push(written);
  }

  close(): void {
    if (this.merged.length > 0) this.excel.undo.push(this.merged);
  }
}
