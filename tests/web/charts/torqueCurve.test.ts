import { expect, it } from "vitest";
import { torqueCurve } from "../../../web/charts/torqueCurve.ts";
import { drawing } from "../../support/drawing.ts";

const line = (...points: readonly (readonly [number, number])[]) =>
  points.map(([speed_rpm, torque_Nm]) => ({ speed_rpm, torque_Nm }));
const motor = line([0, 120], [3000, 120], [6000, 60]);

it("says the most that the motor gives, and its power", () => {
  const { alt, table } = torqueCurve({ motor, asSet: line([0, 80], [6000, 60]) }, drawing());
  // 120 Nm at 3000 rpm are 37.7 kW.
  expect(alt).toMatch(/gives at most 120.Nm, from 0 rpm, and 37\.7.kW at 3000 rpm/);
  expect(table.columns.map(({ name }) => name)).toEqual(["curve", "speed_rpm", "torque_Nm"]);
});

it("has the engine beside it where its curve is known, and no curve of nothing", () => {
  const engine = line([1000, 90], [3000, 110]);
  expect(torqueCurve({ motor, asSet: motor, engine }, drawing()).alt).toMatch(/110.Nm/);
  expect(torqueCurve({ motor: [], asSet: [] }, drawing()).alt).toMatch(/No torque is known of this motor/);
});
