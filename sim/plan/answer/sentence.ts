import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import type { Answer } from "./answer.ts";
import { CONDITIONS } from "./conditions.ts";
import { leftAmount, leftPhrase } from "./leftWords.ts";
import { measurementOf } from "./measurements.ts";
import type { PackAnswer } from "./packAnswer.ts";

/** What is said of one pack: the verdict as a headline, and one short paragraph that holds for the numbers of the answer. */
export interface AnswerWords {
  readonly headline: Message;
  /** Sentence by sentence. */
  readonly sentences: readonly Message[];
  readonly isStop: boolean;
}

/** The words for the pack that is recommended, or for another one that the reader chose. */
export function answerWords(answer: Answer, chosen = answer.recommended): AnswerWords {
  const index = chosen ?? 0;
  const pack = answer.packs[index];
  if (pack.stop) {
    return {
      headline: message`${pack.name}: stop.`,
      sentences: [pack.stop.sentence, ...otherwise(answer, index)],
      isStop: true,
    };
  }
  if (answer.cannot) {
    const sentences = [pack.cannot ?? answer.cannot, message`No pack here changes that.`];
    return { headline: message`The car cannot drive this road.`, sentences, isStop: false };
  }
  if (pack.unmet.length > 0) {
    const verdict = pack.verdict ? [message`For the day, ${pack.name} is ${pack.verdict}.`] : [];
    const sentences = [...overOf(pack), ...pack.unmet, ...verdict, ...dayOf(answer, pack)];
    return { headline: message`The car does not do what is asked.`, sentences, isStop: false };
  }
  const headline = pack.verdict ? message`${pack.name}: ${pack.verdict}.` : message`${pack.name}: calculating …`;
  return {
    headline,
    sentences: [
      ...overOf(pack),
      ...dayOf(answer, pack),
      ...otherwise(answer, index),
      ...longestOf(answer, pack),
      ...askedOf(answer, index),
    ],
    isStop: false,
  };
}

/** That it is over a plate when laden, before all that it can do. */
function overOf({ overPlate }: PackAnswer): Message[] {
  return overPlate ? [overPlate] : [];
}

/** The usual day, in the three conditions. */
function dayOf(answer: Answer, pack: PackAnswer): Message[] {
  const { left, cannot, isAtLeast } = pack;
  if (cannot || !left) return cannot ? [cannot] : [];
  if (pack.failsIn) return [pack.failsIn.why];
  const [fresh, winter, aged] = CONDITIONS.map((condition) => left[condition].value);
  const day = message`A usual day of ${q("distance", answer.day_km)} ends`;
  if (aged < 0) return [notHome(day, fresh, winter, aged)];
  const summary = message`${day} with ${leftPhrase(fresh, isAtLeast)}, in winter ${leftAmount(winter, isAtLeast, true)}`;
  const { low } = left.tenYearsWinter;
  if (low >= 0)
    return [
      message`${summary}, and at ten years, in winter, still ${leftAmount(aged, isAtLeast, true)}.`,
      ...failing(pack),
    ];
  return [
    message`${summary}. At ten years, in winter, it may end ${whole("distance", -low, "up")} short${larger(answer)}.`,
    ...failing(pack),
  ];
}

/** What is not known and may keep the car from driving the road at all. */
function failing({ mayFail }: PackAnswer): Message[] {
  const subjects = [...new Set(mayFail.map(({ path }) => measurementOf(path).subject))];
  if (subjects.length === 0) return [];
  return [message`With the worst that ${subjects.join(" or ")} may be, the car does not drive this road.`];
}

/** A day that is not done: where it first fails, and by how much at the worst. */
function notHome(day: Message, fresh: number, winter: number, aged: number): Message {
  const atTenYears = message`at ten years, in winter, ${leftPhrase(aged)}`;
  if (fresh < 0) return message`${day} ${leftPhrase(fresh)} when the pack is new, and ${atTenYears}.`;
  if (winter < 0)
    return message`${day} with ${leftPhrase(fresh)}, but in winter ${leftPhrase(winter)}, and ${atTenYears}.`;
  return message`${day} with ${leftPhrase(fresh)}, in winter ${leftAmount(winter, false, true)}, but ${atTenYears}.`;
}

/** The pack that is enough where this one is only just so. */
function larger({ enough, packs }: Answer): string {
  return enough === undefined ? "" : `; ${packs[enough].name} would not`;
}

/** Which other pack the reader should know of. */
function otherwise({ packs, smallest, enough, recommended, isBandKnown }: Answer, index: number): Message[] {
  const { verdict, stop } = packs[index];
  const isUsable = recommended !== undefined;
  if (stop && !isUsable) return [message`None of these packs may be used.`];
  if (stop || verdict === "not enough") {
    if (enough !== undefined) return [message`The smallest that is enough is ${packs[enough].name}.`];
    if (smallest !== undefined && isBandKnown)
      return [message`None is enough with all that is not known; ${packs[smallest].name} is only just so.`];
    if (smallest !== undefined) return [];
    if (stop) return [message`None of the others is enough.`];
    if (index === recommended)
      return packs.length === 1 ? [] : [message`None of these packs is enough; this one goes furthest.`];
    return recommended === undefined
      ? []
      : [message`None of these packs is enough; ${packs[recommended].name} goes furthest.`];
  }
  if (verdict === "only just" && enough === undefined && packs.length > 1)
    return [message`None of these packs is enough with all that is not known.`];
  if (verdict === "more than enough" && enough !== undefined) return [message`${packs[enough].name} is enough.`];
  return [];
}

