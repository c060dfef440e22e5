import * as z from "zod";
import { across } from "./across.ts";
import { between, checkRise, line, risingAxis, sameLength } from "./number.ts";

/** Height against distance along the road, straight lines between. */
const Hills = z
  .strictObject({
    // A recorded week of hills has a point every few dozen metres.
    distance_km: risingAxis(0, 5000, 2, 100_000),
    elevation_m: z.array(between(-500, 6000)),
  })
  .check(
    sameLength("elevation_m", "distance_km"),
    across(["distance_km.0"], ({ distance_km }, fault) => {
      if (distance_km[0] !== 0)
        fault(["distance_km", 0], `found ${distance_km[0]} km, the first distance must be 0 km`);
    }),
    across(["distance_km.*", "elevation_m.*"], ({ distance_km, elevation_m }, fault) => {
      elevation_m.forEach((here_m, i) => {
        const rise_m = here_m - (elevation_m[i - 1] ?? here_m);
        const run_m = 1000 * ((distance_km[i] ?? 0) - (distance_km[i - 1] ?? 0));
        // No road for cars is steeper than about 1 in 2.5; beyond that the heights are wrong.
        if (i > 0 && i < distance_km.length && Math.abs(rise_m) > 0.45 * run_m) {
          const found = `found ${Math.round(rise_m)} m of rise in ${Math.round(run_m)} m`;
          fault(["elevation_m", i], `${found}, at most 0.45 m in 1 m allowed`);
        }
      });
    }),
  );

const StandardRoad = z.strictObject({
  kind: z.literal("cycle"),
  id: line,
  title: line,
  /** A standard cycle on board, or a phase of one: `wltc-class-3b:low`. */
  cycle: line,
  hills: Hills.optional(),
});

const band = (least: number, most: number) =>
  z.strictObject({ low: between(least, most), high: between(least, most) }).check(
    across(["low", "high"], ({ low, high }, fault) => {
      if (low > high) fault(["low"], `found ${low} above high ${high}, low is at most high`);
    }),
  );

/** How far the log behind a road leaves it open, 10 to 90 % of the drives that fit the log: energy and distance over this road's own, and its climb. */
const Spread = z.strictObject({
  energy_ratio: band(0.1, 10),
  distance_ratio: band(0.1, 10),
  climb_m: band(0, 1e6),
});

const RecordedRoad = z
  .strictObject({
    kind: z.literal("trace"),
    id: line,
    title: line,
    time_s: z.array(between(0, 1e7)).min(2).max(1_000_000),
    speed_kmh: z.array(between(0, 400)).min(2).max(1_000_000),
    hills: Hills.optional(),
    spread: Spread.optional(),
  })
  .check(
    sameLength("speed_kmh", "time_s"),
    across(["time_s"], ({ time_s }, fault) => checkRise(time_s, " s", fault, ["time_s"])),
  );

export const Road = z.discriminatedUnion("kind", [StandardRoad, RecordedRoad]);
export type Road = z.infer<typeof Road>;
