/*
 * The step of reducedStep.ts in C, one vehicle after another. Compiled and run by compareKernels.ts:
 *   gcc -O3 -march=native -o reducedStep reducedStep.c -lm;  reducedStep INPUT OUTPUT REPETITIONS
 * INPUT is doubles: rows, variants, dt_s, the 14 fields of ReducedCar in their order, 65 voltages, 65 resistances, the variants'
 * masses, the speeds. OUTPUT is doubles: eight recorded columns of the first variant, then energy and charge of every variant.
 * Prints nanoseconds a step of one recorded run, and nanoseconds a vehicle-step of all variants unrecorded.
 */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define PIECES 64

typedef struct {
  double mass_kg, inertia_ratio, gravity_mps2, rolling_coeff, drag_Npmps2, motor_radpm, efficiency_frac;
  double copper_coeff, iron_coeff, windage_coeff, constant_W, accessories_W, capacity_C, startSoc_frac;
} Car;

typedef struct {
  double *distance_m, *force_N, *motor_radps, *torque_Nm, *loss_W, *current_A, *terminal_V, *soc_frac;
} Columns;

static void run(const Car *car, const double *openCircuit_V, const double *resistance_ohm, double mass_kg,
                const double *speed_mps, long rows, double dt_s, double *end, const Columns *columns) {
  const double rolls_N = mass_kg * car->gravity_mps2 * car->rolling_coeff;
  const double inertia_kg = mass_kg * car->inertia_ratio;
  const double socPerAmpere = dt_s / car->capacity_C;
  double soc_frac = car->startSoc_frac, energy_J = 0, distance_m = 0, before_mps = speed_mps[0];
  for (long i = 1; i < rows; i++) {
    const double after_mps = speed_mps[i];
    const double mean_mps = 0.5 * (before_mps + after_mps);
    const double motor_radps = mean_mps * car->motor_radpm;
    double force_N = 0, torque_Nm = 0, loss_W = 0;
    if (mean_mps > 0) {
      const double accel_mps2 = (after_mps - before_mps) / dt_s;
      force_N = rolls_N + car->drag_Npmps2 * mean_mps * mean_mps + inertia_kg * accel_mps2;
      torque_Nm = force_N >= 0 ? force_N / (car->motor_radpm * car->efficiency_frac)
                               : force_N * car->efficiency_frac / car->motor_radpm;
      loss_W = car->copper_coeff * torque_Nm * torque_Nm +
               motor_radps * (car->iron_coeff + car->windage_coeff * motor_radps * motor_radps) + car->constant_W;
    }
    const double power_W = torque_Nm * motor_radps + loss_W + car->accessories_W;
    const double place = soc_frac * PIECES;
    const long whole = (long)place, piece = whole < PIECES - 1 ? whole : PIECES - 1;
    const double share = place - (double)piece;
    const double open_V = openCircuit_V[piece] + share * (openCircuit_V[piece + 1] - openCircuit_V[piece]);
    const double inner_ohm = resistance_ohm[piece] + share * (resistance_ohm[piece + 1] - resistance_ohm[piece]);
    const double current_A = 2 * power_W / (open_V + sqrt(fmax(open_V * open_V - 4 * inner_ohm * power_W, 0)));
    soc_frac -= current_A * socPerAmpere;
    energy_J += power_W * dt_s;
    distance_m += mean_mps * dt_s;
    before_mps = after_mps;
    if (columns) {
      columns->distance_m[i] = distance_m;
      columns->force_N[i] = force_N;
      columns->motor_radps[i] = motor_radps;
      columns->torque_Nm[i] = torque_Nm;
      columns->loss_W[i] = loss_W;
      columns->current_A[i] = current_A;
      columns->terminal_V[i] = open_V - inner_ohm * current_A;
      columns->soc_frac[i] = soc_frac;
    }
  }
  end[0] = energy_J;
  end[1] = soc_frac;
}

static double now_ns(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return 1e9 * (double)t.tv_sec + (double)t.tv_nsec;
}

int main(int count, char **words) {
  if (count != 4) return 2;
  FILE *in = fopen(words[1], "rb");
  double head[3];
  Car car;
  double openCircuit_V[PIECES + 1], resistance_ohm[PIECES + 1];
  if (!in || fread(head, sizeof(double), 3, in) != 3 || fread(&car, sizeof car, 1, in) != 1 ||
      fread(openCircuit_V, sizeof(double), PIECES + 1, in) != PIECES + 1 ||
      fread(resistance_ohm, sizeof(double), PIECES + 1, in) != PIECES + 1)
    return 2;
  const long rows = (long)head[0], variants = (long)head[1], repetitions = atol(words[3]);
  const double dt_s = head[2];
  double *mass_kg = malloc(sizeof(double) * (size_t)variants), *speed_mps = malloc(sizeof(double) * (size_t)rows);
  if (fread(mass_kg, sizeof(double), (size_t)variants, in) != (size_t)variants ||
      fread(speed_mps, sizeof(double), (size_t)rows, in) != (size_t)rows)
    return 2;
  fclose(in);

  double *recorded = calloc((size_t)rows * 8, sizeof(double)), *ends = malloc(sizeof(double) * (size_t)variants * 2);
  const Columns columns = {recorded,            recorded + rows,     recorded + 2 * rows, recorded + 3 * rows,
                           recorded + 4 * rows, recorded + 5 * rows, recorded + 6 * rows, recorded + 7 * rows};
  double begin_ns = now_ns();
  for (long k = 0; k < repetitions; k++)
    run(&car, openCircuit_V, resistance_ohm, mass_kg[0], speed_mps, rows, dt_s, ends, &columns);
  const double single_ns = (now_ns() - begin_ns) / (double)repetitions / (double)(rows - 1);
  begin_ns = now_ns();
  for (long k = 0; k < variants; k++)
    run(&car, openCircuit_V, resistance_ohm, mass_kg[k], speed_mps, rows, dt_s, ends + 2 * k, NULL);
  const double batch_ns = (now_ns() - begin_ns) / (double)variants / (double)(rows - 1);

  FILE *out = fopen(words[2], "wb");
  if (!out || fwrite(recorded, sizeof(double), (size_t)rows * 8, out) != (size_t)rows * 8 ||
      fwrite(ends, sizeof(double), (size_t)variants * 2, out) != (size_t)variants * 2)
    return 2;
  fclose(out);
  printf("%.6f %.6f\n", single_ns, batch_ns);
  return 0;
}
