import type { Job } from "../../../shared/job/job.ts";

/** One way to leave the gear lever: a gear of the box, with a range of the transfer box where the car has one. */
export interface GearChoice {
  readonly gear: string;
  readonly range?: "high" | "low";
}

/** Every gear of a job's box in each range of its transfer box, high range first. */
export function gearChoices({ driveline }: Job): GearChoice[] {
  const names = driveline.gears.map(({ name }) => name);
  if (driveline.transferBox === undefined) return names.map((gear) => ({ gear }));
  return (["high", "low"] as const).flatMap((range) => names.map((gear) => ({ gear, range })));
}

/** The job with its car left in one gear. */
export function inOneGear(job: Job, { gear, range }: GearChoice): Job {
  const { transferBox } = job.driveline;
  return {
    ...job,
    driveline: {
      ...job.driveline,
      shifting: { kind: "fixed", gear },
      ...(transferBox && range && { transferBox: { ...transferBox, range } }),
    },
  };
}

/** `third`, `third, low range`. */
export function gearName({ gear, range }: GearChoice): string {
  return range === "low" ? `${gear}, low range` : gear;
}
