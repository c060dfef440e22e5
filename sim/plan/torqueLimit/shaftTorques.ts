import type { Job } from "../../../shared/job/job.ts";
import { prepareDriveline } from "../../vehicle/driveline.ts";
import { type GearChoice, gearChoices, inOneGear } from "../gears/oneGear.ts";

/** What the old parts behind the gearbox carry in one gear for one torque at its input. */
export interface ShaftTorques extends GearChoice {
  readonly propellerShaft_Nm: number;
  /** On each half-shaft of a driven axle. */
  readonly halfShaft_Nm: number;
  /** Torque at the gearbox input at which the first of the two is at its limit; absent where no limit is known. */
  readonly inputAtLimit_Nm?: number;
  /** Which of them that is. */
  readonly weakest?: "propeller shaft" | "half-shaft";
}

/**
 * What propeller shaft and half-shafts carry for a torque at the gearbox input, driving, in each gear and range of the transfer box:
 * (input - no-load drag) through the ratios and efficiencies, as the step's own limits have it (see `prepareDriveline`).
 */
export function shaftTorques(job: Job, input_Nm: number): ShaftTorques[] {
  const { limits, noLoadDrag_Nm } = job.driveline;
  const beyondDrag_Nm = Math.max(0, input_Nm - noLoadDrag_Nm);
  return gearChoices(job).map((choice): ShaftTorques => {
    const left = inOneGear(job, choice);
    const perPropeller = inputPerNm(left, "propellerShaft_Nm");
    const perHalf = inputPerNm(left, "halfShaft_Nm");
    const propeller_Nm = noLoadDrag_Nm + (limits.propellerShaft_Nm ?? Number.POSITIVE_INFINITY) * perPropeller;
    const half_Nm = noLoadDrag_Nm + (limits.halfShaft_Nm ?? Number.POSITIVE_INFINITY) * perHalf;
    const inputAtLimit_Nm = Math.min(propeller_Nm, half_Nm);
    return {
      ...choice,
      propellerShaft_Nm: beyondDrag_Nm / perPropeller,
      halfShaft_Nm: beyondDrag_Nm / perHalf,
      ...(Number.isFinite(inputAtLimit_Nm) && {
        inputAtLimit_Nm,
        weakest: propeller_Nm <= half_Nm ? "propeller shaft" : "half-shaft",
      }),
    };
  });
}

/** Torque at the gearbox input beyond its drag for one newton metre in a shaft: the limit that a shaft of 1 Nm would set. */
function inputPerNm(job: Job, shaft: "propellerShaft_Nm" | "halfShaft_Nm"): number {
  const [gear] = prepareDriveline({ ...job, driveline: { ...job.driveline, limits: { [shaft]: 1 } } }).gears;
  return gear.drive_Nm - job.driveline.noLoadDrag_Nm;
}
