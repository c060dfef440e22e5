import { describe, expect, it } from "vitest";
import { heaters, usualWinter } from "../../../../shared/parts/heaters.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { type ChargePlan, chargePlan } from "../../../../sim/plan/charging/chargePlan.ts";
import { driveJob } from "../../../../sim/plan/drive/driveJob.ts";
import { roadTrace } from "../../../../sim/plan/drive/roadTrace.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { flatPack, socketOf, straightPack } from "../../../support/chargeable.ts";
import { cycleTexts } from "../../../support/cycleTexts.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

/** 500 Wh over 5 km: a hundred watt-hours a kilometre from the cells. */
const candidate = inventedCandidate(20);

function planned(changes: Changes, ...supplies: ReturnType<typeof socketOf>[]): ChargePlan {
  return chargePlan({ ...bareJob(changes), supplies }, [candidate]);
}

describe("a pack at a supply", () => {
  it("is refilled for a usual day from what the day takes of the cells", () => {
    // 40 km x 100 Wh/km = 4 kWh at 2.3 kW, and a third more in winter.
    const [[row]] = planned(flatPack(20), socketOf(10)).rows;
    expect(row.usualDay?.time_h).toBeCloseTo(4 / 2.3, 3);
    expect(row.usualDay?.stored_kWh).toBeCloseTo(4, 6);
    expect(row.winterDay?.time_h).toBeCloseTo((4 * 1.33) / 2.3, 3);
    expect(row.emptyToFull?.time_h).toBeCloseTo(20 / 2.3, 3);
    expect(row.limit).toBe("supply");
  });

  it("has the whole pack to refill after a day that it does not hold, and says so", () => {
    const [[row]] = planned(flatPack(3), socketOf(10)).rows;
    expect(row.usualDay).toMatchObject({ isMoreThanPack: true, time_h: row.emptyToFull?.time_h });
  });

  it("gets from a night what its hours bring, in kilometres, and no more than it holds", () => {
    const hours = { from: "23:30", to: "4:30" };
    const [[night]] = planned(flatPack(20), socketOf(10, { hours })).rows;
    expect(night.night?.gives_km).toBeCloseTo((5 * 2300) / 100, 3);
    expect(night.night).toMatchObject({ hours_h: 5, isFull: false });
    const [[full]] = planned(flatPack(5), socketOf(10, { hours })).rows;
    expect(full.night?.gives_km).toBeCloseTo(50, 3);
    expect(full.night?.isFull).toBe(true);
  });

  it("has no day and no kilometres for a car that does not move, and its hours all the same", () => {
    const job = { ...bareJob(flatPack(20)), supplies: [socketOf(10, { hours: { from: "20:00", to: "6:00" } })] };
    const [[row]] = chargePlan(job, [inventedCandidate(20, { distance_km: 0 })]).rows;
    expect(row.usualDay).toBeUndefined();
    expect(row.night?.gives_km).toBeUndefined();
    expect(row.emptyToFull?.time_h).toBeCloseTo(20 / 2.3, 3);
  });

  it("tells what the control pilot shows, but in mode 1, which has none", () => {
    const facts = planned(flatPack(20), socketOf(32), socketOf(10, { mode: "mode1" }), socketOf(5)).supplies;
    expect(facts.map(({ pilotDuty_frac }) => pilotDuty_frac)).toEqual([32 / 60, undefined, undefined]);
    expect(facts[0]).toMatchObject({ name: "Supply", wall_kW: 7.36, given_kW: 7.36 });
  });

  it("has in the car's charge what the cells hold and how long the voltage held the current back", () => {
    const [[row]] = planned(straightPack, socketOf(32, { price_perkWh: 0.5 })).rows;
    const { time_h = 0, taper_h = 0, stored_kWh = 0, wall_kWh = 0, cost } = row.emptyToFull ?? {};
    // 37/40 of 60 Ah at 30 A, then 540 s x ln 10.
    expect(Math.abs(time_h / (1.85 + (540 * Math.log(10)) / 3600) - 1)).toBeLessThan(1e-3);
    expect(Math.abs(taper_h / ((540 * Math.log(10)) / 3600) - 1)).toBeLessThan(0.02);
    expect(stored_kWh).toBeGreaterThan(3.5);
    expect(stored_kWh).toBeLessThan(3.6);
    expect(cost).toBeCloseTo(0.5 * wall_kWh, 12);
    expect(planned(straightPack, socketOf(32)).rows[0][0].emptyToFull).not.toHaveProperty("cost");
  });

  it("is not charged where it would take more than two hundred hours", () => {
    // 20 kWh at a little more and a little less than 100 W.
    const at = (power_kW: number) => planned({ ...flatPack(20), charger: { power_kW } }, socketOf(32)).rows[0][0];
    expect(at(0.101).emptyToFull?.time_h).toBeCloseTo(198, 0);
    expect(messageIn(at(0.099).stop ?? [], "metric")).toBe(
      "The charge does not get on: the cells take hardly any current.",
    );
  });

  it("says what sets the pace", () => {
    const paceOf = (changes: Changes, current_A: number) => planned(changes, socketOf(current_A)).rows[0][0].limit;
    expect(paceOf({ ...flatPack(20), charger: { power_kW: 2 } }, 32)).toBe("charger");
    expect(paceOf({ ...flatPack(20), charger: { maxDc_A: 2 } }, 32)).toBe("charger");
    expect(paceOf(straightPack, 32)).toBe("cells");
  });
});

