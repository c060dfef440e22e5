import { expect, it } from "vitest";
import { message } from "../../../shared/quantity/message.ts";
import type { Candidate, MotorSurface } from "../../../sim/index.ts";
import operatingPoints from "../../../web/sections/operatingPoints.ts";
import { demoJob } from "../../support/demoJob.ts";
import { sectionValues } from "../../support/sectionValues.ts";

const { runs } = sectionValues(demoJob());
const [run] = runs.candidates;
const never = { grip: 0, driveline: 0, motor: 0, controller: 0, pack: 0, heat: 0 };
const surface = {} as MotorSurface; // drawn, not spoken of

/** What is said of a drive of 10 km in which the motor gave at most 96 Nm and 31 kW and lost 250 Wh. */
function told(changes: Partial<Candidate>) {
  const driven: Candidate = {
    ...run,
    name: "one",
    distance_km: 10,
    ledger_Wh: { ...run.ledger_Wh, motor: 250 },
    peak: { ...run.peak, motor_Nm: 96, motor_kW: 31 },
    limited_s: never,
    findings: [],
    ...changes,
  };
  const result = operatingPoints.compute({
    runs: { ...runs, candidates: [driven] },
    motorSurface: surface,
    packIndex: 0,
    units: "metric",
  });
  return { sentence: operatingPoints.sentence(result), summary: operatingPoints.summary?.(result) };
}
const finding = (kind: string, words: string): Candidate["findings"][number] => ({
  kind,
  weight: "warning",
  sentence: message`${words}`,
});

it("says what the motor gives at most and loses over distance, and that nothing holds it back", () => {
  // 250 Wh over 10 km.
  expect(told({})).toEqual({
    sentence:
      "With one the motor gives at most 96 Nm and 31 kW; motor and controller lose 25 Wh/km. Nothing holds it back.",
    summary: "31 kW and 96 Nm at most; never at a limit",
  });
});

it("names each limit with how long it holds the car back, and adds them up", () => {
  const { sentence, summary } = told({ limited_s: { ...never, driveline: 12.4, pack: 0.3, heat: 30 } });
  expect(sentence).toMatch(
    / It is held at a limit by the limit of the gearbox and shafts for 12 s, the pack for a moment, the heat of motor or pack for 30 s\.$/,
  );
  expect(summary).toBe("31 kW and 96 Nm at most; at a limit for 42 s");
});

it("says of a limit of less than half a second that there was one", () => {
  expect(told({ limited_s: { ...never, motor: 0.2 } }).summary).toBe(
    "31 kW and 96 Nm at most; at a limit for a moment",
  );
});

it("says what refused the braking, and of a car that does not start nothing else", () => {
  const refused = finding("regenRefusedFull", "A full pack refused 20 Wh.");
  expect(told({ findings: [refused] }).sentence).toMatch(/ lose 25 Wh\/km\. A full pack refused 20 Wh\.$/);
  const stands = finding("doesNotStart", "It does not start.");
  expect(told({ findings: [refused, stands] }).sentence).toBe("It does not start.");
});
