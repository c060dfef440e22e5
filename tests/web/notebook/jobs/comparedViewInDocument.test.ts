import { render } from "lit-html";
import { expect, it } from "vitest";
import type { UnitHabit } from "../../../../shared/quantity/writeQuantity.ts";
import { comparedView } from "../../../../web/notebook/jobs/comparedView.ts";
import type { Difference } from "../../../../web/store/versions/jobDiff.ts";

const changed = (path: string, before: unknown, after: unknown): Difference => ({
  kind: "changed",
  path,
  place: `place of ${path}`,
  before,
  after,
});

/** The cells of the comparison, spaces made plain, and all of its text. */
function shown(differences: readonly Difference[], units: UnitHabit = "metric") {
  const place = document.createElement("div");
  render(comparedView({ title: "Monday", differences }, units), place);
  const rows = [...place.querySelectorAll("tbody tr")].map((row) =>
    [...row.children].map(({ textContent }) => textContent?.replaceAll("\u00a0", " ")),
  );
  return { rows, text: place.textContent };
}

it("names a field by its label and writes its numbers in the reader's units; what has no field by its place", () => {
  const load = changed("vehicle.load_kg", 100, 200);
  const [[label, ...metric]] = shown([load]).rows;
  expect(label).not.toContain("vehicle");
  expect(metric).toEqual(["100 kg", "200 kg"]);
  // 1 lb = 0.45359237 kg by definition: 220.46 lb and 440.92 lb.
  expect(shown([load], "british").rows[0].slice(1)).toEqual(["220 lb", "441 lb"]);
  expect(shown([changed("nowhere.at_all", 1, 2)]).rows).toEqual([["place of nowhere.at_all", "1", "2"]]);
});

it("writes what is no number so that both sides can be read", () => {
  const [none, yes, list, group, long] = shown([
    changed("a", undefined, "new"),
    changed("b", true, false),
    changed("c", [1, 2, 3], []),
    changed("d", {}, undefined),
    changed("e", "x".repeat(60), "x".repeat(61)),
  ]).rows.map(([, ...sides]) => sides);
  expect(none).toEqual(["not there", "new"]);
  expect(yes).toEqual(["yes", "no"]);
  expect(list).toEqual(["a list of 3", "a list of 0"]);
  expect(group).toEqual(["given", "not there"]);
  expect(long).toEqual(["x".repeat(60), `${"x".repeat(60)}…`]);
});

it("leaves out where values come from, and says where nothing else differs", () => {
  const origin = changed("origins.vehicle.load_kg.from", "usual", "typed");
  expect(shown([origin, changed("b", 1, 2)]).rows).toHaveLength(1);
  expect(shown([origin]).rows).toEqual([]);
  expect(shown([origin]).text).toContain("Nothing differs from “Monday”.");
});
