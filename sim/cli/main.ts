#!/usr/bin/env node
import { isMainThread } from "node:worker_threads";
import { runCommandLine } from "./commandLine.ts";
import { commands } from "./commands.ts";
import { outputFault } from "./files/files.ts";
import { answerVariants } from "./workers/variantWorker.ts";
import { workersBeginWith } from "./workers/varyOnAll.ts";

if (isMainThread) {
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    // Whoever reads along may stop early (`| head -1`): that is no fault of anybody.
    if (error.code === "EPIPE") process.exit(0);
    process.stderr.write(`standard output: ${outputFault(error)}\n`);
    process.exit(2);
  });
  // Where messages have nowhere to go, the exit code is all there is.
  process.stderr.on("error", () => undefined);

  workersBeginWith(import.meta.url);
  process.exitCode = await runCommandLine(
    commands,
    process.argv.slice(2),
    (text) => void process.stdout.write(`${text}\n`),
    (text) => void process.stderr.write(`${text}\n`),
  );
} else answerVariants();
