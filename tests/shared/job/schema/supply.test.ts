import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { InputError } from "../../../../shared/problems.ts";
import { changedDemo } from "../../../support/changedDemo.ts";

const socket = { name: "Garage", kind: "household", mode: "mode2", voltage_V: 230, current_A: 10 };

/** What the job's reader says against a demo with these supplies, each with its path. */
function faultsOf(...supplies: readonly object[]): readonly string[] {
  try {
    readJob(changedDemo({ supplies }));
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.problems.map(({ where, message }) => `${where}: ${message}`);
  }
}

it("a job without supplies opens, and has none", () => {
  expect(readJob(changedDemo({ supplies: undefined, currency: undefined })).supplies).toEqual([]);
});

describe("a supply", () => {
  it("is taken with hours, price and cheap hours, and without them", () => {
    expect(faultsOf(socket)).toEqual([]);
    const hours = { from: "18:00", to: "7:30" };
    expect(
      faultsOf({ ...socket, hours, price_perkWh: 0.3, cheap: { from: "23:30", to: "7:30", price_perkWh: 0.1 } }),
    ).toEqual([]);
  });

  it.each([
    ["of 0 A", { current_A: 0 }, "supplies.0.current_A: found 0 A, above 0 and at most 70 A allowed"],
    ["of less than 0 A", { current_A: -10 }, "supplies.0.current_A: found -10 A, above 0 and at most 70 A allowed"],
    ["of a voltage of no mains", { voltage_V: 12 }, "supplies.0.voltage_V: found 12 V, 90 to 300 V allowed"],
    [
      "of a household socket with a wall unit's current",
      { current_A: 32 },
      "supplies.0.current_A: found 32 A at a household socket, at most 16 A allowed",
    ],
    [
      "of mode 3 at a household socket",
      { mode: "mode3" },
      "supplies.0.mode: found mode 3 at a household socket, mode 1 or 2 wanted: mode 3 has a wall unit of its own",
    ],
    // Mode 1 up to 16 A, mode 2 up to 32 A a phase: IEC 61851-1.
    [
      "of mode 1 beyond 16 A",
      { kind: "singlePhase", mode: "mode1", current_A: 17 },
      "supplies.0.current_A: found 17 A, mode 1 allows at most 16 A",
    ],
    [
      "of mode 2 beyond 32 A",
      { kind: "singlePhase", mode: "mode2", current_A: 33 },
      "supplies.0.current_A: found 33 A, mode 2 allows at most 32 A",
    ],
    [
      "of three phases beyond 63 A",
      { kind: "threePhase", mode: "mode3", current_A: 64 },
      "supplies.0.current_A: found 64 A on three phases, at most 63 A allowed",
    ],
    [
      "with hours that no clock has",
      { hours: { from: "25:00", to: "7:30" } },
      'supplies.0.hours.from: found "25:00": a time of day from 0:00 to 23:59 wanted',
    ],
    [
      "with hours that end as they begin",
      { hours: { from: "7:30", to: "7:30" } },
      "supplies.0.hours.to: found 7:30 to 7:30, an end later than the beginning wanted",
    ],
    [
      "with cheap hours while the car is away",
      { hours: { from: "8:00", to: "17:00" }, cheap: { from: "23:30", to: "7:30" } },
      "supplies.0.cheap: found cheap hours from 23:30 to 7:30, but the car charges there from 8:00 to 17:00",
    ],
    [
      "with a tariff that has a hole",
      { cheap: { from: "23:30", to: "7:30", price_perkWh: 0.1 } },
      "supplies.0.price_perkWh: found a price from 23:30 to 7:30 and none for the hours outside it",
    ],
  ])("%s is refused in words", (_, change, fault) => {
    expect(faultsOf({ ...socket, ...change })).toEqual([fault]);
  });

  it("has a tariff without a hole where the car charges in the cheap hours alone", () => {
    const night = { from: "23:30", to: "7:30" };
    expect(faultsOf({ ...socket, hours: night, cheap: { ...night, price_perkWh: 0.1 } })).toEqual([]);
  });

  it("has a name of its own", () => {
    expect(faultsOf(socket, socket)).toEqual(['supplies.1.name: found "Garage" twice, names must differ']);
  });
});
