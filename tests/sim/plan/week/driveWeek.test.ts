import { describe, expect, it } from "vitest";
import { momentOf } from "../../../../shared/job/weekTimes.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { J_PER_KWH } from "../../../../shared/units.ts";
import { rangeOn } from "../../../../sim/plan/going/range.ts";
import { driveWeek, driveWeeks, weekRoads } from "../../../../sim/plan/week/driveWeek.ts";
import type { PackWeek } from "../../../../sim/plan/week/weekReport.ts";
import { roadsOfWeek } from "../../../../sim/plan/week/weekRoadIds.ts";
import { weekSentences } from "../../../../sim/plan/week/weekWords.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { fromRestToRest } from "../../../../sim/trace/restToRest.ts";
import { type Changes, steadyTrace } from "../../../support/bareCar.ts";
import { flatPack, socketOf } from "../../../support/chargeable.ts";
import { DRAG_N, ROAD_m, steadyRoad, weekJob } from "../../../support/weekJob.ts";

const WAY_kWh = (DRAG_N * ROAD_m) / J_PER_KWH;
/** To and from work, charged at home between. */
const working = {
  from: "monday",
  to: "friday",
  trips: [
    { leaves: "8:00", arrives: "9:00", road: "steady" },
    { leaves: "17:00", arrives: "18:00", road: "steady", way: "back", parkedAt: "Home" },
  ],
};

function weekOf(days: readonly unknown[], changes: Changes = {}): PackWeek {
  const driven = driveWeek(weekJob(days, changes), 0, weekRoads(steadyRoad()));
  if (!driven) throw new Error("no week was driven");
  return driven;
}

