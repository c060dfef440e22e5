import { engineTorque_Nm } from "../../../shared/job/engineTorque.ts";
import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { demandOf } from "../../plan/gears/gearTable.ts";
import { gearName } from "../../plan/gears/oneGear.ts";
import { recommendLimit } from "../../plan/torqueLimit/recommendLimit.ts";
import { shaftTorques } from "../../plan/torqueLimit/shaftTorques.ts";
import { torqueAdvice } from "../../plan/torqueLimit/torqueAdvice.ts";
import { type TorqueRow, torqueSweep, usualCaps_Nm } from "../../plan/torqueLimit/torqueSweep.ts";
import { type Tried, torquesToCompare } from "../../plan/torqueLimit/torquesToCompare.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { quantityOption } from "../arguments/readOption.ts";
import { readTorques_Nm } from "../arguments/torquesOption.ts";
import { forProgram, overRoad, withPack } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const torque: Command = {
  name: "torque",
  usage: 'JOB [--caps 80,100,120] [--pack NAME] [--hill "1 in 6"] [--trace ID|FILE] [--json]',
  summary: "what several caps of the motor's torque put through the old gearbox and shafts, and cost the driver",
  options: {
    caps: { type: "string", value: "NM,...", help: "torques at the motor shaft to try; else some around the job's" },
    pack: withPack,
    hill: {
      type: "string",
      value: "GRADIENT",
      help: "the hill to start on; else the job's, or the steepest of the road",
    },
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "torque");
    const job = readJobFile(path);
    const packIndex = packIndexOf(job, args);
    const typed = textOption(args, "caps");
    const recommended = recommendLimit(job);
    const caps_Nm = typed === undefined ? usualCaps_Nm(job) : readTorques_Nm(typed, "--caps", 1);
    const asked_ratio = quantityOption(args, "hill", "gradient", { min: 0.001, max: 0.6, label: "a hill" });
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const hill_ratio = asked_ratio ?? demandOf(trace, job.requirement).hill_ratio;
    const rows = torqueSweep(job, packIndex, trace, caps_Nm, hill_ratio);
    const sentences = torqueAdvice(job, rows, recommended).map((sentence) => messageIn(sentence, "metric"));
    const pack = job.packs[packIndex].name;
    const engine_Nm = engineTorque_Nm(job);
    const { ramp_s } = job.controller;
    if (hasOption(args, "json")) {
      print(
        jsonText({
          job: job.title,
          pack,
          road: trace.id,
          engine_Nm: engine_Nm ?? null,
          limits: job.driveline.limits,
          ramp_s,
          hill_ratio: hill_ratio ?? null,
          caps: rows,
          recommended_Nm: recommended?.torque_Nm ?? null,
          notes: sentences,
        }),
      );
      return;
    }
    const engine = engine_Nm === undefined ? "not known" : `${n(engine_Nm)} Nm`;
    const hill = hill_ratio === undefined ? "" : `, hill ${n(100 * hill_ratio)} %`;
    const head = `${job.title}\n${pack} aboard; ${trace.title}${hill}; ramp ${n(ramp_s)} s; old engine's peak ${engine}`;
    const tables = [driverTable(rows), shaftTable(job, torquesToCompare(job, recommended))];
    print([head, ...tables, sentences.map((sentence) => wrapText(sentence)).join("\n")].join("\n\n"));
  },
};

function driverTable(rows: readonly TorqueRow[]): string {
  const hasHill = rows.some(({ hill }) => hill !== undefined);
  const seconds = (value_s: number | undefined) => (value_s === undefined ? "-" : n(value_s));
  return textTable(
    [
      { heading: "\ncap\n(Nm)", isNumber: true },
      { heading: "0 to 50\nkm/h\n(s)", isNumber: true },
      { heading: "0 to 100\nkm/h\n(s)", isNumber: true },
      { heading: "80 to 100\nkm/h\n(s)", isNumber: true },
      { heading: "behind\non road\n(s)", isNumber: true },
      { heading: "from\npack\n(Wh/km)", isNumber: true },
      { heading: "starts\non up to\n(%)", isNumber: true },
      ...(hasHill ? [{ heading: "hill, to\nspare\n(%)", isNumber: true }] : []),
    ],
    rows.map((row) => [
      n(row.torque_Nm),
      seconds(row.to50kmh_s),
      seconds(row.to100kmh_s),
      seconds(row.from80to100kmh_s),
      n(row.behind_s, 2),
      row.battery_Whpkm === undefined ? "-" : n(row.battery_Whpkm),
      n(100 * row.steepestStart_ratio),
      ...(row.hill ? [n(100 * row.hill.spare_frac, 2)] : []),
    ]),
  );
}

/** Torque in the shafts by gear, of the old engine and of the motor; where it is over a limit, marked. */
function shaftTable(job: Job, tried: readonly Tried[]): string {
  const columns = tried.map(({ name, torque_Nm }) => ({ name, torque_Nm, gears: shaftTorques(job, torque_Nm) }));
  return textTable(
    [
      { heading: "propeller shaft /\neach half-shaft\n(Nm), ! over" },
      ...columns.map(({ name, torque_Nm }) => ({ heading: `\n${name}\n${n(torque_Nm)} Nm`, isNumber: true })),
      { heading: "input at\ntheir limit\n(Nm)", isNumber: true },
    ],
    shaftTorques(job, 0).map((gear, i) => [
      gearName(gear),
      ...columns.map(({ torque_Nm, gears }) => {
        const over = torque_Nm > (gear.inputAtLimit_Nm ?? Number.POSITIVE_INFINITY) ? " !" : "";
        return `${n(gears[i].propellerShaft_Nm)} / ${n(gears[i].halfShaft_Nm)}${over}`;
      }),
      gear.inputAtLimit_Nm === undefined ? "-" : n(gear.inputAtLimit_Nm),
    ]),
  );
}
