import { expect, it } from "vitest";
import { withGroup, withoutGroup } from "../../../web/editing/groupEdits.ts";
import type { EditorState } from "../../../web/editing/jobEditor.ts";
import { demoJob } from "../../support/demoJob.ts";

const waiting = { typed: "much", problem: "found no number" };
const path = "vehicle.balance";

function state(): EditorState {
  const job = demoJob();
  const origins = {
    [`${path}.gravityHeight_mm`]: { from: "measured" as const },
    "vehicle.balanceSheet": { from: "guessed" as const },
  };
  return { job: { ...job, origins }, drafts: { [`${path}.wheelbase_mm`]: waiting, "vehicle.load_kg": waiting } };
}

it("takes a group out with all that was said of it, and with nothing of its neighbours", () => {
  const after = withoutGroup(state(), path);
  expect(after.job.vehicle).not.toHaveProperty("balance");
  expect(Object.keys(after.job.origins)).toEqual(["vehicle.balanceSheet"]);
  expect(Object.keys(after.drafts)).toEqual(["vehicle.load_kg"]);
});

it("puts a group in with where its values come from", () => {
  const value = { wheelbase_mm: 2300, gravityHeight_mm: 500, frontShare_frac: 0.5 };
  const after = withGroup(state(), path, value, { wheelbase_mm: { from: "usual" } });
  expect(after.job.vehicle.balance).toEqual(value);
  expect(after.job.origins).toEqual({
    "vehicle.balanceSheet": { from: "guessed" },
    [`${path}.wheelbase_mm`]: { from: "usual" },
  });
});

it("leaves the origins of what stays", () => {
  const kept = `${path}.gravityHeight_mm`;
  const value = { wheelbase_mm: 2300, gravityHeight_mm: 540, frontShare_frac: 0.5 };
  const after = withGroup(state(), path, value, { gravityHeight_mm: { from: "usual" } }, [kept]);
  expect(after.job.origins[kept]).toEqual({ from: "measured" });
});
