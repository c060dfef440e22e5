import type { Job } from "../../../shared/job/job.ts";

/** One person with a bag, unless weighed: common practice, no source. */
const PERSON_kg = 75;
const LOAD = "vehicle.load_kg";

/** The job with so many people aboard, at their usual weight. */
export function withPeople(job: Job, count: number): Job {
  const note = `${count} at ${PERSON_kg} kg`;
  return {
    ...job,
    vehicle: { ...job.vehicle, load_kg: count * PERSON_kg },
    origins: { ...job.origins, [LOAD]: { from: "usual", note } },
  };
}

/** How many people make up the load, where that is what it was taken from: a choice's key. */
export function peopleAboard({ vehicle: { load_kg }, origins }: Job): string | undefined {
  const count = load_kg / PERSON_kg;
  return origins[LOAD]?.from === "usual" && Number.isInteger(count) && count >= 1 && count <= 6
    ? String(count)
    : undefined;
}
