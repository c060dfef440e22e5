import { computed, effect } from "@preact/signals-core";
import type { JobEditor } from "../editing/jobEditor.ts";
import type { Track } from "../store/database/jobRecord.ts";
import type { CurrentJob } from "../store/openJob.ts";
import type { LogStaging } from "./logStaging.ts";
import { isFromLog } from "./takeRoad.ts";

/** What this needs of the jobs in the browser. */
interface TrackKeeper {
  readonly current: { readonly value: CurrentJob | undefined };
  putTrack(roadId: string, track: Track): Promise<void>;
  readTrack(roadId: string): Promise<Track | undefined>;
}

/**
 * Keeps positions of recorded roads in the browser's database, and brings those of the road in view. They are never part
 * of the job: a road whose positions are not here says so.
 */
export function keepTracks(
  view: { readonly staging: { readonly log: LogStaging }; readonly roadId: { readonly value: string } },
  jobEditor: JobEditor,
  jobs: TrackKeeper,
): () => void {
  const look = async (log: LogStaging, id: string, jobId: string | undefined): Promise<void> => {
    const stored = jobId === undefined ? undefined : await jobs.readTrack(id).catch(() => undefined);
    if (view.roadId.value !== id || jobs.current.value?.id !== jobId) return;
    const track = stored &&
      stored.latitude_deg.length > 0 && {
        latitude_deg: stored.latitude_deg,
        longitude_deg: stored.longitude_deg,
        tripRows: stored.tripRows ?? [0],
      };
    log.kept.value = { roadId: id, ...(track && { track }) };
  };
  const wanted = computed(() => (isFromLog(jobEditor.job.value, view.roadId.value) ? view.roadId.value : undefined));
  return effect(() => {
    const { log } = view.staging;
    log.keep.track = async (id, track) => {
      await jobs.putTrack(id, {
        latitude_deg: track?.latitude_deg ?? new Float64Array(0),
        longitude_deg: track?.longitude_deg ?? new Float64Array(0),
        tripRows: track?.tripRows ?? [],
      });
      log.kept.value = { roadId: id, ...(track && { track }) };
    };
    const id = wanted.value;
    const jobId = jobs.current.value?.id;
    if (id === undefined) log.kept.value = undefined;
    else if (log.kept.peek()?.roadId !== id || log.kept.peek()?.track === undefined) void look(log, id, jobId);
  });
}
