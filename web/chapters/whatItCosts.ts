import { html } from "lit-html";
import { messageIn } from "../../shared/quantity/message.ts";
import { BESIDES, costSentences } from "../../sim/index.ts";
import { cumulativeCost } from "../charts/cumulativeCost.ts";
import { defineChapter } from "./parts/chapter.ts";

/** What does it cost, and does it pay back? */
export default defineChapter({
  name: "whatItCosts",
  title: "What it costs",
  working: "money",
  given: (form) =>
    html`<p class="aside besides">${messageIn(BESIDES, form.job.units)}</p>${
      form.job.costs?.running
        ? form.fields("costs.running.yearly.0.distance_km", "costs.running.use_l100km", "costs.running.price_perl")
        : ""
    }`,
  inputs: ["costPlan", "packIndex", "units"],
  compute: ({ costPlan, packIndex, units }) => {
    const pack = costPlan?.packs[packIndex] ?? costPlan?.packs[0];
    if (!costPlan || !pack) return undefined;
    const [year] = pack.yearly;
    return {
      words: costSentences(costPlan, pack)
        .map((each) => messageIn(each, units))
        .join(" "),
      name: pack.quote.pack,
      lines: year && {
        pack: { name: pack.quote.pack, spent: year.spent },
        other: { name: costPlan.against.name, spent: year.spentOther },
        paidBack_years: year.payback.value_years,
        currency: costPlan.currency,
      },
    };
  },
  sentence: (result) => result?.words ?? "Not priced yet: work, cells and running costs are entered under Money.",
  plot: (result, drawing) =>
    result?.lines && {
      caption: `Does it pay back? All that is spent, ${result.name} beside ${result.lines.other.name}; bands from all low to all high`,
      chart: cumulativeCost(result.lines, drawing),
    },
});
