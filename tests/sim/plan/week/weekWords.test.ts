import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { driveWeeks } from "../../../../sim/plan/week/driveWeek.ts";
import type { DrivenTrip, PackWeek, Parking, WeekReport } from "../../../../sim/plan/week/weekReport.ts";
import { weekNotes, weekSentences } from "../../../../sim/plan/week/weekWords.ts";
import type { Changes } from "../../../support/bareCar.ts";
import { flatPack } from "../../../support/chargeable.ts";
import { steadyRoad, weekJob } from "../../../support/weekJob.ts";

const home = { leaves: "17:00", arrives: "18:00", road: "steady", parkedAt: "Home" };

function reportOf(trips: readonly object[], changes: Changes = {}) {
  const report = driveWeeks(weekJob([{ from: "monday", to: "wednesday", trips }], changes), steadyRoad());
  if (!report) throw new Error("no week was driven");
  return report;
}

function notesOf(trips: readonly object[], changes: Changes = {}): readonly string[] {
  return weekNotes(reportOf(trips, changes)).map((each) => messageIn(each, "metric"));
}

const FACTOR = "Winter is a factor in this job: the week is driven in the job’s own weather alone.";

describe("what is to be known beside a week", () => {
  it("is nothing but that winter is a factor where all goes as typed", () => {
    expect(notesOf([home])).toEqual([FACTOR]);
  });

  it("is by how much a road takes longer than the clock gives it, once for every such trip", () => {
    // A thousand seconds in ten minutes: 6 min 40 s more.
    expect(notesOf([{ ...home, arrives: "17:10" }])).toEqual([
      ...["Monday", "Tuesday", "Wednesday"].map(
        (day) => `The trip on ${day} 17:00 takes 7 minutes longer by its road than by the clock: it is over at 17:17.`,
      ),
      FACTOR,
    ]);
  });

  it("is why it is charged nowhere, once, and the week is then driven without", () => {
    const changes = { ...flatPack(4), charger: { max_V: 300 } };
    const [note] = notesOf([home], changes);
    expect(note).toMatch(/^only at Home: The charger goes to 300 V and this pack has 500 V when full/);
    expect(reportOf([home], changes).packs[0].wall_kWh).toBe(0);
  });

  it("is by how much a car falls behind its road, its pack not empty", () => {
    const weak: Changes = { motor: { envelope: { kind: "peak", torque_Nm: 10_000, power_kW: 2 } } };
    // 2 kW against 137 N are 14.6 m/s in place of 20.
    const [note] = notesOf([home], weak);
    expect(note).toMatch(/^only, new, falls behind its road on 3 trips, by \d\.\d km at most, its pack not empty\.$/);
  });
});

describe("the sentences on a week", () => {
  it("say how long a charge waits for cold cells, the longest time of the week", () => {
    const cold = {
      coldCharge: { none_degC: 0, full_degC: 10 },
      heat: { capacity_kJpK: 100, cooling_WpK: 10, derateFrom_degC: 45, derateTo_degC: 60 },
    };
    const environment = { temperature_degC: -10, pack_degC: -10 };
    const [week] = reportOf([home], { module: cold, environment }).packs;
    // From Wednesday 18:00 to Monday 17:00 are 119 h, in two figures.
    expect(messageIn(weekSentences(week)[1], "metric")).toBe(
      "At Home from Wednesday 18:00 on the charge waits 120 h for cells that are too cold: warm the pack first, or keep it where it stays warm.",
    );
  });

  it("tell cells that are too warm from cold ones", () => {
    // A place at 60 degC, where a slow charge goes on until the cells are at 45.
    const warm = { heat: { capacity_kJpK: 100, cooling_WpK: 10, derateFrom_degC: 35, derateTo_degC: 45 } };
    const away = { leaves: "8:00", arrives: "9:00", road: "steady" };
    const environment = { temperature_degC: 20, pack_degC: 60 };
    const [week] = reportOf([away, home], { module: warm, environment, charger: { power_kW: 0.1 } }).packs;
    expect(messageIn(weekSentences(week)[1], "metric")).toMatch(
      /^At Home from Wednesday 18:00 on the charge waits \d+ h for cells that are too warm: let the pack cool first\.$/,
    );
  });

  it("put days that are as much short together, and say another one apart", () => {
    const far = (distance_km: number) => ({ ...home, arrives: "22:00", distance_km });
    const days = [
      { from: "monday", to: "tuesday", trips: [far(130)] },
      { from: "friday", to: "friday", name: "to my sister", trips: [far(125)] },
    ];
    const [first] = driveWeeks(weekJob(days, flatPack(4)), steadyRoad())?.packs ?? [];
    expect(weekSentences(first).map((each) => messageIn(each, "metric"))).toEqual([
      "only, new, does not do the week: empty (0 %) on Monday at 18:27.",
      "Monday, Tuesday are not done with only: 26 km short each.",
      "Friday (to my sister) is not done with only: 21 km short.",
    ]);
    expect(messageIn(weekSentences(first)[1], "british")).toBe(
      "Monday, Tuesday are not done with only: 16 miles short each.",
    );
  });
});

