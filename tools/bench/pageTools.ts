/** The project's own browser and server, which are modules without types. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";

export interface Served {
  readonly url: string;
  close(): Promise<void>;
}

interface BrowserModule {
  launchBrowser(): Promise<Browser>;
}

interface ServerModule {
  startServer(options: { readonly port: number; readonly root: string }): Promise<Served>;
}

function tool(name: string): Promise<unknown> {
  return import(pathToFileURL(join(__dirname, "..", name)).href);
}

export async function launchBrowser(): Promise<Browser> {
  return ((await tool("browser.mjs")) as BrowserModule).launchBrowser();
}

/** Serves a folder as `npm start` does, on any free port. */
export async function startServer(root: string): Promise<Served> {
  return ((await tool("start.mjs")) as ServerModule).startServer({ port: 0, root });
}
