import type { Pack } from "../../../shared/job/schema/battery.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import type { Layout } from "./layoutsOf.ts";
import { type FitJob, tooMuchMass } from "./ruledOut.ts";

/** A pack and its energy when full. */
export interface SizedPack {
  readonly pack: Pack;
  readonly nominal_kWh: number;
}

/**
 * The packs among which the smallest is sought, row by row, each from its smallest: the layouts that fit, a row for each number of modules
 * in series; or, where the job's packs are all given whole, kilowatt-hour by kilowatt-hour up to twice the largest.
 */
export function packRows(job: FitJob, layouts: readonly Layout[]): SizedPack[][] {
  const { packs } = job;
  const whole = packs.flatMap((pack) => (pack.whole === undefined ? [] : [{ ...pack, whole: pack.whole }]));
  if (whole.length === packs.length) return wholePacks(job, whole);
  const rows = new Map<number, SizedPack[]>();
  for (const { pack, figures, out } of layouts) {
    if (out !== undefined) continue;
    const row = rows.get(pack.seriesModules) ?? [];
    rows.set(pack.seriesModules, [...row, { pack, nominal_kWh: figures.nominal_kWh }]);
  }
  return [...rows.values()];
}

/** Each kilowatt-hour is driven, not each tenth: nobody quotes a pack that is not made of modules more finely. */
function wholePacks(
  job: FitJob,
  packs: readonly (Pack & { readonly whole: NonNullable<Pack["whole"]> })[],
): SizedPack[][] {
  const [like] = packs;
  const most_kWh = Math.ceil(2 * Math.max(...packs.map(({ whole }) => whole.energy_kWh)));
  const each = Array.from({ length: most_kWh }, (_, i) => {
    const whole = { ...like.whole, energy_kWh: i + 1 };
    return { pack: { ...like, name: `${i + 1} kWh`, whole }, nominal_kWh: i + 1 };
  });
  const fitting = each.filter(({ pack }) => !tooMuchMass(job, pack, { mass_kg: packMass_kg(pack, job.module) }));
  return fitting.length > 0 ? [fitting] : [];
}
