import { expect, it } from "vitest";
import { currentDuration } from "../../../web/charts/currentDuration.ts";
import { drawing } from "../../support/drawing.ts";

const points = [1, 10, 600].map((duration_s, i) => ({ duration_s, battery_A: [300, 200, 100][i] ?? 0 }));

it("says the currents by how long they last, with fuse and pack", () => {
  const { alt, table } = currentDuration(
    { lines: [{ name: "road", points }], continuous_A: 150, fuse_A: 250 },
    drawing(),
  );
  expect(table.rows).toEqual(points.map(({ duration_s, battery_A }) => ["road", duration_s, battery_A]));
  expect(alt).toMatch(/The fuse to begin with is 250 A, and the pack gives 150 A for hours\.$/);
});

it("writes what lasts as long as two minutes as that, rounded up or not", () => {
  const { read } = currentDuration({ lines: [{ name: "road", points }], continuous_A: 150, fuse_A: 250 }, drawing());
  const lasting = (duration_s: number) => read?.(Math.log10(duration_s)).where;
  expect([110, 119.7, 120].map(lasting)).toEqual(["110 s", "2 min", "2 min"]);
});

it("says that no current is drawn", () => {
  const none = points.map((point) => ({ ...point, battery_A: 0 }));
  expect(
    currentDuration({ lines: [{ name: "road", points: none }], continuous_A: 150, fuse_A: 250 }, drawing()).alt,
  ).toMatch(/No current is drawn on this road/);
});
