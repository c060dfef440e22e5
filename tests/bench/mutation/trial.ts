import fc from "fast-check";
import { createModules } from "./modules.ts";
import type { Mutant } from "./mutants.ts";
import { withMutants } from "./schemata.ts";
import { createCollector } from "./tests.ts";

/** What a test passed and took without a mutant. */
interface Passed {
  readonly reached: Uint8Array;
  readonly turns: number;
  readonly time_ms: number;
}

/** A test file, and which of its tests pass which mutants' places. */
interface TestFile {
  readonly file: string;
  /** Mutants passed while the file is loaded. */
  readonly loading: Uint8Array;
  readonly tests: readonly Passed[];
}

/** So many times the turns of loops without a mutant, and so many besides, and a test is taken to run for ever. */
const PATIENCE = { times: 20, turns: 2e6 };
/** Processor time of the tests tried for one mutant, as measured without one; a mutant that would need more counts as alive. */
const BUDGET_ms = 4000;
/** How long a test may wait for something that does not come. */
const WAIT_ms = 60_000;

/** The project with all mutants compiled in, each of which can be tried against the test files that were added. */
export async function createTrial(root: string, mutants: readonly Mutant[], sourceOf: (file: string) => string) {
  const { expect, vi } = await vitest();
  const ids = new Map(mutants.map((mutant, id) => [mutant, id]));
  const collector = createCollector();
  let active = -1;
  let reached = new Uint8Array(mutants.length);
  let turns = 0;
  let allowance = Number.POSITIVE_INFINITY;
  const modules = createModules(
    root,
    (file) => {
      const own = mutants.map((mutant, id) => ({ ...mutant, id })).filter((mutant) => mutant.file === file);
      return withMutants(file, sourceOf(file), own);
    },
    { vitest: { ...collector.api, expect, vi } },
    {
      on(id) {
        reached[id] = 1;
        return id === active;
      },
      turn() {
        if (++turns > allowance) throw new Error("runs for ever");
      },
    },
  );
  modules.load("tests/support/sameCases.ts");
  // A failing case is not made smaller: that it fails is all that is asked.
  fc.configureGlobal({ ...fc.readConfigureGlobal(), endOnFailure: true });
  const files: TestFile[] = [];

  /** Loads a file's tests afresh. */
  const collect = (file: string) => {
    modules.forget();
    return collector.collect(() => modules.load(file));
  };

  return {
    /** Runs a file's tests without a mutant, to see that they pass and what they reach. */
    async addTests(file: string): Promise<void> {
      active = -1;
      allowance = Number.POSITIVE_INFINITY;
      const loading = new Uint8Array(mutants.length);
      reached = loading;
      const tests: Passed[] = [];
      for (const { name, run } of collect(file)) {
        reached = new Uint8Array(mutants.length);
        turns = 0;
        const start_us = used_us();
        try {
          await withinWait(run);
        } catch (error) {
          throw new Error(`${file}: ${name} fails without a mutant`, { cause: error });
        }
        tests.push({ reached, turns, time_ms: (used_us() - start_us) / 1000 });
      }
      files.push({ file, loading, tests });
    },

    /** The file of the first test that fails of a mutant, if any does. */
    async killerOf(mutant: Mutant): Promise<string | undefined> {
      const id = ids.get(mutant) ?? -1;
      const own = `tests/${mutant.file.replace(/\.ts$/, ".test.ts")}`;
      const concerned = files
        .map(({ file, loading, tests }) => {
          const chosen = tests.map((test) => loading[id] === 1 || test.reached[id] === 1);
          const time_ms = tests.reduce((sum, test, i) => sum + (chosen[i] ? test.time_ms : 0), 0);
          return { file, tests, chosen, time_ms: file === own ? 0 : time_ms };
        })
        .filter(({ chosen }) => chosen.includes(true))
        .toSorted((a, b) => a.time_ms - b.time_ms);
      let left_ms = BUDGET_ms;
      for (const { file, tests, chosen } of concerned) {
        const isIn = (i: number) => chosen[i] && (file === own || tests[i].time_ms <= left_ms);
        if (!tests.some((_, i) => isIn(i))) continue;
        active = id;
        turns = 0;
        allowance = PATIENCE.turns;
        try {
          for (const [i, { run }] of collect(file).entries()) {
            if (!isIn(i)) continue;
            left_ms -= tests[i].time_ms;
            turns = 0;
            allowance = PATIENCE.turns + PATIENCE.times * tests[i].turns;
            await withinWait(run);
          }
        } catch {
          return file;
        }
      }
      return undefined;
    },

    /** How many tests pass a mutant's place, in words. */
    reachOf(mutant: Mutant): string {
      const id = ids.get(mutant) ?? -1;
      const passing = files.reduce((n, { tests }) => n + tests.filter((test) => test.reached[id] === 1).length, 0);
      return passing > 0 ? ` (${passing} tests pass it)` : " (no test passes it)";
    },
  };
}

function used_us(): number {
  const { user, system } = process.cpuUsage();
  return user + system;
}

async function withinWait(run: () => unknown): Promise<void> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error("waits for ever")), WAIT_ms);
  });
  try {
    await Promise.race([run(), late]);
  } finally {
    clearTimeout(timer);
  }
}

/** Vitest's `expect` outside of its workers: it only wants to find the state of one. */
async function vitest() {
  Object.assign(globalThis, {
    __vitest_worker__: { config: {}, environment: { name: "node" }, ctx: {}, durations: {}, metaEnv: {} },
  });
  return import("vitest");
}
