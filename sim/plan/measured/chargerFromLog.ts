import { inputError } from "../../../shared/problems.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { J_PER_KWH } from "../../../shared/units.ts";
import type { PackLog } from "../../trace/packLog.ts";
import type { Band } from "../answer/band.ts";

/** What a charge showed of the charger. */
export interface ChargerFound {
  readonly socket_kWh: number;
  readonly pack_kWh: number;
  readonly efficiency_frac: Band;
  readonly promised_frac: number;
  readonly sentence: Message;
}

/** A meter at a socket and a clamp at the pack are each good to about 1 %; common practice, no source. */
const METER_frac = 0.01;
/** A logger that falls silent for longer than this says nothing of what flowed. */
const GAP_s = 120;

/**
 * The charger's real efficiency from what a socket's meter counted and what the log of the same charge brought to the pack.
 * Throws InputError where more would have come out than went in, or hardly anything.
 */
export function chargerFromLog(log: PackLog, socket_kWh: number, promised_frac: number): ChargerFound {
  const pack_kWh = chargedEnergy_kWh(log);
  const ratio = pack_kWh / socket_kWh;
  if (ratio > 1 + 2 * METER_frac)
    throw inputError(
      "socket-less",
      log.file,
      `found ${pack_kWh.toFixed(1)} kWh into the pack and ${socket_kWh} kWh from the socket: more than went in; is the meter's reading that of this charge?`,
    );
  if (ratio < 0.3)
    throw inputError(
      "socket-more",
      log.file,
      `found ${pack_kWh.toFixed(1)} kWh into the pack of ${socket_kWh} kWh from the socket: the log holds only a part of the charge, or the meter's reading is of more than this one`,
    );
  const half_frac = Math.SQRT2 * METER_frac;
  const band = { value: ratio, low: ratio * (1 - half_frac), high: Math.min(1, ratio * (1 + half_frac)) };
  const isInside = promised_frac >= band.low && promised_frac <= band.high;
  const verdict = isInside ? "as in the job" : promised_frac > ratio ? "less than in the job" : "more than in the job";
  return {
    socket_kWh,
    pack_kWh,
    efficiency_frac: band,
    promised_frac,
    sentence: message`${q("energy", pack_kWh)} of ${q("energy", socket_kWh)} from the socket reached the pack: the charger passes ${q("fraction", ratio, 2)} on (${q("fraction", band.low, 2)} to ${q("fraction", band.high, 2)}), ${verdict}, which has ${q("fraction", promised_frac, 2)}.`,
  };
}

/** Energy that flowed one way through the terminals, in kWh, whichever sign the amps have. */
function chargedEnergy_kWh({ time_s, voltage_V, current_A }: PackLog): number {
  let sum_J = 0;
  let last = -1;
  for (let i = 0; i < time_s.length; i++) {
    if (Number.isNaN(voltage_V[i] + current_A[i])) continue;
    const dt_s = last < 0 ? 0 : time_s[i] - time_s[last];
    if (dt_s > 0 && dt_s <= GAP_s)
      sum_J += 0.5 * dt_s * (voltage_V[i] * current_A[i] + voltage_V[last] * current_A[last]);
    last = i;
  }
  return Math.abs(sum_J) / J_PER_KWH;
}
