import type { Origin } from "../../../shared/job/job.ts";
import { atPath, isAtOrBelow, withPath } from "../../../shared/job/path.ts";
import type { Part } from "../../../shared/parts/part.ts";
import type { PartOrigin } from "../../../shared/parts/partOrigin.ts";
import { withGroup } from "../../editing/groupEdits.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry } from "../../editing/listEdits.ts";
import { originInWords } from "../../fields/originText.ts";

/** A value of the job that somebody measured or looked up, and that a part would replace. */
export interface Replaced {
  readonly path: string;
  readonly from: Origin["from"];
  /** Whether the part has a figure in its place, so that the job's own can stay. */
  readonly canStay: boolean;
}

/** The measured values, and those from a handbook, that would go if the part took the place of the group at `path`. */
export function replacedBy(state: EditorState, path: string, part: Part<unknown>): Replaced[] {
  const found: Replaced[] = [];
  for (const [key, { from }] of Object.entries(state.job.origins)) {
    if ((from !== "measured" && from !== "handbook") || !isAtOrBelow(key, path)) continue;
    const before = atPath(state.job, key);
    const after = key === path ? part.data : atPath(part.data, key.slice(path.length + 1));
    if (before === undefined || JSON.stringify(before) === JSON.stringify(after)) continue;
    found.push({ path: key, from, canStay: key !== path && typeof before === typeof after });
  }
  return found;
}

/**
 * The state with a generic part's figures in the group at `path`, each said to be a usual value with the part's band.
 * Values at the paths in `kept` stay as they are. With `isAdded`, only what the part has is written over.
 */
export function takePart(
  state: EditorState,
  path: string,
  part: Part<unknown>,
  { kept = [], isAdded = false }: { kept?: readonly string[]; isAdded?: boolean } = {},
): EditorState {
  if (isAdded) {
    return Object.entries(part.data as Readonly<Record<string, unknown>>).reduce(
      (at, [key, value]) => withGroup(at, `${path}.${key}`, value, originsAt(part, key)),
      state,
    );
  }
  const data = kept.reduce(
    (at, key) => withPath(at, key.slice(path.length + 1), atPath(state.job, key)),
    structuredClone(part.data),
  );
  return withGroup(state, path, data, originsOf(part), kept);
}

/** The state with a part as one more entry of the list at `path`. */
export function takeIntoList(state: EditorState, path: string, part: Part<unknown>): EditorState {
  const list = atPath(state.job, path);
  const index = Array.isArray(list) ? list.length : 0;
  const longer = withEntry(state, path, index, part.data);
  return withGroup(longer, `${path}.${index}`, part.data, originsOf(part));
}

/** Where a part's values come from, in the job's own way: usual values, how far off, and the part's words as a note. */
export function originsOf(part: Part<unknown>): Record<string, Origin> {
  return Object.fromEntries(Object.keys(part.origins).map((key) => [key, jobOrigin(part, key)]));
}

function originsAt(part: Part<unknown>, key: string): Record<string, Origin> {
  const below = Object.keys(part.origins).filter((each) => isAtOrBelow(each, key));
  return Object.fromEntries(below.map((each) => [each.slice(key.length + 1), jobOrigin(part, each)]));
}

function jobOrigin(part: Part<unknown>, key: string): Origin {
  const origin = part.origins[key];
  const plusMinus_frac = bandOf(origin, atPath(part.data, key));
  return {
    from: "usual",
    ...(plusMinus_frac !== undefined && { plusMinus_frac }),
    note: `${originInWords(origin)}; “${part.title}”`,
  };
}

/** The wider half of the band as a share of the value; none for what is part of the description, such as a count. */
function bandOf({ low, high, plusMinus_frac }: PartOrigin, value: unknown): number | undefined {
  if (plusMinus_frac !== undefined) return plusMinus_frac;
  if (low === undefined || high === undefined) return 0;
  if (typeof value !== "number" || value === 0) return undefined;
  return Math.min(2, Number((Math.max(high - value, value - low) / Math.abs(value)).toPrecision(3)));
}
