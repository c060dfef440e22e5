import type { Field } from "./fieldList.ts";
import { chosen, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the motor and its controller: those of a first answer. */
export const motorFields: Readonly<Record<string, Field>> = {
  "motor.name": { type: "line", label: "Motor" },
  "motor.origin": { type: "line", label: "Where its figures come from" },
  "motor.envelope.torque_Nm": quantity("torque", "Peak torque"),
  "motor.envelope.power_kW": quantity("power", "Peak power"),
  "motor.reference_V": quantity("voltage", "At what voltage"),
  "motor.maxSpeed_rpm": quantity("rotation", "Top speed of the motor"),
  "motor.rotorInertia_kgm2": quantity("inertia", "Inertia of the rotor", { ...usual(0.03, "motors of 30 to 60 kg") }),
  "motor.loss.efficiency_frac": quantity("fraction", "Efficiency of motor and controller", {
    help: "One figure for everything: the crawl in town will look better than it is.",
    ...usual(0.85, "0.85 to 0.93 for AC in its good area, 0.78 to 0.88 for brushed DC"),
  }),
  "motor.mass_kg": quantity("mass", "Mass of the motor"),
  "motor.rating.continuous_kW": quantity("power", "Continuous power, by its maker"),
  "motor.rating.peak_kW": quantity("power", "Short-time power, by its maker", optional),
  "motor.rating.peak_s": quantity("duration", "Short-time power holds for", optional),
  "controller.name": { type: "line", label: "Controller" },
  "controller.min_V": quantity("voltage", "Lowest pack voltage it works at"),
  "controller.max_V": quantity("voltage", "Highest pack voltage it stands"),
  "controller.rollBackBelow_V": quantity("voltage", "Full torque above, under load", { ...optional, ...chosen }),
  "controller.rollBackAbove_V": quantity("voltage", "Full regen below, under load", { ...optional, ...chosen }),
  "controller.torqueCap_Nm": quantity("torque", "Torque cap set in the controller", {
    ...chosen,
    ...optional,
    help: "Set to spare the gearbox, at the motor shaft.",
  }),
  "controller.power_kW": quantity("electricPower", "Most power it takes from the pack", { ...chosen, ...optional }),
  "controller.current_A": quantity("current", "Most current it takes from the pack", { ...chosen, ...optional }),
  "controller.regen.isOn": { type: "yesNo", label: "Regenerative braking is on" },
  "controller.regen.torque_Nm": quantity("torque", "Regen limit at the motor shaft", { ...chosen, ...optional }),
  "controller.regen.power_kW": quantity("electricPower", "Regen limit in power", { ...chosen, ...optional }),
  "controller.regen.current_A": quantity("current", "Regen limit in current", { ...chosen, ...optional }),
  "controller.regen.wheelForce_N": quantity("force", "Regen limit at the tyres", { ...chosen, ...optional }),
  "controller.regen.fadeNone_kmh": quantity("speed", "No regen below", {
    ...chosen,
    ...usual(5, "none below 8 to 12 km/h in full"),
  }),
  "controller.regen.fadeFull_kmh": quantity("speed", "Full regen above", {
    ...chosen,
    ...usual(12, "none below 8 to 12 km/h in full"),
  }),
};
