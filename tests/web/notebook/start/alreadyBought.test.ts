import { expect, it } from "vitest";
import { boughtPaths } from "../../../../web/notebook/start/alreadyBought.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const job = inventedJob();

it("asks for the plate of what is there, and of nothing else", () => {
  expect(boughtPaths(job, "motor").every((path) => path.startsWith("motor."))).toBe(true);
  expect(boughtPaths(job, "cells").some((path) => path.startsWith("motor."))).toBe(false);
  expect(boughtPaths(job, "both")).toEqual([...boughtPaths(job, "motor"), ...boughtPaths(job, "cells")]);
});

it("asks for no peak of a motor whose envelope is a table", () => {
  const envelope = { kind: "points" as const, speed_rpm: [0, 1000], torque_Nm: [100, 100] };
  const table = { ...job, motor: { ...job.motor, envelope } };
  expect(boughtPaths(table, "motor")).not.toContain("motor.envelope.power_kW");
});
