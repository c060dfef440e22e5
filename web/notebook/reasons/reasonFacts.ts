import type { ReasonFacts } from "../../../sim/index.ts";
import { familiarRow } from "../../sections/parts/steadySpeeds.ts";
import type { Values } from "../../sections/parts/values.ts";
import type { Graph } from "../graph/graph.ts";

/** A value of the page once it stands; nothing while it waits, failed, or is worked out again. */
export type Standing = <Name extends keyof Values>(name: Name) => Values[Name] | undefined;

/** Reads values that stand for what is in the job now. */
export function standingIn(graph: Graph): Standing {
  return (name) => {
    const reading = graph.read(name).value;
    return reading.state === "ready" && !reading.isLate ? (reading.value as Values[typeof name]) : undefined;
  };
}

/** What is known of a pack for its reasons; nothing until it has been driven. */
export function reasonFacts(standing: Standing, packIndex: number | undefined): ReasonFacts | undefined {
  const [job, runs, enough, units] = [standing("job"), standing("runs"), standing("enough"), standing("units")];
  const run = packIndex === undefined ? undefined : runs?.candidates[packIndex];
  if (!job || !run || !enough || !units || packIndex === undefined || !job.packs[packIndex]) return undefined;
  return {
    job,
    run,
    packIndex,
    needed_km: enough.needed_km,
    steady: familiarRow(standing("steady")?.[packIndex] ?? [], units),
    envelope: standing("packIndex") === packIndex ? standing("motorSurface")?.envelope : undefined,
    unknowns: standing("answerIndex") === packIndex ? standing("unknowns") : undefined,
  };
}
