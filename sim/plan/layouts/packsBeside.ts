import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import type { Message } from "../../../shared/quantity/message.ts";
import type { Trace } from "../../trace/trace.ts";
import { cellsOf } from "../money/quote.ts";
import type { Span } from "../money/span.ts";
import { type Judged, judgePack } from "./judgePack.ts";
import type { Smallest } from "./smallestPack.ts";

/** What a pack is among those put beside one another. */
export type PackRole = "asked for" | "next smaller" | "smallest" | "next larger" | "nearest";

/** A pack beside the smallest that will do. */
export interface PackBeside {
  readonly roles: readonly PackRole[];
  readonly pack: Pack;
  readonly nominal_kWh: number;
  readonly mass_kg: number;
  /** On one charge when new, in the job's own weather. */
  readonly range_km: number;
  /** Left of the day that is asked for, in its condition, as it counts; absent for a car that does not drive the road. */
  readonly left_km?: number;
  readonly meets: boolean;
  /** What it fails on, or with how much to spare it does not. */
  readonly why: Message;
  /** Of its cells, in the job's currency, where the job says what they cost. */
  readonly cost?: Span;
}

/** The packs that the client asked for beside the smallest that will do and its neighbours, or beside what comes nearest; by energy, the smallest first. */
export function packsBeside(job: Job, trace: Trace, found: Smallest): PackBeside[] {
  const { smallest, nextSmaller, nextLarger, nearest } = found;
  const all: PackBeside[] = [];
  const put = (role: PackRole, judged: Judged | undefined) => {
    if (judged === undefined) return;
    const row = rowOf(job, role, judged);
    const same = all.findIndex((other) => isSame(other, row));
    if (same < 0) all.push(row);
    else all[same] = { ...all[same], roles: [...all[same].roles, role] };
  };
  put("next smaller", nextSmaller);
  put("smallest", smallest);
  put("next larger", nextLarger);
  put("nearest", nearest);
  for (const pack of job.packs) if (pack.isAskedFor) put("asked for", judgePack(job, pack, trace));
  return all.sort((a, b) => a.nominal_kWh - b.nominal_kWh);
}

function rowOf(job: Job, role: PackRole, { pack, candidate, left_km, meets, why }: Judged): PackBeside {
  const { nominal_kWh, mass_kg } = candidate.pack;
  const cost = cellsOf(pack.cellPrice ?? job.costs?.cells, pack, candidate.pack);
  return {
    roles: [role],
    pack,
    ...{ nominal_kWh, mass_kg, range_km: candidate.range_km, meets, why },
    ...(left_km && { left_km: left_km.low }),
    ...(cost && { cost }),
  };
}

/** Packs of one layout, energy, mass and range, whatever they are called. */
function isSame(a: PackBeside, b: PackBeside): boolean {
  return (
    a.pack.seriesModules === b.pack.seriesModules &&
    a.pack.parallelModules === b.pack.parallelModules &&
    a.nominal_kWh === b.nominal_kWh &&
    a.mass_kg === b.mass_kg &&
    a.range_km === b.range_km
  );
}
