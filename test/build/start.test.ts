import { spawn, type ChildProcess } from "node:child_process";
import { createServer, type Server } from "node:net";
import { join } from "node:path";

const ROOT = join(__dirname, "../..");
const FIRST = 41_730;

let running: ChildProcess | null = null;
let busy: Server | null = null;
afterEach(() => {
  running?.kill("SIGINT");
  busy?.close();
  running = null;
  busy = null;
});

/** Starts the server as `npm start` does and gives its lines as they come. */
function start(...words: string[]): {
  lines: string[];
  said: (part: string) => Promise<void>;
  ended: Promise<number | null>;
} {
  const child = spawn(process.execPath, [join(ROOT, "tools/start.mjs"), "--no-open", ...words], { cwd: ROOT });
  running = child;
  const lines: string[] = [];
  const waiting = new Set<() => void>();
  for (const stream of [child.stdout, child.stderr]) {
    stream.on("data", (data: Buffer) => {
      lines.push(...data.toString().split("\n").filter(Boolean));
      for (const look of waiting) look();
    });
  }
  const said = (part: string): Promise<void> =>
    new Promise((resolve) => {
      const look = (): void => {
        if (!lines.some((line) => line.includes(part))) return;
        waiting.delete(look);
        resolve();
      };
      waiting.add(look);
      look();
    });
  return { lines, said, ended: new Promise((resolve) => child.once("exit", resolve)) };
}

function occupy(port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    busy = createServer().once("error", reject).listen(port, "127.0.0.1", resolve);
  });
}

describe("npm start", () => {
  test("serves the sheet and prints where", async () => {
    const { said } = start("--port", String(FIRST));
    await said(`Canyard is open at http://localhost:${FIRST}/`);
    const page = await (await fetch(`http://localhost:${FIRST}/`)).text();
    expect(page).toContain("<title>Canyard</title>");
    expect((await fetch(`http://localhost:${FIRST}/functions.json`)).headers.get("content-type")).toContain("json");
  });

  test("moves to the next port when one is busy, and says so", async () => {
    await occupy(FIRST + 10);
    const { said } = start("--port", String(FIRST + 10));
    await said(`Port ${FIRST + 10} is busy, so ${FIRST + 11} is tried.`);
    await said(`Canyard is open at http://localhost:${FIRST + 11}/`);
  });

  test("answers a bad port with a sentence", async () => {
    const { lines, ended } = start("--port", "many");
    expect(await ended).toBe(1);
    expect(lines).toEqual(["--port must be a whole number from 1 to 65535, not many."]);
  });
});
