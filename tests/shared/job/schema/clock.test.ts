import { expect, it } from "vitest";
import { Clock } from "../../../../shared/job/schema/clock.ts";

it.each(["0:00", "7:30", "07:30", "23:59"])("%s is a time of day", (time) => {
  expect(Clock.safeParse(time).success).toBe(true);
});

it.each(["24:00", "7:60", "7.30", "half past seven", "", "-1:00"])("%s is none", (time) => {
  expect(Clock.safeParse(time).success).toBe(false);
});
