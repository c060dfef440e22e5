import type { QuantityKind } from "../../shared/quantity/kinds.ts";
import { driveFields } from "./driveFields.ts";
import { moduleFields } from "./moduleFields.ts";
import { chosen, optional, quantity, usual } from "./quantityFieldOf.ts";
import { vehicleFields } from "./vehicleFields.ts";

/** What stands in for a value that nobody knows yet. */
export interface Usual {
  readonly value: number;
  /** Why this one, shown beside it. */
  readonly why: string;
}

export type Field =
  | {
      readonly type: "quantity";
      readonly kind: QuantityKind;
      readonly label: string;
      readonly help?: string;
      readonly usual?: Usual;
      /** May be left empty: the job does without it. */
      readonly isOptional?: boolean;
      /** A thing that is decided, not a fact of the car: nobody asks where it comes from. */
      readonly isChosen?: boolean;
      /** What to say where nothing is written and neither a usual value nor none at all will do. */
      readonly needed?: string;
    }
  | { readonly type: "line" | "text"; readonly label: string; readonly help?: string; readonly isOptional?: boolean }
  | {
      readonly type: "choice";
      readonly label: string;
      readonly help?: string;
      readonly choices: Readonly<Record<string, string>>;
    }
  | { readonly type: "yesNo"; readonly label: string; readonly help?: string };

