import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { importsOf } from "./mutation/modules.ts";
import { type Mutant, mutantsOf, mutated, shuffled } from "./mutation/mutants.ts";
import { createTrial } from "./mutation/trial.ts";
import { createTypeCheck } from "./mutation/typeCorrect.ts";

// How many small faults in the physics the tests notice: each mutant is one fault, and it is killed where a test fails of it.
//   npx tsx tests/bench/mutate.ts [sim/step sim/vehicle ...] [--sample 60] [--seed 1] [--file sim/step/step.ts] [--killed]
// A figure to read, with the survivors to look at: never a gate. `--sample` is so many of each room, spread over its lines: every line
// has one mutant before any has two.
//
// Counted is every mutant of `mutants.ts` that passes the type check. Not counted, since no test could or need tell them:
//   - what fails the type check (a condition held to one side where the types need it, minus between texts);
//   - the wording of texts, and what stands in a `throw`: those are alarms for our own faults;
//   - numbers below 1e-6, which guard a division or end an iteration;
//   - the first numbers of memory that is filled before it is read (`create...` functions named in `mutants.ts`).
// `<` becomes `>=` and not `<=`, since measured quantities are never equal. A mutant that never ends is killed.
//
// All mutants are compiled in, each behind a switch, and run in this process: a test file is loaded afresh for a mutant, and only the
// tests run that passed the mutant's place in a run without mutants, the file's own and the quickest first, until one fails or they have
// taken four seconds: the figure is a lower bound.
const root = join(import.meta.dirname, "../..");
const ROOMS = ["sim/step", "sim/vehicle", "sim/motor", "sim/battery", "sim/plan"];
const TESTS = ["tests/sim", "tests/invariants", "tests/reference"];
/** Logs and the command line have little to do with these rooms, a run that is the same again says nothing, whole stories take long. */
const FAR = /^tests\/(sim\/(cli|route)|reference\/route|invariants\/sameAgain|sim\/plan\/answer\/demoStories)/;

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: "string" },
    seed: { type: "string", default: "1" },
    file: { type: "string" },
    killed: { type: "boolean", default: false },
  },
});
const rooms = positionals.length > 0 ? positionals : ROOMS;
const texts = new Map<string, string>();
const isTypeCorrect = createTypeCheck(root, rooms.flatMap(filesBelow), sourceOf);
const chosen = rooms.map((room) => ({ room, ...choose(room) }));
const mutants = chosen.flatMap((one) => one.mutants);
const trial = await createTrial(root, mutants, sourceOf);
for (const test of nearTests()) await trial.addTests(test);

const tally = { killed: 0, all: 0 };
for (const { room, mutants: own, ofAll, refused } of chosen) {
  let killed = 0;
  for (const mutant of own) {
    const by = await trial.killerOf(mutant);
    if (by !== undefined) killed++;
    if (by === undefined)
      console.log(`  survived ${mutant.file}:${mutant.line} ${mutant.change}${trial.reachOf(mutant)}`);
    else if (values.killed) console.log(`  killed ${mutant.file}:${mutant.line} ${mutant.change} by ${by}`);
  }
  tally.killed += killed;
  tally.all += own.length;
  console.log(
    `${room}: ${report({ killed, all: own.length })} (of ${ofAll} mutants; ${refused} drawn not type-correct)`,
  );
}
console.log(`all: ${report(tally)}, seed ${values.seed}`);

/** The mutants to try of a room: all of them, or as many as asked for, those that fail the type check left out. */
function choose(room: string): { mutants: Mutant[]; ofAll: number; refused: number } {
  const files = filesBelow(room).filter((file) => values.file === undefined || file === values.file);
  const all = files.flatMap((file) => mutantsOf(file, sourceOf(file)));
  const wanted = values.sample === undefined ? all.length : Number(values.sample);
  const mutants: Mutant[] = [];
  let refused = 0;
  for (const mutant of shuffled(all, Number(values.seed))) {
    if (mutants.length >= wanted) break;
    if (isTypeCorrect(mutant.file, mutated(sourceOf(mutant.file), mutant))) mutants.push(mutant);
    else refused++;
  }
  return { mutants, ofAll: all.length, refused };
}

/** Test files that import a mutated file, by however many others. */
function nearTests(): string[] {
  const mutatedFiles = new Set(mutants.map(({ file }) => file));
  return TESTS.flatMap(filesBelow)
    .filter((file) => file.endsWith(".test.ts") && !FAR.test(file))
    .filter((test) => doesReach(test, mutatedFiles, new Set()));
}

function doesReach(from: string, files: ReadonlySet<string>, seen: Set<string>): boolean {
  if (files.has(from)) return true;
  if (seen.has(from) || !from.endsWith(".ts")) return false;
  seen.add(from);
  return importsOf(from, sourceOf(from)).some((file) => doesReach(file, files, seen));
}

function filesBelow(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => name.endsWith(".ts"))
    .map((name) => `${folder}/${name}`)
    .toSorted();
}

function sourceOf(file: string): string {
  const text = texts.get(file) ?? readFileSync(join(root, file), "utf8");
  texts.set(file, text);
  return text;
}

function report({ killed, all }: { killed: number; all: number }): string {
  return `${killed} of ${all} killed, ${((100 * killed) / Math.max(1, all)).toFixed(1)} %`;
}
