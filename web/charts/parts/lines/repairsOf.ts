/** A span of time in which the cleaning changed or filled samples. */
export interface Repair {
  readonly from_s: number;
  readonly to_s: number;
}

/** Repaired spans in order, each from the sample before it; those nearer to each other than `gap_s` are shown as one. */
export function repairsOf(time_s: Float64Array, isRepaired: Uint8Array, gap_s: number): Repair[] {
  const found: { from_s: number; to_s: number }[] = [];
  for (let i = 0; i < time_s.length; i++) {
    if (!isRepaired[i]) continue;
    const from_s = time_s[Math.max(0, i - 1)] as number;
    const to_s = time_s[i] as number;
    const last = found.at(-1);
    if (last && from_s - last.to_s <= gap_s) last.to_s = to_s;
    else found.push({ from_s, to_s });
  }
  return found;
}
