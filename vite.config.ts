import { createHash } from "node:crypto";
import { copyFileSync, existsSync } from "node:fs";
import { builtinModules } from "node:module";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import type { Plugin, UserConfig } from "vite";
import { viteSingleFile } from "vite-plugin-singlefile";
import { defineConfig, type ViteUserConfig } from "vitest/config";
import { licences } from "./.ci/licences.ts";
import { CountReporter } from "./tests/support/countReporter.ts";

// Everything that is built and tested, by mode: `vite build` makes the notebook, `--mode oneFile` the notebook as one file,
// `--mode command` the command line, `--mode library` the core for scripts; `vitest` asks for the mode `test`,
// and `vitest --mode engines` for the notebook in other browsers.
export default defineConfig(({ mode }) => {
  if (mode === "test") return { test: tests };
  if (mode === "engines") return { test: engines };
  if (mode === "oneFile") return oneFile;
  return mode === "command" || mode === "library" ? forNode(mode) : notebook;
});

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const noStream = { find: "stream", replacement: here("web/worker/noStream.ts") };

/**
 * All that the worker begins with, in a file beside its first one. WebKit runs a worker's first file once more when a part that is fetched
 * later imports from it: there were then two of the worker, and both answered.
 */
const insideWorker = {
  name: "insideWorker",
  tags: ["$initial" as const],
  test: (id: string) => !id.endsWith("/web/worker/worker.ts"),
};

// How much script the notebook may load is held by tests/browser/pageWeight.test.ts, so the bundler need not warn. Paths stay
// relative (`base`), so that the built folder works under any address.
const notebook: UserConfig = {
  root: "web",
  base: "./",
  build: { outDir: "../dist/web", emptyOutDir: true, target: "es2022", chunkSizeWarningLimit: 1500 },
  resolve: { alias: [noStream] },
  worker: { format: "es", rolldownOptions: { output: { codeSplitting: { groups: [insideWorker] } } } },
  server: { host: "127.0.0.1" },
  plugins: [licencesBeside()],
};

// The notebook as one file that needs no server: script, look, typeface, cycles, workers and licences lie inside it.
const oneFile: UserConfig = {
  ...notebook,
  build: {
    ...notebook.build,
    outDir: "../dist",
    emptyOutDir: false,
    modulePreload: false,
    reportCompressedSize: false,
  },
  resolve: { alias: [noStream, { find: /^.*\/workersBeside\.ts$/, replacement: here("web/worker/workersInside.ts") }] },
  // A module worker does not start from a page on disk, and a classic one cannot fetch pieces of itself.
  worker: { format: "iife", rolldownOptions: { output: { codeSplitting: false } } },
  plugins: [viteSingleFile(), closed()],
};

/** The command as one file that needs no node_modules (the shebang of main.ts is kept), and the core for scripts. */
function forNode(mode: "command" | "library"): UserConfig {
  const [input, outDir] =
    mode === "command"
      ? [{ main: "sim/cli/main.ts" }, "dist/cli"]
      : [{ index: "sim/index.ts", job: "shared/job/readJob.ts" }, "dist/core"];
  return {
    build: {
      ssr: true,
      outDir,
      emptyOutDir: true,
      target: "node20",
      rollupOptions: { input, output: { entryFileNames: "[name].mjs", chunkFileNames: "[name]-[hash].mjs" } },
    },
    ssr: { noExternal: true, external: [...builtinModules] },
    plugins: [licencesBeside()],
  };
}

