import { defineConfig } from "vitest/config";
import { CountReporter } from "./tests/support/countReporter.ts";

// One project a room, so that `npx vitest run --project sim` runs that room alone. All of them together are the gate.
const rooms = ["shared", "sim", "web", "reference", "invariants", "conventions", "plots"];
const roomProjects = rooms.map((room) => ({
  extends: true as const,
  test: {
    // Files once transformed are kept between runs.
    experimental: { fsModuleCache: true },
    name: room,
    include: [`tests/${room}/**/*.test.ts`],
    setupFiles: ["tests/support/sameCases.ts"],
    // Snapshots of text and pictures must not depend on where the machine stands.
    env: { TZ: "UTC" },
    // Property tests, tsc and biome take their time on a busy machine; this only bounds a test that hangs.
    testTimeout: 240_000,
    hookTimeout: 60_000,
    benchmark: { include: room === "sim" ? ["tests/bench/**/*.bench.ts"] : [] },
  },
}));

export default defineConfig({
  test: {
    // Files once transformed are kept between runs.
    experimental: { fsModuleCache: true },
    reporters: ["default", new CountReporter()],
    environment: "node",
    // The machine of the gate has two cores, and the usual "all but one" would leave half of it idle.
    maxWorkers: "100%",
    // A run that finds no test at all has failed.
    passWithNoTests: false,
    coverage: { provider: "v8", include: ["shared/**/*.ts", "sim/**/*.ts", "web/**/*.ts"] },
    projects: [
      ...roomProjects,
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          // Builds the notebook, serves it on a free port and finds Chromium, once for all files.
          globalSetup: ["tests/support/builtNotebook.ts"],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          benchmark: { include: [] },
        },
      },
    ],
  },
});
