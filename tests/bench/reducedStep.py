"""The step of reducedStep.ts across all variants at once, a Python loop over time: reducedStep.py INPUT OUTPUT.

INPUT and OUTPUT as in reducedStep.c, but for the recorded columns: only energy and charge of every variant are written.
Prints nanoseconds a vehicle-step.
"""

import sys
import time

import numpy as np

PIECES = 64
data = np.fromfile(sys.argv[1])
rows, variants, dt_s = int(data[0]), int(data[1]), data[2]
(
    _,
    inertia_ratio,
    gravity_mps2,
    rolling_coeff,
    drag_Npmps2,
    motor_radpm,
    efficiency_frac,
    copper_coeff,
    iron_coeff,
    windage_coeff,
    constant_W,
    accessories_W,
    capacity_C,
    startSoc_frac,
) = data[3:17]
openCircuit_V, resistance_ohm = data[17:82], data[82:147]
mass_kg, speed_mps = data[147 : 147 + variants], data[147 + variants :]
rise_V, rise_ohm = np.diff(openCircuit_V), np.diff(resistance_ohm)

begin_ns = time.perf_counter_ns()
rolls_N = mass_kg * (gravity_mps2 * rolling_coeff)
inertia_kg = mass_kg * inertia_ratio
socPerAmpere = dt_s / capacity_C
soc_frac = np.full(variants, startSoc_frac)
energy_J = np.zeros(variants)
for before_mps, after_mps in zip(speed_mps[:-1].tolist(), speed_mps[1:].tolist()):
    mean_mps = 0.5 * (before_mps + after_mps)
    motor_radps = mean_mps * motor_radpm
    if mean_mps > 0:
        accel_mps2 = (after_mps - before_mps) / dt_s
        force_N = rolls_N + drag_Npmps2 * mean_mps * mean_mps + inertia_kg * accel_mps2
        torque_Nm = force_N * np.where(force_N >= 0, 1 / (motor_radpm * efficiency_frac), efficiency_frac / motor_radpm)
        speedLoss_W = motor_radps * (iron_coeff + windage_coeff * motor_radps * motor_radps) + constant_W
        power_W = torque_Nm * motor_radps + copper_coeff * torque_Nm * torque_Nm + (speedLoss_W + accessories_W)
    else:
        power_W = accessories_W
    place = soc_frac * PIECES
    piece = np.minimum(place.astype(np.int64), PIECES - 1)
    share = place - piece
    open_V = openCircuit_V[piece] + share * rise_V[piece]
    inner_ohm = resistance_ohm[piece] + share * rise_ohm[piece]
    inside_V2 = np.maximum(open_V * open_V - 4 * inner_ohm * power_W, 0)
    current_A = 2 * power_W / (open_V + np.sqrt(inside_V2))
    soc_frac -= current_A * socPerAmpere
    energy_J += power_W * dt_s
end_ns = time.perf_counter_ns()

np.column_stack([energy_J, soc_frac]).tofile(sys.argv[2])
print((end_ns - begin_ns) / variants / (rows - 1))
