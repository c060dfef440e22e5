import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { thinSampling } from "../../trace/thinSampling.ts";
import type { Trace } from "../../trace/trace.ts";
import type { Finding } from "../driveReport.ts";

/** A recording that begins or ends slower than this, in m/s, is as good as at rest: the piece added is a few metres. */
const WORTH_SAYING_mps = 5 * MPS_PER_KMH;

/** What a person should know about a road itself, whatever car drives it. */
export function roadFindings(trace: Trace): Finding[] {
  return [...restFindings(trace), ...samplingFindings(trace), ...spreadFindings(trace)];
}

/** A log that leaves less open than this is as good as any. Assumed. */
const WELL_KNOWN_frac = 0.05;

/** What the log behind a road leaves open of its energy, which the bands of the answer have in them. */
function spreadFindings({ spread }: Trace): Finding[] {
  if (spread === undefined) return [];
  const [below_frac, above_frac] = [1 - spread.energy_ratio.low, spread.energy_ratio.high - 1];
  const most_frac = Math.max(below_frac, above_frac);
  if (most_frac < WELL_KNOWN_frac) return [];
  const percent = (frac: number) => String(Math.max(0, Math.round(100 * frac)));
  const known =
    percent(below_frac) === percent(above_frac)
      ? `±${percent(above_frac)} %`
      : `-${percent(below_frac)} to +${percent(above_frac)} %`;
  return [
    {
      kind: "roadSpread",
      weight: most_frac >= 2 * WELL_KNOWN_frac ? "warning" : "note",
      sentence: message`The log behind this road was sampled so thinly, or scatters so much, that its energy is known to ${known} only; the kilometres are given with that.`,
    },
  ];
}

/** What lies between thin samples is unknown, and energy likely low by a share that is given. */
function samplingFindings(trace: Trace): Finding[] {
  const thin = thinSampling(trace);
  if (thin === undefined) return [];
  const { share_frac, every_s, least_frac, most_frac } = thin;
  const part = share_frac > 0.95 ? message`This road` : message`${q("fraction", share_frac, 2)} of this road`;
  const low =
    most_frac < 0.01
      ? message`its energy is likely less than 1 % low`
      : message`its energy is likely ${formatNumber(100 * least_frac, 1)} to ${q("fraction", most_frac, 2)} low`;
  return [
    {
      kind: "thinSampling",
      weight: most_frac >= 0.02 ? "warning" : "note",
      sentence: message`${part} was recorded about every ${formatNumber(every_s, 2)} s only: what the car did in between is unknown, and ${low}.`,
    },
  ];
}

function restFindings({ restAdded }: Trace): Finding[] {
  if (restAdded === undefined) return [];
  const { start_mps, before_m, end_mps, after_m } = restAdded;
  const starts = start_mps >= WORTH_SAYING_mps;
  const ends = end_mps >= WORTH_SAYING_mps;
  if (!starts && !ends) return [];
  const start = message`begins at ${q("speed", start_mps / MPS_PER_KMH)}`;
  const end = message`ends at ${q("speed", end_mps / MPS_PER_KMH)}`;
  const before = message`${q("distance", before_m / M_PER_KM, 2)} from rest is added before it`;
  const after = message`${q("distance", after_m / M_PER_KM, 2)} to rest is added after it`;
  const sentence: Message =
    starts && ends
      ? message`This road ${start} and ${end}: ${before} and ${after}.`
      : starts
        ? message`This road ${start}: ${before}.`
        : message`This road ${end}: ${after}.`;
  return [{ kind: "restAdded", weight: "note", sentence }];
}
