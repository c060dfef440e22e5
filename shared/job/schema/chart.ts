import * as z from "zod";
import { line } from "./number.ts";

/** What a chart of the workshop's own can be made of: the channels of a run, by name. */
const channelNames = [
  "time",
  "distance",
  "target",
  "speed",
  "gradient",
  "elevation",
  "wheelForce",
  "brakeForce",
  "gear",
  "motorSpeed",
  "motorTorque",
  "motorPower",
  "motorLoss",
  "controllerPower",
  "batteryPower",
  "batteryCurrent",
  "batteryVoltage",
  "soc",
  "motorTemperature",
  "packTemperature",
] as const;
export type ChannelName = (typeof channelNames)[number];

/** A channel against another, perhaps coloured by a third, for the packs named or, with none named, for all. */
export const OwnChart = z.strictObject({
  x: z.enum(channelNames),
  y: z.enum(channelNames),
  colour: z.enum(channelNames).optional(),
  packs: z.array(line).max(12).default([]),
  caption: z.string().max(500).default(""),
});
export type OwnChart = z.infer<typeof OwnChart>;
