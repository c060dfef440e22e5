import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { type Message, messageIn } from "../../../shared/quantity/message.ts";
import { answerByDriving } from "../../plan/answer/answerByDriving.ts";
import { CONDITIONS, conditionNames } from "../../plan/answer/conditions.ts";
import { type DaysFailed, daysFailed } from "../../plan/layouts/daysFailed.ts";
import { askedDay_km, type Judged } from "../../plan/layouts/judgePack.ts";
import { modulesMost } from "../../plan/layouts/layoutPack.ts";
import { layoutRows } from "../../plan/layouts/layoutRows.ts";
import type { Layout } from "../../plan/layouts/layoutsOf.ts";
import { type PackChoice, packChoice } from "../../plan/layouts/packChoice.ts";
import { type PackBeside, packsBeside } from "../../plan/layouts/packsBeside.ts";
import { packsBesideWords } from "../../plan/layouts/packsBesideWords.ts";
import type { Trace } from "../../trace/trace.ts";
import { choiceOption } from "../arguments/choiceOption.ts";
import { hasOption, numberOption, textOption } from "../arguments/optionValue.ts";
import { quantityOption } from "../arguments/readOption.ts";
import { forProgram, overRoad } from "../arguments/usualOptions.ts";
import type { Command, CommandArguments } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const packs: Command = {
  name: "packs",
  usage:
    'JOB [--day usual|longest] [--condition new|winter|tenYearsWinter] [--reserve "10 km"] [--sure asTaken|wholeBand] [--most N] [--mass "200 kg"] [--trace ID|FILE] [--json]',
  summary: "every layout of the module and what rules it out, and the smallest pack that will do",
  options: {
    day: { type: "string", value: "DAY", help: "the day to be done on one charge: usual or longest; else the job's" },
    condition: { type: "string", value: "CONDITION", help: "new, winter or tenYearsWinter; else the job's" },
    reserve: { type: "string", value: "DISTANCE", help: "what must be left on coming home; else the job's, or none" },
    sure: { type: "string", value: "HOW", help: "asTaken, or wholeBand: with all that is not known; else the job's" },
    most: { type: "string", value: "N", help: "look at packs of up to so many modules, 1 to 400" },
    mass: { type: "string", value: "MASS", help: "look at packs of up to this mass, boxes and all" },
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "packs");
    const job = asked(readJobFile(path), args);
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const choice = packChoice(job, trace);
    const beside = withDays(job, trace, packsBeside(job, trace, choice.found));
    print(hasOption(args, "json") ? jsonText(asJson(job, trace, choice, beside)) : asText(job, trace, choice, beside));
  },
};

/** The job with what was asked on the command line in place of its own. */
function asked(job: Job, args: CommandArguments): Job {
  const given = {
    day: choiceOption(args, "day", ["usual", "longest"]),
    condition: choiceOption(args, "condition", CONDITIONS),
    sure: choiceOption(args, "sure", ["asTaken", "wholeBand"]),
    reserve_km: quantityOption(args, "reserve", "distance", { min: 0, max: 1000, label: "a reserve" }),
    modulesMost: numberOption(args, "most", { low: 1, high: 400, unit: "modules", isWhole: true }),
    packMost_kg: quantityOption(args, "mass", "mass", { min: 1, max: 5000, label: "a pack" }),
  };
  const typed = Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined));
  return { ...job, sizing: { ...job.sizing, ...typed } };
}

/** Packs beside one another, and the days of the year that each fails. */
interface Beside {
  readonly packs: readonly PackBeside[];
  readonly days: readonly DaysFailed[];
  readonly words: readonly Message[];
}

function withDays(job: Job, trace: Trace, packs: readonly PackBeside[]): Beside {
  const days = daysFailed({ ...job, packs: packs.map(({ pack }) => pack) }, trace);
  return { packs, days, words: packsBesideWords(packs, days, job.currency) };
}

const inWords = (sentence: Message) => messageIn(sentence, "metric");

function asJson(job: Job, trace: Trace, { layouts, found, adds, outSmaller, sentences }: PackChoice, beside: Beside) {
  const { smallest, nextSmaller, nextLarger, nearest } = found;
  return {
    job: job.title,
    road: trace.id,
    currency: job.currency ?? null,
    requirement: {
      ...job.requirement,
      ...job.sizing,
      reserve_km: job.sizing.reserve_km ?? 0,
      modulesMost: modulesMost(job),
      day_km: askedDay_km(job),
    },
    roadPower_kW: {
      peak: layouts.road.peak_W / 1000,
      tenSeconds: layouts.road.tenSeconds_W / 1000,
      rms: layouts.road.rms_W / 1000,
    },
    layouts: layouts.all.map(layoutJson),
    smallest: smallest
      ? { ...packJson(smallest), verdict: verdictOf(job, trace, smallest), why: inWords(smallest.why) }
      : null,
    nextSmaller: nextSmaller
      ? { ...packJson(nextSmaller), failsOn: inWords(nextSmaller.why) }
      : outSmaller
        ? { name: outSmaller.pack.name, failsOn: inWords(outSmaller.out.reason) }
        : null,
    nextLarger: nextLarger ? { ...packJson(nextLarger), adds: adds ?? null } : null,
    nearest: nearest ? { ...packJson(nearest), failsOn: inWords(nearest.why) } : null,
    beside: beside.packs.map(({ pack, why, roles, ...rest }, i) => ({
      name: pack.name,
      roles,
      ...rest,
      why: inWords(why),
      failingDays: beside.days[i],
    })),
    fitting: found.fitting,
    driven: found.driven,
    notes: [...sentences, ...beside.words].map(inWords),
  };
}

