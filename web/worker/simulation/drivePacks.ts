import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { type DriveReport, jobReport, type Trace } from "../../../sim/index.ts";
import type { LivingWorker } from "../livingWorker.ts";
import type { WorkerApi } from "../workerApi.ts";
import { sendTrace } from "./sendTrace.ts";

/** Drives all packs of a job over a road, in both workers where the second has nothing to do: a pack does not ask after the others. */
export async function drivePacks(
  first: LivingWorker<WorkerApi>,
  second: LivingWorker<WorkerApi>,
  job: Job,
  trace: Trace,
): Promise<DriveReport> {
  const drive = ({ ask }: LivingWorker<WorkerApi>, places: readonly number[]) =>
    ask(async (life) => {
      const packs = places.map((place) => job.packs[place]);
      return life.api.drive({ ...job, packs }, await sendTrace(life, trace));
    });
  const all = job.packs.map((_, place) => place);
  if (all.length === 1 || !second.isIdle()) return drive(first, all);
  const [mine, others] = inHalves(job.packs);
  const [one, other] = await Promise.all([drive(first, mine), drive(second, others)]);
  const candidates = all.map((place) =>
    mine.includes(place) ? one.candidates[mine.indexOf(place)] : other.candidates[others.indexOf(place)],
  );
  return jobReport(job, trace, candidates);
}

/** Places of packs in two halves that take about as long to drive: what a pack takes goes by how far it goes, and so by its size. */
export function inHalves(packs: readonly Pack[]): [number[], number[]] {
  const size = ({ seriesModules, parallelModules, whole }: Pack) =>
    whole?.energy_kWh ?? seriesModules * parallelModules;
  const halves: [number[], number[]] = [[], []];
  const sizes = [0, 0];
  const places = packs.map((_, place) => place).sort((a, b) => size(packs[b]) - size(packs[a]));
  for (const place of places) {
    const k = sizes[0] <= sizes[1] ? 0 : 1;
    halves[k].push(place);
    sizes[k] += size(packs[place]);
  }
  return halves;
}
