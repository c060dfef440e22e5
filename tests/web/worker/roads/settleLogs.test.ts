import { expect, it, vi } from "vitest";
import { inputError } from "../../../../shared/problems.ts";
import type { LogFile, RepairKind, Routes } from "../../../../sim/index.ts";
import { type ReadFile, type Settling, settleLogs } from "../../../../web/worker/roads/settleLogs.ts";

/** A file read, with a speed in its second fix. */
function read(name: string, hasTimes = true): ReadFile {
  const fixes = { count: 2, speed_mps: Float64Array.of(Number.NaN, 5) };
  const log = { file: name, hasTimes, fixes, questions: [], problems: [] } as unknown as LogFile;
  return { file: new File([], name), answers: "", log };
}

/** Routes without a trip, which count what they are asked. */
function work() {
  const routes = {
    joinLogs: vi.fn(() => ({ problems: [], hasZone: true, utcOffset_s: 0 })),
    cleanLogInSteps: (_: unknown, options: unknown) => options,
    routeShape: () => ({ distance_m: 5000, climb_m: 30 }),
    splitTrips: () => ({ trips: [], parkings: [] }),
    findPlaces: () => [],
    summariseDays: () => [],
    standardCycles: [],
    repairEffect: () => "effect",
    effectWords: (effect: string, whole_m: number) => `${effect} on ${whole_m} m`,
  };
  const clean = vi.fn(async () => ({
    series: { count: 2, distance_m: Float64Array.of(0, 1800) },
    repairs: [],
    quality: {},
    isStill: false,
  }));
  const cycleKinds = vi.fn(async () => []);
  const settling = { clean, sorting: () => {}, cycleKinds } as unknown as Settling;
  return { routes, asRoutes: routes as unknown as Routes, clean, cycleKinds, settling };
}
const setting = (off: readonly RepairKind[] = [], parkedLonger_s = 180) => ({
  answers: [],
  off,
  parkedLonger_s,
  utcOffset_s: 0,
});

it("takes a single file without times for a planned route, and cleans nothing of it", async () => {
  const { asRoutes, clean, settling } = work();
  const { brought } = await settleLogs(asRoutes, [read("a.gpx", false)], [], setting(), settling);
  expect(brought.outcome).toEqual({ kind: "route", distance_m: 5000, climb_m: 30 });
  expect(brought.files[0]).toMatchObject({ file: "a.gpx", count: 2, hasSpeeds: true });
  expect(brought.files[0]).not.toHaveProperty("fixes");
  expect(clean).not.toHaveBeenCalled();
});

it("joins and cleans again only what the setting changes", async () => {
  const { asRoutes, routes, clean, settling } = work();
  const files = [read("a.gpx"), read("b.gpx")];
  const first = await settleLogs(asRoutes, files, [], setting(), settling);
  const parked = await settleLogs(asRoutes, files, [], setting([], 600), settling, first);
  expect([routes.joinLogs.mock.calls.length, clean.mock.calls.length]).toEqual([1, 1]);
  const off = await settleLogs(asRoutes, files, [], setting(["multipath"]), settling, parked);
  expect([routes.joinLogs.mock.calls.length, clean.mock.calls.length]).toEqual([1, 2]);
  await settleLogs(asRoutes, [files[0] as ReadFile, read("b.gpx")], [], setting(["multipath"]), settling, off);
  expect([routes.joinLogs.mock.calls.length, clean.mock.calls.length]).toEqual([2, 3]);
});

it("says what a repair had moved where it is the one left out, and remembers it while it is", async () => {
  const { asRoutes, settling } = work();
  const files = [read("a.gpx")];
  const moved = ({ brought }: Awaited<ReturnType<typeof settleLogs>>) =>
    brought.outcome.kind === "drive" ? brought.outcome.moved : undefined;
  const settle = (off: readonly RepairKind[], before?: Awaited<ReturnType<typeof settleLogs>>) =>
    settleLogs(asRoutes, files, [], setting(off), settling, before);
  const none = await settle([]);
  const one = await settle(["multipath"], none);
  expect(moved(one)).toEqual({ multipath: "effect on 1800 m" });
  const two = await settle(["multipath", "heightNoise"], one);
  expect(moved(two)).toEqual({ multipath: "effect on 1800 m", heightNoise: "effect on 1800 m" });
  expect(moved(await settle(["heightNoise"], two))).toEqual({ heightNoise: "effect on 1800 m" });
  // Both at once: nothing is known of either by itself.
  expect(moved(await settle(["multipath", "heightNoise"], none))).toEqual({});
});

it("is no refusal where the files make no drive, so that their questions are still seen; a fault stays a fault", async () => {
  const { asRoutes, routes, settling } = work();
  routes.joinLogs.mockImplementationOnce(() => {
    throw inputError("interval", "a.gpx", "found no times");
  });
  const { brought } = await settleLogs(asRoutes, [read("a.gpx")], [], setting(), settling);
  expect(brought.files).toHaveLength(1);
  expect(brought.outcome).toMatchObject({ kind: "unclean", problems: [{ where: "a.gpx", message: "found no times" }] });
  routes.joinLogs.mockImplementationOnce(() => {
    throw new RangeError("a fault of ours");
  });
  await expect(settleLogs(asRoutes, [read("a.gpx")], [], setting(), settling)).rejects.toThrow("a fault of ours");
});

it("asks for no standard cycle where there is no trip to compare", async () => {
  const { asRoutes, cycleKinds, settling } = work();
  await settleLogs(asRoutes, [read("a.gpx")], [], setting(), settling);
  expect(cycleKinds).not.toHaveBeenCalled();
});
