import { writeFileSync } from "node:fs";
import type { Reporter, SerializedError, TestModule, Vitest } from "vitest/node";

/** What a run came to. `failed` takes in whatever did not pass, for whatever reason. */
export interface TestCounts {
  readonly passed: number;
  readonly failed: number;
}

/**
 * Ends a run with `N passed, N failed`, from the runner's own results. A skipped or unfinished test has shown nothing,
 * so it counts as failed; so do a file that could not be loaded, a file without a test, and an error outside any test.
 * With TEST_COUNTS_FILE in the environment the two numbers are written there too, as JSON, for `.ci/run`.
 */
export class CountReporter implements Reporter {
  private vitest: Vitest | undefined;

  onInit(vitest: Vitest): void {
    this.vitest = vitest;
  }

  onTestRunEnd(modules: readonly TestModule[], unhandledErrors: readonly SerializedError[]): void {
    // `-t NAME` leaves the other tests out by the person's own choice; only then is a skipped test no failure.
    const isNarrowed = this.vitest?.config.testNamePattern !== undefined;
    const notPassed: string[] = unhandledErrors.map((error) => `an error outside any test: ${error.message}`);
    let passed = 0;
    for (const module of modules) {
      let tests = 0;
      let brokenTests = 0;
      for (const test of module.children.allTests()) {
        tests += 1;
        const { state } = test.result();
        if (state === "passed") {
          passed += 1;
          const again = test.diagnostic()?.retryCount ?? 0;
          if (again > 0) console.log(`  passed only when tried again: ${module.relativeModuleId}: ${test.fullName}`);
        } else if (!(state === "skipped" && isNarrowed)) {
          brokenTests += 1;
          notPassed.push(`${module.relativeModuleId}: ${test.fullName} (${state})`);
        }
      }
      if (tests === 0) notPassed.push(`${module.relativeModuleId}: no test in it ran`);
      else if (brokenTests === 0 && module.state() === "failed")
        notPassed.push(`${module.relativeModuleId}: failed outside its tests`);
    }

    const counts: TestCounts = { passed, failed: notPassed.length };
    if (notPassed.length > 0 || passed === 0) process.exitCode = 1;
    const countsFile = process.env["TEST_COUNTS_FILE"];
    if (countsFile) writeFileSync(countsFile, JSON.stringify(counts));
    for (const line of notPassed) console.log(`  not passed: ${line}`);
    console.log(`${counts.passed} passed, ${counts.failed} failed`);
  }
}
