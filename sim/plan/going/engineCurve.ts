import { InputError, type Problem } from "../../../shared/problems.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";

/** What a handbook prints of a piston engine. */
export interface EngineRating {
  readonly ratedTorque_Nm: number;
  readonly torque_rpm: number;
  readonly ratedPower_kW: number;
  readonly power_rpm: number;
  /** 800 rpm if not given, or half the speed of best torque where that is less: assumed. */
  readonly idle_rpm?: number | undefined;
  /** A tenth above the speed of best power if not given: assumed. */
  readonly limit_rpm?: number | undefined;
}

/** An engine's full-throttle torque and power against speed, from idle to its limit. */
interface EngineCurve {
  readonly speed_rpm: readonly number[];
  readonly torque_Nm: readonly number[];
  readonly power_kW: readonly number[];
  readonly notes: readonly string[];
}

const step_rpm = 100;
const fallToStandstill_frac = 0.25; // of best torque, were the curve drawn down to 0 rpm: assumed

/**
 * A curve through an engine's two rated points, for comparison with the motor. Common practice, no source:
 *
 * - below the speed of best torque n1, a parabola with its top there, T = T1 (1 − 0.25 ((n1 − n)/n1)²);
 * - between n1 and the speed of best power n2, the cubic that leaves n1 level and meets n2 with dT/dn = −T2/n2, at which
 *   power is level, T2 being rated power over speed; no steeper than three times the chord, so that torque
 *   falls all the way, and never above the rated power;
 * - beyond n2, that tangent onwards, T = T2 (2 − n/n2), so that power falls as a parabola.
 *
 * Rows every 100 rpm and at the two rated speeds. Throws an InputError for ratings that contradict each other.
 */
export function engineCurve(rating: EngineRating): EngineCurve {
  const problems = ratingProblems(rating);
  if (problems.length > 0) throw new InputError(problems);
  const { ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm } = rating;
  const idle_rpm = rating.idle_rpm ?? Math.min(800, torque_rpm / 2);
  const limit_rpm = rating.limit_rpm ?? 1.1 * power_rpm;
  const speed_rpm = samples(idle_rpm, limit_rpm, [torque_rpm, power_rpm]);
  const torque_Nm = speed_rpm.map((speed) => torqueAt_Nm(rating, speed));
  const notes = [
    `drawn through ${ratedTorque_Nm} Nm at ${torque_rpm} rpm and ${ratedPower_kW} kW at ${power_rpm} rpm; the rest is common practice, no source`,
  ];
  if (rating.idle_rpm === undefined) notes.push(`idle at ${idle_rpm} rpm assumed`);
  if (rating.limit_rpm === undefined) notes.push(`limit at ${Math.round(limit_rpm)} rpm assumed`);
  return {
    speed_rpm,
    torque_Nm,
    power_kW: speed_rpm.map((speed, i) => (speed * RADPS_PER_RPM * torque_Nm[i]) / W_PER_KW),
    notes,
  };
}

function torqueAt_Nm(rating: EngineRating, speed_rpm: number): number {
  const { ratedTorque_Nm, torque_rpm, power_rpm } = rating;
  if (speed_rpm <= torque_rpm) {
    const below = (torque_rpm - speed_rpm) / torque_rpm;
    return ratedTorque_Nm * (1 - fallToStandstill_frac * below * below);
  }
  const last_Nm = torqueAtBestPower_Nm(rating);
  if (speed_rpm >= power_rpm) return Math.max(0, last_Nm * (2 - speed_rpm / power_rpm));
  const span_rpm = power_rpm - torque_rpm;
  const u = (speed_rpm - torque_rpm) / span_rpm;
  // the least steep of the two falling slopes, times the span
  const slope_Nm = Math.max((-last_Nm / power_rpm) * span_rpm, 3 * (last_Nm - ratedTorque_Nm));
  const cubic_Nm =
    (1 + 2 * u) * (1 - u) * (1 - u) * ratedTorque_Nm + u * u * (3 - 2 * u) * last_Nm + u * u * (u - 1) * slope_Nm;
  return Math.min(cubic_Nm, (last_Nm * power_rpm) / speed_rpm);
}

function torqueAtBestPower_Nm(rating: EngineRating): number {
  return (rating.ratedPower_kW * W_PER_KW) / (rating.power_rpm * RADPS_PER_RPM);
}

/** Round hundreds between the ends, the ends themselves and the speeds named, which lie between them, rising, each once. */
function samples(from_rpm: number, to_rpm: number, named: readonly number[]): number[] {
  const speeds = new Set([from_rpm, to_rpm, ...named]);
  for (let speed = Math.ceil(from_rpm / step_rpm) * step_rpm; speed <= to_rpm; speed += step_rpm) speeds.add(speed);
  return [...speeds].sort((a, b) => a - b);
}

/** What contradicts itself in a rating, a problem each. */
export function ratingProblems(rating: EngineRating): Problem[] {
  const problems: Problem[] = [];
  const report = (where: string, message: string) => void problems.push({ code: "engine-rating", where, message });
  const { ratedTorque_Nm, torque_rpm, ratedPower_kW, power_rpm, idle_rpm, limit_rpm } = rating;
  const bounds = { ratedTorque_Nm: 5000, torque_rpm: 15_000, ratedPower_kW: 1000, power_rpm: 15_000 };
  for (const [where, most] of Object.entries(bounds)) {
    const value = rating[where as keyof typeof bounds];
    if (!(value > 0 && value <= most)) report(where, `found ${value}, above 0 to ${most} wanted`);
  }
  if (problems.length > 0) return problems;
  if (ratedTorque_Nm > torque_rpm) {
    report(
      "torque_rpm",
      `found ${ratedTorque_Nm} Nm at ${torque_rpm} rpm, likely changed over: ${torque_rpm} Nm at ${ratedTorque_Nm} rpm`,
    );
  }
  if (power_rpm <= torque_rpm)
    report("power_rpm", `found ${power_rpm} rpm, above the speed of best torque, ${torque_rpm} rpm, wanted`);
  const needed_Nm = torqueAtBestPower_Nm(rating);
  if (needed_Nm > ratedTorque_Nm) {
    report(
      "ratedPower_kW",
      `found ${ratedPower_kW} kW at ${power_rpm} rpm, which takes ${needed_Nm.toPrecision(3)} Nm: at most the rated ${ratedTorque_Nm} Nm wanted`,
    );
  }
  const known_kW = (ratedTorque_Nm * torque_rpm * RADPS_PER_RPM) / W_PER_KW;
  if (known_kW > ratedPower_kW && power_rpm > torque_rpm) {
    report(
      "ratedPower_kW",
      `found ${ratedPower_kW} kW, at least the ${known_kW.toPrecision(3)} kW that ${ratedTorque_Nm} Nm is at ${torque_rpm} rpm wanted`,
    );
  }
  if (idle_rpm !== undefined && !(idle_rpm > 0 && idle_rpm < torque_rpm)) {
    report("idle_rpm", `found ${idle_rpm} rpm, above 0 and below ${torque_rpm} rpm wanted`);
  }
  if (limit_rpm !== undefined && !(limit_rpm >= power_rpm && limit_rpm < 2 * power_rpm)) {
    report("limit_rpm", `found ${limit_rpm} rpm, ${power_rpm} to below ${2 * power_rpm} rpm wanted`);
  }
  return problems;
}
