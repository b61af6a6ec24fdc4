/**
 * An object as Excel's library gives it: its properties can be read only after load() and sync(), its methods and
 * writes wait for the next sync, and anything that it does not declare is refused by name.
 */

/** An error as the host throws it: a code, and a text that no person should read. */
export class FakeHostError extends Error {
  constructor(readonly code: string) {
    super(`RichApi.Error ${code}: raw text of the host`);
  }
}

/** What waits for the next sync, in order; `refuse` notes a misuse of the host before it throws. */
export interface Batch {
  queue(step: () => void): void;
  recordCall(text: string): void;
  refuse(code: string, what: string): never;
  /** Refuses a member that this version of the host does not know yet. */
  check?(kind: string, member: string): void;
}

/** A value that the host knows only once it has worked through the batch. */
export interface Later<V> {
  readonly value: V;
}

export function later<V>(batch: Batch, find: () => V): Later<V> {
  let found: { readonly value: V } | null = null;
  batch.queue(() => (found = { value: find() }));
  return {
    get value() {
      if (found === null) throw new Error("this value was asked for before its turn in the batch");
      return found.value;
    },
  };
}

/** Only members that @types/office-js declares for T have a place here. */
export interface Declared<T> {
  readonly kind: string;
  readonly properties: { readonly [K in keyof T]?: () => T[K] };
  readonly writes?: { readonly [K in keyof T]?: (value: T[K]) => void };
  readonly methods?: { readonly [K in keyof T]?: T[K] };
  /** Properties that hold further objects: no load before them. */
  readonly parts?: { readonly [K in keyof T]?: () => T[K] };
  /** For objects of the ...OrNullObject kind. */
  readonly isNull?: () => boolean;
  /** For collections: what `items` holds after a load of `items/...`. */
  readonly items?: () => readonly object[];
}

const kinds = new WeakMap<object, string>();
const LOAD_NOW = Symbol("load now");

/** What kind of object of the host a value is; null for any other value. */
export function kindOf(value: unknown): string | null {
  return typeof value === "object" && value !== null ? (kinds.get(value) ?? null) : null;
}

function written(value: unknown): string {
  return kindOf(value) ?? JSON.stringify(value);
}

type Members = Record<string, ((...given: unknown[]) => unknown) | undefined>;

function namesToLoad(wanted: unknown): readonly string[] {
  const names = Array.isArray(wanted) ? wanted.map(String) : String(wanted).split(",");
  return names.map((name) => name.trim()).filter((name) => name !== "");
}

export function hostObject<T extends object>(batch: Batch, declared: Declared<T>): T {
  const { kind, isNull, items } = declared;
  const [properties, writes, methods, parts] = [
    declared.properties,
    declared.writes,
    declared.methods,
    declared.parts,
  ].map((members) => (members ?? {}) as Members) as [Members, Members, Members, Members];
  const loaded = new Map<string, unknown>();
  const made = new Map<string, unknown>();
  let known = false;

  const load = (wanted: unknown): T => {
    const names = namesToLoad(wanted);
    const ofItems = names.filter((name) => name.startsWith(ITEMS)).map((name) => name.slice(ITEMS.length));
    const own = names.filter((name) => name !== "isNullObject" && !name.startsWith(ITEMS));
    if (ofItems.length > 0 && items === undefined) batch.refuse("NotDeclared", `${kind}.items`);
    for (const name of own) {
      if (properties[name] === undefined) batch.refuse("NotDeclared", `${kind}.${name}`);
      batch.check?.(kind, name);
    }
    batch.queue(() => {
      known = true;
      if (isNull?.() === true) return;
      loadNow(own);
      if (ofItems.length > 0) loaded.set("items", loadedItems(items?.() ?? [], ofItems));
    });
    return object;
  };

  const loadNow = (names: readonly string[]): void => {
    for (const name of names) loaded.set(name, properties[name]?.());
  };

  const readProperty = (name: string): unknown => {
    if (!loaded.has(name)) batch.refuse("PropertyNotLoaded", `${kind}.${name}`);
    return loaded.get(name);
  };

  const refuseNull = (name: string): void => {
    if (known && isNull?.() === true) batch.refuse("InvalidObjectPath", `${kind}.${name} of a null object`);
  };

  const recorded = (name: string): Members[string] => {
    const method = methods[name];
    if (method === undefined) return undefined;
    return (...given) => {
      batch.check?.(kind, name);
      batch.recordCall(`${kind}.${name}(${given.map(written).join(", ")})`);
      return method(...given);
    };
  };

  /** Always the same object, as in the host: what was loaded into it stays there. */
  const partAt = (name: string): unknown => {
    const part = parts[name];
    if (part === undefined) return undefined;
    batch.check?.(kind, name);
    if (!made.has(name)) made.set(name, part());
    return made.get(name);
  };

  const object = new Proxy({} as T, {
    get(_target, key) {
      if (key === LOAD_NOW) return loadNow;
      // A promise asks every value whether it is one.
      if (typeof key === "symbol" || key === "then") return undefined;
      if (key === "load") return load;
      if (key === "isNullObject" && isNull !== undefined) {
        if (!known) batch.refuse("PropertyNotLoaded", `${kind}.isNullObject`);
        return isNull();
      }
      if (properties[key] !== undefined || (key === "items" && items !== undefined)) return readProperty(key);
      refuseNull(key);
      return recorded(key) ?? partAt(key) ?? batch.refuse("NotDeclared", `${kind}.${key}`);
    },
    set(_target, key, value) {
      const write = writes[String(key)];
      if (write === undefined) batch.refuse("NotDeclared", `writing ${kind}.${String(key)}`);
      refuseNull(String(key));
      batch.check?.(kind, String(key));
      batch.queue(() => write(value));
      return true;
    },
  });
  kinds.set(object, kind);
  return object;
}

const ITEMS = "items/";

interface Loadable {
  [LOAD_NOW](names: readonly string[]): void;
}

function loadedItems(objects: readonly object[], names: readonly string[]): readonly object[] {
  for (const each of objects) (each as Loadable)[LOAD_NOW](names);
  return objects;
}
