import { describe, expect, it } from "vitest";
import { ownCar } from "../../../../web/notebook/start/ownCar.ts";
import { peopleAboard, withPeople } from "../../../../web/notebook/start/people.ts";

const job = ownCar();

describe("people aboard", () => {
  it("weigh 75 kg each, until somebody says what the load weighs", () => {
    const three = withPeople(job, 3);
    expect(three.vehicle.load_kg).toBe(225);
    expect(peopleAboard(three)).toBe("3");
    const weighed = { ...three, origins: { ...three.origins, "vehicle.load_kg": { from: "measured" as const } } };
    expect(peopleAboard(weighed)).toBeUndefined();
  });

  it("are whole people, one to six of them", () => {
    const loaded = (load_kg: number) => {
      const one = withPeople(job, 1);
      return peopleAboard({ ...one, vehicle: { ...one.vehicle, load_kg } });
    };
    expect([0, 75, 100, 450, 525].map(loaded)).toEqual([undefined, "1", undefined, "6", undefined]);
  });
});
