import { expect, it } from "vitest";
import { standardCycleLike } from "../../../../sim/route/roads/standardCycleLike.ts";
import { characteristics } from "../../../../sim/trace/characteristics.ts";
import { cycleSpeeds_mps } from "../../../support/cycleSpeeds.ts";

const ids = ["udds", "hwfet", "us06", "nycc", "wltc-class-3b", "nedc"];
const ofSpeeds = (speeds: readonly number[]) =>
  characteristics({
    id: "x",
    title: "x",
    time_s: Float64Array.from(speeds, (_, i) => i),
    speed_mps: Float64Array.from(speeds),
  });
const cycles = ids.map((id) => ({ id, characteristics: ofSpeeds(cycleSpeeds_mps(id)) }));

it.each(ids)("finds %s to be like itself, wholly", (id) => {
  const [first] = standardCycleLike(ofSpeeds(cycleSpeeds_mps(id)), cycles);
  expect(first).toMatchObject({ id, likeness_frac: 1, difference: "much the same" });
});

it("finds a motorway drive to be like the highway cycle, and says that it is faster", () => {
  const speeds = cycleSpeeds_mps("hwfet").map((speed_mps) => speed_mps * 1.12);
  const [first] = standardCycleLike(ofSpeeds(speeds), cycles);
  expect(first.id).toBe("hwfet");
  expect(first.difference).toMatch(/12 % faster/);
});

it("stays finite for a trip that hardly moves", () => {
  for (const { likeness_frac } of standardCycleLike(ofSpeeds([0, 0, 0.001, 0]), cycles)) {
    expect(Number.isFinite(likeness_frac)).toBe(true);
  }
});
