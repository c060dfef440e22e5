import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { J_PER_WH, M_PER_KM } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";
import { adjustModel, noChange } from "../measured/adjustModel.ts";

/** An open car with its hood one way, and what the road then takes. */
export interface HoodState {
  readonly name: "hood up" | "hood down";
  readonly isAsSet: boolean;
  /** Absent where the car does not move. */
  readonly battery_Whpkm?: number;
}

/** The road driven with the hood up and down; nothing for a car of which no hood is known. */
export function hoodStates(job: Job, packIndex: number, trace: Trace): HoodState[] {
  const { hood } = job.vehicle;
  if (hood === undefined) return [];
  const model = prepare(job, job.packs[packIndex]);
  return [false, true].map((isDown): HoodState => {
    const other_ratio = isDown ? hood.downDrag_ratio : 1 / hood.downDrag_ratio;
    const drag_ratio = isDown === hood.isDown ? 1 : other_ratio;
    const { totals } = run(adjustModel(model, { ...noChange, drag_ratio }), trace);
    return {
      name: isDown ? "hood down" : "hood up",
      isAsSet: isDown === hood.isDown,
      ...(totals.distance_m > 0 && { battery_Whpkm: totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM) }),
    };
  });
}

/** What the hood saves up, or costs down, in a sentence; nothing without one. */
export function hoodWords(rows: readonly HoodState[]): Message | undefined {
  const of = (name: HoodState["name"]) => rows.find((row) => row.name === name)?.battery_Whpkm;
  const [up, down] = [of("hood up"), of("hood down")];
  if (up === undefined || down === undefined) return undefined;
  const more_Whpkm = down - up;
  if (Math.abs(more_Whpkm) < 0.005 * up)
    return message`On this road the hood, up or down, makes no difference that is felt.`;
  const share = q("fraction", Math.abs(more_Whpkm) / up, 2);
  return message`With the hood down the car takes ${q("energyUse", Math.abs(more_Whpkm), 2)} (${share}) ${more_Whpkm > 0 ? "more" : "less"} on this road than with it up; the faster the road, the more that is.`;
}
