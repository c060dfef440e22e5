import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { LayoutFigures } from "../../../../sim/plan/layouts/layoutFigures.ts";
import { type FitJob, ruledOut, tooMuchMass } from "../../../../sim/plan/layouts/ruledOut.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const base = inventedJob();
const pack: Job["packs"][number] = { ...base.packs[0], seriesModules: 5, parallelModules: 2 };
/** 5s2p of a module of 25 V full, 22 V on average and 17 V empty; nothing binds. */
const fits: LayoutFigures = {
  full_V: 125,
  nominal_V: 110,
  loaded_V: 95,
  flat_V: 85,
  string_A: { rms: 80, tenSeconds: 150, peak: 160 },
  nominal_kWh: 10,
  usable_kWh: 9,
  mass_kg: 100,
};
interface Limits {
  readonly controller?: Partial<Job["controller"]>;
  readonly charger?: Partial<Job["charger"]>;
  readonly accessories?: Partial<Job["accessories"]>;
  readonly vehicle?: Partial<Job["vehicle"]>;
  readonly sizing?: Partial<Job["sizing"]>;
  readonly module?: Partial<Job["module"]>;
}
const jobOf = ({ controller, charger, accessories, vehicle, sizing, module }: Limits): FitJob => ({
  ...base,
  module: { ...base.module, discharge: { continuous_A: 100, peak_A: 200, peak_s: 10 }, ...module },
  controller: { ...base.controller, min_V: 60, max_V: 160, ...controller },
  charger: { ...base.charger, ...charger },
  accessories: { ...base.accessories, ...accessories },
  vehicle: { ...base.vehicle, ...vehicle },
  sizing: { ...base.sizing, ...sizing },
});

function outOf(limits: Limits, figures: Partial<LayoutFigures> = {}, of = pack) {
  const out = ruledOut(jobOf(limits), of, { ...fits, ...figures });
  return out && `${out.fault}: ${messageIn(out.reason, "metric")}`;
}

it("is nothing where nothing is against it", () => expect(outOf({})).toBeUndefined());

describe("too many volts when full", () => {
  it("are above what controller, charger or DC-DC converter take, and not at it", () => {
    expect(outOf({ controller: { max_V: 125 } })).toBeUndefined();
    expect(outOf({ controller: { max_V: 124 } })).toBe(
      "aboveController: 5s: 125 V full, the controller stops at 124 V: at most 4",
    );
    expect(outOf({ charger: { max_V: 125 } })).toBeUndefined();
    expect(outOf({ charger: { max_V: 99 } })).toBe("aboveCharger: 5s: 125 V full, the charger goes to 99 V: at most 3");
    expect(outOf({ accessories: { dcdcMax_V: 124 } })).toBe(
      "aboveConverter: 5s: 125 V full, the DC-DC converter takes 124 V: at most 4",
    );
  });
  it("leave room for as many modules as just fit, rounding errors or not", () => {
    // 4 x 25 V are 100 V; a module of 25.2 V fits three times into 75.6 V, which is 3 but for rounding.
    expect(outOf({ controller: { max_V: 100 } })).toMatch(/at most 4$/);
    expect(outOf({ controller: { max_V: 75.6 } }, { full_V: 5 * 25.2 })).toMatch(/at most 3$/);
    expect(outOf({ controller: { max_V: 25 } })).toMatch(/at most 1$/);
    expect(outOf({ controller: { max_V: 24 } })).toMatch(/: not even one module fits$/);
  });
});

describe("too few volts", () => {
  it("are on average below the controller's, empty below the charger's and the converter's, and not at it", () => {
    expect(outOf({ controller: { min_V: 110 } }, { loaded_V: 111 })).toBeUndefined();
    expect(outOf({ controller: { min_V: 111 } }, { loaded_V: 111 })).toBe(
      "belowController: 5s: 110 V on average, the controller needs 111 V: at least 6",
    );
    expect(outOf({ charger: { min_V: 85 } })).toBeUndefined();
    expect(outOf({ charger: { min_V: 86 } })).toBe(
      "belowCharger: 5s: 85 V empty, the charger begins at 86 V: at least 6",
    );
    expect(outOf({ accessories: { dcdcMin_V: 120 } })).toBe(
      "belowConverter: 5s: 85 V empty, the DC-DC converter needs 120 V: at least 8",
    );
  });
  it("want no module more than just reaches, rounding errors or not", () => {
    // 22 V each: 132 V are six of them. 16.8 V each: 100.8 V are six but for rounding.
    expect(outOf({ controller: { min_V: 132 } }, { loaded_V: 140 })).toMatch(/at least 6$/);
    expect(outOf({ charger: { min_V: 6 * 16.8 } }, { flat_V: 5 * 16.8 })).toMatch(/at least 6$/);
  });
  it("are below the controller's under the road's load", () => {
    expect(outOf({ controller: { min_V: 95 } })).toBeUndefined();
    expect(outOf({ controller: { min_V: 96 } })).toBe(
      "sagsBelowController: 5s2p: 95 V under this road’s load when nearly empty, the controller stops at 96 V",
    );
    expect(outOf({ controller: { min_V: 1 } }, { loaded_V: 0.5 })).toMatch(/: 0\.5 V under this road’s load/);
    expect(outOf({}, { loaded_V: 0 })).toBe(
      "sagsBelowController: 5s2p: nearly empty, it does not give what this road asks for ten seconds",
    );
  });
});

