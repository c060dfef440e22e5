import fc from "fast-check";
import { expect, it } from "vitest";
import { leftAxis } from "../../../../web/answer/picture/axis.ts";

it("has an axis with nought among round ticks, whatever the values", () => {
  const value = fc.double({ min: -2000, max: 2000, noNaN: true });
  fc.assert(
    fc.property(fc.array(value), (values) => {
      const { from, to, ticks } = leftAxis(values);
      expect(from).toBeLessThan(0);
      expect(to).toBeGreaterThan(Math.max(0, ...values));
      expect(ticks).toContain(0);
      expect(ticks.length).toBeLessThanOrEqual(10);
      for (const tick of ticks) expect(tick >= from && tick <= to).toBe(true);
    }),
  );
});
