import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { CLASS_B_V } from "../currents/currentWords.ts";

/** Least isolation of a bus of direct current against the car's body, for each volt at work. [UNR100, 5.1.3.1] */
const ISOLATION_ohm = 100;
const OHM_PER_KOHM = 1000;

/** Least isolation resistance of a pack that has so many volts when full, in ohms. [UNR100, 5.1.3.1] */
export function isolation_ohm(full_V: number): number {
  return ISOLATION_ohm * full_V;
}

/** What can hurt somebody when a car is commissioned. Starting points that defer to local codes and licensed people. */
export function settingsCautions(full_V: number): Message[] {
  const full = q("voltage", full_V);
  const kohm = Number((isolation_ohm(full_V) / OHM_PER_KOHM).toPrecision(3));
  const danger =
    full_V > CLASS_B_V
      ? message`${full} of direct current can kill: above ${q("voltage", CLASS_B_V)} it is a dangerous voltage.`
      : message`${full} is not above ${q("voltage", CLASS_B_V)}, but a short circuit burns.`;
  return [
    message`${danger} Who may work on it is a local rule; UN R100 and ISO 6469-3 are places to look. Isolate, lock off, prove dead with a meter that was proved before and after.`,
    message`Before first power: isolation between pack and body, both poles, at least ${kohm} kΩ (100 ohm for each volt of direct current, UN R100); look for the cause of any less.`,
    message`First power on stands, 5 % of torque, contactors in order, everybody clear; then an empty yard with the battery current held low.`,
    message`Brakes: balance, pedal and hand brake tested with regen off; brake lamps with regen by the local rule.`,
    message`Boxes: restraint, vent path and service disconnect by the local code; tighten every lug again after the first drives.`,
    message`Cells: carriage and waste of lithium batteries have rules of their own; damaged cells travel only as those allow.`,
    message`The mains supply is work for a licensed electrician. Never charge a new build unattended.`,
  ];
}