describe("too many amperes in each string", () => {
  const string = (rms: number, tenSeconds: number) => ({ string_A: { rms, tenSeconds, peak: 500 } });
  it("are above what its modules give for good, with the strings that would do", () => {
    expect(outOf({}, string(100, 150))).toBeUndefined();
    // Two strings of 101 A: 202 A want three of 100 A.
    expect(outOf({}, string(101, 150))).toBe(
      "continuousCurrent: 5s2p: 101 A in each string over this road, its modules give 100 A for good: at least 3 strings",
    );
    expect(outOf({}, string(250, 150))).toMatch(/at least 5 strings$/);
  });
  it("are above their peak for ten seconds, which counts where it lasts for ten", () => {
    expect(outOf({}, string(80, 200))).toBeUndefined();
    expect(outOf({}, string(80, 201))).toBe(
      "peakCurrent: 5s2p: 201 A in each string for ten seconds of this road, its modules give 200 A: at least 3 strings",
    );
    const brief = { module: { discharge: { continuous_A: 100, peak_A: 200, peak_s: 9 } } };
    expect(outOf(brief, string(80, 150))).toBe(
      "peakCurrent: 5s2p: 150 A in each string for ten seconds of this road, its modules give 100 A: at least 3 strings",
    );
  });
});

describe("too much mass", () => {
  // As driven: 900 kerb, 200 out, 90 in, 150 load and 100 of pack: 1040 kg.
  it("is more than is asked for, or than the car's plate allows, and not as much", () => {
    expect(outOf({ sizing: { packMost_kg: 100 } })).toBeUndefined();
    expect(outOf({ sizing: { packMost_kg: 99 } })).toBe(
      "tooHeavy: 5s2p: 100 kg with its boxes, and at most 99 kg are asked for",
    );
    expect(outOf({ vehicle: { gross_kg: 1040 } })).toBeUndefined();
    expect(outOf({ vehicle: { gross_kg: 1030 } })).toBe(
      "aboveGross: 5s2p: the car weighs 1040 kg as driven, 10 kg more than its plate allows",
    );
  });
  it("is more modules than were tested", () => {
    const tested = (count: number) => ({
      module: { tested: Array.from({ length: count }, () => ({ capacity_Ah: 90 })) },
    });
    expect(outOf(tested(10))).toBeUndefined();
    expect(outOf(tested(9))).toBe("untested: 5s2p: 10 modules, and 9 were tested");
  });
  it("is all that rules out a pack given whole", () => {
    expect(tooMuchMass(jobOf({ controller: { max_V: 10 } }), pack, { mass_kg: 100 })).toBeUndefined();
    expect(tooMuchMass(jobOf({ sizing: { packMost_kg: 99 } }), pack, { mass_kg: 100 })?.fault).toBe("tooHeavy");
  });
});

it("is the first reason of several: volts above, volts below, amperes, then mass", () => {
  const all: Limits = { controller: { min_V: 120, max_V: 124 }, vehicle: { gross_kg: 500 } };
  const string_A = { rms: 300, tenSeconds: 300, peak: 300 };
  expect(outOf(all, { string_A })).toMatch(/^aboveController/);
  expect(outOf({ ...all, controller: { min_V: 120, max_V: 160 } }, { string_A })).toMatch(/^belowController/);
  expect(outOf({ vehicle: { gross_kg: 500 } }, { string_A })).toMatch(/^continuousCurrent/);
  expect(outOf({ vehicle: { gross_kg: 500 } })).toMatch(/^aboveGross/);
});
