import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createVitest } from "vitest/node";
import { type Mutant, mutated } from "./mutants.ts";

// Runs tests against one mutant after the other, told by its parent; nothing is written to disk. A mutant that never ends is the
// parent's to notice.
const root = join(import.meta.dirname, "../../..");
let now: Mutant | undefined;

interface Order {
  readonly mutant: Mutant | undefined;
  /** Test files; tried in order until one fails. */
  readonly tests: readonly string[];
}

const vitest = await createVitest(
  "test",
  {
    config: false,
    root,
    include: ["tests/**/*.test.ts"],
    setupFiles: ["tests/support/sameCases.ts"],
    watch: false,
    bail: 1,
    pool: "threads",
    maxWorkers: 1,
    isolate: false,
    reporters: [{}],
    env: { TZ: "UTC" },
    testTimeout: 240_000,
  },
  {
    plugins: [
      {
        name: "mutant",
        enforce: "pre",
        load(id) {
          const file = id.replace(/\?.*$/, "");
          return now && file === join(root, now.file) ? mutated(readFileSync(file, "utf8"), now) : undefined;
        },
      },
    ],
  },
);

process.on("message", (order: Order) => {
  void answer(order);
});
process.send?.({ ready: true });

async function answer({ mutant, tests }: Order): Promise<void> {
  if (now) vitest.invalidateFile(join(root, now.file));
  now = mutant;
  if (now) vitest.invalidateFile(join(root, now.file));
  const project = vitest.projects[0];
  const specs = tests.map((test) => project.createSpecification(join(root, test)));
  const { testModules, unhandledErrors } = await vitest.runTestSpecifications(specs);
  const isKilled = unhandledErrors.length > 0 || testModules.some((module) => !module.ok());
  process.send?.({ isKilled });
}
