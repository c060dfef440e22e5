import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { type Message, messageIn } from "../../../shared/quantity/message.ts";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import type { BothLines } from "../../plan/measured/bothLines.ts";
import type { ChargerFound } from "../../plan/measured/chargerFromLog.ts";
import type { Measured } from "../../plan/measured/measure.ts";
import { outlookRows } from "../../plan/measured/outlookRows.ts";
import { packWords } from "../../plan/measured/packWords.ts";
import { quantityWords } from "../../plan/measured/quantities.ts";
import { textTable } from "./table.ts";
import { wrapText } from "./wrapText.ts";

interface WholeReport {
  readonly job: Job;
  readonly found?: Measured;
  /** None where the log can hardly be of this car. */
  readonly lines?: BothLines | undefined;
  /** The pack compared with what ageing leaves by now. */
  readonly service?: readonly Message[];
  readonly charger?: ChargerFound;
  readonly predictedOn?: string;
  readonly day?: string;
  readonly distance_km?: number;
}

/** What was measured, predicted and corrected, for people. */
export function measuredReport({ job, found, lines, service = [], charger, day, distance_km }: WholeReport): string {
  const list = (sentences: readonly Message[]) =>
    sentences.map((sentence) => wrapText(messageIn(sentence, "metric"))).join("\n");
  if (!found) return [job.title, ...(charger ? [list([charger.sentence])] : [])].join("\n\n");
  const when = day === undefined ? "" : `, ${day}`;
  const [verdict, ...others] = found.sentences;
  return [
    `${job.title}\n${found.pack} aboard; a logged drive of ${n(distance_km ?? 0)} km${when}`,
    list([verdict]),
    quantityTable(found),
    doingTable(found),
    list(others),
    ...(found.notTold.length > 0 ? [list(found.notTold)] : []),
    list([...packWords(found.packFound, job.allowance.aged_frac), ...service]),
    ...(lines ? [outlookTable(lines, day)] : []),
    `How the log was read\n${list(found.remarks)}`,
  ].join("\n\n");
}

function outlookTable(lines: BothLines, day: string | undefined): string {
  const table = textTable(
    [
      { heading: "" },
      { heading: "as predicted", isNumber: true },
      { heading: day === undefined ? "as corrected" : `as corrected on ${day}`, isNumber: true },
    ],
    outlookRows(lines).map(({ what, predicted, corrected }) =>
      [what, predicted, corrected].map((words) => messageIn(words, "metric")),
    ),
  );
  return `${table}\nThe prediction stays as it was.`;
}

function quantityTable({ quantities }: Measured): string {
  return textTable(
    [
      { heading: "" },
      { heading: "logged", isNumber: true },
      { heading: "predicted", isNumber: true },
      { heading: "band of\nthe prediction", isNumber: true },
      { heading: "difference", isNumber: true },
      { heading: "" },
      { heading: "corrected", isNumber: true },
    ],
    quantities.map(({ id, measured, predicted, corrected, isInside }) => {
      const [words, kind] = quantityWords[id];
      const cell = (value: number) => writeQuantity(kind, value, "metric");
      const share =
        predicted.value === 0
          ? ""
          : `${measured >= predicted.value ? "+" : ""}${(100 * (measured / predicted.value - 1)).toFixed(0)} %`;
      return [
        words,
        cell(measured),
        cell(predicted.value),
        `${cell(predicted.low)} to ${cell(predicted.high)}`,
        share,
        isInside ? "inside" : "outside",
        cell(corrected),
      ];
    }),
  );
}

function doingTable({ doings }: Measured): string {
  return textTable(
    [
      { heading: "while" },
      { heading: "min", isNumber: true },
      { heading: "logged\n(Wh)", isNumber: true },
      { heading: "predicted\n(Wh)", isNumber: true },
      { heading: "difference\n(Wh)", isNumber: true },
      { heading: "corrected\n(Wh)", isNumber: true },
    ],
    doings.map(({ doing, time_s, measured_Wh, predicted_Wh, corrected_Wh }) => [
      doing,
      (time_s / 60).toFixed(1),
      n(measured_Wh),
      n(predicted_Wh),
      n(measured_Wh - predicted_Wh),
      n(corrected_Wh),
    ]),
  );
}

/** The same as one object for programs, units in the keys. */
export function measuredJson({ job, found, lines, service = [], predictedOn, day, distance_km }: WholeReport) {
  if (!found) throw new Error("a report of nothing was asked for");
  const { pack, linedUp, zero, quantities, doings, fit, packFound, verdict, isDoubted } = found;
  const inWords = (sentences: readonly Message[]) => sentences.map((sentence) => messageIn(sentence, "metric"));
  return {
    job: job.title,
    pack,
    day: day ?? null,
    predictedOn: predictedOn ?? null,
    distance_km,
    verdict,
    isDoubted,
    clock: { offset_s: linedUp.offset_s, how: linedUp.how, correlation: linedUp.correlation, sign: linedUp.sign },
    zero,
    quantities: quantities.map(({ id, measured, predicted, corrected, isInside }) => ({
      id,
      measured,
      predicted,
      corrected,
      isInside,
    })),
    doings,
    corrected: fit.fitted.map(({ id, value, low, high, start, ownHalf, alike }) => ({
      id,
      value,
      low,
      high,
      start,
      /** With all that looks like it in a log. */
      together: { low: value - ownHalf, high: value + ownHalf },
      alike,
    })),
    left: fit.left,
    mixed: fit.mixed,
    misfit_ratio: fit.misfit_ratio,
    packFound,
    lines: lines ?? null,
    findings: inWords(found.sentences),
    notTold: inWords(found.notTold),
    packWords: inWords([...packWords(packFound, job.allowance.aged_frac), ...service]),
    remarks: inWords(found.remarks),
  };
}
