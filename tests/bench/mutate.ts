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
//
// The last line is the estimate for all rooms together: a sample counts for as many mutants as its room has. Survivors of a seed that
// were then dealt with say nothing any more: read the figure at a seed that nobody has looked at.
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
const strata: Stratum[] = [];
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
  strata.push({ killed, all: own.length, weight: (ofAll * own.length) / Math.max(1, own.length + refused) });
  console.log(
    `${room}: ${report({ killed, all: own.length })} (of ${ofAll} mutants; ${refused} drawn not type-correct)`,
  );
}
console.log(`all: ${report(tally)}, seed ${values.seed}`);
const { share, half } = weighted(strata);
console.log(
  `weighted by how many mutants each room has: ${percent(share)} ± ${percent(half)} (nine in ten), seed ${values.seed}`,
);

/** What was tried of a room, and about how many of its mutants pass the type check. */
interface Stratum {
  readonly killed: number;
  readonly all: number;
  readonly weight: number;
}

/**
 * The share of all mutants that is killed, by a sample of each room, and the half width of its band of nine in ten:
 *
 *   p = Σ W p_i,  half = 1.645 √Σ W² p_i (1 - p_i) / n_i,  W = N_i / ΣN        (stratified sampling, Cochran, Sampling Techniques, 1977, ch. 5)
 *
 * A room tried whole adds nothing to the band.
 */
function weighted(rooms: readonly Stratum[]): { share: number; half: number } {
  const tried = rooms.filter(({ all }) => all > 0);
  const sum = tried.reduce((total, { weight }) => total + weight, 0);
  let share = 0;
  let variance = 0;
  for (const { killed, all, weight } of tried) {
    const own = killed / all;
    share += (weight / sum) * own;
    if (all < weight) variance += (weight / sum) ** 2 * ((own * (1 - own)) / all);
  }
  return { share, half: 1.645 * Math.sqrt(variance) };
}

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

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

function report({ killed, all }: { killed: number; all: number }): string {
  return `${killed} of ${all} killed, ${percent(killed / Math.max(1, all))}`;
}
