import { describe, expect, it } from "vitest";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { packFromLog } from "../../../../sim/plan/measured/packFromLog.ts";
import type { PackSamples } from "../../../../sim/plan/measured/packSamples.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { straightPack } from "../../../support/chargeable.ts";
import { driveOf, samplesOf, times } from "./logsByHand.ts";

// 40 V empty to 80 V full in a straight line, 60 Ah, 0.1 ohm of cells and 0.05 ohm of leads in the job.
const job = bareJob({ ...straightPack, pack: { ...straightPack.pack, leads_mohm: 50 } });
const pack = preparePack(job.packs[0], job.module);

/** A pack of such a capacity and resistance that gives 20 and 60 A by turns of five seconds, from a charge of nine tenths on. */
function driven(count: number, { capacity_Ah = 60, ohm = 0.15, scale = 1 } = {}, changes: Partial<PackSamples> = {}) {
  const amps = Array.from({ length: count }, (_, k) => scale * (Math.floor(k / 5) % 2 === 0 ? 20 : 60));
  let used_C = 0;
  const socs = amps.map((each) => {
    const soc_frac = 0.9 - used_C / (capacity_Ah * 3600);
    used_C += each;
    return soc_frac;
  });
  const volts = socs.map((soc_frac, k) => 40 + 40 * soc_frac - ohm * amps[k]);
  const rows = count + 1;
  const predicted = driveOf(times(rows, 10), {
    current_A: [...amps, amps[count - 1]],
    voltage_V: amps.concat(amps[count - 1]).map((each) => 70 - 0.15 * each),
    soc_frac: [...socs, socs[count - 1]],
    pack_K: times(rows, 298.15),
  });
  return packFromLog(pack, samplesOf(volts, amps, changes), predicted, 0.9);
}

describe("resistance from the steps of volts with amps", () => {
  it("is that of the pack, beside what the job's drive steps by", () => {
    const { resistance_ohm, predicted_ohm } = driven(400, { ohm: 0.21 });
    // In a second at 60 A of 60 Ah the open-circuit voltage falls by 11 mV: of a step of 40 A that is 0.3 mohm.
    expect(Math.abs((resistance_ohm?.value ?? 0) - 0.21)).toBeLessThan(0.0003);
    expect(predicted_ohm).toBeCloseTo(0.15, 9);
    expect(resistance_ohm?.low).toBeLessThan(0.21);
    expect(resistance_ohm?.high).toBeGreaterThan(0.2097);
  });
  it("wants thirty large steps of five amperes at least, samples no further apart than two and a half seconds", () => {
    // A step every five seconds: 151 samples have 30 of them, 150 have 29.
    expect(driven(151).resistance_ohm).toBeDefined();
    expect(driven(150).resistance_ohm).toBeUndefined();
    expect(driven(400, { scale: 0.126 }).resistance_ohm).toBeDefined();
    expect(driven(400, { scale: 0.124 }).resistance_ohm).toBeUndefined();
    expect(driven(400, {}, { interval_s: 2.5 }).resistance_ohm).toBeDefined();
    expect(driven(400, {}, { interval_s: 2.6 }).resistance_ohm).toBeUndefined();
    const apart = Float64Array.from({ length: 400 }, (_, k) => 2.6 * k);
    expect(driven(400, {}, { time_s: apart }).resistance_ohm).toBeUndefined();
  });
  it("has a band of twice what steps by themselves would leave, nine of ten", () => {
    // Steps of 40 A by turns, each off by 0.2 V with a sign that goes with none of them: √(Σ r² / (n - 1) / Σ ΔI²).
    const amps = Array.from({ length: 201 }, (_, k) => (k % 2 === 0 ? 20 : 60));
    const off = [0, 0.2, 0.4, 0.2];
    const volts = amps.map((each, k) => 70 - 0.15 * each + off[k % 4]);
    const { resistance_ohm } = packFromLog(pack, samplesOf(volts, amps), driveOf(times(202, 10)), 0.9);
    const half = 1.645 * 2 * Math.sqrt((200 * 0.04) / 199 / (200 * 1600));
    expect(resistance_ohm?.value).toBeCloseTo(0.15, 9);
    expect(resistance_ohm?.low).toBeCloseTo(0.15 - half, 9);
    expect(resistance_ohm?.high).toBeCloseTo(0.15 + half, 9);
  });
  it("is none where volts rise with the amps, and the job's by its tables where nothing steps", () => {
    expect(driven(400, { ohm: -0.1 }).resistance_ohm).toBeUndefined();
    const still = packFromLog(pack, samplesOf(times(50, 70), times(50, 10)), driveOf(times(51, 10)), 0.9);
    expect(still.predicted_ohm).toBeCloseTo(0.15, 9);
  });
});

