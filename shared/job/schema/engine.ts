import * as z from "zod";
import { RADPS_PER_RPM, W_PER_KW } from "../../units.ts";
import { engineRatings, type TorqueCurve } from "../engineRatings.ts";
import { across, type Fault } from "./across.ts";
import { above0, between, checkRise, sameLength } from "./number.ts";

/** Torque at full throttle over the engine's speed, as a handbook or a test bench draws it. */
const Curve = z
  .strictObject({
    speed_rpm: z.array(between(1, 20_000)).min(2).max(200),
    torque_Nm: z.array(between(0, 5000)),
  })
  .check(
    sameLength("torque_Nm", "speed_rpm"),
    across(["speed_rpm", "torque_Nm"], ({ speed_rpm, torque_Nm }, fault) => {
      const isSwapped = speed_rpm.length > 0 && speed_rpm.every((speed, i) => (torque_Nm[i] ?? 0) > speed);
      if (isSwapped) {
        const found = `found ${figures(torque_Nm[0] ?? 0)} Nm at ${figures(speed_rpm[0] ?? 0)} rpm and so on`;
        fault(["speed_rpm"], `${found}, likely changed over: speed and torque have taken each other's place`);
      } else checkRise(speed_rpm, " rpm", fault, ["speed_rpm"]);
    }),
    across(["torque_Nm.*"], ({ torque_Nm }, fault) => {
      if (Math.max(...torque_Nm) === 0) fault(["torque_Nm"], "found no torque at any speed, some above 0 Nm wanted");
    }),
  );

/**
 * What a curve's best may be of the figure rated. Rated figures were often those of the bare engine, a tenth to a fifth above what it
 * gave with fan, dynamo and exhaust, and a printed curve is read by eye: common practice, no source. Pound feet taken for newton metres
 * (0.74, or 1.36) lie outside.
 */
const OF_RATED_frac = [0.8, 1.1] as const;
/** At a speed that is called its best the curve may be so much below its own best: it is flat there, and read by eye. Assumed. */
const NEAR_BEST_frac = 0.9;

const curveLists = ["curve.speed_rpm.*", "curve.torque_Nm.*"];

/**
 * What a handbook prints of the engine that came out, for comparison with the motor. Each figure may be missing; without a curve of its
 * own one is drawn through its ratings (see `knownEngine`).
 */
export const Engine = z
  .strictObject({
    ratedTorque_Nm: above0(5000).optional(),
    torque_rpm: above0(15_000).optional(),
    ratedPower_kW: above0(1000).optional(),
    power_rpm: above0(15_000).optional(),
    idle_rpm: above0(15_000).optional(),
    limit_rpm: above0(20_000).optional(),
    curve: Curve.optional(),
  })
  .check(
    across(["ratedTorque_Nm", "torque_rpm"], ({ ratedTorque_Nm, torque_rpm }, fault) => {
      if (ratedTorque_Nm === undefined || torque_rpm === undefined || ratedTorque_Nm <= torque_rpm) return;
      const found = `found ${figures(ratedTorque_Nm)} Nm at ${figures(torque_rpm)} rpm`;
      fault(
        ["torque_rpm"],
        `${found}, likely changed over: ${figures(torque_rpm)} Nm at ${figures(ratedTorque_Nm)} rpm`,
      );
    }),
    across(["torque_rpm", "power_rpm"], ({ torque_rpm, power_rpm }, fault) => {
      if (torque_rpm === undefined || power_rpm === undefined || power_rpm > torque_rpm) return;
      fault(
        ["power_rpm"],
        `found ${figures(power_rpm)} rpm, above the speed of best torque (${figures(torque_rpm)} rpm) wanted`,
      );
    }),
    across(
      ["ratedTorque_Nm", "torque_rpm", "ratedPower_kW", "power_rpm"],
      ({ ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm }, fault) => {
        if (ratedTorque_Nm === undefined || ratedPower_kW === undefined) return;
        // Rated torque is the highest there is: it bounds the power at any speed, and is itself a power at its own.
        const most_kW = power_rpm === undefined ? Infinity : (ratedTorque_Nm * power_rpm * RADPS_PER_RPM) / W_PER_KW;
        const least_kW = torque_rpm === undefined ? 0 : (ratedTorque_Nm * torque_rpm * RADPS_PER_RPM) / W_PER_KW;
        const found = `found ${figures(ratedPower_kW)} kW`;
        const torque = `${figures(ratedTorque_Nm)} Nm`;
        if (ratedPower_kW > most_kW) {
          const wanted = `at most ${figures(most_kW)} kW wanted: more would take a torque above the rated ${torque}`;
          fault(["ratedPower_kW"], `${found} at ${figures(power_rpm ?? 0)} rpm, ${wanted}`);
        }
        if (ratedPower_kW < least_kW) {
          const wanted = `at least ${figures(least_kW)} kW wanted, which ${torque} is`;
          fault(["ratedPower_kW"], `${found}, ${wanted} at ${figures(torque_rpm ?? 0)} rpm`);
        }
      },
    ),
    across(["idle_rpm", "torque_rpm"], ({ idle_rpm, torque_rpm }, fault) => {
      if (idle_rpm === undefined || torque_rpm === undefined || idle_rpm < torque_rpm) return;
      fault(["idle_rpm"], `found ${figures(idle_rpm)} rpm, below ${figures(torque_rpm)} rpm wanted`);
    }),
    across(["limit_rpm", "power_rpm"], ({ limit_rpm, power_rpm }, fault) => {
      if (limit_rpm === undefined || power_rpm === undefined) return;
      if (limit_rpm >= power_rpm && limit_rpm < 2 * power_rpm) return;
      const wanted = `${figures(power_rpm)} to below ${figures(2 * power_rpm)} rpm wanted`;
      fault(["limit_rpm"], `found ${figures(limit_rpm)} rpm, ${wanted}`);
    }),
    across([...curveLists, "ratedTorque_Nm"], ({ curve, ratedTorque_Nm }, fault) => {
      if (curve) checkRated(ratedTorque_Nm, engineRatings(curve).ratedTorque_Nm, "ratedTorque_Nm", "Nm", fault);
    }),
    across([...curveLists, "ratedPower_kW"], ({ curve, ratedPower_kW }, fault) => {
      if (curve) checkRated(ratedPower_kW, engineRatings(curve).ratedPower_kW, "ratedPower_kW", "kW", fault);
    }),
    across([...curveLists, "torque_rpm"], ({ curve, torque_rpm }, fault) => {
      if (curve) checkBestSpeed(torque_rpm, curve, "torque_rpm", fault);
    }),
    across([...curveLists, "power_rpm"], ({ curve, power_rpm }, fault) => {
      if (curve) checkBestSpeed(power_rpm, curve, "power_rpm", fault);
    }),
    across([...curveLists, "idle_rpm", "limit_rpm"], ({ curve, idle_rpm, limit_rpm }, fault) => {
      if (!curve) return;
      const { torque_rpm, power_rpm } = engineRatings(curve);
      if (idle_rpm !== undefined && idle_rpm > torque_rpm) {
        const wanted = `at most ${figures(torque_rpm)} rpm wanted, where its curve has its best torque`;
        fault(["idle_rpm"], `found ${figures(idle_rpm)} rpm, ${wanted}`);
      }
      if (limit_rpm !== undefined && limit_rpm < power_rpm) {
        const wanted = `at least ${figures(power_rpm)} rpm wanted, where its curve has its best power`;
        fault(["limit_rpm"], `found ${figures(limit_rpm)} rpm, ${wanted}`);
      }
    }),
  );
