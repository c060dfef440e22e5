import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../shared/units.ts";
import { rangeAgainstNeed } from "../charts/rangeAgainstNeed.ts";
import { daySlider } from "../forms/pack/daySlider.ts";
import { defineSection } from "./parts/section.ts";

/** Which pack is enough for the usual day, and why? */
export default defineSection({
  name: "whichIsEnough",
  title: "Which pack is enough",
  question: "Which is the smallest pack that does the usual day and has enough left?",
  given: (form) =>
    html`${daySlider(form)} ${form.fields(...(form.job.conditions?.winter ? [] : ["allowance.winter_ratio"]), "allowance.aged_frac")}`,
  fields: ["allowance"],
  explains: ["needed_km", "range_km", "dayUse_frac"],
  inputs: ["enough", "runs", "use", "answerIndex", "units"],
  compute: ({ enough, runs, use, answerIndex, units }) => ({
    chosen: answerIndex,
    pack: enough.pack,
    need: {
      packs: enough.packs.map(({ name, because }, index) => {
        const { range_km, rangeEnd } = runs.candidates[index];
        return { name, index, range_m: range_km * M_PER_KM, isAtLeast: rangeEnd === "time", because };
      }),
      day_m: use.usualDay_km * M_PER_KM,
      needed_m: enough.needed_km * M_PER_KM,
      ...(use.longestDay_km !== undefined && { longest_m: use.longestDay_km * M_PER_KM }),
    },
    sentences: enough.sentences.map((sentence) => messageIn(sentence, units)),
    rows: enough.packs.map(({ name, isEnough, spare_km, winterSpare_km, agedSpare_km, why }) => [
      name,
      isEnough ? "enough" : "not enough",
      ...[spare_km, winterSpare_km, agedSpare_km].map((left_km) => leftWords(left_km, units)),
      messageIn(why, units),
    ]),
  }),
  plot: ({ need, rows, chosen }, drawing) => [
    {
      caption: "How far does each pack go today? Against what the usual day asks for with winter and age",
      chart: rangeAgainstNeed(need, { ...drawing, chosen }),
    },
    {
      caption: "The packs beside the usual day",
      columns: [
        { title: "Pack" },
        { title: "Is it enough?", isText: true },
        { title: "Left, new, today" },
        { title: "Left, new, in winter" },
        { title: "Left, old, in winter" },
        { title: "Why", isText: true },
      ],
      rows,
      note: "No range here is a promise: it holds for this road, this load and this weather.",
    },
  ],
  sentence: ({ sentences }) => sentences.join(" "),
  summary: ({ pack }) => (pack === undefined ? "no pack is enough." : `${pack}: enough.`),
  attention: ({ pack }) => (pack === undefined ? ["None of the packs on the table is enough."] : []),
});

/** What is left of the range after the day, or by how much it falls short. */
function leftWords(left_km: number | undefined, units: UnitHabit): string {
  if (left_km === undefined) return "-";
  const distance = writeQuantity("distance", Math.abs(left_km), units);
  return left_km < 0 ? `${distance} short` : distance;
}
