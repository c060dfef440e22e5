import Papa from "papaparse";
import type { Job } from "../../../shared/job/job.ts";
import { inputError } from "../../../shared/problems.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { moneyBetween } from "../../../shared/quantity/money.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { chargePlan } from "../../plan/charging/chargePlan.ts";
import { driveInConditions } from "../../plan/conditions/driveConditions.ts";
import { driveCandidate } from "../../plan/drive/driveCandidate.ts";
import { fuelCheck, fuelCheckWords } from "../../plan/going/fuelCheck.ts";
import { type CostPlan, costPlan, type PackCosts } from "../../plan/money/costPlan.ts";
import { BESIDES, costNotes, costSentences } from "../../plan/money/costWords.ts";
import { quoteTable } from "../../plan/money/quoteTable.ts";
import type { Span } from "../../plan/money/span.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { forProgram, onlyPack } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { checkPlace, isSameFile, writeText } from "../files/files.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { costsJson } from "../printing/costsJson.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const costs: Command = {
  name: "costs",
  usage: "JOB [--pack NAME] [--trace ID|FILE] [--json] [--quote FILE.csv [--force]]",
  summary: "price of each pack, what it costs to run and whether it pays back",
  options: {
    pack: onlyPack,
    trace: { type: "string", value: "ID|FILE", help: "the road of the usual day, as drive takes it; else the job's" },
    json: forProgram,
    quote: { type: "string", value: "FILE.csv", help: "write every line of the quotes, for a spreadsheet" },
    force: { type: "boolean", help: "with --quote: replace a file of that name" },
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "costs");
    const out = textOption(args, "quote");
    const ifThere = hasOption(args, "force") ? "replace" : "ask";
    if (out !== undefined) checkQuotePath(path, out, ifThere);
    const whole = readJobFile(path);
    const packs = textOption(args, "pack") === undefined ? whole.packs : [whole.packs[packIndexOf(whole, args)]];
    const job = { ...whole, packs };
    if (!job.costs)
      throw inputError(
        "costs-missing",
        `${path} costs`,
        "found no costs, work and prices are wanted: see the notebook's Money",
      );
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const candidates = packs.map((pack) => ({
      ...driveCandidate(job, pack, trace, false),
      conditions: driveInConditions(job, pack, trace),
    }));
    const plan = costPlan(job, candidates, chargePlan(job, candidates));
    if (!plan) throw new Error("a job with costs has no plan of them");
    if (out !== undefined) {
      writeText(out, quoteCsv(plan), ifThere);
      warn(`written: ${out}`);
    }
    const byFuel = fuelCheck(job, candidates[0].wheelPositive_Whpkm);
    if (hasOption(args, "json")) print(jsonText({ ...costsJson(job, trace.id, plan), fuelCheck: byFuel ?? null }));
    else {
      const check = byFuel ? ["", wrapText(messageIn(fuelCheckWords(byFuel), job.units))] : [];
      print([asText(job, trace.title, plan), ...check].join("\n"));
    }
  },
};

function checkQuotePath(path: string, out: string, ifThere: "replace" | "ask"): void {
  if (!/\.csv$/i.test(out))
    throw inputError("out-name", out, "found a name without .csv at its end, a CSV file is written: quote.csv");
  if (isSameFile(path, out))
    throw inputError("option-same-file", "--quote", "found the job file itself, another name is wanted");
  checkPlace(out, ifThere);
}

/** For a spreadsheet: what it would take for a formula gets a quote before it, and the mark in front says that it is UTF-8. */
function quoteCsv(plan: CostPlan): string {
  const { columns, rows } = quoteTable(plan);
  const fields = columns.map(({ name }) => name);
  const data = rows.map((row) => [...row]);
  return `\uFEFF${Papa.unparse({ fields, data }, { newline: "\n", escapeFormulae: true })}\n`;
}

function asText(job: Job, road: string, plan: CostPlan): string {
  const { running, against, packs } = plan;
  const distance = (distance_km: number) => writeQuantity("distance", distance_km, job.units);
  const looked = running ? `, ${running.years} years` : "";
  const head = `${job.title}\n${road}; compared with ${against.name}${looked}`;
  const sentences = packs.map((pack) =>
    wrapText([...costSentences(plan, pack)].map((each) => messageIn(each, job.units)).join(" ")),
  );
  const notes = [...costNotes(plan), BESIDES].map((each) => wrapText(messageIn(each, job.units)));
  const yearly = (running?.yearly ?? []).map(
    ({ distance_km }, k) => `${distance(distance_km)} a year\n${yearTable(plan, packs, k)}`,
  );
  return [head, priceTable(plan), ...yearly, sentences.join("\n"), notes.join("\n")].join("\n\n");
}

function priceTable(plan: CostPlan): string {
  const { currency, packs, alternatives, fuelCarbon_gpkm } = plan;
  const money = (amount: Span | undefined) => (amount ? moneyBetween(amount, currency) : "-");
  const columns = [
    { heading: "\nway" },
    ...["\nprice", "more than\nthe alternative", "CO2\n(g/km)"].map((heading) => ({ heading, isNumber: true })),
  ];
  const carbon = (amount: Pick<Span, "low" | "high"> | undefined) => (amount ? moneyBetween(amount, "", 2) : "-");
  const now = fuelCarbon_gpkm === undefined ? undefined : { low: fuelCarbon_gpkm, high: fuelCarbon_gpkm };
  return textTable(columns, [
    ...packs.map(({ quote, extra, carbon_gpkm }) => [
      quote.pack,
      money(quote.total),
      money(extra),
      carbon(carbon_gpkm),
    ]),
    ...alternatives.map(({ name, price, isAsItIs }) => [name, money(price), "", isAsItIs ? carbon(now) : ""]),
  ]);
}

function yearTable({ currency, running, alternatives }: CostPlan, packs: readonly PackCosts[], k: number): string {
  const money = (amount: Span | undefined, digits?: number) => (amount ? moneyBetween(amount, currency, digits) : "-");
  const years = running?.years ?? 0;
  const columns = [
    { heading: "\nway" },
    ...["running,\nfirst year", "saves,\nfirst year", `all spent\nin ${years} years`, "pays back\n(years)"].map(
      (heading) => ({
        heading,
        isNumber: true,
      }),
    ),
  ];
  return textTable(columns, [
    ...packs.map(({ quote, yearly }) => {
      const at = yearly[k];
      return [quote.pack, money(at?.running), money(at?.saves, 2), money(at?.spent[years]), paybackCell(at, years)];
    }),
    ...alternatives.map(({ name, running: first, spent }) => [name, money(first[k]), "", money(spent[k]?.[years]), ""]),
  ]);
}

function paybackCell(at: PackCosts["yearly"][number] | undefined, years: number): string {
  if (!at) return "-";
  const { early_years, value_years, late_years } = at.payback;
  if (early_years === undefined) return `not in ${years}`;
  const middle = value_years === undefined ? "" : ` (${value_years.toFixed(0)})`;
  return `${early_years.toFixed(0)} to ${late_years === undefined ? `over ${years}` : late_years.toFixed(0)}${middle}`;
}
