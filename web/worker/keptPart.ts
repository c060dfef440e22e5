import { type ReadonlySignal, signal } from "@preact/signals-core";
import { failureWords } from "../../shared/failureWords.ts";
import { fetchPart } from "./fetchPart.ts";

/** A part of the page that is fetched once, when first needed, and kept. */
export interface KeptPart<T> {
  /** The part; nothing before it has come. */
  readonly part: ReadonlySignal<T | undefined>;
  /** Why it could not be had, in words. */
  readonly missing: ReadonlySignal<string | undefined>;
  /** Fetches it; rejects where it cannot be had, and tries again when next asked. */
  fetch(): Promise<T>;
}

/** Makes a part of the page of what loads it; nothing is loaded before it is asked for. */
export function keptPart<T>(load: () => Promise<T>): KeptPart<T> {
  const part = signal<T | undefined>(undefined);
  const missing = signal<string | undefined>(undefined);
  let coming: Promise<T> | undefined;
  const fetch = () => {
    coming ??= fetchPart(load).then(
      (loaded) => {
        part.value = loaded;
        return loaded;
      },
      (error: unknown) => {
        coming = undefined;
        missing.value = failureWords(error);
        throw error;
      },
    );
    return coming;
  };
  return { part, missing, fetch };
}
