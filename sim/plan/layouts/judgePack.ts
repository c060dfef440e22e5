import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import { resultOf } from "../../math/resultOf.ts";
import type { Trace } from "../../trace/trace.ts";
import { SAMPLED } from "../answer/answerByDriving.ts";
import type { Band } from "../answer/band.ts";
import { CONDITIONS, conditionNames } from "../answer/conditions.ts";
import { packAnswer } from "../answer/packAnswer.ts";
import { sampledBand } from "../answer/sampledRange.ts";
import { driveInConditions } from "../conditions/driveConditions.ts";
import { driveCandidate } from "../drive/driveCandidate.ts";
import type { Candidate } from "../driveReport.ts";
import { sampleRange } from "../vary/sampleRange.ts";

/** A pack driven and compared with what is asked. */
export interface Judged {
  readonly pack: Pack;
  readonly candidate: Candidate;
  /** Kilometres left on coming home from the day, in the condition asked for; absent for a car that does not drive the road. */
  readonly left_km?: Band;
  readonly meets: boolean;
  /** What it fails by where it does: too few kilometres, or something that more of them do not mend. */
  readonly fails?: "distance" | "other";
  /** By how much it is on the right side of what is asked, in km; minus infinity for a car that does not drive the road. */
  readonly spare_km: number;
  /** What it fails on, or with how much to spare it does not. */
  readonly why: Message;
}

/** The day that is asked for, in km: the usual one, or the longest where the job has one. */
export function askedDay_km({
  sizing,
  usualDay_km,
  longestDay_km,
}: Pick<Job, "sizing" | "usualDay_km" | "longestDay_km">): number {
  return sizing.day === "longest" ? (longestDay_km ?? usualDay_km) : usualDay_km;
}

/** One pack over the road, compared with the job's requirement. */
export function judgePack(job: Job, pack: Pack, trace: Trace): Judged {
  const { condition, reserve_km = 0 } = job.sizing;
  const { conditions } = job;
  // Conditions of the workshop's own are not what is asked here.
  const one: Job = { ...job, packs: [pack], ...(conditions && { conditions: { ...conditions, others: [] } }) };
  const candidate = {
    ...driveCandidate(one, pack, trace, false),
    ...(condition !== "new" && { conditions: driveInConditions(one, pack, trace) }),
  };
  const base = { pack, candidate };
  const plain = packAnswer(one, 0, candidate, undefined);
  // That it stands in a harder condition than the one asked for is no reason against it.
  const fails = plain.failsIn;
  const failing = fails && CONDITIONS.indexOf(fails.condition) <= CONDITIONS.indexOf(condition) ? fails.why : undefined;
  const against = plain.stop?.sentence ?? plain.cannot ?? failing ?? plain.unmet[0];
  if (against !== undefined || !plain.range)
    return {
      ...base,
      meets: false,
      fails: "other",
      spare_km: Number.NEGATIVE_INFINITY,
      why: against ?? message`It has no range.`,
    };
  const day_km = askedDay_km(job);
  // What does not do it as taken does not do it with the whole band either, and is not driven through that.
  const isBanded = job.sizing.sure === "wholeBand" && plain.range[condition].value - day_km >= reserve_km;
  const { value, low, high } = isBanded
    ? sampledBand(plain.range[condition].value, resultOf(sampleRange(one, 0, trace, condition, SAMPLED)))
    : plain.range[condition];
  const left_km = { value: value - day_km, low: low - day_km, high: high - day_km };
  const counted_km = left_km.low;
  const spare_km = counted_km - reserve_km;
  if (isBanded && low === 0) {
    const why = message`With the worst that is not known, the car does not drive this road.`;
    return { ...base, left_km, meets: false, fails: "other", spare_km, why };
  }
  const why = dayWords(job, counted_km, spare_km, isBanded);
  return { ...base, left_km, meets: spare_km >= 0, ...(spare_km < 0 && { fails: "distance" }), spare_km, why };
}

/** The day and the condition with what is left of it: as taken, or in all but five of a hundred cases of what is not known. */
function dayWords(job: Job, counted_km: number, spare_km: number, isBanded: boolean): Message {
  const { sizing } = job;
  const { day, condition, reserve_km = 0 } = sizing;
  const name = day === "longest" && job.longestDay_km !== undefined ? "longest day" : "usual day";
  const worst = isBanded ? " in 95 of 100 cases" : "";
  const left =
    counted_km < 0
      ? message`ends ${whole("distance", -counted_km, "up")} short`
      : message`ends with ${whole("distance", counted_km)} left`;
  const reserve =
    spare_km < 0 && counted_km >= 0 ? message`, and ${q("distance", reserve_km)} are asked for` : message``;
  return message`The ${name} of ${q("distance", askedDay_km(job))} ${left}${worst}, ${conditionNames[condition]}${reserve}.`;
}
