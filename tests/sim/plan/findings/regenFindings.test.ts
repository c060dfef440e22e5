import { expect, it } from "vitest";
import { messageIn } from "../../../../shared/quantity/message.ts";
import type { RefusedBraking } from "../../../../sim/plan/driveReport.ts";
import { regenFindings } from "../../../../sim/plan/findings/regenFindings.ts";
import { bareJob } from "../../../support/bareCar.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

const job = bareJob({ environment: { temperature_degC: 8, pack_degC: -3 } });
const said = (refused: { full?: RefusedBraking; cold?: RefusedBraking }, of = job) =>
  regenFindings(of, inventedCandidate(10, { refused })).map(({ kind, weight, sentence }) => [
    kind,
    weight,
    messageIn(sentence, "metric"),
  ]);

it("says nothing where nothing was refused", () => expect(said({})).toEqual([]));

it("says where a full pack refuses braking, how much of it, and the charge from which it takes all", () => {
  expect(said({ full: { energy_Wh: 123.4, distance_km: 0.51, start_frac: 0.8749 } })).toEqual([
    [
      "regenRefusedFull",
      "warning",
      "Charged to 95 %, the pack refuses braking by the motor on 510 m of this road: the friction brakes do that alone, and 0.12 kWh are not regained. Charged to 87 %, it takes all of it.",
    ],
  ]);
  const soc = { start_frac: 0.9449, end_frac: 0.9, min_frac: 0.9 };
  const [{ sentence }] = regenFindings(
    job,
    inventedCandidate(10, { soc, refused: { full: { energy_Wh: 12, distance_km: 2 } } }),
  );
  expect(messageIn(sentence, "metric")).toMatch(/^Charged to 94 %, the pack/);
  expect(said({ full: { energy_Wh: 12, distance_km: 2 } })[0][2]).toMatch(
    /on 2 km .* It refuses some of it at any charge\.$/,
  );
});

it("is a note where that is half a kilometre at most", () => {
  expect(said({ full: { energy_Wh: 12, distance_km: 0.5 } })[0][1]).toBe("note");
});

it("says at which temperature of the cells a cold pack refuses it: their own, or the day's", () => {
  const cold = { energy_Wh: 40, distance_km: 0.9 };
  expect(said({ cold })).toEqual([
    [
      "regenRefusedCold",
      "warning",
      "At -3 °C the cells take little charge or none: braking by the motor is refused or weak on 900 m of this road, and 0.04 kWh are not regained.",
    ],
  ]);
  expect(said({ cold }, bareJob({ environment: { temperature_degC: 8 } }))[0][2]).toMatch(/^At 8 °C the cells/);
});