function layoutJson({ pack, figures, cost, out }: Layout) {
  const { string_A, ...rest } = figures;
  return {
    seriesModules: pack.seriesModules,
    parallelModules: pack.parallelModules,
    fits: out === undefined,
    fault: out?.fault ?? null,
    reason: out ? inWords(out.reason) : null,
    ...rest,
    string_A,
    cost: cost ?? null,
  };
}

function packJson({ pack, candidate, left_km }: Judged) {
  const { nominal_kWh, usable_kWh, mass_kg, seriesModules, parallelModules } = candidate.pack;
  const { battery_Whpkm, range_km } = candidate;
  return {
    name: pack.name,
    seriesModules,
    parallelModules,
    nominal_kWh,
    usable_kWh,
    mass_kg,
    battery_Whpkm,
    range_km,
    left_km: left_km ?? null,
  };
}

/** The verdict of the answer on this pack, were it alone in the job. */
function verdictOf(job: Job, trace: Trace, { pack, candidate }: Judged): string | null {
  const one = { ...job, packs: [pack] };
  return answerByDriving(one, [candidate], trace).packs[0].verdict ?? null;
}

function asText(job: Job, trace: Trace, { layouts, sentences }: PackChoice, beside: Beside): string {
  const { day, condition, sure, reserve_km = 0 } = job.sizing;
  const reserve = reserve_km > 0 ? `, ${n(reserve_km)} km left` : "";
  const how = sure === "wholeBand" ? "with all that is not known" : "with the values as taken";
  const asks = `${day} day ${n(askedDay_km(job))} km on ${trace.title}, ${conditionNames[condition]}${reserve}, ${how}`;
  const { peak_W, tenSeconds_W, rms_W } = layouts.road;
  const road = `the road asks ${n(peak_W / 1000)} kW at most, ${n(tenSeconds_W / 1000)} kW for ten seconds, ${n(rms_W / 1000)} kW throughout (root mean square)`;
  return [
    `${job.title}, ${job.module.name}\n${wrapText(asks)}\n${wrapText(road)}`,
    layoutTable(layouts.all, job.currency),
    ...(beside.packs.length > 0 ? [besideTable(beside, job)] : []),
    [...sentences, ...beside.words].map((sentence) => wrapText(inWords(sentence))).join("\n"),
  ].join("\n\n");
}

function layoutTable(all: readonly Layout[], currency: string | undefined): string {
  const isPriced = all.some(({ cost }) => cost !== undefined);
  const columns = [
    { heading: "\nmodules" },
    ...[
      "\nfull (V)",
      "average\n(V)",
      "empty,\nloaded (V)",
      "a string\n(A)",
      "for 10 s\n(A)",
      "when full\n(kWh)",
      "\n(kg)",
    ].map((heading) => ({ heading, isNumber: true })),
    ...(isPriced ? [{ heading: `its cells\n(${currency ?? "money"})`, isNumber: true }] : []),
    { heading: "\nruled out by" },
  ];
  const lines = layoutRows(all).map(({ name, layout, out }) => {
    const blanks = Array<string>(isPriced ? 8 : 7).fill("");
    if (layout === undefined) return [name, ...blanks, out ? inWords(out.reason) : ""];
    const { full_V, nominal_V, loaded_V, string_A, nominal_kWh, mass_kg } = layout.figures;
    const { cost } = layout;
    const numbers = [full_V, nominal_V, loaded_V, string_A.rms, string_A.tenSeconds, nominal_kWh, mass_kg];
    const price = cost ? `${n(cost.low, 2)} to ${n(cost.high, 2)}` : "";
    return [name, ...numbers.map((value) => n(value)), ...(isPriced ? [price] : []), out ? inWords(out.reason) : ""];
  });
  return textTable(columns, lines);
}

function besideTable({ packs, days }: Beside, { currency, sizing }: Job): string {
  const isPriced = packs.some(({ cost }) => cost !== undefined);
  const columns = [
    { heading: "\npack" },
    { heading: "\nwhich is" },
    ...[
      "\nkWh",
      "\nkg",
      "km\nnew",
      `km left,\n${conditionNames[sizing.condition]}`,
      "days not\nhome, new",
      "at ten\nyears",
    ].map((heading) => ({ heading, isNumber: true })),
    ...(isPriced ? [{ heading: `its cells\n(${currency ?? "money"})`, isNumber: true }] : []),
  ];
  return textTable(
    columns,
    packs.map(({ pack, roles, nominal_kWh, mass_kg, range_km, left_km, cost }, i) => [
      pack.name,
      roles.join(", "),
      n(nominal_kWh),
      n(mass_kg),
      n(range_km),
      left_km === undefined ? "-" : String(Math.floor(left_km)),
      String(days[i].new),
      `${days[i].tenYears} of ${days[i].driven}`,
      ...(isPriced ? [cost ? `${n(cost.low, 2)} to ${n(cost.high, 2)}` : "-"] : []),
    ]),
  );
}