export type Engine = z.infer<typeof Engine>;

/** Says of a rated figure that the best of the curve does not go with it. */
function checkRated(rated: number | undefined, best: number, key: string, unit: string, fault: Fault): void {
  const [least_frac, most_frac] = OF_RATED_frac;
  if (rated === undefined || (best >= least_frac * rated && best <= most_frac * rated)) return;
  const wanted = `${figures(best / most_frac)} to ${figures(best / least_frac)} ${unit} wanted`;
  fault([key], `found ${figures(rated)} ${unit}, ${wanted}: its curve has ${figures(best)} ${unit} at its best`);
}

/** Says of a speed that is called the best for torque or power that the curve is not near its best there. */
function checkBestSpeed(
  at_rpm: number | undefined,
  curve: TorqueCurve,
  key: "torque_rpm" | "power_rpm",
  fault: Fault,
): void {
  if (at_rpm === undefined) return;
  const found = `found ${figures(at_rpm)} rpm`;
  const { speed_rpm, torque_Nm } = curve;
  const [first_rpm, last_rpm] = [speed_rpm[0] ?? 0, speed_rpm.at(-1) ?? 0];
  if (at_rpm < first_rpm || at_rpm > last_rpm) {
    fault([key], `${found}, ${figures(first_rpm)} to ${figures(last_rpm)} rpm wanted: its curve goes no further`);
    return;
  }
  const i = Math.max(
    1,
    speed_rpm.findIndex((speed) => speed >= at_rpm),
  );
  const [low_rpm = 0, high_rpm = 0, low_Nm = 0, high_Nm = 0] = [
    ...speed_rpm.slice(i - 1, i + 1),
    ...torque_Nm.slice(i - 1, i + 1),
  ];
  const there_Nm = low_Nm + ((high_Nm - low_Nm) * (at_rpm - low_rpm)) / (high_rpm - low_rpm);
  const best = engineRatings(curve);
  const [there, most, best_rpm, unit] =
    key === "torque_rpm"
      ? [there_Nm, best.ratedTorque_Nm, best.torque_rpm, "Nm"]
      : [(there_Nm * at_rpm * RADPS_PER_RPM) / W_PER_KW, best.ratedPower_kW, best.power_rpm, "kW"];
  if (there >= NEAR_BEST_frac * most) return;
  const wanted = `its best is ${figures(most)} ${unit} at ${figures(best_rpm)} rpm`;
  fault([key], `${found}, where its curve has ${figures(there)} ${unit}; ${wanted}`);
}

function figures(value: number): string {
  return String(Number(value.toPrecision(4)));
}
