import { describe, expect, it } from "vitest";
import { createDesk } from "../../../web/notebook/desk.ts";
import { demoJob } from "../../support/demoJob.ts";

const load = "vehicle.load_kg";
const about = { what: "People and luggage" };
const deskWithDemo = () => createDesk({ job: demoJob(), drafts: {} });

describe("job on the desk", () => {
  it("takes a value in, with how it was typed and where it comes from", () => {
    const desk = deskWithDemo();
    desk.edit(load, "3 cwt", 152.4, { ...about, from: "measured", plusMinus_frac: 0.02 });
    expect(desk.job.value.vehicle.load_kg).toBe(152.4);
    expect(desk.job.value.origins[load]).toMatchObject({ from: "measured", typed: "3 cwt", plusMinus_frac: 0.02 });
  });

  it("calls a value typed over a usual one guessed, and leaves other origins as they are", () => {
    const desk = deskWithDemo();
    desk.edit("vehicle.roadLoad.drag_coeff", "", 0.45, { what: "Drag coefficient", from: "usual" });
    desk.edit("vehicle.roadLoad.drag_coeff", "0.48", 0.48, { what: "Drag coefficient" });
    expect(desk.job.value.origins["vehicle.roadLoad.drag_coeff"]).toMatchObject({ from: "guessed", typed: "0.48" });
    desk.edit(load, "120", 120, about);
    expect(desk.job.value.origins[load].from).toBe("measured");
  });

  it("keeps every untouched part of the job the very same object", () => {
    const desk = deskWithDemo();
    const before = desk.job.value;
    desk.edit(load, "120", 120, about);
    const after = desk.job.value;
    expect(after).not.toBe(before);
    expect(after.motor).toBe(before.motor);
    expect(after.module).toBe(before.module);
    expect(after.roads).toBe(before.roads);
    expect(after.vehicle.tyres).toBe(before.vehicle.tyres);
  });

  it("keeps a value that does not fit in its field and the last valid job going", () => {
    const desk = deskWithDemo();
    const before = desk.job.value;
    desk.edit(load, "-5", -5, about);
    expect(desk.job.value).toBe(before);
    expect(desk.drafts.value[load]).toEqual({ typed: "-5", problem: "found -5 kg, 0 to 10000 kg allowed", value: -5 });
    desk.edit(load, "5", 5, about);
    expect(desk.drafts.value).toEqual({});
    expect(desk.job.value.vehicle.load_kg).toBe(5);
  });

  it("names the place where a value breaks another field", () => {
    const desk = deskWithDemo();
    desk.edit("vehicle.arriving_kg", "100", 100, { what: "Kerb weight" });
    expect(desk.drafts.value["vehicle.arriving_kg"].problem).toContain("Taken out: found 165 kg taken out of 100 kg");
  });

  it("takes two fields in together that contradict the job one at a time", () => {
    const desk = deskWithDemo();
    desk.edit("controller.min_V", "300", 300, { what: "Lowest" });
    expect(desk.drafts.value["controller.min_V"].problem).toMatch(
      /^Highest pack voltage it stands: found 140 V, above “Lowest pack voltage it works at” \(300 V\) wanted/,
    );
    desk.edit("controller.rollBackBelow_V", "310", 310, { what: "Roll-back" });
    desk.edit("controller.rollBackAbove_V", "390", 390, { what: "Roll-back" });
    desk.edit("controller.max_V", "400", 400, { what: "Highest" });
    expect(desk.drafts.value).toEqual({});
    expect(desk.job.value.controller).toMatchObject({ min_V: 300, max_V: 400 });
  });

  it("takes back and does again every edit, drafts included", () => {
    const desk = deskWithDemo();
    const first = desk.job.value;
    desk.edit(load, "120", 120, about);
    desk.settle();
    desk.keepDraft(load, "heavy", "found no number", about.what);
    expect(desk.undoes.value).toBe("People and luggage");
    desk.undo();
    expect(desk.drafts.value).toEqual({});
    expect(desk.job.value.vehicle.load_kg).toBe(120);
    desk.undo();
    expect(desk.job.value).toBe(first);
    expect(desk.undo()).toBeUndefined();
    desk.redo();
    desk.redo();
    expect(desk.drafts.value[load].typed).toBe("heavy");
    expect(desk.redoes.value).toBeUndefined();
  });

  it("makes one step of the letters typed in one field, and a new one once it is left", () => {
    const desk = deskWithDemo();
    for (const text of ["1", "12", "120"]) desk.edit(load, text, Number(text), about);
    desk.settle();
    desk.edit(load, "130", 130, about);
    desk.undo();
    expect(desk.job.value.vehicle.load_kg).toBe(120);
    desk.undo();
    expect(desk.job.value.vehicle.load_kg).toBe(110);
  });

  it("forgets what could be done again once something else is done", () => {
    const desk = deskWithDemo();
    desk.edit(load, "120", 120, about);
    desk.undo();
    desk.edit("usualDay_km", "50", 50, { what: "Usual day" });
    expect(desk.redoes.value).toBeUndefined();
  });

  it("refuses a change that makes no job of it, and says why", () => {
    const desk = deskWithDemo();
    const problems = desk.change("No packs", ({ job, drafts }) => ({ job: { ...job, packs: [] }, drafts }));
    expect(problems.map(({ where }) => where)).toEqual(["packs"]);
    expect(desk.job.value.packs).toHaveLength(5);
    expect(desk.undoes.value).toBeUndefined();
  });

  it("removes an optional value and its origin", () => {
    const desk = deskWithDemo();
    desk.edit("vehicle.gross_kg", "", undefined, { what: "Gross weight" });
    expect(desk.job.value.vehicle).not.toHaveProperty("gross_kg");
    expect(desk.job.value.origins).not.toHaveProperty(["vehicle.gross_kg"]);
  });
});
