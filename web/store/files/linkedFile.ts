import type { FileCopy, JobHead } from "../database/jobRecord.ts";

/** What this needs of a file handle that a browser hands out; the permission calls are missing in some. */
export interface FileHandle {
  readonly name: string;
  getFile(): Promise<{ readonly lastModified: number; text(): Promise<string> }>;
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
  queryPermission?(wish: { readonly mode: "readwrite" }): Promise<PermissionState>;
  requestPermission?(wish: { readonly mode: "readwrite" }): Promise<PermissionState>;
}

/** How the open job stands with the file it is linked to. */
export type LinkState =
  | { readonly kind: "none" }
  | { readonly kind: "linked"; readonly name: string; readonly savedAt_ms?: number }
  /** The browser wants to be asked again, which takes a click. */
  | { readonly kind: "asks"; readonly name: string }
  /** Somebody else wrote the file since; nothing is written over it until the person says so. */
  | { readonly kind: "changedOutside"; readonly name: string }
  | { readonly kind: "failed"; readonly name: string; readonly message: string };

/** What came of writing a linked file; `copy` goes into the job's head. */
export interface LinkOutcome {
  readonly state: LinkState;
  readonly copy?: FileCopy;
}

/**
 * Writes a job's text to the file it is linked to and reads it back. Not done without permission, nor over a file whose
 * date is not the one of our last writing (unless `isForced`); the file already holding this very text is no conflict.
 */
export async function writeLinkedFile(
  handle: FileHandle,
  head: JobHead,
  text: string,
  now_ms: number,
  isForced: boolean,
): Promise<LinkOutcome> {
  const { name } = handle;
  try {
    const permission = await handle.queryPermission?.({ mode: "readwrite" });
    if (permission !== undefined && permission !== "granted") return { state: { kind: "asks", name } };
    const before = await handle.getFile();
    const known_ms = head.file?.fileDate_ms;
    if (!isForced && known_ms !== undefined && before.lastModified !== known_ms && (await before.text()) !== text) {
      return { state: { kind: "changedOutside", name } };
    }
    const writable = await handle.createWritable();
    await writable.write(text);
    await writable.close();
    const after = await handle.getFile();
    if ((await after.text()) !== text) {
      return { state: { kind: "failed", name, message: "what is in the file is not what was written" } };
    }
    const copy: FileCopy = { name, savedAt_ms: now_ms, editCount: head.editCount, fileDate_ms: after.lastModified };
    return { state: { kind: "linked", name, savedAt_ms: now_ms }, copy };
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    return { state: { kind: "failed", name, message } };
  }
}

/** Whether something that came out of the database still works as a file handle. */
export function isFileHandle(value: unknown): value is FileHandle {
  if (typeof value !== "object" || value === null) return false;
  const { name, getFile, createWritable } = value as Partial<Record<keyof FileHandle, unknown>>;
  return typeof name === "string" && typeof getFile === "function" && typeof createWritable === "function";
}

/** The link in words. */
export function linkSentence(link: LinkState, clock: (at_ms: number) => string): string {
  switch (link.kind) {
    case "none":
      return "This job is not kept in a file.";
    case "linked":
      return link.savedAt_ms === undefined
        ? `This job is saved to ${link.name}.`
        : `Saved to ${link.name} at ${clock(link.savedAt_ms)}.`;
    case "asks":
      return `The browser wants to be asked again before it writes to ${link.name}.`;
    case "changedOutside":
      return `${link.name} was changed by somebody else since; nothing is written over it.`;
    case "failed":
      return `Could not save to ${link.name}: ${link.message}.`;
  }
}
