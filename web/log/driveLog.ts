import type { Origin } from "../../shared/job/job.ts";
import { formatNumber } from "../../shared/quantity/formatNumber.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../shared/units.ts";
import type { EditorState, JobEditor } from "../editing/jobEditor.ts";
import type { Drive } from "../worker/roads/roadsApi.ts";
import { longestDay, medianDay, pieceChoices } from "./logPieces.ts";
import type { LogStaging } from "./logStaging.ts";
import { problemWords, repairWords } from "./logText.ts";
import { freeRoadId, namedRoad, withRoad } from "./takeRoad.ts";

/**
 * Drives a log as soon as it is cleaned, so that dropping it is answered by a verdict: its usual day becomes the road that is
 * driven and, where it has several days, the usual and the longest day of the job. One step, which is undone as one.
 */
export async function driveLog(
  log: Pick<LogStaging, "make" | "piece" | "view" | "keep" | "done" | "refused">,
  drive: Drive,
  jobEditor: JobEditor,
): Promise<void> {
  const units = jobEditor.job.peek().units;
  const piece = pieceChoices(drive, units).find(({ key }) => key === log.piece.peek());
  if (!piece || jobEditor.isLooking.peek()) return;
  const made = await log.make((roads) => roads.roadOf(piece.key, piece.title));
  if (!made) return;
  const road = namedRoad(made, freeRoadId(jobEditor.job.peek(), "log"));
  const problems = jobEditor.change("Log driven", (state) => withDays(withRoad(state, road, logOrigin(drive)), drive), [
    road,
  ]);
  if (problems.length > 0) {
    log.refused.value = problems.map(problemWords);
    return;
  }
  const { track, tripRows } = log.view.peek()?.piece === piece.key ? (log.view.peek() ?? noTrack) : noTrack;
  log.done.value = doneWords(drive, road.title, units);
  await log.keep.track(road.id, track && { ...track, tripRows });
}

const noTrack = { track: undefined, tripRows: [] };

/** What was done to the log, in counts: neither names, days nor clocks go into the job file. */
export function logOrigin({ quality, repairs }: Drive): Origin {
  const kinds = repairs.map(({ kind }) => repairWords[kind].toLowerCase());
  const bridged = formatNumber(100 * quality.bridged_frac, 2);
  const note = `recorded by a logger, quality ${quality.verdict}, ${bridged} % bridged; ${kinds.join(", ") || "nothing mended"}`;
  return { from: "measured", note: note.slice(0, 500) };
}

/** Days of a log as the job keeps them, to 0.1 km; nothing where there is one day only, which may be any. */
function daysOf(drive: Drive): { readonly usual_km: number; readonly longest_km: number } | undefined {
  const [usual, longest] = [medianDay(drive), longestDay(drive)];
  if (!usual || !longest || drive.days.filter(({ trips }) => trips > 0).length < 2) return undefined;
  const km = (distance_m: number) => Math.round((10 * distance_m) / M_PER_KM) / 10;
  return { usual_km: km(usual.distance_m), longest_km: km(longest.distance_m) };
}

/** The state with the log's days; a longest day that the client named is kept where it is longer. */
function withDays(state: EditorState, drive: Drive): EditorState {
  const days = daysOf(drive);
  if (!days) return state;
  const { usualDay_km: _usual, longestDay_km: _longest, ...drafts } = state.drafts;
  const measured: Origin = { from: "measured", note: "the days of a log" };
  const isLonger = days.longest_km > (state.job.longestDay_km ?? 0);
  return {
    job: {
      ...state.job,
      usualDay_km: days.usual_km,
      ...(isLonger && { longestDay_km: days.longest_km }),
      origins: { ...state.job.origins, usualDay_km: measured, ...(isLonger && { longestDay_km: measured }) },
    },
    drafts,
  };
}

function doneWords(drive: Drive, title: string, units: UnitHabit): string {
  const days = daysOf(drive);
  const usual = days ? `, and the usual day is ${writeQuantity("distance", days.usual_km, units)}` : "";
  return `“${title}” is driven now${usual}. Undo goes back to what was before.`;
}
