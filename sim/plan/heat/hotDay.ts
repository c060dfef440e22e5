import type { Job } from "../../../shared/job/job.ts";

/** A hot day where the job names none. Common practice, no source. */
const HOT_degC = 35;

/** How warm the hot day is that motor and pack are judged on. */
export function hotDay_degC({ requirement }: Pick<Job, "requirement">): number {
  return requirement.hotDay_degC ?? HOT_degC;
}

/** The job on that day, its pack as warm as the air. */
export function onHotDay(job: Job): Job {
  const { pack_degC: _pack, ...environment } = job.environment;
  return { ...job, environment: { ...environment, temperature_degC: hotDay_degC(job) } };
}
