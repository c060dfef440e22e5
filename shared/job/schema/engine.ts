import * as z from "zod";
import { RADPS_PER_RPM, W_PER_KW } from "../../units.ts";
import { across } from "./across.ts";
import { above0 } from "./number.ts";

/**
 * What a handbook prints of the engine that came out, for comparison with the motor. Each figure may be missing; a curve is drawn
 * only where torque, power and both their speeds are there.
 */
export const Engine = z
  .strictObject({
    ratedTorque_Nm: above0(5000).optional(),
    torque_rpm: above0(15_000).optional(),
    ratedPower_kW: above0(1000).optional(),
    power_rpm: above0(15_000).optional(),
    idle_rpm: above0(15_000).optional(),
    limit_rpm: above0(20_000).optional(),
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
  );
export type Engine = z.infer<typeof Engine>;

function figures(value: number): string {
  return String(Number(value.toPrecision(4)));
}
