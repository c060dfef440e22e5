import type { Candidate } from "../../../sim/index.ts";

type Layout = Pick<Candidate["pack"], "seriesModules" | "parallelModules">;

/** How a pack's modules are joined, as the trade writes it: `5s2p`. */
export function packLayout({ seriesModules, parallelModules }: Layout): string {
  return `${seriesModules}s${parallelModules}p`;
}

/** What `5s2p` means, for a reader who has not met it. */
export function layoutInWords(pack: Layout): string {
  const strings = pack.parallelModules === 1 ? "a single string" : `${pack.parallelModules} such strings in parallel`;
  const modules = pack.seriesModules === 1 ? "1 module" : `${pack.seriesModules} modules`;
  return `${packLayout(pack)}: ${modules} in series, ${strings}.`;
}
