import type { Field } from "./fieldList.ts";
import { chosen, likely, optional, quantity, usual } from "./quantityFieldOf.ts";

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Fields of the car, its weather and what else draws on the pack: those of a first answer. */
export const carFields: Readonly<Record<string, Field>> = {
  "vehicle.name": { type: "line", label: "The car" },
  "vehicle.kerb_kg": quantity("mass", "Kerb weight as it arrives", {
    help: "Ready to drive, nobody aboard. Weighed is best: handbooks are often light.",
    ...usual(850, "600 to 900 kg for a small saloon"),
    ...likely(250, 4000, "a road vehicle"),
  }),
  "vehicle.removed_kg": quantity("mass", "Parts removed", {
    help: "Engine, radiator, exhaust, tank with fuel and the like, weighed as they come out.",
    ...usual(150, "130 to 180 kg from a small saloon"),
  }),
  "vehicle.added_kg": quantity("mass", "Parts added (without pack)", {
    help: "Motor, controller, adapter plate, charger, heater, cables.",
    ...usual(90, "motor, controller, plate and charger together"),
  }),
  "vehicle.converted_kg": quantity("mass", "Weight as converted, without pack", {
    ...optional,
    help: "Weighed ready to drive, without modules and boxes, nobody aboard. It is used in place of kerb weight, parts removed and parts added.",
    ...likely(250, 4000, "a road vehicle"),
  }),
  "vehicle.load_kg": quantity("mass", "People and luggage", { ...usual(150, "two people of 75 kg") }),
  "vehicle.gross_kg": quantity("mass", "Gross weight on the plate", { ...optional }),
  "vehicle.tyres.loadedRadius_mm": quantity("wheelRadius", "Rolling radius of the tyre", {
    help: "Best from a chalk mark and one turn of the wheel, loaded. A marking such as 5.20-13 will do.",
    ...usual(285, "13 inch wheels of a small saloon"),
    ...likely(200, 450, "the wheel of a road vehicle"),
  }),
  "vehicle.tyres.rolling_coeff": quantity("coefficient", "Rolling resistance coefficient", {
    ...usual(0.013, "0.010 to 0.015 for radials on tarmac, 0.015 to 0.025 for crossplies"),
    ...likely(0.005, 0.04, "a tyre"),
  }),
  "vehicle.tyres.rollingRise_coeff": quantity("coefficient", "More rolling resistance at 100 km/h", {
    ...usual(0, "left out unless known"),
  }),
  "vehicle.tyres.wheelsInertia_kgm2": quantity("inertia", "Inertia of all wheels and tyres", {
    ...usual(3, "four 13 inch wheels, about 0.75 kg m² each"),
  }),
  "vehicle.tyres.followsTemperature": { type: "yesNo", label: "Cold air makes the tyres stiffer" },
  "vehicle.roadLoad.drag_coeff": quantity("coefficient", "Drag coefficient", {
    ...usual(0.45, "0.42 to 0.50 for an old small saloon"),
    ...likely(0.2, 1.1, "a car"),
  }),
  "vehicle.roadLoad.frontalArea_m2": quantity("area", "Frontal area", {
    help: "Width times height over the body, mirrors off, times 0.80 to 0.85.",
    ...usual(1.75, "1.4 to 1.9 m² for small cars"),
    ...likely(1.2, 5, "a car"),
  }),
  "vehicle.roadLoad.dragArea_m2": quantity("area", "Drag area", {
    help: "Drag coefficient times frontal area, where one figure is known. 0.45 x 1.75 m² will do.",
    ...usual(0.8, "0.6 to 0.9 m² for small cars"),
    ...likely(0.25, 4, "a car"),
  }),
  "vehicle.roadLoad.wheelDrag_Nm": quantity("torque", "Drag of hubs and brakes, all wheels", {
    ...usual(0, "left out unless measured; a dragging drum is the commonest bad surprise"),
  }),
  "vehicle.roadLoad.f0_N": quantity("force", "Constant term of the coast-down", { ...likely(20, 800, "a car") }),
  "vehicle.roadLoad.f1_Npkmh": quantity("dragLinear", "Term that grows with speed"),
  "vehicle.roadLoad.f2_Npkmh2": quantity("dragSquare", "Term that grows with speed squared"),
  "vehicle.roadLoad.mass_kg": quantity("mass", "Weight at the coast-down", { help: "As it rolled, people in it." }),
  "environment.temperature_degC": quantity("temperature", "Air temperature", { ...chosen }),
  "environment.pressure_kPa": quantity("airPressure", "Air pressure", { ...chosen }),
  "environment.headWind_kmh": quantity("speed", "Head wind", { ...chosen }),
  "environment.grip_coeff": quantity("coefficient", "Grip of the road", {
    ...chosen,
    help: "Dry tarmac about 0.8, wet about 0.5.",
  }),
  "environment.pack_degC": quantity("temperature", "Temperature of the pack at the start", { ...chosen, ...optional }),
  "accessories.standing_W": quantity("accessoryPower", "Always-on load", {
    help: "Contactors, controller, pump: on whenever the car is.",
    ...usual(150, "60 to 250 W with nothing on"),
  }),
  "accessories.dcdcMin_V": quantity("voltage", "DC-DC converter works from", { ...optional }),
  "accessories.dcdcMax_V": quantity("voltage", "DC-DC converter works up to", { ...optional }),
  "accessories.dcdcEfficiency_frac": quantity("fraction", "Efficiency of the DC-DC converter", {
    ...usual(0.88, "0.85 to 0.92"),
    ...likely(0.7, 0.97, "a converter"),
  }),
  "accessories.items.*.name": { type: "line", label: "What" },
  "accessories.items.*.power_W": quantity("accessoryPower", "Power"),
  "accessories.items.*.duty_frac": quantity("fraction", "On for (% of the drive)", {
    ...usual(1, "all the time, until you write less"),
  }),
  "accessories.items.*.winterDuty_frac": quantity("fraction", "On for, in winter", {
    ...optional,
    help: "Left empty: as in summer.",
  }),
  "accessories.items.*.supply": {
    type: "choice",
    label: "Fed from",
    choices: { "12V": "12 V battery", pack: "the pack" },
  },
};
