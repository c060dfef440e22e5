import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { readJob } from "../../../../shared/job/readJob.ts";
import { ZERO_CELSIUS_K } from "../../../../shared/units.ts";
import { type ParkTimes, park } from "../../../../sim/plan/week/park.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { createRunContext } from "../../../../sim/step/runContext.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { flatPack, socketOf } from "../../../support/chargeable.ts";

/** A pack of 10 kWh that is all voltage, half charged; 2.3 kW from the wall of which the car draws 0.3 kW itself. */
function jobOf(changes: Changes = {}): Job {
  const flat = flatPack(10);
  return readJob({
    ...bareJob({
      ...changes,
      module: { ...flat.module, ...changes.module },
      pack: flat.pack ?? {},
      charger: { carDraw_W: 300, ...changes.charger },
    }),
    supplies: [socketOf(10, { name: "Home" }), socketOf(10, { name: "Post" })],
  });
}
const hours = (from_h: number, to_h: number, plugged_h: ParkTimes["plugged_h"] = [from_h, to_h]): ParkTimes => ({
  from_h,
  to_h,
  plugged_h,
});

function parked(
  at: "Home" | "Post" | undefined,
  times: ParkTimes,
  job = jobOf(),
  before: (state: State) => void = () => {},
) {
  const model = prepare(job, job.packs[0]);
  const context = createRunContext(model, 0.5);
  before(context.state);
  const marks: [number, number][] = [];
  const supply = job.supplies.find(({ name }) => name === at);
  const found = park(context, job, supply, times, (at_h, soc_frac) => marks.push([at_h, soc_frac]));
  return { ...found, marks, state: context.state };
}
type State = ReturnType<typeof createRunContext>["state"];

describe("a parked car at a supply", () => {
  it("charges for the hours it is plugged in: of 2.3 kWh from the wall the car takes 0.3 and the cells 2", () => {
    const found = parked("Home", hours(10, 20, [12, 13]));
    expect(found).toMatchObject({ supply: "Home", from_h: 10, to_h: 20, from_frac: 0.5, waited_h: 0 });
    expect(found.wall_kWh).toBeCloseTo(2.3, 6);
    expect(found.given_kWh).toBeCloseTo(2.3, 6);
    expect(found.car_kWh).toBeCloseTo(0.3, 6);
    expect(found.stored_kWh).toBeCloseTo(2, 6);
    expect(found.to_frac).toBeCloseTo(0.7, 6);
    // It is drawn at its start, at every quarter of an hour of the charge, and at the end.
    expect(found.marks.map(([at_h]) => at_h)).toEqual(
      [12, 12.25, 12.5, 12.75, 13, 20].map((each) => expect.closeTo(each, 9)),
    );
    expect(found.marks[2][1]).toBeCloseTo(0.6, 6);
  });
  it("is plugged in no sooner than it comes and no longer than it stays", () => {
    expect(parked("Home", hours(10, 11, [5, 30])).stored_kWh).toBeCloseTo(2, 6);
    expect(parked("Home", hours(10, 11, [10.5, 30])).stored_kWh).toBeCloseTo(1, 6);
    expect(parked("Home", hours(10, 11, [12, 13])).stored_kWh).toBe(0);
    expect(parked("Home", hours(10, 11, [5, 9])).stored_kWh).toBe(0);
  });
  it("ends when it is full, and then draws nothing", () => {
    const found = parked("Home", hours(10, 20));
    expect(found.to_frac).toBe(1);
    expect(found.wall_kWh).toBeCloseTo((5 * 2.3) / 2, 6);
  });
  it("takes nothing where there is no supply, or none that charges it, which is said", () => {
    const { supply: _, stop: __, ...nowhere } = parked(undefined, hours(10, 20));
    expect(nowhere).toMatchObject({ to_frac: 0.5, wall_kWh: 0, stored_kWh: 0 });
    expect(parked(undefined, hours(10, 20))).not.toHaveProperty("supply");
    const stopped = parked("Home", hours(10, 20), jobOf({ charger: { max_V: 300 } }));
    expect(stopped).toMatchObject({ to_frac: 0.5, wall_kWh: 0 });
    expect(stopped.stop).toBeDefined();
    expect(parked("Home", hours(10, 20))).not.toHaveProperty("stop");
  });
});

// One lump of 100 kJ/K that loses 10 W/K: what it is off by is 1/e of that after 10 000 s.
const heat = { capacity_kJpK: 100, cooling_WpK: 10, derateFrom_degC: 120, derateTo_degC: 150 };
const TAU_h = 10_000 / 3600;
const warm: Changes = { module: { heat }, motor: { heat }, environment: { temperature_degC: 20, pack_degC: 25 } };
const hot = (state: State) => {
  state.pack.temperature_K = 40 + ZERO_CELSIUS_K;
  state.motor_K = 80 + ZERO_CELSIUS_K;
};

describe("what is warm in a parked car", () => {
  it("goes towards the air: cells at the usual place towards what they begin at there, in a garage say", () => {
    const job = jobOf(warm);
    const cells = (at: "Home" | "Post" | undefined) => parked(at, hours(10, 10 + TAU_h, [30, 31]), job, hot).pack_degC;
    expect(cells("Home")).toBeCloseTo(25 + 15 / Math.E, 6);
    expect(cells("Post")).toBeCloseTo(20 + 20 / Math.E, 6);
    expect(cells(undefined)).toBeCloseTo(20 + 20 / Math.E, 6);
    const { state } = parked("Home", hours(10, 10 + TAU_h, [30, 31]), job, hot);
    expect(state.motor_K - ZERO_CELSIUS_K).toBeCloseTo(20 + 60 / Math.E, 6);
  });
  it("does so before, while and after it charges", () => {
    const job = jobOf(warm);
    // No resistance: the charge warms nothing. A quarter of the time before it, a quarter of it at the plug.
    const found = parked("Home", hours(10, 10 + TAU_h, [10 + TAU_h / 4, 10 + TAU_h / 2]), job, hot);
    expect(found.stored_kWh).toBeGreaterThan(1);
    expect(found.pack_degC).toBeCloseTo(25 + 15 / Math.E, 3);
  });
  it("is as it was where it does not stand", () => {
    expect(parked("Home", hours(10, 10), jobOf(warm), hot).pack_degC).toBeCloseTo(40, 9);
  });
});

describe("cells that take no current", () => {
  it("wait until they are warm enough, five minutes at a time, and the wait is counted", () => {
    // From -10 towards 25 degC: they are at 0 degC after 10 000 s times ln(35/25), 56.1 minutes.
    const cold = jobOf({
      module: { heat, coldCharge: { none_degC: 0, full_degC: 1 } },
      environment: { temperature_degC: -10, pack_degC: 25 },
    });
    const found = parked("Home", hours(10, 20), cold, (state) => {
      state.pack.temperature_K = -10 + ZERO_CELSIUS_K;
    });
    expect(found.isCold).toBe(true);
    expect(found.waited_h * 60).toBeGreaterThanOrEqual(56);
    expect(found.waited_h * 60).toBeLessThan(56.2 + 5.1);
    expect(found.to_frac).toBe(1);
  });
});

it("has its peaks, its gear and its trip as at the beginning when it leaves", () => {
  const { state } = parked(undefined, hours(10, 11), jobOf(), (before) => {
    before.trip_m = 5000;
    before.pack.dischargeUse_A2s = 7;
    before.pack.chargeUse_A2s = 8;
  });
  expect(state.trip_m).toBe(0);
  expect(state.pack).toMatchObject({ dischargeUse_A2s: 0, chargeUse_A2s: 0 });
});
