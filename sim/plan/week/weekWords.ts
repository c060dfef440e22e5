import { weekdayNames } from "../../../shared/job/weekdays.ts";
import { dayAndTime, momentOf } from "../../../shared/job/weekTimes.ts";
import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import type { DrivenTrip, FailingDay, PackWeek, WeekReport } from "./weekReport.ts";

/** A week that ends by more than this of the pack below where it began is not one to be driven time and again. */
const SAME_frac = 0.01;
/** A minute late is on time. */
const LATE_h = 1 / 60;
const MIN_PER_H = 60;
/** Waiting for warmer cells is said from a quarter of an hour on. */
const WAITED_h = 0.25;

/** Where a pack is at its lowest: the middle of a sentence. */
export function lowestWords({ lowest, floor_frac, failingDays, reserve_km }: PackWeek): Message {
  const { weekday, time } = momentOf(lowest.at_h);
  const at = message`on ${weekdayNames[weekday]} at ${time}`;
  if (failingDays.length > 0) return message`empty (${q("fraction", floor_frac, 2)}) ${at}`;
  const reserve =
    reserve_km === undefined ? message`` : message`, ${whole("distance", reserve_km)} more until it is empty`;
  return message`lowest ${at} with ${q("fraction", lowest.soc_frac, 2)} left${reserve}`;
}

/** The days that are not driven to their end, those that are as much short in one sentence. */
export function failingWords({ name, failingDays }: PackWeek): Message[] {
  const groups = new Map<number, FailingDay[]>();
  for (const day of failingDays) {
    const whole_km = Math.ceil(day.short_km);
    groups.set(whole_km, [...(groups.get(whole_km) ?? []), day]);
  }
  return [...groups.values()].map((days) => {
    const short = whole("distance", Math.max(...days.map(({ short_km }) => short_km)), "up");
    const isOne = days.length === 1;
    return message`${days.map(dayWords).join(", ")} ${isOne ? "is" : "are"} not done with ${name}: ${short} short${isOne ? "" : " each"}.`;
  });
}

function dayWords({ weekday, name }: FailingDay): string {
  return name === undefined ? weekdayNames[weekday] : `${weekdayNames[weekday]} (${name})`;
}

/** What one week came to, in sentences that say its condition where it is not the first. */
export function weekSentences(week: PackWeek): Message[] {
  const { name, condition, failingDays, ceiling_frac, ends_frac } = week;
  const head =
    failingDays.length === 0
      ? message`${name}, ${condition}, does the week: ${lowestWords(week)}.`
      : message`${name}, ${condition}, does not do the week: ${lowestWords(week)}.`;
  const first = week.trips[0];
  const falls =
    failingDays.length === 0 && ceiling_frac - ends_frac > SAME_frac
      ? [
          message`It leaves on ${dayAndTime(first.leaves_h)} with ${q("fraction", ceiling_frac, 2)} and a week later with ${q("fraction", ends_frac, 2)}: such weeks do not follow one another.`,
        ]
      : [];
  return [head, ...failingWords(week), ...waitedWords(week), ...falls];
}

/** What is to be known beside the result: trips that take longer than the clock gives them, cars that fall behind, places where it does not charge. */
export function weekNotes({ packs, isWinterAFactor }: WeekReport): Message[] {
  const late = packs[0].trips.filter(({ late_h }) => late_h > LATE_h).map(lateWords);
  const stops = packs.flatMap(({ name, parkings }) =>
    parkings.flatMap(({ supply, stop }) =>
      supply !== undefined && stop ? [message`${name} at ${supply}: ${stop}`] : [],
    ),
  );
  const factor = isWinterAFactor
    ? [message`Winter is a factor in this job: the week is driven in the job’s own weather alone.`]
    : [];
  const seen = new Set<string>();
  return [...late, ...packs.flatMap(behindWords), ...stops, ...factor].filter((note) => {
    const key = JSON.stringify(note);
    return !seen.has(key) && seen.add(key);
  });
}

function lateWords({ leaves_h, arrives_h, late_h }: DrivenTrip): Message {
  return message`The trip on ${dayAndTime(leaves_h)} takes ${Math.round(late_h * MIN_PER_H)} minutes longer by its road than by the clock: it is over at ${momentOf(arrives_h).time}.`;
}

function behindWords({ name, condition, trips }: PackWeek): Message[] {
  const behind = trips.filter(({ missed_km }) => missed_km > 0);
  if (behind.length === 0) return [];
  const most_km = Math.max(...behind.map(({ missed_km }) => missed_km));
  const count = behind.length === 1 ? "one trip" : `${behind.length} trips`;
  return [
    message`${name}, ${condition}, falls behind its road on ${count}, by ${q("distance", most_km, 2)} at most, its pack not empty.`,
  ];
}

/** The longest wait of the week for cells that take no current. */
function waitedWords({ parkings }: PackWeek): Message[] {
  const longest = parkings.reduce((most, each) => (each.waited_h > most.waited_h ? each : most));
  const { supply, waited_h, from_h, isCold } = longest;
  if (waited_h < WAITED_h || supply === undefined) return [];
  const advice = isCold ? "warm the pack first, or keep it where it stays warm" : "let the pack cool first";
  return [
    message`At ${supply} from ${dayAndTime(from_h)} on the charge waits ${q("hours", waited_h, 2)} for cells that are too ${isCold ? "cold" : "warm"}: ${advice}.`,
  ];
}
