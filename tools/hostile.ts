/**
 * `npm run hostile -- --calls N --seed S --only NAME`: hostile calls over both roads; writes docs/hostile.md.
 * `--repeat INDEX` makes one call again and prints what came of it.
 */
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { openRoads, runCalls } from "./hostile/batch";
import { hostileCallText } from "./hostile/call";
import { runCrew } from "./hostile/crew";
import { batchSize, callsOfBatch, type Plan } from "./hostile/generate";
import { hostilePage } from "./hostile/report";

const FUNCTIONS = join(__dirname, "../dist/functions.js");
const PAGE = join(__dirname, "../docs/hostile.md");
const DEFAULTS = { calls: "1000000", seed: "20260517", workers: "2" };
const MINUTE = 60_000;
const BATCHES_TO_A_LINE = 100;

const { values } = parseArgs({
  options: {
    calls: { type: "string", default: DEFAULTS.calls },
    seed: { type: "string", default: DEFAULTS.seed },
    workers: { type: "string", default: DEFAULTS.workers },
    only: { type: "string" },
    repeat: { type: "string" },
    /** Where the report goes instead of docs/hostile.md. */
    to: { type: "string", default: PAGE },
  },
});

const plan: Plan = { seed: Number(values.seed), ...(values.only !== undefined && { only: values.only }) };

async function repeat(index: number): Promise<void> {
  const batch = Math.floor(index / batchSize(plan));
  const calls = callsOfBatch(plan, batch).filter((call) => call.index === index);
  const roads = openRoads(FUNCTIONS);
  const [call] = calls;
  if (call === undefined) throw new Error(`there is no call ${index}`);
  console.log(`${hostileCallText(call)}\n${call.kinds.join("; ")}`);
  console.log("official runtime:", JSON.stringify((await roads.official.run([call]))[0])?.slice(0, 1000));
  console.log("browser sheet:", JSON.stringify(roads.sheet.run(call, "worked out as an expression"))?.slice(0, 1000));
  const { faults } = await runCalls(roads, plan, batch, calls);
  roads.official.close();
  for (const { road, fault } of faults) console.log(`FAULT, ${road}: ${fault}`);
  if (faults.length === 0) console.log("no fault");
}

async function runAll(): Promise<void> {
  const batches = Math.ceil(Number(values.calls) / batchSize(plan));
  const workers = Number(values.workers);
  const start = performance.now();
  let printed = 0;
  const result = await runCrew({
    plan,
    functionsFile: FUNCTIONS,
    batches,
    workers,
    onBatch: (done, { calls, faultCount, faults }) => {
      for (const { index, road, fault } of faults.slice(printed))
        console.log(`FAULT, call ${index}, ${road}: ${fault}`);
      printed = faults.length;
      if (done % BATCHES_TO_A_LINE === 0 || done === batches) console.log(`${calls} calls, ${faultCount} faults`);
    },
  });
  const given = [
    ...(values.calls === DEFAULTS.calls ? [] : [`--calls ${values.calls}`]),
    ...(values.seed === DEFAULTS.seed ? [] : [`--seed ${values.seed}`]),
    ...(values.only === undefined ? [] : [`--only ${values.only}`]),
  ].join(" ");
  const page = hostilePage({
    ...result,
    command: `npm run hostile${given === "" ? "" : ` -- ${given}`}`,
    seed: plan.seed,
    only: plan.only,
    date: new Date().toISOString().slice(0, 10),
    minutes: (performance.now() - start) / MINUTE,
    workers,
  });
  writeFileSync(values.to, page);
  console.log(`wrote ${values.to}`);
  if (result.tally.faultCount > 0) process.exitCode = 1;
}

void (values.repeat === undefined ? runAll() : repeat(Number(values.repeat)));
