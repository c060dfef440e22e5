import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { layoutName } from "../../battery/layoutName.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import { firstWhere } from "../../math/halving.ts";
import { prepare, prepareIn } from "../../step/prepare.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { ageOf } from "../conditions/condition.ts";
import { packFigures } from "../drive/packFigures.ts";
import { rangeOn } from "../going/range.ts";
import { rangeFrom_km } from "../going/rangeFrom.ts";
import { cellsOf } from "../money/quote.ts";
import type { Span } from "../money/span.ts";
import { agedAfter, LIFE_years, type PackUse, packUse, YEARS } from "./ageing.ts";

/** After how many years the job says what age makes of a resistance. */
const OLD_years = 10;

/** What takes the place of a pack's modules: modules of the same kind in the same layout, in its boxes. */
export interface NewModules {
  /** Absent for a pack that is given whole. */
  readonly count?: number;
  /** As the trade writes it; absent likewise. */
  readonly layout?: string;
  /** Without boxes; of a pack that is given whole, with them. */
  readonly mass_kg: number;
  /** At today's price, in the job's currency; absent where the job says none. */
  readonly cost?: Span;
  /** Of the whole pack, when full. */
  readonly full_V: number;
  readonly strings: number;
}

/** How long a pack does the usual day in winter, by the least and by the most that two published laws leave of it. */
export interface PackLife {
  readonly name: string;
  readonly day_km: number;
  /** Range in winter after each of the years that the table has. */
  readonly winter: readonly { readonly years: number; readonly low_km: number; readonly high_km: number }[];
  /** Whole years after which it does the day no more, by the least and by the most that is left of it: 0 where it does not when new, absent where it does after `LIFE_years`. */
  readonly earliest_years?: number;
  readonly latest_years?: number;
  readonly modules: NewModules;
}

/**
 * The life of one pack of a job on its usual days: driven in the job's winter until it is empty, aged by the laws of `agedAfter` to whole years.
 * Resistance grows by the law that has it, else evenly to what the job says of ten years (assumed). Nothing for a car that has no range.
 */
export function packLife(job: Job, packIndex: number, trace: Trace): PackLife | undefined {
  const pack = job.packs[packIndex];
  const model = prepare(job, pack);
  const fresh_km = rangeOn(model, trace).distance_m / M_PER_KM;
  if (fresh_km <= 0) return undefined;
  const use = packUse(job, pack, fresh_km, characteristics(trace).mean_mps / MPS_PER_KMH);
  const range_km = winterRanges(job, pack, use, trace);
  const day_km = job.usualDay_km;
  const failsAfter = (end: "low" | "high"): number | undefined => {
    const years = firstWhere(0, LIFE_years + 1, (at) => range_km(at, end) < day_km);
    return years > LIFE_years ? undefined : years;
  };
  const [earliest_years, latest_years] = [failsAfter("low"), failsAfter("high")];
  const figures = packFigures(pack, job.module, model.pack);
  const cost = cellsOf(pack.cellPrice ?? job.costs?.cells, pack, figures);
  const count = pack.seriesModules * pack.parallelModules;
  return {
    name: pack.name,
    day_km,
    winter: YEARS.map((years) => ({ years, low_km: range_km(years, "low"), high_km: range_km(years, "high") })),
    ...(earliest_years !== undefined && { earliest_years }),
    ...(latest_years !== undefined && { latest_years }),
    modules: {
      ...(pack.whole === undefined && { count, layout: layoutName(pack.seriesModules, pack.parallelModules) }),
      mass_kg: pack.whole === undefined ? count * job.module.mass_kg : packMass_kg(pack, job.module),
      ...(cost && { cost }),
      full_V: figures.max_V,
      strings: pack.whole === undefined ? pack.parallelModules : 1,
    },
  };
}

/** Range in winter after whole years by either end of the laws' band, each driven once; through the factor of the allowance where the job knows winter by that. */
function winterRanges(job: Job, pack: Pack, use: PackUse, trace: Trace) {
  const weather = job.conditions?.winter;
  const known = new Map<string, number>();
  const drive_km = (years: number, end: "low" | "high") => {
    const { capacity_frac, resistance_ratio } = agedAfter(job, pack, use, years);
    if (capacity_frac[end] <= 0) return 0;
    const byJob_ratio = 1 + ((ageOf(job).resistance_ratio - 1) * years) / OLD_years;
    const age = { capacity_frac: capacity_frac[end], resistance_ratio: resistance_ratio ?? byJob_ratio };
    const km = rangeFrom_km(prepareIn(job, pack, { ...(weather && { weather }), age }), trace);
    return weather ? km : km / job.allowance.winter_ratio;
  };
  return (years: number, end: "low" | "high"): number => {
    const key = `${years} ${end}`;
    const km = known.get(key) ?? drive_km(years, end);
    known.set(key, km);
    return km;
  };
}
