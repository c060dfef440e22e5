import { expect, it } from "vitest";
import { message, quantity } from "../../../shared/quantity/message.ts";
import type { GearboxStudy } from "../../../sim/index.ts";
import torqueLimit from "../../../web/sections/torqueLimit.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";

type Studied = Pick<GearboxStudy, "pack" | "caps" | "shafts" | "demand" | "capWords"> & {
  readonly recommendedCap?: GearboxStudy["recommendedCap"] | undefined;
};

const cap = (torque_Nm: number): GearboxStudy["caps"][number] => ({
  torque_Nm,
  gears: [],
  to50kmh_s: 9.14,
  behind_s: 0.4,
  battery_Whpkm: 140,
  steepestStart_ratio: 0.25,
  hill: { starts: true, spare_frac: 0.31 },
});
const gear = (propellerShaft_Nm: number): GearboxStudy["shafts"][number]["gears"][number] => ({
  gear: "first",
  range: "high",
  propellerShaft_Nm,
  halfShaft_Nm: 800,
  inputAtLimit_Nm: 115,
  weakest: "propeller shaft",
});
/** As the study of a gearbox has it: caps tried in rising order, the motor's own torque last. */
const studied: Studied = {
  pack: "13 kWh",
  caps: [cap(90), cap(115), cap(120)],
  recommendedCap: { torque_Nm: 115, because: "gearbox" },
  shafts: [
    { name: "as set", torque_Nm: 115, gears: [gear(400)] },
    { name: "motor alone", torque_Nm: 120, gears: [gear(420)] },
  ],
  demand: { hill_ratio: 0.125 } as GearboxStudy["demand"],
  capWords: [message`Begin with ${quantity("torque", 115)}.`],
};

const job = demoJob();

function told(torqueCap_Nm: number | undefined, changes: Partial<Studied> = {}, halfShaft_Nm?: number) {
  const limits = { propellerShaft_Nm: undefined, halfShaft_Nm };
  const result = torqueLimit.compute({
    job: { ...job, controller: { ...job.controller, torqueCap_Nm }, driveline: { ...job.driveline, limits } },
    gearbox: { ...studied, ...changes } as GearboxStudy,
    units: "metric",
  });
  const tables = [...torqueLimit.plot(result, drawing())].flatMap((each) => ("rows" in each ? [each] : []));
  return { tables, summary: torqueLimit.summary?.(result), attention: torqueLimit.attention?.(result) };
}

it("warns of a cap above what is recommended, or of none where the motor gives more, and allows for 1 Nm of rounding", () => {
  expect(told(117).attention).toEqual(["Too much torque for the old parts: capped at 117 Nm, 115 Nm recommended."]);
  expect(told(undefined).attention).toEqual(["Too much torque for the old parts: no cap set, 115 Nm recommended."]);
  expect(told(116).attention).toEqual([]);
  // The motor gives no more than that by itself, whatever the cap.
  expect(told(300, { caps: [cap(90), cap(115)] }).attention).toEqual([]);
});

it("says in one line the cap as set beside the one recommended, or that nobody knows what the box takes", () => {
  expect(told(110).summary).toBe("capped at 110 Nm; 115 Nm recommended");
  const { summary, attention } = told(undefined, { recommendedCap: undefined });
  expect(summary).toBe("no cap set; what the gearbox takes is not known");
  expect(attention).toEqual([]);
});

it("marks the recommended cap, says what is not reached, and has the hill only where one is asked for", () => {
  const [caps] = told(110).tables;
  expect(caps.rows.map(([name]) => name)).toEqual(["90 Nm", "115 Nm, recommended", "120 Nm"]);
  expect(caps.rows[0]).toEqual(["90 Nm", "9.1 s", "not reached", "not reached", "no", "140 Wh/km", "25 %", "31 %"]);
  expect(caps.columns).toHaveLength(8);
  const { battery_Whpkm: _none, ...stuck } = { ...cap(40), behind_s: 61.6, hill: { starts: false, spare_frac: -0.2 } };
  const [weak] = told(110, { caps: [stuck] }).tables;
  expect(weak.rows[0].slice(4)).toEqual(["62 s", "does not move", "25 %", "does not start"]);
  const { hill: _hill, ...level } = cap(90);
  const [plain] = told(110, { caps: [level], demand: {} as GearboxStudy["demand"] }).tables;
  expect([plain.columns.length, plain.rows[0].length]).toEqual([7, 7]);
});

it("marks a shaft whose limit a torque passes, not one that is just at it, and says what shafts take", () => {
  const [, shafts] = told(110, {}, 900).tables;
  expect(shafts.columns.map(({ title }) => title)).toEqual(["Gear", "As set: 115 Nm", "Motor alone: 120 Nm"]);
  expect(shafts.rows).toEqual([["first", "400 Nm; 800 Nm", "420 Nm; 800 Nm: propeller shaft over"]]);
  expect(shafts.note).toBe("They take: each half-shaft 900 Nm.");
  expect(told(110).tables[1].note).toMatch(/^What the shafts take is not known/);
});
