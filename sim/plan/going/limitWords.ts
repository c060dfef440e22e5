import type { Limit } from "../../step/limits.ts";

/** What each limit of the car does where it binds, to end a sentence. */
export const limitWords: Readonly<Record<Limit, string>> = {
  none: "the motor gives no more",
  grip: "the driven tyres have no more grip",
  driveline: "the old parts take no more torque",
  motor: "the motor gives no more",
  controller: "the controller lets no more through",
  pack: "the pack gives no more",
  heat: "motor or pack are too hot for more",
};
