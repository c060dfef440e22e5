import type { Job, Origin } from "../../shared/job/job.ts";
import { withPath } from "../../shared/job/path.ts";
import type { Road } from "../../shared/job/schema/road.ts";
import type { EditorState } from "../editing/jobEditor.ts";
import { withoutEntry } from "../editing/listEdits.ts";
import type { MadeRoad } from "../worker/roads/roadsApi.ts";

/** Beginnings of ids, so that positions kept of a recorded road can never be taken for those of another kind. */
export type RoadOrigin = "log" | "typed" | "cycle";

/** An id that no road of the job has. */
export function freeRoadId(job: Job, kind: RoadOrigin): string {
  const taken = new Set(job.roads.map(({ id }) => id));
  let number = 1;
  while (taken.has(`${kind}-${number}`)) number += 1;
  return `${kind}-${number}`;
}

/** A road made, under the id that the job has free for it. */
export function namedRoad({ road }: MadeRoad, id: string): Road {
  return { ...road, id } as Road;
}

/** The state with a road more at the end of the list, and where it came from. */
export function withRoad(state: EditorState, road: Road, origin: Origin): EditorState {
  const { roads, origins } = state.job;
  return {
    ...state,
    job: {
      ...state.job,
      roads: [...roads, road],
      drivenRoad: road.id,
      origins: { ...origins, [`roads.${roads.length}`]: origin },
    },
  };
}

/** The state without a road, and without what was said of it. */
export function withoutRoad(state: EditorState, id: string): EditorState {
  const index = state.job.roads.findIndex((road) => road.id === id);
  if (index < 0) return state;
  const rest = withoutEntry(state, "roads", index);
  return rest.job.drivenRoad === id ? { ...rest, job: withPath(rest.job, "drivenRoad", undefined) } : rest;
}

/** Whether a road of the job was recorded by a log: measured, and said to be so. */
export function isFromLog(job: Job, id: string): boolean {
  const index = job.roads.findIndex((road) => road.id === id);
  return job.roads[index]?.kind === "trace" && job.origins[`roads.${index}`]?.from === "measured";
}
