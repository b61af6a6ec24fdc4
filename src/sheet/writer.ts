/** Which tab of this browser keeps the workbook: the one that holds a lock, until it is closed or another takes it. */
export interface Claim {
  /** Settles once it is known who holds it. */
  readonly settled: Promise<void>;
  isOurs(): boolean;
  /** Takes it from the tab that holds it. */
  take(): Promise<void>;
}

interface Listeners {
  /** The tab that held it was closed. */
  gained(): void;
  /** Another tab has taken it. */
  lost(): void;
}

/** A page that is loaded again may wait for its own former self to let go. */
const PATIENCE_MS = 300;

/**
 * Without locks (old browsers, plain http) every tab may write: then what lies in the storage tells of another's work
 * before it is replaced (storage.ts).
 */
export function claimWriting(
  name: string,
  { gained, lost }: Listeners,
  locks: Pick<LockManager, "request"> | undefined,
): Claim {
  if (!locks) return { settled: Promise.resolve(), isOurs: () => true, take: () => Promise.resolve() };
  let isOurs = false;
  let isSettled = false;
  let waiting: AbortController | undefined;

  const request = (options: LockOptions, then: () => void): Promise<void> =>
    new Promise((granted) => {
      let isHeld = false;
      const hold = () => {
        isHeld = true;
        isOurs = true;
        then();
        granted();
        // Held until the tab goes.
        return new Promise<never>(() => {});
      };
      locks.request(name, options, hold).catch((error: unknown) => {
        const isStolen = isHeld && error instanceof DOMException && error.name === "AbortError";
        if (isStolen) {
          isOurs = false;
          lost();
          void wait();
        } else if (!(options.signal?.aborted ?? false)) {
          // A browser that refuses the lock leaves us as one without locks.
          hold();
        }
        granted();
      });
    });

  const wait = () => {
    waiting = new AbortController();
    return request({ signal: waiting.signal }, () => isSettled && gained());
  };

  const patience = new Promise<void>((done) => setTimeout(done, PATIENCE_MS));
  const settled = Promise.race([wait(), patience]).then(() => void (isSettled = true));
  return {
    settled,
    isOurs: () => isOurs,
    take: () => {
      if (isOurs) return Promise.resolve();
      waiting?.abort();
      return request({ steal: true }, () => {});
    },
  };
}
