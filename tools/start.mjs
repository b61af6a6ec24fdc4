/** Serves the built pages on this computer: `npm start`. */
import { existsSync, realpathSync } from "node:fs";
import { createServer } from "node:http";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import open from "open";
import sirv from "sirv";

const DIST = fileURLToPath(new URL("../dist", import.meta.url));
const FIRST_PORT = 3000;
const ANY_FREE_PORT = 0;
const LAST_PORT = 65535;
const USAGE = "Use: npm start -- [--port N] [--no-open]";

class UserMistake extends Error {}

/**
 * Serves `root` on localhost. A busy port moves to the next one, told by `onBusy`.
 * @param {{ port?: number, root?: string, onBusy?: (busy: number, next: number) => void }} [options]
 * @returns {Promise<{ url: string, port: number, close: () => Promise<void> }>}
 */
export async function startServer({ port = FIRST_PORT, root = DIST, onBusy = () => {} } = {}) {
  if (!existsSync(join(root, "index.html"))) {
    throw new UserMistake("There is no dist/index.html yet: run `npm run build` first.");
  }
  const handler = staticFiles(root);
  let servers = await listen(handler, port);
  while (!servers) {
    if (port === LAST_PORT)
      throw new UserMistake(`Port ${LAST_PORT} is busy and there is none after it: give a lower --port.`);
    if (port !== ANY_FREE_PORT) onBusy(port, (port += 1));
    servers = await listen(handler, port);
  }
  const bound = servers[0].address().port;
  return { url: `http://localhost:${bound}/`, port: bound, close: () => closeAll(servers) };
}

export function staticFiles(root) {
  return sirv(root, {
    dev: true,
    etag: true,
    setHeaders(response) {
      response.setHeader("Access-Control-Allow-Origin", "*");
      response.setHeader("Cache-Control", "no-cache");
    },
    onNoMatch(request, response) {
      response.writeHead(404, { "Content-Type": "text/plain; charset=utf-8" });
      response.end(`There is no file at ${request.url}\n`);
    },
  });
}

/**
 * Listens on both addresses that "localhost" can mean, so that no other program
 * answers for us on one of them. Gives null when the port is busy on either.
 */
async function listen(handler, port) {
  const servers = [];
  for (const host of ["127.0.0.1", "::1"]) {
    try {
      servers.push(await listenOn(handler, servers[0]?.address().port ?? port, host));
    } catch (error) {
      if (host === "::1" && isWithoutIpv6(error)) continue;
      await closeAll(servers);
      if (error.code === "EADDRINUSE") return null;
      if (error.code === "EACCES")
        throw new UserMistake(`Port ${port} may not be used by this account: give a --port above 1023.`);
      throw error;
    }
  }
  return servers;
}

function isWithoutIpv6(error) {
  return error.code === "EADDRNOTAVAIL" || error.code === "EAFNOSUPPORT";
}

function listenOn(handler, port, host) {
  const server = createServer((request, response) => handler(request, response));
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, () => resolve(server));
  });
}

async function closeAll(servers) {
  const closing = servers.map((server) => new Promise((resolve) => server.close(resolve)));
  servers.forEach((server) => server.closeAllConnections());
  await Promise.all(closing);
}

function readArguments(words) {
  const { port, "no-open": stayClosed } = parseWords(words);
  return { port: port === undefined ? FIRST_PORT : readPort(port), mayOpen: !stayClosed };
}

function parseWords(words) {
  try {
    return parseArgs({ args: words, options: { port: { type: "string" }, "no-open": { type: "boolean" } } }).values;
  } catch (error) {
    if (error.code === "ERR_PARSE_ARGS_INVALID_OPTION_VALUE" && error.message.includes("--port")) throw portMistake("");
    throw new UserMistake(`Not understood: ${words.join(" ")}\n${USAGE}`);
  }
}

function readPort(text) {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : 0;
  if (port < 1 || port > LAST_PORT) throw portMistake(text);
  return port;
}

function portMistake(text) {
  const given = text === "" ? "" : `, not ${text}`;
  return new UserMistake(`--port must be a whole number from 1 to ${LAST_PORT}${given}.`);
}

function hasDesktop() {
  if (process.env.CI) return false;
  if (process.platform !== "linux") return process.platform === "darwin" || process.platform === "win32";
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}

/** The address is already printed, so a browser that will not open is no fault. */
async function openDesktopBrowser(url) {
  try {
    const opened = await open(url);
    opened.on("error", () => {});
  } catch {
    return;
  }
}

async function main() {
  const { port, mayOpen } = readArguments(process.argv.slice(2));
  const server = await startServer({
    port,
    onBusy: (busy, next) => console.log(`Port ${busy} is busy, so ${next} is tried.`),
  });
  console.log(`Canyard is open at ${server.url} (Ctrl-C ends it).`);
  for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => server.close());
  if (mayOpen && hasDesktop()) await openDesktopBrowser(server.url);
}

function isMain() {
  return Boolean(process.argv[1]) && import.meta.url === pathToFileURL(realpathSync(process.argv[1])).href;
}

if (isMain()) {
  main().catch((error) => {
    console.error(error instanceof UserMistake ? error.message : error);
    process.exitCode = 1;
  });
}
