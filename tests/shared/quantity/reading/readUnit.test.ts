import { expect, it } from "vitest";
import { readUnit } from "../../../../shared/quantity/reading/readUnit.ts";

it("knows a unit however it is spelt, in the plural too", () => {
  expect(readUnit("torque", "lbf·ft", {})?.rule).toBeCloseTo(1.3558179, 6);
  expect(readUnit("mass", "lbs", {})?.rule).toBeCloseTo(0.45359237, 9);
  expect(readUnit("mass", "mph", {})).toBeUndefined();
  expect(readUnit("mass", "kg (", {})).toBeUndefined();
});

it("takes the field's own unit where none is written", () => {
  expect(readUnit("mass", "", {})).toEqual({ rule: 1, spelling: "" });
  expect(readUnit("mass", "", { bareUnit: "lb" })?.rule).toBeCloseTo(0.45359237, 9);
});

it("asks which hundredweight and which gallon, until it is known", () => {
  expect(readUnit("mass", "cwt", {})).toMatchObject({ asks: "cwt" });
  // 112 lb and 100 lb.
  expect(readUnit("mass", "cwt", { cwt: "112" })?.rule).toBeCloseTo(50.80234544, 8);
  expect(readUnit("mass", "cwt", { cwt: "100" })?.rule).toBeCloseTo(45.359237, 8);
  expect(readUnit("fuelUse", "mpg", {})).toMatchObject({ asks: "gallon" });
  // 100 km / 1.609344 times a gallon of 3.785411784 l.
  expect(readUnit("fuelUse", "mpg", { gallon: "us" })?.rule).toMatchObject({ over: expect.closeTo(235.2146, 3) });
});

it("says how a loose spelling was read", () => {
  expect(readUnit("pressure", "lb", {})?.note).toBe("lb read as lb/in² (psi)");
});
