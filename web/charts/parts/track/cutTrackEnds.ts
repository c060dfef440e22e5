import { legOnPlane_m, type Track } from "./trackOnPlane.ts";

/**
 * A track without the first and last `cut_m` of each of its parts, measured along the road, so that a map does not show
 * where somebody lives. Samples without a position go too, and so do parts of which less than two samples are left.
 */
export function cutTrackEnds(track: Track, cut_m: number): Track {
  const n = track.time_s.length;
  const begins = [...new Set([0, ...(track.partRows ?? [])])].filter((row) => row < n).sort((a, b) => a - b);
  // A week has some hundred thousand samples and is cut on the page's thread: columns and one pass, no lists of rows.
  const isPlaced = (i: number) =>
    Number.isFinite((track.latitude_deg[i] as number) + (track.longitude_deg[i] as number));
  const along_m = new Float64Array(n);
  const rows = new Uint32Array(n);
  const partRows: number[] = [];
  let count = 0;
  begins.forEach((from, part) => {
    const end = begins[part + 1] ?? n;
    let whole_m = 0;
    let before = -1;
    for (let i = from; i < end; i++) {
      if (!isPlaced(i)) continue;
      if (before >= 0) whole_m += legOnPlane_m(track, before, i);
      along_m[i] = whole_m;
      before = i;
    }
    const first = count;
    for (let i = from; i < end; i++) {
      const at_m = along_m[i] as number;
      if (at_m >= cut_m && whole_m - at_m >= cut_m && isPlaced(i)) rows[count++] = i;
    }
    if (count - first < 2) count = first;
    else partRows.push(first);
  });
  return { ...picked(track, rows.subarray(0, count)), partRows };
}

function picked(track: Track, rows: Uint32Array): Track {
  const pick = (column: Float64Array) => {
    const out = new Float64Array(rows.length);
    for (let k = 0; k < rows.length; k++) out[k] = column[rows[k] as number] as number;
    return out;
  };
  const flags = (column: Uint8Array) => {
    const out = new Uint8Array(rows.length);
    for (let k = 0; k < rows.length; k++) out[k] = column[rows[k] as number] as number;
    return out;
  };
  const { isRepaired, use_Whpkm, isBehind } = track;
  return {
    time_s: pick(track.time_s),
    longitude_deg: pick(track.longitude_deg),
    latitude_deg: pick(track.latitude_deg),
    speed_mps: pick(track.speed_mps),
    ...(isRepaired && { isRepaired: flags(isRepaired) }),
    ...(use_Whpkm && { use_Whpkm: pick(use_Whpkm) }),
    ...(isBehind && { isBehind: flags(isBehind) }),
  };
}
