import { atPath, withPath } from "../../shared/job/path.ts";
import type { EditorState } from "./jobEditor.ts";

/**
 * The state with an entry of the list at `path` taken out. Origins and drafts of later entries move up with them; those
 * of the entry itself go.
 */
export function withoutEntry(state: EditorState, path: string, index: number): EditorState {
  const list = listAt(state, path);
  const moved = (key: string) => moveKey(key, path, (at) => (at === index ? undefined : at > index ? at - 1 : at));
  return {
    job: { ...withPath(state.job, path, list.toSpliced(index, 1)), origins: renamed(state.job.origins, moved) },
    drafts: renamed(state.drafts, moved),
  };
}

/** The state with `entry` put into the list before `index`; with `like`, its origins are those of that entry. */
export function withEntry(state: EditorState, path: string, index: number, entry: unknown, like?: number): EditorState {
  const list = listAt(state, path);
  const moved = (key: string) => moveKey(key, path, (at) => (at >= index ? at + 1 : at));
  const origins = { ...renamed(state.job.origins, moved) };
  if (like !== undefined) {
    const from = `${path}.${like}.`;
    for (const [key, origin] of Object.entries(state.job.origins)) {
      if (key.startsWith(from)) origins[`${path}.${index}.${key.slice(from.length)}`] = origin;
    }
  }
  return {
    job: { ...withPath(state.job, path, list.toSpliced(index, 0, entry)), origins },
    drafts: renamed(state.drafts, moved),
  };
}

/** The state with an entry of the list at `path` put first; origins and drafts go with their entries. */
export function withFirst(state: EditorState, path: string, index: number): EditorState {
  const list = listAt(state, path);
  const moved = (key: string) => moveKey(key, path, (at) => (at === index ? 0 : at < index ? at + 1 : at));
  return {
    job: {
      ...withPath(state.job, path, [list[index], ...list.toSpliced(index, 1)]),
      origins: renamed(state.job.origins, moved),
    },
    drafts: renamed(state.drafts, moved),
  };
}

function listAt(state: EditorState, path: string): readonly unknown[] {
  const list = atPath(state.job, path);
  if (!Array.isArray(list)) throw new Error(`no list at ${path}`);
  return list;
}

function moveKey(key: string, path: string, move: (index: number) => number | undefined): string | undefined {
  if (!key.startsWith(`${path}.`)) return key;
  const [index, ...rest] = key.slice(path.length + 1).split(".");
  const moved = move(Number(index));
  return moved === undefined ? undefined : [path, moved, ...rest].join(".");
}

function renamed<T>(record: Readonly<Record<string, T>>, rename: (key: string) => string | undefined) {
  const entries: [string, T][] = [];
  for (const [key, value] of Object.entries(record)) {
    const name = rename(key);
    if (name !== undefined) entries.push([name, value]);
  }
  return Object.fromEntries(entries);
}
