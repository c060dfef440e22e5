import { describe, expect, it } from "vitest";
import type { Job } from "../../../../shared/job/job.ts";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { Climb } from "../../../../sim/plan/hills/climb.ts";
import type { GripRow } from "../../../../sim/plan/hills/gripOnHill.ts";
import { hillWords } from "../../../../sim/plan/hills/hillWords.ts";
import type { HillRow, HillVerdict } from "../../../../sim/plan/hills/judgeHill.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();
const climb: Climb = { speed_mps: 10, duration_s: 240, shaft_kW: 18.34, energy_kWh: 1.2 };
/** A gear that has so much of the 100 Nm it needs to spare. */
const row = (gear: string, spare_frac: number, changes: Partial<HillRow> = {}): HillRow => ({
  gear,
  needed_Nm: 100,
  available_Nm: 100 * (1 + spare_frac),
  limit: "motor",
  spare_frac,
  steepest_ratio: 0.2,
  climb,
  ...changes,
});
const grip = (drivenAxle: GripRow["drivenAxle"], dry: number, wet: number, loose: number): GripRow => ({
  drivenAxle,
  needed_coeff: drivenAxle === "both" ? 0.25 : 0.45,
  reserve_frac: { dry, wet, loose },
});
const rear = grip("rear", 0.8, 0.3, 0.25);

function words(changes: Partial<HillVerdict>, of: Job = job): string[] {
  const verdict: HillVerdict = { rows: [row("3", 0.5)], grip: [rear], drivenAxle: "rear", mass_kg: 1000, ...changes };
  return hillWords(of, { grade_ratio: 0.15, length_m: 2400 }, verdict).map((said) => messageIn(said, "metric"));
}
const motorWith = (changes: Partial<Job["motor"]>): Job => ({ ...job, motor: { ...job.motor, ...changes } });

describe("whether the car starts", () => {
  it("names the gears that do it with a fifth to spare, and those that do not do it at all", () => {
    const rows = [row("1", 1), row("2", 0.2), row("3", 0.1), row("4", -0.1), row("5", -0.3)];
    expect(words({ rows })[0]).toBe(
      "The car starts on 15 % in 1 and 2 with a fifth of torque to spare: 2 needs 100 Nm, has 120 Nm. It does not start in 4 and 5.",
    );
    expect(words({ rows: [row("1", 1), row("2", 0.9), row("3", 0.8)] })[0]).toContain(" in 1, 2 and 3 with");
  });
  it("says that it only just starts where none has a fifth to spare, in the tallest gear that does", () => {
    const rows = [row("1", 0.19), row("2", 0), row("4", -0.1)];
    expect(words({ rows })[0]).toBe(
      "The car only just starts on 15 % in 2, which needs 100 Nm, has 100 Nm; a fifth to spare is wanted. It does not start in 4.",
    );
  });
  it("names the gear that comes nearest where none starts", () => {
    expect(words({ rows: [row("1", -0.3), row("2", -0.1), row("3", -0.2)] })[0]).toBe(
      "The car does not start on 15 % in any gear: at best in 2, which needs 100 Nm, has 90 Nm, as the motor gives no more.",
    );
    const slipping = row("3", -0.3, { limit: "grip" });
    expect(words({ rows: [slipping] })[0]).toMatch(/has 70 Nm, as the driven tyres have no more grip\.$/);
  });
  it("says first that it does not in the gear that is used, where others do", () => {
    const rows = [row("2", 0.5), row("3", -0.3, { limit: "controller" })];
    expect(words({ rows })[0]).toBe(
      "In 3, the gear used, the car does not start on 15 %: it needs 100 Nm, has 70 Nm, as the controller lets no more through. It starts on 15 % in 2 with a fifth of torque to spare: 2 needs 100 Nm, has 150 Nm. It does not start in 3.",
    );
    const driveline = { ...job.driveline, shifting: { kind: "bySpeed" as const, gears: ["3", "4"], up_kmh: [40] } };
    expect(words({ rows: [row("2", 0.1), row("3", -0.3), row("4", -0.5)] }, { ...job, driveline })[0]).toMatch(
      /^In 3, the lowest gear used, the car does not start .* It only just starts on 15 % in 2,/,
    );
  });
  it("speaks of low range only where high range has too little to spare", () => {
    const low = row("1", 2, { range: "low" });
    expect(words({ rows: [row("1", 0.2, { range: "high" }), low] })[0]).not.toContain("low range");
    expect(words({ rows: [row("1", 0.19, { range: "high" }), low] })[0]).toContain("in 1, low range with a fifth");
    const two = [row("1", 0.3, { range: "high" }), row("2", 0.1, { range: "high" }), low];
    expect(words({ rows: two })[0]).not.toContain("low range");
  });
});

it("has the slope in three figures wherever it is told", () => {
  const verdict: HillVerdict = { rows: [row("3", 0.5)], grip: [rear], drivenAxle: "rear", mass_kg: 1000 };
  const said = hillWords(job, { grade_ratio: 0.151_234, length_m: 2400 }, verdict);
  for (const sentence of said) expect(messageIn(sentence, "metric")).toContain(" 15.1 %");
});

