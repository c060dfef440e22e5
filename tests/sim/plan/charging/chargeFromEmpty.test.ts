import { describe, expect, it } from "vitest";
import { chargesFromEmpty, suppliesOf } from "../../../../sim/plan/charging/chargeFromEmpty.ts";
import { chargePlan } from "../../../../sim/plan/charging/chargePlan.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { flatPack, socketOf } from "../../../support/chargeable.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

const bare = bareJob(flatPack(20));
const [pack] = bare.packs;
const night = socketOf(32, { name: "At night", hours: { from: "23:30", to: "4:30" } });
const job = { ...bare, packs: [pack, { ...pack, name: "Two", parallelModules: 2 }], supplies: [socketOf(10), night] };

describe("packs charged from empty", () => {
  it("take what they hold at what the supply gives, each pack at each supply", () => {
    // 230 V at 10 A is 2.3 kW, at 32 A 7.36 kW; 20 kWh and 40 kWh without losses.
    const times_h = chargesFromEmpty(job).map((charges) => charges.map(({ full }) => (full?.time_s ?? 0) / 3600));
    expect(times_h.flat()).toEqual([20 / 2.3, 20 / 7.36, 40 / 2.3, 40 / 7.36].map((each) => expect.closeTo(each, 3)));
  });

  it("have a charge within the cheap hours where the supply has some", () => {
    const [[atSocket, atNight]] = chargesFromEmpty(job);
    expect(atSocket.inNight).toBeUndefined();
    // All 20 kWh go in within the five hours, and the charge ends when they have.
    expect(atNight.night?.hours_h).toBe(5);
    expect((atNight.inNight?.time_s ?? 0) / 3600).toBeCloseTo(20 / 7.36, 3);
  });

  it("say why they are not charged", () => {
    const [[charge]] = chargesFromEmpty({ ...job, charger: { ...job.charger, max_V: 300 } });
    expect(charge.stop).toBeDefined();
    expect(charge.full).toBeUndefined();
  });

  it("are the same for any drive, so that a plan may be handed them", () => {
    for (const size of [10, 20]) {
      const candidates = [inventedCandidate(size), inventedCandidate(size)];
      expect(chargePlan(job, candidates, chargesFromEmpty(job))).toEqual(chargePlan(job, candidates));
    }
  });

  it("stand at a household socket where no supply is entered", () => {
    expect(suppliesOf({ supplies: [], units: "metric" })).toMatchObject([{ voltage_V: 230, current_A: 10 }]);
    expect(suppliesOf(job)).toBe(job.supplies);
  });
});