describe("a week", () => {
  it("is lowest where sums by hand have it: five days that each take more than a night gives back", () => {
    // 400 V without resistance: 0.1 kW for 14 h gives 1.4 kWh, both ways take 1.53 kWh. Lowest on Friday, 1000 s after 17:00.
    const { lowest, reserve_km, wall_kWh, ends_frac } = weekOf([working], {
      ...flatPack(4),
      charger: { power_kW: 0.1 },
    });
    const left_kWh = 4 - 10 * WAY_kWh + 4 * 1.4;
    // What the pack's resistance of a micro-ohm and the rounding of the charge's steps take is below a millionth of it.
    expect(lowest.soc_frac * 4).toBeCloseTo(left_kWh, 5);
    expect(momentOf(lowest.at_h)).toEqual({ weekday: "friday", time: "17:17" });
    expect(reserve_km).toBeCloseTo(left_kWh / (WAY_kWh / 20), 3);
    // The weekend has 62 h, more than what is left to give.
    expect(ends_frac).toBe(1);
    expect(wall_kWh).toBeCloseTo(10 * WAY_kWh, 4);
  });

  it("costs what its kilowatt-hours do by the clock, and nothing is said of it where a price is not known", () => {
    // 0.1 kW for 14 h a night, 8 of them cheap.
    const night = { from: "23:00", to: "7:00", price_perkWh: 0.1 };
    const home = socketOf(10, { name: "Home", price_perkWh: 0.3, cheap: night });
    const slow: Changes = { ...flatPack(4), charger: { power_kW: 0.1 } };
    const priced = driveWeek({ ...weekJob([working], slow), supplies: [home] }, 0, weekRoads(steadyRoad()));
    if (!priced) throw new Error("no week was driven");
    const { parkings, cost, wall_kWh } = priced;
    const monday = parkings[1];
    expect(monday.wall_kWh).toBeCloseTo(1.4, 6);
    // From 18:00 to 8:00: 5 h dear, 8 cheap, 1 dear.
    expect(monday.cost).toBeCloseTo(0.1 * (6 * 0.3 + 8 * 0.1), 6);
    expect(cost).toBeCloseTo(
      parkings.reduce((sum, each) => sum + (each.cost ?? Number.NaN), 0),
      9,
    );
    expect(cost).toBeGreaterThan(0.1 * wall_kWh);
    expect(cost).toBeLessThan(0.3 * wall_kWh);
    expect(weekOf([working], slow)).not.toHaveProperty("cost");
  });

  it("draws as much charge as it puts back where it ends where it began, on a pack whose voltage rises with its charge", () => {
    const { stored_kWh, drawn_kWh, ends_frac, ceiling_frac } = weekOf([working], {
      module: {
        openCircuit: { soc_frac: [0, 1], cell_V: [3, 4] },
        capacity_Ah: 20,
        charge: { continuous_A: 30, peak_A: 30, peak_s: 0 },
      },
    });
    expect(ends_frac).toBe(ceiling_frac);
    // Open-circuit energy is the same both ways. A step of driving takes the voltage at its start: for a step of 1 s of 2.7 kW out of
    // 20 Ah at 100 V over the window that is 2e-5 of it at most; steps of charging are trapezoids.
    expect(Math.abs(stored_kWh / drawn_kWh - 1)).toBeLessThan(1e-4);
  });

  it("pays at the wall what is stored, what cells and leads lose and what the car draws, over the charger's efficiency", () => {
    const { parkings, course, ceiling_frac } = weekOf([working], {
      module: { resistance: { soc_frac: [0, 1], module_mohm: [200, 200] }, capacity_Ah: 12 },
      pack: { leads_mohm: 50 },
      charger: { efficiency_frac: 0.8, carDraw_W: 40 },
    });
    const charging = parkings.filter(({ wall_kWh }) => wall_kWh > 0);
    expect(charging).toHaveLength(5);
    for (const { wall_kWh, given_kWh, stored_kWh, car_kWh } of charging) {
      expect(0.8 * wall_kWh).toBeCloseTo(given_kWh, 9);
      // 2300 W x 0.8 less 40 W into 400 V: 4.5 A through 250 mohm lose 1.1 V, 0.28 % of what comes in.
      const into_kWh = given_kWh - car_kWh;
      const amps = into_kWh > 0 ? (0.8 * 2300 - 40) / 401.12 : 0;
      expect((into_kWh - stored_kWh) / into_kWh).toBeCloseTo((amps * 0.25) / 401.12, 6);
    }
    expect(Math.max(...course.soc_frac)).toBeLessThanOrEqual(ceiling_frac);
  });

  it("without charging is driving on from the ceiling until the pack is empty", () => {
    const never = { ...working, trips: working.trips.map(({ parkedAt: _none, ...trip }) => trip) };
    const changes = flatPack(4);
    const { driven_km, failingDays, wall_kWh, trips } = weekOf([never], changes);
    const job = weekJob([never], changes);
    const range = rangeOn(prepare(job, job.packs[0]), steadyTrace(20, 1000, 1));
    expect(driven_km).toBeCloseTo(range.distance_m / 1000, 6);
    expect(wall_kWh).toBe(0);
    // 4 kWh go 104.8 km: Monday and Tuesday, and on Wednesday 24.8 of 40.
    const short_km = 120 - driven_km;
    expect(driven_km).toBeCloseTo(4 / (WAY_kWh / 20), 3);
    expect(failingDays.map(({ weekday, short_km: km }) => [weekday, Math.round(km * 1000)])).toEqual([
      ["wednesday", Math.round(short_km * 1000)],
      ["thursday", 40_000],
      ["friday", 40_000],
    ]);
    expect(trips.at(-1)?.arrives_frac).toBe(0);
    expect(trips.map(({ asked_km }) => asked_km)).toEqual(trips.map(() => ROAD_m / 1000));
    // What is left over when the pack is empty is short, and not missed by falling behind.
    expect(trips.map(({ missed_km }) => missed_km)).toEqual(trips.map(() => 0));
  });

  it("says when it is lowest, which days are not done and by how much, and that it does not repeat", () => {
    const said = (week: PackWeek) => weekSentences(week).map((each) => messageIn(each, "metric"));
    const once = {
      from: "friday",
      to: "friday",
      name: "the day to my sister",
      trips: [{ leaves: "7:40", arrives: "9:00", road: "steady", distance_km: 130 }],
    };
    expect(said(weekOf([once], flatPack(4)))).toEqual([
      "only, new, does not do the week: empty (0 %) on Friday at 9:07.",
      "Friday (the day to my sister) is not done with only: 26 km short.",
    ]);
    const mild = { ...once, trips: [{ leaves: "7:40", arrives: "9:00", road: "steady" }] };
    expect(said(weekOf([mild], flatPack(4)))).toEqual([
      "only, new, does the week: lowest on Friday at 7:57 with 81 % left, 84 km more until it is empty.",
      "It leaves on Friday 7:40 with 100 % and a week later with 81 %: such weeks do not follow one another.",
    ]);
  });

  it("does a day that is too far with a stop to charge on the way", () => {
    const leg = { road: "steady", distance_km: 65 };
    const sister = (stop?: string) => ({
      from: "sunday",
      to: "sunday",
      trips: [
        {
          ...leg,
          leaves: "8:00",
          arrives: "9:00",
          ...(stop && { parkedAt: stop, plugged: { from: "9:00", to: "12:00" } }),
        },
        { ...leg, leaves: "13:00", arrives: "14:00", parkedAt: "Home" },
      ],
    });
    const through = weekOf([sister()], flatPack(4));
    expect(through.failingDays).toHaveLength(1);
    const stopped = weekOf([sister("Post")], { ...flatPack(4), charger: { power_kW: 0.5 } });
    expect(stopped.failingDays).toEqual([]);
    // Three hours of half a kilowatt, the lead out for the fourth.
    expect(stopped.parkings[0].stored_kWh).toBeCloseTo(1.5, 6);
    expect(stopped.ends_frac).toBe(1);
  });

  it("goes so many kilometres of a road, there and back twice its length, back from its far end", () => {
    // From rest to rest at 1 m/s2, 200 m each: 20.4 km.
    const road = fromRestToRest(steadyTrace(20, 1000, 1));
    const far = (trip: object) => {
      const trips = [{ leaves: "8:00", arrives: "12:00", road: "steady", ...trip }];
      const job = weekJob([{ from: "monday", to: "monday", trips }]);
      return driveWeek(job, 0, weekRoads(new Map([["steady", road]])))?.driven_km;
    };
    expect(far({})).toBeCloseTo(20.4, 6);
    expect(far({ way: "back" })).toBeCloseTo(20.4, 6);
    expect(far({ way: "thereAndBack" })).toBeCloseTo(40.8, 6);
    // A leg that is cut slows to rest in time: it ends on the metre but for samples nearer than a hundredth of a second.
    for (const distance_km of [0.5, 7, 20, 33.3, 90]) {
      expect(far({ distance_km })).toBeCloseTo(distance_km, 2);
      expect(far({ distance_km, way: "thereAndBack" })).toBeCloseTo(distance_km, 2);
      expect(far({ distance_km, way: "back" })).toBeCloseTo(distance_km, 2);
    }
  });

  it("climbs on the way out and comes down on the way back, and its lowest point is at the top", () => {
    const climb = { distance_m: Float64Array.of(0, 20_400), elevation_m: Float64Array.of(0, 400) };
    const road = { ...fromRestToRest(steadyTrace(20, 1000, 1)), profile: climb };
    const hills = (...trips: readonly object[]) => {
      const day = { from: "monday", to: "monday", trips: trips.map((trip) => ({ road: "steady", ...trip })) };
      const job = weekJob([day], { ...flatPack(4), controller: { regen: { isOn: true } } });
      const week = driveWeek(job, 0, weekRoads(new Map([["steady", road]])));
      if (!week) throw new Error("no week was driven");
      return week;
    };
    const whole = hills({ leaves: "8:00", arrives: "9:00", way: "thereAndBack" });
    const halves = hills({ leaves: "8:00", arrives: "9:00" }, { leaves: "9:00", arrives: "10:00", way: "back" });
    expect(halves.drawn_kWh).toBeCloseTo(whole.drawn_kWh, 6);
    // 400 m of 1400 kg are 1.53 kWh, more than the 0.78 kWh that rolling takes on the way home: the pack is lowest at the top, where it
    // has stopped (all of its motion comes back: nothing is lost in this car) and just gathered way again: 1060 s, 20.6 km, 200 m down.
    expect(whole.lowest.at_h * 3600).toBeCloseTo(8 * 3600 + 1060, 3);
    const moving_J = 0.5 * 1400 * 20 ** 2;
    const top_J = (20.2 / 20.4) * 1400 * 9.81 * 400 + DRAG_N * 20_600 + moving_J;
    // Rolling drag goes by the slope's cosine, 2e-4 less.
    expect(4 * (1 - whole.lowest.soc_frac)).toBeCloseTo(top_J / J_PER_KWH, 3);
    // Twice its length of a road that rises is up and down again.
    expect(hills({ leaves: "8:00", arrives: "9:00", distance_km: 40.8 }).drawn_kWh).toBeCloseTo(whole.drawn_kWh, 3);
  });

  it("turns within a road that rises where its kilometres do, and goes round and round one that ends as high as it begins", () => {
    const over = (rise_m: number, trip: object, halfway_m = rise_m / 2) => {
      const profile = {
        distance_m: Float64Array.of(0, 10_200, 20_400),
        elevation_m: Float64Array.of(0, halfway_m, rise_m),
      };
      const road = { ...fromRestToRest(steadyTrace(20, 1000, 1)), profile };
      const trips = [{ leaves: "8:00", arrives: "12:00", road: "steady", ...trip }];
      const job = weekJob([{ from: "monday", to: "monday", trips }], { controller: { regen: { isOn: true } } });
      return driveWeek(job, 0, weekRoads(new Map([["steady", road]])))?.drawn_kWh ?? Number.NaN;
    };
    const rolling_kWh = (km: number) => (DRAG_N * km * 1000) / J_PER_KWH;
    const climb_kWh = (height_m: number) => (1400 * 9.81 * height_m) / J_PER_KWH;
    // Five kilometres up and down again; a road and a half is up and half down. What comes down gives all back in this car.
    expect(over(400, { way: "thereAndBack", distance_km: 10 })).toBeCloseTo(rolling_kWh(10), 2);
    expect(over(400, { distance_km: 30.6 })).toBeCloseTo(rolling_kWh(30.6) + climb_kWh(200), 2);
    // From the top with a full pack: it takes nothing, and the brakes have it all.
    expect(over(400, { way: "back" })).toBeCloseTo(0, 6);
    // Back for ten kilometres is the way home from there, here level, and not down from the top.
    expect(over(400, { way: "back", distance_km: 10.2 }, 0)).toBeCloseTo(rolling_kWh(10.2), 3);
    expect(over(400, { way: "once", distance_km: 10.2 }, 0)).toBeCloseTo(rolling_kWh(10.2), 3);
    // 3 m in 20 km are level: twice round climbs them twice. 10 m are not: up and down again.
    expect(over(3, { distance_km: 40.8 })).toBeCloseTo(rolling_kWh(40.8) + climb_kWh(6), 3);
    expect(over(10, { distance_km: 40.8 })).toBeCloseTo(rolling_kWh(40.8), 3);
  });

  it("has a wind against it on the way out and with it on the way back, where its condition turns the wind", () => {
    const weather = {
      temperature_degC: 20,
      heat: { kind: "none" },
      isDark: false,
      drag_ratio: 1,
      rolling_ratio: 1,
      usable_frac: 1,
      resistance_ratio: 1,
      wind_kmh: 36,
    } as const;
    const drag: Changes = { vehicle: { roadLoad: { kind: "physical", drag_coeff: 0.5, frontalArea_m2: 2 } } };
    const drawn = (way: string) => {
      const trips = [{ leaves: "8:00", arrives: "12:00", road: "steady", way }];
      const job = weekJob([{ from: "monday", to: "monday", trips }], drag);
      return driveWeek(job, 0, weekRoads(steadyRoad()), { name: "wind", weather })?.drawn_kWh ?? Number.NaN;
    };
    // Air at 30 and at 10 m/s on half a square metre: nine times the force.
    const rolling_kWh = (DRAG_N * ROAD_m) / J_PER_KWH;
    expect((drawn("once") - rolling_kWh) / (drawn("back") - rolling_kWh)).toBeCloseTo(9, 1);
    expect(drawn("thereAndBack")).toBeCloseTo(drawn("once") + drawn("back"), 6);
  });

  it("leaves with a warm cabin where it stood at a socket that warms it, and warms it on the road where not", () => {
    const weather = {
      temperature_degC: 0,
      heat: { kind: "thermostat", power_kW: 2, cabin_degC: 20, capacity_kJpK: 50, loss_WpK: 10, isPreheated: true },
      isDark: false,
      drag_ratio: 1,
      rolling_ratio: 1,
      usable_frac: 1,
      resistance_ratio: 1,
      wind_kmh: 0,
    } as const;
    const drawn = (parkedAt?: string, isPreheated = true) => {
      const trips = [
        { leaves: "8:00", arrives: "9:00", road: "steady", ...(parkedAt && { parkedAt }) },
        { leaves: "17:00", arrives: "18:00", road: "steady" },
      ];
      const week = driveWeek(weekJob([{ from: "monday", to: "monday", trips }]), 0, weekRoads(steadyRoad()), {
        name: "cold",
        weather: { ...weather, heat: { ...weather.heat, isPreheated } },
      });
      return week?.trips[1].drawn_kWh ?? Number.NaN;
    };
    // 2 kW into 50 kJ/K that lose 10 W/K: 20 K after 5000 s ln(200/180), less what holding them takes as long: 0.263 kWh. After eight
    // hours at 5000 s the cabin is cold but for 0.3 %.
    const warming_kWh = ((2000 - 10 * 20) * 5000 * Math.log(200 / 180)) / J_PER_KWH;
    expect(drawn() - drawn("Post")).toBeCloseTo(warming_kWh, 2);
    expect(drawn("Post", false)).toBeCloseTo(drawn(), 9);
  });

  it("waits for cells that are too cold to charge, and says for how long; warm ones do not wait", () => {
    const cold = {
      coldCharge: { none_degC: 0, full_degC: 10 },
      heat: { capacity_kJpK: 100, cooling_WpK: 10, derateFrom_degC: 45, derateTo_degC: 60 },
    };
    const at = (pack_degC: number) =>
      weekOf([working], { module: cold, environment: { temperature_degC: -10, pack_degC } }).parkings[1];
    // At its usual place the pack stands as warm as at the start: 5 degC there, from about -9 after a day outside. With C/G of 10 000 s
    // it passes nought after 10 000 ln(14/5) s.
    const garage = at(5);
    expect(garage.waited_h).toBeGreaterThan(0.9 * ((10_000 * Math.log(14 / 5)) / 3600));
    expect(garage.waited_h).toBeLessThan(1.2 * ((10_000 * Math.log(15 / 5)) / 3600) + 0.25);
    expect(garage.stored_kWh).toBeGreaterThan(0);
    expect(at(-10)).toMatchObject({ stored_kWh: 0, wall_kWh: 0 });
  });

  it("cools until the lead goes in, charges between the times given alone, and cools again until it leaves", () => {
    const heat = { capacity_kJpK: 100, cooling_WpK: 10, derateFrom_degC: 45, derateTo_degC: 60 };
    const trip = { leaves: "8:00", arrives: "9:00", road: "steady", parkedAt: "Post" };
    const at = (plugged?: object, none_degC = -5) => {
      const days = [{ from: "monday", to: "monday", trips: [{ ...trip, ...(plugged && { plugged }) }] }];
      return weekOf(days, {
        ...flatPack(4),
        module: { ...flatPack(4).module, heat, coldCharge: { none_degC, full_degC: none_degC + 1 } },
        environment: { temperature_degC: 0, pack_degC: 20 },
      });
    };
    const late = at({ from: "23:30", to: "23:45" });
    // From 20 degC on, 1000 s of driving and the day in air of 0 degC, at a time constant of 10 000 s.
    const begins = late.course.at_h.findIndex(
      (hour, i) => i > 0 && late.course.soc_frac[i] > late.course.soc_frac[i - 1] && hour > 9,
    );
    expect(late.course.at_h[begins - 1]).toBeCloseTo(23.5, 6);
    expect(late.course.at_h[begins]).toBeCloseTo(23.69, 1);
    expect(late.parkings[0].wall_kWh).toBeLessThanOrEqual((230 * 16 * 0.25) / 1000);
    for (const { parkings } of [at(), late]) {
      const away_s = 7 * 24 * 3600;
      expect(parkings[0].pack_degC).toBeCloseTo(20 * Math.exp(-away_s / 10_000), 3);
    }
    // Warm from home it is charged at once; in the night the same cells have long been below 10 degC.
    expect(at({ from: "9:00", to: "9:30" }, 10).ends_frac).toBe(1);
    expect(at({ from: "23:30", to: "23:45" }, 10).wall_kWh).toBe(0);
  });

  it("is driven in the job's winters too, or at ten years where winter is a factor", () => {
    const names = (job: Parameters<typeof driveWeeks>[0]) =>
      driveWeeks(job, steadyRoad())?.packs.map(({ condition }) => condition);
    const job = weekJob([working]);
    expect(names(job)).toEqual(["new", "ten years"]);
    const old: Parameters<typeof driveWeeks>[0]["conditions"] = { old: { resistance_ratio: 1.3 }, others: [] };
    const winter = {
      temperature_degC: -5,
      heat: { kind: "byHour", power_kW: 1 },
      isDark: true,
      drag_ratio: 1,
      rolling_ratio: 1,
      usable_frac: 1,
      resistance_ratio: 1,
      wind_kmh: 0,
    } as const;
    const driven = { ...job, conditions: { ...old, winter } };
    expect(names(driven)).toEqual(["new", "new, winter", "ten years, winter"]);
    const [fresh, cold] = driveWeeks(driven, steadyRoad())?.packs ?? [];
    // Ten ways of 1000 s with a heater of 1 kW on.
    expect(cold.drawn_kWh - fresh.drawn_kWh).toBeCloseTo((10 * 1000) / 3600, 2);
  });

  it("is none without trips, and asks for the roads that it is driven over alone", () => {
    expect(driveWeek(weekJob([]), 0, weekRoads(steadyRoad()))).toBeUndefined();
    expect(driveWeeks(weekJob([{ from: "monday", to: "sunday", trips: [] }]), steadyRoad())).toBeUndefined();
    expect(roadsOfWeek(weekJob([working]))).toEqual(["steady"]);
  });
});
