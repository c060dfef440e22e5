import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { preparePack } from "../../../../sim/battery/preparePack.ts";
import { chargeSetting, chargeStop } from "../../../../sim/plan/charging/chargeSetting.ts";
import { bareJob, type Changes } from "../../../support/bareCar.ts";
import { flatPack, socketOf } from "../../../support/chargeable.ts";

function settingOf(changes: Changes) {
  const job = bareJob({ ...flatPack(24), ...changes });
  const setting = chargeSetting(job, preparePack(job.packs[0], job.module), socketOf(10));
  const stop = chargeStop(setting, job);
  return { setting, stop: stop && messageIn(stop, "metric") };
}

describe("a pack at a supply", () => {
  it("is charged to its cells' highest voltage, and ends at a twentieth of its capacity", () => {
    // 60 Ah.
    expect(settingOf({}).setting).toMatchObject({ set_V: 500, tail_A: 3 });
    expect(settingOf({ charger: { tail_A: 1.5 } }).setting.tail_A).toBe(1.5);
  });
  it("has the car draw what stands by over the converter's efficiency, where nothing else is said", () => {
    const accessories = { standing_W: 90, dcdcEfficiency_frac: 0.9 };
    expect(settingOf({ accessories }).setting.carDraw_W).toBeCloseTo(100, 12);
    expect(settingOf({ accessories, charger: { carDraw_W: 40 } }).setting.carDraw_W).toBe(40);
  });
  it("begins as warm as the pack, and the day where the pack has no temperature of its own", () => {
    const day = settingOf({ environment: { temperature_degC: 15 } }).setting;
    expect([day.ambient_K, day.start_K]).toEqual([288.15, 288.15]);
    const warm = settingOf({ environment: { temperature_degC: 15, pack_degC: 25 } }).setting;
    expect([warm.ambient_K, warm.start_K]).toEqual([288.15, 298.15]);
  });
});

describe("is not charged", () => {
  const heat = { capacity_kJpK: 10, cooling_WpK: 0, derateFrom_degC: 40, derateTo_degC: 60 };

  it("by a charger whose voltage does not reach it", () => {
    expect(settingOf({ charger: { max_V: 499 } }).stop).toMatch(/^The charger goes to 499 V and this pack has 500 V/);
    expect(settingOf({ charger: { max_V: 500 } }).stop).toBeUndefined();
  });
  it("at and below the cold limit", () => {
    const at = (pack_degC: number) => settingOf({ environment: { pack_degC } }).stop;
    expect(at(0)).toMatch(/^The cells are at 0 °C and take no charge at or below 0 °C/);
    expect(at(0.5)).toBeUndefined();
  });
  it("from the temperature on at which its cells give up", () => {
    const at = (pack_degC: number) =>
      settingOf({ module: { ...flatPack(24).module, heat }, environment: { pack_degC } }).stop;
    expect(at(60)).toMatch(/^The cells are at 60 °C and take no charge from 60 °C on: let the pack cool/);
    expect(at(59)).toBeUndefined();
  });
  it("where the car itself draws all that the charger gives", () => {
    expect(settingOf({ charger: { power_kW: 0.3, carDraw_W: 300 } }).stop).toMatch(
      /300 W here and the car itself draws/,
    );
    expect(settingOf({ charger: { power_kW: 0.3, carDraw_W: 299 } }).stop).toBeUndefined();
  });
});