describe("how it climbs", () => {
  it("tells length, slope, speed, time and power, in the gear that is used", () => {
    const odd = { ...climb, duration_s: 243.7, shaft_kW: 12 };
    expect(words({ rows: [row("1", 1), row("3", 0.5, { climb: odd })] })[1]).toBe(
      "2.4 km at 15 % in 3 at 36 km/h is 240 s at 12 kW.",
    );
  });
  it("is in the range of the transfer box that is used, the high one where there is no box", () => {
    const rows = [row("3", 1, { range: "low" }), row("3", 0.5, { range: "high" })];
    expect(words({ rows })[1]).toContain(" in 3 at 36 km/h");
    const transferBox = {
      high_ratio: 1,
      highEfficiency_frac: 1,
      low_ratio: 2,
      lowEfficiency_frac: 1,
      range: "low" as const,
      isFrontEngaged: false,
      hubs: "free" as const,
      frontShaftDrag_Nm: 0,
      frontEfficiency_frac: 1,
    };
    const inLow = { ...job, driveline: { ...job.driveline, transferBox } };
    expect(words({ rows }, inLow)[1]).toContain(" in 3, low range at 36 km/h");
  });
  it("is in the first of the gears that are changed between", () => {
    const shifting = { kind: "bySpeed" as const, gears: ["3", "4"], up_kmh: [60] };
    const changed = { ...job, driveline: { ...job.driveline, shifting } };
    expect(words({ rows: [row("1", 3), row("3", 0.5), row("4", 0.3)] }, changed)[1]).toContain(" in 3 at");
  });
  it("is not told where no row is of a gear that is used", () => {
    expect(words({ rows: [row("1", 1)] })).toHaveLength(2);
  });
  it("says where it falls behind", () => {
    const rows = [row("3", 0.5, { climb: { ...climb, slowsAfter_m: 800 } })];
    expect(words({ rows })[1]).toBe("In 3 it does not hold 36 km/h on 15 %: it falls behind after 800 m.");
    const heat = { capacity_kJpK: 20, cooling_WpK: 10, derateFrom_degC: 130, derateTo_degC: 155 };
    const hot = [row("3", 0.5, { climb: { ...climb, slowsAfter_m: 800, motorTop_degC: 131 } })];
    expect(words({ rows: hot }, motorWith({ heat }))[1]).toMatch(
      /after 800 m\. The motor is at about 131 °C at the top, and/,
    );
  });
  it.each([
    ["holds", { continuous_kW: 20, peak_kW: 30, peak_s: 90 }, "; continuous is 20 kW: within it."],
    [
      "holdsShort",
      { continuous_kW: 10, peak_kW: 30, peak_s: 300 },
      "; continuous is 10 kW, and 30 kW for 300 s: it holds, and is hot at the top.",
    ],
    ["tooLong", { continuous_kW: 10, peak_kW: 30, peak_s: 90 }, "; continuous is 10 kW, and 30 kW for 90 s: too long."],
    [
      "tooMuch",
      { continuous_kW: 10, peak_kW: 15, peak_s: 90 },
      "; continuous is 10 kW, and 15 kW for 90 s: more than its maker rates it for.",
    ],
    ["tooMuch", { continuous_kW: 10 }, "; continuous is 10 kW: more than its maker rates it for."],
  ] as const)("says that the maker's rating %s", (rating, given, said) => {
    const rows = [row("3", 0.5, { climb: { ...climb, rating } })];
    expect(words({ rows }, motorWith({ rating: given }))[1]).toBe(
      `2.4 km at 15 % in 3 at 36 km/h is 240 s at 18.3 kW${said}`,
    );
  });
  it("says how warm the motor is at the top, and whether it gives less by then", () => {
    const heat = { capacity_kJpK: 20, cooling_WpK: 10, derateFrom_degC: 130, derateTo_degC: 155 };
    const at = (motorTop_degC: number) =>
      words({ rows: [row("3", 0.5, { climb: { ...climb, motorTop_degC } })] }, motorWith({ heat }))[1];
    expect(at(96.4)).toContain(". The motor is at about 96 °C at the top; it gives less from 130 °C on.");
    expect(at(130)).toContain(". The motor is at about 130 °C at the top, and gives less from 130 °C on.");
    expect(words({}, motorWith({ heat }))[1]).not.toContain("The motor is");
  });
});

describe("whether the tyres hold", () => {
  const needs = "Driven by the rear axle, the tyres need a friction of 0.45 to start on 15 %";
  it("names the grounds on which they slip, and those on which little is left", () => {
    expect(words({ grip: [grip("rear", 0.5, 0.19, -0.2)] })[2]).toBe(
      `${needs}: they slip when it is loose, and there is little in reserve when it is wet.`,
    );
    expect(words({ grip: [grip("rear", 0, -0.01, -0.2)] })[2]).toBe(
      `${needs}: they slip when it is wet or loose, and there is little in reserve when it is dry.`,
    );
  });
  it("says that all grounds give more where each leaves a fifth", () => {
    expect(words({ grip: [grip("rear", 0.8, 0.3, 0.2)] })[2]).toBe(`${needs}: dry, wet and loose ground give more.`);
    expect(words({ grip: [grip("rear", 0.8, 0.3, 0.1)] })[2]).toBe(
      `${needs}: there is little in reserve when it is loose.`,
    );
  });
  it("says that both axles would do where they hold on a ground on which one slips", () => {
    const slips = grip("rear", 0.5, -0.1, -0.3);
    expect(words({ grip: [slips, grip("both", 0.9, 0, -0.1)] })[2]).toMatch(
      /loose\. With both axles driven 0\.25 would do\.$/,
    );
    expect(words({ grip: [slips, grip("both", 0.9, -0.01, -0.1)] })[2]).not.toContain("both axles");
  });
  it("does not name them where both are driven already", () => {
    const slips = grip("both", 0.5, 0.4, -0.1);
    expect(words({ grip: [slips], drivenAxle: "both" })[2]).toBe(
      "Driven by both axles, the tyres need a friction of 0.25 to start on 15 %: they slip when it is loose.",
    );
  });
  it("says what is wanted where nobody knows where the weight sits", () => {
    expect(words({ grip: [] })[2]).toMatch(/^Whether the tyres hold is not known: wheelbase, height/);
  });
});
