import type { Job } from "../../../shared/job/job.ts";
import { atPath } from "../../../shared/job/path.ts";
import { supplies } from "../../../shared/parts/supplies.ts";
import { withPlacesFollowed } from "../../editing/placesFollowed.ts";
import { usualWithin } from "./ownCar.ts";

const UNKNOWN = "unknown";
const FIRST = "supplies.0";

/** What a client may have at home; and that nobody has asked yet, where no place was entered that would go by that. */
export function placeChoices({ supplies: own }: Job): { readonly key: string; readonly words: string }[] {
  const unknown = { key: UNKNOWN, words: "Not known yet: counted as a household socket" };
  const known = supplies.map(({ id, title }) => ({ key: id, words: title }));
  return own.length > 1 ? known : [unknown, ...known];
}

/** The choice that a job's first place to charge was taken from; nothing for one that was entered by hand. */
export function placeOf({ supplies: own }: Job): string | undefined {
  if (own.length === 0) return UNKNOWN;
  const [{ kind, mode, voltage_V, current_A }] = own;
  const alike = supplies.find(({ data }) => {
    return data.kind === kind && data.mode === mode && data.voltage_V === voltage_V && data.current_A === current_A;
  });
  return alike?.id;
}

/** The job with another supply at the first place where it is charged, its hours and prices kept; without that place where it is unknown. */
export function withPlace(job: Job, key: string): Job {
  const [first, ...others] = job.supplies;
  const part = supplies.find(({ id }) => id === key);
  if (part === undefined)
    return withPlacesFollowed({ ...job, supplies: [], origins: without(job.origins, "supplies.") }, job);
  // A name that says which supply it was would be wrong beside the new one.
  const isNamed = first !== undefined && !supplies.some(({ title }) => title === first.name);
  const place = { ...first, ...part.data, ...(isNamed && { name: first.name }) };
  const origins = without(job.origins, `${FIRST}.voltage_V`, `${FIRST}.current_A`);
  for (const [at, { low, high, note }] of Object.entries(part.origins))
    origins[`${FIRST}.${at}`] = usualWithin(atPath(part.data, at), low, high, note);
  return withPlacesFollowed({ ...job, supplies: [place, ...others], origins }, job);
}

function without(origins: Job["origins"], ...starts: readonly string[]): Job["origins"] {
  return Object.fromEntries(
    Object.entries(origins).filter(([path]) => !starts.some((start) => path.startsWith(start))),
  );
}
