/** What Excel on this computer loads: over https, with a certificate for localhost. */
import { execFileSync } from "node:child_process";
import { join } from "node:path";

interface Answer {
  readonly name: string;
  readonly status?: number;
  readonly headers?: Readonly<Record<string, string>>;
  readonly refused?: string;
}

const RIG = join(__dirname, "../rig/serveSecurely.mjs");
const { answers, untrusted } = JSON.parse(execFileSync(process.execPath, [RIG], { encoding: "utf8" })) as {
  readonly answers: readonly Answer[];
  readonly untrusted: Answer;
};

test("pages and metadata are served to who trusts the certificate", () => {
  expect(answers.map(({ name, status }) => [name, status])).toEqual([
    ["taskpane.html", 200],
    ["functions.json", 200],
    ["nothing.html", 404],
  ]);
});

test("the host may read the metadata from its own pages", () => {
  expect(answers[1]?.headers?.["access-control-allow-origin"]).toBe("*");
});

test("who does not trust the certificate gets nothing", () => {
  expect(untrusted.status).toBeUndefined();
  expect(untrusted.refused).toMatch(/CERT|SELF_SIGNED|UNABLE_TO_VERIFY/);
});
