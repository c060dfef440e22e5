import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the car, its old engine, its weather and its charger that a first answer does without. */
export const vehicleFields: Readonly<Record<string, Field>> = {
  "vehicle.inertia.mass_ratio": quantity("coefficient", "Mass counted as", {
    help: "Times the mass when it speeds up, for all that turns: 1.03 is the published allowance.",
    ...usual(1.03, "the published allowance of the world test procedure"),
  }),
  "vehicle.balance.wheelbase_mm": quantity("length", "Wheelbase", { ...usual(2400, "a small saloon") }),
  "vehicle.balance.gravityHeight_mm": quantity("length", "Height of the centre of gravity", {
    help: "Above the road. Seldom known: about the height of the seat cushion.",
    ...usual(550, "0.5 to 0.6 m for a saloon, 0.7 to 0.8 m for a four-wheel drive"),
  }),
  "vehicle.balance.frontShare_frac": quantity("fraction", "Weight on the front axle", {
    help: "As driven, on level ground: from the corner weights.",
    ...usual(0.52, "0.50 to 0.55 with the engine in front"),
  }),
  "vehicle.hood.isDown": {
    type: "yesNo",
    label: "The drag above is that with the hood down",
    help: "What the other state takes on this road is under Gears.",
  },
  "vehicle.hood.downDrag_ratio": quantity("coefficient", "Drag with the hood down", {
    help: "Times that with the hood up.",
    ...usual(1.2, "1.1 to 1.4 for open two-seaters; screen and side windows matter most"),
    ...likely(0.95, 1.6, "an open car"),
  }),
  "vehicle.roof.mass_kg": quantity("mass", "Weight on the roof"),
  "vehicle.roof.dragArea_m2": quantity("area", "Drag area of what is on the roof", {
    help: "Drag coefficient times frontal area, added to the car's own.",
    ...usual(0.3, "a loaded rack"),
  }),
  "vehicle.trailer.mass_kg": quantity("mass", "Weight of the trailer, loaded"),
  "vehicle.trailer.dragArea_m2": quantity("area", "Drag area that the trailer adds", {
    ...usual(0.4, "a low box trailer in the car's wake"),
  }),
  "vehicle.trailer.rolling_coeff": quantity("coefficient", "Rolling resistance of its tyres", {
    ...usual(0.015, "small, hard tyres"),
  }),
  "vehicle.tyres.name": { type: "line", label: "Tyres", isOptional: true },

  "environment.altitude_m": quantity("elevation", "Height above the sea", {
    ...chosen,
    help: "The standard atmosphere gives the air pressure from it.",
  }),

  "engine.ratedTorque_Nm": quantity("torque", "Rated torque", { ...optional, help: "As its handbook prints it." }),
  "engine.torque_rpm": quantity("rotation", "Speed of best torque", { ...optional }),
  "engine.ratedPower_kW": quantity("power", "Rated power", { ...optional, help: "As its handbook prints it: 59 bhp." }),
  "engine.power_rpm": quantity("rotation", "Speed of best power", { ...optional }),
  "engine.idle_rpm": quantity("rotation", "Idles at", { ...optional }),
  "engine.limit_rpm": quantity("rotation", "Turns no faster than", { ...optional }),
  "engine.curve.speed_rpm.*": quantity("rotation", "Engine speed"),
  "engine.curve.torque_Nm.*": quantity("torque", "Torque at full throttle", {
    help: "As its handbook or a test bench draws it.",
  }),
};
