/** A mass and where it sits behind the centre of the front axle. */
export interface PlacedMass {
  readonly mass_kg: number;
  readonly place_m: number;
}

/** What rests on the two axles of a car on level ground. */
export interface AxleLoads {
  readonly front_kg: number;
  readonly rear_kg: number;
}

/**
 * Axle loads with one more mass aboard (or one less, where it is negative), by moments about the axles:
 *
 *   rear = m x / L,  front = m (1 - x / L)        [Gillespie1992, ch. 1]
 *
 * A mass behind the rear axle lightens the front one.
 */
export function withMass(loads: AxleLoads, { mass_kg, place_m }: PlacedMass, wheelbase_m: number): AxleLoads {
  const rear_kg = (mass_kg * place_m) / wheelbase_m;
  return { front_kg: loads.front_kg + mass_kg - rear_kg, rear_kg: loads.rear_kg + rear_kg };
}

/** Place of the centre of gravity behind the front axle, in metres. */
export function gravityPlace_m({ front_kg, rear_kg }: AxleLoads, wheelbase_m: number): number {
  return (rear_kg * wheelbase_m) / (front_kg + rear_kg);
}
