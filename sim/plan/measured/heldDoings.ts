import { J_PER_WH } from "../../../shared/units.ts";
import type { Observations } from "./observations.ts";
import { type Doing, doings } from "./segments.ts";

/** What the drive drew while the car did one thing. */
export interface HeldDoing {
  readonly doing: Doing;
  readonly time_s: number;
  readonly measured_Wh: number;
  readonly predicted_Wh: number;
  readonly corrected_Wh: number;
}

/**
 * What was logged while the car stood, pulled away, cruised, climbed and braked, beside the energies of each segment by the prediction and by
 * the corrected car; what it never did is left out.
 */
export function heldDoings(
  { segments, time_s, energy_J }: Pick<Observations, "segments" | "time_s" | "energy_J">,
  predicted_J: ArrayLike<number>,
  corrected_J: ArrayLike<number>,
): HeldDoing[] {
  return doings.flatMap((doing): HeldDoing[] => {
    const sum = (column: ArrayLike<number>) =>
      segments.reduce((total, segment, s) => total + (segment.doing === doing ? column[s] : 0), 0);
    const lasted_s = sum(time_s);
    if (lasted_s === 0) return [];
    return [
      {
        doing,
        time_s: lasted_s,
        measured_Wh: sum(energy_J) / J_PER_WH,
        predicted_Wh: sum(predicted_J) / J_PER_WH,
        corrected_Wh: sum(corrected_J) / J_PER_WH,
      },
    ];
  });
}
