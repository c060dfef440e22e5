import type { Job } from "../../../shared/job/job.ts";
import type { Weights } from "../../../shared/job/schema/weights.ts";
import { type Message, message } from "../../../shared/quantity/message.ts";
import { type BayFit, bayFits, POSTURES } from "./bayFit.ts";

/** How many modules the boxes take and whether a pack's are in that, in a sentence; nothing where no box has its room typed. */
export function bayWords(weights: Weights, job: Pick<Job, "module">, pack: Job["packs"][number]): Message | undefined {
  return bayWordsOf(weights, job, [pack]);
}

/** The same for several packs at once. */
export function bayWordsOf(weights: Weights, job: Pick<Job, "module">, packs: Job["packs"]): Message | undefined {
  const fits = bayFits(weights, job.module);
  if (fits.length === 0) return undefined;
  const each = fits.map((fit) => `“${fit.box}”: ${countsOf(fit)}`).join("; ");
  const verdicts = packs.map((pack) => verdictOf(weights, fits, pack)).join(" ");
  return message`Modules that fit, a first look and no promise: ${each}. ${verdicts}`;
}

function verdictOf({ boxes }: Weights, fits: readonly BayFit[], pack: Job["packs"][number]): string {
  const modules = pack.seriesModules * pack.parallelModules;
  const has = `${pack.name} has ${modules} module${modules === 1 ? "" : "s"}`;
  const unknown = boxes.length - fits.length;
  if (unknown > 0) return `${has}; of the other box${unknown > 1 ? "es" : ""} the room inside is not known.`;
  const sum = fits.reduce((total, { most }) => total + most, 0);
  if (sum < modules) return `${has}: ${modules - sum} too many.`;
  const tight = fits.find(({ share_frac, most }) => Math.round(share_frac * modules) > most);
  if (tight === undefined) return `${has}: they fit.`;
  const asked = Math.round(tight.share_frac * modules);
  return `${has}: they fit, but not by the shares set: “${tight.box}” is to hold ${asked}.`;
}

function countsOf({ counts, most, best }: BayFit): string {
  if (most === 0) return "none, whichever way they stand";
  // The best way first.
  const others = POSTURES.filter((posture) => posture !== best);
  return [best, ...others].map((posture, i) => `${counts[posture]}${i === 0 ? " fit" : ""} ${posture}`).join(", ");
}
