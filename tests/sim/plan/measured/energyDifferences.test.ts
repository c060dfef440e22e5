import { describe, expect, it } from "vitest";
import { driveAsMeasured } from "../../../../sim/plan/measured/driveAsMeasured.ts";
import { differencesOf, slopesAt } from "../../../../sim/plan/measured/energyDifferences.ts";
import { observe, predictedEnergy_J } from "../../../../sim/plan/measured/observations.ts";
import { parametersOf } from "../../../../sim/plan/measured/parameters.ts";
import { segmentsOf } from "../../../../sim/plan/measured/segments.ts";
import { prepare } from "../../../../sim/step/prepare.ts";
import { inventedJob } from "../../../support/inventedJob.ts";
import { samplesOf } from "./logsByHand.ts";

const job = inventedJob();
const model = prepare(job, job.packs[1]);
const speed_mps = Float64Array.from({ length: 121 }, (_, i) => Math.max(0, Math.min(12, i - 10, 100 - i)));
const trace = { id: "hop", title: "hop", time_s: Float64Array.from(speed_mps, (_, i) => i), speed_mps };
const parts = [{ start_s: 0, trace }];
const drive = driveAsMeasured(model, parts, 0.9);
const rows = drive.count - 1;
const samples = samplesOf(Array.from(drive.voltage_V.subarray(0, rows)), Array.from(drive.current_A.subarray(0, rows)));
const segments = segmentsOf(drive);
const observations = observe(drive, segments, samples, model, true);
const differences = differencesOf({ model, parts, startSoc_frac: 0.9, samples, observations });
const parameters = parametersOf(job, model);
const starts = parameters.map(({ start }) => start);
const n = segments.length;
const predicted_J = predictedEnergy_J(drive, samples, observations);

describe("differences of a car logged as it is in its job", () => {
  it("are nought in every segment", () => {
    const into = new Float64Array(n).fill(7);
    differences(parameters, starts, into);
    for (const each of into) expect(each).toBeCloseTo(0, 6);
  });
  it("are a share of the energy where the ammeter shows so much more, and volts times time for each ampere of nothing", () => {
    const meter = parameters.filter(({ id }) => id === "gain" || id === "zero");
    const into = new Float64Array(n);
    differences(meter, [1.1, 2], into);
    const shares_J = predicted_J.map((each) => -0.1 * each);
    const volts_Vs = segments.map(({ from, to }) =>
      drive.voltage_V.slice(from, Math.min(to, rows)).reduce((sum, each) => sum + each, 0),
    );
    into.forEach((each, s) => {
      expect(each).toBeCloseTo(shares_J[s] - 2 * volts_Vs[s], 3);
    });
  });
});

it("has slopes by each value with all the others as they are: the ammeter's exactly, and less energy for more rolling", () => {
  const slopes_J = slopesAt(differences, parameters, starts, n);
  const of = (id: string) => slopes_J[parameters.findIndex((each) => each.id === id)];
  of("gain").forEach((slope, s) => {
    expect(slope).toBeCloseTo(-predicted_J[s], 3);
  });
  const cruising = segments.findIndex(({ doing }) => doing === "cruising");
  expect(cruising).toBeGreaterThanOrEqual(0);
  expect(of("rolling")[cruising]).toBeLessThan(0);
});
