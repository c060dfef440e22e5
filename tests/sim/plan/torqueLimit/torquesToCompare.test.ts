import { expect, it } from "vitest";
import { torquesToCompare } from "../../../../sim/plan/torqueLimit/torquesToCompare.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { motor } from "./boxesByHand.ts";

const compared = (recommended_Nm: number | undefined, torqueCap_Nm: number | undefined, engine_Nm?: number) => {
  const job = bareJob({ motor, ...(torqueCap_Nm !== undefined && { controller: { torqueCap_Nm } }) });
  const recommended =
    recommended_Nm === undefined ? undefined : { torque_Nm: recommended_Nm, because: "gearbox" as const };
  const known = engine_Nm === undefined ? job : { ...job, engine: { ratedTorque_Nm: engine_Nm } };
  return torquesToCompare(known, recommended).map(({ name, torque_Nm }) => [name, torque_Nm]);
};

it("are the old engine's, the cap, what is recommended and the motor's own", () => {
  expect(compared(150, 180, 115)).toEqual([
    ["old engine", 115],
    ["as set", 180],
    ["recommended", 150],
    ["motor alone", 200],
  ]);
});

it("are each once, the old engine's always", () => {
  expect(compared(120, 120, 120)).toEqual([
    ["old engine", 120],
    ["as set", 120],
    ["motor alone", 200],
  ]);
});

it("are none that nobody knows, and no cap above the motor's peak", () => {
  expect(compared(undefined, undefined)).toEqual([["motor alone", 200]]);
  expect(compared(undefined, 300)).toEqual([["as set", 200]]);
});
