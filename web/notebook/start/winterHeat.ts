import type { Job } from "../../../shared/job/job.ts";
import type { Heater } from "../../../shared/parts/heaters.ts";
import { heaters, usualWinter } from "../../../shared/parts/heaters.ts";
import { usualOf, usualOrigins } from "../../fields/optionalGroup.ts";

const WINTER = "conditions.winter";

/** The job with its winter driven, the cabin heated like this. What was said of the winter beside the heater stays. */
export function withHeating(job: Job, { heat }: Heater): Job {
  const { conditions } = job;
  const winter = { ...(conditions?.winter ?? usualWinter(heat)), heat };
  const old = conditions?.old ?? { resistance_ratio: usualOf("conditions.old.resistance_ratio") };
  const below = (path: string, value: object) =>
    Object.entries(usualOrigins(path, value as Readonly<Record<string, unknown>>)).map(
      ([key, origin]) => [`${path}.${key}`, origin] as const,
    );
  const kept = Object.entries(job.origins).filter(([path]) => !path.startsWith(`${WINTER}.heat.`));
  const added = [
    ...(conditions?.winter ? [] : below(WINTER, winter)),
    ...below(`${WINTER}.heat`, heat),
    ...(conditions ? [] : below("conditions.old", old)),
  ];
  return {
    ...job,
    conditions: { others: conditions?.others ?? [], old, winter },
    origins: { ...Object.fromEntries(kept), ...Object.fromEntries(added) },
  };
}

/** The way of heating that a job's winter has, if it is one of those to choose from. */
export function heatingOf({ conditions }: Job): Heater | undefined {
  const heat = conditions?.winter?.heat;
  return heaters.find((each) => JSON.stringify(sorted(each.heat)) === JSON.stringify(sorted(heat ?? {})));
}

function sorted(value: object): [string, unknown][] {
  return Object.entries(value).sort(([a], [b]) => a.localeCompare(b));
}
