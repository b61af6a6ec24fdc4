/**
 * Texts that could not be read, or that gave way to another by the person's choice. Each stays under a name of its own
 * until the person throws it away.
 */
export interface SetAside {
  list(): readonly AsideText[];
  /** False when there is no room for it; it throws when the storage is closed to the page. */
  add(text: string): boolean;
  remove(key: string): void;
}

export interface AsideText {
  readonly key: string;
  readonly text: string;
}

const PLACES = 9;

export function setAside(area: () => Storage, first: string): SetAside {
  const keys = Array.from({ length: PLACES }, (_, at) => (at === 0 ? first : `${first}-${at + 1}`));
  const list = () =>
    keys.flatMap((key) => {
      const text = area().getItem(key);
      return text === null ? [] : [{ key, text }];
    });
  return {
    list,
    add(text) {
      const there = list();
      if (there.some((each) => each.text === text)) return true;
      const free = keys.find((key) => !there.some((each) => each.key === key));
      if (free === undefined) return false;
      try {
        area().setItem(free, text);
      } catch {
        return false;
      }
      // A copy that came out different is none.
      if (area().getItem(free) === text) return true;
      area().removeItem(free);
      return false;
    },
    remove: (key) => area().removeItem(key),
  };
}
