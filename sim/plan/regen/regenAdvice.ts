import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { LAMPS_MUST_mps2, type RegenRow, WET_coeff } from "./regenSweep.ts";

/** Less than this of what driving took is not worth a harder setting: common practice, no source. */
const WORTH_frac = 0.01;

/**
 * Which setting to begin with, and what to know of it: the gentlest that returns all but a hundredth of what the hardest does, within
 * what a wet road and the pack stand and below the slowing at which brake lamps must light. Common practice, no source.
 */
export function regenAdvice(rows: readonly RegenRow[]): {
  readonly recommended: RegenRow | undefined;
  readonly words: Message[];
} {
  const faults = rows.map(faultsOf);
  const able = rows.filter((_, i) => faults[i].length === 0);
  const most_frac = Math.max(0, ...able.map(({ returned_frac }) => returned_frac));
  const recommended = able.find(({ returned_frac }) => returned_frac >= most_frac - WORTH_frac);
  const words = [
    recommended ? begin(recommended) : message`None of these settings is free of what follows.`,
    ...rows.flatMap((row, i) => faults[i].map((why) => message`${q("torque", row.torque_Nm)}: ${why}.`)),
  ];
  const hardest = rows.at(-1);
  return { recommended, words: hardest ? [...words, ...always(hardest)] : words };
}

function begin(row: RegenRow): Message {
  if (row.torque_Nm === 0) return message`Braking by the motor returns next to nothing on this road: it may stay off.`;
  const lamps =
    row.lamps === "off" ? message`` : message` The brake lamps may light at that: wire them to it, by the local rule.`;
  return message`Begin with ${q("torque", row.torque_Nm)}: it returns ${q("fraction", row.returned_frac, 2)} of what driving takes, and slows the car by ${row.slowing_mps2.toFixed(1)} m/s2 with the foot off.${lamps}`;
}

function faultsOf({ neededGrip_coeff, charge_A, chargeLimit_A, slowing_mps2 }: RegenRow): Message[] {
  const found: Message[] = [];
  if (neededGrip_coeff !== undefined && neededGrip_coeff > WET_coeff)
    found.push(
      message`needs a friction of ${neededGrip_coeff.toFixed(2)} at the driven axle, and a wet road may give ${WET_coeff}: the axle may slide`,
    );
  if (charge_A >= 0.999 * chargeLimit_A && chargeLimit_A > 0)
    found.push(message`the pack takes no more than ${q("current", chargeLimit_A)}, which this road reaches`);
  if (slowing_mps2 > LAMPS_MUST_mps2)
    found.push(message`slows the car by ${slowing_mps2.toFixed(1)} m/s2, at which the brake lamps must light`);
  return found;
}

/** What every setting has in common, and what a driver must know. */
function always({ fullPack_mps2, coldPack_mps2, slowing_mps2 }: RegenRow): Message[] {
  const by = (mps2: number) => mps2.toFixed(1);
  return [
    message`With a full pack the hardest setting slows the car by ${by(fullPack_mps2)} m/s2 instead of ${by(slowing_mps2)}, with cells at ${q("temperature", 0)} by ${by(coldPack_mps2)}: the driver has to use the brakes, and must be told.`,
    message`The friction brakes must stop the car alone at any time. Braking by the motor acts on the driven axle only and, on a slippery road, may make it slide: begin gently, and try it in the wet on an empty yard.`,
  ];
}
