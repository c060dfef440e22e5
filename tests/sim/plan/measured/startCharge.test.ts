import { describe, expect, it } from "vitest";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { chargeAtVoltage_frac, startCharge_frac } from "../../../../sim/plan/measured/startCharge.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { straightPack } from "../../../support/chargeable.ts";
import { samplesOf, times } from "./logsByHand.ts";

/** 40 V empty to 80 V full in a straight line, behind 0.1 ohm and leads of 0.05 ohm. */
const job = bareJob({ ...straightPack, pack: { ...straightPack.pack, leads_mohm: 50 } });
const pack = preparePack(job.packs[0], job.module);

describe("the charge at an open-circuit voltage", () => {
  it("lies on the curve, and at its ends beyond them", () => {
    expect(chargeAtVoltage_frac(pack, 60)).toBeCloseTo(0.5, 9);
    expect(chargeAtVoltage_frac(pack, 72)).toBeCloseTo(0.8, 9);
    expect(chargeAtVoltage_frac(pack, 30)).toBeCloseTo(0, 9);
    expect(chargeAtVoltage_frac(pack, 90)).toBeCloseTo(1, 9);
  });
});

describe("the charge a drive began with", () => {
  it("is the log's own where it states one that can be", () => {
    const stated = Float64Array.of(Number.NaN, 0, 1.2, 0.83, 0.8);
    expect(startCharge_frac(pack, samplesOf([60], [0]), stated)).toBe(0.83);
    expect(startCharge_frac(pack, samplesOf([60], [0]), Float64Array.of(1))).toBe(1);
  });
  it("is by the first volts, the sag of their amps put back", () => {
    // 69 V at 20 A behind 0.15 ohm: 72 V.
    expect(startCharge_frac(pack, samplesOf(times(5, 69), times(5, 20)), undefined)).toBeCloseTo(0.8, 6);
    expect(startCharge_frac(pack, samplesOf(times(5, 69), times(5, 20)), Float64Array.of(0))).toBeCloseTo(0.8, 6);
  });
  it("is by the middle of the first half minute, which no single reading sways", () => {
    const volts = [10, ...times(29, 60), ...times(60, 70)];
    expect(startCharge_frac(pack, samplesOf(volts, times(90, 0)), undefined)).toBeCloseTo(0.5, 6);
  });
  it("is full as far as the pack is charged where there is nothing to go by", () => {
    expect(startCharge_frac(pack, samplesOf([], []), undefined)).toBe(pack.ceiling_frac);
  });
});
