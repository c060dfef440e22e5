import * as z from "zod";
import { between, lengthMessage, line, risingAxis } from "./number.ts";

/** Height against distance along the road, straight lines between. */
const Hills = z
  .strictObject({ distance_km: risingAxis(0, 5000), elevation_m: z.array(between(-500, 6000)) })
  .check((ctx) => {
    const { distance_km, elevation_m } = ctx.value;
    const fault = (path: (string | number)[], message: string) => {
      ctx.issues.push({ code: "custom", input: ctx.value, path, message });
    };
    if (elevation_m.length !== distance_km.length) {
      fault(["elevation_m"], lengthMessage(elevation_m.length, distance_km.length, "distance_km"));
    }
    if (distance_km[0] !== 0) fault(["distance_km", 0], `found ${distance_km[0]}, the first distance must be 0`);
    elevation_m.forEach((height_m, i) => {
      const rise_m = height_m - (elevation_m[i - 1] ?? height_m);
      const run_m = 1000 * ((distance_km[i] ?? 0) - (distance_km[i - 1] ?? 0));
      // No road for cars is steeper than about 1 in 2.5; beyond that the heights are wrong.
      if (i > 0 && Math.abs(rise_m) > 0.45 * run_m) {
        fault(
          ["elevation_m", i],
          `found ${Math.round(rise_m)} m of rise in ${Math.round(run_m)} m, at most 0.45 allowed`,
        );
      }
    });
  });

const StandardRoad = z.strictObject({
  kind: z.literal("cycle"),
  id: line,
  title: line,
  /** A standard cycle on board, or a phase of one: `wltc-class-3b:low`. */
  cycle: line,
  hills: Hills.optional(),
});

const RecordedRoad = z
  .strictObject({
    kind: z.literal("trace"),
    id: line,
    title: line,
    time_s: z.array(between(0, 1e7)).min(2).max(1_000_000),
    speed_kmh: z.array(between(0, 400)).min(2).max(1_000_000),
    hills: Hills.optional(),
  })
  .check((ctx) => {
    const { time_s, speed_kmh } = ctx.value;
    if (speed_kmh.length !== time_s.length) {
      const message = lengthMessage(speed_kmh.length, time_s.length, "time_s");
      ctx.issues.push({ code: "custom", input: ctx.value, path: ["speed_kmh"], message });
    }
    const back = time_s.findIndex((value_s, i) => i > 0 && value_s <= (time_s[i - 1] ?? -1));
    if (back > 0) {
      const message = `found ${time_s[back]} s after ${time_s[back - 1]} s, times must rise`;
      ctx.issues.push({ code: "custom", input: ctx.value, path: ["time_s", back], message });
    }
  });

export const Road = z.discriminatedUnion("kind", [StandardRoad, RecordedRoad]);
export type Road = z.infer<typeof Road>;
