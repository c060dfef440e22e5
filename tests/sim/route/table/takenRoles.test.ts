import { expect, it } from "vitest";
import { TakenRoles } from "../../../../sim/route/table/takenRoles.ts";
import { columnsOf } from "./layoutOf.ts";

const { columns } = columnsOf("1,2,3", "2,3,4", "3,4,5");
const [first, second, third] = columns;

it("gives a column one role, and the next guess what is left", () => {
  const roles = new TakenRoles(columns, {});
  roles.take(second, "speed", "header");
  expect(roles.of(second)).toEqual({ role: "speed", evidence: "header" });
  expect(roles.has("speed")).toBe(true);
  expect(roles.free()).toEqual([first, third]);
});

it("says why a column was left", () => {
  const roles = new TakenRoles(columns, {});
  roles.leave(third, "a row number");
  expect(roles.whyLeft(third)).toBe("a row number");
  expect(roles.free()).toEqual([first, second]);
});

it("has a role settled that somebody chose, be it with no column", () => {
  const roles = new TakenRoles(columns, { speed: 2, height: "none" });
  expect(roles.of(third)).toEqual({ role: "speed", evidence: "chosen" });
  expect(roles.has("height")).toBe(true);
  expect(roles.free()).toEqual([first, second]);
});
