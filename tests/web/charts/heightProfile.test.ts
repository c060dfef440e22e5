import { expect, it } from "vitest";
import { heightProfile } from "../../../web/charts/heightProfile.ts";
import { drawing } from "../../support/drawing.ts";

const profile = { distance_m: Float64Array.of(0, 1000, 2000), elevation_m: Float64Array.of(100, 160, 120) };

it("says from where to where the road goes, and reads its height between points", () => {
  const { alt, read } = heightProfile({ title: "the hill", profile, length_m: 2000 }, drawing());
  expect(alt).toMatch(/^Height along the hill: from 100.m to 160.m/);
  expect(read?.(500)).toMatchObject({ values: [{ label: "height", text: "130 m" }] });
});
