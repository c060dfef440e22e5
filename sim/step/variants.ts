import type { Trace } from "../trace/trace.ts";
import type { Model } from "./model.ts";
import { pass } from "./run.ts";
import { beginRun, createRunContext } from "./runContext.ts";
import { checkLedger, createTotals, resetTotals, type Totals } from "./totals.ts";

/**
 * Drives many variants of a car over one trace, each once from its pack's ceiling, and hands the totals of each to `take` with the
 * charge that it ended with. They are those of `run`: the same step, in memory that is used again, so that a variant allocates nothing
 * and what is not read of its totals before the next one is gone.
 *
 * Variants that share what they have in common (`prepare` with a car to be like) stay in the processor's cache.
 */
export function runVariants(
  models: readonly Model[],
  trace: Trace,
  take: (totals: Totals, endSoc_frac: number, index: number) => void,
): void {
  if (models.length === 0) return;
  const context = createRunContext(models[0], models[0].pack.ceiling_frac);
  const { state } = context;
  const totals = createTotals(state);
  for (let i = 0; i < models.length; i++) {
    beginRun(context, models[i], models[i].pack.ceiling_frac);
    resetTotals(totals, state);
    pass(context, totals, trace);
    checkLedger(totals.ledger);
    take(totals, state.pack.soc_frac, i);
  }
}
