import { describe, expect, it } from "vitest";
import { operatingPoints } from "../../../../../web/charts/operatingPoints.ts";
import { inventedMotorMap, inventedPacks } from "../../../../logs/inventedDrive.ts";
import { drawing } from "../../../../support/drawing.ts";
import { snapshotSvg } from "../../../../support/snapshotSvg.ts";

const [pack, other] = inventedPacks as [(typeof inventedPacks)[0], (typeof inventedPacks)[0]];

/** The figure of a pack on one page, and what it looks like without the ids that tell figures of a page apart. */
function drawer() {
  const page = drawing(480);
  return (asked: { pack: typeof pack; map?: typeof inventedMotorMap; width_px?: number }) => {
    const { width_px = 480, map = inventedMotorMap } = asked;
    const { svg } = operatingPoints({ ...asked.pack, map, contours: "loss" }, { ...page, width_px });
    return { svg, look: snapshotSvg(svg) };
  };
}

describe("the ground under operating points", () => {
  it("is the same from a copy as drawn for the first time, and every figure has its own", () => {
    const draw = drawer();
    draw({ pack });
    const again = draw({ pack: other });
    const first = drawer()({ pack: other, map: { ...inventedMotorMap } });
    expect(again.look).toBe(first.look);
    const twice = draw({ pack: other });
    expect(twice.svg).not.toBe(again.svg);
    expect(twice.look).toBe(again.look);
  });

  it("is drawn anew for another width and another map", () => {
    const draw = drawer();
    draw({ pack });
    expect(draw({ pack, width_px: 800 }).look).toBe(
      drawer()({ pack, width_px: 800, map: { ...inventedMotorMap } }).look,
    );
    const weaker = {
      ...inventedMotorMap,
      envelope: inventedMotorMap.envelope.map((each) => ({ ...each, torque_Nm: each.torque_Nm * 0.8 })),
    };
    expect(draw({ pack, map: weaker }).look).not.toBe(draw({ pack }).look);
  });
});
