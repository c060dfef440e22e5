import { type Message, messageIn } from "../../shared/quantity/message.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { S_PER_MIN } from "../../shared/units.ts";
import { promisedAndDriven } from "../charts/promisedAndDriven.ts";
import { measuredForm } from "../forms/road/measuredForm.ts";
import { defineSection } from "./parts/section.ts";

/** Does the built car do what was predicted of it, and where not, why? */
export default defineSection({
  name: "promisedAndDriven",
  title: "Promised and driven",
  question: "Does the built car do what was predicted of it, and where not, what is to be looked at?",
  given: measuredForm,
  inputs: ["measuredOutcome", "units"],
  compute: ({ measuredOutcome, units }) => {
    const words = (sentences: readonly Message[]) => sentences.map((sentence) => messageIn(sentence, units));
    if (measuredOutcome === undefined) return { kind: "none" as const };
    if (measuredOutcome.kind === "charge")
      return { kind: "charge" as const, sentence: messageIn(measuredOutcome.sentence, units) };
    const { sentences, notTold, remarks, packSentences, day, distance_km, pack, outlook } = measuredOutcome;
    const [verdict = "", ...findings] = words(sentences);
    return {
      kind: "drive" as const,
      outcome: measuredOutcome,
      units,
      verdict,
      findings,
      pack,
      day,
      notTold: words(notTold),
      remarks: words(remarks),
      packWords: words(packSentences),
      distance: writeQuantity("distance", distance_km, units),
      outlook: outlook.map(({ what, predicted, corrected }) => words([what, predicted, corrected])),
    };
  },
  plot: (found, drawing) => {
    if (found.kind !== "drive") return [];
    const { outcome, units, outlook, pack, notTold, remarks, packWords } = found;
    // Watt-hours for everybody: a stand takes a few of them.
    const energy = (energy_Wh: number) => `${Math.round(energy_Wh) + 0} Wh`;
    return [
      {
        name: "energy",
        caption: `How does the drive add up? Energy from ${pack} as logged, as predicted and as corrected`,
        chart: promisedAndDriven(outcome.lines, drawing),
      },
      {
        caption: "The drive as a whole",
        columns: [
          { title: "Quantity" },
          { title: "Logged" },
          { title: "Predicted" },
          { title: "Band of the prediction" },
          { title: "Logged lies", isText: true },
          { title: "Corrected" },
        ],
        rows: outcome.rows.map(({ words, kind, measured, predicted, corrected, isInside }) => [
          words,
          writeQuantity(kind, measured, units),
          writeQuantity(kind, predicted.value, units),
          `${writeQuantity(kind, predicted.low, units)} to ${writeQuantity(kind, predicted.high, units)}`,
          isInside ? "inside" : measured > predicted.value ? "above" : "below",
          writeQuantity(kind, corrected, units),
        ]),
        note: packWords.join(" "),
      },
      {
        caption: "Where the difference lies, by what the car was doing",
        columns: [
          { title: "While" },
          { title: "For" },
          { title: "Logged" },
          { title: "Predicted" },
          { title: "Difference" },
          { title: "Corrected" },
        ],
        rows: outcome.doings.map(({ doing, time_s, measured_Wh, predicted_Wh, corrected_Wh }) => [
          doing,
          `${(time_s / S_PER_MIN).toFixed(1)} min`,
          energy(measured_Wh),
          energy(predicted_Wh),
          energy(measured_Wh - predicted_Wh),
          energy(corrected_Wh),
        ]),
        note: [...notTold, ...remarks].join(" "),
      },
      ...(outlook.length > 0
        ? [
            {
              caption: "What the car does by either line",
              columns: [
                { title: "What" },
                { title: "As predicted" },
                { title: found.day === undefined ? "As corrected by the log" : `As corrected on ${found.day}` },
              ],
              rows: outlook,
              note: "The prediction stays as it was. To see all of the year and the week by the corrected line, take its values; undo brings the others back.",
            },
          ]
        : []),
    ];
  },
  sentence: (found) => {
    if (found.kind === "none") return "Nothing has been driven yet: drop the built car’s log here once there is one.";
    if (found.kind === "charge") return found.sentence;
    return [found.verdict, ...found.findings].join(" ");
  },
  summary: (found) => {
    if (found.kind === "none") return "no log of the built car yet";
    if (found.kind === "charge") return "a charge compared with the socket’s meter";
    // Of the verdict its figures; what they mean is said when the working is open.
    const [figures = ""] = found.verdict.split(/\. (?=[A-Z])/);
    return `${found.distance}: ${figures.charAt(0).toLowerCase()}${figures.slice(1)}`;
  },
  caution:
    "A logger at the pack’s terminals lies at traction voltage: clamps and taps are put on with the service disconnect open, by somebody who may work on it under the local rules.",
});
