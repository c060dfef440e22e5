import { J_PER_WH, M_PER_KM } from "../../../../shared/units.ts";
import type { Channels } from "../../../../sim/index.ts";
import { lineAt } from "../figure/columnAt.ts";
import { spansBehind } from "../lines/spansBehind.ts";

/** Half the length of road over which energy is spread: shorter, and each throttle of the foot would be a colour of its own. */
const HALF_m = 150;
const J_PER_WHPKM_M = J_PER_WH / M_PER_KM;

/** Net energy from the pack at places along a run (m, rising), in Wh/km, each the mean over 150 m before and after. */
export function useAlong(channels: Channels, places_m: ArrayLike<number>): Float64Array {
  const { length, time_s, distance_m, battery_A, battery_V } = channels;
  const drawn_J = new Float64Array(length);
  for (let i = 1; i < length; i++) {
    const step_s = (time_s[i] as number) - (time_s[i - 1] as number);
    drawn_J[i] = (drawn_J[i - 1] as number) + (battery_A[i] as number) * (battery_V[i] as number) * step_s;
  }
  const last_m = length > 0 ? (distance_m[length - 1] as number) : 0;
  return Float64Array.from(places_m, (place_m) => {
    const from_m = Math.max(0, place_m - HALF_m);
    const to_m = Math.min(last_m, place_m + HALF_m);
    if (!(to_m > from_m)) return 0;
    const at = (along_m: number) => lineAt(distance_m, drawn_J, length, along_m);
    return (at(to_m) - at(from_m)) / (to_m - from_m) / J_PER_WHPKM_M;
  });
}

/** 1 at each place (m, rising) at which the car is more than 2 km/h behind the wanted speed. */
export function behindAlong(channels: Channels, places_m: ArrayLike<number>): Uint8Array {
  const spans = spansBehind(channels, HALF_m, channels.distance_m);
  return Uint8Array.from(places_m, (place_m) =>
    spans.some(({ from, to }) => place_m >= from && place_m <= to) ? 1 : 0,
  );
}
