import { expect, it } from "vitest";
import { createJobEditor } from "../../../web/editing/jobEditor.ts";
import { withPlacesFollowed } from "../../../web/editing/placesFollowed.ts";
import { weekJob } from "../../support/weekJob.ts";

const trip = {
  leaves: "8:00",
  arrives: "9:00",
  road: "steady",
  parkedAt: "Post",
  plugged: { from: "10:00", to: "12:00" },
};
const job = weekJob([{ from: "monday", to: "monday", trips: [trip] }]);

it("a place that is called otherwise keeps its place in the week, letter by letter, and undo brings both back", () => {
  const jobEditor = createJobEditor({ job, drafts: {} });
  for (const name of ["Pos", "Po", "Pole"]) jobEditor.editPlain("supplies.1.name", name, "Place to charge");
  expect(jobEditor.drafts.value).toEqual({});
  expect(jobEditor.job.value.week?.days[0].trips[0]).toMatchObject({ parkedAt: "Pole", plugged: trip.plugged });
  jobEditor.undo();
  expect(jobEditor.job.value.week?.days[0].trips[0].parkedAt).toBe("Post");
});

it("a place that is gone is charged at no more", () => {
  const { supplies } = job;
  const gone = withPlacesFollowed({ ...job, supplies: supplies.slice(0, 1) }, job);
  const left = gone.week?.days[0].trips[0];
  expect(left).toMatchObject({ leaves: "8:00", road: "steady" });
  expect(left).not.toHaveProperty("parkedAt");
  expect(left).not.toHaveProperty("plugged");
});

it("a place of the week is not removed from the list behind its back: the change is refused and says where it is used", () => {
  const jobEditor = createJobEditor({ job, drafts: {} });
  const problems = jobEditor.change("removed", (state) => ({
    ...state,
    job: { ...state.job, supplies: state.job.supplies.slice(0, 1) },
  }));
  expect(problems.map(({ where }) => where)).toEqual(["week.days.0.trips.0.parkedAt"]);
});