// Weeks as they might have been driven, for what a sentence says just at an edge. Monday 8:00 is 8 h, Tuesday 18:30 is 42.5 h.
const trip: DrivenTrip = {
  day: 0,
  trip: 0,
  weekday: "monday",
  leaves_h: 8,
  arrives_h: 9,
  asked_km: 20,
  driven_km: 20,
  short_km: 0,
  missed_km: 0,
  late_h: 0,
  leaves_frac: 0.9,
  arrives_frac: 0.8,
  drawn_kWh: 1,
};
const parking: Parking = {
  from_h: 42.5,
  to_h: 176,
  supply: "Home",
  from_frac: 0.8,
  to_frac: 0.9,
  wall_kWh: 1,
  given_kWh: 1,
  car_kWh: 0,
  stored_kWh: 1,
  waited_h: 0,
  isCold: false,
  pack_degC: 20,
};
const plain: PackWeek = {
  name: "A",
  condition: "new",
  ceiling_frac: 0.9,
  floor_frac: 0.1,
  trips: [trip],
  parkings: [parking],
  lowest: { soc_frac: 0.8, at_h: 42.5 },
  failingDays: [],
  driven_km: 20,
  wall_kWh: 1,
  stored_kWh: 1,
  drawn_kWh: 1,
  ends_frac: 0.9,
  course: { at_h: [], soc_frac: [] },
};
const said = (changes: Partial<PackWeek>) =>
  weekSentences({ ...plain, ...changes }).map((each) => messageIn(each, "metric"));

describe("a week's first sentence", () => {
  it("is where the pack is lowest, and how much further it would go where that is known", () => {
    expect(said({})).toEqual(["A, new, does the week: lowest on Tuesday at 18:30 with 80 % left."]);
    expect(said({ reserve_km: 12.9 })).toEqual([
      "A, new, does the week: lowest on Tuesday at 18:30 with 80 % left, 12 km more until it is empty.",
    ]);
  });
});

describe("a week that does not end as it began", () => {
  it("is said from one hundredth of the pack on, and not of one that is not done anyway", () => {
    expect(said({ ends_frac: 0.8901 })).toHaveLength(1);
    expect(said({ ends_frac: 0.889 })[1]).toBe(
      "It leaves on Monday 8:00 with 90 % and a week later with 89 %: such weeks do not follow one another.",
    );
    const failing = { weekday: "monday" as const, short_km: 3, emptyAt_h: 8.5 };
    expect(said({ ends_frac: 0.5, failingDays: [failing] })).toHaveLength(2);
  });
});

describe("days that are not done", () => {
  const short = (...short_km: readonly number[]) =>
    said({
      failingDays: short_km.map((each, i) => ({
        weekday: (["monday", "tuesday", "friday"] as const)[i],
        short_km: each,
        emptyAt_h: 8,
      })),
    }).slice(1);
  it("are one, or several that are as much short to the kilometre begun", () => {
    expect(short(2.2)).toEqual(["Monday is not done with A: 3 km short."]);
    expect(short(2.2, 2.9)).toEqual(["Monday, Tuesday are not done with A: 3 km short each."]);
    expect(short(2.2, 3.1, 3)).toEqual([
      "Monday, Friday are not done with A: 3 km short each.",
      "Tuesday is not done with A: 4 km short.",
    ]);
  });
});

describe("a charge that waits", () => {
  const waits = (...parkings: readonly Partial<Parking>[]) =>
    said({ parkings: parkings.map((each) => ({ ...parking, ...each })) }).slice(1);
  it("is said from a quarter of an hour on, of the longest wait, and only where it was plugged in", () => {
    expect(waits({ waited_h: 0.24 })).toEqual([]);
    expect(waits({ waited_h: 0.25, isCold: true })).toHaveLength(1);
    expect(waits({ waited_h: 2 }, { waited_h: 5, supply: "Post", isCold: true }, { waited_h: 3 })).toEqual([
      "At Post from Tuesday 18:30 on the charge waits 5 h for cells that are too cold: warm the pack first, or keep it where it stays warm.",
    ]);
    const { supply: _, ...nowhere } = parking;
    expect(said({ parkings: [{ ...nowhere, waited_h: 2 }] })).toHaveLength(1);
  });
});

describe("what is to be known of a week at its edges", () => {
  const notes = (changes: Partial<PackWeek>, others: readonly Partial<PackWeek>[] = [], isWinterAFactor = false) => {
    const report: WeekReport = {
      packs: [changes, ...others].map((each) => ({ ...plain, ...each })),
      isWinterAFactor,
    };
    return weekNotes(report).map((each) => messageIn(each, "metric"));
  };
  it("is nothing of a trip that is a minute late, and the minutes of one that is more", () => {
    expect(notes({ trips: [{ ...trip, late_h: 0.016 }] })).toEqual([]);
    expect(notes({ trips: [{ ...trip, late_h: 0.2, arrives_h: 9.25 }] })).toEqual([
      "The trip on Monday 8:00 takes 12 minutes longer by its road than by the clock: it is over at 9:15.",
    ]);
  });
  it("is the most that a car falls behind, on one trip or several", () => {
    const behind = (...missed_km: readonly number[]) =>
      notes({ trips: missed_km.map((each) => ({ ...trip, missed_km: each })) });
    expect(behind(0, 0.4)).toEqual([
      "A, new, falls behind its road on one trip, by 0.4 km at most, its pack not empty.",
    ]);
    expect(behind(0.4, 1.2, 0)).toEqual([
      "A, new, falls behind its road on 2 trips, by 1.2 km at most, its pack not empty.",
    ]);
  });
  it("is why it is not charged at a place, once for each pack", () => {
    const stop = ["It is too high."];
    const parkings = [
      { ...parking, stop },
      { ...parking, stop },
    ];
    expect(notes({ parkings })).toEqual(["A at Home: It is too high."]);
    expect(notes({ parkings }, [{ name: "B", parkings }])).toHaveLength(2);
    expect(notes({ parkings }, [{ parkings }], true)).toEqual(["A at Home: It is too high.", FACTOR]);
    const { supply: _, ...nowhere } = parking;
    expect(notes({ parkings: [{ ...nowhere, stop }] })).toEqual([]);
  });
});
