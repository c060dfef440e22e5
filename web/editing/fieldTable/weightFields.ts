import type { Field } from "./fieldList.ts";
import { chosen, optional, quantity, usual } from "./quantityFieldOf.ts";

const place = quantity("length", "Behind the front axle", { ...chosen });
const mass = quantity("mass", "Mass", { ...chosen });
const name: Field = { type: "line", label: "What" };
const items = ["out", "in", "load"].flatMap((list): [string, Field][] => [
  [`weights.${list}.*.name`, name],
  [`weights.${list}.*.mass_kg`, mass],
  [`weights.${list}.*.place_mm`, place],
]);

/** Fields of where the masses of a car sit. Places are behind the centre of the front axle, negative before it. */
export const weightFields: Readonly<Record<string, Field>> = {
  "weights.wheelbase_mm": quantity("length", "Wheelbase, for the axle loads", { ...usual(2400, "a small saloon") }),
  "weights.weighed.front_kg": quantity("mass", "Front axle, as weighed"),
  "weights.weighed.rear_kg": quantity("mass", "Rear axle, as weighed"),
  "weights.weighed.frontLeft_kg": quantity("mass", "Front left wheel"),
  "weights.weighed.frontRight_kg": quantity("mass", "Front right wheel"),
  "weights.weighed.rearLeft_kg": quantity("mass", "Rear left wheel"),
  "weights.weighed.rearRight_kg": quantity("mass", "Rear right wheel"),
  ...Object.fromEntries(items),
  "weights.driver.name": { type: "line", label: "Who drives" },
  "weights.driver.mass_kg": quantity("mass", "Mass of the driver", { ...chosen }),
  "weights.driver.place_mm": quantity("length", "Driver behind the front axle", { ...chosen }),
  "weights.boxes.*.name": { type: "line", label: "Box" },
  "weights.boxes.*.place_mm": place,
  "weights.boxes.*.share_frac": quantity("fraction", "Share of the pack", { ...chosen }),
  "weights.boxes.*.length_mm": quantity("length", "Room inside, along the car", { ...optional, ...chosen }),
  "weights.boxes.*.width_mm": quantity("length", "Room inside, across", { ...optional, ...chosen }),
  "weights.boxes.*.height_mm": quantity("length", "Room inside, height", { ...optional, ...chosen }),
  "weights.clearance_mm": quantity("length", "Kept free round each module", {
    ...optional,
    ...chosen,
    help: "Between modules, and to the walls. Left empty: 10 mm (common practice, no source).",
  }),
  "weights.ball.mass_kg": quantity("mass", "Ball load of the trailer", { ...chosen }),
  "weights.ball.place_mm": quantity("length", "Ball behind the front axle", { ...chosen }),
  "weights.plates.front_kg": quantity("mass", "Front axle plate", { ...optional }),
  "weights.plates.rear_kg": quantity("mass", "Rear axle plate", { ...optional }),
  "weights.plates.gross_kg": quantity("mass", "Gross plate, for the axle loads", { ...optional }),
  "weights.plates.frontTyres_kg": quantity("mass", "Both front tyres carry", {
    ...optional,
    help: "Twice the load that the index on the tyre stands for.",
  }),
  "weights.plates.rearTyres_kg": quantity("mass", "Both rear tyres carry", { ...optional }),
};
