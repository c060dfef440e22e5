import { messageIn } from "../../../shared/quantity/message.ts";
import type { UnitHabit } from "../../../shared/quantity/writeQuantity.ts";
import type { Candidate } from "../../../sim/index.ts";

/** What the drive found of certain kinds, each sentence once, with the packs that it holds for unless it holds for all. */
export function findingsOf(candidates: readonly Candidate[], kinds: readonly string[], units: UnitHabit): string[] {
  const packsBySentence = new Map<string, string[]>();
  for (const { name, findings } of candidates) {
    for (const { kind, sentence } of findings) {
      const words = messageIn(sentence, units);
      if (kinds.includes(kind)) packsBySentence.set(words, [...(packsBySentence.get(words) ?? []), name]);
    }
  }
  return [...packsBySentence].map(([sentence, packs]) =>
    packs.length === candidates.length ? sentence : `${packs.join("; ")}: ${sentence}`,
  );
}
