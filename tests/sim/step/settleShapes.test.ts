import { setFlagsFromString } from "node:v8";
import { expect, it } from "vitest";
import { demos } from "../../../shared/demos/index.ts";
import { controllerWith } from "../../../sim/motor/motorModel.ts";
import { homeward, type Model, modelWith } from "../../../sim/step/model.ts";
import { prepare, prepareIn } from "../../../sim/step/prepare.ts";
import { createRunContext } from "../../../sim/step/runContext.ts";
import { demoJob } from "../../support/demoJob.ts";

// The engine's own word for it; nothing else says whether two objects are of one shape.
setFlagsFromString("--allow-natives-syntax");
const areOfOneShape = new Function("a", "b", "return %HaveSameMap(a, b)") as (a: object, b: object) => boolean;

/** Cars of all demos, each also with whole numbers, on the way home, in winter and with other parts. */
function cars(): Model[] {
  return demos.flatMap((_, which) => {
    const job = demoJob(which);
    const [pack] = job.packs;
    const whole = structuredClone(job);
    whole.vehicle.kerb_kg = Math.round(whole.vehicle.kerb_kg);
    whole.module.capacity_Ah = Math.round(whole.module.capacity_Ah);
    const model = prepare(job, pack);
    const { winter } = job.conditions ?? {};
    return [
      model,
      prepare(whole, pack),
      ...(winter ? [prepareIn(job, pack, { weather: winter })] : []),
      homeward(model),
      modelWith(model, { controller: controllerWith(model.controller, { max_V: Number.POSITIVE_INFINITY }) }),
    ];
  });
}

it("gives all cars one shape", () => {
  const all = cars();
  const shapesOf = (part: (model: Model) => object) => {
    const shapes: object[] = [];
    for (const object of all.map(part)) if (!shapes.some((shape) => areOfOneShape(shape, object))) shapes.push(object);
    return shapes.length;
  };
  expect(all.length).toBeGreaterThan(3 * 3);
  expect(shapesOf((model) => model)).toBe(1);
  expect(shapesOf(({ road }) => road)).toBe(1);
  expect(shapesOf(({ gears }) => gears[0])).toBe(1);
  expect(shapesOf(({ controller }) => controller)).toBe(1);
  expect(shapesOf(({ pack }) => pack)).toBe(1);
  expect(shapesOf((model) => createRunContext(model, 0.9))).toBe(1);
});