describe("capacity from how far the volts fall", () => {
  it("is that of the pack, within a band that holds it", () => {
    // 40 A on average for 1800 s are 20 Ah.
    const { capacity_Ah, predicted_Ah, used_frac } = driven(1800, { capacity_Ah: 50 });
    expect(predicted_Ah).toBeCloseTo(60, 9);
    expect(used_frac).toBeCloseTo(20 / 60, 2);
    expect(Math.abs((capacity_Ah?.value ?? 0) - 50)).toBeLessThan(1);
    expect(capacity_Ah?.low).toBeLessThan(50);
    expect(capacity_Ah?.high).toBeGreaterThan(50);
    // An ampere-hour is as good as the ammeter: 1 %.
    expect((capacity_Ah?.high ?? 0) - (capacity_Ah?.value ?? 0)).toBeGreaterThanOrEqual(
      0.0099 * (capacity_Ah?.value ?? 0),
    );
  });
  it("is not told by a drive that uses less than twelve hundredths of the charge, or lasts less than eight minutes", () => {
    // 40 A for 648 s are 7.2 Ah: 0.12 of 60.
    expect(driven(600).capacity_Ah).toBeUndefined();
    expect(driven(600).used_frac).toBeLessThan(0.12);
    expect(driven(420, { scale: 3 }).used_frac).toBeGreaterThan(0.12);
    expect(driven(420, { scale: 3 }).capacity_Ah).toBeUndefined();
  });
});

it("counts the charge with the time that each sample stands for", () => {
  const found = packFromLog(
    pack,
    samplesOf(times(3, 70), [60, 60, 60], { weight_s: Float64Array.of(10, 20, 30) }),
    driveOf(times(4, 10)),
    0.9,
  );
  // Half of the first and the last, all of the middle one: 5 + 20 + 15 = 40 s at 60 A of 216 kC.
  expect(found.used_frac).toBeCloseTo(2400 / 216_000, 12);
});

describe("charge that was not logged", () => {
  /** A log of the same drive whose logger was silent for some of its rows. */
  function silent(from: number, to: number, part: readonly number[] = []) {
    const amps = Array.from({ length: 1800 }, (_, k) => (Math.floor(k / 5) % 2 === 0 ? 20 : 60));
    let used_C = 0;
    const socs = amps.map((each) => {
      used_C += each;
      return 0.9 - used_C / (60 * 3600);
    });
    const kept = amps.map((_, k) => k).filter((k) => k < from || k >= to);
    const samples = samplesOf(
      kept.map((k) => 40 + 40 * socs[k] - 0.15 * amps[k]),
      kept.map((k) => amps[k]),
      {
        time_s: Float64Array.from(kept, (k) => k + 0.5),
        row: Int32Array.from(kept),
      },
    );
    const rows = [...amps, amps[0]];
    const predicted = driveOf(times(1801, 10), {
      current_A: rows,
      voltage_V: rows.map((each) => 70 - 0.15 * each),
      soc_frac: [...socs, socs[0]],
      pack_K: times(1801, 298.15),
      part,
    });
    return packFromLog(pack, samples, predicted, 0.9).capacity_Ah;
  }

  it("is taken from the model while the car drove on, and widens the band", () => {
    const [whole, holed] = [silent(0, 0), silent(600, 1100)];
    expect(Math.abs((holed?.value ?? 0) - 60)).toBeLessThan(1);
    const half = (band: typeof whole) => ((band?.high ?? 0) - (band?.low ?? 0)) / 2;
    // 500 of 1800 s guessed to 15 %: 2.5 Ah of 60.
    expect(half(holed)).toBeGreaterThan(half(whole) + 1);
    expect(half(holed)).toBeGreaterThan(2.5);
  });
  it("is not guessed over a break in the motion: the car may have been charged; the longer span is used", () => {
    const part = Array.from({ length: 1801 }, (_, k) => (k < 300 ? 0 : 1));
    const found = silent(200, 400, part);
    expect(Math.abs((found?.value ?? 0) - 60)).toBeLessThan(1.5);
  });
});
