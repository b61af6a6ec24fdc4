/** What a page has as global names, put there for a test and taken away after it. */
export function setGlobal(name: string, value: unknown): void {
  if (value === undefined) Reflect.deleteProperty(globalThis, name);
  else Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
}
