import { describe, expect, it } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { demoJob } from "../../support/demoJob.ts";

const load = "vehicle.load_kg";
const about = { what: "People and luggage" };
const deskWithDemo = () => createJobEditor({ job: demoJob(), drafts: {} });

describe("job editor", () => {
  it("takes a value in, with how it was typed and where it comes from", () => {
    const jobEditor = deskWithDemo();
    jobEditor.edit(load, "3 cwt", 152.4, { ...about, from: "measured", plusMinus_frac: 0.02 });
    expect(jobEditor.job.value.vehicle.load_kg).toBe(152.4);
    expect(jobEditor.job.value.origins[load]).toMatchObject({ from: "measured", typed: "3 cwt", plusMinus_frac: 0.02 });
  });

  it("calls a value typed over a usual one typed, since nobody has said where from, and leaves other origins as they are", () => {
    const jobEditor = deskWithDemo();
    jobEditor.edit("vehicle.roadLoad.drag_coeff", "", 0.45, { what: "Drag coefficient", from: "usual" });
    jobEditor.settle();
    jobEditor.edit("vehicle.roadLoad.drag_coeff", "0.48", 0.48, { what: "Drag coefficient" });
    expect(jobEditor.job.value.origins["vehicle.roadLoad.drag_coeff"]).toMatchObject({
      from: "typed",
      typed: "0.48",
    });
    jobEditor.edit(load, "120", 120, about);
    expect(jobEditor.job.value.origins[load].from).toBe("measured");
  });

  it("keeps every untouched part of the job the very same object", () => {
    const jobEditor = deskWithDemo();
    const before = jobEditor.job.value;
    jobEditor.edit(load, "120", 120, about);
    const after = jobEditor.job.value;
    expect(after).not.toBe(before);
    expect(after.motor).toBe(before.motor);
    expect(after.module).toBe(before.module);
    expect(after.roads).toBe(before.roads);
    expect(after.vehicle.tyres).toBe(before.vehicle.tyres);
  });

  it("keeps a value that does not fit in its field and the last valid job going", () => {
    const jobEditor = deskWithDemo();
    const before = jobEditor.job.value;
    jobEditor.edit(load, "-5", -5, about);
    expect(jobEditor.job.value).toBe(before);
    expect(jobEditor.drafts.value[load]).toEqual({
      typed: "-5",
      problem: "found -5 kg, 0 to 10000 kg allowed",
      value: -5,
    });
    jobEditor.edit(load, "5", 5, about);
    expect(jobEditor.drafts.value).toEqual({});
    expect(jobEditor.job.value.vehicle.load_kg).toBe(5);
  });

  it("names the place where a value breaks another field", () => {
    const jobEditor = deskWithDemo();
    jobEditor.edit("vehicle.kerb_kg", "100", 100, { what: "Kerb weight" });
    expect(jobEditor.drafts.value["vehicle.kerb_kg"].problem).toContain(
      "Parts removed: found 165 kg taken out of 100 kg",
    );
  });

  it("takes two fields in together that contradict the job one at a time", () => {
    const jobEditor = deskWithDemo();
    jobEditor.edit("controller.min_V", "300", 300, { what: "Lowest" });
    expect(jobEditor.drafts.value["controller.min_V"].problem).toMatch(
      /^Highest pack voltage it stands: found 140 V, above “Lowest pack voltage it works at” \(300 V\) wanted/,
    );
    jobEditor.edit("controller.rollBackBelow_V", "310", 310, { what: "Roll-back" });
    jobEditor.edit("controller.rollBackAbove_V", "390", 390, { what: "Roll-back" });
    jobEditor.edit("controller.max_V", "400", 400, { what: "Highest" });
    expect(jobEditor.drafts.value).toEqual({});
    expect(jobEditor.job.value.controller).toMatchObject({ min_V: 300, max_V: 400 });
  });

  it("takes a curve in point by point that fits only as a whole, whatever is wrong elsewhere", () => {
    const jobEditor = deskWithDemo();
    const curve = { speed_rpm: [800, 2500, 5200], torque_Nm: [98, 115, 81] };
    jobEditor.change("torque curve added", ({ job, drafts }) => ({
      job: { ...job, engine: { curve } },
      drafts,
    }));
    jobEditor.edit(load, "-5", -5, about);
    const typed = { speed_rpm: [1000, 5400, 5500], torque_Nm: [100, 80, 70] };
    const put = (key: "speed_rpm" | "torque_Nm", row: number, value: number) =>
      jobEditor.edit(`engine.curve.${key}.${row}`, String(value), value, { what: key });
    put("speed_rpm", 0, typed.speed_rpm[0]);
    put("torque_Nm", 0, typed.torque_Nm[0]);
    // The middle point alone would stand behind the last one.
    put("speed_rpm", 1, typed.speed_rpm[1]);
    expect(jobEditor.drafts.value["engine.curve.speed_rpm.1"]?.problem).toMatch(/speeds must rise/);
    put("speed_rpm", 2, typed.speed_rpm[2]);
    expect(Object.keys(jobEditor.drafts.value)).toEqual([load]);
    expect(jobEditor.job.value.engine?.curve?.speed_rpm).toEqual(typed.speed_rpm);
  });

  it("takes back and does again every edit, drafts included", () => {
    const jobEditor = deskWithDemo();
    const first = jobEditor.job.value;
    jobEditor.edit(load, "120", 120, about);
    jobEditor.settle();
    jobEditor.keepDraft(load, "heavy", "found no number", about.what);
    expect(jobEditor.undoes.value).toBe("People and luggage");
    jobEditor.undo();
    expect(jobEditor.drafts.value).toEqual({});
    expect(jobEditor.job.value.vehicle.load_kg).toBe(120);
    jobEditor.undo();
    expect(jobEditor.job.value).toBe(first);
    expect(jobEditor.undo()).toBeUndefined();
    jobEditor.redo();
    jobEditor.redo();
    expect(jobEditor.drafts.value[load].typed).toBe("heavy");
    expect(jobEditor.redoes.value).toBeUndefined();
  });

  it("makes one step of the letters typed in one field, and a new one once it is left", () => {
    const jobEditor = deskWithDemo();
    for (const text of ["1", "12", "120"]) jobEditor.edit(load, text, Number(text), about);
    jobEditor.settle();
    jobEditor.edit(load, "130", 130, about);
    jobEditor.undo();
    expect(jobEditor.job.value.vehicle.load_kg).toBe(120);
    jobEditor.undo();
    expect(jobEditor.job.value.vehicle.load_kg).toBe(110);
  });

  it("forgets what could be done again once something else is done", () => {
    const jobEditor = deskWithDemo();
    jobEditor.edit(load, "120", 120, about);
    jobEditor.undo();
    jobEditor.edit("usualDay_km", "50", 50, { what: "Usual day" });
    expect(jobEditor.redoes.value).toBeUndefined();
  });

  it("refuses a change that makes no job of it, and says why", () => {
    const jobEditor = deskWithDemo();
    const problems = jobEditor.change("No packs", ({ job, drafts }) => ({ job: { ...job, packs: [] }, drafts }));
    expect(problems.map(({ where }) => where)).toEqual(["packs"]);
    expect(jobEditor.job.value.packs).toHaveLength(5);
    expect(jobEditor.undoes.value).toBeUndefined();
  });

  it("calls a job by its car until it has a title of its own", () => {
    const jobEditor = createJobEditor({ job: { ...demoJob(), title: "New job" }, drafts: {} });
    const title = () => jobEditor.job.value.title;
    jobEditor.editPlain("vehicle.name", "T", "Car");
    jobEditor.editPlain("vehicle.name", "Two-door", "Car");
    expect(title()).toBe("Two-door");
    jobEditor.settle();
    jobEditor.editPlain("vehicle.name", "", "Car");
    expect(title()).toBe("Two-door");
    jobEditor.editPlain("vehicle.name", "Two-door, 1964", "Car");
    expect(title()).toBe("Two-door, 1964");
    jobEditor.settle();
    jobEditor.editPlain("title", "For my aunt", "Title");
    jobEditor.editPlain("vehicle.name", "Three-door", "Car");
    expect(title()).toBe("For my aunt");
    for (let i = 0; i < 4; i++) jobEditor.undo();
    expect(title()).toBe("New job");
  });

  it("removes an optional value and its origin", () => {
    const jobEditor = deskWithDemo();
    jobEditor.edit("vehicle.gross_kg", "", undefined, { what: "Gross weight" });
    expect(jobEditor.job.value.vehicle).not.toHaveProperty("gross_kg");
    expect(jobEditor.job.value.origins).not.toHaveProperty(["vehicle.gross_kg"]);
  });
});
