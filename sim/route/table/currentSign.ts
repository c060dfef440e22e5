import type { Fixes } from "../log/fixes.ts";
import type { Question } from "../log/logFile.ts";

/**
 * Which way recorded amps count, from the log itself: over a drive more charge leaves the pack than comes back, so the
 * mean current while moving is positive where positive means leaving (this project's sign). Undefined where the log
 * has no current.
 */
export function currentSignQuestion(
  fixes: Fixes,
  given: 1 | -1 | undefined,
): { readonly question: Question; readonly factor: 1 | -1 } | undefined {
  const current_A = fixes.extras.packCurrent_A;
  if (!current_A) {
    return undefined;
  }
  let sum = 0;
  let size = 0;
  for (let i = 0; i < fixes.count; i++) {
    const isMoving = !(fixes.speed_mps[i] < 1);
    if (isMoving && !Number.isNaN(current_A[i])) {
      sum += current_A[i];
      size += Math.abs(current_A[i]);
    }
  }
  const factor = given ?? (sum < 0 ? -1 : 1);
  const share = size > 0 ? Math.abs(sum) / size : 0;
  const seen = `while moving, amps written as ${sum < 0 ? "negative" : "positive"} outweigh the others: they leave the pack`;
  return {
    factor,
    question: {
      name: "currentSign",
      option: "",
      choices: ["1", "-1"],
      guess: String(factor),
      evidence: given !== undefined ? "given" : share > 0.1 ? seen : "positive and negative amps balance",
      decided: given !== undefined || share > 0.1,
    },
  };
}
