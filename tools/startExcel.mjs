/**
 * `npm run start:excel`: builds for this computer and serves over https on localhost, for Excel on the same computer.
 * The certificate is made and, where the system lets it, trusted by the host vendor's own library.
 */
import { existsSync, readFileSync } from "node:fs";
import { createServer } from "node:https";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import certificates from "office-addin-dev-certs";
import certificatePlaces from "office-addin-dev-certs/lib/defaults.js";
import { build } from "./build.mjs";
import { staticFiles } from "./start.mjs";

const DIST = fileURLToPath(new URL("../dist", import.meta.url));
const PORT = 3000;
export const LOCAL_URL = `https://localhost:${PORT}/`;

/** A trusted certificate, or one that this computer still has to be told to trust; the first run asks for leave. */
export async function localCertificate() {
  try {
    return { ...(await certificates.getHttpsServerOptions()), isTrusted: true };
  } catch (reason) {
    const { caCertificatePath, localhostCertificatePath, localhostKeyPath } = certificatePlaces;
    if (![caCertificatePath, localhostCertificatePath, localhostKeyPath].every((file) => existsSync(file)))
      throw reason;
    return {
      ca: readFileSync(caCertificatePath),
      cert: readFileSync(localhostCertificatePath),
      key: readFileSync(localhostKeyPath),
      isTrusted: false,
      authority: caCertificatePath,
    };
  }
}

/** Serves a built folder over https on localhost. */
export function serveSecurely({ root = DIST, port = PORT, cert, key }) {
  const handler = staticFiles(root);
  const server = createServer({ cert, key }, (request, response) => handler(request, response));
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "localhost", () => {
      const { port: bound } = server.address();
      const close = () => new Promise((closed) => server.close(closed).closeAllConnections());
      resolve({ url: `https://localhost:${bound}/`, close });
    });
  });
}

async function main() {
  const { values } = parseArgs({ options: { "no-build": { type: "boolean" } } });
  if (!values["no-build"]) await build({ baseUrl: LOCAL_URL });
  const certificate = await localCertificate();
  const server = await serveSecurely(certificate);
  console.log(`Canyard is served at ${server.url} (Ctrl-C ends it).`);
  console.log(`The manifest for Excel: ${join(DIST, "manifest.xml")}`);
  if (!certificate.isTrusted) {
    console.log(
      "This computer does not trust its certificate yet, so Excel will not load it. Tell the system to trust:",
    );
    console.log(`  ${certificate.authority}`);
  }
  console.log("What to click in Excel on the web, on Windows and on a Mac: docs/install.md");
  for (const signal of ["SIGINT", "SIGTERM"]) process.once(signal, () => server.close());
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  main().catch((error) => {
    const isBusy = error.code === "EADDRINUSE";
    console.error(
      isBusy ? `Port ${PORT} is busy, and the manifest names it: end the other program first.` : error.message,
    );
    process.exitCode = 1;
  });
}
