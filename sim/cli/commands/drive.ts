import type { Job } from "../../../shared/job/job.ts";
import { inputError } from "../../../shared/problems.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type Answer, answerFor } from "../../plan/answer/answer.ts";
import { answerByDriving } from "../../plan/answer/answerByDriving.ts";
import { driveJob } from "../../plan/drive/driveJob.ts";
import type { DriveReport } from "../../plan/driveReport.ts";
import { resample } from "../../trace/resample.ts";
import type { Trace } from "../../trace/trace.ts";
import { prepareDriveline } from "../../vehicle/driveline.ts";
import { hasOption, numberOption, textOption } from "../arguments/optionValue.ts";
import { forProgram } from "../arguments/usualOptions.ts";
import type { Command, CommandArguments, Print } from "../command.ts";
import { checkPlace, isSameFile, writeText } from "../files/files.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { channelsCsv } from "../printing/channelsCsv.ts";
import { driveJson } from "../printing/driveJson.ts";
import { driveTable } from "../printing/driveTable.ts";
import { jsonText } from "../printing/json.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

const stepBounds = { low: 0.01, high: 60, unit: "s" };
const mostRows = 5_000_000; // of one pass; more does not fit the memory of a workshop's computer with every channel
const manyRows = 500_000; // from here on a person wonders whether anything happens

export const drive: Command = {
  name: "drive",
  usage: "JOB [--trace ID|FILE] [--step S] [--json] [--channels FILE.csv [--force]]",
  summary: "every candidate pack of a job over a road: energy, range, peaks, and which pack is enough",
  options: {
    trace: {
      type: "string",
      value: "ID|FILE",
      help: "a road of the job, a standard cycle, a speed trace or a log; else the job's first road",
    },
    step: { type: "string", value: "S", help: "seconds a step, 0.01 to 60; else the road's own samples" },
    json: forProgram,
    channels: { type: "string", value: "FILE.csv", help: "write every sample of every pack, for a spreadsheet" },
    force: { type: "boolean", help: "with --channels: replace a file of that name" },
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "drive");
    const job = readJobFile(path);
    const { trace: road, source } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const trace = stepped(road, args, warn);
    const channels = channelsPath(args, source === undefined ? [path] : [path, source]);
    const rows = trace.time_s.length * job.packs.length;
    if (rows > manyRows)
      warn(`driving ${job.packs.length} packs over ${trace.time_s.length} samples, this takes a while`);
    const report = driveJob(job, trace, { channels: channels !== undefined });
    if (channels !== undefined) {
      writeText(channels, channelsCsv(report.candidates, gearNames(job)), ifThere(args));
      warn(`written: ${channels}`);
    }
    const answer = drivenAnswer(job, report, trace, warn);
    print(hasOption(args, "json") ? jsonText(driveJson(report, answer)) : driveTable(report, answer));
  },
};

/** The answer through all that is not known: hundreds of drives, so without that where one of them takes long. */
function drivenAnswer(job: Job, { candidates }: DriveReport, trace: Trace, warn: Print): Answer {
  if (trace.time_s.length * candidates.length <= manyRows) return answerByDriving(job, candidates, trace);
  warn("the road is long, so what is not known is left out: no bands, and no verdict where they decide it");
  return answerFor(job, candidates, undefined);
}

/** The road at the steps asked for, with a word where they are coarser than its samples. */
function stepped(road: Trace, args: CommandArguments, warn: Print): Trace {
  const step_s = numberOption(args, "step", stepBounds);
  if (step_s === undefined) return road;
  const last = road.time_s.length - 1;
  const duration_s = road.time_s[last];
  if (duration_s / step_s > mostRows) {
    const found = `found ${step_s} s for a road of ${formatNumber(duration_s)} s`;
    const least_s = formatNumber(duration_s / mostRows, 2);
    throw inputError("option-number", "--step", `${found}, at least ${least_s} s is wanted (${mostRows} steps)`);
  }
  if (step_s > duration_s / last)
    warn(`--step ${step_s}: coarser than the road's own samples, so corners are cut and distance and energy differ`);
  return resample(road, step_s);
}

/** Where the channels go, or undefined where they are not asked for. Never one of the files that were read. */
function channelsPath(args: CommandArguments, sources: readonly string[]): string | undefined {
  const path = textOption(args, "channels");
  if (path === undefined) return undefined;
  if (sources.some((source) => isSameFile(source, path)))
    throw inputError("out-source", path, "found a file that is read, it is left as it is; choose another name");
  if (!/\.csv$/i.test(path))
    throw inputError("out-name", path, "found a name without .csv at its end, a CSV file is written: channels.csv");
  checkPlace(path, ifThere(args)); // before the packs are driven
  return path;
}

function ifThere(args: CommandArguments): "replace" | "ask" {
  return hasOption(args, "force") ? "replace" : "ask";
}

function gearNames(job: Job): string[] {
  return prepareDriveline(job).gears.map(({ name }) => name);
}
