import { describe, expect, it } from "vitest";
import { readJob } from "../../../../shared/job/readJob.ts";
import { supplies } from "../../../../shared/parts/supplies.ts";
import { ownCar } from "../../../../web/notebook/start/ownCar.ts";
import { placeChoices, placeOf, withPlace } from "../../../../web/notebook/start/placeToCharge.ts";
import { demoJob } from "../../../support/demoJob.ts";

describe("the place to charge, asked on the phone", () => {
  it("is not known of a new job, and then one of the usual supplies, each a whole job with its band", () => {
    const job = ownCar();
    expect(placeOf(job)).toBe("unknown");
    for (const { id, data, origins } of supplies) {
      const asked = withPlace(job, id);
      expect(readJob(JSON.parse(JSON.stringify(asked)))).toEqual(asked);
      expect(asked.supplies).toEqual([data]);
      expect(placeOf(asked)).toBe(id);
      const { low, high } = origins["voltage_V"];
      const half = Math.max((high ?? 0) - data.voltage_V, data.voltage_V - (low ?? 0)) / data.voltage_V;
      expect(asked.origins["supplies.0.voltage_V"]).toMatchObject({ from: "usual", plusMinus_frac: half });
    }
  });

  it("can be unknown again, with nothing left of it", () => {
    const job = ownCar();
    expect(withPlace(withPlace(job, supplies[0].id), "unknown")).toEqual(job);
  });

  it("keeps hours, prices and a name of the place when its supply is another", () => {
    const job = demoJob();
    const [first, ...others] = job.supplies;
    const changed = withPlace(job, "wall-unit-32-a-mode-3");
    expect(changed.supplies[0]).toMatchObject({
      name: first.name,
      hours: first.hours,
      cheap: first.cheap,
      current_A: 32,
    });
    expect(changed.supplies.slice(1)).toEqual(others);
    expect(placeChoices(job).map(({ key }) => key)).not.toContain("unknown");
  });

  it("has no choice for a supply that was entered by hand", () => {
    const job = ownCar();
    const own = { ...supplies[0].data, current_A: 9 };
    expect(placeOf({ ...job, supplies: [own] })).toBeUndefined();
  });
});
