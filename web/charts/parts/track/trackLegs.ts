import { reach } from "../axes/domain.ts";
import type { Frame } from "../figure/frame.ts";
import type { SteppedRamp } from "../keys/steppedRamp.ts";
import type { PlacedTrack, Track } from "./trackOnPlane.ts";

/** A run of the points drawn, from one place in their list to another, that looks the same all along. */
interface Leg {
  readonly points: readonly number[];
  readonly colour: string;
  readonly isRepaired: boolean;
}

/** Room round the track. */
export const INSET_PX = 18;

/** The frame that shows the whole track at one scale in both directions, between 180 and 460 px high. */
export function fitted(plane: PlacedTrack, width_px: number, top: number): Frame {
  const n = plane.east_m.length;
  const [west, east] = reach(plane.east_m, n);
  const [south, north] = reach(plane.north_m, n);
  const wide_px = width_px - 2 * INSET_PX;
  const wide_m = Math.max(east - west, 1);
  const high_m = Math.max(north - south, 1);
  const high_px = Math.min(460, Math.max(180, (wide_px * high_m) / wide_m));
  const perPixel_m = Math.max(wide_m / wide_px, high_m / high_px);
  const half = { x: (perPixel_m * wide_px) / 2, y: (perPixel_m * high_px) / 2 };
  const centre = { x: (west + east) / 2, y: (south + north) / 2 };
  return {
    left: INSET_PX,
    right: width_px - INSET_PX,
    top: top + INSET_PX,
    bottom: top + INSET_PX + high_px,
    height: top + 2 * INSET_PX + high_px + 26,
    x: [centre.x - half.x, centre.x + half.x],
    y: [centre.y - half.y, centre.y + half.y],
  };
}

/** Samples at least a pixel and a half from the one kept before, with the first and the last of the track and of its parts. */
export function apart(plane: PlacedTrack, frame: Frame, partRows: readonly number[] = []): number[] {
  const n = plane.east_m.length;
  const least_m = cell_m(frame);
  const kept = [0];
  const ends = new Set(partRows.flatMap((row) => [row - 1, row]));
  let before = 0;
  for (let i = 1; i < n; i++) {
    const east_m = (plane.east_m[i] as number) - (plane.east_m[before] as number);
    const north_m = (plane.north_m[i] as number) - (plane.north_m[before] as number);
    if (i !== n - 1 && east_m * east_m + north_m * north_m < least_m * least_m && !ends.has(i)) continue;
    kept.push(i);
    before = i;
  }
  return kept;
}

/** The side of a cell of a pixel and a half: what lies in one cannot be told apart. */
function cell_m({ left, right, x }: Frame): number {
  return (PIXELS_APART * (x[1] - x[0])) / (right - left);
}

const PIXELS_APART = 1.5;

/** What a map draws of a track: the places gone to, and the runs of them that look the same. */
export interface DrawnTrack {
  /** Samples drawn, in order. */
  readonly rows: readonly number[];
  readonly legs: readonly Leg[];
  /** The same runs without regard to colour and repair. */
  readonly outline: readonly (readonly number[])[];
}

/**
 * The points drawn, parted where the colour or the repair changes; each leg ends where the next begins. A road that is
 * driven every day of a week is drawn once in each of its looks, since later lines would cover the first ones.
 */
export function drawnTrack(
  kept: readonly number[],
  track: Track,
  speeds: Float64Array,
  colours: SteppedRamp,
  plane: PlacedTrack,
  frame: Frame,
): DrawnTrack {
  const side_m = cell_m(frame);
  const across = Math.ceil((frame.x[1] - frame.x[0]) / side_m) + 1;
  const cellOf = (i: number) =>
    Math.floor(((plane.east_m[i] as number) - frame.x[0]) / side_m) +
    across * Math.floor(((plane.north_m[i] as number) - frame.y[0]) / side_m);
  const rows = [kept[0] as number];
  const legs: { points: number[]; colour: string; isRepaired: boolean }[] = [];
  const outline: number[][] = [];
  const begins = new Set(track.partRows);
  const looks = colours.steps.length;
  const seen = new Set<number>(); // cells in each of their looks; look 0 is any
  const isNew = (cell: number, look: number) => seen.size < seen.add(cell * (2 * looks + 1) + look).size;
  for (let k = 1; k < kept.length; k++) {
    const [before, here] = [kept[k - 1] as number, kept[k] as number];
    const speed = speeds[here] as number;
    const colour = colours.colourOf(speed);
    if (begins.has(here)) {
      legs.push({ points: [here], colour, isRepaired: false });
      outline.push([here]);
      rows.push(here);
      continue;
    }
    // A repaired sample between two that are drawn counts too.
    const isRepaired = track.isRepaired?.subarray(before + 1, here + 1).includes(1) ?? false;
    const cell = cellOf(here);
    const step = colours.steps.findIndex((each) => each.colour === colour);
    if (isNew(cell, 0)) lengthen(outline, before, here);
    if (!isNew(cell, 1 + Math.max(0, step) + (isRepaired ? looks : 0))) continue;
    rows.push(here);
    const last = legs.at(-1);
    if (last && last.colour === colour && last.isRepaired === isRepaired && last.points.at(-1) === before)
      last.points.push(here);
    else legs.push({ points: [before, here], colour, isRepaired });
  }
  return { rows, legs, outline };
}

function lengthen(lines: number[][], before: number, here: number): void {
  const last = lines.at(-1);
  if (last?.at(-1) === before) last.push(here);
  else lines.push([before, here]);
}
