import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { runTool } from "../support/runTool.ts";
import { root } from "../support/sourceFiles.ts";

/** Runs test files given by name and text through the runner with our reporter, in a folder of their own. */
async function runTests(files: Readonly<Record<string, string>>) {
  // Inside node_modules, so that `vitest` is found from there.
  mkdirSync(join(root, "node_modules/.cache"), { recursive: true });
  const folder = mkdtempSync(join(root, "node_modules/.cache/counted-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  const reporter = join(root, "tests/support/countReporter.ts");
  writeFileSync(
    join(folder, "vitest.config.ts"),
    `import { CountReporter } from ${JSON.stringify(reporter)};
     export default { test: { include: ["*.test.ts"], exclude: [], reporters: [new CountReporter()] } };`,
  );
  const counts = join(folder, "counts.json");
  const before = process.env["TEST_COUNTS_FILE"];
  process.env["TEST_COUNTS_FILE"] = counts;
  const { code, said } = await runTool("node_modules/vitest/vitest.mjs", ["run", "--root", folder]);
  if (before === undefined) delete process.env["TEST_COUNTS_FILE"];
  else process.env["TEST_COUNTS_FILE"] = before;
  return { code, lastLine: said.trimEnd().split("\n").at(-1), counts: JSON.parse(readFileSync(counts, "utf8")) };
}

const head = 'import { expect, it } from "vitest";\n';
const passing = `${head}it("adds", () => expect(1 + 1).toBe(2));`;

it("ends a good run with the number of tests that ran", async () => {
  expect(await runTests({ "a.test.ts": passing, "b.test.ts": passing })).toEqual({
    code: 0,
    lastLine: "2 passed, 0 failed",
    counts: { passed: 2, failed: 0 },
  });
});

it("counts as failed what failed, was left out, could not be loaded, held no test, or went wrong outside any test", async () => {
  const run = await runTests({
    "good.test.ts": passing,
    "failing.test.ts": `${head}it("adds", () => expect(1 + 1).toBe(3));`,
    "leftOut.test.ts": `${head}it.${"skip"}("adds", () => {});\nit.${"todo"}("subtracts");`,
    "broken.test.ts": `${head}throw new Error("no");`,
    "empty.test.ts": head,
    "outside.test.ts": `${head}it("starts", () => { setTimeout(() => { throw new Error("late"); }, 1); });
      it("waits", () => new Promise((done) => setTimeout(done, 50)));`,
  });
  // failing, two left out, broken, empty, and the late error; the two tests around that one passed.
  expect(run).toEqual({ code: 1, lastLine: "3 passed, 6 failed", counts: { passed: 3, failed: 6 } });
});

it("makes a run fail in which a test was left out and nothing else went wrong", async () => {
  const run = await runTests({ "a.test.ts": `${passing}\nit.${"skip"}("subtracts", () => {});` });
  expect(run).toMatchObject({ code: 1, lastLine: "1 passed, 1 failed" });
});
