import { claimWriting } from "../../src/sheet/writer";

/** The browser's locks, as far as they go here: one holder, a queue, and stealing. */
class FakeLocks {
  private holder: { release(reason: unknown): void } | undefined;
  private queue: (() => void)[] = [];

  request = ((_name: string, options: LockOptions, hold: () => Promise<never>) =>
    new Promise((_done, failed) => {
      const grant = () => {
        this.holder = { release: failed };
        void hold();
      };
      if (options.steal) {
        this.holder?.release(new DOMException("stolen", "AbortError"));
        grant();
      } else if (this.holder) {
        this.queue.push(grant);
        options.signal?.addEventListener("abort", () => {
          this.queue = this.queue.filter((each) => each !== grant);
          failed(new DOMException("given up", "AbortError"));
        });
      } else grant();
    })) as unknown as LockManager["request"];

  /** The tab that holds it is closed. */
  close(): void {
    this.holder = undefined;
    this.queue.shift()?.();
  }

  get waiting(): number {
    return this.queue.length;
  }
}

function openTab(locks: Pick<LockManager, "request"> | undefined) {
  const heard: string[] = [];
  const claim = claimWriting("w", { gained: () => heard.push("gained"), lost: () => heard.push("lost") }, locks);
  return { claim, heard };
}

const settled = () => new Promise((done) => setTimeout(done));

test("the first tab has it, the second waits, and gets it when the first is closed", async () => {
  const locks = new FakeLocks();
  const [first, second] = [openTab(locks), openTab(locks)];
  await Promise.all([first.claim.settled, second.claim.settled]);
  expect([first.claim.isOurs(), second.claim.isOurs()]).toEqual([true, false]);
  locks.close();
  expect([second.claim.isOurs(), second.heard, first.heard]).toEqual([true, ["gained"], []]);
});

test("it can be taken, and taken back, by whoever asks; a tab waits once only", async () => {
  const locks = new FakeLocks();
  const [first, second] = [openTab(locks), openTab(locks)];
  await Promise.all([first.claim.settled, second.claim.settled]);
  for (let turn = 1; turn <= 3; turn += 1) {
    await second.claim.take();
    await settled();
    expect([first.claim.isOurs(), second.claim.isOurs(), locks.waiting]).toEqual([false, true, 1]);
    await first.claim.take();
    await settled();
    expect([first.claim.isOurs(), second.claim.isOurs(), locks.waiting]).toEqual([true, false, 1]);
    expect([first.heard.length, second.heard.length]).toEqual([turn, turn]);
  }
  expect(new Set([...first.heard, ...second.heard])).toEqual(new Set(["lost"]));
});

test("a page loaded again waits for its former self, and is not told of it", async () => {
  const locks = new FakeLocks();
  const former = openTab(locks);
  await former.claim.settled;
  const next = openTab(locks);
  setTimeout(() => locks.close(), 50);
  await next.claim.settled;
  expect([next.claim.isOurs(), next.heard]).toEqual([true, []]);
});

test.each([
  ["without locks", undefined],
  ["that refuses them", { request: () => Promise.reject(new DOMException("no", "SecurityError")) }],
])("in a browser %s every tab may write", async (_, locks) => {
  const { claim } = openTab(locks as Pick<LockManager, "request"> | undefined);
  await claim.settled;
  await settled();
  expect(claim.isOurs()).toBe(true);
  await claim.take();
});
