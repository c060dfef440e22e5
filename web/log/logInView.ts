import { computed, type ReadonlySignal } from "@preact/signals-core";
import type { Drive, PieceView } from "../worker/roads/roadsApi.ts";
import type { LogStaging } from "./logStaging.ts";

/** A cleaned log that is staged, as the figures show it. */
export interface LogInView {
  readonly drive: Drive;
  /** Nothing while another part is being fetched, and where there is no trip. */
  readonly view: PieceView | undefined;
  readonly labels: Readonly<Record<number, string>>;
  readonly cutsEnds: boolean;
}

/** What the figures need of the staging, or nothing where no drive lies there. */
export function logInView(
  logNow: () => Pick<LogStaging, "brought" | "view" | "labels" | "cutsEnds">,
): ReadonlySignal<LogInView | undefined> {
  return computed(() => {
    const log = logNow();
    const outcome = log.brought.value?.outcome;
    if (outcome?.kind !== "drive") return undefined;
    return { drive: outcome, view: log.view.value, labels: log.labels.value, cutsEnds: log.cutsEnds.value };
  });
}
