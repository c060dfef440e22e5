import { type ReadonlySignal, type Signal, signal } from "@preact/signals-core";
import { failureWords, isForReader } from "../../shared/failureWords.ts";
import type { MeasuredOutcome, MeasuredRequest } from "../worker/roads/measuredApi.ts";
import type { RoadsApi } from "../worker/roads/roadsApi.ts";
import { problemWords } from "./logText.ts";

/** A built car's log that is compared with the job: looked at, and no part of the job. */
export interface MeasuredStaging {
  readonly work: ReadonlySignal<{ readonly words: string; readonly share_frac: number } | undefined>;
  readonly refused: Signal<readonly string[]>;
  readonly files: ReadonlySignal<readonly File[]>;
  readonly outcome: ReadonlySignal<MeasuredOutcome | undefined>;
  /** Which way the clock of volts and amps is off, where a person says by how much. */
  readonly way: Signal<"behind" | "ahead">;
  /** What it is compared with: a frozen prediction by its place, or the job as it is; the last prediction where nothing was chosen. */
  readonly against: Signal<number | "job" | undefined>;
  readonly done: Signal<string>;
  /** Compares logs with the job; without files those brought before. */
  hold(request: MeasuredRequest, files?: readonly File[]): Promise<void>;
  cancel(): void;
  putBack(): void;
  end(): void;
}

/** `roads` does the work, which takes some seconds. */
export function createMeasuredStaging(roads: Pick<RoadsApi, "measured" | "cancel">): MeasuredStaging {
  const work = signal<{ words: string; share_frac: number } | undefined>(undefined);
  const refused = signal<readonly string[]>([]);
  const files = signal<readonly File[]>([]);
  const outcome = signal<MeasuredOutcome | undefined>(undefined);
  const done = signal("");
  let wish = 0;

  return {
    work,
    refused,
    files,
    outcome,
    done,
    way: signal("behind"),
    against: signal(undefined),
    async hold(request, brought) {
      const mine = ++wish;
      const wanted = brought ?? files.peek();
      if (wanted.length === 0) return;
      work.value = { words: "Starting", share_frac: 0 };
      refused.value = [];
      done.value = "";
      const onProgress = (words: string, share_frac: number) => {
        if (mine === wish && work.peek()) work.value = { words, share_frac };
      };
      try {
        const answer = await roads.measured(wanted, request, onProgress);
        if (mine !== wish) return;
        if (answer.kind === "refused") refused.value = answer.problems.map(problemWords);
        else if (answer.kind === "cancelled") done.value = "Given up. What was here before is as it was.";
        else {
          files.value = wanted;
          outcome.value = answer.value;
        }
      } catch (error) {
        if (!isForReader(error)) globalThis.reportError?.(error);
        if (mine === wish) refused.value = [failureWords(error).replace(/\.$/, "")];
      }
      if (mine === wish) work.value = undefined;
    },
    cancel() {
      void roads.cancel();
    },
    putBack() {
      wish += 1;
      if (work.peek()) void roads.cancel();
      work.value = undefined;
      files.value = [];
      outcome.value = undefined;
      refused.value = [];
      done.value = "";
    },
    end() {
      wish += 1;
    },
  };
}
