import { describe, expect, it } from "vitest";
import type { InputError } from "../../../../shared/problems.ts";
import { readTypedRoad } from "../../../../sim/route/roads/readTypedRoad.ts";

describe("a road typed from memory", () => {
  it("is read leg by leg", () => {
    const legs = readTypedRoad("3 km at 50 km/h, 2 stops a km, then 12 miles at 45 mph; 800 m at 30 km/h, 4 stops");
    expect(legs.length).toBe(3);
    expect(legs[0]).toMatchObject({ distance_m: 3000, stopsPerKm: 2 });
    expect(legs[0].speed_mps).toBeCloseTo(50 / 3.6, 12);
    expect(legs[1].distance_m).toBeCloseTo(12 * 1609.344, 9);
    expect(legs[1].speed_mps).toBeCloseTo(45 * 0.44704, 12);
    expect(legs[2].stopsPerKm).toBeCloseTo(5, 12);
  });

  it("says every leg that cannot be read", () => {
    try {
      readTypedRoad("3 km at 50 km/h, then fast home, then 3 km at 900 km/h");
      expect.unreachable();
    } catch (error) {
      expect((error as InputError).problems.map(({ where }) => where)).toEqual(["leg 2", "leg 3"]);
    }
  });

  it("has hills as they are told: 1 in 7, 14 %, up or down, in any place of a leg", () => {
    const legs = readTypedRoad(
      "3 km at 50 km/h, then 80 m at 20 km/h, 1 in 7; 200 m up 10 % at 30 km/h with 1 stop, then 400 m down 1:20, then 90 yards on a hill of 8 deg at 15 mph",
    );
    expect(legs.map(({ gradient_ratio = 0 }) => gradient_ratio)).toEqual([
      0,
      expect.closeTo(1 / 7, 12),
      expect.closeTo(0.1, 12),
      expect.closeTo(-0.05, 12),
      expect.closeTo(Math.tan((8 * Math.PI) / 180), 12),
    ]);
    expect(legs[3].speed_mps).toBe(legs[2].speed_mps); // no speed said: as before
    expect(legs[4].distance_m).toBeCloseTo(90 * 0.9144, 9);
  });

  it("says of a hill what no road for cars has, and of a first leg that it wants a speed", () => {
    const wrong = (text: string) => {
      try {
        return readTypedRoad(text);
      } catch (error) {
        return (error as InputError).problems.map(({ message }) => message).join();
      }
    };
    expect(wrong("80 m at 20 km/h, 1 in 2")).toContain("1 in 2 = 50 %");
    expect(wrong("80 m up 1 in 7")).toContain("without a speed");
  });
});
