import { inputError } from "../../../shared/problems.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import type { LogFile } from "../../route/log/logFile.ts";
import { layHillsUnder } from "../../route/roads/layHillsUnder.ts";
import { readTypedRoad } from "../../route/roads/readTypedRoad.ts";
import { routeShape } from "../../route/roads/routeShape.ts";
import { typedRoad } from "../../route/roads/typedRoad.ts";
import type { Trace } from "../../trace/trace.ts";

/**
 * A planned route driven at typed speeds, its hills under it where it has heights. Without speeds an InputError says that this is a
 * route and how long it is, and asks for them.
 */
export function plannedRoute(log: LogFile, speeds: string | undefined): Trace {
  if (log.fixes.count < 2)
    throw inputError("tooFewFixes", log.file, "found a single point, a drive or a route has at least two");
  const { distance_m, profile } = routeShape(log);
  const km = formatNumber(distance_m / M_PER_KM);
  if (speeds === undefined) {
    const found = `found a planned route of ${km} km without times, not a drive; speeds for it are wanted`;
    const given = `--speeds "${km} km at 50 km/h, 2 stops a km"`;
    const steady = "or --interval S where the points were recorded every S seconds";
    throw inputError("noTimes", log.file, `${found}: ${given}, ${steady}`);
  }
  const id = log.file.replace(/\.[^.\\/]*$/, "");
  const flat = typedRoad(readTypedRoad(speeds), undefined, id, `${id}, a planned route at typed speeds`);
  return profile ? layHillsUnder(flat, profile) : flat;
}
