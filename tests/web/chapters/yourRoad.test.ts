import { expect, it } from "vitest";
import yourRoad from "../../../web/chapters/yourRoad.ts";
import { demoJob } from "../../support/demoJob.ts";
import { drawing } from "../../support/drawing.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const job = demoJob(); // its usual day is 38 km
const { runs, road: driven } = sectionValues(job);
const inputs = { use: job, packIndex: 0, units: "metric" } as const;

/** The chapter for a road of 9.5 km in 25 minutes that climbs so much, by a profile of these heights at 0, 5 and 9.5 km. */
function told(climb_m: number, elevation_m?: readonly number[]) {
  const trace = { ...runs.trace, title: "Lane", distance_km: 9.5, duration_s: 1500, max_kmh: 62, climb_m };
  const { profile: _profile, ...road } = driven;
  const result = yourRoad.compute({
    ...inputs,
    road: elevation_m
      ? {
          ...road,
          profile: { distance_m: Float64Array.of(0, 5000, 9500), elevation_m: Float64Array.from(elevation_m) },
        }
      : road,
    runs: { ...runs, trace },
  });
  return { sentence: yourRoad.sentence(result), figure: yourRoad.plot(result, drawing(640)) };
}

it("says how long, how fast and how often a day the road is driven; less than 5 m of climb is level", () => {
  // 38 / 9.5 = 4 rounds; 1500 s are 25 minutes.
  const level = "Lane is 9.5 km in 25 minutes, up to 62 km/h, and is level; a usual day of 38 km is four rounds of it.";
  expect(told(4.9, [0, 4.9, 0]).sentence).toBe(level);
  expect(told(5, [0, 5, 0]).sentence).toMatch(/, and climbs 5 m; /);
});

it("says how steep the steepest part is and draws the heights", () => {
  // 500 m up along 5000 m of road: a sine of 0.1, rise over run 0.1005, 1 in 10.
  const { sentence, figure } = told(500, [0, 500, 200]);
  expect(sentence).toMatch(/ The steepest part is 1 in 10\.$/);
  expect(figure?.caption).toMatch(/^How steep is the road\?/);
});

it("draws the speeds of a road that is level or has no heights, and nothing where no step was kept", () => {
  expect(told(0, [7, 7, 7]).figure?.caption).toMatch(/^How fast is the road driven\?/);
  const { sentence, figure } = told(40);
  expect(sentence).toMatch(/, and climbs 40 m; [^.]*\.$/);
  expect(figure?.caption).toMatch(/^How fast is the road driven\?/);
  const candidates = runs.candidates.map(({ channels: _channels, ...run }) => run);
  const trace = { ...runs.trace, climb_m: 0 };
  const bare = yourRoad.compute({ ...inputs, road: driven, runs: { ...runs, candidates, trace } });
  expect(yourRoad.plot(bare, drawing(640))).toBeUndefined();
});
