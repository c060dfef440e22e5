import { inputError } from "../../shared/problems.ts";
import type { PackLog } from "../trace/packLog.ts";
import { joinLogs } from "./joinLogs.ts";
import { hasValues } from "./log/fixes.ts";
import type { LogFile } from "./log/logFile.ts";
import { hasPack, packLogOf } from "./packLog.ts";

/** The logs of a built car told apart: those with its motion, and that with volts and amps of its pack. */
export interface BuiltCarLogs {
  /** None where nothing but the pack was logged, as while charging. */
  readonly motion: readonly LogFile[];
  readonly pack: PackLog;
}

/**
 * Sorts logs into motion and pack. Motion is that of the files without a pack where there are any (a receiver's is better than a dashboard's),
 * else that of the pack's own. Throws InputError where no file has volts and amps.
 */
export function builtCarLogs(logs: readonly LogFile[]): BuiltCarLogs {
  const packs = logs.filter(hasPack);
  const [first] = packs;
  if (!first) {
    const half = logs.find(({ fixes: { extras } }) => extras.packVoltage_V ?? extras.packCurrent_A);
    const what = half?.fixes.extras.packVoltage_V
      ? "volts and no amps"
      : half
        ? "amps and no volts"
        : "no volts and no amps";
    const found = `found ${what} of the pack in ${logs.length === 1 ? "it" : "any of the logs"}`;
    throw inputError(
      "no-pack",
      half?.file ?? logs[0]?.file ?? "logs",
      `${found}, both are wanted to compare a drive with`,
    );
  }
  const motion = logs.filter((log) => !packs.includes(log) && hasMotion(log));
  const isSameFile = motion.length === 0;
  const joined = packs.length === 1 ? first : { ...first, ...joinLogs(packs) };
  return { motion: isSameFile ? packs.filter(hasMotion) : motion, pack: packLogOf(joined, isSameFile) };
}

function hasMotion({ fixes }: LogFile): boolean {
  return hasValues(fixes.speed_mps) || hasValues(fixes.latitude_deg);
}
