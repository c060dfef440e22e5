import type { QuantityKind } from "../../../shared/quantity/kinds/kinds.ts";
import { type UnitHabit, writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { MPS_PER_KMH, MPS_PER_MPH, RADPS_PER_RPM } from "../../../shared/units.ts";
import { limitWords } from "./limitWords.ts";
import type { CarPace, GearChange, Pace } from "./pace.ts";
import { timeTo_s } from "./standingStart.ts";
import type { TopSpeed } from "./topSpeed.ts";

/** Speeding up from one speed to another, in km/h, and how long that takes; absent where it is not reached. */
export interface PaceRow {
  readonly from_kmh: number;
  readonly to_kmh: number;
  readonly motor_s?: number;
  readonly engine_s?: number;
}

const metric: readonly (readonly [number, number])[] = [
  [0, 50],
  [0, 100],
  [50, 80],
  [80, 100],
];
const miles: readonly (readonly [number, number])[] = [
  [0, 30],
  [0, 60],
  [30, 50],
  [50, 60],
];

/** The times that people know cars by, in speeds round in the reader's unit; from a speed means on the way up from rest. */
export function paceRows({ motor, engine }: Pace, units: UnitHabit): PaceRow[] {
  const per_kmh = units === "metric" ? 1 : MPS_PER_MPH / MPS_PER_KMH;
  return (units === "metric" ? metric : miles).map(([from, to]) => {
    const [from_kmh, to_kmh] = [from * per_kmh, to * per_kmh];
    const motor_s = between_s(motor, from_kmh, to_kmh);
    const engine_s = engine && between_s(engine, from_kmh, to_kmh);
    return {
      from_kmh,
      to_kmh,
      ...(motor_s !== undefined && { motor_s }),
      ...(engine_s !== undefined && { engine_s }),
    };
  });
}

function between_s({ start }: CarPace, from_kmh: number, to_kmh: number): number | undefined {
  const from_s = timeTo_s(start, from_kmh * MPS_PER_KMH);
  const to_s = timeTo_s(start, to_kmh * MPS_PER_KMH);
  return from_s === undefined || to_s === undefined ? undefined : to_s - from_s;
}

/** What the two cars' pace comes to, in sentences: starts, top speeds, what was assumed of the engine, changes of gear. */
export function paceWords(pace: Pace, units: UnitHabit): string[] {
  return [startWords(pace, units), topWords(pace, units), ...engineWords(pace, units), ...changeWords(pace, units)];
}

function startWords(pace: Pace, units: UnitHabit): string {
  const rows = paceRows(pace, units).filter(({ from_kmh }) => from_kmh === 0);
  const row = rows.findLast(({ motor_s, engine_s }) => motor_s !== undefined || engine_s !== undefined) ?? rows[0];
  const speed = writeQuantity("speed", row.to_kmh, units);
  const now =
    row.motor_s === undefined
      ? `From rest the car does not reach ${speed} in two minutes`
      : `From rest the car reaches ${speed} in ${row.motor_s.toFixed(1)} s`;
  if (!pace.engine) return `${now}.`;
  return row.engine_s === undefined
    ? `${now}; with the old engine it did not.`
    : `${now}; with the old engine it took about ${Math.round(row.engine_s)} s.`;
}

function topWords({ motor, engine }: Pace, units: UnitHabit): string {
  const speed = ({ speed_mps }: TopSpeed) => writeQuantity("speed", speed_mps / MPS_PER_KMH, units);
  const { top } = motor;
  const ends = top.because === "rotation" ? "the motor turns no faster" : limitWords[top.limit ?? "none"];
  const now = `Flat out on the level it gets to ${speed(top)}, in ${top.gear}: ${ends}`;
  if (!engine) return `${now}.`;
  const ended = engine.top.because === "rotation" ? "turned no faster" : "had no more power";
  return `${now}. The old engine's top speed was about ${speed(engine.top)}, in ${engine.top.gear}, where it ${ended}.`;
}

/** Each path that a curve of the engine may want, in words. */
const figureNames: Readonly<Record<string, string>> = {
  "engine.ratedPower_kW": "its rated power",
  "engine.ratedTorque_Nm": "its rated torque",
  "engine.power_rpm": "the speed of its best power",
  "engine.torque_rpm": "the speed of its best torque",
};

/** Figures of the engine by their paths, in words: `its rated power and its rated torque`. */
export function engineFigures(paths: readonly string[]): string {
  return inWords(paths.map((path) => figureNames[path] ?? path));
}

function engineWords({ known, engine }: Pace, units: UnitHabit): string[] {
  if (!engine) {
    return [`How it went with the old engine is not known: type ${engineFigures(known.missing)}, under Motor.`];
  }
  if (known.engine?.isTyped) {
    const { speed_rpm } = known.engine.curve;
    const [from, to] = [speed_rpm[0], speed_rpm[speed_rpm.length - 1]].map((speed) =>
      writeQuantity("rotation", speed, units),
    );
    return [`The old engine's torque at full throttle is as typed, from ${from} to ${to}.`];
  }
  if (known.assumed.length === 0) return [];
  return [
    `Not known of the engine: ${engineFigures(known.assumed.map((key) => `engine.${key}`))}; assumed from the rest (0.8 of the best torque at best power, best torque at 0.55 of that speed: common practice, no source).`,
  ];
}

function changeWords({ change }: Pace, units: UnitHabit): string[] {
  if (!change) return [];
  const { change_s, isAssumed, coupling, changes } = change;
  const how = coupling === "direct" ? "without a clutch" : "with the old clutch";
  const taken = `A change of gear ${how} is counted as ${change_s} s without drive${isAssumed ? " (common practice, no source)" : ""}.`;
  const hardest = changes.reduce<GearChange | undefined>(
    (most, each) => (most === undefined || each.rotor_J > most.rotor_J ? each : most),
    undefined,
  );
  if (coupling === "clutch" || hardest === undefined || hardest.rotor_J <= 0) return [taken];
  const q = (kind: QuantityKind, value: number) => writeQuantity(kind, value, units);
  const speed = q("speed", hardest.speed_mps / MPS_PER_KMH);
  const turns = [hardest.from_radps, hardest.to_radps].map((radps) => q("rotation", radps / RADPS_PER_RPM));
  return [
    `${taken} From ${hardest.from} to ${hardest.to} at ${speed} the motor's rotor comes down from ${turns[0]} to ${turns[1]}; were the synchro rings to do that in this time they would take ${q("torque", hardest.synchro_Nm)} at the gearbox input. They were made for a clutch plate: let the controller match the speed, or stay in one gear.`,
  ];
}

function inWords(parts: readonly string[]): string {
  return parts.length < 2 ? (parts[0] ?? "") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
