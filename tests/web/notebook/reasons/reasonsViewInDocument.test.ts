import { render } from "lit-html";
import { expect, it } from "vitest";
import { openExplanations } from "../../../../sim/index.ts";
import { reasonFacts } from "../../../../web/notebook/reasons/reasonFacts.ts";
import { reasonsView } from "../../../../web/notebook/reasons/reasonsView.ts";
import { sections } from "../../../../web/sections/index.ts";
import { demoJob } from "../../../support/demoJob.ts";
import { sectionValues } from "../../../support/sectionValues.ts";

const known = await openExplanations();
const values = sectionValues(demoJob());
const facts = reasonFacts((name) => values[name], values.answerIndex);
const explained = sections.filter(({ explains = [] }) => explains.length > 0);

it.each(explained.map((section) => [section.name, section.explains ?? []] as const))(
  "%s: the sums come first, then what was not measured, in 30 lines; formulas and sources are folded",
  (_, keys) => {
    const place = document.createElement("div");
    render(reasonsView(keys, { job: values.job, units: "metric", facts, whose: "with it" }, known), place);
    const folded = place.querySelector("details");
    expect(folded?.textContent).toContain("Source:");
    folded?.remove();
    const lines = place.querySelectorAll("p, p br, li, h3").length;
    expect(lines).toBeLessThanOrEqual(30);
    expect(place.querySelector("p.sum")?.textContent).toMatch(/\d/);
    expect(place.textContent).not.toContain("Source:");
    expect(place.querySelectorAll("li:not(.is-open)").length).toBe(0);
  },
);
