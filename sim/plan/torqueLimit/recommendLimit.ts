import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import type { GearChoice } from "../gears/oneGear.ts";
import { shaftTorques } from "./shaftTorques.ts";

/** A gearbox known to be strong may get so much more than the old engine gave. Common practice, no source. */
export const STRONG_frac = 0.2;

/** A limit of the motor's torque, and what set it. */
export interface RecommendedLimit {
  readonly torque_Nm: number;
  readonly because: "gearbox" | "strong" | "engine" | "propeller shaft" | "half-shaft" | "motor";
  /** The gear in which a shaft sets it. */
  readonly gear?: GearChoice;
}

/**
 * The limit by the trade's rule: the old engine's peak at the gearbox input; where the gearbox's own limit is known that, but at most a
 * fifth above the engine; and never more than the shafts carry in the gears that are used. Common practice, no source.
 *
 * In whole newton metres, rounded down. Nothing where neither engine nor gearbox nor shafts are known.
 */
export function recommendLimit(job: Job): RecommendedLimit | undefined {
  const { gearboxInput_Nm: box_Nm } = job.driveline.limits;
  const engine_Nm = engineTorque_Nm(job);
  const found: RecommendedLimit[] = [];
  if (box_Nm !== undefined) found.push({ torque_Nm: box_Nm, because: "gearbox" });
  if (engine_Nm !== undefined)
    found.push(
      box_Nm === undefined
        ? { torque_Nm: engine_Nm, because: "engine" }
        : { torque_Nm: (1 + STRONG_frac) * engine_Nm, because: "strong" },
    );
  for (const row of shaftTorques(job, 0)) {
    const { gear, range, inputAtLimit_Nm, weakest } = row;
    if (inputAtLimit_Nm === undefined || weakest === undefined || !isUsed(job, row)) continue;
    found.push({ torque_Nm: inputAtLimit_Nm, because: weakest, gear: { gear, ...(range && { range }) } });
  }
  if (found.length === 0) return undefined;
  found.push({ torque_Nm: peakTorque_Nm(job.motor.envelope), because: "motor" });
  const least = found.reduce((a, b) => (b.torque_Nm < a.torque_Nm ? b : a));
  return { ...least, torque_Nm: Math.max(1, Math.floor(least.torque_Nm + 1e-9)) };
}

/** Whether a job's car is driven in a gear, as its gears are set and its transfer box stands. */
export function isUsed({ driveline }: Job, { gear, range = "high" }: GearChoice): boolean {
  const { shifting, transferBox } = driveline;
  const gears = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
  return gears.includes(gear) && range === (transferBox?.range ?? "high");
}
