import { probit } from "simple-statistics";
import type { Job } from "../../../shared/job/job.ts";
import { withPath } from "../../../shared/job/path.ts";
import type { Trace } from "../../trace/trace.ts";
import { type OpenValue, openValues } from "../unknowns.ts";
import { drawShares } from "./drawShares.ts";

/** How many variants, and which. */
export interface Draw {
  readonly variants: number;
  readonly seed: number;
}

/** Many variants of a job: all that is open of it drawn at once. */
export interface Variants {
  readonly count: number;
  readonly opens: readonly OpenValue[];
  /** For each of those its value in every variant. */
  readonly drawn: readonly (readonly number[])[];
  /** Energy that the road takes over that of the road as driven, in every variant; absent where no log leaves it open. */
  readonly roadEnergy_ratio?: readonly number[];
  jobAt(variant: number): Job;
}

/** Standard deviations beyond which a tenth of a normal distribution lies. */
const TENTH = 1.2816;

/**
 * Variants of a job: every value that nobody measured drawn from its band, evenly (assumed: nothing says where in it the value lies) and
 * independently of the others, with what the log leaves open of the road's energy as one more, as normal errors are.
 */
export function drawVariants(job: Job, trace: Trace, { variants, seed }: Draw): Variants {
  const opens = openValues(job);
  const road = trace.spread?.energy_ratio;
  const shares = drawShares(opens.length + (road ? 1 : 0), variants, seed);
  const drawn = opens.map(({ low, high }, k) => Array.from(shares[k], (share) => low + share * (high - low)));
  return {
    count: variants,
    opens,
    drawn,
    ...(road && { roadEnergy_ratio: Array.from(shares[opens.length], (share) => spreadAt(road, share)) }),
    jobAt: (variant) => opens.reduce((at, { path }, k) => withPath(at, path, drawn[k][variant]), job),
  };
}

/** A ratio of which a tenth of all draws lie below `low` and above `high`, at a share of them; each side is half of a normal distribution. */
function spreadAt({ low, high }: { readonly low: number; readonly high: number }, share: number): number {
  const deviations = probit(share) / TENTH;
  return 1 + (deviations < 0 ? 1 - low : high - 1) * deviations;
}
