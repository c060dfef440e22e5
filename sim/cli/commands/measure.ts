import type { Job, Prediction } from "../../../shared/job/job.ts";
import { jobText } from "../../../shared/job/jobText.ts";
import { inputError } from "../../../shared/problems.ts";
import { bothLines } from "../../plan/measured/bothLines.ts";
import { chargerFromLog } from "../../plan/measured/chargerFromLog.ts";
import { isCharging } from "../../plan/measured/checkPackLog.ts";
import { correctedJob } from "../../plan/measured/correctedJob.ts";
import { measure as held } from "../../plan/measured/measure.ts";
import { agedByLaws, serviceWords } from "../../plan/measured/serviceWords.ts";
import { frozenOn } from "../../plan/predictions/besideWords.ts";
import { roadsOfWeek } from "../../plan/week/weekRoadIds.ts";
import { writeDate } from "../../route/log/writeTime.ts";
import { hasOption, numberOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { quantityOption } from "../arguments/readOption.ts";
import { forProgram } from "../arguments/usualOptions.ts";
import type { Command, CommandArguments } from "../command.ts";
import { writeText } from "../files/files.ts";
import { readJobFile } from "../files/jobFile.ts";
import { answerOptions, logAnswers } from "../logs/logAnswers.ts";
import { measuredLogs } from "../logs/measuredLogs.ts";
import { jsonText } from "../printing/json.ts";
import { measuredJson, measuredReport } from "../printing/measuredReport.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";
import { watchOn } from "../serving/watch.ts";

const offsetBounds = { low: -1e10, high: 1e10, unit: "s" };
const yearsBounds = { low: 0, high: 40, unit: "years" };
const socketBounds = { low: 0.05, high: 1000, unit: "kWh" };

export const measure: Command = {
  name: "measure",
  usage: "JOB LOG... [--pack NAME] [--offset S] [--socket KWH] [--years N] [--corrected FILE] [--json]",
  summary: "the built car's log of volts, amps and motion beside what was predicted, and what differs",
  options: {
    pack: { type: "string", value: "NAME", help: "the pack that was built in; else the heaviest" },
    prediction: {
      type: "string",
      value: "N",
      help: "which frozen prediction, counted from 1; else the last, or the job as it is",
    },
    offset: { type: "string", value: "S", help: "seconds to add to the clock of volts and amps; else found" },
    load: { type: "string", value: "MASS", help: "people and luggage on that drive; else the job's" },
    temperature: { type: "string", value: "DEGC", help: "of the air on that drive; else the job's" },
    wind: {
      type: "string",
      value: "SPEED",
      help: "against the car on that drive, negative from behind; else the job's",
    },
    socket: { type: "string", value: "KWH", help: "what a meter at the socket counted over a log of charging" },
    years: { type: "string", value: "N", help: "since the build: compares the pack with what ageing leaves by then" },
    corrected: { type: "string", value: "FILE", help: "write the job as corrected by the log, beside the prediction" },
    force: { type: "boolean", help: "with --corrected: replace a file of that name" },
    json: forProgram,
    ...answerOptions,
  },
  run(args, print, warn) {
    const [path, ...paths] = args.positionals;
    if (path === undefined || paths.length === 0)
      throw inputError(
        "argument-missing",
        "measure",
        "found no log, a job and at least one log are wanted: measure my.bellhousing.json drive.csv",
      );
    const job = readJobFile(path);
    const packIndex = packIndexOf(job, args);
    const watch = watchOn(warn);
    const { logs, drive } = measuredLogs(paths, logAnswers(args), watch);
    const socket_kWh = numberOption(args, "socket", socketBounds);
    const isJson = hasOption(args, "json");
    if (socket_kWh !== undefined && (drive === undefined || isCharging(logs.pack))) {
      const charger = chargerFromLog(logs.pack, socket_kWh, job.charger.efficiency_frac);
      print(isJson ? jsonText({ job: job.title, charger }) : measuredReport({ job, charger }));
      return;
    }
    if (drive === undefined) {
      const found = isCharging(logs.pack) ? "a log of charging" : "volts and amps and no motion";
      throw inputError(
        "no-motion",
        logs.pack.file,
        `found ${found}; give the log with the car's speed or positions too, or --socket with a log of charging`,
      );
    }
    if (socket_kWh !== undefined) warn("--socket: the log is one of a drive, it is not used");
    const prediction = predictionOf(job, args);
    const promised = { ...job, ...prediction?.state };
    const found = held(
      onTheDay(promised, args),
      packIndex,
      { ...drive, log: logs.pack, offset_s: numberOption(args, "offset", offsetBounds) },
      prediction ? `predicted on ${frozenOn(prediction.at)}` : "predicted by the job as it is",
    );
    const day = drive.clock.isDated ? writeDate(found.start_s + drive.clock.utcOffset_s) : undefined;
    const note = `corrected from a drive of ${found.distance_km.toFixed(1)} km${day === undefined ? "" : ` on ${day}`}`;
    const corrected = correctedJob(promised, packIndex, found.fit, note);
    const { trace } = roadToDrive(job, path, undefined, warn);
    const weekTraces = () =>
      new Map(roadsOfWeek(promised).map((id) => [id, roadToDrive(promised, path, id, warn).trace]));
    const lines = found.isDoubted ? undefined : bothLines(promised, corrected, packIndex, trace, weekTraces());
    const years = numberOption(args, "years", yearsBounds);
    const service =
      years === undefined ? [] : serviceWords(found.packFound, agedByLaws(promised, packIndex, trace, years));
    if (years !== undefined && service.length === 0)
      warn("--years: this drive does not show the pack's capacity, so that its age is compared with nothing");
    const file = textOption(args, "corrected");
    if (file !== undefined && found.isDoubted)
      warn("--corrected: the log does not fit the job, so that nothing is corrected by it; no file is written");
    else if (file !== undefined) {
      const title = `${job.title} (${note})`.slice(0, 200);
      writeText(file, jobText({ ...job, ...corrected, title }), hasOption(args, "force") ? "replace" : "ask");
      warn(`written: ${file}, a second line beside the prediction, which stays as it is`);
    }
    const whole = {
      job,
      found,
      lines,
      service,
      ...(prediction && { predictedOn: prediction.at }),
      ...(day && { day }),
      distance_km: found.distance_km,
    };
    print(isJson ? jsonText(measuredJson(whole)) : measuredReport(whole));
  },
};

/** The frozen prediction that is compared: the one asked for, or the last. */
function predictionOf(job: Job, args: CommandArguments): Prediction | undefined {
  const count = job.predictions.length;
  const text = textOption(args, "prediction");
  if (text === undefined) return job.predictions[count - 1];
  if (count === 0)
    throw inputError(
      "no-prediction",
      "--prediction",
      "found no frozen prediction in the job, the log is compared with the job as it is",
    );
  const which = numberOption(args, "prediction", { low: 1, high: count, unit: "", isWhole: true });
  return job.predictions[(which ?? count) - 1];
}

/** The job with the load and weather of the drive that was recorded: both sides are of the same day. */
function onTheDay(job: Job, args: CommandArguments): Job {
  const load_kg = quantityOption(args, "load", "mass");
  const temperature_degC = quantityOption(args, "temperature", "temperature");
  const headWind_kmh = quantityOption(args, "wind", "speed", { min: -120 });
  return {
    ...job,
    vehicle: { ...job.vehicle, ...(load_kg !== undefined && { load_kg }) },
    environment: {
      ...job.environment,
      ...(temperature_degC !== undefined && { temperature_degC }),
      ...(headWind_kmh !== undefined && { headWind_kmh }),
    },
  };
}
