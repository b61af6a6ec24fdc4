/** Serves the built folder over https with a certificate made here, and asks for files as Excel does. */
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { get } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { generateCertificates } from "office-addin-dev-certs/lib/generate.js";
import { serveSecurely } from "../../tools/startExcel.mjs";

const folder = mkdtempSync(join(tmpdir(), "canyard-certificate-"));
const place = (name) => join(folder, name);
const { log } = console;
console.log = () => {};
await generateCertificates(place("ca.crt"), place("localhost.crt"), place("localhost.key"), 1, ["localhost"]);
console.log = log;
const server = await serveSecurely({
  port: 0,
  cert: readFileSync(place("localhost.crt")),
  key: readFileSync(place("localhost.key")),
});

const asked = (name, ca) =>
  new Promise((resolve) => {
    const request = get(server.url + name, ca ? { ca } : {}, (response) => {
      response.resume();
      response.on("end", () => resolve({ name, status: response.statusCode, headers: response.headers }));
    });
    request.on("error", (error) => resolve({ name, refused: error.code }));
  });

const ca = readFileSync(place("ca.crt"));
const answers = [await asked("taskpane.html", ca), await asked("functions.json", ca), await asked("nothing.html", ca)];
const untrusted = await asked("taskpane.html");
await server.close();
rmSync(folder, { recursive: true, force: true });
process.stdout.write(JSON.stringify({ answers, untrusted }));
