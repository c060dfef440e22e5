import { describe, expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import { preChargeShelf } from "../../../../sim/plan/currents/preChargeShelf.ts";
import { preChargeWords } from "../../../../sim/plan/currents/preChargeWords.ts";

describe("pre-charge", () => {
  const at = (changes: Partial<Parameters<typeof preChargeShelf>[0]>) =>
    messageIn(
      preChargeWords(preChargeShelf({ source_V: 120, capacitance_uF: 2000, loadWakes_V: 60, ...changes })),
      "metric",
    );
  it("says the time to 95 %, the heat and the peak, and what to mind", () => {
    // 150 ohm and 2 mF: 0.3 s ln 20 = 0.899 s; half of C U² less a quarter of a per cent: 14.4 J; 120²/150 = 96 W.
    expect(at({})).toBe(
      "Pre-charge of 2000 µF: 150 Ω takes 0.90 s to 95 %, 14 J turned to heat in it and 96 W at the first moment; wire-wound, 10 W or more with a maker's pulse curve above that. Never without the resistor: a contactor that closes on empty capacitors welds. A short circuit behind it lays all of 96 W on it, so that it must be given up in time.",
    );
  });
  it("has heat in whole joules from a hundred on, and says what is assumed", () => {
    expect(at({ capacitance_uF: 20_000 })).toMatch(/, 144 J turned to heat/);
    expect(at({ capacitance_uF: undefined })).toMatch(
      /^Pre-charge of 1500 µF \(assumed: see the controller's sheet\): /,
    );
  });
  it("says a load that is drawn meanwhile", () => {
    expect(at({})).not.toMatch(/drawn meanwhile/);
    expect(at({ load_W: 1 })).toMatch(/, with 1 W drawn meanwhile\. Never without/);
  });
  it("says where it never gets there: from the shelf the smallest value, or the one that is fitted", () => {
    // At 10 ohm 250 W leave (120 + sqrt(120² - 4 x 250 x 10)) / 2 = 93.2 V of 120 V.
    expect(at({ load_W: 250 })).toMatch(
      /with 250 W drawn on the controller's side 10 Ω settles at 78 %, below 95 %, and never gets there; no larger value does better\. Wire that load before the contactor, or let it wake after it: 150 Ω takes 0\.90 s/,
    );
    expect(at({ load_W: 250, fitted_ohm: 22 })).toMatch(
      / 22 Ω settles at \d+ %, below 95 %, and never gets there\. Wire that load before the contactor, or let it wake after it: 22 Ω takes 0\.13 s/,
    );
  });
});
