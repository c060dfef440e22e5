import { type Message, message, quantity as q } from "../../shared/quantity/message.ts";
import { type Answer, answerFor } from "./answer/answer.ts";
import { rangeIn_km } from "./answer/conditions.ts";
import type { PackAnswer, Use } from "./answer/packAnswer.ts";
import { answerWords } from "./answer/sentence.ts";
import type { Candidate, Enough } from "./driveReport.ts";
import type { Unknown } from "./unknowns.ts";

/**
 * The answer as the list that programs read: which pack does what is asked, and for each why or why not. What the usual day asks for of
 * today's range is by how much the range of the pack spoken of falls to ten years, in winter, driven or by the factors of the allowance:
 *
 *   range asked = usual day · range today / range at ten years in winter
 */
export function enoughFor(
  use: Use,
  candidates: readonly Candidate[],
  unknowns: readonly (readonly Unknown[])[] = candidates.map(() => []),
): Enough {
  const answer = answerFor(use, candidates, unknowns);
  const day_km = use.usualDay_km;
  const spokenOf = answer.recommended ?? 0;
  const needed_km = day_km * fall_ratio(use, candidates[spokenOf]);
  return {
    pack: answer.smallest === undefined ? undefined : answer.packs[answer.smallest].name,
    needed_km,
    sentences: [...spoken(answer), asks(use, candidates[spokenOf], needed_km)],
    packs: answer.packs.map((pack, i) => listed(pack, candidates[i], use)),
  };
}

/** Today's range of a pack over its range at ten years in winter; 1 where it does not go at all then. */
function fall_ratio({ allowance }: Use, candidate: Candidate): number {
  const old_km = rangeIn_km("tenYearsWinter", allowance, candidate);
  return old_km > 0 ? candidate.range_km / old_km : 1;
}

function asks({ allowance, usualDay_km }: Use, candidate: Candidate, needed_km: number): Message {
  const day = message`a day of ${q("distance", usualDay_km)} asks for ${q("distance", needed_km)} of range today`;
  const driven = candidate.conditions?.tenYearsWinter;
  if (driven) {
    const ranges = message`${q("distance", candidate.range_km)} today and ${q("distance", driven.range_km)} at ten years, in winter`;
    return message`${candidate.name} goes ${ranges}: ${day}.`;
  }
  const { winter_ratio, aged_frac } = allowance;
  return message`With a winter that takes ${q("fraction", winter_ratio - 1)} more energy and an old pack that holds ${q("fraction", aged_frac)} of today's charge, ${day}.`;
}

/** Headline and first sentence as one, the others after it. */
function spoken(answer: Answer): Message[] {
  const { headline, sentences } = answerWords(answer);
  const [first = [], ...others] = sentences;
  return [message`${headline} ${first}`, ...others];
}

function listed(pack: PackAnswer, candidate: Candidate, use: Use): Enough["packs"][number] {
  const { name, stop, cannot, failsIn, left, verdict } = pack;
  const { range_km } = candidate;
  const needed_km = use.usualDay_km * fall_ratio(use, candidate);
  const isEnough = verdict !== undefined && verdict !== "not enough";
  const because = stop ? "unusable" : cannot || failsIn ? "behind" : isEnough ? "enough" : "short";
  const range = message`${q("distance", range_km)} of range`;
  const asked = q("distance", needed_km);
  const short = q("distance", needed_km - range_km);
  const why = isEnough
    ? message`${range}, ${asked} asked for.`
    : message`${range}, ${short} short of the ${asked} asked for.`;
  return {
    name,
    isEnough,
    because,
    ...(range_km > 0 && left && { dayUse_frac: use.usualDay_km / range_km }),
    ...(left && {
      spare_km: left.new.value,
      winterSpare_km: left.winter.value,
      agedSpare_km: left.tenYearsWinter.value,
    }),
    why: stop?.sentence ?? cannot ?? failsIn?.why ?? why,
  };
}
