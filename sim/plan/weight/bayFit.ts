import type { Job } from "../../../shared/job/job.ts";
import type { Weights } from "../../../shared/job/schema/weights.ts";

/** How a module stands: on its base, on its long side, or on its end. */
export const POSTURES = ["upright", "on the side", "on end"] as const;
type Posture = (typeof POSTURES)[number];

type Box = Weights["boxes"][number];
type Sides = Readonly<Record<"length_mm" | "width_mm" | "height_mm", number>>;

/** How many modules a box takes, all of them standing the same way. */
export interface BayFit {
  readonly box: string;
  readonly share_frac: number;
  readonly counts: Readonly<Record<Posture, number>>;
  readonly best: Posture;
  readonly most: number;
}

/** Common practice, no source: for insulation, air and hands. */
const CLEARANCE_mm = 10;
/** Sizes typed in inches have a rounding error; a module is not left out for that. */
const ROUNDED_mm = 1e-6;

/** Room kept free between modules and to the walls. */
export function clearanceOf_mm({ clearance_mm }: Pick<Weights, "clearance_mm">): number {
  return clearance_mm ?? CLEARANCE_mm;
}

/**
 * How many modules go into each box whose room inside is known, in rows all of one posture: along each side
 *
 *   n = floor((room - clearance) / (side of the module + clearance))
 *
 * and of the two ways to turn a posture the better one. A first look: brackets, bars, cooling and service room are not in it.
 */
export function bayFits(weights: Weights, module: Job["module"]): BayFit[] {
  return weights.boxes.flatMap((box) => {
    const room = roomOf(box);
    if (room === undefined) return [];
    const [upright, side, end] = POSTURES.map((posture) => countOf(room, module, posture, clearanceOf_mm(weights)));
    const counts = { upright, "on the side": side, "on end": end };
    const best = POSTURES.reduce((a, b) => (counts[b] > counts[a] ? b : a));
    return [{ box: box.name, share_frac: box.share_frac, counts, best, most: counts[best] }];
  });
}

function roomOf({ length_mm, width_mm, height_mm }: Box): Sides | undefined {
  if (length_mm === undefined || width_mm === undefined || height_mm === undefined) return undefined;
  return { length_mm, width_mm, height_mm };
}

/** How many fit standing one way, the floor of the box taken either way round. */
export function countOf(room: Sides, module: Sides, posture: Posture, clearance_mm: number): number {
  const { length_mm, width_mm, height_mm } = module;
  // The side that stands up, then the two on the floor.
  const [up_mm, one_mm, other_mm] = {
    upright: [height_mm, length_mm, width_mm],
    "on the side": [width_mm, length_mm, height_mm],
    "on end": [length_mm, width_mm, height_mm],
  }[posture];
  const along = (room_mm: number, side_mm: number) =>
    Math.max(0, Math.floor((room_mm - clearance_mm + ROUNDED_mm) / (side_mm + clearance_mm)));
  const layers = along(room.height_mm, up_mm);
  const floor = (a_mm: number, b_mm: number) => along(room.length_mm, a_mm) * along(room.width_mm, b_mm);
  return layers * Math.max(floor(one_mm, other_mm), floor(other_mm, one_mm));
}
