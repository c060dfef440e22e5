import { describe, expect, it } from "vitest";
import { demos } from "../../../../../shared/demos/index.ts";
import { EmptyFields } from "../../../../../web/editing/emptied.ts";
import { weekValues } from "../../../../../web/notebook/graph/values/weekValues.ts";
import type { SimulationApi } from "../../../../../web/worker/api.ts";
import { demoJob } from "../../../../support/demoJob.ts";

const van = demoJob(demos.findIndex(({ id }) => id === "bakery-van"));
const asked: unknown[] = [];
const simulation = {
  weeks: async (_job: unknown, packIndexes: readonly number[]) => {
    asked.push(packIndexes);
  },
} as unknown as SimulationApi;
const [weekJob, week] = weekValues(simulation);

function jobFor(job: typeof van, emptied = "") {
  if (!weekJob || !("compute" in weekJob)) throw new Error("no job of the week");
  return weekJob.compute({ job, emptied } as never);
}

describe("the week", () => {
  it("asks for all packs while its working is open, else for the recommended one, and for nothing without trips", async () => {
    if (!week || !("ask" in week)) throw new Error("no week");
    const base = { weekJob: van, answerIndex: 2 };
    await week.ask({ ...base, isWeekOpen: false } as never);
    await week.ask({ ...base, isWeekOpen: true } as never);
    await week.ask({ ...base, weekJob: undefined, isWeekOpen: true } as never);
    expect(asked).toEqual([[2], van.packs.map((_, i) => i)]);
  });

  it("hangs on what drives and charges the car: it waits for that where it was emptied, and for no price or usual day", () => {
    expect(jobFor({ ...van, week: undefined } as unknown as typeof van)).toBeUndefined();
    expect(jobFor(van, "usualDay_km|costs.work_perh|notes.0.text")).toMatchObject({ supplies: van.supplies });
    expect(() => jobFor(van, "usualDay_km|vehicle.kerb_kg")).toThrow(EmptyFields);
  });

  it("stays the same job through a change of what no week hangs on", () => {
    expect(jobFor({ ...van, title: "Another title" })).toBe(jobFor(van));
    const [first, ...others] = van.supplies;
    expect(jobFor({ ...van, supplies: [{ ...first, current_A: 6 }, ...others] })).not.toBe(jobFor(van));
  });
});
