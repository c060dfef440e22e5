import type { Job } from "../../shared/job/job.ts";
import { quantity as q, type Said, say } from "../../shared/quantity/said.ts";
import type { Candidate, Enough } from "./driveReport.ts";

/** Share of the road that a car may miss and still be said to drive it. */
const MISSED_frac = 0.02;
/** Findings with which a pack cannot be used at all. */
const UNUSABLE = ["packAboveController", "packBelowController", "aboveGross"];

type Verdict = Enough["packs"][number];

/**
 * Which pack is enough for the usual day, and no more. A pack is enough where the car drives the road with it, and where its range
 * today covers the usual day in winter (that much more energy a kilometre) when the pack is old (that share of its capacity left):
 *
 *   range ≥ usual day · winter / aged
 *
 * The smallest one by usable energy is the answer; with none, the sentences say by how much the best falls short.
 */
export function enoughFor(job: Job, candidates: readonly Candidate[]): Enough {
  const { winter_ratio, aged_frac } = job.allowance;
  const day_km = job.usualDay_km;
  const needed_km = (day_km * winter_ratio) / aged_frac;
  const judged = candidates.map((candidate) => ({ candidate, found: verdict(candidate, job, needed_km) }));
  const packs = judged.map(({ found }) => found);
  judged.sort((a, b) => a.candidate.pack.usable_kWh - b.candidate.pack.usable_kWh);
  const bySize = judged.map(({ candidate }) => candidate);
  const smallest = judged.find(({ found }) => found.isEnough);
  const asks = say`With a winter that takes ${q("fraction", winter_ratio - 1)} more energy and an old pack that holds ${q("fraction", aged_frac)} of today's charge, a day of ${q("distance", day_km)} asks for ${q("distance", needed_km)} of range today.`;
  const sentences = smallest
    ? [
        yes(smallest.candidate, smallest.found, day_km),
        asks,
        ...longDay(job, smallest.candidate, bySize),
        ...rest(smallest.candidate, bySize),
      ]
    : [no(candidates, packs, needed_km), asks, ...longDay(job, undefined, bySize)];
  return { pack: smallest?.candidate.name, needed_km, sentences, packs };
}

function verdict(candidate: Candidate, { usualDay_km: day_km, allowance }: Job, needed_km: number): Verdict {
  const { name, range_km } = candidate;
  const winter_km = range_km / allowance.winter_ratio;
  const asked_km = candidate.distance_km + candidate.missed_km;
  const unusable = candidate.findings.find(({ kind }) => UNUSABLE.includes(kind));
  const misses = asked_km > 0 && !candidate.reachedFloor && candidate.missed_km / asked_km > MISSED_frac;
  const isFar = range_km >= needed_km;
  const isEnough = !unusable && !misses && isFar;
  const because = unusable ? "unusable" : misses ? "behind" : isFar ? "enough" : "short";
  const why = unusable
    ? unusable.sentence
    : misses
      ? say`The car does not keep up with this road: ${q("fraction", candidate.missed_km / asked_km)} of it is missed.`
      : isFar
        ? say`${q("distance", range_km)} of range, ${q("distance", needed_km)} asked for.`
        : say`${q("distance", range_km)} of range, ${q("distance", needed_km - range_km)} short of the ${q("distance", needed_km)} asked for.`;
  return {
    name,
    isEnough,
    because,
    ...(range_km > 0 ? { dayUse_frac: day_km / range_km } : {}),
    spare_km: range_km - day_km,
    winterSpare_km: winter_km - day_km,
    agedSpare_km: winter_km * allowance.aged_frac - day_km,
    why,
  };
}

function yes(smallest: Candidate, { agedSpare_km }: Verdict, day_km: number): Said {
  const atLeast = smallest.rangeEnd === "time" ? "at least " : "";
  return say`${smallest.name} is enough: after the usual day of ${q("distance", day_km)} it has ${atLeast}${q("distance", agedSpare_km)} left in winter when it is old; today it goes ${atLeast}${q("distance", smallest.range_km)} on this road.`;
}

/** Whether the longest day of the year goes on one charge, where it is known. */
function longDay({ longestDay_km }: Job, smallest: Candidate | undefined, bySize: readonly Candidate[]): Said[] {
  if (longestDay_km === undefined) return [];
  const day = say`The longest day of the year, ${q("distance", longestDay_km)}`;
  const asNew = "as long as it is new and the weather is like today's";
  if (smallest && smallest.range_km >= longestDay_km) return [say`${day}, it does on one charge, ${asNew}.`];
  const subject = smallest ? "it does not do" : "is not done";
  const otherwise = longDayPack(bySize, longestDay_km);
  const larger = otherwise ? say`${otherwise} ${asNew}` : say`a larger pack than any of these`;
  if (!smallest && otherwise) return [say`${day}, is done on one charge by ${larger}.`];
  return [say`${day}, ${subject} on one charge: that day needs a charge on the way, another car, or ${larger}.`];
}

/** Name of the smallest pack that does a day as new in weather like today's, if any does. */
function longDayPack(bySize: readonly Candidate[], day_km: number): string | undefined {
  return bySize.find(({ range_km }) => range_km >= day_km)?.name;
}

/** What the next pack up would add to the car. */
function rest(smallest: Candidate, bySize: readonly Candidate[]): Said[] {
  const larger = bySize[bySize.indexOf(smallest) + 1];
  if (larger === undefined) return [];
  const heavier_kg = larger.testMass_kg - smallest.testMass_kg;
  const dearer_ratio = larger.battery_Whpkm / smallest.battery_Whpkm - 1;
  const thirst =
    Math.abs(dearer_ratio) < 0.005
      ? say`and takes about as much energy for the same road`
      : say`and takes ${q("fraction", Math.abs(dearer_ratio), 2)} ${dearer_ratio > 0 ? "more" : "less"} energy for the same road`;
  return [
    say`The next one up, ${larger.name}, weighs ${q("mass", heavier_kg)} more ${thirst}; on a usual day the charge it adds is not used.`,
  ];
}

function no(candidates: readonly Candidate[], packs: readonly Verdict[], needed_km: number): Said {
  const usable = candidates.filter((_, i) => packs[i].because === "short");
  const best = usable.reduce<Candidate | undefined>(
    (a, b) => (a === undefined || b.range_km > a.range_km ? b : a),
    undefined,
  );
  if (best === undefined)
    return say`None of these packs will do on this road: each is held back for the reason beside it.`;
  return say`None of these packs is enough: the one that goes furthest, ${best.name}, does ${q("distance", best.range_km)} today and ${q("distance", needed_km)} is asked for.`;
}
