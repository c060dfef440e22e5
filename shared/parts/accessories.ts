import type * as z from "zod";
import { Accessory } from "../job/job.ts";
import { invented, practice } from "./origin.ts";
import { partOf } from "./part.ts";
import type { PartOrigin } from "./partOrigin.ts";

export const AccessoryPart = partOf(Accessory);
export type AccessoryPart = z.infer<typeof AccessoryPart>;

type Supply = AccessoryPart["data"]["supply"];

const byUse = (note: string) => invented(0, 1, note);

/** Lights, heater, 12 V: what draws on the pack while driving, beside the always-on load. Heat goes by the hour, not by the kilometre. */
export const accessories: readonly AccessoryPart[] = [
  accessory("lights", "Lights", "12V", [110, practice(95, 125)], [0.3, byUse("share of the drive after dark")]),
  accessory("wipers", "Wipers", "12V", [65, practice(48, 96)], [0.2, byUse("share of the drive in rain")]),
  accessory("blower", "Blower", "12V", [80, practice(50, 120)], [0.4, byUse("with heat or demisting")]),
  accessory("demister", "Demister", "12V", [250, practice(150, 400)], [0.1, byUse("damp and cold mornings")]),
  accessory(
    "heater-small",
    "Cabin heater, small car",
    "pack",
    [1500, practice(1000, 2000)],
    [1, byUse("all the time in winter; none in summer")],
  ),
  accessory(
    "heater-large",
    "Cabin heater, van or four-wheel drive",
    "pack",
    [3000, practice(2000, 4000)],
    [1, byUse("all the time in winter; none in summer")],
  ),
  accessory("vacuum-pump", "Brake vacuum pump", "12V", [80, practice(60, 100)], [0.1, practice(0.05, 0.2)]),
  accessory("coolant-pump", "Coolant pump", "12V", [35, invented(20, 60)], [1, invented(0.5, 1)]),
];

function accessory(
  id: string,
  title: string,
  supply: Supply,
  [power_W, powerOrigin]: [power_W: number, origin: PartOrigin],
  [duty_frac, dutyOrigin]: [duty_frac: number, origin: PartOrigin],
): AccessoryPart {
  return {
    id,
    title,
    data: { name: title.charAt(0).toLowerCase() + title.slice(1), power_W, duty_frac, supply },
    origins: { power_W: powerOrigin, duty_frac: dutyOrigin },
  };
}
