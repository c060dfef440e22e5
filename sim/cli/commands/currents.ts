import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { type Message, messageIn } from "../../../shared/quantity/message.ts";
import type { CurrentCurve, CurrentPoint } from "../../plan/currents/currentCurve.ts";
import { type CurrentsPlan, currentsPlan } from "../../plan/currents/currentsPlan.ts";
import { currentCautions, currentsSentence, startingPoints } from "../../plan/currents/currentWords.ts";
import type { ShelfRow } from "../../plan/currents/preChargeShelf.ts";
import { chosenPack } from "../arguments/chosenPack.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { forProgram, overRoad } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const currents: Command = {
  name: "currents",
  usage: "JOB [--pack NAME] [--trace ID|FILE] [--json]",
  summary: "currents by how long they last; where to begin with fuse, contactor, cable and pre-charge",
  options: {
    pack: { type: "string", value: "NAME", help: "with this pack; else the one that is recommended" },
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "currents");
    const job = readJobFile(path);
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const plan = currentsPlan(job, chosenPack(job, args, trace), trace);
    print(hasOption(args, "json") ? jsonText(currentsJson(job, trace.id, plan)) : asText(job, trace.title, plan));
  },
};

const inMetric = (sentence: Message) => messageIn(sentence, "metric");

/** The plan for a program. */
export function currentsJson(job: Job, road: string, plan: CurrentsPlan) {
  const { preCharge, hasMotorCurrent, road: onRoad, hill, ...rest } = plan;
  const curve = ({ points, whole, ...more }: CurrentCurve) => ({
    durations: points.map(pointJson),
    whole: pointJson(whole),
    ...more,
  });
  return {
    job: job.title,
    roadId: road,
    ...rest,
    greatest: plan.greatest.map(pointJson),
    controller_A: plan.controller_A ?? null,
    road: curve(onRoad),
    hill: curve(hill),
    hasMotorCurrent,
    preCharge: {
      ...preCharge,
      rows: preCharge.rows.map(shelfJson),
      chosen: preCharge.chosen ? shelfJson(preCharge.chosen) : null,
      withoutLoad: preCharge.withoutLoad ? shelfJson(preCharge.withoutLoad) : null,
      timeout_s: preCharge.timeout_s ?? null,
    },
    sentence: inMetric(currentsSentence(plan)),
    startingPoints: startingPoints(plan).map(({ part, sentence, basis }) => ({
      part,
      sentence: inMetric(sentence),
      basis,
    })),
    cautions: currentCautions(plan).map(inMetric),
  };
}

const pointJson = ({ motor_A, ...point }: CurrentPoint) => ({ ...point, motor_A: motor_A ?? null });
const shelfJson = ({ time_s, ...row }: ShelfRow) => ({ ...row, time_s: time_s ?? null });

function asText(job: Job, road: string, plan: CurrentsPlan): string {
  const hill = `the long hill (${n(plan.longHill.length_km)} km at ${n(100 * plan.longHill.grade_ratio)} %)`;
  return [
    `${job.title}\n${wrapText(`${plan.pack} on ${road} and ${hill}, the pack low`)}`,
    wrapText(inMetric(currentsSentence(plan))),
    curveTable(plan),
    startingPoints(plan)
      .map(({ sentence, basis }) => `${wrapText(inMetric(sentence), "- ")}\n${wrapText(`(${basis})`, "  ")}`)
      .join("\n"),
    `pre-charge of ${n(plan.preCharge.capacitance_uF)} uF from ${n(plan.full_V)} V\n${shelfTable(plan)}`,
    currentCautions(plan)
      .map((each) => wrapText(inMetric(each), "! "))
      .join("\n"),
  ].join("\n\n");
}

function curveTable({ road, hill, hasMotorCurrent }: CurrentsPlan): string {
  const rows = road.points.map((point, i) => [
    lasting(point.duration_s),
    ...[point, hill.points[i]].flatMap((each) => figures(each, hasMotorCurrent)),
  ]);
  const whole = ["all of it", ...[road.whole, hill.whole].flatMap((each) => figures(each, hasMotorCurrent))];
  const headings = (of: string) => [
    `${of}\nbattery\n(A)`,
    `\nmotor\n(Nm)`,
    ...(hasMotorCurrent ? ["\nmotor\n(A)"] : []),
  ];
  return textTable(
    [
      { heading: "\n\nrms over" },
      ...[...headings("road"), ...headings("hill")].map((heading) => ({ heading, isNumber: true })),
    ],
    [...rows, whole],
  );
}

function figures({ battery_A, motor_Nm, motor_A }: CurrentPoint, hasMotorCurrent: boolean): string[] {
  return [n(battery_A), n(motor_Nm), ...(hasMotorCurrent ? [motor_A === undefined ? "-" : n(motor_A)] : [])];
}

function lasting(duration_s: number): string {
  if (duration_s === 0) return "peak";
  return duration_s < 120 ? `${duration_s} s` : `${duration_s / 60} min`;
}

function shelfTable({ preCharge: { rows, chosen } }: CurrentsPlan): string {
  const head = ["\nohm", "settles\nat (%)", "to 95 %\n(s)", "heat\n(J)", "peak\n(W)", "rating\n(W)"];
  return textTable(
    [...head.map((heading) => ({ heading, isNumber: true })), { heading: "" }],
    rows.map((row) => [
      n(row.resistance_ohm),
      n(100 * row.settles_frac),
      row.time_s === undefined ? "never" : n(row.time_s, 2),
      n(row.energy_J, 2),
      n(row.peak_W, 2),
      n(row.rating_W),
      row.resistance_ohm === chosen?.resistance_ohm ? "<- take this" : "",
    ]),
  );
}
