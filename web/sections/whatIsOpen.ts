import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../shared/units.ts";
import { rankedUnknowns } from "../charts/rankedUnknowns.ts";
import { labelOf } from "../editing/fieldTable/fieldAt.ts";
import { writeAtPath } from "../editing/fieldTable/writeAtPath.ts";
import { originWords } from "../fields/originChoice.ts";
import { defineSection } from "./parts/section.ts";

/** What is not known yet, and what does it do to the answer? */
export default defineSection({
  name: "whatIsOpen",
  title: "Unknowns",
  question: "Which values are still usual or guessed, and which of them matters most to the range?",
  explains: ["band_km"],
  inputs: ["unknowns", "runs", "enough", "answerIndex", "units"],
  compute: ({ unknowns, runs, enough, answerIndex, units }) => {
    const say = (range_km: number) => writeQuantity("distance", range_km, units);
    const { name, range_km } = runs.candidates[answerIndex];
    // Taken as independent of one another, their effects add up as squares do.
    const together_km = Math.hypot(...unknowns.map(({ effect_km }) => effect_km));
    const doubts = unknowns
      .filter(({ effect_km }) => effect_km >= 0.005 * range_km)
      .slice(0, 10)
      .map((unknown) => ({
        label: labelOf(unknown.path),
        value: writeAtPath(unknown.path, unknown.value, units),
        from: originWords[unknown.from],
        share: writeQuantity("fraction", unknown.plusMinus_frac, units, 2),
        atLow_m: unknown.atLow_km * M_PER_KM,
        atHigh_m: unknown.atHigh_km * M_PER_KM,
        effect: say(unknown.effect_km),
      }));
    const { needed_km } = enough;
    const isCloseCall = enough.packs[answerIndex].isEnough && range_km - together_km < needed_km;
    return {
      name,
      needed: isCloseCall ? say(needed_km) : undefined,
      doubts,
      count: unknowns.length,
      range: say(range_km),
      range_m: range_km * M_PER_KM,
      band: `${say(Math.max(0, range_km - together_km))} to ${say(range_km + together_km)}`,
    };
  },
  plot: ({ doubts, name, count, range_m }, drawing) =>
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
        ],
  sentence: ({ doubts, count, name, range, band }) => {
    if (count === 0) return `Every value that the range of ${name} hangs on was measured or is from a handbook.`;
    if (doubts.length === 0)
      return `${count} values are still open, and none of them moves the range of ${name} to speak of.`;
    const [first] = doubts;
    return `The range of ${name} is ${range}; with ${count} values still open it may well be anything from ${band}. Measure first: ${first.label.toLowerCase()}, worth ${first.effect} either way.`;
  },
  summary: ({ doubts, count }) => {
    if (count === 0) return "none: every value was measured or is from a handbook";
    const first = doubts[0] ? `; ${doubts[0].label.toLowerCase()} matters most, ±${doubts[0].effect}` : "";
    return `${count} typed, usual or guessed values${first}`;
  },
  attention: ({ needed, name, band }) =>
    needed === undefined
      ? []
      : [`The usual day asks for ${needed}, and ${name} may go anything from ${band}: measure before it is promised.`],
});
