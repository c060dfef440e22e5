import { beforeAll, describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { adjustModel } from "../../../../sim/plan/measured/adjustModel.ts";
import { correctedJob } from "../../../../sim/plan/measured/correctedJob.ts";
import { type Measured, measure, type RecordedDrive } from "../../../../sim/plan/measured/measure.ts";
import { toTrace } from "../../../../sim/route/roads/toTrace.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { type BuiltLog, drivenAndLogged, mixedDrive, shortDrive } from "../../../logs/builtCar.ts";
import { demoJob } from "../../../support/demoJob.ts";

const job = demoJob();
const pack = 2;
const hidden = { rolling_ratio: 1.2, accessories_W: 120, regen_ratio: 0.5 };

function recorded(log: BuiltLog, clock: RecordedDrive["log"]["clock"] = "same"): RecordedDrive {
  return {
    parts: [{ start_s: log.time_s[0], trace: toTrace(log, "log", "log") }],
    hasHeights: true,
    log: {
      file: "pack.csv",
      time_s: log.electricTime_s,
      voltage_V: log.voltage_V,
      current_A: log.current_A,
      fileSign: 1 as const,
      clock,
      remarks: [],
    },
  };
}
const logged = (changes: Partial<Parameters<typeof drivenAndLogged>[3]> = {}, of: Job = job) =>
  drivenAndLogged(of, pack, shortDrive(), { seed: 4, change: hidden, isCleaned: true, ...changes });
const remarksOf = (found: Measured) => found.remarks.map((each) => messageIn(each, "metric")).join(" ");
const fitted = (found: Measured, id: string) => found.fit.fitted.find((each) => each.id === id);

/** The drive as it should be logged, which the others are held against. */
let found: Measured;
beforeAll(() => {
  found = measure(job, pack, recorded(logged()));
});

describe("a corrected job", () => {
  it("drives as the corrected model does: the same road load, accessories and limits of regen", () => {
    const after = prepare(correctedJob(job, pack, found.fit, "a test"), job.packs[pack]);
    const model = adjustModel(prepare(job, job.packs[pack]), found.fit.change);
    expect(after.road.rollingWeight_N / model.road.rollingWeight_N).toBeCloseTo(1, 9);
    expect(after.road.drag_Npmps2 / model.road.drag_Npmps2).toBeCloseTo(1, 9);
    expect(after.accessories_W).toBeCloseTo(model.accessories_W, 6);
    expect(after.controller.regen_Nm).toBeCloseTo(model.controller.regen_Nm, 9);
  });

  it("leaves the job that was held against as it was", () => {
    expect(job).toEqual(demoJob());
  });

  it("takes the differences away that it explains, where the car pulls, cruises, brakes and stands", () => {
    for (const { doing, measured_Wh, predicted_Wh, corrected_Wh } of found.doings) {
      if (Math.abs(measured_Wh - predicted_Wh) < 5) continue;
      expect({ doing, left: Math.abs(measured_Wh - corrected_Wh) < Math.abs(measured_Wh - predicted_Wh) }).toEqual({
        doing,
        left: true,
      });
    }
    // The hidden 120 W for the time it stood: what the first row must differ by.
    const stood = found.doings.find(({ doing }) => doing === "standing");
    const hidden_Wh = (120 * (stood?.time_s ?? 0)) / 3600;
    expect(Math.abs((stood?.measured_Wh ?? 0) - (stood?.predicted_Wh ?? 0) - hidden_Wh)).toBeLessThan(0.15 * hidden_Wh);
  });

  it("has each of what the car did, which add up to the whole drive as predicted and as logged", () => {
    expect(found.doings.map(({ doing }) => doing)).toEqual(
      expect.arrayContaining(["standing", "pulling away", "braking"]),
    );
    const sum = (of: "measured_Wh" | "predicted_Wh" | "corrected_Wh") =>
      found.doings.reduce((total, each) => total + each[of], 0) / 1000;
    const net = found.quantities.find(({ id }) => id === "net_kWh");
    // All but samples beyond either end of the drive are in one of them.
    expect(sum("measured_Wh") / (net?.measured ?? 0)).toBeCloseTo(1, 1);
    expect(sum("predicted_Wh") / (net?.predicted.value ?? 0)).toBeCloseTo(1, 1);
    expect(sum("corrected_Wh") / (net?.corrected ?? 0)).toBeCloseTo(1, 1);
    for (const { time_s } of found.doings) expect(time_s).toBeGreaterThan(0);
  });

  it("puts what moves the drive's energy most first, and tells what cannot be told apart", () => {
    expect(messageIn(found.sentences[1], "metric")).toMatch(
      /^(Limit on braking|Rolling resistance|Draw of the accessories)/,
    );
    const notTold = found.notTold.map((each) => messageIn(each, "metric")).join(" ");
    expect(notTold).toMatch(/Soft tyres, a brake that drags and stiff bearings are one constant force/);
    expect(notTold).toMatch(
      /Which of what looks like rolling resistance it is, a log cannot tell: by itself it is open to ±\d+ %, since these may be off too: .*the losses of gearbox and axle \(±\d+ %\)/,
    );
  });
});

describe("clocks and intervals", () => {
  it("are lined up where the battery logger counts from its own start", () => {
    const log = logged({ behind_s: 0 });
    const free = { ...log, time_s: log.time_s.map((at_s) => at_s + 1.7e9) };
    const found = measure(job, pack, recorded(free, "free"));
    expect(Math.abs(found.linedUp.offset_s - 1.7e9)).toBeLessThan(0.5);
  });

  it("are used as far as they go where volts and amps come every 17 s", () => {
    const sparse = measure(job, pack, recorded(logged({ interval_s: 17 })));
    expect(remarksOf(sparse)).toMatch(/come every 17 s/);
    expect(Math.abs(sparse.linedUp.offset_s)).toBeLessThan(1.5);
    const [wide, narrow] = [sparse, found].map(
      (each) => fitted(each, "accessories")?.ownHalf ?? Number.POSITIVE_INFINITY,
    );
    expect(wide).toBeGreaterThan(narrow);
  });

  it("leave a gap of the logger out of both sides", () => {
    const log = logged();
    const isKept = (at_s: number) => at_s < 300 || at_s > 600;
    const rows = Array.from(log.electricTime_s.keys()).filter((k) => isKept(log.electricTime_s[k]));
    const pick = (column: Float64Array) => Float64Array.from(rows, (k) => column[k]);
    const cut = {
      ...log,
      electricTime_s: pick(log.electricTime_s),
      voltage_V: pick(log.voltage_V),
      current_A: pick(log.current_A),
    };
    const holed = measure(job, pack, recorded(cut));
    expect(remarksOf(holed)).toMatch(/cover 7\d(\.\d)? % of the drive/);
    const use = (of: Measured) => of.quantities.find(({ id }) => id === "net_kWh");
    expect(use(holed)?.measured).toBeLessThan(0.95 * (use(found)?.measured ?? 0));
    const ratio = (of: Measured) => (use(of)?.measured ?? 0) / (use(of)?.predicted.value ?? 1);
    expect(Math.abs(ratio(holed) - ratio(found))).toBeLessThan(0.08);
  });
});

describe("the ammeter", () => {
  it("has its zero taken out where the car stood switched off", () => {
    const log = logged({ zero_A: 0.8 });
    // Off until it drives away: nothing but the zero is shown.
    expect(shortDrive().speed_mps.findIndex((speed) => speed > 0)).toBeGreaterThan(30);
    const split = { ...log, current_A: log.current_A.map((amps, k) => (log.electricTime_s[k] < 50 ? 0.8 : amps)) };
    const found = measure(job, pack, recorded(split));
    expect(found.zero.how).toBe("off");
    expect(Math.abs(found.zero.zero_A - 0.8)).toBeLessThan(0.1);
    // The rest with the car off is none of its accessories.
    expect(Math.abs((fitted(found, "accessories")?.value ?? 0) - 120)).toBeLessThan(25);
  });

  it("is turned round where its amps fall when the car works, whatever the reader made of them", () => {
    const found = measure(job, pack, recorded(logged({ sign: -1 })));
    expect(found.linedUp.sign).toBe(-1);
    expect(fitted(found, "accessories")?.value).toBeGreaterThan(90);
  });
});

it("says of a log with three times the amps that it hardly fits this job", () => {
  const log = logged();
  const found = measure(job, pack, recorded({ ...log, current_A: log.current_A.map((amps) => 3 * amps) }));
  expect(found.verdict).toBe("wrong");
  expect(found.sentences.map((each) => messageIn(each, "metric")).join(" ")).toMatch(
    /hardly fits the job: 3\d\d % of the predicted energy/,
  );
});

it("says of power that never changes that it is no drive, not that the clocks do not meet", () => {
  const log = logged();
  const steady = { ...log, current_A: log.current_A.map(() => -20), voltage_V: log.voltage_V.map(() => 130) };
  expect(() => measure(job, pack, recorded(steady))).toThrow(/found 2600 W in every row of volts and amps/);
});

describe("the pack itself", () => {
  // A pack of cells that hold a tenth less and resist half as much again, driven for forty minutes from full.
  const worn: Job = {
    ...job,
    module: {
      ...job.module,
      capacity_Ah: 0.9 * job.module.capacity_Ah,
      resistance: {
        ...job.module.resistance,
        module_mohm: job.module.resistance.module_mohm.map((each) => 1.5 * each),
      },
    },
  };
  const small = 1;

  it("shows its capacity and its resistance, each within its band", () => {
    const log = drivenAndLogged(worn, small, mixedDrive(), { seed: 9, change: {}, isCleaned: true });
    const { packFound } = measure(job, small, recorded(log));
    const truth_Ah = worn.module.capacity_Ah * job.packs[small].parallelModules;
    expect(packFound.capacity_Ah?.low).toBeLessThan(truth_Ah);
    expect(packFound.capacity_Ah?.high).toBeGreaterThan(truth_Ah);
    expect(packFound.capacity_Ah?.high).toBeLessThan(packFound.predicted_Ah);
    // Leads apart, half as much again: the same steps on the predicted drive are what it is held against.
    const leads_ohm = job.packs[small].leads_mohm / 1000;
    const more = ((packFound.resistance_ohm?.value ?? 0) - leads_ohm) / (packFound.predicted_ohm - leads_ohm);
    expect(Math.abs(more - 1.5)).toBeLessThan(0.12);
  });
});

it("holds the drives of a week of which the pack was logged and says so", () => {
  const log = recorded(logged());
  const [part] = log.parts;
  // Thirty more drives of which nothing was logged of the pack: eighteen minutes each.
  const later = Array.from({ length: 30 }, (_, k) => ({ ...part, start_s: part.start_s + 4000 * (k + 1) }));
  const long = measure(job, pack, { ...log, parts: [part, ...later] });
  expect(remarksOf(long)).toMatch(/Compared on 1 of the 31 drives in the log/);
  expect(long.quantities[0].measured).toBeCloseTo(found.quantities[0].measured, 6);
});
