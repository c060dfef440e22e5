import { saidIn } from "../../shared/quantity/said.ts";
import type { DriveReport } from "../plan/driveReport.ts";

/**
 * What `drive --json` prints: the report without its channels, which are the CSV's matter. A pack that goes nowhere uses an endless
 * share of its window for the day; JSON has no such number, and it is left out.
 */
export function driveJson({ candidates, enough, ...report }: DriveReport) {
  return {
    ...report,
    candidates: candidates.map(({ channels: _, findings, ...candidate }) => ({
      ...candidate,
      findings: findings.map((finding) => ({ ...finding, sentence: saidIn(finding.sentence, "metric") })),
    })),
    enough: {
      pack: enough.pack ?? null,
      sentences: enough.sentences.map((sentence) => saidIn(sentence, "metric")),
      packs: enough.packs.map(({ dayUse_frac, why, ...one }) => ({
        ...one,
        ...(Number.isFinite(dayUse_frac) && { dayUse_frac }),
        why: saidIn(why, "metric"),
      })),
    },
  };
}
