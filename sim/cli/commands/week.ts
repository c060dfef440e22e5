import type { Job } from "../../../shared/job/job.ts";
import { weekdayNames } from "../../../shared/job/weekdays.ts";
import { dayAndTime, momentOf } from "../../../shared/job/weekTimes.ts";
import { inputError } from "../../../shared/problems.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { writeMoney } from "../../../shared/quantity/money.ts";
import { driveWeeks } from "../../plan/week/driveWeek.ts";
import { placesOfWeek } from "../../plan/week/placesOfWeek.ts";
import type { PackWeek, WeekReport } from "../../plan/week/weekReport.ts";
import { roadsOfWeek } from "../../plan/week/weekRoadIds.ts";
import { weekNotes, weekSentences } from "../../plan/week/weekWords.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { forProgram, onlyPack } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const week: Command = {
  name: "week",
  usage: "JOB [--pack NAME] [--json]",
  summary: "the job's week by the clock with each pack: charge at every departure, lowest point, days not done",
  options: { pack: onlyPack, json: forProgram },
  run(args, print, warn) {
    const path = onlyJobPath(args, "week");
    const whole = readJobFile(path);
    const packs = textOption(args, "pack") === undefined ? whole.packs : [whole.packs[packIndexOf(whole, args)]];
    const job = { ...whole, packs };
    const traces = new Map(roadsOfWeek(job).map((id) => [id, roadToDrive(job, path, id, warn).trace]));
    const report = driveWeeks(job, traces);
    if (!report)
      throw inputError(
        "week-none",
        `${path} week`,
        "found no trip, days with trips by the clock wanted: see week.days",
      );
    print(hasOption(args, "json") ? jsonText(asJson(job, report)) : asText(job, report));
  },
};

function asJson(job: Job, report: WeekReport) {
  return {
    job: job.title,
    isWinterAFactor: report.isWinterAFactor,
    packs: report.packs.map((each) => ({
      ...each,
      parkings: each.parkings.map(({ stop, ...parking }) => ({
        ...parking,
        ...(stop && { stop: messageIn(stop, "metric") }),
      })),
      places: placesOfWeek(each),
      findings: weekSentences(each).map((sentence) => messageIn(sentence, "metric")),
    })),
    notes: weekNotes(report).map((note) => messageIn(note, "metric")),
  };
}

function asText(job: Job, report: WeekReport): string {
  const { packs } = report;
  const [{ trips }] = packs;
  const km = trips.reduce((sum, { asked_km }) => sum + asked_km, 0);
  const head = `A week of ${trips.length} trips, ${n(km, 3)} km, from ${dayAndTime(trips[0].leaves_h)} to the same a week later`;
  const isPriced = packs.some(({ cost }) => cost);
  const table = textTable(
    [
      { heading: "\npack" },
      { heading: "\ncondition" },
      { heading: "lowest\n%", isNumber: true },
      { heading: "\nwhen" },
      { heading: "km\nmore", isNumber: true },
      { heading: "wall\nkWh", isNumber: true },
      ...(isPriced ? [{ heading: `costs\n${job.currency ?? ""}`, isNumber: true }] : []),
      { heading: "a week\nlater %", isNumber: true },
      { heading: "days not done\n(km short)" },
    ],
    packs.map((each) => row(each, isPriced)),
  );
  const [first] = packs;
  const course = textTable(
    [
      { heading: "leaves" },
      { heading: "with %", isNumber: true },
      { heading: "arrives" },
      { heading: "with %", isNumber: true },
      { heading: "km", isNumber: true },
      { heading: "then at" },
      { heading: "wall kWh", isNumber: true },
    ],
    first.trips.map((trip, i) => {
      const { supply, wall_kWh } = first.parkings[i];
      return [
        dayAndTime(trip.leaves_h),
        percent(trip.leaves_frac),
        momentOf(trip.arrives_h).time,
        percent(trip.arrives_frac),
        n(trip.driven_km, 3),
        supply ?? "-",
        supply === undefined ? "" : n(wall_kWh, 2),
      ];
    }),
  );
  const sentences = packs.map((each) =>
    weekSentences(each)
      .map((sentence) => messageIn(sentence, job.units))
      .join(" "),
  );
  const notes = weekNotes(report).map((each) => messageIn(each, job.units));
  return [
    `${job.title}\n${wrapText(head)}`,
    table,
    ...placesText(job, packs),
    `${first.name}, ${first.condition}, trip by trip\n${course}`,
    ...[...sentences, ...notes].map((each) => wrapText(each)),
  ].join("\n\n");
}

/** What a week takes and costs at each place; nothing for a single place, which the first table is of. */
function placesText({ currency }: Job, packs: readonly PackWeek[]): string[] {
  const rows = packs.flatMap((each) =>
    placesOfWeek(each).map((place) => ({ ...place, ...{ name: each.name, condition: each.condition } })),
  );
  const isPriced = rows.some(({ cost }) => cost !== undefined);
  if (new Set(rows.map(({ supply }) => supply)).size < 2) return [];
  const columns = [
    { heading: "a week at" },
    { heading: "pack" },
    { heading: "condition" },
    { heading: "wall kWh", isNumber: true },
    ...(isPriced ? [{ heading: `costs ${currency ?? ""}`.trim(), isNumber: true }] : []),
  ];
  const lines = rows.map(({ supply, name, condition, wall_kWh, cost }) => [
    ...[supply, name, condition, n(wall_kWh, 3)],
    ...(isPriced ? [cost === undefined ? "-" : writeMoney(cost, "", 2)] : []),
  ]);
  return [textTable(columns, lines)];
}

function row(
  { name, condition, lowest, reserve_km, wall_kWh, cost, ends_frac, failingDays }: PackWeek,
  isPriced: boolean,
): string[] {
  const failing = failingDays.map(({ weekday, short_km }) => `${weekdayNames[weekday]} (${Math.ceil(short_km)})`);
  return [
    name,
    condition,
    percent(lowest.soc_frac),
    dayAndTime(lowest.at_h),
    failing.length > 0 || reserve_km === undefined ? "-" : String(Math.floor(reserve_km)),
    n(wall_kWh, 3),
    ...(isPriced ? [cost === undefined ? "-" : writeMoney(cost, "", 2)] : []),
    percent(ends_frac),
    failing.length > 0 ? failing.join(", ") : "none",
  ];
}

function percent(frac: number): string {
  return String(Math.round(100 * frac));
}
