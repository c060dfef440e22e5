import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../shared/job/job.ts";
import type { Road } from "../../../shared/job/schema/road.ts";
import { nearest } from "../../../shared/nearest.ts";
import { InputError, inputError } from "../../../shared/problems.ts";
import { roadTrace } from "../../plan/drive/roadTrace.ts";
import { mergeFineSamples } from "../../trace/mergeFineSamples.ts";
import { fromRestToRest } from "../../trace/restToRest.ts";
import { cycleIds } from "../../trace/standardCycles.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Print } from "../command.ts";
import { cycleFile, cycleTextsFor } from "../cycleFiles.ts";
import { readTraceArgument } from "./readTraceArgument.ts";
import { isFileName } from "./roadFiles.ts";

/** A road to drive, and the file it was read from where that is not the job itself. */
interface RoadToDrive {
  readonly trace: Trace;
  readonly source?: string;
}

/**
 * The road that `--trace` names: a road of the job by its id, a standard cycle or a phase of one, or a file; without it the
 * road that the job's packs are judged on. What was done to a log is said to `warn`. Throws InputError, with the nearest name,
 * for what is none of them, and for a road on which nothing moves.
 */
export function roadToDrive(job: Job, jobPath: string, named: string | undefined, warn: Print): RoadToDrive {
  const ofJob = (road: Road) => roadOfJob(road, `${jobPath} roads.${job.roads.indexOf(road)}`);
  if (named === undefined) return ofJob(drivenRoad(job));
  const road = job.roads.find(({ id }) => id === named);
  if (road) return ofJob(road);
  const read = () => fromRestToRest(mergeFineSamples(readTraceArgument(named, warn)));
  if (isFileName(named)) return { trace: read(), source: named };
  try {
    return { trace: read(), source: cycleFile(named) };
  } catch (error) {
    throw unknownRoad(job, named, error);
  }
}

function roadOfJob(road: Road, where: string): RoadToDrive {
  if (road.kind === "cycle") {
    return { trace: roadTrace(road, cycleTextsFor(road.cycle)), source: cycleFile(road.cycle) };
  }
  if (road.speed_kmh.every((speed_kmh) => speed_kmh === 0)) {
    const found = "found a speed of 0 km/h in every row";
    throw inputError("trace-still", `${where}.speed_kmh`, `${found}, a road on which the car moves is wanted`);
  }
  return { trace: roadTrace(road, {}) };
}

function unknownRoad(job: Job, named: string, error: unknown): unknown {
  if (!(error instanceof InputError) || error.problems[0]?.code !== "cycle-unknown") return error;
  const ids = job.roads.map(({ id }) => id);
  const near = nearest(named, [...ids, ...cycleIds]);
  const hint =
    near !== undefined && ids.includes(near)
      ? `did you mean ${near}`
      : error.problems[0].message.replace(/^[^;]*; /, "").replace("known are", "the cycles are");
  const found = `found no road of the job (${ids.join(", ")}) and no cycle of this name`;
  return inputError("cycle-unknown", named, `${found}; ${hint}`);
}
