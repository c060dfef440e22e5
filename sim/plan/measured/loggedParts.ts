import { S_PER_H } from "../../../shared/units.ts";
import type { PackLog } from "../../trace/packLog.ts";
import type { LinedUp } from "./lineUp.ts";
import type { DrivePart } from "./recording.ts";

/** The parts of a drive that are compared with its log: those with volts and amps, the longest of them. */
export function loggedParts(
  parts: readonly DrivePart[],
  log: Pick<PackLog, "time_s">,
  linedUp: Pick<LinedUp, "offset_s">,
): readonly DrivePart[] {
  return longestParts(parts.filter((part) => isLogged(part, log, linedUp)));
}

/** Whether volts and amps were logged in a part of the drive. */
function isLogged(
  { start_s, trace }: DrivePart,
  { time_s }: Pick<PackLog, "time_s">,
  { offset_s }: Pick<LinedUp, "offset_s">,
): boolean {
  const end_s = start_s + trace.time_s[trace.time_s.length - 1];
  return time_s.some((at_s) => at_s + offset_s >= start_s && at_s + offset_s <= end_s);
}

/** More driving than this tells no more and takes minutes to work. */
export const LONGEST_s = 6 * S_PER_H;

/** The longest parts of a log, in their order, up to so many hours of them; one at least. */
function longestParts(parts: readonly DrivePart[]): readonly DrivePart[] {
  const lasts_s = ({ trace }: DrivePart) => trace.time_s[trace.time_s.length - 1];
  let sum_s = 0;
  const kept = new Set(
    [...parts]
      .sort((a, b) => lasts_s(b) - lasts_s(a))
      .filter((part, k) => {
        sum_s += lasts_s(part);
        return k === 0 || sum_s <= LONGEST_s;
      }),
  );
  return parts.filter((part) => kept.has(part));
}
