import type { Job } from "../../../shared/job/job.ts";
import { jobText } from "../../../shared/job/jobText.ts";
import { inputError } from "../../../shared/problems.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { answerByDriving } from "../../plan/answer/answerByDriving.ts";
import { driveJob } from "../../plan/drive/driveJob.ts";
import { besideWords, rangeWords } from "../../plan/predictions/besideWords.ts";
import { type Beside, compare } from "../../plan/predictions/compare.ts";
import { freeze, withPrediction } from "../../plan/predictions/freeze.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { forProgram } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readText, writeText } from "../files/files.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const predicted: Command = {
  name: "predicted",
  usage: "JOB [--freeze] [--note TEXT] [--json]",
  summary: "the predictions frozen in a job, with what it says now beside them; --freeze keeps today's",
  options: {
    freeze: { type: "boolean", help: "keep what is predicted now in the job file, beside those that are there" },
    note: { type: "string", value: "TEXT", help: "what it is frozen for: the quote, after the visit" },
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "predicted");
    const note = textOption(args, "note");
    if (note !== undefined && !hasOption(args, "freeze"))
      throw inputError("option-missing", "--note", "found a note and nothing to freeze, --freeze is wanted with it");
    if (note !== undefined && note.length > 200)
      throw inputError("option-long", "--note", `found ${note.length} letters, at most 200 allowed`);
    const job = readJobFile(path);
    const { trace } = roadToDrive(job, path, undefined, warn);
    const runs = driveJob(job, trace);
    const answer = answerByDriving(job, runs.candidates, trace);
    const reports = { runs, answer };
    if (!hasOption(args, "freeze")) {
      const all = job.predictions.map((prediction) => compare(prediction, job, reports));
      print(hasOption(args, "json") ? jsonText(asJson(job, all)) : asText(job, all));
      return;
    }
    const kept = withPrediction(job, freeze(job, reports, new Date().toISOString(), note));
    // The file as it was written, and nothing of it but the list of predictions.
    writeText(path, jobText({ ...JSON.parse(readText(path)), predictions: kept.predictions }), "replace");
    const all = kept.predictions.map((prediction) => compare(prediction, kept, reports));
    print(hasOption(args, "json") ? jsonText(asJson(kept, all)) : asText(kept, all));
    warn(`frozen in ${path}`);
  },
};

function asJson(job: Job, all: readonly Beside[]) {
  return {
    job: job.title,
    predictions: all.map((beside) => {
      const { prediction, program, isUnchanged, road, changed, isWhole, packs } = beside;
      const { state: _state, packs: _packs, road: on, note, recommended, ...head } = prediction;
      return {
        ...head,
        note: note ?? null,
        recommended: recommended ?? null,
        on,
        programIs: program,
        isUnchanged,
        roadIs: road,
        changed,
        isWhole: isWhole ?? null,
        packs: packs.map(({ name, then, now }) => ({ name, predicted: then ?? null, now: now ?? null })),
        sentences: besideWords(beside).map((each) => messageIn(each, "metric")),
      };
    }),
  };
}

function asText(job: Job, all: readonly Beside[]): string {
  if (all.length === 0)
    return `${job.title}\nNothing is frozen yet; --freeze keeps what is predicted now, to compare a log with.`;
  return [job.title, ...all.map(besideText)].join("\n\n");
}

function besideText(beside: Beside): string {
  const { prediction, packs, changed } = beside;
  const note = prediction.note === undefined ? [] : [wrapText(`For: ${prediction.note}`)];
  const list =
    changed.length === 0
      ? []
      : [wrapText(`Changed since: ${changed.slice(0, 12).join(", ")}${changed.length > 12 ? " ..." : ""}`)];
  const range = (pack: (typeof packs)[number]["now"]) => {
    const words = pack && rangeWords(pack);
    return words ? messageIn(words, "metric") : "-";
  };
  const rows = packs.map(({ name, then, now }) => [
    name,
    range(then),
    range(now),
    then ? n(then.battery_Whpkm) : "-",
    now ? n(now.battery_Whpkm) : "-",
    then?.verdict ?? "-",
    now?.verdict ?? "-",
  ]);
  const head = [
    { heading: "\npack" },
    { heading: "range\npredicted" },
    { heading: "\nnow" },
    { heading: "Wh/km\npredicted", isNumber: true },
    { heading: "\nnow", isNumber: true },
    { heading: "verdict\npredicted" },
    { heading: "\nnow" },
  ];
  const sentences = besideWords(beside).map((each) => wrapText(messageIn(each, "metric")));
  return [...sentences, ...note, ...list, textTable(head, rows)].join("\n");
}
