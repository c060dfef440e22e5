import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the driveline. */
export const gearFields: Readonly<Record<string, Field>> = {
  "driveline.drivenAxle": {
    type: "choice",
    label: "Driven wheels",
    choices: { rear: "rear", front: "front", both: "all four" },
  },
  "driveline.finalDrive_ratio": quantity("finalDrive", "Final drive", {
    help: "As a ratio or by teeth: 4.56, or 9/41.",
    ...usual(4.11, "3.9 to 4.6 in small rear-drive cars"),
  }),
  "driveline.finalDriveEfficiency_frac": quantity("fraction", "Efficiency of the final drive", {
    ...usual(0.95, "0.93 to 0.97; worm or hypoid lower"),
    ...likely(0.7, 0.99, "a final drive"),
  }),
  "driveline.wholeEfficiency_frac": quantity("fraction", "One efficiency from motor to wheels", {
    ...optional,
    help: "In every gear; it counts in place of those of the gears, the transfer box and the final drive.",
    ...likely(0.6, 0.98, "a driveline"),
  }),
  "driveline.gears.*.name": { type: "line", label: "Gear" },
  "driveline.gears.*.gear_ratio": quantity("gearRatio", "Ratio of a gear"),
  "driveline.gears.*.efficiency_frac": quantity("fraction", "Efficiency of a gear", {
    ...usual(0.96, "0.94 to 0.97 indirect, 0.97 to 0.98 direct"),
    ...likely(0.85, 0.995, "a gear"),
  }),
  "driveline.noLoadDrag_Nm": quantity("torque", "Drag of the gearbox turning idle", {
    ...usual(0.5, "oil and bearings"),
  }),
  "driveline.coupling": {
    type: "choice",
    label: "Between motor and gearbox",
    choices: { clutch: "the old clutch", direct: "direct, no clutch" },
  },
  "driveline.change_s": quantity("duration", "A change of gear takes", {
    ...optional,
    help: "Wheels without drive meanwhile: about 0.8 s with the clutch, 2.5 s without one (common practice, no source).",
    ...likely(0.3, 5, "a change of gear"),
  }),
  "driveline.limits.gearboxInput_Nm": quantity("torque", "Gearbox input limit", {
    ...optional,
    help: "The old engine's peak torque, unless the box is known to be stronger.",
  }),
  "driveline.limits.propellerShaft_Nm": quantity("torque", "Most the propeller shaft stands", { ...optional }),
  "driveline.limits.halfShaft_Nm": quantity("torque", "Most each half-shaft stands", { ...optional }),
  "driveline.shifting.up_kmh.*": quantity("speed", "Change up at", {
    ...chosen,
    help: "Into the next higher of the gears used.",
  }),
};
