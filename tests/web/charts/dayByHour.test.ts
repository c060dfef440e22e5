import { expect, it } from "vitest";
import type { DayByHour } from "../../../sim/index.ts";
import { clockOf, dayByHour } from "../../../web/charts/dayByHour.ts";
import { drawing } from "../../support/drawing.ts";

/** Leaves at 8:00 with 90 %, is home at 18:00 with 50 %, charges from 23:00 and is full at 3:00 of the next day. */
const day: DayByHour = {
  hour_h: [8, 18, 23, 27, 32],
  soc_frac: [0.9, 0.5, 0.5, 0.9, 0.9],
  leaves_h: 8,
  home_h: 18,
  home_frac: 0.5,
  chargesFrom_h: 23,
  isFull: true,
};
const line = (changes: Partial<DayByHour> = {}) => ({
  name: "Six modules",
  index: 0,
  day: { ...day, ...changes },
  floor_frac: 0.1,
});

it("shows hours as a clock does, to the nearest minute and over midnight", () => {
  expect([0, 7.5, 23.999, 24, 31.25].map(clockOf)).toEqual(["0:00", "7:30", "0:00", "0:00", "7:15"]);
});

it("reads the charge between two hours, and says when that is the next day", () => {
  const { read } = dayByHour([line()], drawing());
  expect(read(13)).toEqual({ where: "13:00", values: [{ label: "Six modules", text: "70 %" }] });
  // Halfway through the charge.
  expect(read(25)).toEqual({ where: "1:00 next day", values: [{ label: "Six modules", text: "70 %" }] });
});

it("says how the day goes, and whether the pack is full by the morning", () => {
  expect(dayByHour([line()], drawing()).alt).toContain(
    "Six modules leaves at 8:00, is home at 18:00 with 50 %, charges from 23:00 and is full by the morning.",
  );
  const { chargesFrom_h: _, ...uncharged } = day;
  const soc_frac = [0.9, 0.5, 0.5, 0.5, 0.5];
  const never = { ...line(), day: { ...uncharged, soc_frac, isFull: false } };
  expect(dayByHour([never], drawing()).alt).toContain(
    "is not charged before it leaves again and has 50 % when it leaves again",
  );
});

it("draws each floor once, and says so where no pack has such a day", () => {
  const count = (floors: readonly number[]) => {
    const { svg } = dayByHour(
      floors.map((floor_frac, index) => ({ ...line(), index, floor_frac })),
      drawing(),
    );
    return svg.textContent?.match(/empty at \d+ %/g);
  };
  expect(count([0.1, 0.1])).toEqual(["empty at 10 %"]);
  expect(count([0.1, 0.2])).toEqual(["empty at 10 %", "empty at 20 %"]);
  expect(dayByHour([], drawing()).alt).toMatch(/^No pack gets home/);
});
