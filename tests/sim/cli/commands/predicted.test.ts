import { readFileSync, writeFileSync } from "node:fs";
import { expect, it } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

it("freezes what is predicted now into the file, and leaves all else in it as it was", async () => {
  const file = changedDemoFile();
  const before = JSON.parse(readFileSync(file, "utf8"));
  expect((await runCommand("predicted", file)).out).toMatch(/Nothing is frozen yet; --freeze keeps what is predicted/);
  const { code, out, err } = await runCommand("predicted", file, "--freeze", "--note", "the quote");
  expect(code).toBe(0);
  expect(err).toMatch(/^frozen in /m);
  expect(out.replace(/\s+/g, " ")).toMatch(
    /As predicted on \d+ \w+ \d{4} by version \d+\.\d+\.\d+\. Nothing that it depends on has changed since\./,
  );
  expect(out).toMatch(/^For: the quote$/m);
  const { predictions, ...after } = JSON.parse(readFileSync(file, "utf8"));
  expect(after).toEqual(before);
  expect(predictions).toHaveLength(1);
  expect(predictions[0].packs[1]).toMatchObject({ name: "13 kWh", verdict: expect.stringMatching(/enough|only just/) });
});

it("shows a later change beside what was frozen, never over it", async () => {
  const file = changedDemoFile();
  await runCommand("predicted", file, "--freeze");
  const { predictions } = JSON.parse(readFileSync(file, "utf8"));
  const job = JSON.parse(readFileSync(file, "utf8"));
  writeFileSync(file, JSON.stringify({ ...job, vehicle: { ...job.vehicle, load_kg: 400 } }));
  const { out } = await runCommand("predicted", file, "--json");
  const [found] = JSON.parse(out).predictions;
  expect(found).toMatchObject({ isUnchanged: false, changed: ["vehicle.load_kg"], roadIs: "same", programIs: "same" });
  expect(found.packs[1].predicted.battery_Whpkm).toBeCloseTo(predictions[0].packs[1].battery_Whpkm, 6);
  expect(found.packs[1].now.battery_Whpkm).toBeGreaterThan(found.packs[1].predicted.battery_Whpkm);
  expect((await runCommand("predicted", file)).out).toMatch(/^Changed since: vehicle\.load_kg$/m);
  await runCommand("predicted", file, "--freeze");
  expect(JSON.parse(readFileSync(file, "utf8")).predictions[0]).toEqual(predictions[0]);
});

it("names on the client sheet which figures it shows", async () => {
  const file = changedDemoFile();
  const sheet = async () => {
    expect((await runCommand("sheet", file, "--out", `${file}.html`, "--force")).code).toBe(0);
    return readFileSync(`${file}.html`, "utf8");
  };
  expect(await sheet()).toContain("Figures of today, not frozen as a prediction.");
  await runCommand("predicted", file, "--freeze");
  expect(await sheet()).toMatch(/Figures as predicted on \d+ \w+ \d{4} \(version \d+\.\d+\.\d+\)\./);
  const job = JSON.parse(readFileSync(file, "utf8"));
  writeFileSync(file, JSON.stringify({ ...job, usualDay_km: 44 }));
  expect(await sheet()).toMatch(/Figures of today; as predicted on \d+ \w+ \d{4}: 13 kWh a range of \d+ to \d+ km\./);
  const [frozen] = job.predictions;
  writeFileSync(file, JSON.stringify({ ...job, predictions: [{ ...frozen, program: "9.0.0" }] }));
  expect(await sheet()).toMatch(/by version 9\.0\.0, which is newer than this program/);
});

it.each([
  [["--note", "the quote"], /--note: found a note and nothing to freeze, --freeze is wanted with it/],
  [["--freeze", "--note", "x".repeat(201)], /--note: found 201 letters, at most 200 allowed/],
])("refuses %s with a sentence", async (words, message) => {
  const { code, err } = await runCommand("predicted", changedDemoFile(), ...words);
  expect(code).toBe(2);
  expect(err).toMatch(message);
});
