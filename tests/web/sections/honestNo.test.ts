import { describe, expect, it } from "vitest";
import { readJob } from "../../../shared/job/readJob.ts";
import gearboxTakesIt from "../../../web/chapters/gearboxTakesIt.ts";
import axleWeights from "../../../web/sections/axleWeights.ts";
import hills from "../../../web/sections/hills.ts";
import motorAndGears from "../../../web/sections/motorAndGears.ts";
import { changedDemo } from "../../support/changedDemo.ts";
import { sectionValues } from "../../support/sectionValues.ts";

/** The values of a changed demo, and its finding and warnings in a section. */
const valuesOf = (changes: Readonly<Record<string, unknown>>, id?: string) =>
  sectionValues(readJob(changedDemo(changes, id)));

describe("four cars that can not do it are told so", () => {
  it("one that is left in a low gear on the ring road: where the motor ends, and what the road asks", () => {
    const found = motorAndGears.compute(
      valuesOf({
        "driveline.shifting": { kind: "fixed", gear: "second" },
        roads: [{ kind: "cycle", id: "ring", title: "Ring road", cycle: "hwfet" }],
      }),
    );
    // 8000 rpm through 2.3 x 4.1111 on wheels of 284 mm: 90.6 km/h; the cycle's top speed is 59.9 mph.
    expect(motorAndGears.attention?.(found)[0]).toBe(
      "In second gear the motor is at its top speed at 90.6 km/h; the road asks for 96.4 km/h.",
    );
  });

  it("one that has a tall gear and a low cap on a steep hill: needs, has, what binds, and which gear would do", () => {
    const values = valuesOf({
      "driveline.shifting": { kind: "fixed", gear: "fourth" },
      "controller.torqueCap_Nm": 70,
      "requirement.startHill_ratio": 1 / 6,
    });
    const found = hills.compute(values);
    expect(hills.sentence(found)).toMatch(
      /^In fourth, the gear used, the car does not start on 16\.7 %: it needs 1\d\d Nm, has 70 Nm, as the controller lets no more through\. It starts on 16\.7 % in first with a fifth/,
    );
    expect(hills.summary?.(found)).toMatch(/^does not start in fourth, the gear used; starts on 16\.7 % in first/);
    // The chapter says so before it says that the gearbox stands the torque.
    expect(gearboxTakesIt.sentence(gearboxTakesIt.compute(values))).toMatch(
      /^In fourth, the gear used, the car does not start on 16\.7 %.* The gearbox takes the torque: the motor gives up to 70 Nm/,
    );
  });

  it("one with all of its pack behind the rear axle: by how much it is over, and that no split helps", () => {
    const boxes = [
      { name: "boot floor", place_mm: 2650, share_frac: 0.4 },
      { name: "boot box", place_mm: 2950, share_frac: 0.6 },
    ];
    const { packs } = changedDemo({}) as { packs: readonly { readonly name: string }[] };
    const found = axleWeights.compute(
      valuesOf({
        "weights.boxes": boxes,
        "weights.plates.rear_kg": 680,
        packs: packs.filter(({ name }) => name === "29 kWh"),
      }),
    );
    // Empty: 295.8 kg of pack at 2830 mm of 2490 on a rear axle of 446.3 kg without it: 782.5 kg.
    expect(axleWeights.sentence(found)).toMatch(/^With 29 kWh, empty: rear axle 103 kg over\./);
    expect(axleWeights.sentence(found)).toMatch(
      /no split between boot floor and boot box meets every plate; at best rear axle \d+ kg over\. At most \d+ kg of pack/,
    );
  });

  it("one that drives a single axle on a steep loose track: friction needed, and that both axles would do", () => {
    const found = hills.compute(
      valuesOf(
        { requirement: { startHill_ratio: 0.25, hillLength_km: 0.2 }, "environment.grip_coeff": 0.3 },
        "vineyard-pickup",
      ),
    );
    const said = hills.sentence(found);
    expect(said).toMatch(/^The car does not start on 25 % in any gear: .*, as the driven tyres have no more grip\./);
    expect(said).toMatch(
      /need a friction of 0\.48 to start on 25 %: they slip when it is loose.* both axles driven 0\.28 would do\./,
    );
  });
});