// Rooms whose tests need no more than the program: one project, so that a worker loads each module once for all of them.
// `npx vitest run tests/sim` runs one room alone. All projects together are the gate.
const rooms = ["shared", "sim", "web", "reference", "invariants", "plots"];
// Tests that draw into a document: a worker makes one, which the page's library keeps, and each file empties it.
const inDocument = ["tests/web/**/*InDocument.test.ts"];
const inMemory = {
  extends: true as const,
  test: {
    setupFiles: ["tests/support/sameCases.ts"],
    // A test that asks nothing passes whatever the program does.
    expect: { requireAssertions: true },
    // A worker loads each module once, not once a file: none keeps what a test changes.
    pool: "threads" as const,
    isolate: false,
    // Snapshots of text and pictures must not depend on where the machine stands.
    env: { TZ: "UTC" },
    // Property tests take their time on a busy machine; this only bounds a test that hangs.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
};

const tests: NonNullable<ViteUserConfig["test"]> = {
  reporters: ["default", new CountReporter()],
  environment: "node",
  // The machine of the gate has two cores, and the usual "all but one" would leave half of it idle.
  maxWorkers: "100%",
  // A run that finds no test at all has failed.
  passWithNoTests: false,
  coverage: { provider: "v8", include: ["shared/**/*.ts", "sim/**/*.ts", "web/**/*.ts"] },
  projects: [
    {
      ...inMemory,
      test: {
        ...inMemory.test,
        name: "rooms",
        include: rooms.map((room) => `tests/${room}/**/*.test.ts`),
        exclude: inDocument,
      },
    },
    {
      ...inMemory,
      test: {
        ...inMemory.test,
        name: "conventions",
        include: ["tests/conventions/*.test.ts"],
        // Compiler and linter take their time on a busy machine.
        testTimeout: 240_000,
      },
    },
    {
      ...inMemory,
      test: {
        ...inMemory.test,
        name: "document",
        include: inDocument,
        setupFiles: ["tests/support/sameCases.ts", "tests/support/emptyPage.ts"],
        environment: "jsdom",
      },
    },
    {
      extends: true,
      test: {
        name: "browser",
        include: ["tests/browser/*.test.ts"],
        // Builds the notebook, serves it on a free port and finds Chromium, once for all files.
        globalSetup: ["tests/support/builtNotebook.ts"],
        isolate: false,
        // A walk over the whole page takes minutes on a busy machine; this only bounds one that hangs.
        testTimeout: 300_000,
        hookTimeout: 120_000,
        // On a busy machine a page may move between a look at it and a press; the last lines of a run name what had to be tried again.
        retry: 1,
        // What a page does a moment later comes later on a busy machine.
        expect: { poll: { timeout: 30_000 } },
      },
    },
  ],
};

// The notebook's main path in Firefox and WebKit, where a system has them. A machine without them passes the gate.
const engines: NonNullable<ViteUserConfig["test"]> = {
  reporters: ["default", new CountReporter()],
  include: ["tests/engines/*.test.ts"],
  globalSetup: ["tests/engines/driver/setup.ts"],
  retry: 1,
  testTimeout: 180_000,
  hookTimeout: 60_000,
  expect: { poll: { timeout: 30_000 } },
};

/** Lays the licences of what is bundled beside it, as they ask for. */
function licencesBeside(): Plugin {
  return {
    name: "licences",
    generateBundle() {
      this.emitFile({ type: "asset", fileName: "licences.txt", source: licences() });
    },
  };
}

/**
 * Names the one file, puts the licences into it, and has it carry the policy that a server would send: it may run the scripts it was
 * built with, known by their digests, show what is inside it, and ask no host for anything.
 */
function closed(): Plugin {
  return {
    name: "closed",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const page = bundle["index.html"];
        const strays = Object.keys(bundle).filter((file) => file !== "index.html");
        if (page?.type !== "asset" || strays.length > 0)
          throw new Error(`the page is not in one file: beside it are ${strays.join(", ") || "no page"}`);
        const html = String(page.source);
        // After the character set, which has to stand in the first kilobyte.
        const closed = html.replace(/<meta charset[^>]*>/, (charset) => `${charset}\n    ${policyOf(html)}`);
        // A comment ends at two dashes and a bracket.
        const source = `${closed}\n<!--\n${licences().replaceAll("-->", "- ->")}\n-->\n`;
        delete bundle["index.html"];
        this.emitFile({ type: "asset", fileName: "bellhousing.html", source });
      },
    },
    // The served notebook sends it on with a job inside.
    writeBundle({ dir = "" }) {
      const served = join(dir, "web");
      if (existsSync(served)) copyFileSync(join(dir, "bellhousing.html"), join(served, "bellhousing.html"));
    },
  };
}

function policyOf(html: string): string {
  const scripts = [...html.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)];
  const digests = scripts.map(
    ([, text]) =>
      `'sha256-${createHash("sha256")
        .update(text ?? "")
        .digest("base64")}'`,
  );
  const policy = [
    "default-src 'none'",
    `script-src ${digests.join(" ")}`,
    "style-src 'unsafe-inline'",
    "font-src data:",
    "img-src data: blob:",
    "worker-src blob: data:",
    "connect-src data: blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;
}
