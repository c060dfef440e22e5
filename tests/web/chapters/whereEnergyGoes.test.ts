import { expect, it } from "vitest";
import whereEnergyGoes from "../../../web/chapters/whereEnergyGoes.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const values = sectionValues(demoJob());
const [run] = values.runs.candidates;

/** 1450 Wh from the cells over 10 km, of which 50 warm the pack: 1400 from its terminals. */
const driven = {
  ...run,
  name: "one",
  distance_km: 10,
  battery_Whpkm: 140,
  ledger_Wh: {
    aero: 300,
    rolling: 250,
    climb: 0,
    speed: 0,
    driveline: 200,
    motor: 400,
    packHeat: 50,
    accessories: 150,
    frictionBrake: 100,
    total: 1450,
  },
};
const stuck = { ...driven, name: "stuck", distance_km: 0 };

const told = (candidates: readonly (typeof driven)[], packIndex: number) => {
  const result = whereEnergyGoes.compute({ runs: { ...values.runs, candidates }, packIndex, units: "metric" });
  return { sentence: whereEnergyGoes.sentence(result), figure: whereEnergyGoes.plot(result, drawing(640)) };
};

it("names the two largest parts of what leaves the pack, and what share of it they take", () => {
  // (400 + 300) / 1400 = 50 %; of the cells' 1450 it would be 48 %.
  const { sentence, figure } = told([stuck, driven], 1);
  expect(sentence).toBe(
    "With one the car takes 140 Wh/km from its pack. The two largest parts, motor and controller and air, take 50 % of it.",
  );
  expect(figure?.caption).toMatch(/, with one$/);
});

it("says of a car that does not get along that there is no energy to show, and draws none", () => {
  const { sentence, figure } = told([stuck, driven], 0);
  expect(sentence).toBe("With stuck the car does not get along this road, so no energy is shown.");
  expect(figure).toBeUndefined();
});

it("has no shares where a road downhill takes nothing from the pack", () => {
  const rolls = { ...driven, ledger_Wh: { ...driven.ledger_Wh, climb: -1500, total: -50 } };
  expect(told([rolls], 0).sentence).not.toMatch(/%/);
});

it("tells of the first pack while the one in view is gone", () => {
  expect(told([driven], 3).sentence).toMatch(/^With one /);
});
