import { basename } from "node:path";
import { demos } from "../../../shared/demos/index.ts";
import type { Job } from "../../../shared/job/job.ts";
import { readJobText } from "../../../shared/job/readJob.ts";
import { InputError, inputError, type Problem } from "../../../shared/problems.ts";
import { findCycle } from "../../trace/standardCycles.ts";
import { readText } from "./files.ts";

/**
 * The job in a file. Throws InputError with every fault, each with the file's name before its path; the roads' cycles are looked up
 * too, since the schema of the job file does not know which there are.
 */
export function readJobFile(path: string): Job {
  const job = fromFile(path);
  const problems = job.roads.flatMap((road, i) =>
    road.kind === "cycle" ? cycleProblems(road.cycle, `${path} roads.${i}.cycle`) : [],
  );
  if (problems.length > 0) throw new InputError(problems);
  return job;
}

function fromFile(path: string): Job {
  try {
    return readJobText(readText(path), path);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const id = basename(path);
    const isMissing = error.problems.some(({ code }) => code === "file-missing");
    if (isMissing && demos.some((demo) => demo.id === id)) {
      const advice = `bellhousing new my.bellhousing.json --from ${id} writes one`;
      throw inputError("file-missing", path, `found no file of this name, but a demo; ${advice}`);
    }
    throw new InputError(error.problems.map((problem) => withFile(problem, path)));
  }
}

function withFile(problem: Problem, path: string): Problem {
  return problem.where.startsWith(path) ? problem : { ...problem, where: `${path} ${problem.where}` };
}

function cycleProblems(id: string, where: string): readonly Problem[] {
  try {
    findCycle(id);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems.map(({ code, message }) => ({
      code,
      where,
      message: message.replace("found", `found "${id}",`),
    }));
  }
}
