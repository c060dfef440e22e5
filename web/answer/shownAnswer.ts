import { failureWords } from "../../shared/failureWords.ts";
import {
  type Answer,
  answerFor,
  type ChargePlan,
  type CostPlan,
  type DriveReport,
  type InConditions,
  packsToSample,
  type SampledRange,
  scaledConditions,
  scaledUnknowns,
  type Unknown,
  type Use,
  type YearReport,
} from "../../sim/index.ts";
import { EmptyFields } from "../editing/emptied.ts";

/** A value of the page as it stands: not there yet, failed, or there, and late where it is being calculated again. */
export type Standing<T> =
  | { readonly state: "waiting" }
  | { readonly state: "failed"; readonly error: unknown }
  | { readonly state: "ready"; readonly value: T; readonly isLate: boolean };

/** The answer to show now. */
export interface ShownAnswer {
  readonly answer?: Answer;
  /** What of it is not calculated yet for what is in the job now: all of it, its bands, or nothing. */
  readonly late: "all" | "bands" | "none";
  /** Many variants of the packs whose verdict hangs on them are driven: it will not be another one. */
  readonly isSampled?: boolean;
  /** They are not yet, and there are such packs: a verdict may still become another one. */
  readonly isChecking?: boolean;
  /** Every evening of the year, and whether it is one of before a change. */
  readonly year?: YearReport;
  readonly isYearLate?: boolean;
  /** How long its packs take to charge, where that is calculated. */
  readonly charging?: ChargePlan;
  /** What its packs cost, where the job has prices. */
  readonly costs?: CostPlan;
  /** Why there is none, in a sentence, and whether asking again may help. */
  readonly failure?: { readonly words: string; readonly isEmpty: boolean };
}

/**
 * The answer from what stands: once the packs are driven it is there at once, with winters and bands of before the change scaled
 * to the new ranges until they are driven too; until the packs are driven again the one of before stays.
 */
export function shownAnswer(
  use: Standing<Use>,
  runs: Standing<Pick<DriveReport, "candidates">>,
  conditions: Standing<InConditions>,
  unknowns: Standing<readonly (readonly Unknown[])[]>,
  plan: Standing<ChargePlan> = { state: "waiting" },
  money: Standing<CostPlan | undefined> = { state: "waiting" },
  year: Standing<YearReport> = { state: "waiting" },
  sampled: Standing<readonly (SampledRange | undefined)[] | undefined> = { state: "waiting" },
): ShownAnswer {
  for (const each of [use, runs, conditions, unknowns]) {
    if (each.state !== "failed") continue;
    return { late: "all", failure: { words: failureWords(each.error), isEmpty: each.error instanceof EmptyFields } };
  }
  if (use.state !== "ready" || runs.state !== "ready" || conditions.state !== "ready") return { late: "all" };
  const { drives, today } = conditions.value;
  const candidates = scaledConditions(drives, today, runs.value.candidates);
  const beside = {
    ...(plan.state === "ready" && { charging: plan.value }),
    ...(money.state === "ready" && money.value && { costs: money.value }),
    ...(year.state === "ready" && { year: year.value, isYearLate: year.isLate }),
  };
  if (unknowns.state !== "ready")
    return { answer: answerFor(use.value, candidates, undefined), ...beside, late: "bands" };
  const isOld = unknowns.isLate || runs.isLate || conditions.isLate;
  const bands = isOld ? scaledUnknowns(unknowns.value, candidates) : unknowns.value;
  const ranges = isOld || sampled.state !== "ready" ? undefined : sampled.value;
  const answer = answerFor(use.value, candidates, bands, ranges);
  return {
    answer,
    ...beside,
    isSampled: ranges !== undefined,
    isChecking: ranges === undefined && packsToSample(answer).length > 0,
    late: runs.isLate ? "all" : isOld ? "bands" : "none",
  };
}

/** `shownAnswer`, for one page: while its packs are driven again, what stood before stands, and all of it is late. */
export function rememberAnswer(): typeof shownAnswer {
  let before: ShownAnswer | undefined;
  return (use, runs, ...others) => {
    const isDriving = use.state === "ready" && runs.state === "ready" && runs.isLate;
    if (!isDriving || !before?.answer) before = shownAnswer(use, runs, ...others);
    else if (before.late !== "all") before = { ...before, late: "all" };
    return before;
  };
}
