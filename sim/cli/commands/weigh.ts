import { inputError } from "../../../shared/problems.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import { bayFits } from "../../plan/weight/bayFit.ts";
import { bayWordsOf } from "../../plan/weight/bayWords.ts";
import { overPlate, overPlateWords } from "../../plan/weight/overPlate.ts";
import { packSplit } from "../../plan/weight/packSplit.ts";
import { overWords, splitWords } from "../../plan/weight/splitWords.ts";
import { axleLoads, type Load } from "../../plan/weight/weigh.ts";
import { plateNotes, weightNotes } from "../../plan/weight/weightNotes.ts";
import { hasOption } from "../arguments/optionValue.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";

export const weigh: Command = {
  name: "weigh",
  usage: "JOB [--json]",
  summary: "axle loads before and after, with each pack, against the plates; how a pack may be split",
  options: { json: { type: "boolean", help: "for a program: one object, units in the keys" } },
  run(args, print) {
    const path = onlyJobPath(args, "weigh");
    const job = readJobFile(path);
    const { weights } = job;
    if (weights === undefined) {
      const wanted =
        "wheelbase, axles as weighed, what comes out and goes in with its place, and the pack's boxes are wanted";
      throw inputError("weights-missing", `${path} weights`, `found none: ${wanted}`);
    }
    const loads = axleLoads(job, weights);
    const splits = job.packs.map((pack) => ({
      pack: pack.name,
      split: packSplit(weights, packMass_kg(pack, job.module)),
    }));
    const over = job.packs.flatMap((pack) => {
      const found = overPlate(weights, pack.name, packMass_kg(pack, job.module));
      return found ? [messageIn(overPlateWords(pack.name, found), "metric")] : [];
    });
    const plates = plateNotes(weights).map((note) => messageIn(note, "metric"));
    const notes = weightNotes(job, weights).map((note) => messageIn(note, "metric"));
    if (hasOption(args, "json")) {
      print(
        jsonText({
          job: job.title,
          loads: loads.map((load) => ({ ...load, pack: load.pack ?? null })),
          splits: splits.map(({ pack, split }) => ({ pack, ...(split ?? { front: null, rear: null, over: [] }) })),
          overPlate: over,
          modulesThatFit: bayFits(weights, job.module),
          notes: [...plates, ...notes],
        }),
      );
      return;
    }
    const sentences = job.packs.flatMap((pack) => {
      const words = splitWords(pack.name, packMass_kg(pack, job.module), weights);
      return words ? [messageIn(words, "metric")] : [];
    });
    const room = bayWordsOf(weights, job, job.packs);
    print(
      [
        job.title,
        ...[...plates, ...over].map((text) => wrapText(text, "! ")),
        table(loads),
        ...[...sentences, ...(room ? [messageIn(room, "metric")] : []), ...notes].map((text) => wrapText(text)),
      ].join("\n\n"),
    );
  },
};

function table(loads: readonly Load[]): string {
  return textTable(
    [
      { heading: "\nload" },
      { heading: "\npack" },
      { heading: "front\n(kg)", isNumber: true },
      { heading: "rear\n(kg)", isNumber: true },
      { heading: "total\n(kg)", isNumber: true },
      { heading: "front\n(%)", isNumber: true },
      { heading: "\nover" },
    ],
    loads.map(({ name, pack, front_kg, rear_kg, total_kg, frontShare_frac, over }) => [
      name,
      pack ?? "",
      n(front_kg, 4),
      n(rear_kg, 4),
      n(total_kg, 4),
      n(100 * frontShare_frac),
      over.length === 0 ? "" : messageIn(overWords(over), "metric"),
    ]),
  );
}
