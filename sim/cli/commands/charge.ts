import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { type ChargePlan, chargePlan } from "../../plan/charging/chargePlan.ts";
import type { ChargeFigures, ChargeRow } from "../../plan/charging/chargeRow.ts";
import { driveInConditions } from "../../plan/conditions/driveConditions.ts";
import { driveCandidate } from "../../plan/drive/driveCandidate.ts";
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

export const charge: Command = {
  name: "charge",
  usage: "JOB [--pack NAME] [--trace ID|FILE] [--json]",
  summary: "hours, energy and cost of charging each pack at each of the job's supplies",
  options: {
    pack: onlyPack,
    trace: { type: "string", value: "ID|FILE", help: "the road of the usual day, as drive takes it; else the job's" },
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "charge");
    const whole = readJobFile(path);
    const packs = textOption(args, "pack") === undefined ? whole.packs : [whole.packs[packIndexOf(whole, args)]];
    const job = { ...whole, packs };
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const plan = chargePlan(
      job,
      packs.map((pack) => ({
        ...driveCandidate(job, pack, trace, false),
        conditions: driveInConditions(job, pack, trace),
      })),
    );
    print(hasOption(args, "json") ? jsonText(asJson(job, trace.id, plan)) : asText(job, trace.title, plan));
  },
};

function asJson(job: Job, road: string, { supplies, rows, notes, cautions, isAssumed }: ChargePlan) {
  const sentences = (notes: ChargePlan["notes"]) => notes.map((each) => messageIn(each, "metric"));
  return {
    job: job.title,
    road,
    usualDay_km: job.usualDay_km,
    currency: job.currency ?? null,
    isAssumed,
    places: supplies,
    supplies: rows.flat().map((row) => ({
      name: row.supply,
      pack: row.pack,
      emptyToFull_h: row.emptyToFull?.time_h ?? null,
      usualDay_h: row.usualDay?.time_h ?? null,
      winterDay_h: row.winterDay?.time_h ?? null,
      nightGives_km: row.night?.gives_km ?? null,
      night_h: row.night?.hours_h ?? null,
      taper_h: row.emptyToFull?.taper_h ?? null,
      emptyToFull_kWh: row.emptyToFull?.wall_kWh ?? null,
      usualDay_kWh: row.usualDay?.wall_kWh ?? null,
      cost: { emptyToFull: row.emptyToFull?.cost ?? null, usualDay: row.usualDay?.cost ?? null },
      limit: row.limit ?? null,
      stop: row.stop ? messageIn(row.stop, "metric") : null,
    })),
    notes: sentences(notes),
    cautions: sentences(cautions),
  };
}

function asText(job: Job, road: string, { supplies, rows, notes, cautions }: ChargePlan): string {
  const day = `usual day ${n(job.usualDay_km)} km on ${road}`;
  const sections = supplies.map(({ name, wall_kW, given_kW, pilotDuty_frac }, k) => {
    const duty = pilotDuty_frac === undefined ? "" : `, control pilot ${n(100 * pilotDuty_frac)} %`;
    const head = `${name}: ${n(wall_kW)} kW from the wall, ${n(given_kW)} kW behind the charger${duty}`;
    return `${head}\n${table(rows.map((each) => each[k]))}`;
  });
  const remarks = [...notes, ...cautions].map((each) => wrapText(messageIn(each, "metric")));
  return [`${job.title}\n${day}`, ...sections, remarks.join("\n")].join("\n\n");
}

function table(rows: readonly ChargeRow[]): string {
  const hasCost = rows.some(({ emptyToFull }) => emptyToFull?.cost !== undefined);
  const hours = (row: ChargeRow, figures: ChargeFigures | undefined) => {
    const isWhole = figures !== undefined && "isMoreThanPack" in figures && figures.isMoreThanPack === true;
    return figures === undefined ? (row.stop ? "stop" : "-") : `${figures.time_h.toFixed(1)}${isWhole ? "*" : ""}`;
  };
  const energy = (figures: ChargeFigures | undefined) => figures?.wall_kWh.toFixed(1) ?? "-";
  const cost = (figures: ChargeFigures | undefined) => figures?.cost?.toFixed(2) ?? "-";
  const columns = [
    { heading: "\npack" },
    ...[
      "empty to\nfull (h)",
      "of it\ntaper (h)",
      "usual\nday (h)",
      "winter\nday (h)",
      "a night\n(h)",
      "gives\n(km)",
      "full, from\nwall (kWh)",
      "day, from\nwall (kWh)",
      ...(hasCost ? ["full\ncosts", "day\ncosts"] : []),
    ].map((heading) => ({ heading, isNumber: true })),
    { heading: "pace\nset by" },
  ];
  const lines = rows.map((row) => [
    row.pack,
    hours(row, row.emptyToFull),
    row.emptyToFull?.taper_h.toFixed(1) ?? "-",
    hours(row, row.usualDay),
    hours(row, row.winterDay),
    row.night?.hours_h.toFixed(1) ?? "-",
    row.night?.gives_km?.toFixed(0) ?? "-",
    energy(row.emptyToFull),
    energy(row.usualDay),
    ...(hasCost ? [cost(row.emptyToFull), cost(row.usualDay)] : []),
    row.limit ?? "-",
  ]);
  const isMarked = lines.some((line) => line.some((text) => text.endsWith("*")));
  const stops = rows.flatMap(({ pack, stop }) => (stop ? [wrapText(`${pack}: ${messageIn(stop, "metric")}`)] : []));
  const remark = isMarked ? ["* such a day takes more than the pack holds: the whole pack"] : [];
  return [textTable(columns, lines), ...remark, ...stops].join("\n");
}
