import { expect, it } from "vitest";
import { withPath } from "../../../../shared/job/path.ts";
import { datasheetForm } from "../../../../web/forms/motor/datasheetForm.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { formPage } from "../../../support/formPage.ts";
import { figures } from "./datasheetByHand.ts";

function page(units: "metric" | "british" = "metric") {
  const shown = formPage(withPath(demoJob(), "units", units), datasheetForm);
  const fill = (texts: Readonly<Record<string, string>>) => {
    for (const [key, text] of Object.entries(texts)) shown.type(`#sheet-${key}`, text);
  };
  return { ...shown, fill };
}

it("says what is still wanted once anything is typed, and what is wrong before that", () => {
  const { fill, said } = page();
  expect(said("[role=status]")).toBe("");
  fill({ peakTorque_Nm: "120", peakPower_kW: "38", topSpeed_rpm: "8000" });
  expect(said("[role=status]")).toBe("Still wanted: continuous power, rated voltage.");
  fill({ rated_V: "many" });
  expect(said("[role=status]")).toBe("1 wrong above. Still wanted: continuous power.");
});

it("has one empty row for a point more, and six at most", () => {
  const { fill, texts } = page();
  expect(texts("legend")).toEqual(["Efficiency point 1"]);
  fill({ "points-0-speed_rpm": "3000" });
  expect(texts("legend")).toHaveLength(2);
  for (let row = 1; row < 6; row++) fill({ [`points-${row}-torque_Nm`]: "60" });
  expect(texts("legend")).toHaveLength(6);
});

it("shows how the formula meets each point, and where full torque ends", () => {
  const { fill, texts, said } = page();
  fill({ ...figures, "points-0-speed_rpm": "3000", "points-0-torque_Nm": "60", "points-0-efficiency_frac": "89" });
  // 38 kW / 120 Nm is 316.7 rad/s, which is 3024 rpm.
  expect(said(".offer p")).toContain("Full torque up to 3020 rpm");
  const [sheet, law, off, sheet_W] = texts("tbody td");
  expect(sheet).toBe("89.0 %");
  // 60 Nm at 314.16 rad/s is 18,850 W; at 89 % its loss is 18,850 (1/0.89 - 1) = 2330 W.
  expect(sheet_W).toBe("2330 W");
  // Each is rounded to a tenth by itself.
  expect(Math.abs(Number.parseFloat(law) - 89 - Number.parseFloat(off))).toBeLessThan(0.11);
});

it("takes the figures when that is asked for, and clears its fields", () => {
  const { fill, press, job, at } = page();
  fill(figures);
  expect(job()).toEqual(demoJob());
  press(/^Take these figures/);
  expect(job().motor.envelope).toEqual({ kind: "peak", torque_Nm: 120, power_kW: 38 });
  expect(job().origins["motor.reference_V"]?.typed).toBe("108");
  expect(at("#sheet-rated_V").value).toBe("");
});

it("keeps what was typed only where it means the same in the units of the job file", () => {
  const { fill, press, job } = page("british");
  // Bare numbers are in the reader's own units: 88.5 lb ft, 51 bhp.
  fill({ ...figures, peakTorque_Nm: "88.5", peakPower_kW: "51 bhp", continuousPower_kW: "20" });
  press(/^Take these figures/);
  const { origins, motor } = job();
  expect(motor.envelope).toMatchObject({ torque_Nm: expect.closeTo(88.5 * 1.3558179, 4) });
  expect(origins["motor.envelope.torque_Nm"]?.typed).toBeUndefined();
  expect(origins["motor.envelope.power_kW"]?.typed).toBe("51 bhp");
});
