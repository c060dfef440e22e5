import { BEHIND_mps, type Channels, LIMITS, type Limit } from "../../../../sim/index.ts";
import type { Span } from "./spansBehind.ts";

/** What can hold a car back, as figures write it. */
const limitNames: Readonly<Record<Limit, string>> = {
  none: "",
  grip: "tyres slip",
  driveline: "gearbox limit",
  motor: "motor at its limit",
  controller: "controller limit",
  pack: "pack limit",
  heat: "too hot",
};

/** The limit that held the car back longest within a span of `column` where it was behind; empty where none did. */
export function heldBackBy(channels: Channels, { from, to }: Span, column: Float64Array): string {
  const held_s = LIMITS.map(() => 0);
  for (let i = 1; i < channels.length; i++) {
    const isBehind = (channels.target_mps[i] as number) - (channels.speed_mps[i] as number) > BEHIND_mps;
    if (!isBehind || (column[i] as number) <= from || (column[i] as number) > to) continue;
    const limit = channels.limit[i] as number;
    held_s[limit] = (held_s[limit] ?? 0) + (channels.time_s[i] as number) - (channels.time_s[i - 1] as number);
  }
  const longest = held_s.reduce((best, time_s, i) => (i > 0 && time_s > (held_s[best] ?? 0) ? i : best), 0);
  const name = LIMITS[(held_s[longest] ?? 0) > 0 ? longest : 0];
  return name === undefined ? "" : limitNames[name];
}

export interface Held extends Span {
  readonly limit: string;
}

/** Spans of `column` in which a limit holds the car back, by the limit at the start of each; nearer than `gap` count as one. */
export function heldSpans(channels: Channels, column: Float64Array, gap: number): readonly Held[] {
  const found: { from: number; to: number; time_s: number; limit: string }[] = [];
  for (let i = 1; i < channels.length; i++) {
    const limit = LIMITS[channels.limit[i] as number];
    if (limit === undefined || limit === "none") continue;
    const from = column[i - 1] as number;
    const to = column[i] as number;
    const time_s = (channels.time_s[i] as number) - (channels.time_s[i - 1] as number);
    const last = found.at(-1);
    if (last && last.limit === limitNames[limit] && from - last.to <= gap) {
      last.to = to;
      last.time_s += time_s;
    } else {
      found.push({ from, to, time_s, limit: limitNames[limit] });
    }
  }
  return found;
}
