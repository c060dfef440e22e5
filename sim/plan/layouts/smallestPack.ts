import type { Job } from "../../../shared/job/job.ts";
import { firstWhere } from "../../math/halving.ts";
import type { Trace } from "../../trace/trace.ts";
import { type Judged, judgePack } from "./judgePack.ts";
import type { Layouts } from "./layoutsOf.ts";
import { packRows, type SizedPack } from "./packRows.ts";

/** The smallest pack that meets what is asked, its neighbours, and what comes nearest where none does. */
export interface Smallest {
  readonly smallest?: Judged;
  /** The next smaller pack that fits the car, and the next larger one that meets what is asked as well. */
  readonly nextSmaller?: Judged;
  readonly nextLarger?: Judged;
  /** Where nothing meets it. */
  readonly nearest?: Judged;
  /** Packs that fit, and those of them that had to be driven. */
  readonly fitting: number;
  readonly driven: number;
}

/**
 * The smallest pack that meets what the job asks, by its energy when full. Along each number of modules in series it is found by halving,
 * as more strings go further, and the packs next to it in size are driven as well. Where a row's longest fails for another reason than its
 * kilometres (too heavy for the hill, say), each of the row is driven, since what more strings do there has no one direction.
 */
export function smallestPack(job: Job, trace: Trace, { all }: Pick<Layouts, "all">): Smallest {
  const rows = packRows(job, all);
  const known = new Map<SizedPack, Judged>();
  const judge = (sized: SizedPack) => {
    const judged = known.get(sized) ?? judgePack(job, sized.pack, trace);
    known.set(sized, judged);
    return judged;
  };
  const bySize = rows.flat().sort((a, b) => a.nominal_kWh - b.nominal_kWh);
  const first = rows.map((row) => firstMeeting(row, judge));
  const smallest = bySize.find((sized) => first.includes(sized));
  if (smallest === undefined) {
    const tried = [...known.values()];
    const nearest = tried.reduce<Judged | undefined>(
      (best, one) => (best && best.spare_km >= one.spare_km ? best : one),
      undefined,
    );
    return { ...(nearest && { nearest }), fitting: bySize.length, driven: known.size };
  }
  const below = bySize.filter(({ nominal_kWh }) => nominal_kWh < smallest.nominal_kWh).at(-1);
  const above = bySize.find((sized) => sized.nominal_kWh > smallest.nominal_kWh && judge(sized).meets);
  return {
    smallest: judge(smallest),
    ...(below && { nextSmaller: judge(below) }),
    ...(above && { nextLarger: judge(above) }),
    fitting: bySize.length,
    driven: known.size,
  };
}

/** The first pack of a row that meets what is asked. */
function firstMeeting(row: readonly SizedPack[], judge: (sized: SizedPack) => Judged): SizedPack | undefined {
  const last = judge(row[row.length - 1]);
  if (last.meets) return row[firstWhere(0, row.length - 1, (i) => judge(row[i]).meets)];
  return last.fails === "other" ? row.find((sized) => judge(sized).meets) : undefined;
}
