/** A browser's storage with a limit, which can fail or stop as a test asks. */
export class MemoryStorage implements Storage {
  private readonly kept: Map<string, string>;
  /** Counted in characters of keys and texts. */
  room = Infinity;
  /** After so many writes and removals the page is gone. */
  stepsLeft = Infinity;
  /** What becomes of a text on its way in. */
  damage: (text: string) => string = (text) => text;

  constructor(content: Readonly<Record<string, string>> = {}) {
    this.kept = new Map(Object.entries(content));
  }

  get length(): number {
    return this.kept.size;
  }

  get size(): number {
    return [...this.kept].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
  }

  key(at: number): string | null {
    return [...this.kept.keys()][at] ?? null;
  }

  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }

  setItem(key: string, text: string): void {
    this.step();
    const former = this.kept.get(key);
    const grown = text.length + key.length - (former === undefined ? 0 : former.length + key.length);
    if (grown > 0 && this.size + grown > this.room) throw new DOMException("no room", "QuotaExceededError");
    this.kept.set(key, this.damage(text));
  }

  removeItem(key: string): void {
    this.step();
    this.kept.delete(key);
  }

  clear(): void {
    this.kept.clear();
  }

  texts(): readonly string[] {
    return [...this.kept.values()];
  }

  copy(): MemoryStorage {
    return new MemoryStorage(Object.fromEntries(this.kept));
  }

  private step(): void {
    if (this.stepsLeft <= 0) throw new PageGone("the page is gone");
    this.stepsLeft -= 1;
  }
}

/** Not an answer of the storage: nothing after it happens. */
export class PageGone extends Error {}
