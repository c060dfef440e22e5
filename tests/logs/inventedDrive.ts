import { type Candidate, type Channels, createChannels, type MotorSurface, type SteadyRow } from "../../sim/index.ts";
import type { DayLine } from "../../web/charts/dayByHour.ts";
import type { RoadLoadRow } from "../../web/charts/roadLoad.ts";

/**
 * An invented drive for figures, from short formulas and not from the simulation: three packs over a hilly road in town,
 * a motor with a four-term loss. Plausible sizes; no measured car.
 */
const ROWS = 1200;
const g_mps2 = 9.81;
const ratio = 4.1 * 1.4;
const radius_m = 0.3;
const lossAt_W = (torque_Nm: number, speed_radps: number) =>
  60 + 0.16 * torque_Nm ** 2 + 1.2 * speed_radps + 4e-6 * speed_radps ** 3;

export function inventedChannels(mass_kg: number, capacity_C: number, power_W: number, startSoc_frac = 0.95): Channels {
  const run = createChannels(ROWS);
  let distance_m = 0;
  let soc_frac = startSoc_frac;
  let speed_mps = 0;
  for (let i = 0; i < ROWS; i++) {
    const phase = (i % 200) / 200;
    const wave = Math.sin(Math.PI * Math.min(1, phase * 1.25));
    const target_mps = phase > 0.8 ? 0 : Math.max(0, wave * (9 + 9 * Math.sin(i / 190) ** 2));
    const grade = 0.05 * Math.sin(distance_m / 700);
    const resist_N = mass_kg * g_mps2 * (0.013 + grade) + 0.45 * speed_mps ** 2;
    const most_mps2 = power_W / Math.max(speed_mps, 5) / mass_kg - resist_N / mass_kg;
    const next_mps = Math.max(0, Math.min(target_mps, speed_mps + Math.max(0.1, most_mps2)));
    const mean_mps = (speed_mps + next_mps) / 2;
    distance_m += mean_mps;
    const force_N = mean_mps > 0 ? resist_N + mass_kg * (next_mps - speed_mps) : 0;
    const motor_Nm = Math.max(-40, (force_N * radius_m) / ratio / (force_N > 0 ? 0.93 : 1 / 0.93));
    const motor_radps = (mean_mps / radius_m) * ratio;
    const loss_W = motor_radps > 0 ? lossAt_W(motor_Nm, motor_radps) : 0;
    const battery_W = motor_Nm * motor_radps + loss_W + 260;
    const battery_V = 110 + 20 * soc_frac - battery_W * 2e-4;
    const battery_A = battery_W / battery_V;
    soc_frac = Math.max(0, soc_frac - battery_A / capacity_C);
    speed_mps = next_mps;
    run.time_s[i] = i;
    run.distance_m[i] = distance_m;
    run.target_mps[i] = target_mps;
    run.speed_mps[i] = next_mps;
    run.grade_ratio[i] = grade;
    run.elevation_m[i] = 35 - 35 * Math.cos(distance_m / 700);
    run.wheelForce_N[i] = force_N;
    run.brakeForce_N[i] = Math.max(0, -force_N - (40 * ratio) / radius_m);
    run.gear[i] = mean_mps > 9 ? 3 : 2;
    run.motorSpeed_radps[i] = motor_radps;
    run.motorTorque_Nm[i] = motor_Nm;
    run.motorLoss_W[i] = loss_W;
    run.controller_W[i] = battery_W - 260;
    run.battery_A[i] = battery_A;
    run.battery_V[i] = battery_V;
    run.battery_W[i] = battery_W;
    run.soc_frac[i] = soc_frac;
    run.motor_K[i] = 295 + 0.03 * i;
    run.pack_K[i] = 293 + 0.008 * i;
    run.length = i + 1;
    if (soc_frac <= 0.1) break;
  }
  return run;
}

const sizes = [
  { name: "Two modules, nickel, second-hand", mass_kg: 1210, capacity_C: 20 * 3600, power_W: 12_000 },
  { name: "Four modules, iron phosphate", mass_kg: 1290, capacity_C: 60 * 3600, power_W: 45_000 },
  { name: "Six modules", mass_kg: 1370, capacity_C: 105 * 3600, power_W: 60_000 },
];

export const inventedPacks = sizes.map((size, index) => ({
  name: size.name,
  index,
  floor_frac: 0.1,
  ceiling_frac: 0.95,
  channels: inventedChannels(size.mass_kg, size.capacity_C, size.power_W),
}));

/** Ledgers as shares of a round consumption; the last ends lower than it began, so that climbing gives back. */
export const inventedLedgers: Pick<Candidate, "name" | "distance_km" | "ledger_Wh">[] = sizes.map((size, index) => {
  const distance_km = 10;
  const perTonne = size.mass_kg / 1000;
  const parts = {
    aero: 330,
    rolling: 380 * perTonne,
    climb: index === 2 ? -55 : 40,
    speed: 1,
    driveline: 105 * perTonne,
    motor: 190,
    packHeat: 62 / (index + 1),
    accessories: 130,
    frictionBrake: 70 * perTonne,
  };
  const total = Object.values(parts).reduce((sum, part) => sum + part, 0);
  return { name: size.name, distance_km, ledger_Wh: { ...parts, total } };
});

