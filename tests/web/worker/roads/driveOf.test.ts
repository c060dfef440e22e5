import { expect, it } from "vitest";
import type { Routes } from "../../../../sim/index.ts";
import { driveOf, type Sorted, sortOut } from "../../../../web/worker/roads/driveOf.ts";

// 2024-05-03 23:30 UTC is 1:30 of the next day two hours further east.
const start_s = Date.UTC(2024, 4, 3, 23, 30) / 1000;
const clock = { offset_s: 7200, from: "as set here" };

/** A log of one trip and a night in the garage. */
function sorted(changes: { readonly place?: string; readonly climb_m?: number } = {}): Sorted {
  const { place = "1", climb_m } = changes;
  const characteristics = {
    distance_m: 9000,
    duration_s: 900,
    mean_mps: 10,
    max_mps: 20,
    stops: 4,
    ...(climb_m !== undefined && { climb_m }),
  };
  return {
    cleaned: { repairs: [], quality: { heightSource: "none" }, isStill: false, track: undefined },
    found: { trips: [{ start_s, end_s: start_s + 900, characteristics, bridged_frac: 0.1 }], parkings: [] },
    places: [{ label: "0", parked_s: 60, parkings: [{}, {}] }],
    days: [
      {
        date: "2024-05-04",
        trips: [0],
        distance_m: 9000,
        driving_s: 900,
        climb_m: 0,
        longestParking: { from_s: start_s + 900, to_s: start_s + 30_900, place },
      },
    ],
  } as unknown as Sorted;
}

const routes = (like: readonly { id: string; difference: string }[] = []) =>
  ({
    standardCycles: [{ id: "town", title: "A cycle of a town" }],
    standardCycleLike: () => like,
  }) as unknown as Routes;
const drive = (of = sorted(), like: Parameters<typeof routes>[0] = []) => driveOf(routes(like), of, [], clock, []);

it("has trips by the local day and clock", () => {
  expect(drive().trips[0]).toMatchObject({ date: "2024-05-04", clock: "01:30", distance_m: 9000, bridged_frac: 0.1 });
  expect(drive().trips[0]).not.toHaveProperty("climb_m");
  expect(drive(sorted({ climb_m: 50 })).trips[0]?.climb_m).toBe(50);
});

it("names the cycle that a trip is most like, and none where there is none", () => {
  const near = [
    { id: "town", difference: "slower" },
    { id: "far", difference: "faster" },
  ];
  expect(drive(sorted(), near).trips[0]).toMatchObject({ like: "A cycle of a town", difference: "slower" });
  expect(drive().trips[0]).toMatchObject({ like: "", difference: "" });
});

it("says where it was parked longest by the number of the place, and no place where none is known", () => {
  // 15 minutes after 1:30, for 30,000 s.
  expect(drive().days[0]?.parked).toEqual({ from: "01:45", long_s: 30_000, place: 1 });
  expect(drive(sorted({ place: "unknown" })).days[0]?.parked).toEqual({ from: "01:45", long_s: 30_000 });
  expect(drive().places).toEqual([{ label: "0", parked_s: 60, times: 2 }]);
});

it("gives the days their places by number, since names can change, and sorts them by the local clock", () => {
  const asked: unknown[] = [];
  const sorting = {
    splitTrips: (_: unknown, options: unknown) => {
      asked.push(options);
      return { trips: [], parkings: ["a parking"] };
    },
    findPlaces: (...of: unknown[]) => {
      asked.push(of);
      return [{ label: "home" }, { label: "work" }];
    },
    summariseDays: (...of: unknown[]) => {
      asked.push(of.slice(1));
      return [];
    },
  } as unknown as Routes;
  const { places } = sortOut(sorting, {} as Sorted["cleaned"], 180, 7200);
  expect(places.map(({ label }) => label)).toEqual(["home", "work"]);
  const numbered = [{ label: "0" }, { label: "1" }];
  expect(asked).toEqual([{ parkedLonger_s: 180 }, [["a parking"], 7200], [7200, numbered]]);
});
