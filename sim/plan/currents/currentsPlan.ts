import type { Job } from "../../../shared/job/job.ts";
import { lookUp } from "../../math/uniformTable.ts";
import { prepare } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { type Cable, cableFor } from "./cable.ts";
import { drivenLow, hillTrace, type LongHill, longHillOf } from "./courses.ts";
import { type CurrentCurve, type CurrentPoint, currentCurve, greatestOf } from "./currentCurve.ts";
import { type Fuse, fuseFor } from "./fuse.ts";
import { type PreChargeChoice, preChargeShelf } from "./preChargeShelf.ts";

/** There and back, where nobody has measured it: a pack at the back and a controller in front. Assumed. */
const CABLE_m = 6;
/** What the usual insulation of a flexible cable stands for hours. Common practice, no source. */
const CONDUCTOR_degC = 70;

/** Currents of one pack over the road and the long hill, and what they mean for what carries them. */
export interface CurrentsPlan {
  readonly pack: string;
  readonly road: CurrentCurve;
  readonly hill: CurrentCurve;
  readonly longHill: LongHill;
  /** The greater of the two at each duration: what the parts are chosen by. */
  readonly greatest: readonly CurrentPoint[];
  /** Whether the job knows the motor's current. */
  readonly hasMotorCurrent: boolean;
  readonly full_V: number;
  /** The most that a short circuit behind the modules gives: full volts over their resistance, leads left out. */
  readonly shortCircuit_A: number;
  readonly strings: number;
  /** What pack and controller allow, whatever the road asks. */
  readonly packContinuous_A: number;
  readonly packPeak_A: number;
  readonly controller_A?: number;
  readonly fuse: Fuse;
  readonly cable: Cable;
  readonly cable_m: number;
  readonly conductor_degC: number;
  readonly isLengthAssumed: boolean;
  readonly isCableFitted: boolean;
  readonly preCharge: PreChargeChoice;
  /** The car falls so far behind on the road that its currents are not those of the road. */
  readonly isBehind: boolean;
}

/** The currents of a job's pack, driven over a road and up the long hill with a low pack. */
export function currentsPlan(job: Job, packIndex: number, trace: Trace): CurrentsPlan {
  const pack = job.packs[packIndex];
  const model = prepare(job, pack);
  const longHill = longHillOf(job);
  const onRoad = drivenLow(model, trace);
  const road = currentCurve(job, model, onRoad);
  const hill = currentCurve(job, model, drivenLow(model, hillTrace(longHill)));
  const greatest = greatestOf([road, hill]);
  const fuse = fuseFor(greatest);
  const wiring = job.wiring ?? {};
  const cable_m = wiring.cable_m ?? CABLE_m;
  const conductor_degC = wiring.conductor_degC ?? CONDUCTOR_degC;
  const full_V = model.pack.max_V;
  const { current_A } = job.controller;
  const last = onRoad.length - 1;
  return {
    pack: pack.name,
    road,
    hill,
    longHill,
    greatest,
    hasMotorCurrent: job.motor.fullCurrent_A !== undefined,
    full_V,
    shortCircuit_A: full_V / lookUp(model.pack.resistance_ohm, 1),
    strings: pack.whole ? 1 : pack.parallelModules,
    packContinuous_A: model.pack.discharge.continuous_A,
    packPeak_A: model.pack.discharge.peak_A,
    ...(current_A !== undefined && { controller_A: current_A }),
    fuse,
    cable: cableFor({
      carries_A: fuse.rating_A,
      steady_A: greatest[greatest.length - 1].battery_A,
      peak_A: greatest[0].battery_A,
      length_m: cable_m,
      conductor_degC,
      fitted_mm2: wiring.cable_mm2,
    }),
    cable_m,
    conductor_degC,
    isLengthAssumed: wiring.cable_m === undefined,
    isCableFitted: wiring.cable_mm2 !== undefined,
    preCharge: preChargeShelf({
      source_V: full_V,
      capacitance_uF: wiring.capacitance_uF,
      fitted_ohm: wiring.precharge_ohm,
      load_W: wiring.prechargeLoad_W,
      loadWakes_V: wiring.loadWakes_V ?? job.controller.min_V,
    }),
    isBehind: last < 1 || onRoad.distance_m[last] < 0.9 * targetDistance_m(trace),
  };
}

function targetDistance_m({ time_s, speed_mps }: Trace): number {
  let sum_m = 0;
  for (let i = 1; i < time_s.length; i++)
    sum_m += 0.5 * (speed_mps[i] + speed_mps[i - 1]) * (time_s[i] - time_s[i - 1]);
  return sum_m;
}
