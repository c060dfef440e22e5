import type { Job } from "../../../shared/job/job.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import { sineOf } from "../../math/slope.ts";
import { prepare } from "../../step/prepare.ts";
import { type GearChoice, gearChoices, inOneGear } from "../gears/oneGear.ts";
import { type StartTorque, startTorque } from "../going/startTorque.ts";
import { packLoads } from "../weight/weigh.ts";

/** What one gear has for a start, fully laden. */
export interface LadenRow extends GearChoice, Omit<StartTorque, "gear"> {
  /** At hand beyond what is needed, as a share of it; negative where it does not start. */
  readonly spare_frac: number;
}

/** The start on a hill with the car as heavy as its axle loads have it fully laden. */
export interface LadenStart {
  readonly mass_kg: number;
  readonly rows: readonly LadenRow[];
}

/** Less than this beside the load that is driven with is no other car. Assumed. */
const HEAVIER_kg = 20;

/**
 * The start on a slope in each gear, fully laden by the list of the axle loads; nothing where there is no such list, or where that is hardly
 * heavier than `mass_kg`, the car as driven. Grip goes by the axles of that state.
 */
export function ladenStart(job: Job, packIndex: number, grade_ratio: number, mass_kg: number): LadenStart | undefined {
  const { weights, vehicle } = job;
  const pack = job.packs[packIndex];
  if (weights === undefined) return undefined;
  const laden = packLoads(weights, pack.name, packMass_kg(pack, job.module)).find(({ name }) => name === "fully laden");
  const more_kg = (laden?.total_kg ?? 0) - mass_kg;
  if (laden === undefined || more_kg < HEAVIER_kg) return undefined;
  const { balance } = vehicle;
  const heavier: Job = {
    ...job,
    vehicle: {
      ...vehicle,
      load_kg: vehicle.load_kg + more_kg,
      ...(balance && { balance: { ...balance, frontShare_frac: laden.frontShare_frac } }),
    },
  };
  const sinSlope = sineOf(grade_ratio);
  const rows = gearChoices(job).map((choice): LadenRow => {
    const model = prepare(inOneGear(heavier, choice), pack);
    const { gear: _, ...start } = startTorque(model, model.gears[0], sinSlope);
    return { ...choice, ...start, spare_frac: start.available_Nm / start.needed_Nm - 1 };
  });
  return { mass_kg: laden.total_kg, rows };
}
