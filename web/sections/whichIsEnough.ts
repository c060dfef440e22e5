import { html } from "lit-html";
import { saidIn } from "../../shared/quantity/said.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { daySlider } from "../inputs/daySlider.ts";
import { defineSection } from "../notebook/section.ts";

/** Which pack is enough for the usual day, and why? */
export default defineSection({
  name: "whichIsEnough",
  title: "Which pack is enough",
  question: "Which is the smallest pack that does the usual day and has enough left?",
  given: (form) => html`${daySlider(form)} ${form.fields("allowance.winter_ratio", "allowance.aged_frac")}`,
  fields: ["allowance"],
  explains: ["needed_km", "range_km"],
  inputs: ["enough", "units"],
  compute: ({ enough, units }) => ({
    pack: enough.pack,
    sentences: enough.sentences.map((sentence) => saidIn(sentence, units)),
    rows: enough.packs.map(({ name, isEnough, dayUse_frac, spare_km, why }) => [
      name,
      isEnough ? "enough" : "not enough",
      dayUse_frac === undefined ? "does not move" : writeQuantity("fraction", dayUse_frac, units),
      writeQuantity("distance", spare_km, units),
      saidIn(why, units),
    ]),
  }),
  plot: ({ rows }) => [
    {
      caption: "The packs held against the usual day",
      columns: [
        { title: "Pack" },
        { title: "Is it enough?", isText: true },
        { title: "Used by the day" },
        { title: "Left after it" },
        { title: "Why", isText: true },
      ],
      rows,
      note: "No range here is a promise: it holds for this road, this load and this weather.",
    },
  ],
  sentence: ({ sentences }) => sentences.join(" "),
  inShort: ({ sentences }) => sentences[0] ?? "",
  attention: ({ pack }) => (pack === undefined ? ["None of the packs on the table is enough."] : []),
});
