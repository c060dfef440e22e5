import { messageIn } from "../../shared/quantity/message.ts";
import { settingsSheet } from "../../sim/index.ts";
import { defineSection } from "./parts/section.ts";

/** What is set in controller, charger, battery management and converter? */
export default defineSection({
  name: "settings",
  title: "Settings",
  question:
    "What is set in controller, charger, battery management and converter, and where does each value come from?",
  inputs: ["job", "currentsPlan", "chargePlan", "answer", "packIndex", "units"],
  compute: ({ job, currentsPlan: currents, chargePlan, answer, packIndex, units }) => {
    const index = Math.min(packIndex, job.packs.length - 1);
    const inWords = (sentence: Parameters<typeof messageIn>[0]) => messageIn(sentence, units);
    const { pack, groups, cautions } = settingsSheet(job, index, currents, chargePlan);
    const { stop } = answer.packs[index] ?? {};
    return {
      pack,
      groups: groups.map(({ where, settings }) => ({
        where,
        rows: settings.map(({ name, value, from, caution }) => [
          name,
          inWords(value),
          inWords(from),
          caution ? inWords(caution) : "",
        ]),
      })),
      cautions: cautions.map(inWords),
      count: groups.reduce((sum, { settings }) => sum + settings.length, 0),
      bySheet: groups.reduce(
        (sum, { settings }) => sum + settings.filter(({ from }) => inWords(from).startsWith("not in the job")).length,
        0,
      ),
      stop: stop ? inWords(stop.sentence) : undefined,
    };
  },
  plot: ({ pack, groups, cautions }) =>
    groups.map(({ where, rows }, i) => ({
      caption: `${where}, with ${pack}`,
      columns: [
        { title: "Setting" },
        { title: "Value", isText: true },
        { title: "Where it comes from", isText: true },
        { title: "Take care", isText: true },
      ],
      rows,
      ...(i === 0 && { note: cautions.join(" ") }),
    })),
  sentence: ({ pack, count, bySheet, stop }) => {
    if (stop !== undefined) return `Nothing is to be set with ${pack}: ${stop}`;
    const missing = bySheet === 0 ? "all of them are known here" : `${bySheet} of them are only in the makers’ sheets`;
    return `${count} values with ${pack}, ${missing}. The settings sheet, under Paper, has a box beside each for what was set, when and by whom.`;
  },
  summary: ({ pack, count, stop }) => (stop === undefined ? `${count} values with ${pack}` : `${pack} may not be used`),
  attention: ({ pack, stop }) => (stop === undefined ? [] : [`${pack}: ${stop}`]),
  caution:
    "A wrong setting can burn cells, break a gearbox or lock an axle. Makers’ data and the local code come first; set with the contactors open, try on stands.",
});
