import { describe, expect, it } from "vitest";
import { accessories } from "../../../../shared/parts/accessories.ts";
import { bodies } from "../../../../shared/parts/bodies.ts";
import { surfaces } from "../../../../shared/parts/surfaces.ts";
import { tyres } from "../../../../shared/parts/tyres.ts";
import { createJobEditor, type EditorState } from "../../../../web/editing/jobEditor.ts";
import { replacedBy, takeIntoList, takePart } from "../../../../web/forms/parts/takePart.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { groups, partOf } from "./partsByPlace.ts";

const state = (): EditorState => ({ job: demoJob(), drafts: {} });

const crossPly = partOf(tyres, "period-cross-ply");
const measuredRadius = "vehicle.tyres.loadedRadius_mm";

describe("a generic part taken into the job", () => {
  it.each(groups.flatMap(([path, parts]) => parts.map((part) => [path, part.title, part] as const)))(
    "fills %s with %s, is a job still, and can be taken back",
    (path, _, part) => {
      const jobEditor = createJobEditor(state());
      const before = jobEditor.job.value;
      expect(jobEditor.change(part.title, (at) => takePart(at, path, part))).toEqual([]);
      expect(jobEditor.job.value).not.toBe(before);
      expect(jobEditor.undo()).toBe(part.title);
      expect(jobEditor.job.value).toBe(before);
    },
  );

  it("says of each value that it is a usual one, with the part's band and words", () => {
    const { job } = takePart(state(), "vehicle.tyres", crossPly);
    expect(job.vehicle.tyres).toEqual(crossPly.data);
    const origin = job.origins["vehicle.tyres.rolling_coeff"];
    expect(origin.from).toBe("usual");
    // 0.0169 between 0.015 and 0.020: the wider half is 0.0031, 18.3 % of it
    expect(origin.plusMinus_frac).toBeCloseTo(0.183, 3);
    expect(origin.note).toContain("published law (Wong2008, ch. 1)");
    expect(origin).not.toHaveProperty("typed");
  });

  it("tells of measured values that differ, and not of usual or equal ones", () => {
    expect(replacedBy(state(), "vehicle.tyres", crossPly)).toEqual([
      { path: measuredRadius, from: "measured", canStay: true },
      { path: "vehicle.tyres.rolling_coeff", from: "measured", canStay: true },
      { path: "vehicle.tyres.rollingRise_coeff", from: "measured", canStay: true },
    ]);
    const ofRadial = replacedBy(state(), "vehicle.tyres", partOf(tyres, "period-radial")).map(({ path }) => path);
    expect(ofRadial).not.toContain(measuredRadius);
  });

  it("keeps measured values where asked, with where they come from", () => {
    const before = state();
    const { job } = takePart(before, "vehicle.tyres", crossPly, { kept: [measuredRadius] });
    expect(job.vehicle.tyres.loadedRadius_mm).toBe(284);
    expect(job.origins[measuredRadius]).toEqual(before.job.origins[measuredRadius]);
    expect(job.vehicle.tyres.rolling_coeff).toBe(0.0169);
  });

  it("says that a measured coast-down has no place in a body", () => {
    const before = state();
    const roadLoad = { kind: "coastDown" as const, f0_N: 130, f1_Npkmh: 0.6, f2_Npkmh2: 0.04, mass_kg: 1000 };
    const job = {
      ...before.job,
      vehicle: { ...before.job.vehicle, roadLoad },
      origins: { "vehicle.roadLoad.f0_N": { from: "measured" as const } },
    };
    expect(replacedBy({ ...before, job }, "vehicle.roadLoad", bodies[0])).toEqual([
      { path: "vehicle.roadLoad.f0_N", from: "measured", canStay: false },
    ]);
    expect(takePart({ ...before, job }, "vehicle.roadLoad", bodies[0]).job.origins).not.toHaveProperty([
      "vehicle.roadLoad.f0_N",
    ]);
  });

  it("drops what waited to be mended in the fields it fills, and nothing else", () => {
    const waiting = { typed: "many", problem: "found no number" };
    const drafts = { [measuredRadius]: waiting, "vehicle.load_kg": waiting };
    expect(takePart({ ...state(), drafts }, "vehicle.tyres", crossPly).drafts).toEqual({ "vehicle.load_kg": waiting });
  });

  it("writes only the grip where a surface is chosen", () => {
    const before = state();
    const { job } = takePart(before, "environment", partOf(surfaces, "wet-tarmac"), { isAdded: true });
    expect(job.environment).toEqual({ ...before.job.environment, grip_coeff: 0.55 });
    expect(job.origins["environment.temperature_degC"]).toEqual(before.job.origins["environment.temperature_degC"]);
    expect(job.origins["environment.grip_coeff"].note).toContain("from memory");
  });

  it("adds an accessory behind the others", () => {
    const before = state();
    const pump = partOf(accessories, "vacuum-pump");
    const { job } = takeIntoList(before, "accessories.items", pump);
    expect(job.accessories.items).toEqual([...before.job.accessories.items, pump.data]);
    expect(job.origins[`accessories.items.${before.job.accessories.items.length}.duty_frac`].from).toBe("usual");
  });
});
