import { computed, type ReadonlySignal } from "@preact/signals-core";
import type { LogBench } from "../inputs/logBench.ts";
import type { Drive, PieceView } from "../worker/roadsApi.ts";

/** A cleaned log that lies on the bench, as the figures show it. */
export interface LogOnBench {
  readonly drive: Drive;
  /** Nothing while another part is being fetched, and where there is no trip. */
  readonly view: PieceView | undefined;
  readonly labels: Readonly<Record<number, string>>;
  readonly cutsEnds: boolean;
}

/** What the figures need of the bench, or nothing where no drive lies there. */
export function logOnBench(
  log: Pick<LogBench, "brought" | "view" | "labels" | "cutsEnds">,
): ReadonlySignal<LogOnBench | undefined> {
  return computed(() => {
    const outcome = log.brought.value?.outcome;
    if (outcome?.kind !== "drive") return undefined;
    return { drive: outcome, view: log.view.value, labels: log.labels.value, cutsEnds: log.cutsEnds.value };
  });
}