export const inventedMotorMap: MotorSurface = (() => {
  const speed_rpm = Float64Array.from({ length: 25 }, (_, i) => (i * 8000) / 24);
  const torque_Nm = Float64Array.from({ length: 23 }, (_, i) => -110 + i * 10);
  const envelope_Nm = (rpm: number) => Math.min(110, 45_000 / Math.max(1, (rpm * Math.PI) / 30));
  const cells = Array.from({ length: 25 * 23 }, (_, k) => {
    const rpm = speed_rpm[k % 25] as number;
    const torque = torque_Nm[Math.floor(k / 25)] as number;
    const speed_radps = (rpm * Math.PI) / 30;
    const loss_W = lossAt_W(torque, speed_radps);
    const shaft_W = torque * speed_radps;
    const efficiency = shaft_W > 0 ? shaft_W / (shaft_W + loss_W) : shaft_W < 0 ? Math.max(0, 1 + loss_W / shaft_W) : 0;
    return { loss_W, efficiency, isInside: Math.abs(torque) <= envelope_Nm(rpm) };
  });
  const speeds = Array.from({ length: 41 }, (_, i) => i * 200);
  return {
    speed_rpm,
    torque_Nm,
    loss_W: Float64Array.from(cells, (cell) => cell.loss_W),
    efficiency_frac: Float64Array.from(cells, (cell) => cell.efficiency),
    isInside: Uint8Array.from(cells, (cell) => (cell.isInside ? 1 : 0)),
    envelope: speeds.map((rpm) => ({ speed_rpm: rpm, torque_Nm: envelope_Nm(rpm) })),
    limits: [
      {
        name: "gearbox input",
        points: speeds.map((rpm) => ({ speed_rpm: rpm, torque_Nm: Math.min(85, envelope_Nm(rpm)) })),
      },
    ],
    maxSpeed_rpm: 8000,
  };
})();

/** Steady speeds of a pack with that much usable energy; 100 km/h is beyond it. */
export function inventedSteady(usable_kWh: number, weight_ratio: number): SteadyRow[] {
  return [30, 40, 50, 60, 70, 80, 90, 100].map((speed_kmh) => {
    const battery_Whpkm = (45 + 260 / speed_kmh + 0.0105 * speed_kmh ** 2) * weight_ratio;
    const isHeld = speed_kmh < 95;
    return {
      speed_kmh,
      rolling_N: 150,
      aero_N: 0.036 * speed_kmh ** 2,
      drag_N: 14,
      isHeld,
      battery_Whpkm,
      ...(isHeld ? { range_km: (usable_kWh * 1000) / battery_Whpkm } : { heldFor_s: 240, heldAlways_kmh: 94 }),
      motor_rpm: speed_kmh * 50,
      motor_Nm: 8 + speed_kmh * 0.3,
      efficiency_frac: 0.86,
      limit: isHeld ? "none" : "pack",
    };
  });
}

export const inventedRoadLoad: readonly RoadLoadRow[] = Array.from({ length: 25 }, (_, i) => {
  const speed_mps = (i * 5) / 3.6;
  return { speed_mps, rolling_N: 160 + 0.6 * speed_mps, aero_N: 0.45 * speed_mps ** 2, drag_N: 22, climb_N: 250 };
});

const perRpm_mps = (overall_ratio: number) => (0.3 / overall_ratio) * ((2 * Math.PI) / 60);
export const inventedGears = [
  { name: "first", speedPerRpm_mps: perRpm_mps(4.1 * 3.6), isUsed: false },
  { name: "second", speedPerRpm_mps: perRpm_mps(4.1 * 2.2), isUsed: true },
  { name: "third", speedPerRpm_mps: perRpm_mps(4.1 * 1.4), isUsed: true },
  { name: "top", speedPerRpm_mps: perRpm_mps(4.1), isUsed: false },
];

/** Points as a handbook would print them for a small four-cylinder engine. */
export const inventedEngine = [
  { speed_rpm: 1000, torque_Nm: 68 },
  { speed_rpm: 1500, torque_Nm: 77 },
  { speed_rpm: 2500, torque_Nm: 84 },
  { speed_rpm: 3500, torque_Nm: 78 },
  { speed_rpm: 4500, torque_Nm: 66 },
  { speed_rpm: 5200, torque_Nm: 52 },
];

export const inventedDays_m = Array.from(
  { length: 60 },
  (_, i) => 22_000 + 12_000 * Math.sin(i * 2.4) + (i % 15 === 0 ? 60_000 : 0) + 300 * i,
);

/** A usual day by the clock: a small pack that charges at once, and a large one that the night is too short for. */
export const inventedDayLines: readonly DayLine[] = [
  {
    name: "Six modules",
    index: 1,
    floor_frac: 0.1,
    day: {
      hour_h: [8, 9, 17, 18, 18, 21, 22, 32],
      soc_frac: [0.9, 0.6, 0.6, 0.3, 0.3, 0.8, 0.9, 0.9],
      leaves_h: 8,
      home_h: 18,
      home_frac: 0.3,
      chargesFrom_h: 18,
      isFull: true,
    },
  },
  {
    name: "Ten modules",
    index: 2,
    floor_frac: 0.15,
    day: {
      hour_h: [8, 9, 17, 18, 23.5, 32],
      soc_frac: [0.9, 0.8, 0.8, 0.7, 0.7, 0.85],
      leaves_h: 8,
      home_h: 18,
      home_frac: 0.7,
      chargesFrom_h: 23.5,
      isFull: false,
    },
  },
];
