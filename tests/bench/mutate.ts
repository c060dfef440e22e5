import { type ChildProcess, fork } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { type Mutant, mutantsOf, sampleOf } from "./mutation/mutants.ts";

// How many small faults in the physics the tests notice: each mutant is one fault, and it is killed where a test fails of it.
//   npx tsx tests/bench/mutate.ts [sim/step sim/vehicle ...] [--sample 200] [--seed 1] [--file sim/step/step.ts]
// A figure to read, with the survivors to look at: never a gate.
const root = join(import.meta.dirname, "../..");
const ROOMS = ["sim/step", "sim/vehicle", "sim/battery", "sim/math", "sim/motor", "sim/plan"];
/** Tried after a room's own tests, the quick ones first. */
const WIDER: Readonly<Record<string, readonly string[]>> = {
  "sim/step": [
    "tests/sim/plan/standingStart.test.ts",
    "tests/reference/comparisons.test.ts",
    "tests/invariants/ledger.test.ts",
    "tests/invariants/limits.test.ts",
  ],
  "sim/vehicle": ["tests/sim/step", "tests/reference/comparisons.test.ts"],
  "sim/battery": ["tests/sim/step", "tests/sim/plan/packFigures.test.ts", "tests/reference/comparisons.test.ts"],
  "sim/math": ["tests/sim/step", "tests/sim/motor"],
  "sim/motor": ["tests/sim/step", "tests/sim/plan/readMotorMap.test.ts", "tests/reference/comparisons.test.ts"],
  "sim/plan": ["tests/sim/cli/drive.test.ts"],
};
/** A mutant that keeps its tests busy for longer runs for ever: killed. */
const PATIENCE_ms = 120_000;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { sample: { type: "string" }, seed: { type: "string", default: "1" }, file: { type: "string" } },
});
const rooms = values.file
  ? [values.file.split("/").slice(0, 2).join("/")]
  : positionals.length > 0
    ? positionals
    : ROOMS;
let tally = { killed: 0, all: 0 };
let child: ChildProcess | undefined;
for (const room of rooms) await mutateRoom(room);
child?.kill("SIGKILL");
console.log(`all: ${report(tally)}`);

async function mutateRoom(room: string): Promise<void> {
  const files = sourcesOf(room).filter((file) => values.file === undefined || file === values.file);
  const all = files.flatMap((file) => mutantsOf(file, readFileSync(join(root, file), "utf8")));
  const mutants = values.sample ? sampleOf(all, Number(values.sample), Number(values.seed)) : all;
  const tests = [testsOf(`tests/${room}`), (WIDER[room] ?? []).flatMap(testsOf)];
  for (const group of tests) {
    if (await isKilled(undefined, group)) throw new Error(`tests of ${room} fail without a mutant`);
  }
  let killed = 0;
  for (const mutant of mutants) {
    const own = ownFirst(tests[0], mutant.file);
    const isDead = (await isKilled(mutant, own)) || (await isKilled(mutant, tests[1]));
    if (isDead) killed++;
    else console.log(`  survived ${mutant.file}:${mutant.line} ${mutant.change}`);
  }
  tally = { killed: tally.killed + killed, all: tally.all + mutants.length };
  console.log(`${room}: ${report({ killed, all: mutants.length })} (of ${all.length} mutants)`);
}

/** Whether tests fail of a mutant. Starts a worker where none is there, and another after one that had to be stopped. */
async function isKilled(mutant: Mutant | undefined, tests: readonly string[]): Promise<boolean> {
  child ??= await startChild();
  const worker = child;
  return new Promise<boolean>((resolve, reject) => {
    const patience = setTimeout(() => {
      worker.removeAllListeners();
      worker.kill("SIGKILL");
      child = undefined;
      resolve(true);
    }, PATIENCE_ms);
    worker.removeAllListeners();
    worker.once("message", (message: { isKilled: boolean }) => {
      clearTimeout(patience);
      resolve(message.isKilled);
    });
    worker.once("exit", () => {
      clearTimeout(patience);
      child = undefined;
      if (mutant) resolve(true);
      else reject(new Error("the tests' worker ended"));
    });
    worker.send({ mutant, tests });
  });
}

function startChild(): Promise<ChildProcess> {
  const worker = fork(join(import.meta.dirname, "mutation/child.ts"), {
    execArgv: ["--import", "tsx"],
    stdio: ["ignore", "ignore", "inherit", "ipc"],
  });
  return new Promise((resolve) => worker.once("message", () => resolve(worker)));
}

function sourcesOf(room: string): string[] {
  return readdirSync(join(root, room))
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `${room}/${name}`);
}

function testsOf(path: string): string[] {
  if (path.endsWith(".ts")) return [path];
  if (!existsSync(join(root, path))) return [];
  return readdirSync(join(root, path))
    .filter((name) => name.endsWith(".test.ts"))
    .map((name) => `${path}/${name}`);
}

/** The file's own test before the others, since it is the likeliest to fail. */
function ownFirst(tests: readonly string[], file: string): readonly string[] {
  const own = `tests/${file.replace(/\.ts$/, ".test.ts")}`;
  return tests.includes(own) ? [own, ...tests.filter((test) => test !== own)] : tests;
}

function report({ killed, all }: { killed: number; all: number }): string {
  return `${killed} of ${all} killed, ${((100 * killed) / Math.max(1, all)).toFixed(1)} %`;
}
