#!/usr/bin/env node
import { runCommandLine } from "./commandLine.ts";
import { commands } from "./commands.ts";

// Whoever reads along may stop early (`| head -1`): that is no fault of anybody.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
  process.exit(0);
});

process.exitCode = await runCommandLine(
  commands,
  process.argv.slice(2),
  (text) => void process.stdout.write(`${text}\n`),
  (text) => void process.stderr.write(`${text}\n`),
);
