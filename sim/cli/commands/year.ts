import { hasInventedMonths } from "../../../shared/job/inventedYear.ts";
import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { rangeOn } from "../../plan/going/range.ts";
import { drivenDaysWords } from "../../plan/year/drivenDaysWords.ts";
import { yearOf, yearRanges } from "../../plan/year/driveYear.ts";
import type { PackYear, YearReport } from "../../plan/year/yearReport.ts";
import { agedPack, LIFE_years, packUse } from "../../plan/years/ageing.ts";
import { type PackLife, packLife } from "../../plan/years/packLife.ts";
import { isReplaced, packLifeWords, replaceCaution } from "../../plan/years/packLifeWords.ts";
import { prepare } from "../../step/prepare.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { forProgram, onlyPack, overRoad } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

/** So many of the days that fail are named. */
const NAMED = 4;

export const year: Command = {
  name: "year",
  usage: "JOB [--pack NAME] [--trace ID|FILE] [--json]",
  summary:
    "every evening of a year with each pack, new and at ten years: km left, and the days that would not get home",
  options: {
    pack: onlyPack,
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "year");
    const whole = readJobFile(path);
    const packs = textOption(args, "pack") === undefined ? whole.packs : [whole.packs[packIndexOf(whole, args)]];
    const job = { ...whole, packs };
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const report = yearOf(job, yearRanges(job, trace));
    if (!job.year) warn("the job has no year of its own: temperatures and holidays are invented ones");
    else if (hasInventedMonths(job.year)) warn("the year of the job has the temperatures of the invented one");
    const lives = job.packs.map((_, i) => packLife(job, i, trace));
    const notes = drivenDaysWords(job).map((each) => messageIn(each, job.units));
    print(
      hasOption(args, "json")
        ? jsonText({ job: job.title, trace: trace.id, ...report, ageing: ageing(job, trace, lives), notes })
        : [
            [asText(job, trace.title, report), ...notes.map((each) => wrapText(each))].join("\n"),
            ...livesText(
              job,
              lives.filter((life) => life !== undefined),
            ),
          ].join("\n\n"),
    );
  },
};

/** What published laws of ageing leave of each pack, used on the days of the year on this road, and how long it does the usual day in winter by them. */
function ageing(job: Job, trace: Trace, lives: readonly (PackLife | undefined)[]) {
  const { mean_mps } = characteristics(trace);
  return job.packs.flatMap((pack, i) => {
    const range_km = rangeOn(prepare(job, pack), trace).distance_m / M_PER_KM;
    if (range_km <= 0) return [];
    const use = packUse(job, pack, range_km, mean_mps / MPS_PER_KMH);
    const life = lives[i];
    const findings = life ? packLifeWords(life, job.currency).map((each) => messageIn(each, "metric")) : [];
    return [{ name: pack.name, years: agedPack(job, pack, use), ...(life && { life: { ...life, findings } }) }];
  });
}

/** Each pack's winter range as it ages, when it does the usual day no more, and what its modules weigh and cost; with the caution where they are replaced. */
function livesText({ currency, units }: Job, lives: readonly PackLife[]): string[] {
  if (lives.length === 0) return [];
  const isPriced = lives.some(({ modules }) => modules.cost);
  const head = lives[0].winter.map(({ years }) => ({
    heading: years === 0 ? "winter km:\nnew" : `\n${years} years`,
    isNumber: true,
  }));
  const table = textTable(
    [
      { heading: "\npack" },
      ...head,
      { heading: "usual day no\nmore after (years)" },
      { heading: "modules\nkg", isNumber: true },
      ...(isPriced ? [{ heading: `\n${currency ?? "price"}`, isNumber: true }] : []),
    ],
    lives.map(({ name, winter, modules: { mass_kg, cost }, ...life }) => [
      name,
      ...winter.map(({ low_km, high_km }) => fromTo(Math.floor(low_km), Math.floor(high_km))),
      lasts(life),
      n(mass_kg, 3),
      ...(isPriced ? [cost ? `${n(cost.low, 2)} to ${n(cost.high, 2)}` : "-"] : []),
    ]),
  );
  const replaced = lives.find(isReplaced);
  const note =
    "Usual day in winter with what two published laws of ageing leave of the cells, the least to the most; new modules of the same kind and layout without boxes. The laws are of single cells in a laboratory: used modules and heat age them faster, and the answer counts the capacity at ten years that the job has.";
  const caution = replaced ? [replaceCaution(replaced.modules)] : [];
  return [table, [note, ...caution.map((each) => messageIn(each, units))].map((each) => wrapText(each)).join("\n")];
}

function lasts({ earliest_years, latest_years }: Pick<PackLife, "earliest_years" | "latest_years">): string {
  if (earliest_years === undefined) return `not within ${LIFE_years}`;
  if (earliest_years === 0) return latest_years === 0 ? "not when new" : "-";
  return latest_years === undefined
    ? `${earliest_years} or not within ${LIFE_years}`
    : fromTo(earliest_years, latest_years);
}

function fromTo(low: number, high: number): string {
  return low === high ? String(low) : `${low} to ${high}`;
}

function asText(
  job: Job,
  road: string,
  { days, driven_degC, largestError_km, confirmedDays, packs }: YearReport,
): string {
  const driven = days.filter(({ kind }) => kind !== "off");
  const [least, most] = [driven_degC[0], driven_degC[driven_degC.length - 1]];
  const longest = days.filter(({ kind }) => kind === "longest").length;
  const head = `${driven.length} driven days of a year on ${road}, ${n(least, 2)} to ${n(most, 2)} degC; usual day ${n(job.usualDay_km)} km${longest > 0 ? `, longest ${n(job.longestDay_km ?? 0)} km on ${longest}` : ""}`;
  const table = textTable(
    [
      { heading: "\npack" },
      { heading: "\nage (years)", isNumber: true },
      { heading: "km left:\nworst", isNumber: true },
      { heading: "\nmiddle", isNumber: true },
      { heading: "\nbest", isNumber: true },
      { heading: "days not\nhome", isNumber: true },
      { heading: "\nwhich" },
    ],
    packs.map((pack) => row(pack, days)),
  );
  const note = `Driven at ${driven_degC.length} temperatures, days between them on straight lines; ${confirmedDays} days driven to confirm that differ by ${n(largestError_km, 2)} km at most. Every day begins charged.`;
  return `${job.title}\n${wrapText(head)}\n\n${table}\n\n${wrapText(note)}`;
}

function row({ name, age_years, evenings_km, failingDays }: PackYear, days: YearReport["days"]): string[] {
  const left = evenings_km.filter((_, day) => days[day].kind !== "off").sort((a, b) => a - b);
  const at = (share: number) => String(Math.floor(left[Math.round(share * (left.length - 1))]));
  const worst = [...failingDays].sort((a, b) => b.short_km - a.short_km).slice(0, NAMED);
  const named = worst.map(({ date, short_km }) => `${date} (${Math.ceil(short_km)} short)`).join(", ");
  const more = failingDays.length > NAMED ? ", …" : "";
  return [name, String(age_years), at(0), at(0.5), at(1), String(failingDays.length), `${named}${more}`];
}
