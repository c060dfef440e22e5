import type { Job } from "../../../shared/job/job.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { gradeOf_ratio, sineOf } from "../../math/slope.ts";
import { prepare } from "../../step/prepare.ts";
import { rolling_N } from "../../vehicle/roadLoad.ts";
import { CLIMB_kmh, EASY_frac } from "../gears/gearTable.ts";
import { type GearChoice, gearChoices, inOneGear } from "../gears/oneGear.ts";
import { type StartTorque, startTorque, steepestStart } from "../going/startTorque.ts";
import { type Climb, climbHill, type Hill } from "./climb.ts";
import { type GripRow, gripOnHill } from "./gripOnHill.ts";
import { type LadenStart, ladenStart } from "./ladenStart.ts";

/** What one gear does on a hill. */
export interface HillRow extends GearChoice, Omit<StartTorque, "gear"> {
  /** At hand beyond what is needed, as a share of it; negative where it does not start. */
  readonly spare_frac: number;
  /** The steepest it starts on, as rise over run. */
  readonly steepest_ratio: number;
  readonly climb: Climb;
}

/** A hill, judged: the start in each gear, the climb, and what the tyres have to hold. */
export interface HillVerdict {
  readonly rows: readonly HillRow[];
  /** By driven axle; empty where nobody knows where the weight sits. */
  readonly grip: readonly GripRow[];
  readonly drivenAxle: Job["driveline"]["drivenAxle"];
  readonly mass_kg: number;
  /** The start fully laden, where the axle loads say that this is heavier. */
  readonly laden?: LadenStart;
}

/** Start and climb of one hill with one of a job's packs aboard, in each gear of the box. */
export function judgeHill(job: Job, packIndex: number, hill: Hill, speed_kmh = CLIMB_kmh): HillVerdict {
  const { grade_ratio } = hill;
  const sinSlope = sineOf(grade_ratio);
  const rows = gearChoices(job).map((choice): HillRow => {
    const left = inOneGear(job, choice);
    const model = prepare(left, job.packs[packIndex]);
    const [gear] = model.gears;
    const { gear: _, ...start } = startTorque(model, gear, sinSlope);
    const steepest = steepestStart(model, gear);
    const speed_mps = Math.min(speed_kmh * MPS_PER_KMH, EASY_frac * gear.top_mps);
    return {
      ...choice,
      ...start,
      spare_frac: start.available_Nm / start.needed_Nm - 1,
      steepest_ratio: gradeOf_ratio(steepest),
      climb: climbHill(left, model, hill, speed_mps),
    };
  });
  const { road, grip } = prepare(job, job.packs[packIndex]);
  const force_N =
    road.weight_N * sinSlope + rolling_N(road, 1e-6, Math.sqrt(1 - sinSlope * sinSlope)) + road.wheelDrag_N;
  const { balance } = job.vehicle;
  const laden = ladenStart(job, packIndex, grade_ratio, road.mass_kg);
  return {
    rows,
    grip: grip && balance ? gripOnHill(grip, balance.frontShare_frac, force_N, sinSlope) : [],
    drivenAxle: grip?.drivenAxle ?? job.driveline.drivenAxle,
    mass_kg: road.mass_kg,
    ...(laden && { laden }),
  };
}
