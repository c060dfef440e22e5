import { describe, expect, it } from "vitest";
import { type Message, messageIn } from "../../../../shared/quantity/message.ts";
import { cableFor } from "../../../../sim/plan/currents/cable.ts";
import type { CurrentCurve } from "../../../../sim/plan/currents/currentCurve.ts";
import type { CurrentsPlan } from "../../../../sim/plan/currents/currentsPlan.ts";
import { currentCautions, currentsSentence, startingPoints } from "../../../../sim/plan/currents/currentWords.ts";
import { fuseFor } from "../../../../sim/plan/currents/fuse.ts";
import { preChargeShelf } from "../../../../sim/plan/currents/preChargeShelf.ts";

const greatest = [300, 260, 200, 120, 90].map((battery_A, i) => ({
  duration_s: [0, 2, 10, 60, 600][i],
  battery_A,
  motor_Nm: 0,
}));
const curve: CurrentCurve = { points: greatest, whole: greatest[4], drawn: [], charge_A: 0, duration_s: 600 };

/** 120 V full; 300, 260, 200, 120 and 90 A for a moment, two and ten seconds, a minute, ten minutes: a fuse of 125 A decided by 90 / 0.75. */
function planOf(changes: Partial<CurrentsPlan> = {}): CurrentsPlan {
  const fuse = changes.fuse ?? fuseFor(greatest);
  const asked = { carries_A: fuse.rating_A, steady_A: 90, peak_A: 300, length_m: 6, conductor_degC: 70 };
  return {
    pack: "A",
    road: curve,
    hill: curve,
    greatest,
    full_V: 120,
    shortCircuit_A: 4000,
    strings: 1,
    fuse,
    longHill: { grade_ratio: 0.06, length_km: 8, speed_kmh: 50, isAssumed: false },
    hasMotorCurrent: true,
    packContinuous_A: 200,
    packPeak_A: 400,
    cable: cableFor(asked),
    cable_m: 6,
    conductor_degC: 70,
    isLengthAssumed: false,
    isCableFitted: false,
    isBehind: false,
    preCharge: preChargeShelf({ source_V: 120, capacitance_uF: 2000 }),
    ...changes,
  };
}
const said = (each: Message) => messageIn(each, "metric");
const point = (part: string, changes: Partial<CurrentsPlan> = {}) =>
  startingPoints(planOf(changes)).flatMap((each) => (each.part === part ? [said(each.sentence)] : []))[0];
const cautions = (changes: Partial<CurrentsPlan> = {}) => currentCautions(planOf(changes)).map(said);

it("says the currents by how long they last, and that a car behind its road would draw more", () => {
  const sentence =
    "Over the road and the long hill A gives 300 A at most, 200 A over ten seconds, 120 A over a minute and 90 A over ten minutes.";
  expect(said(currentsSentence(planOf()))).toBe(sentence);
  expect(said(currentsSentence(planOf({ isBehind: true })))).toBe(
    `${sentence} The car does not keep up with this road: one that did would draw more.`,
  );
});

describe("the fuse", () => {
  it("is said with what decides it and how far peaks are above it", () => {
    // 200/125 and 260/125.
    expect(point("fuse")).toBe(
      "Fuse: 125 A, for direct current of 120 V or more, breaking more than 4000 A; what ten minutes ask for decides. Ten seconds are 1.6 times its rating, two 2.1 times: see that both lie below the maker's melting curve.",
    );
    const fuse = planOf().fuse;
    expect(point("fuse", { fuse: { ...fuse, because: "minute" } })).toMatch(/what a minute ask for decides/);
    expect(point("fuse", { fuse: { ...fuse, because: "tenSeconds" } })).toMatch(/what ten seconds ask for decides/);
    expect(point("fuse", { fuse: { ...fuse, isBeyondList: true } })).toMatch(/^Fuse: 125 A \(no usual size\), for/);
  });
});

describe("the cable", () => {
  it("is said with what it carries, loses and gives off", () => {
    expect(point("cable")).toMatch(
      /^Cable: 25 mm² copper, which carries 130 A in free air\. At 70 °C it has 0\.\d+ mΩ a metre: over 6 m there and back 0\.\d+ V are lost at 90 A, \d\.\d V at the peak, and each metre gives off \d\.\d W\.$/,
    );
    expect(point("contactor")).toMatch(/^Contactors: 125 A or more .* and 300 A broken at 120 V of direct current/);
    expect(point("lug")).toMatch(/^Lugs: tube lugs of 25 mm² for M8 or/);
  });
  it("says how many, and that it is as fitted", () => {
    const cable = { ...planOf().cable, parallel: 2 };
    expect(point("cable", { cable })).toMatch(/^Cable: 2 of 25 mm² copper, which carries 260 A in free air/);
    expect(point("cable", { isCableFitted: true })).toMatch(/^Cable: 25 mm² copper, as fitted, which carries/);
  });
  it("is warned of where it carries less than the fuse lets through, all that lie side by side together", () => {
    const warned = (carries_A: number, parallel: number) =>
      / That is less than the fuse lets through/.test(
        point("cable", { cable: { ...planOf().cable, carries_A, parallel } }),
      );
    expect([warned(125, 1), warned(124, 1), warned(63, 2), warned(62, 2)]).toEqual([false, true, false, true]);
  });
});

describe("cautions", () => {
  it("are two where nothing else is to be minded", () => {
    expect(cautions()).toHaveLength(2);
    expect(cautions()[1]).toMatch(/^120 V of direct current can kill/);
  });
  it("ask for a fuse in each string from two strings on", () => {
    expect(cautions({ strings: 2 })[2]).toBe(
      "2 strings lie in parallel: each needs a fuse of its own, or a fault in one is fed by all others.",
    );
  });
  it("speak of a controller that lets a tenth more through than is asked", () => {
    expect(cautions({ controller_A: 330 })).toHaveLength(2);
    expect(cautions({ controller_A: 331 })[2]).toBe(
      "The controller lets 331 A through, 300 A are asked here: lower its limit, or check the fuse for that current as well.",
    );
  });
  it("say that the long hill is assumed, and that the motor's current is not known", () => {
    const longHill = { ...planOf().longHill, isAssumed: true };
    expect(cautions({ longHill })[2]).toBe(
      "The long hill is assumed: 8 km at 6 %, climbed at 50 km/h. Enter the client's own.",
    );
    expect(cautions({ hasMotorCurrent: false })[2]).toMatch(/^Currents of the motor's phases are not known/);
  });
});
