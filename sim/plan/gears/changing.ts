import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { J_PER_WH, M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import { standingStart, timeTo_s } from "../going/standingStart.ts";
import type { GearRow } from "./gearTable.ts";
import { gearName } from "./oneGear.ts";

/** The car with its gears changed by speed, as the job sets them. */
export interface Changing {
  readonly gears: readonly string[];
  readonly to50kmh_s?: number;
  readonly battery_Whpkm?: number;
  readonly missed_frac: number;
}

const START_s = 120;
const START_STEP_s = 0.05;
/** A change within this is none. Assumed. */
const SAME_frac = 0.01;

/** What changing gear does; nothing where the job leaves the car in one. */
export function changing(job: Job, packIndex: number, trace: Trace): Changing | undefined {
  const { shifting } = job.driveline;
  if (shifting.kind === "fixed") return undefined;
  const model = prepare(job, job.packs[packIndex]);
  const { totals } = run(model, trace);
  const to50kmh_s = timeTo_s(standingStart(model, START_s, START_STEP_s, job.controller.ramp_s), 50 * MPS_PER_KMH);
  return {
    gears: shifting.gears,
    ...(to50kmh_s !== undefined && { to50kmh_s }),
    ...(totals.distance_m > 0 && { battery_Whpkm: totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM) }),
    missed_frac: totals.target_m > 0 ? Math.max(0, 1 - totals.distance_m / totals.target_m) : 0,
  };
}

/** Changing against the one gear that is recommended, in a sentence; without one, nothing. */
export function changingWords(changed: Changing, recommended: GearRow | undefined): Message | undefined {
  const { gears, battery_Whpkm, to50kmh_s } = changed;
  if (recommended?.battery_Whpkm === undefined || battery_Whpkm === undefined) return undefined;
  const left = gearName(recommended);
  const between = `${gears.slice(0, -1).join(", ")} and ${gears.at(-1)}`;
  const share = battery_Whpkm / recommended.battery_Whpkm - 1;
  const energy =
    Math.abs(share) < SAME_frac
      ? message`takes the same energy on this road`
      : message`takes ${q("fraction", Math.abs(share), 2)} ${share < 0 ? "less" : "more"} energy on this road`;
  const start =
    to50kmh_s === undefined || recommended.to50kmh_s === undefined
      ? message``
      : message` and ${to50kmh_s.toFixed(1)} s instead of ${recommended.to50kmh_s.toFixed(1)} s to ${q("speed", 50)}`;
  return message`Against ${left} alone, changing between ${between} ${energy}${start}.`;
}
