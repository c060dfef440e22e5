import { expect, it } from "vitest";
import { createChannels } from "../../../sim/index.ts";
import { operatingPoints } from "../../../web/charts/operatingPoints.ts";
import { inventedMotorMap } from "../../logs/inventedDrive.ts";
import { drawing } from "../../support/drawing.ts";

const RADPS_PER_RPM = (2 * Math.PI) / 60;

/** Stands for 1 s, then 4 s at 1010 rpm and 50 Nm, and 1 s at 4010 rpm and 20 Nm. */
function run() {
  const channels = createChannels(7);
  channels.length = 7;
  const speeds_rpm = [0, 0, 1010, 1010, 1010, 1010, 4010];
  channels.time_s.set(speeds_rpm.map((_, i) => i));
  channels.motorSpeed_radps.set(speeds_rpm.map((rpm) => rpm * RADPS_PER_RPM));
  channels.motorTorque_Nm.set([0, 0, 50, 50, 50, 50, 20]);
  return channels;
}

const input = { name: "Six modules", index: 0, channels: run(), map: inventedMotorMap, contours: "loss" } as const;

it("has the time at each place of speed and torque, standing left out", () => {
  const { table } = operatingPoints(input, drawing());
  const rows = table.rows.map((row) => row.map((value) => Math.round(Number(value))));
  expect(rows).toEqual([
    [1010, 50, 4],
    [4010, 20, 1],
  ]);
});

it("makes the area of a dot grow with its time", () => {
  // The largest is 1 px and 9 px more at 720 px; a quarter of the time has half of the 9 px.
  const { svg } = operatingPoints(input, drawing(720));
  const radii = [...svg.querySelectorAll("circle")].map((dot) => Number(dot.getAttribute("r")));
  expect(radii).toEqual([10, 5.5]);
});

it("reads the time near a speed, the torque there and what the motor allows", () => {
  const { read } = operatingPoints(input, drawing());
  const text = (at_rpm: number, label: string) => read(at_rpm).values.find((value) => value.label === label)?.text;
  expect(text(1010, "time near this speed")).toBe("4 s");
  expect(text(1010, "longest at")).toBe("50 Nm");
  expect(text(1010, "motor")).toBe("110 Nm"); // below 45 kW / 110 Nm, 3907 rpm
  expect(text(2500, "time near this speed")).toBe("0 s");
  expect(text(2500, "longest at")).toBeUndefined();
});

it("says the road speed only where one gear is in use", () => {
  // 1000 rpm at 0.005 m/s for each are 5 m/s, 18 km/h.
  const geared = operatingPoints({ ...input, gear: { name: "3", speedPerRpm_mps: 0.005 } }, drawing());
  expect(geared.read(1000).values[0]).toEqual({ label: "road speed in 3", text: "18 km/h" });
  expect(operatingPoints(input, drawing()).read(1000).values[0]?.label).not.toContain("road speed");
});
