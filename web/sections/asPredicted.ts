import { messageIn } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { besideWords, compare, frozenOn } from "../../sim/index.ts";
import { changedCells } from "./parts/changedCells.ts";
import { predictedCells } from "./parts/predictedCells.ts";
import { defineSection } from "./parts/section.ts";

/** What was predicted when the price was given, and what is it now? */
export default defineSection({
  name: "asPredicted",
  title: "As predicted",
  question: "What was predicted when the price was given, and what does the job say now?",
  inputs: ["job", "runs", "answer", "answerIndex", "units"],
  compute: ({ job, runs, answer, answerIndex, units }) => {
    const last = job.predictions.at(-1);
    const isOfJob = runs.candidates.length === job.packs.length && answer.packs.length === job.packs.length;
    const beside = last && compare(last, job, isOfJob ? { runs, answer } : undefined);
    const chosen = beside?.packs.find(({ name }) => name === (last?.recommended ?? job.packs[answerIndex]?.name));
    return {
      at: last && frozenOn(last.at),
      earlier: job.predictions.slice(0, -1).map(({ at, note }) => `${frozenOn(at)}${note ? ` (${note})` : ""}`),
      words: beside ? besideWords(beside).map((each) => messageIn(each, units)) : [],
      rows: beside ? predictedCells(beside, units) : [],
      changes: beside ? changedCells(beside, job, units) : [],
      isWhole: beside?.isWhole,
      isNewer: beside?.program === "newer",
      isUnchanged: beside?.isUnchanged ?? true,
      unit: units === "metric" ? "km" : "miles",
      use: chosen?.then && {
        name: chosen.name,
        was: writeQuantity("energyUse", chosen.then.battery_Whpkm, units),
        now: chosen.now && writeQuantity("energyUse", chosen.now.battery_Whpkm, units),
      },
    };
  },
  plot: ({ at, rows, changes }) => [
    ...(rows.length === 0
      ? []
      : [
          {
            caption: `As predicted on ${at}, with what the job says now beside it`,
            columns: [
              { title: "Pack" },
              { title: "Range predicted" },
              { title: "now" },
              { title: "Ten years, winter, predicted" },
              { title: "now" },
              { title: "Energy predicted" },
              { title: "now" },
              { title: "Car predicted" },
              { title: "now" },
              { title: "Verdict predicted", isText: true },
              { title: "now", isText: true },
            ],
            rows,
          },
        ]),
    ...(changes.length === 0
      ? []
      : [
          {
            caption: "Changed since",
            columns: [{ title: "Value" }, { title: "As predicted", isText: true }, { title: "Now", isText: true }],
            rows: changes,
          },
        ]),
  ],
  sentence: ({ words, use, earlier }) => {
    if (words.length === 0)
      return "No prediction is frozen in this job yet: freeze one under Paper when the price is given. A log of the finished car is then checked against it.";
    const beside = use?.now ? ` ${use.name} was predicted to take ${use.was}; now ${use.now}.` : "";
    const others = earlier.length === 0 ? "" : ` Earlier ones: ${earlier.join(", ")}.`;
    return `${words.join(" ")}${beside}${others}`;
  },
  summary: ({ at, isUnchanged }) =>
    at === undefined
      ? "nothing frozen yet"
      : `frozen on ${at}; ${isUnchanged ? "nothing has changed since" : "changed since"}`,
  attention: ({ words, isWhole, isNewer }) => (isWhole === false || isNewer ? words.slice(1) : []),
});
