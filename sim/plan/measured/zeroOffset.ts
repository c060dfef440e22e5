import type { PackLog } from "../../trace/packLog.ts";
import type { DrivenAsMeasured } from "./driveAsMeasured.ts";
import type { LinedUp } from "./lineUp.ts";
import { packSamples } from "./packSamples.ts";

/** What the ammeter shows of nothing, and how that was found. */
export interface ZeroOffset {
  readonly zero_A: number;
  /** `off`: it stood switched off for a while; `charging`: charge seemed to flow in at rest; `unknown`: taken as nought. */
  readonly how: "off" | "charging" | "unknown";
  /** Stands with the car switched off, on the motion's clock: they show no accessories. */
  readonly off: readonly { readonly from_s: number; readonly to_s: number }[];
}

const LEAST_STAND_s = 10;
/** A car that draws less than this share of what it draws at its other rests is switched off. Assumed. */
const OFF_frac = 0.25;
/** Readings this near to nought show no offset. */
const LEAST_A = 0.15;

/**
 * The zero offset of the amps, from what they show while the car stands. At rest a car that is on draws its accessories, and nothing tells those
 * from an offset; only a rest with the car off does, or one at which charge seems to flow into the pack, which nothing could do.
 */
export function zeroOffset(drive: DrivenAsMeasured, log: PackLog, lined: LinedUp, accessories_W: number): ZeroOffset {
  const samples = packSamples(drive, log, lined, 0);
  const stands: { amps: number[]; from_s: number; to_s: number; volts: number }[] = [];
  let open: (typeof stands)[number] | undefined;
  for (let k = 0; k < samples.count; k++) {
    const row = samples.row[k];
    const isStanding = drive.target_mps[row] < 0.3 && drive.target_mps[row + 1] < 0.3;
    if (!isStanding) {
      open = undefined;
      continue;
    }
    if (!open) {
      open = { amps: [], from_s: samples.time_s[k], to_s: samples.time_s[k], volts: samples.voltage_V[k] };
      stands.push(open);
    }
    open.amps.push(samples.current_A[k]);
    open.to_s = samples.time_s[k];
  }
  const levels = stands.filter(({ from_s, to_s }) => to_s - from_s >= LEAST_STAND_s);
  if (levels.length === 0) return { zero_A: 0, how: "unknown", off: [] };
  const middles_A = levels.map(({ amps }) => middleOf(amps)).sort((a, b) => a - b);
  const wanted_A = accessories_W / levels[0].volts;
  const [least_A] = middles_A;
  const most_A = middles_A[middles_A.length - 1];
  const isOff = Math.abs(least_A) < OFF_frac * most_A && most_A - least_A > 0.5 * wanted_A;
  if (isOff) {
    const off = levels.filter(({ amps }) => middleOf(amps) - least_A < OFF_frac * (most_A - least_A));
    return { zero_A: Math.abs(least_A) < LEAST_A ? 0 : least_A, how: "off", off };
  }
  if (least_A < -LEAST_A) return { zero_A: least_A - wanted_A, how: "charging", off: [] };
  return { zero_A: 0, how: "unknown", off: [] };
}

/** The middle value: the second in which the car is switched on does not sway it. */
function middleOf(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1];
}
