import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { peakTorque_Nm } from "../../../shared/job/peakTorque.ts";
import type { RecommendedLimit } from "./recommendLimit.ts";

/** A torque at the gearbox input, and whose it is. */
export interface Tried {
  readonly name: "old engine" | "as set" | "recommended" | "motor alone";
  readonly torque_Nm: number;
}

/** The torques at the gearbox input that a workshop compares, each figure once: the old engine's, the cap as set, that recommended, the motor's. */
export function torquesToCompare(job: Job, recommended: RecommendedLimit | undefined): Tried[] {
  const peak_Nm = peakTorque_Nm(job.motor.envelope);
  const { torqueCap_Nm } = job.controller;
  const named: readonly (readonly [Tried["name"], number | undefined])[] = [
    ["old engine", engineTorque_Nm(job)],
    ["as set", torqueCap_Nm === undefined ? undefined : Math.min(torqueCap_Nm, peak_Nm)],
    ["recommended", recommended?.torque_Nm],
    ["motor alone", peak_Nm],
  ];
  return named.flatMap(([name, torque_Nm], i) => {
    const isRepeated = i > 1 && named.slice(1, i).some(([, earlier_Nm]) => earlier_Nm === torque_Nm);
    return torque_Nm === undefined || isRepeated ? [] : [{ name, torque_Nm }];
  });
}
