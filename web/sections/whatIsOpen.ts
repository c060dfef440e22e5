import { html } from "lit-html";
import { repeat } from "lit-html/directives/repeat.js";
import type { Job } from "../../shared/job/job.ts";
import { atPath } from "../../shared/job/path.ts";
import { message, messageIn, whole } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../shared/units.ts";
import { openValues } from "../../sim/index.ts";
import { rankedUnknowns } from "../charts/rankedUnknowns.ts";
import { labelOf } from "../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../editing/fieldTable/writeAtPath.ts";
import type { JobEditor } from "../editing/jobEditor.ts";
import type { Form } from "../fields/fieldContext.ts";
import { originWords } from "../fields/originChoice.ts";
import { defineSection } from "./parts/section.ts";
import { variedTable } from "./parts/variedTable.ts";

/** Paths whose fields stand here, for each page, and of which job opened there. */
const shown = new WeakMap<JobEditor, { readonly opened: unknown; readonly paths: readonly string[] }>();

/**
 * The paths of all that is open. What was open since the job was opened keeps its field: none goes from under the hands that type in it, and what was
 * just typed can be mended.
 */
function pathsShown({ job, jobEditor }: Form): readonly string[] {
  const opened = jobEditor.opened.value;
  const before = shown.get(jobEditor);
  const stay = before?.opened === opened ? before.paths.filter((path) => isInJob(job, path)) : [];
  const paths = [...new Set([...stay, ...openValues(job).map(({ path }) => path)])].sort();
  shown.set(jobEditor, { opened, paths });
  return paths;
}

/** Whether the item of a list that a path lies in is still there; what is in no list may be emptied and filled again. */
function isInJob(job: Job, path: string): boolean {
  const [item] = /^.*\.\d+(?=\.|$)/.exec(path) ?? [];
  return item === undefined || atPath(job, item) !== undefined;
}

/** What is not known yet, and what does it do to the answer? */
export default defineSection({
  name: "whatIsOpen",
  title: "Unknowns",
  question: "Which values are still usual or guessed, and which of them matters most to the range?",
  explains: ["band_km"],
  idPrefix: "open-",
  given: (form) => {
    const paths = pathsShown(form);
    if (paths.length === 0) return html`<p class="aside">Nothing that the range hangs on is open.</p>`;
    return html`<p class="aside">What is open, to be typed over here or where it belongs: a value once it is measured, or a band such as “12 to 14”.</p>
      <div class="fields">${repeat(
        paths,
        (path) => path,
        (path) => form.field(path, labelOf(path)),
      )}</div>`;
  },
  inputs: ["unknowns", "varied", "runs", "answer", "answerIndex", "units"],
  compute: ({ unknowns, varied, runs, answer, answerIndex, units }) => {
    // Whole, as no range is known more finely than what these values do to it.
    const format = (range_km: number, how: "nearest" | "up" = "nearest") =>
      messageIn(message`${whole("distance", range_km, how)}`, units);
    const { name, range_km } = runs.candidates[answerIndex];
    const { range, verdict } = answer.packs[answerIndex];
    const doubts = unknowns
      .filter(({ effect_km }) => effect_km >= 0.005 * range_km)
      .slice(0, 10)
      .map((unknown) => ({
        label: labelOf(unknown.path),
        value: writeAtPath(unknown.path, unknown.value, units),
        from: originWords[unknown.from],
        share: writeQuantity("fraction", unknown.plusMinus_frac, units, 2),
        atLow_m: (unknown.failsAtLow ? 0 : unknown.atLow_km) * M_PER_KM,
        atHigh_m: (unknown.failsAtHigh ? 0 : unknown.atHigh_km) * M_PER_KM,
        fails: unknown.failsAtLow || unknown.failsAtHigh,
        effect: format(unknown.effect_km, "up"),
      }));
    return {
      name,
      varied: varied && variedTable(varied, units),
      isOnlyJust: verdict === "only just",
      doubts,
      count: unknowns.length,
      range: format(range_km),
      range_m: range_km * M_PER_KM,
      band: range ? `${format(range.new.low)} to ${format(range.new.high)}` : format(range_km),
    };
  },
  plot: ({ doubts, name, count, range_m, varied }, drawing) =>
    doubts.length === 0
      ? []
      : [
          {
            caption: `Which unknown matters most? The range of ${name} with one value at either end of its band, the others as they are`,
            chart: rankedUnknowns({ range_m, unknowns: doubts }, drawing),
          },
          {
            caption: "Where these values come from, and how far they may be off",
            columns: [
              { title: "Value" },
              { title: "Taken as" },
              { title: "From", isText: true },
              { title: "May be off by" },
            ],
            rows: doubts.map(({ label, value, from, share }) => [label, value, from, `± ${share}`]),
            note: `${count > doubts.length ? `The ${doubts.length} that matter most of ${count}. ` : ""}Where nobody said how far a value may be off, a tenth either way is assumed.`,
          },
          ...(varied ? [varied] : []),
        ],
  sentence: ({ doubts, count, name, range, band }) => {
    if (count === 0) return `Every value that the range of ${name} hangs on was measured or is from a handbook.`;
    if (doubts.length === 0)
      return `${count} values are still open, and none of them moves the range of ${name} to speak of.`;
    const [first] = doubts;
    const worth = first.fails
      ? "with the worst it may be, the car does not drive this road"
      : `worth up to ${first.effect}`;
    return `The range of ${name} is ${range}; with ${count} values still open, ${band}. Measure first: ${first.label.toLowerCase()}, ${worth}.`;
  },
  summary: ({ doubts, count }) => {
    if (count === 0) return "none: every value was measured or is from a handbook";
    const first = doubts[0] ? `; ${doubts[0].label.toLowerCase()} matters most` : "";
    return `${count} typed, usual or guessed values${first}`;
  },
  attention: ({ isOnlyJust, name, band }) =>
    isOnlyJust ? [`${name} is only just enough, with a range of ${band}: measure before it is promised.`] : [],
});
