import type * as z from "zod";
import { PhysicalRoadLoad } from "../job/schema/vehicle.ts";
import { invented, practice, published } from "./origin.ts";
import { partOf } from "./part.ts";
import type { PartOrigin } from "./partOrigin.ts";

export const BodyPart = partOf(PhysicalRoadLoad);
export type BodyPart = z.infer<typeof BodyPart>;

const handbook = "[BoschHandbook, table of drag coefficients]";
const remembered = "from memory, unconfirmed";
const ownDrag = "brakes that free and hubs, all wheels; a drum that drags adds far more";

/** Old bodies by kind, with the drag that a coast-down of the car itself should replace. */
export const bodies: readonly BodyPart[] = [
  body("saloon", "Saloon, four doors, 1960s", {
    drag: [0.45, published(handbook, 0.4, 0.55, remembered)],
    area: [1.8, practice(1.6, 1.9)],
    wheelDrag: [4, invented(0, 12, ownDrag)],
  }),
  body("open-two-seater", "Open two-seater, hood down", {
    drag: [0.58, published(handbook, 0.5, 0.7, remembered)],
    area: [1.45, practice(1.4, 1.6)],
    wheelDrag: [4, invented(0, 12, ownDrag)],
  }),
  body("estate", "Estate", {
    drag: [0.54, published(handbook, 0.5, 0.6, remembered)],
    area: [1.85, practice(1.7, 2)],
    wheelDrag: [4, invented(0, 12, ownDrag)],
  }),
  body("microcar", "Microcar", {
    drag: [0.46, practice(0.42, 0.5)],
    area: [1.35, invented(1.2, 1.5)],
    wheelDrag: [2.5, invented(0, 8, ownDrag)],
  }),
  body("light-van", "Light delivery van", {
    drag: [0.47, practice(0.45, 0.5, "handbook pages give light vans 0.35 to 0.50, the bench 0.45 and more")],
    area: [2.4, practice(2.1, 2.8)],
    wheelDrag: [6, invented(0, 16, ownDrag)],
  }),
  body("box-body", "Box body", {
    drag: [0.58, practice(0.45, 0.65)],
    area: [3.7, practice(3, 4.5)],
    wheelDrag: [8, invented(0, 20, ownDrag)],
  }),
  body("pick-up-4x4", "Pick-up or closed four-wheel drive, upright, ladder frame", {
    drag: [0.58, practice(0.5, 0.65)],
    area: [2.6, practice(2.4, 3)],
    wheelDrag: [7, invented(0, 20, `${ownDrag}; the front shafts' own drag stands at the transfer box`)],
  }),
];

interface BodyFigures {
  readonly drag: readonly [coeff: number, origin: PartOrigin];
  readonly area: readonly [area_m2: number, origin: PartOrigin];
  readonly wheelDrag: readonly [torque_Nm: number, origin: PartOrigin];
}

function body(id: string, title: string, { drag, area, wheelDrag }: BodyFigures): BodyPart {
  return {
    id,
    title,
    data: { kind: "physical", drag_coeff: drag[0], frontalArea_m2: area[0], wheelDrag_Nm: wheelDrag[0] },
    origins: { drag_coeff: drag[1], frontalArea_m2: area[1], wheelDrag_Nm: wheelDrag[1] },
  };
}
