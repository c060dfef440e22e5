import { messageIn } from "../../../shared/quantity/message.ts";
import type { Answer } from "../../plan/answer/answer.ts";
import { answerWords, settlementWords } from "../../plan/answer/sentence.ts";
import type { Stop } from "../../plan/answer/stops.ts";
import type { DriveReport } from "../../plan/driveReport.ts";

/**
 * What `drive --json` prints: the report without its channels, which are the CSV's matter, and the answer. A pack that goes nowhere
 * uses an endless share of its window for the day; JSON has no such number, and it is left out.
 */
export function driveJson({ candidates, enough, ...report }: DriveReport, answer: Answer) {
  return {
    ...report,
    candidates: candidates.map(({ channels: _, findings, ...candidate }) => ({
      ...candidate,
      findings: findings.map((finding) => ({ ...finding, sentence: messageIn(finding.sentence, "metric") })),
    })),
    enough: {
      pack: enough.pack ?? null,
      sentences: enough.sentences.map((sentence) => messageIn(sentence, "metric")),
      packs: enough.packs.map(({ dayUse_frac, why, ...one }) => ({
        ...one,
        ...(Number.isFinite(dayUse_frac) && { dayUse_frac }),
        why: messageIn(why, "metric"),
      })),
    },
    answer: answerJson(answer),
  };
}

/** The verdict in the words of the page, with the kilometres behind it. */
function answerJson(answer: Answer) {
  const { headline, sentences } = answerWords(answer);
  const nameOf = (index: number | undefined) => (index === undefined ? null : answer.packs[index].name);
  return {
    headline: messageIn(headline, "metric"),
    sentence: sentences.map((sentence) => messageIn(sentence, "metric")).join(" "),
    recommended: nameOf(answer.recommended),
    enough: nameOf(answer.enough),
    packs: answer.packs.map(({ name, verdict, left, longest, stop, overPlate, cannot }, i) => ({
      name,
      verdict: verdict ?? null,
      ...(left && { left_km: left }),
      ...(longest && { longestDayLeft_km: longest }),
      ...(stop && { stop: stopJson(stop) }),
      ...(overPlate && { overPlate: messageIn(overPlate, "metric") }),
      ...(cannot && { cannot: messageIn(cannot, "metric") }),
      ...(answer.settlements[i] && {
        measure: settlementWords(answer, i)
          .map((words) => messageIn(words, "metric"))
          .join(" "),
      }),
    })),
  };
}

function stopJson({ kind, limit, value, sentence, ways }: Stop) {
  return {
    kind,
    limit: limit.value,
    value: value.value,
    sentence: messageIn(sentence, "metric"),
    ways: ways.map(({ words }) => messageIn(words, "metric")),
  };
}
