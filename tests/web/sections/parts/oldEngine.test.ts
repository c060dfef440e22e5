import { expect, it } from "vitest";
import { oldEngineLine, oldEngineWords } from "../../../../web/sections/parts/oldEngine.ts";
import { inventedJob } from "../../../support/inventedJob.ts";

const withEngine = (engine: object | undefined) => ({ ...inventedJob(), engine }) as ReturnType<typeof inventedJob>;
const full = { ratedTorque_Nm: 100, torque_rpm: 2500, ratedPower_kW: 40, power_rpm: 4500 };

it("says what was typed, or that nothing is known", () => {
  expect(oldEngineWords(withEngine(full), "metric")).toMatch(
    /^The old engine gave 100 Nm at 2500 rpm and 40 kW at 4500 rpm/,
  );
  expect(oldEngineWords(withEngine(undefined), "metric")).toBe("What the old engine gave is not known.");
  expect(oldEngineLine(withEngine(undefined))).toBeUndefined();
});

it("says about where the rule completed it", () => {
  // 0.8 T n = P: 40 kW at 4500 rpm are 106.1 Nm at 55 in a hundred of the speed, 2475 rpm; two figures of each.
  const words = oldEngineWords(withEngine({ ratedPower_kW: 40, power_rpm: 4500 }), "metric");
  expect(words).toMatch(/gave about 110 Nm at about 2500 rpm and 40 kW at 4500 rpm \(about: assumed from the rest/);
});

it("draws a curve point for point, and says that it was typed", () => {
  const curve = { speed_rpm: [1000, 2500, 4500], torque_Nm: [80, 100, 85] };
  const job = withEngine({ curve });
  expect(oldEngineLine(job)).toEqual([
    { speed_rpm: 1000, torque_Nm: 80 },
    { speed_rpm: 2500, torque_Nm: 100 },
    { speed_rpm: 4500, torque_Nm: 85 },
  ]);
  expect(oldEngineWords(job, "metric")).toMatch(/^The old engine gave 100 Nm at 2500 rpm .*, its curve as typed\.$/);
});