/** Whether the longest day goes on one charge, and whether it does with a pack that the client asked for where it does not with this one. */
function longestOf(answer: Answer, { longest, cannot }: PackAnswer): Message[] {
  const { day_km, longestDay_km, longestDaysAYear, packs } = answer;
  if (longestDay_km === undefined || longestDay_km <= day_km || !longest || cannot) return [];
  const often = longestDaysAYear === undefined ? "" : ` ${timesAYear(longestDaysAYear)}`;
  const day = message`The longest day, ${q("distance", longestDay_km)}${often},`;
  const asked = packs.find((pack) => pack.isAskedFor && doesLongest(pack));
  const { new: fresh, winter, tenYearsWinter: aged } = longest;
  if (fresh.value < 0)
    return [message`${day} needs a charge on the way${asked ? `; ${asked.name}, as asked for, would not` : ""}.`];
  const always = asked ? `; with ${asked.name}, as asked for, it does` : "";
  if (winter.value < 0) return [message`${day} goes on one charge while the pack is new, but not in winter${always}.`];
  if (aged.value < 0) return [message`${day} goes on one charge when new, but not in winter at ten years${always}.`];
  if (aged.low < 0) return [message`${day} only just goes on one charge at ten years, in winter.`];
  return [message`${day} goes on one charge.`];
}

/** The longest day goes on one charge even at ten years in winter. */
function doesLongest({ longest, cannot, stop }: PackAnswer): boolean {
  return !stop && !cannot && longest !== undefined && longest.tenYearsWinter.value >= 0;
}

/** What there is to say of a pack that the client asked for, beside the one spoken of and its longest day. */
function askedOf({ packs, enough }: Answer, index: number): Message[] {
  const spoken = packs[index];
  return packs.flatMap((pack, i) => {
    const { name, isAskedFor, verdict, stop, mass_kg } = pack;
    if (!isAskedFor || i === index) return [];
    if (stop) return [message`${name}, as asked for, may not be used.`];
    if (!verdict || !spoken.verdict) return [];
    if (verdict === "not enough" || verdict === "only just") return [message`${name}, as asked for, is ${verdict}.`];
    const isNeeded =
      spoken.verdict === "not enough" ||
      (spoken.verdict === "only just" && enough === i) ||
      (spoken.longest && !doesLongest(spoken) && doesLongest(pack));
    if (isNeeded || mass_kg <= spoken.mass_kg) return [];
    const more = whole("mass", mass_kg - spoken.mass_kg, "nearest");
    return [message`${name}, as asked for, weighs ${more} more and is not needed.`];
  });
}

function timesAYear(times: number): string {
  return times === 1 ? "once a year" : times === 2 ? "twice a year" : `${times} times a year`;
}

/** What the pack asked for, or else the largest, carries for nothing, for beside its row; nothing where it carries little. */
export function largestWords({ largest, packs, recommended }: Answer): Message | undefined {
  if (!largest || recommended === undefined) return undefined;
  const low = Math.floor(largest.unusedDays.low);
  const high = Math.floor(largest.unusedDays.high);
  if (high < 1) return undefined;
  const days = low === high ? dayCount(high) : low < 1 ? `up to ${dayCount(high)}` : `${low} to ${dayCount(high)}`;
  const weight = whole("mass", largest.heavier_kg, "nearest");
  const asked = packs[largest.index].isAskedFor ? "Asked for: " : "";
  return message`${asked}${days} driving it never uses; ${weight} more than ${packs[recommended].name}, carried every day`;
}

/** What would settle a verdict of *only just*: what to measure, what it is worth, and what is open after it. */
export function settlementWords({ settlements, packs }: Answer, index: number): Message[] {
  const settlement = settlements[index];
  if (!settlement) return [];
  const { measurement, worth, rest, next } = settlement;
  const first = message`Measure first: ${measurement.name}.`;
  const fails = packs[index].mayFail.some(({ path }) => measurementOf(path) === measurement);
  const cost = whole("distance", worth.value - worth.low, "up");
  const what = fails
    ? message`It shows whether the car drives this road.`
    : message`${capital(measurement.subject)} may cost ${cost}.`;
  const open = next ? message`Then, as that may not settle it: ${next.name}.` : message`That may not settle it.`;
  return [first, what, ...(rest.low < 0 ? [open] : [])];
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function dayCount(count: number): string {
  return count === 1 ? "a usual day's" : `${count} usual days'`;
}
