import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { parseHTML } from "linkedom";
import type { Job } from "../../../shared/job/job.ts";
import { nearest } from "../../../shared/nearest.ts";
import { inputError } from "../../../shared/problems.ts";
import { clientSheet } from "../../../web/sheet/clientSheet.ts";
import { handoverPage } from "../../../web/sheet/handoverPage.ts";
import { serviceCard } from "../../../web/sheet/serviceCard.ts";
import { settingsPaper } from "../../../web/sheet/settingsPaper.ts";
import { sheetContent } from "../../../web/sheet/sheetContent.ts";
import { sheetStyle } from "../../../web/sheet/sheetStyle.ts";
import { visitForm } from "../../../web/sheet/visitForm.ts";
import { answerByDriving } from "../../plan/answer/answerByDriving.ts";
import { chargePlan } from "../../plan/charging/chargePlan.ts";
import { currentsPlan } from "../../plan/currents/currentsPlan.ts";
import { driveJob } from "../../plan/drive/driveJob.ts";
import { settingsSheet } from "../../plan/settings/settingsSheet.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import type { Command, CommandArguments } from "../command.ts";
import { checkPlace, isSameFile, writeText } from "../files/files.ts";
import { readJobFile } from "../files/jobFile.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

const papers = ["client", "visit", "settings", "handover", "service"] as const;

export const sheet: Command = {
  name: "sheet",
  usage: "JOB --out FILE.html [--force] [--paper client|visit|settings|handover|service] [--pack NAME]",
  summary: "the client sheet, or another paper of the job, as one page to open anywhere and print",
  options: {
    out: { type: "string", value: "FILE.html", help: "where it goes; it needs no other file" },
    paper: { type: "string", value: "NAME", help: `one of ${papers.join(", ")}; else client` },
    pack: { type: "string", value: "NAME", help: "the pack it speaks for; else the one that is recommended" },
    force: { type: "boolean", help: "replace a file of that name" },
  },
  run(args, _print, warn) {
    const path = jobPath(args);
    const out = textOption(args, "out");
    if (out === undefined)
      throw inputError("option-missing", "--out", "found no file to write, one is wanted: --out sheet.html");
    if (isSameFile(path, out))
      throw inputError("option-same-file", "--out", "found the job file itself, another name is wanted");
    const job = readJobFile(path);
    const paper = paperNamed(textOption(args, "paper"));
    const packIndex = packNamed(job, textOption(args, "pack"));
    const { document } = parseHTML("<!doctype html><html><head></head><body></body></html>");
    checkPlace(out, hasOption(args, "force") ? "replace" : "ask");
    const drawn = paperOf(paper, document, job, path, packIndex, warn);
    writeText(out, page(job.title, drawn.outerHTML), hasOption(args, "force") ? "replace" : "ask");
    warn(`written: ${out}; open it with a browser and print it`);
  },
};

function paperOf(
  paper: (typeof papers)[number],
  document: Document,
  job: Job,
  path: string,
  packIndex: number | undefined,
  warn: (text: string) => void,
): HTMLElement {
  if (paper === "visit") return visitForm(document, job.units);
  if (paper === "service") return serviceCard(document, job);
  const { trace } = roadToDrive(job, path, undefined, warn);
  const runs = driveJob(job, trace, { channels: false });
  const answer = answerByDriving(job, runs.candidates, trace);
  if (paper === "handover") return handoverPage(document, job, packIndex ?? answer.recommended ?? 0, job.units);
  const chosen = packIndex ?? answer.recommended;
  if (paper === "settings") {
    const index = chosen ?? 0;
    const sheet = settingsSheet(job, index, currentsPlan(job, index, trace), chargePlan(job, runs.candidates));
    return settingsPaper(document, { job, sheet, stop: answer.packs[index].stop?.sentence, units: job.units });
  }
  const input = { job, runs, answer, profile: trace.profile, chosen, units: job.units, date: new Date() };
  return clientSheet(document, sheetContent(input), answer, job.units);
}

function jobPath({ positionals }: CommandArguments): string {
  const [path, extra] = positionals;
  if (path === undefined) throw inputError("argument-missing", "sheet", "found no job file, one is wanted");
  if (extra !== undefined)
    throw inputError("argument-extra", extra, "found a second argument, sheet takes one job file");
  return path;
}

function paperNamed(name: string | undefined): (typeof papers)[number] {
  const paper = name === undefined ? "client" : papers.find((each) => each === name);
  if (paper) return paper;
  throw inputError("option-choice", "--paper", `found ${name}, one of ${papers.join(", ")} is wanted`);
}

function packNamed(job: Job, name: string | undefined): number | undefined {
  if (name === undefined) return undefined;
  const names = job.packs.map((pack) => pack.name);
  const index = names.indexOf(name);
  if (index >= 0) return index;
  const near = nearest(name, names);
  const hint = near ? `did you mean ${near}` : `the packs are ${names.join(", ")}`;
  throw inputError("pack-unknown", "--pack", `found no pack named ${name}; ${hint}`);
}

/** The whole page, with its look and its typeface inside and no script. */
function page(title: string, body: string): string {
  const name = title.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}</title>
<style>${face()}${sheetStyle}body { margin: 0; }</style>
</head>
<body>
${body}
</body>
</html>
`;
}

const weights = { normal: "normal", italic: "italic" };

/** The typeface as part of the page; a reader's own serif where it is not installed beside the command. */
function face(): string {
  try {
    const require = createRequire(import.meta.url);
    return Object.entries(weights)
      .map(([style, file]) => {
        const font = require.resolve(
          `@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-${file}.woff2`,
        );
        const data = readFileSync(font).toString("base64");
        return `@font-face { font-family: Handbook; font-style: ${style}; font-weight: 200 900; src: url(data:font/woff2;base64,${data}) format("woff2"); }\n`;
      })
      .join("");
  } catch {
    return "";
  }
}
