import { type Message, message, quantity as q } from "../../shared/quantity/message.ts";
import { type Answer, answerFor } from "./answer/answer.ts";
import type { PackAnswer, Use } from "./answer/packAnswer.ts";
import { answerWords } from "./answer/sentence.ts";
import type { Candidate, Enough } from "./driveReport.ts";
import type { Unknown } from "./unknowns.ts";

/**
 * The answer as the list that programs read: which pack does what is asked, and for each why or why not. A pack is held against the
 * range that the usual day asks for today, so that winter and age are allowed for:
 *
 *   range ≥ usual day · winter / aged
 */
export function enoughFor(
  use: Use,
  candidates: readonly Candidate[],
  unknowns: readonly (readonly Unknown[])[] = candidates.map(() => []),
): Enough {
  const answer = answerFor(use, candidates, unknowns);
  const { winter_ratio, aged_frac } = use.allowance;
  const day_km = use.usualDay_km;
  const needed_km = (day_km * winter_ratio) / aged_frac;
  const asks = message`With a winter that takes ${q("fraction", winter_ratio - 1)} more energy and an old pack that holds ${q("fraction", aged_frac)} of today's charge, a day of ${q("distance", day_km)} asks for ${q("distance", needed_km)} of range today.`;
  return {
    pack: answer.smallest === undefined ? undefined : answer.packs[answer.smallest].name,
    needed_km,
    sentences: [...spoken(answer), asks],
    packs: answer.packs.map((pack, i) => listed(pack, candidates[i], day_km, needed_km)),
  };
}

/** Headline and first sentence as one, the others after it. */
function spoken(answer: Answer): Message[] {
  const { headline, sentences } = answerWords(answer);
  const [first = [], ...others] = sentences;
  return [message`${headline} ${first}`, ...others];
}

function listed(pack: PackAnswer, { range_km }: Candidate, day_km: number, needed_km: number): Enough["packs"][number] {
  const { name, stop, cannot, left, verdict } = pack;
  const isEnough = verdict !== undefined && verdict !== "not enough";
  const because = stop ? "unusable" : cannot ? "behind" : isEnough ? "enough" : "short";
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
    ...(range_km > 0 && left && { dayUse_frac: day_km / range_km }),
    ...(left && {
      spare_km: left.new.value,
      winterSpare_km: left.winter.value,
      agedSpare_km: left.tenYearsWinter.value,
    }),
    why: stop?.sentence ?? cannot ?? why,
  };
}
