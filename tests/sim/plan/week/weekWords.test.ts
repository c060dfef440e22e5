import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { driveWeeks } from "../../../../sim/plan/week/driveWeek.ts";
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