describe("a stop stands alone, in words", () => {
  const stopOf = (changes: Changes) => {
    const { stop, ...rest } = planned(changes, socketOf(10)).rows[0][0];
    expect(rest).toEqual({ supply: "Supply", pack: "only" });
    return messageIn(stop ?? [], "metric");
  };

  it("where the charger's voltage does not reach the full pack", () => {
    expect(stopOf({ ...flatPack(20), charger: { max_V: 420 } })).toBe(
      "The charger goes to 420 V and this pack has 500 V when full: it is never charged full. Use a charger of a higher voltage, or fewer modules in series.",
    );
  });
  it("where cold cells take no charge", () => {
    expect(stopOf({ ...flatPack(20), environment: { temperature_degC: 0 } })).toBe(
      "The cells are at 0 °C and take no charge at or below 0 °C: warm the pack first.",
    );
  });
  it("where the car itself draws all that the charger gives", () => {
    expect(stopOf({ ...flatPack(20), charger: { power_kW: 0.2, carDraw_W: 250 } })).toBe(
      "The charger gives 200 W here and the car itself draws 250 W: nothing reaches the pack.",
    );
  });
});

describe("what is said beside the hours", () => {
  const words = (said: ChargePlan["cautions"]) => said.map((each) => messageIn(each, "metric")).join("\n");

  it("warns of long hours at a household socket, and leaves it to local codes and a licensed electrician", () => {
    const household = socketOf(10, { kind: "household", mode: "mode2" });
    const long = words(planned(flatPack(20), household).cautions);
    expect(long).toMatch(/up to 8\.7 h at 10 A.*not made for hours.*dedicated circuit.*licensed electrician decide/);
    const short = words(planned(flatPack(5), household).cautions);
    expect(short).not.toMatch(/not made for hours/);
    expect(short).toMatch(/feel the plug.*licensed electrician decide/);
  });
  it("says what is not known of the charger, and from which temperature on the cells take charge", () => {
    const notes = words(planned(flatPack(20), socketOf(32)).notes);
    expect(notes).toMatch(/The charger’s power is not entered/);
    expect(notes).toMatch(/take no charge at or below 0 °C and all of it from 10 °C/);
    expect(words(planned({ ...flatPack(20), charger: { power_kW: 3 } }, socketOf(32)).notes)).not.toMatch(
      /not entered/,
    );
    expect(words(planned(flatPack(20), socketOf(32)).notes)).not.toMatch(/No supply is entered/);
  });
  it("says of a winter at or below that temperature that a night may give nothing, and nothing of a milder one", () => {
    const [{ heat }] = heaters;
    const at = (temperature_degC: number) => {
      const winter = { ...usualWinter(heat), temperature_degC };
      const job = { ...bareJob(flatPack(20)), conditions: { winter, old: { resistance_ratio: 1 }, others: [] } };
      return words(chargePlan({ ...job, supplies: [socketOf(32)] }, [candidate]).notes);
    };
    expect(at(0)).toMatch(/On a winter’s day of 0 °C they take none once they have cooled/);
    expect(at(0.5)).not.toMatch(/On a winter’s day/);
  });
  it("asks for a circuit of its own behind a wall unit, 125 % of the load by the American code", () => {
    expect(words(planned(flatPack(20), socketOf(32)).cautions)).toMatch(
      /circuit of its own.*\(40 A where the American/,
    );
  });
  it("warns of mode 1", () => {
    expect(words(planned(flatPack(20), socketOf(10, { mode: "mode1" })).cautions)).toMatch(/discouraged or forbidden/);
  });
  it("says that a charger of one phase takes a third of three", () => {
    const three = socketOf(16, { kind: "threePhase" });
    expect(words(planned(flatPack(20), three).notes)).toMatch(/a third of a three-phase supply/);
    expect(words(planned({ ...flatPack(20), charger: { isThreePhase: true } }, three).notes)).not.toMatch(/a third/);
  });
  it("stands in with a household socket of the reader's country where no supply is entered", () => {
    const job = { ...bareJob(flatPack(20)), supplies: [] };
    expect(chargePlan(job, [candidate])).toMatchObject({ isAssumed: true, supplies: [{ wall_kW: 2.3 }] });
    // 15 A circuit, four fifths of it for a load of three hours and more: NEC 625.41; 120 V x 12 A = 1.44 kW.
    expect(chargePlan({ ...job, units: "american" }, [candidate]).supplies[0].wall_kW).toBeCloseTo(1.44, 9);
    expect(words(chargePlan(job, [candidate]).notes)).toMatch(/No supply is entered/);
  });
});

describe.each([0, 1, 2])("demo %i", (which) => {
  const job = demoJob(which);
  const { candidates } = driveJob(job, roadTrace(job.roads[0], cycleTexts));
  const plan = chargePlan(job, candidates);

  it("charges every pack at every supply, a larger one longer, never faster than the supply gives", () => {
    expect(plan.rows.map((each) => each.length)).toEqual(job.packs.map(() => job.supplies.length));
    plan.supplies.forEach(({ wall_kW }, k) => {
      const full = plan.rows.map((each) => each[k].emptyToFull);
      for (const figures of full) {
        expect(figures?.wall_kWh ?? 0).toBeGreaterThan(figures?.stored_kWh ?? 0);
        expect((figures?.wall_kWh ?? 0) / (figures?.time_h ?? 1)).toBeLessThanOrEqual(wall_kW * (1 + 1e-6)); // the trapezoids of a step of charge
      }
      const hours = full.map((figures) => figures?.time_h ?? 0);
      expect(hours).toEqual(hours.toSorted((a, b) => a - b));
    });
  });

  it("takes from the wall what the usable energy, heat, charger and car ask for", () => {
    for (const [i, [row]] of plan.rows.entries()) {
      const { stored_kWh = 0, wall_kWh = 0, time_h = 0 } = row.emptyToFull ?? {};
      expect(stored_kWh).toBeCloseTo(candidates[i].pack.usable_kWh, 3);
      const draw_kWh = (time_h * job.accessories.standing_W) / job.accessories.dcdcEfficiency_frac / 1000;
      const least_kWh = (stored_kWh + draw_kWh) / 0.95;
      expect(wall_kWh).toBeGreaterThan(least_kWh);
      expect(wall_kWh).toBeLessThan(1.2 * least_kWh);
    }
  });
});
