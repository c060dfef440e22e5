import { readJob } from "../../shared/job/readJob.ts";
import { InputError } from "../../shared/problems.ts";
import { changedDemo } from "./changedDemo.ts";

/** Each fault of a demo job with values put at paths, as the command line prints it: its path, and what was found. */
export function faultsOf(changes: Readonly<Record<string, unknown>>): string[] {
  try {
    readJob(changedDemo(changes));
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ where, message }) => `${where}: ${message}`);
    throw error;
  }
  return [];
}
