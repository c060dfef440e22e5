import { describe, expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

const weights = {
  wheelbase_mm: 2300,
  weighed: { front_kg: 510, rear_kg: 442.5 },
  out: [{ name: "engine", mass_kg: 130, place_mm: 50 }],
  boxes: [
    { name: "front box", place_mm: 100, share_frac: 0.5 },
    { name: "boot box", place_mm: 2500, share_frac: 0.5 },
  ],
  plates: { rear_kg: 640 },
};

it("prints the axles before and after with each pack, and what is over", async () => {
  const path = changedDemoFile({ weights });
  const { code, out } = await runCommand("weigh", path);
  expect(code).toBe(0);
  expect(out).toMatch(/^as it arrived {2,}510 +442\.5 +952\.5 +53\.5$/m);
  expect(out).toMatch(/^fully laden +29 kWh +511\.4 +606\.8 +1118 +45\.7$/m);
  expect(out).toMatch(/^29 kWh, fully laden: 39 % to 100 % of it may sit in front box \(117 kg to/m);
  const { loads, splits } = JSON.parse((await runCommand("weigh", path, "--json")).out);
  expect(loads[0]).toMatchObject({ name: "as it arrived", pack: null, front_kg: 510, rear_kg: 442.5, over: [] });
  for (const { front_kg, rear_kg, total_kg } of loads) expect(front_kg + rear_kg).toBeCloseTo(total_kg, 6);
  expect(splits).toHaveLength(5);
});

it("says first which pack puts the car over a plate", async () => {
  const path = changedDemoFile({ weights: { ...weights, plates: { rear_kg: 600 } } });
  const { out } = await runCommand("weigh", path);
  // 606.8 kg on the rear axle in the table above, rounded up.
  expect(out).toMatch(/^.*\n\n! With 29 kWh, empty: rear axle 7 kg over\. /);
  const { overPlate } = JSON.parse((await runCommand("weigh", path, "--json")).out);
  expect(overPlate).toHaveLength(1);
});

it("says before all else that a plate is less than the car carries without any pack", async () => {
  // 510 kg less 130 kg of engine at 50 mm of 2300: 382.8 kg on the front axle.
  const path = changedDemoFile({ weights: { ...weights, plates: { front_kg: 300 } } });
  const { out } = await runCommand("weigh", path);
  expect(out.replace(/\s+/g, " ")).toMatch(
    /^[^!]*! Without any pack the car is already 83 kg over its limit \(front axle\): check the plate\. ! With 8 kWh/,
  );
});

describe("bad input ends in 2 with a sentence", () => {
  it.each([
    ["no weights", { weights: undefined }, /weights: found none: wheelbase, axles as weighed/],
    [
      "axles that do not carry the car",
      { weights: { ...weights, weighed: { front_kg: 510, rear_kg: 300 } } },
      /weights\.weighed: found 510 \+ 300 = 810 kg on the axles of a car of 952\.54 kg, within 2 % wanted/,
    ],
    [
      "an item beyond the bumpers",
      { weights: { ...weights, out: [{ name: "tank", mass_kg: 20, place_mm: 9000 }] } },
      /weights\.out\.0\.place_mm: found 9000 mm, beyond the bumpers: -1500 to 4800 mm allowed/,
    ],
    [
      "a driver beyond them",
      { weights: { ...weights, driver: { name: "she", mass_kg: 70, place_mm: -1600 } } },
      /weights\.driver\.place_mm: found -1600 mm, beyond the bumpers: -1500 to 4800 mm allowed/,
    ],
    [
      "a ball before the rear axle",
      { weights: { ...weights, ball: { mass_kg: 50, place_mm: 1000 } } },
      /weights\.ball\.place_mm: found 1000 mm, behind the rear axle wanted: above 2300 to 4800 mm/,
    ],
    [
      // 700 kg at 50 mm of 2300: 15.2 kg of it on the rear axle.
      "more taken out than an axle carried",
      { weights: { ...weights, out: [{ name: "engine", mass_kg: 700, place_mm: 50 }] } },
      /weights\.out: found parts that take 684\.78 kg off the front axle, less than the 510 kg it carried wanted/,
    ],
    [
      "boxes that hold half of the pack",
      { weights: { ...weights, boxes: [weights.boxes[0]] } },
      /weights\.boxes: found shares that sum to 0\.5, 1 wanted/,
    ],
    [
      "an item of no mass",
      { weights: { ...weights, in: [{ name: "air", mass_kg: 0, place_mm: 0 }] } },
      /weights\.in\.0\.mass_kg: found 0 kg/,
    ],
    [
      "a list that is none",
      { weights: { ...weights, out: {} } },
      /weights\.out: found a group of values, a list wanted/,
    ],
  ])("%s", async (_, changes, message) => {
    const { code, out, err } = await runCommand("weigh", changedDemoFile(changes));
    expect({ code, out }).toEqual({ code: 2, out: "" });
    expect(err).toMatch(message);
  });
});

it("says how many modules go into boxes whose room is typed, for a program by how they stand", async () => {
  const [front, boot] = weights.boxes;
  const room = { length_mm: 560, width_mm: 500, height_mm: 280 };
  const path = changedDemoFile({ weights: { ...weights, boxes: [{ ...front, ...room }, boot] } });
  const { out } = await runCommand("weigh", path);
  // 260 x 150 x 75 mm: three layers of two by three, 540 / 270 and 490 / 160.
  expect(out).toMatch(/“front box”:\s18\sfit\supright,/);
  const { modulesThatFit } = JSON.parse((await runCommand("weigh", path, "--json")).out);
  expect(modulesThatFit).toMatchObject([{ box: "front box", counts: { upright: 18 }, most: 18 }]);
});