// Every usual value here is common practice in the trade, with no published source; the page says so beside each.
/** Every field of the page by its path in the job; `*` stands for a place in a list. */
export const fieldList: Readonly<Record<string, Field>> = {
  title: { type: "line", label: "Name of the job" },
  use: { type: "text", label: "What the car is for, in the client's own words" },
  usualDay_km: quantity("distance", "Usual day", {
    help: "What the car does on an ordinary day. Not the longest day of the year.",
  }),
  longestDay_km: quantity("distance", "Longest day of the year", {
    ...optional,
    help: "Kept apart from the usual day, so that one trip a year does not size the pack.",
  }),

  "notes.*.text": {
    type: "text",
    label: "Note",
    help: "Markdown: **bold**, - lists, and Figure 3 becomes a link to that figure.",
  },

  "vehicle.name": { type: "line", label: "The car" },
  "vehicle.arriving_kg": quantity("mass", "Kerb weight as it arrives", {
    help: "Ready to drive, nobody aboard. Weighed is best: handbooks are often light.",
    ...usual(850, "600 to 900 kg for a small saloon"),
  }),
  "vehicle.removed_kg": quantity("mass", "Taken out", {
    help: "Engine, radiator, exhaust, tank with fuel and the like, weighed as they come out.",
    ...usual(150, "130 to 180 kg from a small saloon"),
  }),
  "vehicle.added_kg": quantity("mass", "Put in, without the pack", {
    help: "Motor, controller, adapter plate, charger, heater, cables.",
    ...usual(90, "motor, controller, plate and charger together"),
  }),
  "vehicle.load_kg": quantity("mass", "People and luggage", { ...usual(150, "two people of 75 kg") }),
  "vehicle.gross_kg": quantity("mass", "Gross weight on the plate", { ...optional }),
  "vehicle.tyres.loadedRadius_mm": quantity("wheelRadius", "Rolling radius of the tyre", {
    help: "Best from a chalk mark and one turn of the wheel, loaded. A marking such as 5.20-13 will do.",
    ...usual(285, "13 inch wheels of a small saloon"),
  }),
  "vehicle.tyres.rolling_coeff": quantity("coefficient", "Rolling resistance coefficient", {
    ...usual(0.013, "0.010 to 0.015 for radials on tarmac, 0.015 to 0.025 for crossplies"),
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
  }),
  "vehicle.roadLoad.frontalArea_m2": quantity("area", "Frontal area", {
    help: "Width times height over the body, mirrors off, times 0.80 to 0.85.",
    ...usual(1.75, "1.4 to 1.9 m² for small cars"),
  }),
  "vehicle.roadLoad.wheelDrag_Nm": quantity("torque", "Drag of hubs and brakes, all wheels", {
    ...usual(0, "left out unless measured; a dragging drum is the commonest bad surprise"),
  }),
  "vehicle.roadLoad.f0_N": quantity("force", "Constant term of the coast-down"),
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

  "accessories.standing_W": quantity("accessoryPower", "Standing draw", {
    help: "Contactors, controller, pump: on whenever the car is.",
    ...usual(150, "60 to 250 W with nothing on"),
  }),
  "accessories.dcdcEfficiency_frac": quantity("fraction", "Efficiency of the DC-DC converter", {
    ...usual(0.88, "0.85 to 0.92"),
  }),
  "accessories.items.*.name": { type: "line", label: "What" },
  "accessories.items.*.power_W": quantity("accessoryPower", "Power"),
  "accessories.items.*.duty_frac": quantity("fraction", "Share of the drive it is on"),
  "accessories.items.*.supply": {
    type: "choice",
    label: "Fed from",
    choices: { "12V": "12 V battery", pack: "the pack" },
  },

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
  }),
  "driveline.gears.*.name": { type: "line", label: "Gear" },
  "driveline.gears.*.gear_ratio": quantity("gearRatio", "Ratio of a gear"),
  "driveline.gears.*.efficiency_frac": quantity("fraction", "Efficiency of a gear", {
    ...usual(0.96, "0.94 to 0.97 indirect, 0.97 to 0.98 direct"),
  }),
  "driveline.noLoadDrag_Nm": quantity("torque", "Drag of the gearbox turning idle", {
    ...usual(0.5, "oil and bearings"),
  }),
  "driveline.limits.gearboxInput_Nm": quantity("torque", "Most the gearbox input stands", {
    ...optional,
    help: "The old engine's peak torque, unless the box is known to be stronger.",
  }),
  "driveline.limits.propellerShaft_Nm": quantity("torque", "Most the propeller shaft stands", { ...optional }),
  "driveline.limits.halfShaft_Nm": quantity("torque", "Most each half-shaft stands", { ...optional }),

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

  "driveline.shifting.up_kmh.*": quantity("speed", "Change up at", {
    ...chosen,
    help: "Into the next higher of the gears used.",
  }),

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
  "controller.power_kW": quantity("power", "Most power it takes from the pack", { ...chosen, ...optional }),
  "controller.current_A": quantity("current", "Most current it takes from the pack", { ...chosen, ...optional }),
  "controller.regen.isOn": { type: "yesNo", label: "Regenerative braking is on" },
  "controller.regen.torque_Nm": quantity("torque", "Regen limit at the motor shaft", { ...chosen, ...optional }),
  "controller.regen.power_kW": quantity("power", "Regen limit in power", { ...chosen, ...optional }),
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

  "module.name": { type: "line", label: "Module" },
  "module.origin": { type: "line", label: "Where its figures come from" },
  "module.condition": {
    type: "choice",
    label: "Condition",
    choices: { new: "new", reclaimed: "reclaimed, tested" },
  },
  "module.seriesCells": quantity("count", "Cells in series in a module"),
  "module.parallelCells": quantity("count", "Cells in parallel in a module"),
  "module.capacity_Ah": quantity("charge", "Capacity of a module as tested", {
    help: "Reclaimed modules hold 65 to 90 % of their label: test each one.",
  }),
  "module.mass_kg": quantity("mass", "Mass of a module"),

  "packs.*.name": { type: "line", label: "Name of the pack" },
  "packs.*.seriesModules": quantity("count", "Modules in series", { ...chosen }),
  "packs.*.parallelModules": quantity("count", "Strings in parallel", { ...chosen }),
  "packs.*.ceiling_frac": quantity("fraction", "Charged up to", {
    ...chosen,
    ...usual(0.95, "top twentieth left alone"),
  }),
  "packs.*.floor_frac": quantity("fraction", "Driven down to", { ...chosen, ...usual(0.1, "bottom tenth left alone") }),
  "packs.*.boxes_frac": quantity("fraction", "Boxes, bars and lids, on the mass of modules", {
    ...usual(0.28, "20 to 35 % on top of the modules"),
  }),
  "packs.*.leads_mohm": quantity("resistance", "Leads, fuses and contactors", { ...usual(5, "common practice") }),

  "allowance.winter_ratio": quantity("coefficient", "A winter's day takes, times today's energy", {
    ...chosen,
    ...usual(1.33, "a third more: heater, cold tyres, cold pack"),
  }),
  "allowance.aged_frac": quantity("fraction", "Left of the pack when it is old", {
    ...chosen,
    ...usual(0.75, "0.70 to 0.85 after ten years; nobody can promise it"),
  }),

  "charger.name": { type: "line", label: "Charger" },
  "charger.efficiency_frac": quantity("fraction", "Efficiency of the charger", {
    ...usual(0.9, "0.85 to 0.94, worse when small"),
  }),
  "charger.max_V": quantity("voltage", "Highest voltage of the charger", { ...optional }),

  ...vehicleFields,
  ...driveFields,
  ...moduleFields,
};
