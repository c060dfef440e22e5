import { onPlane, type Track } from "./trackOnPlane.ts";

/**
 * A track without the first and last `cut_m` of each of its parts, measured along the road, so that a map does not show
 * where somebody lives. Samples without a position go too, and so do parts of which less than two samples are left.
 */
export function cutTrackEnds(track: Track, cut_m: number): Track {
  const n = track.time_s.length;
  const begins = [...new Set([0, ...(track.partRows ?? [])])].filter((row) => row < n).sort((a, b) => a - b);
  const rows: number[] = [];
  const partRows: number[] = [];
  begins.forEach((from, part) => {
    const end = begins[part + 1] ?? n;
    const placed: number[] = [];
    for (let i = from; i < end; i++) if (Number.isFinite(track.lat_deg[i] + track.lon_deg[i])) placed.push(i);
    const { east_m, north_m } = onPlane(picked(track, placed));
    const along_m = new Float64Array(placed.length);
    for (let k = 1; k < placed.length; k++) {
      along_m[k] = along_m[k - 1] + Math.hypot(east_m[k] - east_m[k - 1], north_m[k] - north_m[k - 1]);
    }
    const whole_m = along_m[along_m.length - 1] ?? 0;
    const kept = placed.filter((_, k) => along_m[k] >= cut_m && whole_m - along_m[k] >= cut_m);
    if (kept.length < 2) return;
    partRows.push(rows.length);
    for (const row of kept) rows.push(row);
  });
  return { ...picked(track, rows), partRows };
}

function picked(track: Track, rows: readonly number[]): Track {
  const pick = (column: Float64Array) => Float64Array.from(rows, (row) => column[row]);
  return {
    time_s: pick(track.time_s),
    lon_deg: pick(track.lon_deg),
    lat_deg: pick(track.lat_deg),
    speed_mps: pick(track.speed_mps),
    ...(track.isRepaired && { isRepaired: Uint8Array.from(rows, (row) => track.isRepaired?.[row] ?? 0) }),
  };
}
