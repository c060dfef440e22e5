import { type ReadonlySignal, signal } from "@preact/signals-core";
import { jobText } from "../../../shared/job/jobText.ts";
import type { JobStore } from "../database/jobStore.ts";
import type { JobShelf } from "../jobShelf.ts";
import type { Platform } from "../platform.ts";
import type { Saver } from "../saver.ts";
import { jobFileName } from "./jobFileName.ts";
import { type FileHandle, isFileHandle, type LinkState, writeLinkedFile } from "./linkedFile.ts";

/** A linked file is written this long after the database was, so that a word makes one writing and not ten. */
const PAUSE_BEFORE_FILE_ms = 2000;

/** Keeps the file on disk that the open job is linked to up with it. */
export interface FileLink {
  readonly state: ReadonlySignal<LinkState>;
  /** Takes up the link that was stored with a job, if there is one. */
  resume(saver: Saver): Promise<void>;
  /** The job is no longer the open one; its link stays stored. */
  rest(): void;
  /** The job was saved: the file follows after a pause, or at once where the page is about to go. */
  follow(isLeaving: boolean): void;
  choose(saver: Saver): Promise<void>;
  letGo(): Promise<void>;
  allow(): Promise<void>;
  overwrite(): Promise<void>;
}

export function fileLink(store: JobStore, world: Platform, shelf: JobShelf): FileLink {
  const state = signal<LinkState>({ kind: "none" });
  let linked: { readonly saver: Saver; readonly handle: FileHandle } | undefined;
  let cancel: (() => void) | undefined;

  const write = async (isForced: boolean): Promise<void> => {
    cancel?.();
    const mine = linked;
    if (!mine) return;
    const { saver, handle } = mine;
    const head = saver.head();
    const outcome = await writeLinkedFile(handle, head, jobText(saver.mine().job), world.now_ms(), isForced);
    if (linked !== mine) return;
    state.value = outcome.state;
    // Where the database refuses to remember the copy, its own status says so already.
    if (outcome.copy) await shelf.amend(head.id, { file: outcome.copy }).catch(() => {});
  };

  const rest = () => {
    cancel?.();
    linked = undefined;
    state.value = { kind: "none" };
  };

  return {
    state,
    rest,
    async resume(saver) {
      rest();
      const handle = await store.readHandle(saver.head().id);
      if (!isFileHandle(handle)) return;
      const permission = await handle.queryPermission?.({ mode: "readwrite" });
      const isAllowed = permission === undefined || permission === "granted";
      linked = { saver, handle };
      state.value = { kind: isAllowed ? "linked" : "asks", name: handle.name };
    },
    follow(isLeaving) {
      if (!linked) return;
      cancel?.();
      cancel = world.later(isLeaving ? 0 : PAUSE_BEFORE_FILE_ms, () => void write(false));
    },
    async choose(saver) {
      const name = jobFileName(saver.mine().job.title, new Date(world.now_ms()));
      const handle = await world.chooseFile?.(name);
      if (!handle) return;
      await saver.flush();
      await store.putHandle(saver.head().id, handle);
      linked = { saver, handle };
      await write(true);
    },
    async letGo() {
      const id = linked?.saver.head().id;
      rest();
      if (id !== undefined) await store.dropHandle(id);
    },
    async allow() {
      const permission = await linked?.handle.requestPermission?.({ mode: "readwrite" });
      if (permission === "granted") await write(false);
    },
    overwrite: () => write(true),
  };
}
