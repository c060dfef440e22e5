import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { regenAdvice } from "../../plan/regen/regenAdvice.ts";
import { type RegenRow, regenSweep, usualLimits_Nm } from "../../plan/regen/regenSweep.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { readTorques_Nm } from "../arguments/torquesOption.ts";
import { forProgram, overRoad, withPack } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const regen: Command = {
  name: "regen",
  usage: "JOB [--limits 0,20,40] [--pack NAME] [--trace ID|FILE] [--json]",
  summary: "what several settings of braking by the motor return and ask of pack, axle and driver",
  options: {
    limits: { type: "string", value: "NM,...", help: "torques at the motor shaft to try; else some around the job's" },
    pack: withPack,
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "regen");
    const job = readJobFile(path);
    const packIndex = packIndexOf(job, args);
    const typed = textOption(args, "limits");
    const limits_Nm = typed === undefined ? usualLimits_Nm(job) : readTorques_Nm(typed, "--limits", 0);
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const rows = regenSweep(job, packIndex, trace, limits_Nm);
    const { recommended, words } = regenAdvice(rows);
    const sentences = words.map((sentence) => messageIn(sentence, "metric"));
    const pack = job.packs[packIndex].name;
    if (hasOption(args, "json")) {
      const settings = rows.map((row) => ({ ...row, neededGrip_coeff: row.neededGrip_coeff ?? null }));
      const recommended_Nm = recommended?.torque_Nm ?? null;
      print(jsonText({ job: job.title, pack, road: trace.id, settings, recommended_Nm, notes: sentences }));
      return;
    }
    const head = `${job.title}\n${pack} aboard; ${trace.title}`;
    print([head, table(rows), sentences.map((sentence) => wrapText(sentence)).join("\n")].join("\n\n"));
  },
};

const lampWords = { off: "off", "may light": "may", "must light": "must" } as const;

function table(rows: readonly RegenRow[]): string {
  const hasGrip = rows.some(({ neededGrip_coeff }) => neededGrip_coeff !== undefined);
  return textTable(
    [
      { heading: "motor\nlimit\n(Nm)", isNumber: true },
      { heading: "\nreturned\n(%)", isNumber: true },
      { heading: "from\npack\n(Wh/km)", isNumber: true },
      { heading: "\nrange\n(km)", isNumber: true },
      { heading: "into\npack\n(A)", isNumber: true },
      { heading: "slows\nby\n(m/s2)", isNumber: true },
      { heading: "pack\nfull\n(m/s2)", isNumber: true },
      { heading: "cells\n0 °C\n(m/s2)", isNumber: true },
      ...(hasGrip ? [{ heading: "friction\nneeded\nthere", isNumber: true }] : []),
      { heading: "\nbrake\nlamps" },
    ],
    rows.map((row) => [
      n(row.torque_Nm),
      n(100 * row.returned_frac, 2),
      n(row.battery_Whpkm),
      n(Math.round(row.range_km)),
      n(row.charge_A),
      row.slowing_mps2.toFixed(2),
      row.fullPack_mps2.toFixed(2),
      row.coldPack_mps2.toFixed(2),
      ...(hasGrip ? [row.neededGrip_coeff?.toFixed(2) ?? "-"] : []),
      lampWords[row.lamps],
    ]),
  );
}
