import type { ChannelName } from "../../../../shared/job/schema/chart.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../../shared/units.ts";
import type { Channels } from "../../../../sim/index.ts";
import { type FigureUnit, type FigureUnits, inUnit } from "../figure/figureUnits.ts";

/** A channel of a run as figures show it. */
export interface ChannelQuantity {
  readonly key: ChannelKey;
  /** In words, for a label or a list to choose from. */
  readonly name: string;
  unit(units: FigureUnits): Pick<FigureUnit, "sign" | "suffix">;
  /** The first `channels.length` values, in the unit shown. */
  column(channels: Channels, units: FigureUnits): Float64Array;
}

const as = (sign: string, suffix: string, perBase: number): FigureUnit => ({ sign, suffix, perBase });
type Definition = readonly [
  name: string,
  unit: (units: FigureUnits) => FigureUnit,
  base: (channels: Channels, i: number) => number,
];

const definitions = {
  time: ["Time", () => as("min", "min", 1 / 60), (c, i) => c.time_s[i] as number],
  distance: ["Distance", (units) => units.distance, (c, i) => c.distance_m[i] as number],
  target: ["Target speed", (units) => units.speed, (c, i) => c.target_mps[i] as number],
  speed: ["Speed", (units) => units.speed, (c, i) => c.speed_mps[i] as number],
  gradient: ["Gradient", () => as("%", "percent", 100), (c, i) => c.grade_ratio[i] as number],
  elevation: ["Height", (units) => units.height, (c, i) => c.elevation_m[i] as number],
  wheelForce: ["Wheel force", (units) => units.force, (c, i) => c.wheelForce_N[i] as number],
  brakeForce: ["Friction brakes", (units) => units.force, (c, i) => c.brakeForce_N[i] as number],
  gear: ["Gear", () => as("number", "number", 1), (c, i) => c.gear[i] as number],
  motorSpeed: ["Motor speed", () => as("rpm", "rpm", 1 / RADPS_PER_RPM), (c, i) => c.motorSpeed_radps[i] as number],
  motorTorque: ["Motor torque", (units) => units.torque, (c, i) => c.motorTorque_Nm[i] as number],
  motorPower: [
    "Motor shaft power",
    (units) => units.power,
    (c, i) => (c.motorTorque_Nm[i] as number) * (c.motorSpeed_radps[i] as number),
  ],
  motorLoss: ["Motor and controller loss", () => as("kW", "kW", 1 / W_PER_KW), (c, i) => c.motorLoss_W[i] as number],
  controllerPower: ["Controller power", (units) => units.electricPower, (c, i) => c.controller_W[i] as number],
  batteryPower: ["Battery power", (units) => units.electricPower, (c, i) => c.battery_W[i] as number],
  batteryCurrent: ["Battery current", () => as("A", "A", 1), (c, i) => c.battery_A[i] as number],
  batteryVoltage: ["Battery voltage", () => as("V", "V", 1), (c, i) => c.battery_V[i] as number],
  soc: ["State of charge", () => as("%", "percent", 100), (c, i) => c.soc_frac[i] as number],
  motorTemperature: ["Motor temperature", (units) => units.temperature, (c, i) => c.motor_K[i] as number],
  packTemperature: ["Pack temperature", (units) => units.temperature, (c, i) => c.pack_K[i] as number],
} satisfies Record<ChannelName, Definition>;

export type ChannelKey = ChannelName;

/** Every channel that a chart can be made of, in the order of a list to choose from. */
export const channelQuantities: readonly ChannelQuantity[] = (Object.keys(definitions) as ChannelKey[]).map((key) => {
  const [name, unit, base]: Definition = definitions[key];
  return {
    key,
    name,
    unit,
    column(channels, units) {
      const shown = unit(units);
      return Float64Array.from({ length: channels.length }, (_, i) => inUnit(shown, base(channels, i)));
    },
  };
});

export function channelNamed(key: ChannelKey): ChannelQuantity {
  const found = channelQuantities.find((each) => each.key === key);
  if (!found) throw new Error(`no channel is called ${key}`);
  return found;
}

/** "Motor speed (rpm)". */
export function channelLabel(quantity: ChannelQuantity, units: FigureUnits): string {
  return `${quantity.name} (${quantity.unit(units).sign})`;
}
