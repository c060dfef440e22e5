import { expect, it } from "vitest";
import { assumptionsOf } from "../../../web/sheet/assumptions.ts";
import { inventedJob } from "../../support/inventedJob.ts";

it("lists what has an origin, the least certain first, with how far it may be off", () => {
  const origins = {
    "vehicle.kerb_kg": { from: "measured" as const },
    "vehicle.load_kg": { from: "guessed" as const, plusMinus_frac: 0.1 },
    "vehicle.name": { from: "typed" as const },
    "charger.efficiency_frac": { from: "usual" as const },
  };
  const rows = assumptionsOf({ ...inventedJob(), origins }, "metric");
  expect(rows.map((cells) => cells.at(-1))).toEqual(["guessed", "usual value", "measured"]);
  expect(rows[0].slice(1, 3)).toEqual(["150 kg", "± 10 %"]);
  expect(rows[2].slice(1, 3)).toEqual(["900 kg", ""]);
});
