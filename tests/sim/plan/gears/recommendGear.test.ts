import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { GearDemand, GearRow } from "../../../../sim/plan/gears/gearTable.ts";
import { recommendGear } from "../../../../sim/plan/gears/recommendGear.ts";

const hill = {
  grade_percent: 20,
  starts: true,
  needed_Nm: 100,
  available_Nm: 130,
  spare_frac: 0.3,
  climb_kmh: 30,
  held_s: 600,
  isHeldToEmpty: true,
};
/** A gear that does all that is asked at so many watt-hours a kilometre. */
const row = (gear: string, battery_Whpkm: number, changes: Partial<GearRow> = {}): GearRow => ({
  gear,
  overall_ratio: 5,
  top_kmh: 100,
  easy_kmh: 90,
  motorAtTop_rpm: 6000,
  steepestStart_percent: 25,
  startLimit: "motor",
  hill,
  battery_Whpkm,
  missed_frac: 0,
  ...changes,
});
const demand: GearDemand = { hill_ratio: 0.2, top_kmh: 80 };
const advised = (rows: readonly GearRow[], of = demand) => {
  const { recommended, reasons } = recommendGear(rows, of);
  return { gear: recommended?.gear, reasons: reasons.map((reason) => messageIn(reason, "metric")) };
};

describe("the gear to live in", () => {
  it("is the thriftiest of those that do it all, wherever it stands", () => {
    expect(advised([row("second", 110), row("third", 100), row("top", 105)]).gear).toBe("third");
    expect(advised([row("second", 100), row("third", 110)]).gear).toBe("second");
    expect(advised([row("second", 100), row("third", 100)]).gear).toBe("second");
  });
  it("is told with what it does, and how much more each other one takes", () => {
    expect(advised([row("second", 112), row("third", 100)]).reasons).toEqual([
      "Live in third: it reaches 80 km/h with the motor in hand, starts on 20 % with a fifth of torque to spare, and keeps up with the road.",
      "Second: would do too, and takes 12 % more energy on this road.",
    ]);
  });
  it("speaks of no hill where none is known", () => {
    const { hill: _, ...flat } = row("third", 100);
    expect(advised([flat], { top_kmh: 80 }).reasons[0]).toBe(
      "Live in third: it reaches 80 km/h with the motor in hand, and keeps up with the road.",
    );
  });
  it("is one that moves before one that does not", () => {
    const { battery_Whpkm: _, ...still } = row("second", 0);
    expect(advised([still, row("third", 500)]).gear).toBe("third");
  });
  it("is never in low range", () => {
    const rows = [row("first", 90, { range: "low" }), row("third", 100, { range: "high" })];
    expect(advised(rows)).toMatchObject({ gear: "third" });
    expect(advised(rows).reasons[1]).toBe("First, low range: would do, but low range is for the rough.");
    const alone = advised([row("first", 90, { range: "low" })]);
    expect(alone.gear).toBeUndefined();
    expect(alone.reasons[1]).toMatch(/would do, but low range/);
  });
});

describe("why a gear is not the one", () => {
  const why = (changes: Partial<GearRow>) => advised([row("third", 100, changes)]).reasons.slice(1);

  it("its motor ends below the speed, or has less than a tenth in hand", () => {
    expect(why({ top_kmh: 79, easy_kmh: 71 })).toEqual([
      "Third: 6000 rpm at 80 km/h is beyond the motor, which ends at 79 km/h.",
    ]);
    expect(why({ top_kmh: 80, easy_kmh: 72 })).toEqual([
      "Third: 6000 rpm at 80 km/h is above 90 % of the motor's limit.",
    ]);
    expect(why({ top_kmh: 89, easy_kmh: 80 })).toEqual([]);
  });
  it("it does not start on the hill, or with too little to spare", () => {
    const weak = { ...hill, starts: false, available_Nm: 90, spare_frac: -0.1 };
    expect(why({ hill: weak })).toEqual(["Third: does not start on 20 %: needs 100 Nm, has 90 Nm."]);
    expect(why({ hill: { ...hill, spare_frac: 0.19 } })).toEqual([
      "Third: starts on 20 % with only 19 % of torque to spare.",
    ]);
    expect(why({ hill: { ...hill, spare_frac: 0.2 } })).toEqual([]);
  });
  it("it does not start on the level, where no hill is known", () => {
    const { hill: _, ...flat } = row("third", 100, { steepestStart_percent: 0 });
    expect(advised([flat], { top_kmh: 80 }).reasons[1]).toBe("Third: does not start even on the level.");
    const { hill: __, ...some } = row("third", 100, { steepestStart_percent: 0.5 });
    expect(advised([some], { top_kmh: 80 }).gear).toBe("third");
    expect(advised([row("third", 100, { steepestStart_percent: 0 })]).gear).toBe("third");
  });
  it("it misses more than a fiftieth of the road", () => {
    expect(why({ missed_frac: 0.021_49 })).toEqual(["Third: does not keep up with the road: misses 2.1 % of it."]);
    expect(why({ missed_frac: 0.02 })).toEqual([]);
  });
  it("is all of that together", () => {
    const weak = { ...hill, starts: false, available_Nm: 90, spare_frac: -0.1 };
    expect(why({ top_kmh: 79, hill: weak, missed_frac: 0.5 })[0].split("; ")).toHaveLength(3);
  });
});

describe("where no gear does it all", () => {
  const starter = row("first", 100, { top_kmh: 40, easy_kmh: 36 });
  const runner = row("third", 100, { hill: { ...hill, starts: false, spare_frac: -0.2 } });

  it("one starts on the hill and another reaches the speed: the car has to be changed between them", () => {
    expect(advised([starter, runner]).reasons[0]).toBe(
      "No single gear does it all. First starts on the hill and third reaches the speed: the car has to be changed between them.",
    );
  });
  it("nothing is said of changing where one of the two is missing, is the same gear, or is in low range", () => {
    const plain = "No single gear does it all.";
    expect(advised([starter]).reasons[0]).toBe(plain);
    expect(advised([runner]).reasons[0]).toBe(plain);
    expect(advised([row("third", 100, { missed_frac: 0.5 })]).reasons[0]).toBe(plain);
    expect(advised([{ ...starter, range: "low" }, runner]).reasons[0]).toBe(plain);
    expect(advised([starter, { ...runner, range: "low" }]).reasons[0]).toBe(plain);
  });
});
