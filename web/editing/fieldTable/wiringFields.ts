import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the traction cable and the pre-charge, and of the climb and the motor's current that they are chosen by. */
export const wiringFields: Readonly<Record<string, Field>> = {
  "wiring.cable_m": quantity("cableLength", "Traction cable, there and back", {
    ...usual(6, "a pack at the back and a controller in front"),
    ...optional,
  }),
  "wiring.cable_mm2": quantity("section", "Section of the cable as fitted", {
    ...chosen,
    ...optional,
    help: "Left empty, one is proposed.",
    ...likely(6, 150, "a traction cable"),
  }),
  "wiring.conductor_degC": quantity("temperature", "Hottest the conductor may get", {
    ...usual(70, "what the usual flexible insulation stands for hours"),
    ...optional,
  }),
  "wiring.capacitance_uF": quantity("capacitance", "Capacitors at the controller’s input", {
    ...usual(1500, "300 to 3000, far more in some controllers below 144 V"),
    ...optional,
  }),
  "wiring.precharge_ohm": quantity("resistor", "Pre-charge resistor as fitted", {
    ...chosen,
    ...optional,
    help: "Left empty, one is proposed from a shelf of values.",
  }),
  "wiring.prechargeLoad_W": quantity("accessoryPower", "Drawn on the controller’s side during pre-charge", {
    ...optional,
    help: "A DC-DC converter or heater that is awake before the contactor closes. Left empty: nothing.",
  }),
  "wiring.loadWakes_V": quantity("voltage", "That load wakes at", {
    ...optional,
    help: "Left empty: the controller’s lowest voltage.",
  }),
  "motor.fullCurrent_A": quantity("current", "Motor current at peak torque", {
    ...optional,
    help: "Of a phase, root mean square, by the sheet of motor or controller; of the armature where brushed.",
  }),
  "requirement.longHill_km": quantity("distance", "Longest climb", {
    ...chosen,
    ...optional,
    help: "Of the client’s roads. Left empty: 8 km.",
  }),
  "requirement.longHill_ratio": quantity("gradient", "Its gradient", {
    ...chosen,
    ...optional,
    help: "Mean of the whole climb. Left empty: 6 %.",
  }),
};
