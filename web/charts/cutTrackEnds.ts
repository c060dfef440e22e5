import { onPlane, type Track } from "./trackOnPlane.ts";

/**
 * A track without the first and last `cut_m` of each of its parts, measured along the road, so that a map does not show
 * where somebody lives. Parts shorter than twice that go altogether.
 */
export function cutTrackEnds(track: Track, cut_m: number): Track {
  const n = track.time_s.length;
  const { east_m, north_m } = onPlane(track);
  const begins = [...new Set([0, ...(track.partRows ?? [])])].filter((row) => row < n).sort((a, b) => a - b);
  const rows: number[] = [];
  const partRows: number[] = [];
  begins.forEach((from, part) => {
    const end = begins[part + 1] ?? n;
    const along_m = new Float64Array(end - from);
    for (let i = from + 1; i < end; i++) {
      along_m[i - from] = along_m[i - from - 1] + Math.hypot(east_m[i] - east_m[i - 1], north_m[i] - north_m[i - 1]);
    }
    const whole_m = along_m[along_m.length - 1] ?? 0;
    const kept = Array.from(along_m.keys()).filter((k) => along_m[k] >= cut_m && whole_m - along_m[k] >= cut_m);
    if (kept.length < 2) return;
    partRows.push(rows.length);
    for (const k of kept) rows.push(from + k);
  });
  const pick = (column: Float64Array) => Float64Array.from(rows, (row) => column[row]);
  return {
    time_s: pick(track.time_s),
    lon_deg: pick(track.lon_deg),
    lat_deg: pick(track.lat_deg),
    speed_mps: pick(track.speed_mps),
    ...(track.isRepaired && { isRepaired: Uint8Array.from(rows, (row) => track.isRepaired?.[row] ?? 0) }),
    partRows,
  };
}
