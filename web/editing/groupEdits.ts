import type { Origin } from "../../shared/job/job.ts";
import { isAtOrBelow, withPath } from "../../shared/job/path.ts";
import type { EditorState } from "./jobEditor.ts";

/** Origins by their path below a group: `torque_Nm`, `heat.cooling_WpK`. */
export type OriginsBelow = Readonly<Record<string, Origin>>;

/**
 * The state with another value in the place of the group at `path`. What was said and what waited at or below it goes,
 * save at the paths in `kept`, whose values the new group must already hold; `origins` says where the new values come from.
 */
export function withGroup(
  state: EditorState,
  path: string,
  value: unknown,
  origins: OriginsBelow = {},
  kept: readonly string[] = [],
): EditorState {
  const stays = (key: string) => !isAtOrBelow(key, path) || kept.includes(key);
  const added = Object.entries(origins)
    .map(([key, origin]) => [key === "" ? path : `${path}.${key}`, origin] as const)
    .filter(([key]) => !kept.includes(key));
  return {
    job: {
      ...withPath(state.job, path, value),
      origins: { ...filtered(state.job.origins, stays), ...Object.fromEntries(added) },
    },
    drafts: filtered(state.drafts, (key) => !isAtOrBelow(key, path)),
  };
}

/** The state without the group at `path`, and without what was said of it. */
export function withoutGroup(state: EditorState, path: string): EditorState {
  return withGroup(state, path, undefined);
}

function filtered<T>(record: Readonly<Record<string, T>>, stays: (key: string) => boolean): Record<string, T> {
  return Object.fromEntries(Object.entries(record).filter(([key]) => stays(key)));
}
