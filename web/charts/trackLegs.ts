import { reach } from "./domain.ts";
import type { Frame } from "./frame.ts";
import type { SteppedRamp } from "./steppedRamp.ts";
import type { PlacedTrack, Track } from "./trackOnPlane.ts";

/** A run of the points drawn, from one place in their list to another, that looks the same all along. */
export interface Leg {
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
  const least_m = (1.5 * (frame.x[1] - frame.x[0])) / (frame.right - frame.left);
  const kept = [0];
  const ends = new Set(partRows.flatMap((row) => [row - 1, row]));
  for (let i = 1; i < n; i++) {
    const before = kept.at(-1) as number;
    const east_m = (plane.east_m[i] as number) - (plane.east_m[before] as number);
    const north_m = (plane.north_m[i] as number) - (plane.north_m[before] as number);
    if (i === n - 1 || ends.has(i) || Math.hypot(east_m, north_m) >= least_m) kept.push(i);
  }
  return kept;
}

/** The points drawn, parted where the colour or the repair changes; each leg ends where the next begins. */
export function legsOf(kept: readonly number[], track: Track, speeds: Float64Array, colours: SteppedRamp): Leg[] {
  const legs: { points: number[]; colour: string; isRepaired: boolean }[] = [];
  const begins = new Set(track.partRows);
  for (let k = 1; k < kept.length; k++) {
    const [before, here] = [kept[k - 1] as number, kept[k] as number];
    const colour = colours.colourOf(speeds[here] as number);
    if (begins.has(here)) {
      legs.push({ points: [here], colour, isRepaired: false });
      continue;
    }
    // A repaired sample between two that are drawn counts too.
    const isRepaired = track.isRepaired?.subarray(before + 1, here + 1).includes(1) ?? false;
    const last = legs.at(-1);
    if (last && last.colour === colour && last.isRepaired === isRepaired) last.points.push(here);
    else legs.push({ points: [before, here], colour, isRepaired });
  }
  return legs;
}
