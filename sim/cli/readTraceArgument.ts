import { basename } from "node:path";
import { InputError, inputError } from "../../shared/problems.ts";
import { readTraceCsv } from "../trace/readTraceCsv.ts";
import type { Trace } from "../trace/trace.ts";
import { cycleById } from "./cycleFiles.ts";
import { readText } from "./files.ts";

/**
 * The trace that an argument names: the id of a standard cycle or of a phase, or a file. What has a folder or an ending in
 * it is a file. Throws InputError; where neither a cycle nor a file has that name it says so of both.
 */
export function readTraceArgument(argument: string): Trace {
  if (isFileName(argument)) return readTraceCsv(basename(argument), readText(argument));
  try {
    return cycleById(argument);
  } catch (error) {
    if (!(error instanceof InputError) || !error.problems.some(({ code }) => code === "cycle-unknown")) throw error;
    const [problem] = error.problems;
    throw inputError(
      "cycle-unknown",
      argument,
      `${problem?.message}; a file is given with its ending, such as road.csv`,
    );
  }
}

/** True for an argument that is meant as a file, not as the id of a cycle. */
export function isFileName(argument: string): boolean {
  return /[\\/.]/.test(argument);
}
