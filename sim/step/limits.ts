/** What can hold a car back, in the order that settles a tie; index 0 means nothing did. */
export const LIMITS = ["none", "grip", "driveline", "motor", "controller", "pack", "heat"] as const;
export type Limit = (typeof LIMITS)[number];

/** The limits by name: their places in `LIMITS`. */
export const NONE = 0;
export const GRIP = 1;
export const DRIVELINE = 2;
export const MOTOR = 3;
export const CONTROLLER = 4;
export const PACK = 5;
export const HEAT = 6;

/**
 * The first limit that is broken, by how much each is (above zero where it is): the one order that settles every tie. Six numbers and
 * no array, since this is worked out at every try of every step.
 */
export function firstBroken(
  grip: number,
  driveline: number,
  motor: number,
  controller: number,
  pack: number,
  heat: number,
): number {
  if (grip > 0) return GRIP;
  if (driveline > 0) return DRIVELINE;
  if (motor > 0) return MOTOR;
  if (controller > 0) return CONTROLLER;
  if (pack > 0) return PACK;
  return heat > 0 ? HEAT : NONE;
}
