import { expect, it } from "vitest";
import { weekCharge } from "../../../web/charts/weekCharge.ts";
import { drawing } from "../../support/drawing.ts";

const week = {
  condition: "new",
  floor_frac: 0.1,
  lowest: { soc_frac: 0.42, at_h: 41.75 },
  course: { at_h: [0, 32, 41.75, 50, 168], soc_frac: [0.9, 0.9, 0.42, 0.9, 0.9] },
};

it("says when the pack is lowest, and reads it at any hour", () => {
  const { alt, read, table } = weekCharge("13 kWh", [week], drawing());
  expect(alt).toMatch(
    /^State of charge of 13 kWh through the week\. new, it is lowest with 42 % left on Tuesday 17:45/,
  );
  expect(table.rows.length).toBeGreaterThan(3);
  expect(read?.(41.75)).toMatchObject({ where: "Tuesday 17:45", values: [{ label: "new", text: "42 %" }] });
});
