import type { Job } from "../../../shared/job/job.ts";
import { reportOf, type Trace } from "../../../sim/index.ts";
import type { SimulationApi } from "../api.ts";
import type { Life, LivingWorker } from "../livingWorker.ts";
import type { WorkerApi } from "../workerApi.ts";
import { askAbout } from "./askAbout.ts";
import { oneOfAKind } from "./oneOfAKind.ts";
import { inOrder, sharePacks } from "./sharePacks.ts";

/** What is not of the answer begins when nothing was changed for so long: before that the processor is wanted for driving and drawing. */
const REST_ms = 250;
/** The year begins later, so that what the verdict waits for is before it in its worker. */
const YEAR_REST_ms = 800;
/** Many variants are driven where the page is left as it is: they make a verdict surer that stands already. */
const SAMPLES_REST_ms = 1500;

/**
 * The simulation in two workers: one for what follows every key, one for studies of many drives, so that the first never
 * waits for the second. The second takes a share of the first one's packs while it has nothing to do. One question of a kind is with a worker at a time; of those that wait, the newest counts.
 *
 * Conditions are driven once the frame with the packs as driven today is painted (`afterFrame`): beside it they would take from it
 * the processor that the two of them share.
 */
export function startSimulation(
  drives: LivingWorker<WorkerApi>,
  studies: LivingWorker<WorkerApi>,
  afterFrame: () => Promise<void>,
): SimulationApi {
  const ask = oneOfAKind();
  const atRest = oneOfAKind(REST_ms);
  const afterStudies = oneOfAKind(YEAR_REST_ms);
  const afterAll = oneOfAKind(SAMPLES_REST_ms);
  /** Asks about every pack of a job: the worker for what follows every key, with the other one's help where that has nothing to do. */
  const byBoth = async <T>(
    job: Job,
    trace: Trace,
    question: (life: Life<WorkerApi>, packIndexes: readonly number[], traceId: number) => Promise<readonly T[]>,
  ): Promise<T[]> => {
    const workers = studies.isFree() ? [drives, studies] : [drives];
    const parts = sharePacks(job.packs, workers.length);
    const found = parts.map((packs, i) =>
      workers[i].ask((life) => askAbout(life, trace, (id) => question(life, packs, id))),
    );
    return inOrder(parts, await Promise.all(found));
  };
  return {
    road: (road) => ask("road", () => drives.ask(({ api }) => api.road(road))),
    drive: (job, trace) =>
      ask("drive", async () =>
        reportOf(job, trace, await byBoth(job, trace, ({ api }, packs, id) => api.drive(job, packs, id))),
      ),
    conditions: (job, trace) =>
      ask("conditions", async () => {
        await afterFrame();
        return byBoth(job, trace, ({ api }, packs, id) => api.conditions(job, packs, id));
      }),
    yearRanges: (job, trace) =>
      afterStudies("year", () => studies.ask((life) => askAbout(life, trace, (id) => life.api.yearRanges(job, id)))),
    weeks: (job, packIndexes) => afterStudies("weeks", () => studies.ask(({ api }) => api.weeks(job, packIndexes))),
    steady: (job, speeds_kmh) => atRest("steady", () => drives.ask(({ api }) => api.steady(job, speeds_kmh))),
    motorSurface: (job, packIndex) =>
      ask("motorSurface", () => drives.ask(({ api }) => api.motorSurface(job, packIndex))),
    gearbox: (job, packIndex, trace) =>
      atRest("gearbox", () =>
        drives.ask((life) => askAbout(life, trace, (id) => life.api.gearbox(job, packIndex, id))),
      ),
    heatLines: (job, packIndex, trace, hill) =>
      atRest("heatLines", () =>
        drives.ask((life) => askAbout(life, trace, (id) => life.api.heatLines(job, packIndex, id, hill))),
      ),
    currents: (job, packIndex, trace) =>
      atRest("currents", () =>
        drives.ask((life) => askAbout(life, trace, (id) => life.api.currents(job, packIndex, id))),
      ),
    packStudy: (job, trace) =>
      atRest("packStudy", () => studies.ask((life) => askAbout(life, trace, (id) => life.api.packStudy(job, id)))),
    daysFailed: (job, trace) =>
      atRest("daysFailed", () => studies.ask((life) => askAbout(life, trace, (id) => life.api.daysFailed(job, id)))),
    packLife: (job, packIndex, trace) =>
      atRest("packLife", () =>
        studies.ask((life) => askAbout(life, trace, (id) => life.api.packLife(job, packIndex, id))),
      ),
    sampleRanges: (job, packIndexes, trace) =>
      afterAll("sampleRanges", () =>
        studies.ask((life) => askAbout(life, trace, (id) => life.api.sampleRanges(job, packIndexes, id))),
      ),
    // Not one at a time: the worker gives an older draw up for a newer one, between two of its slices.
    vary: (job, packIndex, trace, draw) =>
      studies.ask((life) => askAbout(life, trace, (id) => life.api.vary(job, packIndex, id, draw))),
    unknowns: (job, packIndexes, trace) =>
      atRest("unknowns", () =>
        studies.ask((life) => askAbout(life, trace, (id) => life.api.unknowns(job, packIndexes, id))),
      ),
  };
}
