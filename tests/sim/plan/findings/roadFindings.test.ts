import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { roadFindings } from "../../../../sim/plan/findings/roadFindings.ts";
import { fromRestToRest } from "../../../../sim/trace/restToRest.ts";
import { traceOf } from "../../../support/bareCar.ts";

const sentences = (rows: [number, number][]) =>
  roadFindings(fromRestToRest(traceOf(rows)))
    .filter(({ kind }) => kind === "restAdded")
    .map(({ sentence }) => messageIn(sentence, "metric"));

it("reports the stretches put before and after a road in motion", () => {
  expect(
    sentences(
      [
        [0, 90],
        [60, 90],
        [90, 36],
      ].map(([s, kmh]) => [s, kmh]),
    ),
  ).toEqual([
    "This road begins at 90 km/h and ends at 36 km/h: 0.31 km from rest is added before it and 0.05 km to rest is added after it.",
  ]);
});

it("reports one end where the other is at rest", () => {
  expect(
    sentences([
      [0, 90],
      [60, 0],
    ]),
  ).toEqual(["This road begins at 90 km/h: 0.31 km from rest is added before it."]);
  expect(
    sentences([
      [0, 0],
      [60, 90],
    ]),
  ).toEqual(["This road ends at 90 km/h: 0.31 km to rest is added after it."]);
});

it("has no word for a road from rest to rest, or from a crawl", () => {
  expect(
    sentences([
      [0, 0],
      [60, 90],
      [120, 0],
    ]),
  ).toEqual([]);
  expect(
    sentences([
      [0, 4],
      [60, 90],
      [120, 4],
    ]),
  ).toEqual([]);
});

it("has a word for either end from 5 km/h on", () => {
  const from = (start_kmh: number, end_kmh: number) =>
    sentences([
      [0, start_kmh],
      [60, 90],
      [120, end_kmh],
    ]);
  expect(from(4.9, 4.9)).toEqual([]);
  expect(from(5.1, 4.9)[0]).toMatch(/^This road begins at 5\.1 km\/h: .* from rest is added before it\.$/);
  expect(from(4.9, 5.1)[0]).toMatch(/^This road ends at 5\.1 km\/h: /);
});

const road = (rows: [number, number][]) =>
  roadFindings(traceOf(rows)).map(({ sentence, weight }) => [weight, messageIn(sentence, "metric")]);

it("reports a road sampled thinly, with what that likely costs", () => {
  expect(road(Array.from({ length: 13 }, (_, i) => [10 * i, i === 0 || i === 12 ? 0 : 50]))).toEqual([
    [
      "warning",
      "This road was recorded about every 10 s only: what the car did in between is unknown, and its energy is likely 1 to 7.8 % low.",
    ],
  ]);
});

it("reports the share of a road that is thin, as a note where it costs little", () => {
  const rows: [number, number][] = [
    [0, 0],
    [5, 50],
  ];
  for (let s = 6; s <= 25; s++) rows.push([s, s === 25 ? 0 : 50]);
  expect(road(rows)).toEqual([
    [
      "note",
      "20 % of this road was recorded about every 5 s only: what the car did in between is unknown, and its energy is likely less than 1 % low.",
    ],
  ]);
});

const spreadOf = (low: number, high: number) =>
  roadFindings({
    ...traceOf([
      [0, 0],
      [60, 90],
      [120, 0],
    ]),
    spread: { energy_ratio: { low, high }, distance_ratio: { low: 1, high: 1 }, climb_m: { low: 0, high: 0 } },
  })
    .filter(({ kind }) => kind === "roadSpread")
    .map(({ weight, sentence }) => [weight, messageIn(sentence, "metric")]);

it("says how well the energy of a road from a thin log is known, and nothing of a log that knows it well", () => {
  const words = "The log behind this road was sampled so thinly, or scatters so much, that its energy is known to";
  expect(spreadOf(0.88, 1.12)).toEqual([["warning", `${words} ±12 % only; the kilometres are given with that.`]]);
  expect(spreadOf(0.96, 1.07)).toEqual([["note", `${words} -4 to +7 % only; the kilometres are given with that.`]]);
  expect(spreadOf(0.97, 1.03)).toEqual([]);
  expect(spreadOf(1.02, 1.07)).toEqual([["note", `${words} -0 to +7 % only; the kilometres are given with that.`]]);
  expect(spreadOf(0.951, 1.049)).toEqual([]);
  expect(spreadOf(0.949, 1)).toEqual([["note", `${words} -5 to +0 % only; the kilometres are given with that.`]]);
  expect([0.91, 0.89].map((low) => spreadOf(low, 1)[0][0])).toEqual(["note", "warning"]);
});
