import { basename } from "node:path";
import { inputError } from "../../../shared/problems.ts";
import { spreadOfTrips } from "../../route/clean/spreadOfTrips.ts";
import { wholeTrace } from "../../route/roads/toTrace.ts";
import type { Trace } from "../../trace/trace.ts";
import type { RecordedDrives } from "./recordedDrives.ts";

/**
 * All trips of the logs as one trace, parking between them left out: what is driven and what is written. Named after the first file.
 * Throws InputError where there is no trip.
 */
export function cleanedWhole({ files, trips, cleaned }: RecordedDrives): Trace {
  const [{ log }] = files;
  const names = files.length === 1 ? log.file : `${log.file} and ${files.length - 1} more`;
  if (trips.trips.length === 0) {
    const { noDrive } = cleaned.quality;
    const none = noDrive === undefined ? "found no trip of at least 50 m" : `found no trip: ${noDrive}`;
    const found = cleaned.isStill ? "found a log without movement" : none;
    throw inputError("noTrips", names, `${found}, there is no road to drive`);
  }
  const id = basename(log.file).replace(/\.[^.]*$/, "");
  const spread = spreadOfTrips(cleaned, trips.trips);
  return { ...wholeTrace(trips.trips, id, `${names}, recorded and cleaned`), ...(spread && { spread }) };
}
