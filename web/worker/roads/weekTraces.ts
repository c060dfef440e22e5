import type { Job } from "../../../shared/job/job.ts";
import type { Road } from "../../../shared/job/schema/road.ts";
import { roadsOfWeek, type Trace } from "../../../sim/index.ts";

/** The roads of a job's week as traces, by their ids. */
export async function weekTraces(
  job: Pick<Job, "week" | "roads">,
  traceOf: (road: Road) => Promise<Trace>,
): Promise<ReadonlyMap<string, Trace>> {
  const wanted = roadsOfWeek(job);
  const roads = job.roads.filter(({ id }) => wanted.includes(id));
  return new Map(await Promise.all(roads.map(async (road) => [road.id, await traceOf(road)] as const)));
}
