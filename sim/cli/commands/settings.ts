import { kindInfo } from "../../../shared/quantity/kinds/kinds.ts";
import { type Message, messageIn } from "../../../shared/quantity/message.ts";
import { answerFor } from "../../plan/answer/answer.ts";
import { chargePlan } from "../../plan/charging/chargePlan.ts";
import { currentsPlan } from "../../plan/currents/currentsPlan.ts";
import { driveCandidate } from "../../plan/drive/driveCandidate.ts";
import type { Setting } from "../../plan/settings/setting.ts";
import { type SettingsSheet, settingsSheet } from "../../plan/settings/settingsSheet.ts";
import { chosenPack } from "../arguments/chosenPack.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";
import { currentsJson } from "./currents.ts";

export const settings: Command = {
  name: "settings",
  usage: "JOB [--pack NAME] [--trace ID|FILE] [--json]",
  summary: "every value to set in controller, charger, battery management and converter, and where it comes from",
  options: {
    pack: { type: "string", value: "NAME", help: "with this pack; else the one that is recommended" },
    trace: { type: "string", value: "ID|FILE", help: "the road that currents are judged by; else the job's" },
    json: { type: "boolean", help: "for a program: one object, units in the keys, the currents inside" },
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "settings");
    const job = readJobFile(path);
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const index = chosenPack(job, args, trace);
    const candidates = job.packs.map((pack) => driveCandidate(job, pack, trace, false));
    const plan = currentsPlan(job, index, trace);
    const sheet = settingsSheet(job, index, plan, chargePlan(job, candidates));
    const { stop } = answerFor(job, candidates, undefined).packs[index];
    const refused = stop ? inMetric(stop.sentence) : undefined;
    if (hasOption(args, "json")) {
      print(
        jsonText({
          ...asJson(sheet),
          job: job.title,
          stop: refused ?? null,
          currents: currentsJson(job, trace.id, plan),
        }),
      );
      return;
    }
    print(asText(job.title, sheet, refused));
  },
};

const inMetric = (sentence: Message) => messageIn(sentence, "metric");

/** The sheet for a program: each value in words, and its quantities as numbers with their unit. */
function asJson({ pack, groups, cautions }: SettingsSheet) {
  return {
    pack,
    groups: groups.map(({ where, settings: list }) => ({ where, settings: list.map(settingJson) })),
    cautions: cautions.map(inMetric),
  };
}

function settingJson({ key, name, value, from, caution }: Setting) {
  return {
    key,
    name,
    value: inMetric(value),
    quantities: value.flatMap((part) =>
      typeof part === "string" ? [] : [{ value: part.value, unit: kindInfo(part.kind).suffix }],
    ),
    from: inMetric(from),
    caution: caution ? inMetric(caution) : null,
  };
}

function asText(title: string, { pack, groups, cautions }: SettingsSheet, stop: string | undefined): string {
  const lines = groups.map(({ where, settings: list }) => [where, ...list.map(settingText)].join("\n"));
  return [
    `${title}\nSettings with ${pack}`,
    ...(stop === undefined ? [] : [wrapText(`Stop. ${stop}`, "! ")]),
    cautions.map((each) => wrapText(inMetric(each), "! ")).join("\n"),
    ...lines,
    "Before and after each change: value, date, hand.",
  ].join("\n\n");
}

function settingText({ name, value, from, caution }: Setting): string {
  const lines = [wrapText(`${name}: ${inMetric(value)}`, "  "), wrapText(`(${inMetric(from)})`, "      ")];
  return [...lines, ...(caution ? [wrapText(inMetric(caution), "    ! ")] : [])].join("\n");
}
