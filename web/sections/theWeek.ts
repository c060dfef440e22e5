import { weekdayNames } from "../../shared/job/weekdays.ts";
import { dayAndTime, momentOf } from "../../shared/job/weekTimes.ts";
import { type Message, message, messageIn, whole } from "../../shared/quantity/message.ts";
import { writeMoney } from "../../shared/quantity/money.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { lowestWords, type PackWeek, placesOfWeek, weekNotes, weekSentences } from "../../sim/index.ts";
import { weekCharge } from "../charts/weekCharge.ts";
import { weekForm } from "../forms/pack/weekForm.ts";
import { defineSection } from "./parts/section.ts";

/** How full is each pack through the client's week? */
export default defineSection({
  name: "theWeek",
  title: "Week",
  question: "How full is each pack through the client’s week, and which days are not done?",
  given: weekForm,
  fields: ["week"],
  inputs: ["job", "week", "packIndex", "units"],
  compute: ({ job, week, packIndex, units }) => {
    const all = week?.packs ?? [];
    const names = [...new Set(all.map(({ name }) => name))];
    const byPack = names.map((name) => all.filter((each) => each.name === name));
    const chosenName = job.packs[Math.min(packIndex, job.packs.length - 1)].name;
    const chosen = byPack.find(([first]) => first.name === chosenName) ?? byPack[0];
    const inWords = (sentences: readonly Message[]) => sentences.map((each) => messageIn(each, units));
    return {
      byPack,
      chosen,
      rows: all.map((each) => row(each, units, job.currency)),
      trips: chosen?.[0].trips.map((trip, i) => {
        const { supply, wall_kWh } = chosen[0].parkings[i];
        return [
          dayAndTime(trip.leaves_h),
          percent(trip.leaves_frac),
          momentOf(trip.arrives_h).time,
          percent(trip.arrives_frac),
          writeQuantity("distance", trip.driven_km, units),
          supply ?? "not charged",
          supply === undefined ? "–" : writeQuantity("energy", wall_kWh, units, 2),
        ];
      }),
      places: placeRows(all, units, job.currency),
      sentences: chosen && inWords(chosen.flatMap(weekSentences)),
      inShort: chosen && messageIn(message`${chosen[0].name} ${lowestWords(chosen[0])}`, units),
      failing: chosen && inWords(chosen.flatMap((each) => weekSentences(each).slice(1))),
      notes: week && inWords(weekNotes(week)).join(" "),
    };
  },
  *plot({ byPack, chosen, rows, places, trips, notes }, drawing) {
    if (!chosen || !trips) return;
    const others = byPack.filter(([first]) => first.name !== chosen[0].name);
    for (const weeks of [chosen, ...others]) {
      const [first] = weeks;
      const last = weeks[weeks.length - 1];
      yield {
        name: `pack${byPack.findIndex(([each]) => each.name === first.name) + 1}`,
        caption: `How full is ${first.name} through the week? A hollow mark is its lowest point`,
        chart: weekCharge(first.name, first === last ? [first] : [first, last], drawing),
      };
    }
    yield {
      caption: "Each pack through the week",
      columns: [
        { title: "Pack" },
        { title: "Condition", isText: true },
        { title: "Lowest" },
        { title: "When", isText: true },
        { title: "More until empty" },
        { title: "From the wall" },
        { title: "A week later" },
        { title: "Not done", isText: true },
      ],
      rows,
      ...(notes !== undefined && notes !== "" && { note: notes }),
    };
    if (places)
      yield {
        caption: "What a week takes from the wall at each place",
        columns: [
          { title: "Pack" },
          { title: "Condition", isText: true },
          { title: "Place", isText: true },
          { title: "From the wall" },
          ...(places.isPriced ? [{ title: "Costs" }] : []),
        ],
        rows: places.rows,
      };
    yield {
      caption: `${chosen[0].name}, ${chosen[0].condition}, trip by trip`,
      columns: [
        { title: "Leaves", isText: true },
        { title: "with" },
        { title: "Arrives", isText: true },
        { title: "with" },
        { title: "Driven" },
        { title: "Then charged at", isText: true },
        { title: "From the wall" },
      ],
      rows: trips,
      note: "Every road is driven at its own pace from the departure on; until the arrival by the clock the car is then parked on the way. A day that is not done goes on at its end with the empty pack. Times of charging are those of the week: the hours of a place and its cheap hours are those of the usual day.",
    };
  },
  sentence: ({ sentences }) =>
    sentences === undefined ? "No trip by the clock is entered, so no week is driven." : sentences.join(" "),
  inShort: ({ inShort }) => inShort ?? "no week entered",
  attention: ({ failing }) => failing ?? [],
});

function row(week: PackWeek, units: UnitHabit, currency = ""): string[] {
  const { name, condition, lowest, reserve_km, wall_kWh, cost, ends_frac, failingDays } = week;
  const km = (distance_km: number, how: "down" | "up") =>
    messageIn(message`${whole("distance", distance_km, how)}`, units);
  return [
    name,
    condition,
    percent(lowest.soc_frac),
    dayAndTime(lowest.at_h),
    failingDays.length > 0 || reserve_km === undefined ? "–" : km(reserve_km, "down"),
    `${writeQuantity("energy", wall_kWh, units, 3)}${cost ? `, ${writeMoney(cost, currency, 2)}` : ""}`,
    percent(ends_frac),
    failingDays.length === 0
      ? "none"
      : failingDays.map(({ weekday, short_km }) => `${weekdayNames[weekday]}, ${km(short_km, "up")} short`).join("; "),
  ];
}

/** A row for each place of each week; nothing for a single place, which the table of the packs is of. */
function placeRows(weeks: readonly PackWeek[], units: UnitHabit, currency = "") {
  const all = weeks.flatMap((week) => placesOfWeek(week).map((place) => ({ week, place })));
  if (new Set(all.map(({ place }) => place.supply)).size < 2) return undefined;
  const isPriced = all.some(({ place }) => place.cost !== undefined);
  const rows = all.map(({ week, place: { supply, wall_kWh, cost } }) => [
    week.name,
    week.condition,
    supply,
    writeQuantity("energy", wall_kWh, units, 3),
    ...(isPriced ? [cost === undefined ? "–" : writeMoney(cost, currency, 2)] : []),
  ]);
  return { rows, isPriced };
}

function percent(frac: number): string {
  return `${Math.round(100 * frac)} %`;
}
