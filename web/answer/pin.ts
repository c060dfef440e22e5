import { decidingState } from "../../shared/job/decidingState.ts";
import { drivenRoad } from "../../shared/job/drivenRoad.ts";
import { decidingKeys, type Job, type Pinned } from "../../shared/job/job.ts";
import { isAtOrBelow } from "../../shared/job/path.ts";
import { type Message, message, messageIn, quantity as q } from "../../shared/quantity/message.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import type { Answer } from "../../sim/index.ts";
import type { EditorState } from "../editing/jobEditor.ts";

/** The state with itself pinned, its answer beside it. `at` is a moment as ISO 8601. */
export function withPin({ job, drafts }: EditorState, answer: Answer, at: string): EditorState {
  const pinned: Pinned = {
    at,
    state: decidingState(job),
    answer: {
      road: drivenRoad(job).title,
      packs: answer.packs.map(({ name, verdict, left }) => ({
        name,
        ...(verdict && { verdict }),
        ...(left && { left_km: left }),
      })),
    },
  };
  return { job: { ...job, pinned }, drafts };
}

/** The state with the pinned one in its place, which stays pinned. Roads are the job's own: one that is gone is not driven again. */
export function backToPinned({ job, drafts }: EditorState): EditorState {
  const { pinned } = job;
  if (!pinned) return { job, drafts };
  const others: Record<string, unknown> = { ...job };
  for (const key of decidingKeys) delete others[key];
  const { drivenRoad: road, ...state } = pinned.state;
  const hasRoad = road !== undefined && job.roads.some(({ id }) => id === road);
  // Texts of what is not pinned, such as words for a road or a note, go on waiting in their fields.
  const isPinned = (path: string) => decidingKeys.some((key) => isAtOrBelow(path, key));
  const waiting = Object.entries(drafts).filter(([path]) => !isPinned(path));
  return {
    job: { ...others, ...state, ...(hasRoad && { drivenRoad: road }) } as Job,
    drafts: Object.fromEntries(waiting),
  };
}

/** The state with nothing pinned. */
export function unpinned({ job: { pinned: _pinned, ...job }, drafts }: EditorState): EditorState {
  return { job, drafts };
}

/** In which of the things that are talked about the pinned state differs, as it was there: "usual day 30 km". */
export function pinnedWords(job: Job, units: UnitHabit): string {
  const { pinned } = job;
  if (!pinned) return "";
  const { state } = pinned;
  const parts: Message[] = [];
  if (state.usualDay_km !== job.usualDay_km) parts.push(message`usual day ${q("distance", state.usualDay_km)}`);
  if (state.longestDay_km !== job.longestDay_km) {
    parts.push(
      state.longestDay_km ? message`longest day ${q("distance", state.longestDay_km)}` : message`no longest day`,
    );
  }
  if (!isSame(state.year, job.year)) parts.push(message`other days in the year`);
  if (pinned.answer.road !== drivenRoad(job).title) parts.push(message`road: ${pinned.answer.road}`);
  if (state.vehicle.load_kg !== job.vehicle.load_kg) parts.push(message`load ${q("mass", state.vehicle.load_kg)}`);
  if (state.allowance.winter_ratio !== job.allowance.winter_ratio)
    parts.push(message`winter × ${state.allowance.winter_ratio}`);
  const [before, now] = [state.conditions?.winter, job.conditions?.winter];
  if (before && before.temperature_degC !== now?.temperature_degC)
    parts.push(message`winter at ${q("temperature", before.temperature_degC)}`);
  if (state.packs.map(({ name }) => name).join() !== job.packs.map(({ name }) => name).join())
    parts.push(message`other packs`);
  if (parts.length === 0) parts.push(isSame(decidingState(job), state) ? message`as it is now` : message`other values`);
  return parts.map((part) => messageIn(part, units)).join(", ");
}

function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
