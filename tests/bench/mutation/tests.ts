type Run = () => unknown;

/** A test as its file declared it, with what is to be run before and after it. */
export interface Declared {
  readonly name: string;
  readonly run: Run;
}

interface Suite {
  readonly name: string;
  readonly parent: Suite | undefined;
  readonly beforeAll: Run[];
  readonly afterAll: Run[];
  readonly beforeEach: Run[];
  readonly afterEach: Run[];
  isOpen: boolean;
}

/**
 * `describe`, `it` and the hooks as far as these tests use them, so that a file is loaded and its tests run in this very process.
 * `collect` loads a file and gives its tests; they run one at a time, in order, and a failing one throws.
 */
export function createCollector() {
  let suite = newSuite("", undefined);
  let tests: Declared[] = [];
  let finished: Run[] = [];

  const it = (name: string, run: Run, _timeout_ms?: number) => {
    const own = suite;
    tests.push({ name: `${own.name} ${name}`, run: () => runOne(own, run) });
  };
  const describe = (name: string, declare: Run) => {
    suite = newSuite(`${suite.name} ${name}`, suite);
    declare();
    suite = suite.parent ?? suite;
  };
  async function runOne(own: Suite, run: Run): Promise<void> {
    const chain: Suite[] = [];
    for (let one: Suite | undefined = own; one; one = one.parent) chain.unshift(one);
    for (const one of chain) if (!one.isOpen) await all(one.beforeAll, () => (one.isOpen = true));
    for (const one of chain) await all(one.beforeEach);
    try {
      await run();
    } finally {
      for (const one of chain.toReversed()) await all(one.afterEach);
      await all(finished.toReversed());
      finished = [];
    }
  }
  return {
    api: {
      describe: Object.assign(describe, { each: each(describe) }),
      it: Object.assign(it, { each: each(it) }),
      test: Object.assign(it, { each: each(it) }),
      beforeAll: (run: Run) => suite.beforeAll.push(run),
      afterAll: (run: Run) => suite.afterAll.push(run),
      beforeEach: (run: Run) => suite.beforeEach.push(run),
      afterEach: (run: Run) => suite.afterEach.push(run),
      onTestFinished: (run: Run) => finished.push(run),
    },
    collect(load: () => unknown): Declared[] {
      suite = newSuite("", undefined);
      tests = [];
      load();
      return tests;
    },
  };
}

/** One declaration a row of a table; a row that is a list is spread over the parameters. */
function each(declare: (name: string, run: Run) => void) {
  return (rows: readonly unknown[]) =>
    (name: string, run: (...row: unknown[]) => unknown): void => {
      for (const [index, row] of rows.entries())
        declare(`${name} #${index}`, () => run(...(Array.isArray(row) ? row : [row])));
    };
}

function newSuite(name: string, parent: Suite | undefined): Suite {
  return { name, parent, beforeAll: [], afterAll: [], beforeEach: [], afterEach: [], isOpen: false };
}

async function all(runs: readonly Run[], then?: () => void): Promise<void> {
  for (const run of runs) await run();
  then?.();
}
