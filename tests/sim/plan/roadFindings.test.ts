import { expect, it } from "vitest";
import { saidIn } from "../../../shared/quantity/said.ts";
import { roadFindings } from "../../../sim/plan/roadFindings.ts";
import { fromRestToRest } from "../../../sim/trace/restToRest.ts";
import { traceOf } from "../../support/bareCar.ts";

const sentences = (rows: [number, number][]) =>
  roadFindings(fromRestToRest(traceOf(rows))).map(({ sentence }) => saidIn(sentence, "metric"));

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
    "This road begins at 90 km/h and ends at 36 km/h: 0.31 km from rest before it and 0.05 km to rest after it added.",
  ]);
});

it("reports one end where the other is at rest", () => {
  expect(
    sentences([
      [0, 90],
      [60, 0],
    ]),
  ).toEqual(["This road begins at 90 km/h: 0.31 km from rest before it added."]);
  expect(
    sentences([
      [0, 0],
      [60, 90],
    ]),
  ).toEqual(["This road ends at 90 km/h: 0.31 km to rest after it added."]);
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
