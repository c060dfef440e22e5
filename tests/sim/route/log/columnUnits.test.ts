import { expect, it } from "vitest";
import { scaleOf, splitHeader, unitNamed } from "../../../../sim/route/log/columnUnits.ts";

it.each([
  ["Km/H", "kmh"],
  [" [m/s] ", "mps"],
  ["kts", "knots"],
  ["°F", "degF"],
  ["furlong", ""],
])("the unit %s is named %s", (text, unit) => {
  expect(unitNamed(text)).toBe(unit);
});

it.each([
  ["Speed (km/h)", "speed", "kmh"],
  ["speed_mps", "speed", "mps"],
  ["Geschwindigkeit km/h", "geschwindigkeit", "kmh"],
  ["Höhe", "hohe", ""],
  ["packVoltage [V]", "pack voltage", "V"],
])("the header %s has the words %s and the unit %s", (header, words, unit) => {
  expect(splitHeader(header)).toEqual({ words, unit });
});

it("scales a column to SI", () => {
  expect(scaleOf("height", "ft")).toEqual({ factor: expect.closeTo(0.3048, 12), offset: 0 });
  expect(scaleOf("packCurrent", "mA").factor).toBe(1e-3);
  expect(scaleOf("motorSpeed", "rpm").factor).toBeCloseTo((2 * Math.PI) / 60, 12);
  expect(scaleOf("speed", "kmh")).toEqual({ factor: 1, offset: 0 });
});

it("scales a temperature by two fixed points", () => {
  const fahrenheit = scaleOf("temperature", "degF");
  expect(32 * fahrenheit.factor + fahrenheit.offset).toBeCloseTo(273.15, 9);
  expect(212 * fahrenheit.factor + fahrenheit.offset).toBeCloseTo(373.15, 9);
  expect(scaleOf("temperature", "K")).toEqual({ factor: 1, offset: 0 });
  expect(scaleOf("temperature", "").offset).toBe(273.15);
});
