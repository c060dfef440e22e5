import type { Job } from "../../../shared/job/job.ts";
import { Pack } from "../../../shared/job/schema/battery.ts";
import { layoutName } from "../../battery/layoutName.ts";

/** A pack of the job's modules in so many strings, its window, boxes and leads those of the first pack of the job that is made of modules. */
export function layoutPack(job: Pick<Job, "packs">, seriesModules: number, parallelModules: number): Pack {
  const like =
    job.packs.find(({ whole }) => whole === undefined) ?? Pack.parse({ name: "-", seriesModules, parallelModules });
  // What was quoted for that pack as a whole is no price of another one.
  const { cellPrice, ...rest } = like;
  const price = cellPrice && cellPrice.per !== "pack" ? { cellPrice } : {};
  return { ...rest, ...price, name: layoutName(seriesModules, parallelModules), seriesModules, parallelModules };
}

/** How many modules the largest layout that is looked at has: as asked, else twice those of the job's largest pack, 24 at least. */
export function modulesMost({ packs, sizing }: Pick<Job, "packs" | "sizing">): number {
  const largest = Math.max(...packs.map(({ seriesModules, parallelModules }) => seriesModules * parallelModules));
  return sizing.modulesMost ?? Math.min(400, Math.max(24, 2 * largest));
}
